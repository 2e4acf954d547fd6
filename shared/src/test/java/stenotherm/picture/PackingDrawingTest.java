package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.picture.PackingDrawing.Shown;
import stenotherm.words.Units;

class PackingDrawingTest {
  private static PackingDrawing.Builder drawing() {
    return PackingDrawing.titled("A box")
        .part(part(Shown.BOARD, 0, 300, 0, 200, ""))
        .part(part(Shown.FILL, 20, 280, 20, 180, ""))
        .part(part(Shown.VESSEL, 50, 200, 30, 100, "1"))
        .part(part(Shown.WARMER, 100, 200, 170, 180, "2"));
  }

  /** As wide as it is deep [mm]. */
  private static PackingDrawing.Part part(
      Shown kind, double low, double high, double bottom, double top, String number) {
    Point min = new Point(low / 1000, low / 1000, bottom / 1000);
    Point max = new Point(high / 1000, high / 1000, top / 1000);
    return new PackingDrawing.Part(kind, new Box(min, max), Shape.BOX, number);
  }

  private static String draw(PackingDrawing drawing, int width) {
    return drawing.svg(width, drawing.heightFor(width));
  }

  /** From the front 300 by 200, from above 300 by 300, with the same pixels for a millimetre. */
  @Test
  void bothViewsAreToOneScale() {
    for (int width : new int[] {340, 760}) {
      double[] boards =
          Pattern.compile("width=\"([\\d.]+)\" height=\"([\\d.]+)\" fill=\"#dec8a5\"")
              .matcher(draw(drawing().build(), width))
              .results()
              .flatMapToDouble(
                  found ->
                      DoubleStream.of(
                          Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))))
              .toArray();
      double scale = boards[0] / 300;
      assertArrayEquals(
          new double[] {300 * scale, 200 * scale, 300 * scale, 300 * scale}, boards, 0.02);
    }
  }

  @Test
  void tellsEveryDistanceAlongEachAxis() {
    String svg = draw(drawing().build(), 760);
    // 20 30 50 100 80 20 across, twice, and up the plan; 20 10 70 70 10 20 up the side
    assertEquals(3, svg.split(">100</text>", -1).length - 1);
    assertEquals(2, svg.split(">70</text>", -1).length - 1);
    assertTrue(svg.contains(">300 mm</text>") && svg.contains(">200 mm</text>"), svg);
    assertTrue(draw(drawing().units(Units.US).build(), 760).contains(">3 7/8</text>"));
  }

  @Test
  void drawsHolesWhereTheWallIsCut() {
    String svg = draw(drawing().holes(new PackingDrawing.Holes(Face.X_MAX, 3)).build(), 760);
    // each is a dark line with a white one upon it, in both views
    assertEquals(6, svg.split("stroke-width=\"2.4\"", -1).length - 1);
  }

  @Test
  void textsInARowAreMovedApartInOrder() {
    double[] places =
        PackingDrawing.spread(new double[] {5, 6, 7, 50}, new double[] {10, 10, 10, 10}, 0, 60);
    assertArrayEquals(new double[] {5, 15, 25, 50}, places, 1e-12);
    double[] pushed =
        PackingDrawing.spread(new double[] {50, 56, 58}, new double[] {10, 10, 10}, 0, 60);
    assertArrayEquals(new double[] {35, 45, 55}, pushed, 1e-12);
  }

  @Test
  void needsAPart() {
    assertThrows(InvalidInputException.class, () -> PackingDrawing.titled("Nothing").build());
  }
}
