package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.Point;
import stenotherm.parcel.Packings;
import stenotherm.transit.Factor;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

class LoggerFitTest {
  private static final TransitSettings COARSE =
      new TransitSettings(Packings.COARSE, 900, IntegratorSettings.standard());

  private static final int ROWS = 97;
  private static final LoggerTrace LIKE = trace(273.15, 10, new double[2][ROWS]);
  private static final TestBox BOX = TestBox.of(Packings.plain(), LIKE, false, COARSE);

  /** A day, a row every quarter of an hour, inside at 20 °C unless readings are given. */
  private static LoggerTrace trace(double outside, double swing, double[][] inside) {
    double[] times = new double[ROWS];
    double[] air = new double[ROWS];
    for (int row = 0; row < ROWS; row++) {
      times[row] = 900.0 * row;
      air[row] = outside + swing * Math.sin(times[row] / 12_000);
      for (double[] readings : inside) {
        readings[row] = readings[row] == 0 ? 293.15 : readings[row];
      }
    }
    String cup = Packings.plain().containers().get(0).name();
    List<LoggerSensor> sensors =
        List.of(
            new LoggerSensor("middle", new SensorSpot.InCup(cup)),
            new LoggerSensor("low", new SensorSpot.AtPoint(new Point(0.06, 0.12, 0.06))));
    return new LoggerTrace(times, air, sensors, inside);
  }

  private static LoggerFit.Estimate of(LoggerFit fit, Factor factor) {
    return fit.estimates().stream()
        .filter(each -> each.quantity().factor() == factor)
        .findFirst()
        .orElseThrow();
  }

  private static LoggerQuantity quantity(Factor factor) {
    return BOX.quantities().stream()
        .filter(each -> each.factor() == factor)
        .findFirst()
        .orElseThrow();
  }

  private static double[][] computed(double fill, double gap) {
    return BOX.readings(
        LIKE,
        293.15,
        Variation.NOMINAL
            .with(Factor.FILL_CONDUCTIVITY, quantity(Factor.FILL_CONDUCTIVITY).position(fill))
            .with(Factor.SEAMS, quantity(Factor.SEAMS).position(gap)));
  }

  /** What pulls to usual values lets go where there is no noise but the least that is assumed. */
  @Test
  void findsKnownValuesWithoutNoise() {
    double fill = 1.1 * quantity(Factor.FILL_CONDUCTIVITY).nominal();
    double gap = 0.0009;
    LoggerFit fit = BOX.fit(trace(273.15, 10, computed(fill, gap)));
    int count = fit.estimates().size();
    assertEquals(1, fit.correlation(count - 1, count - 1), 1e-9);
    assertThrows(InvalidInputException.class, () -> fit.correlation(0, count));
    assertThrows(InvalidInputException.class, () -> fit.correlation(-1, 0));
    assertThrows(InvalidInputException.class, () -> fit.measured(-1));
    assertEquals(fill, of(fit, Factor.FILL_CONDUCTIVITY).value(), 0.03 * fill);
    assertEquals(gap, of(fit, Factor.SEAMS).value(), 0.03 * gap);
    assertEquals(293.15, fit.start(), 0.1);
    assertEquals(0, fit.offset(0), 0.05);
    assertEquals(0.05, fit.noise(), 0.01);
    double[] measured = fit.measured(1);
    double[] lines = fit.computed(1);
    for (int row = 0; row < measured.length; row++) {
      assertEquals(measured[row], lines[row], 0.05);
    }
  }

  /** The usual values are the solution there, whatever is assumed. */
  @Test
  void findsUsualValuesExactly() {
    double fill = quantity(Factor.FILL_CONDUCTIVITY).nominal();
    double gap = quantity(Factor.SEAMS).nominal();
    LoggerFit fit = BOX.fit(trace(273.15, 10, computed(fill, gap)));
    assertEquals(fill, of(fit, Factor.FILL_CONDUCTIVITY).value(), 1e-6 * fill);
    assertEquals(gap, of(fit, Factor.SEAMS).value(), 1e-6 * gap);
  }

  /** 90 % of 20 intervals hold the value: fewer than 14 of 20 would come by chance once in 400. */
  @Test
  void intervalsHoldKnownValuesWithNoise() {
    double usual = quantity(Factor.FILL_CONDUCTIVITY).nominal();
    Random random = new Random(97);
    int held = 0;
    for (int number = 0; number < 20; number++) {
      double fill = usual * (0.9 + 0.2 * random.nextDouble());
      double[][] inside = computed(fill, 0.0006);
      for (double[] readings : inside) {
        double offset = 0.3 * random.nextGaussian();
        for (int row = 0; row < readings.length; row++) {
          double noisy = readings[row] + offset + 0.1 * random.nextGaussian();
          readings[row] = 0.1 * Math.rint(noisy / 0.1);
        }
      }
      LoggerFit fit = BOX.fit(trace(273.15, 10, inside));
      held += of(fit, Factor.FILL_CONDUCTIVITY).interval().contains(fill) ? 1 : 0;
    }
    assertTrue(held >= 14, held + " of 20");
  }

  @Test
  void saysThatAFlatTraceTellsNothing() {
    LoggerTrace flat = trace(293.15, 0, new double[2][ROWS]);
    LoggerFit fit = BOX.fit(flat);
    assertFalse(of(fit, Factor.FILL_CONDUCTIVITY).isTold());
    assertTrue(fit.untold().get(0).startsWith("The trace is too flat"), fit.untold().toString());
    List<String> all = new ArrayList<>(fit.untold());
    assertTrue(all.contains("No strength is fitted: there is no warmer."), all.toString());
    assertTrue(
        all.stream().anyMatch(each -> each.contains("not tell the conductivity of the fill:")),
        all.toString());
  }

  @Test
  void refusesWhatCannotBeFitted() {
    double[] times = LIKE.times();
    InvalidInputException cup =
        assertThrows(
            InvalidInputException.class,
            () ->
                TestBox.of(
                    Packings.plain(),
                    new LoggerTrace(
                        times,
                        LIKE.outside(),
                        List.of(new LoggerSensor("a", new SensorSpot.InCup("none"))),
                        new double[][] {LIKE.inside(0)}),
                    false,
                    COARSE));
    assertEquals("cup of a sensor", cup.field());
    times[50] += 3 * 3600;
    InvalidInputException gap =
        assertThrows(
            InvalidInputException.class,
            () ->
                new LoggerTrace(
                    times,
                    LIKE.outside(),
                    LIKE.sensors(),
                    new double[][] {LIKE.inside(0), LIKE.inside(1)}));
    assertEquals("time, row 51", gap.field());
  }

  /** A fit that hardly gains ends after twenty steps; one that still gains, or is new, goes on. */
  @Test
  void aFitThatGainsNothingEnds() {
    assertTrue(LoggerLeastSquares.hasArrived(20, 1, 0.99995));
    assertTrue(LoggerLeastSquares.hasArrived(20, 1, 1));
    assertFalse(LoggerLeastSquares.hasArrived(19, 1, 0.99995));
    assertFalse(LoggerLeastSquares.hasArrived(30, 1, 0.999));
  }
}
