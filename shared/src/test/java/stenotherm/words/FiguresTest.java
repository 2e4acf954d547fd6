package stenotherm.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.fromFahrenheit;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Masses;
import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Times;
import stenotherm.base.Volumes;

class FiguresTest {
  @ParameterizedTest
  @CsvSource({
    "4.5,    4.5 °C (40 °F),  40 °F (4.5 °C)",
    "4.74,   4.5 °C (40 °F),  41 °F (5 °C)",
    "12.45,  12.5 °C (54 °F), 54 °F (12 °C)",
    "0,      0 °C (32 °F),    32 °F (0 °C)",
    "-0.1,   0 °C (32 °F),    32 °F (0 °C)",
    "-40,    -40 °C (-40 °F), -40 °F (-40 °C)",
    "-17.8,  -18 °C (0 °F),   0 °F (-18 °C)",
    "20,     20 °C (68 °F),   68 °F (20 °C)"
  })
  void temperature(double celsius, String metric, String us) {
    assertEquals(metric, Figures.METRIC.temperature(fromCelsius(celsius)));
    assertEquals(us, Figures.US.temperature(fromCelsius(celsius)));
  }

  /** Whoever converts the number shown first and rounds finds the number in brackets. */
  @Test
  void bothScalesSayTheSame() {
    for (double kelvin = 230; kelvin < 360; kelvin += 0.0371) {
      String[] metric = Figures.METRIC.temperature(kelvin).split("[^-.0-9]+");
      double fahrenheit = 1.8 * Double.parseDouble(metric[0]) + 32;
      assertEquals(fahrenheit, Double.parseDouble(metric[1]), 0.5 + 1e-9);
      assertEquals(kelvin, fromCelsius(Double.parseDouble(metric[0])), 0.25 + 1e-9);
      String[] us = Figures.US.temperature(kelvin).split("[^-.0-9]+");
      double celsius = (Double.parseDouble(us[0]) - 32) / 1.8;
      assertEquals(celsius, Double.parseDouble(us[1]), 0.25 + 1e-9);
      assertEquals(kelvin, fromFahrenheit(Double.parseDouble(us[0])), 0.5 / 1.8 + 1e-9);
    }
  }

  @Test
  void differenceKnowsNoThirtyTwo() {
    double tenFahrenheit = TemperatureDifferences.fromFahrenheit(10);

    assertEquals("10.0 F° (5.6 K)", Figures.US.difference(tenFahrenheit));
    assertEquals("5.6 K (10.1 F°)", Figures.METRIC.difference(tenFahrenheit));
    assertEquals("2.5 K (4.5 F°)", Figures.METRIC.difference(2.5));
    assertEquals("0.0 K (0.0 F°)", Figures.METRIC.difference(-0.04));
    assertEquals("-3.0 K (-5.4 F°)", Figures.METRIC.difference(-3));
    assertEquals("0.0 F° (0.0 K)", Figures.US.difference(0));
  }

  @Test
  void lengths() {
    assertEquals("19 mm", Figures.METRIC.length(Lengths.fromInches(0.75)));
    assertEquals("0.75 in", Figures.US.length(Lengths.fromInches(0.75)));
    assertEquals("0.8 mm", Figures.METRIC.length(0.00084));
    assertEquals("305 mm", Figures.METRIC.length(0.3048));
    assertEquals("12 in", Figures.US.length(0.3048));
    assertEquals("11.8 in", Figures.US.length(0.3));
    assertEquals("0 mm", Figures.METRIC.length(0));
  }

  @Test
  void masses() {
    assertEquals("3.5 g", Figures.METRIC.mass(0.0035));
    assertEquals("250 g", Figures.METRIC.mass(0.25));
    assertEquals("1 kg", Figures.METRIC.mass(0.9996));
    assertEquals("2.35 kg", Figures.METRIC.mass(2.346));
    assertEquals("8.8 oz", Figures.US.mass(0.25));
    assertEquals("15.9 oz", Figures.US.mass(Masses.fromOunces(15.94)));
    assertEquals("1 lb", Figures.US.mass(Masses.fromOunces(15.96)));
    assertEquals("5.2 lb", Figures.US.mass(2.346));
  }

  @Test
  void volumesPowersAndHeat() {
    assertEquals("12.5 L", Figures.METRIC.volume(Volumes.fromLitres(12.5)));
    assertEquals("0.44 cu ft", Figures.US.volume(Volumes.fromLitres(12.5)));
    assertEquals("1.25 W", Figures.power(1.25));
    assertEquals("-0.4 W", Figures.power(-0.4));
    assertEquals("12.3 W", Figures.power(12.34));
    assertEquals("35.2 kJ", Figures.heat(35_200));
    assertEquals("-352 kJ", Figures.heat(-352_400));
    assertEquals("0 kJ", Figures.heat(-0.2));
  }

  @Test
  void durations() {
    assertEquals("0 s", Figures.duration(0));
    assertEquals("45 s", Figures.duration(45));
    assertEquals("1 min", Figures.duration(59.6));
    assertEquals("30 min", Figures.duration(Times.fromMinutes(30)));
    assertEquals("1 h", Figures.duration(3599));
    assertEquals("2 h 30 min", Figures.duration(9000));
    assertEquals("96 h", Figures.duration(Times.fromHours(96)));
  }

  @Test
  void clocks() {
    LocalDateTime time = LocalDateTime.of(2013, 12, 13, 4, 30);

    assertEquals("04:30", Figures.clock(time));
    assertEquals("13 Dec 04:30", Figures.dayAndClock(time));
    assertEquals("-0.1", Figures.tenth(-0.06));
    assertEquals("0.0", Figures.tenth(-0.04));
    assertEquals("us", Units.US.label());
  }

  @Test
  void refusesWhatIsNoQuantity() {
    assertThrows(InvalidInputException.class, () -> Figures.METRIC.temperature(Double.NaN));
    assertThrows(
        InvalidInputException.class, () -> Figures.US.difference(Double.POSITIVE_INFINITY));
    assertThrows(InvalidInputException.class, () -> Figures.METRIC.mass(-1));
    assertThrows(InvalidInputException.class, () -> Figures.duration(Double.NaN));
  }

  @Test
  void columnsOfDifferencesHaveOneUnit() {
    assertEquals("5.6", Figures.METRIC.degrees(10 / 1.8));
    assertEquals("10.0", Figures.US.degrees(10 / 1.8));
    assertEquals("0.0", Figures.US.degrees(-0.01));
    assertEquals("K", Figures.METRIC.differenceUnit());
    assertEquals("F°", Figures.US.differenceUnit());
  }
}
