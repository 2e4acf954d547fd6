package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
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
    LabelPlacer placer = new LabelPlacer(new Rectangle2D.Double(0, 0, 100, 100));
    Candidate first = new Candidate(new Rectangle2D.Double(10, 10, 20, 10), 0);
    Candidate second = new Candidate(new Rectangle2D.Double(10, 50, 20, 10), 5);
    Candidate outside = new Candidate(new Rectangle2D.Double(90, 10, 20, 10), 0);

    placer.avoid(new Line2D.Double(0, 55, 100, 55));
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
      double luma = 0.299 * color.getRed() + 0.587 * color.getGreen() + 0.114 * color.getBlue();
      assertTrue(luma > last, "level " + level);
      last = luma;
    }
  }

  @Test
  void colorsCoverTheRange() {
    ColorScale scale = new ColorScale(new Range(270, 300));

    assertEquals(0, scale.level(270));
    assertEquals(0, scale.level(200));
    assertEquals(ColorScale.LEVELS / 2, scale.level(285));
    assertEquals(ColorScale.LEVELS - 1, scale.level(300));
  }

  @Test
  void isothermOfALinearFieldIsStraight() {
    double[] edges = {0, 1, 3, 4};
    double[][] temperatures = {{300.5, 300.5, 300.5}, {302, 302, 302}, {303.5, 303.5, 303.5}};
    SectionField field = new SectionField(edges, edges, temperatures);

    List<Line2D> pieces = Isotherms.find(field, 301);

    assertEquals(2, pieces.size());
    for (Line2D piece : pieces) {
      assertEquals(1, piece.getX1(), 1e-12);
      assertEquals(1, piece.getX2(), 1e-12);
    }
    assertTrue(Isotherms.find(field, 400).isEmpty());
  }

  @Test
  void textsAreBrokenBetweenWordsAndShortened() {
    double width = Letters.width("one two", Look.LABEL) + 1;

    assertEquals(List.of("one two", "three"), Letters.wrap("one two three", width, 3, Look.LABEL));
    List<String> shortened = Letters.wrap("one two three four five", width, 2, Look.LABEL);
    assertEquals("one two", shortened.get(0));
    assertTrue(shortened.get(1).endsWith("…"));
    assertTrue(Letters.width(shortened.get(1), Look.LABEL) <= width);
    assertEquals("", Letters.fit("word", 1, Look.LABEL));
    assertFalse(Letters.fit("", 1, Look.LABEL).endsWith("…"));
  }

  @Test
  void temperaturesAreRoundedAsPeopleReadThem() {
    assertEquals("12.5 °C (54 °F)", Look.bothUnits(285.6, Units.METRIC));
    assertEquals("−2 °C (28 °F)", Look.bothUnits(271.1, Units.METRIC));
    assertEquals("0 °C (32 °F)", Look.bothUnits(273.1, Units.METRIC));
    assertEquals("−4 °F (−20 °C)", Look.bothUnits(253.1, Units.US));
  }
}
