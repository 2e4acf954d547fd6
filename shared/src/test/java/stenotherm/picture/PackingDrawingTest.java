package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
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

  /** A dozen vials have more distances than a row below them has room for. */
  @Test
  void distancesThatDoNotFitInARowStandInMore() {
    PackingDrawing.Builder builder = drawing().units(Units.US);
    for (int vial = 0; vial < 7; vial++) {
      builder.part(part(Shown.VESSEL, 35 + 30 * vial, 62 + 30 * vial, 20, 60, "3"));
    }
    for (int width : new int[] {340, 760}) {
      PackingDrawing many = builder.build();
      assertTrue(many.heightFor(width) > drawing().build().heightFor(width));
      List<double[]> texts =
          Pattern.compile(
                  "<text x=\"([-\\d.]+)\" y=\"([\\d.]+)\"[^>]*text-anchor=\"middle\"[^>]*>([^<]*)<")
              .matcher(draw(many, width))
              .results()
              .map(
                  found ->
                      new double[] {
                        Double.parseDouble(found.group(1)),
                        Double.parseDouble(found.group(2)),
                        Letters.width(found.group(3), Look.TICK)
                      })
              .toList();
      assertTrue(texts.size() > 20, texts.size() + " texts");
      for (double[] text : texts) {
        assertTrue(text[0] - text[2] / 2 > 0 && text[0] + text[2] / 2 < width, text[0] + "");
      }
    }
  }

  /** Half of the smallest part of a tape is no distance that anybody measures. */
  @Test
  void whatAllButTouchesHasNoDistance() {
    PackingDrawing drawing =
        drawing().part(part(Shown.PACK, 50.7, 100.6, 100, 120, "3")).units(Units.US).build();
    assertEquals(0, count(draw(drawing, 760), "under"));
  }

  private static PackingDrawing.Hole hole(Face face, double x, double y, double z) {
    return new PackingDrawing.Hole(face, new Point(x / 1000, y / 1000, z / 1000), 0.012);
  }

  private static int count(String svg, String part) {
    return svg.split(Pattern.quote(part), -1).length - 1;
  }

  @Test
  void drawsHolesWhereTheWallIsCut() {
    PackingDrawing.Builder builder = drawing();
    for (double y : new double[] {60, 150, 240}) {
      builder.hole(hole(Face.X_MAX, 280, y, 100));
    }
    String svg = draw(builder.build(), 760);
    // each is a dark line with a white one upon it, in both views
    assertEquals(6, count(svg, "stroke-width=\"2.4\""));
    assertEquals(0, count(svg, "<ellipse"));
  }

  /** A hole in the lid is a circle from above and a channel from the front, at the same x. */
  @Test
  void drawsHolesOfAFaceThatIsFacedAsCirclesAtTheSamePlaces() {
    PackingDrawing drawing =
        drawing().hole(hole(Face.Z_MAX, 90, 240, 180)).hole(hole(Face.Y_MIN, 90, 20, 60)).build();
    String svg = draw(drawing, 760);
    assertEquals(2, count(svg, "stroke-width=\"2.4\""));
    assertEquals(2, count(svg, "<ellipse"));
    double[] boards =
        Pattern.compile("<rect x=\"([\\d.]+)\" y=\"[\\d.]+\" width=\"([\\d.]+)\"[^>]*#dec8a5")
            .matcher(svg)
            .results()
            .flatMapToDouble(
                found ->
                    DoubleStream.of(
                        Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))))
            .toArray();
    double[] across =
        Pattern.compile("<ellipse cx=\"([\\d.]+)\"")
            .matcher(svg)
            .results()
            .mapToDouble(found -> Double.parseDouble(found.group(1)))
            .toArray();
    double third = boards[1] * 90 / 300;
    // the front hole from the front, the lid hole from above
    assertArrayEquals(new double[] {boards[0] + third, boards[2] + third}, across, 0.02);
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
