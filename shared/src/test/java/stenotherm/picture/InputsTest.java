package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

class InputsTest {
  private static final double[] TWO = {0, 1};

  private static void assertRefused(Executable action) {
    assertThrows(InvalidInputException.class, action);
  }

  @Test
  void curvesCheckThemselves() {
    double[] temperatures = {290, 291};
    assertRefused(() -> Curve.of(" ", TWO, temperatures));
    assertRefused(() -> Curve.of("a", new double[] {1, 0}, temperatures));
    assertRefused(() -> Curve.of("a", new double[] {0}, temperatures));
    assertRefused(() -> Curve.of("a", new double[] {0}, new double[] {290}));
    assertRefused(() -> Curve.of("a", TWO, new double[] {290, Double.NaN}));
    assertRefused(() -> new Curve.Reading(Double.POSITIVE_INFINITY, 290));
    assertRefused(() -> TemperatureChart.titled("a").build());
    Curve instant = Curve.of("a", new double[] {5, 5}, temperatures);
    assertRefused(() -> TemperatureChart.titled("a").curve(instant).build());
    assertRefused(
        () -> TemperatureChart.titled("").curve(Curve.of("a", TWO, temperatures)).build());
  }

  @Test
  void curvesCopyTheirTables() {
    double[] temperatures = {290, 291};
    Curve curve = Curve.of("a", TWO, temperatures);
    temperatures[0] = 0;

    assertEquals(List.of(new Curve.Reading(0, 290), new Curve.Reading(1, 291)), curve.points());
  }

  @Test
  void sectionsCheckThemselves() {
    double[][] temperatures = {{290}};
    SectionField field = new SectionField(TWO, TWO, temperatures);
    temperatures[0][0] = 0;

    assertEquals(new Range(290, 290), field.temperatureRange());
    assertRefused(() -> new SectionField(TWO, TWO, temperatures));
    assertRefused(() -> new SectionField(TWO, TWO, new double[][] {{290, 290}}));
    assertRefused(() -> new SectionField(TWO, TWO, new double[][] {}));
    assertRefused(() -> new SectionField(new double[] {0, 0}, TWO, new double[][] {{290}}));
    assertRefused(() -> new SectionField(new double[] {0}, TWO, new double[][] {}));
    SectionPicture.Builder outside =
        SectionPicture.titled("a", field)
            .outline(new Outline("b", new Range(0, 2), new Range(0, 1)));
    assertRefused(outside::build);
    assertRefused(() -> SectionPicture.titled("a", field).spot(new Spot("b", -1, 0)).build());
    assertRefused(() -> SectionPicture.titled("a", field).isotherm(0));
  }

  @Test
  void levelsAreSharesWithAName() {
    for (double wrong : new double[] {0, 1, -0.1, Double.NaN}) {
      assertRefused(() -> OddsChart.titled("a").level(wrong, "holds"));
    }
    assertRefused(() -> OddsChart.titled("a").level(0.8, " "));
  }
}
