package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/** Judgements of random histories. */
class JudgeProperties {
  private static final int ROWS = 40;
  private static final double SLACK = 1e-9;

  private static double[] times(Random random) {
    double[] times = new double[ROWS];
    for (int row = 1; row < ROWS; row++) {
      times[row] = times[row - 1] + 60 + 1800 * random.nextDouble();
    }
    return times;
  }

  private static double[] temperatures(Random random) {
    double[] values = new double[ROWS];
    values[0] = 280 + 28 * random.nextDouble();
    for (int row = 1; row < ROWS; row++) {
      values[row] = values[row - 1] + 4 * random.nextDouble() - 2;
    }
    return values;
  }

  private static Fate fate(double[] times, double opening, double averaging, double[] values) {
    Judge judge =
        new Judge(
            List.of(JudgeTest.tolerance(averaging)), times, opening, JudgeTest.none(1, times));
    return judge.fate(new double[][] {values}, Double.POSITIVE_INFINITY);
  }

  /** Against the exact mean of a table, which is another code. */
  @Property(tries = 100)
  void runningMeansAreIntegralsOfLines(
      @ForAll long seed, @ForAll @DoubleRange(min = 60, max = 30_000) double span) {
    Random random = new Random(seed);
    double[] times = times(random);
    double[] values = temperatures(random);
    double[] means = Judge.runningMeans(times, values, span);
    TimeFunction table = TimeFunction.table(times, values);
    assertEquals(values[0], means[0]);
    for (int row = 1; row < ROWS; row++) {
      double from = Math.max(0, times[row] - span);
      assertEquals(table.mean(from, times[row]), means[row], SLACK);
    }
  }

  @Property(tries = 100)
  void aWarmerHistoryIsNeverColder(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 3) double warmer) {
    Random random = new Random(seed);
    double[] times = times(random);
    double[] cool = temperatures(random);
    double[] warm = cool.clone();
    for (int row = 0; row < ROWS; row++) {
      warm[row] += warmer * random.nextDouble();
    }
    double opening = times[25];
    Fate of = fate(times, opening, 3600, cool);
    Fate ofWarm = fate(times, opening, 3600, warm);
    assertTrue(ofWarm.cold().margin() >= of.cold().margin() - SLACK);
    assertTrue(ofWarm.hot().margin() <= of.hot().margin() + SLACK);
    assertTrue(ofWarm.cold().breach() >= of.cold().breach());
    assertTrue(ofWarm.hot().breach() <= of.hot().breach());
  }

  /** Margins of a history that is warmer throughout move by just as much. */
  @Property(tries = 100)
  void aShiftMovesBothMargins(
      @ForAll long seed, @ForAll @DoubleRange(min = -9, max = 9) double shift) {
    Random random = new Random(seed);
    double[] times = times(random);
    double[] values = temperatures(random);
    Fate of = fate(times, times[25], 3600, values);
    double[] shifted = values.clone();
    for (int row = 0; row < ROWS; row++) {
      shifted[row] += shift;
    }
    Fate ofShifted = fate(times, times[25], 3600, shifted);
    assertEquals(of.cold().margin() + shift, ofShifted.cold().margin(), SLACK);
    assertEquals(of.hot().margin() - shift, ofShifted.hot().margin(), SLACK);
  }

  /** What margins, breaches and the time outside say of one run never contradicts. */
  @Property(tries = 200)
  void oneRunIsToldInOneVoice(@ForAll long seed, @ForAll @IntRange(min = 1, max = 39) int last) {
    Random random = new Random(seed);
    double[] times = times(random);
    double[] values = temperatures(random);
    double opening = times[last];
    Fate fate = fate(times, opening, 3600, values);
    boolean outside = fate.cold().margin() < 0 || fate.hot().margin() < 0;
    if (outside) {
      assertTrue(fate.breach() <= opening);
    } else if (fate.breach() <= opening) {
      // by a critical limit then, which the mean need not reach
      Tolerance tolerance = JudgeTest.tolerance(3600);
      Range critical = tolerance.band(Limit.CRITICAL).range();
      int row = Arrays.binarySearch(times, fate.breach());
      assertTrue(values[row] < critical.low() || values[row] > critical.high());
    }
    assertTrue(fate.outside() <= opening);
    if (fate.outside() > 0) {
      assertTrue(outside);
    }
    // a later opening never leaves more
    Fate later = fate(times, times[ROWS - 1], 3600, values);
    assertTrue(
        later.cold().margin() <= fate.cold().margin()
            && later.hot().margin() <= fate.hot().margin());
    assertEquals(later.breach(), fate.breach());
    assertTrue(later.outside() >= fate.outside());
  }
}
