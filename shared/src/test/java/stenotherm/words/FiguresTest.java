package stenotherm.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static stenotherm.base.Temperatures.fromCelsius;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Masses;
import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Times;

class FiguresTest {
  /** Readers have their own scale alone. */
  @ParameterizedTest
  @CsvSource({
    "4.5,    4.5 °C,  40 °F",
    "4.74,   4.5 °C,  41 °F",
    "12.45,  12.5 °C, 54 °F",
    "0,      0 °C,    32 °F",
    "-0.1,   0 °C,    32 °F",
    "-40,    -40 °C,  -40 °F",
    "-17.8,  -18 °C,  0 °F",
    "20,     20 °C,   68 °F",
    "37.8,   38 °C,   100 °F"
  })
  void temperature(double celsius, String metric, String us) {
    assertEquals(metric, Figures.METRIC.temperature(fromCelsius(celsius)));
    assertEquals(us, Figures.US.temperature(fromCelsius(celsius)));
  }

  @Test
  void differenceKnowsNoThirtyTwo() {
    double tenFahrenheit = TemperatureDifferences.fromFahrenheit(10);

    assertEquals("10.0 F°", Figures.US.difference(tenFahrenheit));
    assertEquals("5.6 C°", Figures.METRIC.difference(tenFahrenheit));
    assertEquals("0.0 C°", Figures.METRIC.difference(-0.04));
    assertEquals("-3.0 C°", Figures.METRIC.difference(-3));
    assertEquals("0.03", Figures.METRIC.hundredths(0.031));
    assertEquals("0.06", Figures.US.hundredths(0.031));
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

  /** Parts of an inch that a tape has: finer ones for foam and gaps than for places. */
  @ParameterizedTest
  @CsvSource({
    "0,      0 in",
    "0.02,   under 1/16 in",
    "0.157,  3/16 in",
    "0.25,   1/4 in",
    "0.75,   3/4 in",
    "0.98,   1 in",
    "1.03,   1 in",
    "2.73,   2 3/4 in",
    "8.315,  8 3/8 in",
    "12,     12 in"
  })
  void lengthsOnATape(double inches, String us) {
    assertEquals(us, Figures.US.tape(Lengths.fromInches(inches)));
  }

  /** What is cut too large does not go in. */
  @Test
  void panelsAreNeverLargerThanTheirRoom() {
    assertEquals("9 7/8 x 5 1/2 in", Figures.US.cutSize(Lengths.fromInches(9.99), 5.5 * 0.0254));
    assertEquals("8 x 2 1/8 in", Figures.US.cutSize(9.5 * 0.0254 - 1.5 * 0.0254, 0.0569));
    assertEquals("199 x 200 mm", Figures.METRIC.cutSize(0.1999, 0.1 + 0.07 + 0.03));
    assertThrows(InvalidInputException.class, () -> Figures.US.cutSize(0.1, -1e-3));
  }

  @Test
  void tapesAndDrills() {
    assertEquals("4.2 mm", Figures.METRIC.tape(0.0042));
    assertEquals("200 x 170 x 154 mm", Figures.METRIC.tapeSize(0.2, 0.17, 0.154));
    assertEquals("7 7/8 x 6 3/4 x 6 1/8 in", Figures.US.tapeSize(0.2, 0.17, 0.154));
    assertEquals("6 mm", Figures.METRIC.drill(0.006));
    assertEquals("15/64 in", Figures.US.drill(0.006));
    assertEquals("5/64 in", Figures.US.drill(0.002));
    assertThrows(InvalidInputException.class, () -> Figures.US.tape(-1e-3));
  }

  @Test
  void masses() {
    assertEquals("3.5 g", Figures.METRIC.mass(0.0035));
    assertEquals("250 g", Figures.METRIC.mass(0.25));
    assertEquals("1 kg", Figures.METRIC.mass(0.9996));
    assertEquals("2.35 kg", Figures.METRIC.mass(2.346));
    assertEquals("0.02 g", Figures.METRIC.mass(0.000_02));
    assertEquals("0.1 g", Figures.METRIC.mass(0.000_099_6));
    assertEquals("0 oz", Figures.US.mass(0));
    assertEquals("0.1 g", Figures.US.mass(0.0001));
    assertEquals("1 g", Figures.US.mass(0.001));
    assertEquals("2.8 g", Figures.US.mass(Masses.fromOunces(0.0999)));
    assertEquals("0.1 oz", Figures.US.mass(Masses.fromOunces(0.1001)));
    assertEquals("0.94 oz", Figures.US.mass(Masses.fromOunces(0.944)));
    assertEquals("1 oz", Figures.US.mass(Masses.fromOunces(0.96)));
    assertEquals("8.8 oz", Figures.US.mass(0.25));
    assertEquals("15.9 oz", Figures.US.mass(Masses.fromOunces(15.94)));
    assertEquals("1 lb", Figures.US.mass(Masses.fromOunces(15.96)));
    assertEquals("5.2 lb", Figures.US.mass(2.346));
  }

  @Test
  void sizesPowersAndHeat() {
    assertEquals("200 x 170 x 154 mm", Figures.METRIC.size(0.2, 0.17, 0.154));
    assertEquals("7.9 x 6.7 x 6.1 in", Figures.US.size(0.2, 0.17, 0.154));
    assertEquals("1.25 W", Figures.power(1.25));
    assertEquals("-0.4 W", Figures.power(-0.4));
    assertEquals("12.3 W", Figures.power(12.34));
    assertEquals("35.2 kJ", Figures.heat(35_200));
    assertEquals("-352 kJ", Figures.heat(-352_400));
    assertEquals("0.04 kJ", Figures.heat(38));
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
    assertEquals("13 Dec 04:30", Figures.METRIC.dayAndClock(time));
    assertEquals("Fri 13 Dec 04:30", Figures.METRIC.weekdayAndClock(time));
    assertEquals("04:30 on 13 December", Figures.METRIC.clockOnDay(time));
    assertEquals("Dec 13 04:30", Figures.US.dayAndClock(time));
    assertEquals("Fri Dec 13 04:30", Figures.US.weekdayAndClock(time));
    assertEquals("04:30 on December 13", Figures.US.clockOnDay(time));
    assertEquals("Friday 13 December", Figures.METRIC.day(time.toLocalDate()));
    assertEquals("Fri 13 Dec", Figures.METRIC.shortDay(time.toLocalDate()));
    assertEquals("Friday December 13", Figures.US.day(time.toLocalDate()));
    assertEquals("Fri Dec 13", Figures.US.shortDay(time.toLocalDate()));
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
    assertEquals("C°", Figures.METRIC.differenceUnit());
    assertEquals("F°", Figures.US.differenceUnit());
  }
}
