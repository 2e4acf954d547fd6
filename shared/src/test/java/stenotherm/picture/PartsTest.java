package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.base.Range;
import stenotherm.picture.LabelPlacer.Candidate;
import stenotherm.words.Units;

class PartsTest {
  @Test
  void ticksAreRoundAndFew() {
    assertEquals(List.of(-2.0, 0.0, 2.0, 4.0), Ticks.decimal(new Range(-2.5, 5), 5));
    assertEquals(List.of(0.0, 50.0, 100.0), Ticks.decimal(new Range(0, 100), 2));
    assertEquals(List.of(0.0, 6.0, 12.0, 18.0), Ticks.hours(new Range(0, 19), 4));
    assertEquals(List.of(0.0, 500.0, 1000.0), Ticks.hours(new Range(0, 1000), 3));
  }

  @Test
  void labelsKeepClearOfLabelsAndLines() {
    LabelPlacer placer = new LabelPlacer(new Area(0, 0, 100, 100));
    Candidate first = new Candidate(Area.sized(10, 10, 20, 10), 0);
    Candidate second = new Candidate(Area.sized(10, 50, 20, 10), 5);
    Candidate outside = new Candidate(Area.sized(90, 10, 20, 10), 0);

    placer.avoid(new Pixel(0, 55), new Pixel(100, 55));
    assertEquals(Optional.of(first.box()), placer.place(List.of(outside, second, first)));
    assertEquals(Optional.of(second.box()), placer.place(List.of(outside, second, first)));
    assertEquals(Optional.empty(), placer.place(List.of(outside, second, first)));
  }

  @Test
  void colorsGrowLighterAllTheWay() {
    double last = -1;
    for (int level = 0; level < ColorScale.LEVELS; level++) {
      Color color = ColorScale.color(level);
      // Luma: what is left of a colour in a grey print.
      double luma = 0.299 * color.red() + 0.587 * color.green() + 0.114 * color.blue();
      assertTrue(luma > last, "level " + level);
      last = luma;
    }
  }

  @Test
  void colorsCoverTheRange() {
    ColorScale scale = new ColorScale(new Range(270, 300));

    assertEquals(270, scale.from(0));
    assertEquals(285, scale.from(ColorScale.LEVELS / 2), 1e-9);
    assertEquals(300, scale.from(ColorScale.LEVELS), 1e-9);
  }

  /** A field of 0 to 30 across, on a grid that is not uniform. */
  private static Contours slope() {
    double[] nodes = {0, 5, 20, 30};
    double[][] values = new double[4][4];
    for (int i = 0; i < 4; i++) {
      Arrays.fill(values[i], nodes[i]);
    }
    return new Contours(nodes, nodes, values);
  }

  @Test
  void aLineOfALinearFieldIsStraightAndWhole() {
    List<List<Pixel>> lines = slope().lines(12);

    assertEquals(1, lines.size());
    assertEquals(2, lines.get(0).size(), "points between add nothing");
    for (Pixel point : lines.get(0)) {
      assertEquals(12, point.x(), 1e-12);
    }
    assertEquals(30, lines.get(0).get(0).distance(lines.get(0).get(1)), 1e-12);
    assertTrue(slope().lines(400).isEmpty());
  }

  @Test
  void anAreaIsClosedAlongTheEdge() {
    List<List<Pixel>> loops = slope().areas(12);

    assertEquals(1, loops.size());
    assertEquals(loops.get(0).get(0), loops.get(0).get(loops.get(0).size() - 1));
    assertEquals((30 - 12) * 30, Math.abs(area(loops.get(0))), 1e-9);
    assertEquals(30 * 30, Math.abs(area(slope().areas(-1).get(0))), 1e-9);
  }

