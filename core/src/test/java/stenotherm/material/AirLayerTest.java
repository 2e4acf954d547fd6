package stenotherm.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Temperatures;

class AirLayerTest {
  private static final double TEN_CELSIUS = Temperatures.fromCelsius(10);

  /**
   * ISO 6946:2017, table of unventilated air layers (thickness in mm; upward, horizontal, downward
   * in m2 K/W): every entry, two decimals as printed.
   */
  @ParameterizedTest
  @CsvSource({
    "5, 0.11, 0.11, 0.11",
    "7, 0.13, 0.13, 0.13",
    "10, 0.15, 0.15, 0.15",
    "15, 0.16, 0.17, 0.17",
    "25, 0.16, 0.18, 0.19",
    "50, 0.16, 0.18, 0.21",
    "100, 0.16, 0.18, 0.22",
    "300, 0.16, 0.18, 0.23"
  })
  void tableOfIso6946(double millimetres, double up, double sideways, double down) {
    double thickness = millimetres / 1000;
    assertEquals(up, printed(AirLayer.ordinary(HeatDirection.UPWARD, thickness)));
    assertEquals(sideways, printed(AirLayer.ordinary(HeatDirection.HORIZONTAL, thickness)));
    assertEquals(down, printed(AirLayer.ordinary(HeatDirection.DOWNWARD, thickness)));
  }

  private static double printed(AirLayer layer) {
    return Math.round(100 * layer.resistance(TEN_CELSIUS)) / 100.0;
  }

  /**
   * ASHRAE Fundamentals 2021, ch. 26, Table 3, 10 °C mean and 5.6 K: another method, measured
   * spaces. Ten percent is how far the two methods differ for foil and for heat upward.
   */
  @ParameterizedTest
  @CsvSource({
    "HORIZONTAL, 0.013, 0.9, 0.16",
    "HORIZONTAL, 0.013, 0.05, 0.45",
    "HORIZONTAL, 0.020, 0.9, 0.18",
    "HORIZONTAL, 0.020, 0.05, 0.61",
    "HORIZONTAL, 0.040, 0.9, 0.18",
    "HORIZONTAL, 0.040, 0.05, 0.62",
    "UPWARD, 0.020, 0.9, 0.15",
    "DOWNWARD, 0.020, 0.9, 0.18",
    "DOWNWARD, 0.020, 0.05, 0.63"
  })
  void agreesWithAshraeWithinTenPercent(
      HeatDirection heatFlow, double thickness, double emissivity, double printed) {
    // The effective emissivity of the printed foil rows is 0.05: foil opposite a black surface.
    double other = emissivity < 0.5 ? 1 : emissivity;
    AirLayer layer = new AirLayer(heatFlow, thickness, emissivity, other);
    assertEquals(printed, layer.resistance(TEN_CELSIUS, 5.6), 0.1 * printed);
  }

  @Test
  void theTwoRulesForTheDifferenceMeetAtFiveKelvin() {
    for (HeatDirection heatFlow : HeatDirection.values()) {
      AirLayer layer = AirLayer.ordinary(heatFlow, 0.1);
      double below = layer.resistance(TEN_CELSIUS, 5);
      double above = layer.resistance(TEN_CELSIUS, 5.000001);
      assertEquals(below, above, 0.01 * below, heatFlow.name());
    }
  }

  @Test
  void effectiveConductivityIsThicknessOverResistance() {
    AirLayer layer = AirLayer.ordinary(HeatDirection.UPWARD, 0.02);
    assertEquals(0.02, layer.effectiveConductivity(280) * layer.resistance(280), 1e-15);
  }

  @Test
  void foilInsulates() {
    AirLayer foil = new AirLayer(HeatDirection.HORIZONTAL, 0.02, 0.05, 0.9);
    AirLayer board = AirLayer.ordinary(HeatDirection.HORIZONTAL, 0.02);
    assertTrue(foil.resistance(TEN_CELSIUS) > 3 * board.resistance(TEN_CELSIUS));
  }

  @Test
  void refusesWhatIsNoLayer() {
    assertThrows(
        InvalidInputException.class, () -> AirLayer.ordinary(HeatDirection.HORIZONTAL, 0.31));
    assertThrows(InvalidInputException.class, () -> AirLayer.ordinary(HeatDirection.HORIZONTAL, 0));
    assertThrows(
        InvalidInputException.class, () -> new AirLayer(HeatDirection.UPWARD, 0.01, 0.9, 1.2));
    assertThrows(
        InvalidInputException.class,
        () -> AirLayer.ordinary(HeatDirection.UPWARD, 0.01).resistance(280, -1));
  }
}
