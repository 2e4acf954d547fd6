package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.material.Materials;

class BenchTest {
  private static final double ROOM = Temperatures.fromCelsius(20);

  private static WarmerClass heater(TimeFunction power) {
    WarmerClass pad = Warmers.FORTY_HOUR;
    return new WarmerClass(
        "heater",
        pad.size(),
        pad.mass(),
        new PrescribedPower(power),
        new Range(1, 1),
        Source.assumed("a test"));
  }

  /** A lump of one time constant under constant power: its closed form. */
  @Test
  void aConstantPowerHeatsAsAnExponential() {
    double watts = 2;
    WarmerClass heater = heater(TimeFunction.constant(watts));
    // 0.128 m x 0.082 m, edges of 12 mm
    double face = 0.010496;
    double edges = 0.00504;
    double conductance = face / 0.2 + (face + edges) / 0.4;
    double rest = (face / 0.2 * 303.15 + (face + edges) / 0.4 * 293.15) / conductance;
    double constant = 0.1 * 1360 / conductance;
    BenchRun run = Bench.RATING.opened(heater, Times.fromHours(3));
    for (double minutes : new double[] {1, 20, 60, 180}) {
      double time = Times.fromMinutes(minutes);
      double warm = rest + watts / conductance;
      assertEquals(warm + (293.15 - warm) * Math.exp(-time / constant), run.curve().at(time), 1e-6);
    }
    assertEquals(watts, run.peakPower(), 1e-12);
    assertEquals(watts * Times.fromHours(3), run.state().heat(), 1e-6);
    assertEquals(0, run.state().conversion());
    assertEquals(conductance, Bench.RATING.conductance(heater.size()), 1e-12);
  }

  /** Against Euler's method in steps of 0.2 s, written apart. */
  @Test
  void runsAgreeWithASimplerMethod() {
    WarmerClass warmer = Warmers.TEN_HOUR;
    IronPowder powder = (IronPowder) warmer.heat();
    double face = 0.091 * 0.055;
    double edges = 2 * 0.146 * 0.006;
    double temperature = 293.15;
    double conversion = 0;
    double step = 0.2;
    int steps = (int) Math.round(Times.fromHours(2) / step);
    for (int count = 0; count < steps; count++) {
      double uptake =
          powder.uptake(conversion, count * step, new IronPowder.Supply(1, 101_325, temperature))
              * 0.2095
              * 101_325;
      double power = uptake * powder.product().heatPerOxygen();
      double loss =
          face / 0.2 * (temperature - 303.15) + (face + edges) / 0.4 * (temperature - 293.15);
      temperature += step * (power - loss) / (0.020 * 1360);
      conversion += step * uptake * powder.conversionPerOxygen();
    }
    BenchRun run = Bench.RATING.opened(warmer, Times.fromHours(2));
    assertEquals(temperature, run.state().temperature(), 0.01);
    assertEquals(conversion, run.state().conversion(), 1e-4);
  }

  /** {@code warmer} does not see {@code material}; both have one value. */
  @Test
  void specificHeatIsThatOfTheMaterial() {
    assertEquals(Materials.WARMER_MIX_FRESH.specificHeat(), Bench.SPECIFIC_HEAT);
  }