  /** A hill inside: a closed line, and a hole in what is lower than its top. */
  @Test
  void aHillHasAClosedLine() {
    double[] nodes = new double[41];
    double[][] values = new double[41][41];
    for (int i = 0; i <= 40; i++) {
      nodes[i] = 10 * i;
      for (int j = 0; j <= 40; j++) {
        values[i][j] = -Math.hypot(10 * i - 200, 10 * j - 200);
      }
    }
    Contours hill = new Contours(nodes, nodes, values);
    List<List<Pixel>> lines = hill.lines(-100);

    assertEquals(1, lines.size());
    assertEquals(lines.get(0).get(0), lines.get(0).get(lines.get(0).size() - 1));
    assertEquals(Math.PI * 1e4, Math.abs(area(lines.get(0))), 100, "a circle of radius 100");
    for (Pixel point : lines.get(0)) {
      assertEquals(100, point.distance(new Pixel(200, 200)), 0.5);
    }
    for (double[] column : values) {
      for (int j = 0; j < column.length; j++) {
        column[j] = -column[j];
      }
    }
    List<List<Pixel>> around = new Contours(nodes, nodes, values).areas(100);
    assertEquals(2, around.size(), "the edge and the hole");
  }

  /** Signed area by Gauss's formula [pixel2]. */
  private static double area(List<Pixel> loop) {
    double sum = 0;
    for (int i = 1; i < loop.size(); i++) {
      Pixel from = loop.get(i - 1);
      Pixel to = loop.get(i);
      sum += from.x() * to.y() - to.x() * from.y();
    }
    return sum / 2;
  }

  @Test
  void linesTouchAreasWhereTheyCross() {
    Area area = new Area(10, 10, 20, 20);
    assertTrue(area.touches(new Pixel(0, 15), new Pixel(30, 15)));
    assertTrue(area.touches(new Pixel(12, 12), new Pixel(13, 13)));
    assertTrue(area.touches(new Pixel(15, 0), new Pixel(15, 10)));
    assertTrue(area.touches(new Pixel(5, 16), new Pixel(16, 5)));
    assertFalse(area.touches(new Pixel(5, 14), new Pixel(14, 5)));
    assertFalse(area.touches(new Pixel(0, 25), new Pixel(30, 25)));
    assertFalse(area.touches(new Pixel(0, 15), new Pixel(9, 15)));
  }

  @Test
  void textsAreBrokenBetweenWordsAndShortened() {
    double width = Letters.width("one two", Look.LABEL) + 1;

    assertEquals(List.of("one two", "three"), Letters.wrap("one two three", width, 3, Look.LABEL));
    double narrow = Letters.width("heat is 48 %", Look.LABEL) - 1;
    assertEquals(
        List.of("heat is", "48 % left"), Letters.wrap("heat is 48 % left", narrow, 3, Look.LABEL));
    assertEquals(
        List.of("of 100", "inside"),
        Letters.wrap("of 100 inside", Letters.width("of 100 in", Look.LABEL), 3, Look.LABEL));
    List<String> shortened = Letters.wrap("one two three four five", width, 2, Look.LABEL);
    assertEquals("one two", shortened.get(0));
    assertTrue(shortened.get(1).endsWith("…"));
    assertTrue(Letters.width(shortened.get(1), Look.LABEL) <= width);
    assertEquals("", Letters.fit("word", 1, Look.LABEL));
    assertFalse(Letters.fit("", 1, Look.LABEL).endsWith("…"));
  }

  @Test
  void temperaturesAreRoundedAsPeopleReadThem() {
    assertEquals("12.5 °C", Look.temperature(285.6, Units.METRIC));
    assertEquals("−2 °C", Look.temperature(271.1, Units.METRIC));
    assertEquals("0 °C", Look.temperature(273.1, Units.METRIC));
    assertEquals("−4 °F", Look.temperature(253.1, Units.US));
  }

  /** Air of 21 °C, give or take a hundredth, within walls that are colder. */
  @Test
  void noIsothermRunsThroughNoise() {
    double[] edges = new double[21];
    double[][] temperatures = new double[20][20];
    for (int i = 0; i < 20; i++) {
      edges[i + 1] = (i + 1) * 0.01;
      for (int j = 0; j < 20; j++) {
        int wall = Math.min(Math.min(i, 19 - i), Math.min(j, 19 - j));
        double noise = 0.01 * Math.sin(7 * i + 3 * j);
        temperatures[i][j] = 294.15 + noise - 4 * Math.max(0, 3 - wall);
      }
    }
    SectionField field = new SectionField(edges, edges, temperatures);
    assertFalse(field.placesIsotherm(294.15, 0.1));
    assertTrue(field.placesIsotherm(288.15, 0.1));
    assertTrue(field.placesIsotherm(294.15, 0), "only what is surely not noise is left out");
  }
}
