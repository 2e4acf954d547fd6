package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** A refused number is named in the unit in which it was written, or in one that suits it. */
class WrittenUnitsTest {
  private static void refused(String message, Executable call) {
    assertEquals(message, assertThrows(InvalidInputException.class, call).getMessage());
  }

  @Test
  void temperatures() {
    refused(
        "temperature: 294 °C must lie between -73.15 °C and 76.85 °C. Is it in kelvin?",
        () -> Temperature.celsius(294));
    refused(
        "temperature: 85 °C must lie between -73.15 °C and 76.85 °C."
            + " Is it in degrees Fahrenheit?",
        () -> Temperature.celsius(85));
    refused(
        "temperature: 1000 °C must lie between -73.15 °C and 76.85 °C",
        () -> Temperature.celsius(1000));
    refused(
        "temperature: 294 °F must lie between -99.67 °F and 170.33 °F. Is it in kelvin?",
        () -> Temperature.fahrenheit(294));
    refused(
        "temperature: NaN °F must lie between -99.67 °F and 170.33 °F",
        () -> Temperature.fahrenheit(Double.NaN));
    refused(
        "temperature: 20 K must lie between 200 K and 350 K. Temperatures are absolute, in kelvin:"
            + " 20 °C is 293.15 K.",
        () -> new Temperature(20));
  }

  @Test
  void lengths() {
    refused("length: NaN mm is not a finite number", () -> Length.millimetres(Double.NaN));
    refused(
        "length: Infinity in is not a finite number",
        () -> Length.inches(Double.POSITIVE_INFINITY));
    refused("thickness: -3 mm must be above 0", () -> Checks.extent("thickness", -0.003));
    refused(
        "thickness: NaN mm must be a finite number above 0",
        () -> Checks.extent("thickness", Double.NaN));
    assertEquals(0.003, Checks.extent("thickness", 0.003));
  }

  @Test
  void masses() {
    refused("mass: -3 g must be a finite number above 0", () -> Mass.grams(-3));
    refused("mass: 0 oz must be a finite number above 0", () -> Mass.ounces(0));
    refused("mass: NaN lb must be a finite number above 0", () -> Mass.pounds(Double.NaN));
    Range animals = new Range(0.0001, 20);
    refused(
        "mass: 0.035 g must lie between 0.1 g and 20 kg. Is it in kilograms?",
        () -> Checks.mass("mass", Mass.grams(0.035).kilograms(), animals, ""));
    refused(
        "mass: 35 kg must lie between 0.1 g and 20 kg. Is it in grams?",
        () -> Checks.mass("mass", 35, animals, ""));
    refused(
        "mass: 500000 kg must lie between 0.1 g and 20 kg. Weigh it.",
        () -> Checks.mass("mass", 5e5, animals, "Weigh it."));
    assertEquals(0.035, Checks.mass("mass", 0.035, animals, ""));
  }

  @Test
  void durations() {
    Range legs = new Range(60, 30 * Times.DAY);
    refused("stay: 0 s must lie between 1 min and 30 days", () -> of(Duration.ZERO, legs));
    refused(
        "stay: 8 s must lie between 1 min and 30 days. Is it in hours?",
        () -> Checks.duration("stay", 8, legs));
    refused("stay: -2 h must lie between 1 min and 30 days", () -> of(Duration.ofHours(-2), legs));
    refused(
        "stay: 40 days must lie between 1 min and 30 days", () -> of(Duration.ofDays(40), legs));
    refused(
        "stay: 2592000.001 s must lie between 1 min and 30 days",
        () -> of(Duration.ofDays(30).plusMillis(1), legs));
    refused(
        "stay: 1.06752e+14 days must lie between 1 min and 30 days",
        () -> of(Duration.ofSeconds(Long.MAX_VALUE), legs));
    assertEquals(5400.25, of(Duration.ofMinutes(90).plusMillis(250), legs));
  }

  private static double of(Duration written, Range allowed) {
    return Checks.duration("stay", Times.seconds(written), allowed);
  }
}