  /**
   * Regression: an earlier numerical trial of our own, with another method. Pads of the areas,
   * capacities and wetting times of the trial; 540 kJ/mol and 7.2 kJ/g there, so that film and iron
   * are scaled. Its numbers have two or three digits, its iron among them.
   */
  @ParameterizedTest
  @CsvSource({
    // face, circumference and thickness; capacity, wetting, K A 1e-10, iron g
    "0.0909, 0.0550, 0.00788,  30, 120, 1.62,  7.3, 10,  9,  7, 1.1, 57.9, 1.76, 1.39,"
        + " 66, 64, 60, 54, 47, .97",
    "0.1281, 0.0820, 0.01190, 145, 600, 2.51, 48.0, 40, 30, 21, 3.0, 49.7, 2.68, 2.18,"
        + " 55, 54, 51, 47, 43, .91",
    "0.1333, 0.0840, 0.01265, 187, 700, 2.35, 72.0, 60, 42, 29, 3.8, 46.9, 2.48, 2.07,"
        + " 51, 50, 48, 45, 42, .87",
    "0.1372, 0.0860, 0.01300, 222, 800, 2.20, 89.0, 72, 56, 37, 4.3, 44.9, 2.30, 1.97,"
        + " 48, 47, 45, 43, 41, .80"
  })
  void classesOfTheTrial(
      double length,
      double width,
      double thickness,
      double capacity,
      double wetting,
      double conductance,
      double grams,
      double hours,
      double rise,
      double warm,
      double peakHour,
      double mean,
      double highest,
      double usual,
      double at10,
      double at25,
      double at50,
      double at75,
      double at90,
      double conversion) {
    WarmerClass.PadSize size = new WarmerClass.PadSize(length, width, thickness);
    double film = conductance * 1e-10 * 540 / 542;
    double iron = grams / 1000 * 7.2 / 7.279;
    IronPowder powder =
        new IronPowder(
            iron,
            new AirFilm(film / size.face(), size.face(), AirFilm.Transport.KNUDSEN),
            0.5,
            new PowderKinetics(8 * film / iron, 40e3, wetting),
            OxidationProduct.LEPIDOCROCITE);
    BenchRun run = Bench.RATING.run(size, powder, capacity, ROOM);
    BenchCurve curve = run.curve();
    assertEquals(rise, Times.toMinutes(curve.rise()), 1);
    assertEquals(warm, Times.toMinutes(curve.reaches(BenchCurve.WARM)), 1);
    assertEquals(peakHour, Times.toHours(curve.peakTime()), 0.15);
    assertEquals(mean, Temperatures.toCelsius(curve.mean()), 0.2);
    assertEquals(highest, run.peakPower(), 0.015);
    assertEquals(usual, run.meanPower(), 0.015);
    assertEquals(hours, Times.toHours(curve.duration()), 0.015 * hours);
    double[] parts = {0.10, 0.25, 0.50, 0.75, 0.90};
    double[] celsius = {at10, at25, at50, at75, at90};
    for (int row = 0; row < parts.length; row++) {
      double time = parts[row] * Times.fromHours(hours);
      // areas and iron of two digits move rise and time by up to 1 %
      double rounding =
          0.5
              + 0.01 * (curve.at(time) - Temperatures.fromCelsius(27))
              + Math.abs(curve.at(1.01 * time) - curve.at(time));
      double found = Temperatures.toCelsius(curve.at(time));
      assertEquals(celsius[row], found, rounding, "at " + parts[row]);
    }
    assertTrue(run.state().conversion() >= conversion - 0.01);
  }

  /**
   * On a bare table even long classes stay lukewarm; in a cloth they are warm to the touch after 20
   * to 45 minutes, as practice has it.
   */
  @Test
  void warmersOpenedInARoom() {
    for (WarmerClass warmer :
        new WarmerClass[] {Warmers.FORTY_HOUR, Warmers.SIXTY_HOUR, Warmers.SEVENTY_TWO_HOUR}) {
      BenchCurve bare = Bench.onTable(ROOM).run(warmer).curve();
      assertEquals(Double.POSITIVE_INFINITY, bare.reaches(BenchCurve.WARM), warmer.name());
      BenchCurve covered = Bench.wrapped(ROOM).run(warmer).curve();
      double warm = Times.toMinutes(covered.reaches(BenchCurve.WARM));
      assertTrue(warm > 20 && warm < 45, warmer.name() + ": " + warm);
      assertTrue(covered.plateau() > covered.reaches(BenchCurve.WARM));
      // half an hour of opening costs hardly any iron
      BenchRun.BenchState state = Bench.wrapped(ROOM).opened(warmer, Times.fromMinutes(30)).state();
      assertTrue(state.conversion() < 0.02, warmer.name());
      assertEquals(covered.at(Times.fromMinutes(30)), state.temperature(), 1e-9);
    }
  }

  @Test
  void badBenchesAreRefused() {
    assertThrows(InvalidInputException.class, () -> new Bench.BenchSide(0, ROOM));
    // degrees Celsius for kelvin
    assertThrows(InvalidInputException.class, () -> new Bench.BenchSide(0.2, 20));
    assertThrows(InvalidInputException.class, () -> Bench.RATING.opened(Warmers.FORTY_HOUR, 0));
    assertThrows(InvalidInputException.class, () -> Bench.RATING.opened(Warmers.FORTY_HOUR, 1e6));
  }
}
