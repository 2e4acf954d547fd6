package stenotherm.validation.agreement;

import java.io.PrintStream;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.base.Workers;
import stenotherm.decision.LoggerFit;
import stenotherm.decision.LoggerQuantity;
import stenotherm.decision.LoggerSensor;
import stenotherm.decision.LoggerTrace;
import stenotherm.decision.SensorSpot;
import stenotherm.decision.TestBox;
import stenotherm.grid.Point;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.Factor;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * How often the 90 % intervals of fits to loggers' traces hold the values that the traces were made
 * with. Every trace has values of its own, drawn as {@link LoggerFit} expects them; its sensors
 * have an offset, and with the one outside noise that lasts an hour, and steps of 0.1 K.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class LoggerCoverage {
  /** Fixed before the first run. */
  private static final long SEED = 16_000;

  private static final String WITH_WARMER = ", warmer: 40 hour warmer on lid";

  private static final double INTERVAL = Times.fromMinutes(10);
  private static final int ROWS = 181;
  private static final double NOISE = 0.1;
  private static final double LASTING = Times.HOUR;
  private static final double STEP = 0.1;

  /** Half of the width that holds 90 % of a normal distribution, in standard deviations. */
  private static final double NINETY = 1.6449;

  /** What 90 % intervals must cover in 1000 traces [%]. */
  private static final double LEAST = 86;

  private static final double MOST = 94;

  private LoggerCoverage() {}

  /**
   * Prints the coverage for a box with a warmer, for one without, and for all traces.
   *
   * @param out where to
   * @param traces how many traces, shared among the two
   * @param threads fits at a time
   * @return whether each quantity is covered by 86 % to 94 % of the traces of boxes that have it
   */
  public static boolean print(PrintStream out, int traces, int threads) {
    Map<String, Integer> held = new LinkedHashMap<>();
    Map<String, Integer> all = new LinkedHashMap<>();
    for (String warmer : List.of(WITH_WARMER, "")) {
      count(out, warmer, traces / 2, threads)
          .forEach(
              (quantity, count) -> {
                held.merge(quantity, count, Integer::sum);
                all.merge(quantity, traces / 2, Integer::sum);
              });
    }
    boolean isCovered = true;
    out.println("all traces");
    for (Map.Entry<String, Integer> each : held.entrySet()) {
      double percent = 100.0 * each.getValue() / all.getOrDefault(each.getKey(), 0);
      isCovered &= percent >= LEAST && percent <= MOST;
      print(out, each.getKey(), percent);
    }
    return isCovered;
  }

  private static void print(PrintStream out, String quantity, double percent) {
    out.printf(Locale.ROOT, "  %s: %.1f %% of intervals%n", quantity, percent);
  }

  /** In how many traces the interval of each quantity holds its value. */
  private static Map<String, Integer> count(
      PrintStream out, String warmer, int traces, int threads) {
    LoggerTrace like = like();
    long begun = System.nanoTime();
    TransitSettings settings = TransitSettings.standard().meshScaled(2).withThreads(threads);
    TestBox box = TestBox.of(packing(warmer), like, false, settings);
    double built = (System.nanoTime() - begun) / 1e9;
    List<LoggerQuantity> quantities = box.quantities();
    boolean[][] held = new boolean[traces][quantities.size()];
    begun = System.nanoTime();
    new Workers(threads)
        .run(
            traces,
            (worker, number) -> {
              Random random = new Random(SEED + number);
              Map<Factor, Double> truth = new EnumMap<>(Factor.class);
              LoggerFit fit = box.fit(trace(box, like, truth, random));
              for (int index = 0; index < quantities.size(); index++) {
                double value = truth.getOrDefault(quantities.get(index).factor(), Double.NaN);
                held[number][index] = fit.estimates().get(index).interval().contains(value);
              }
            });
    double each = (System.nanoTime() - begun) / 1e9 / traces * threads;
    out.printf(
        Locale.ROOT,
        "%s: %d traces, built in %.1f s, %.2f s for each fit%n",
        warmer.isEmpty() ? "without a warmer" : "with a warmer",
        traces,
        built,
        each);
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int index = 0; index < quantities.size(); index++) {
      int count = 0;
      for (boolean[] trace : held) {
        count += trace[index] ? 1 : 0;
      }
      print(out, quantities.get(index).name(), 100.0 * count / traces);
      counts.put(quantities.get(index).name(), count);
    }
    return counts;
  }

  private static Parcel packing(String warmer) {
    String text =
        "format: 1\ntitle: Test box\nanimal: leopard gecko, 40 g\ncup: 16 oz deli cup\n"
            + "journey: overnight by air, 28 to 45 °F\npackings:\n"
            + "  - {name: cube, box: 7 x 7 x 7 in carton, foam: EPS 20 3/4 in, fill: shredded paper"
            + warmer
            + "}\n";
    return ScenarioReader.read("test box", text).packings().get(0);
  }

  /** Times and air of all traces: 30 h in an unheated room, without readings inside. */
  private static LoggerTrace like() {
    double[] times = new double[ROWS];
    double[] outside = new double[ROWS];
    double[][] inside = new double[2][ROWS];
    for (int row = 0; row < ROWS; row++) {
      times[row] = row * INTERVAL;
      outside[row] =
          Temperatures.fromCelsius(3 + 4 * Math.sin(2 * Math.PI * times[row] / Times.DAY));
      inside[0][row] = Temperatures.fromCelsius(20);
      inside[1][row] = Temperatures.fromCelsius(20);
    }
    return new LoggerTrace(
        times,
        outside,
        List.of(
            new LoggerSensor("cup", new SensorSpot.InCup("cup")),
            new LoggerSensor("beside", new SensorSpot.AtPoint(new Point(0.05, 0.1, 0.1)))),
        inside);
  }

  private static LoggerTrace trace(
      TestBox box, LoggerTrace like, Map<Factor, Double> truth, Random random) {
    Variation variation =
        Variation.NOMINAL.with(Factor.SURFACE_FILM, random.nextGaussian() / NINETY);
    for (LoggerQuantity quantity : box.quantities()) {
      double value = quantity.stated().at(position(quantity, random), quantity.nominal());
      truth.put(quantity.factor(), value);
      variation = variation.with(quantity.factor(), quantity.position(value));
    }
    double start = Temperatures.fromCelsius(20) + random.nextGaussian() * 2 / NINETY;
    double[][] inside = box.readings(like, start, variation);
    for (double[] readings : inside) {
      err(readings, LoggerFit.OFFSET * random.nextGaussian() / NINETY, random);
    }
    double[] outside = like.outside();
    err(outside, 0, random);
    return new LoggerTrace(like.times(), outside, like.sensors(), inside);
  }

  /** Where a value lies: gaps evenly in their range, which is crude; others as fits expect them. */
  private static double position(LoggerQuantity quantity, Random random) {
    return switch (quantity.factor()) {
      case SEAMS -> 2 * random.nextDouble() - 1;
      case WARMER_STRENGTH -> random.nextGaussian() / NINETY;
      default -> LoggerFit.WIDENING * random.nextGaussian() / NINETY;
    };
  }

  /** Adds an offset and noise that lasts, and rounds to the steps of the logger. */
  private static void err(double[] readings, double offset, Random random) {
    double kept = Math.exp(-INTERVAL / LASTING);
    double noise = NOISE * random.nextGaussian();
    for (int row = 0; row < readings.length; row++) {
      readings[row] = STEP * Math.rint((readings[row] + offset + noise) / STEP);
      noise = kept * noise + NOISE * Math.sqrt(1 - kept * kept) * random.nextGaussian();
    }
  }
}
