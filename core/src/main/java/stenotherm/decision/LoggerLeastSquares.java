package stenotherm.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.transit.Factor;
import stenotherm.transit.Variation;

/**
 * The least squares of a {@link LoggerFit}. Unknowns are in units of their spreads: the fitted
 * quantities, the films outside, the temperature at closing, then an offset of each sensor. The
 * readings are linear in the offsets, so that runs differ in the others alone.
 */
final class LoggerLeastSquares {
  /** Half of the width that holds 90 % of a normal distribution, in standard deviations. */
  private static final double NINETY = 1.6449;

  /** Spread of the temperature at closing [K]. */
  private static final double START = 2 / NINETY;

  private static final double OFFSET = LoggerFit.OFFSET / NINETY;

  /** What the model, its grid and the digits of loggers leave at least [K]. */
  private static final double LEAST_NOISE = 0.05;

  /** Noise of the first of the fits, from which the next takes its noise [K]. */
  private static final double FIRST_NOISE = 0.2;

  /** Fits with a noise of their own: measured, a fourth changes nothing. */
  private static final int FITS = 3;

  /** Noise that lasts longer cannot be told from an offset [-]. */
  private static final double MOST_CORRELATED = 0.98;

  /** First bound of a step, in columns' norms: readings change by hundreds of times their noise. */
  private static final double FIRST_STEP = 1000;

  /** A step that lowers the root mean square by a smaller part gains nothing [-]. */
  private static final double NO_GAIN = 1e-4;

  /** Steps after which one that gains nothing is the last, whatever slopes promise. */
  private static final int PATIENCE = 20;

  /** Of 500 traces, the slowest took 42, down a curved valley. */
  private static final int MOST_STEPS = 200;

  private static final int MOST_EVALUATIONS = 10 * MOST_STEPS;

  /** Step of a derivative in spreads. */
  private static final double STEP = 0.03;

  private final TestBox box;
  private final LoggerTrace trace;
  private final double[] times;
  private final double[][] measured;
  private final List<LoggerQuantity> quantities;
  private final double usualStart;

  /** Unknowns that runs differ in; offsets follow them. */
  private final int ofRuns;

  private final int unknowns;
  private final double spacing;
  private final double[] lowest;
  private final double[] highest;
  private final Map<List<Double>, double[][]> runs = new HashMap<>();

  /** Lower triangle whose square is the covariance of what sensors leave at one time [K]. */
  private RealMatrix shared;

  private double noise = FIRST_NOISE;
  private double correlated;
  private double[] point;
  private RealMatrix covariance;

  LoggerLeastSquares(TestBox box, LoggerTrace trace) {
    this.box = box;
    this.trace = trace;
    this.times = LoggerTrace.means(trace.times(), TestBox.MOST_ROWS);
    this.measured = new double[trace.sensors().size()][];
    for (int sensor = 0; sensor < measured.length; sensor++) {
      measured[sensor] = LoggerTrace.means(trace.inside(sensor), TestBox.MOST_ROWS);
    }
    this.quantities = box.quantities();
    this.usualStart = TestBox.start(trace);
    this.ofRuns = quantities.size() + 2;
    this.unknowns = ofRuns + measured.length;
    this.spacing = (times[times.length - 1] - times[0]) / (times.length - 1);
    this.shared = MatrixUtils.createRealIdentityMatrix(measured.length).scalarMultiply(FIRST_NOISE);
    this.point = new double[unknowns];
    this.lowest = new double[unknowns];
    this.highest = new double[unknowns];
    Arrays.fill(lowest, -NINETY * Variation.MOST);
    Arrays.fill(highest, NINETY * Variation.MOST);
    for (int index = 0; index < quantities.size(); index++) {
      LoggerQuantity quantity = quantities.get(index);
      lowest[index] = quantity.scaled(quantity.possible().low()) / spread(quantity);
      highest[index] = quantity.scaled(quantity.possible().high()) / spread(quantity);
    }
    Optimum best = least();
    for (int fit = 1; fit < FITS; fit++) {
      takeNoise(best);
      best = least();
    }
    this.covariance = best.getCovariances(1e-14);
  }

  TestBox box() {
    return box;
  }

  LoggerTrace trace() {
    return trace;
  }

  /** Mean times of the rows that are compared [s]. */
  double[] times() {
    return times;
  }

  /** Readings that are compared [K]: a row for each sensor. */
  double[][] measured() {
    return measured;
  }

  double noise() {
    return noise;
  }

  double lasting() {
    return correlated > 0 ? -spacing / Math.log(correlated) : 0;
  }

  double start() {
    return start(point);
  }

  double offset(int sensor) {
    return OFFSET * point[ofRuns + sensor];
  }

  /** Standard deviation that is expected of a quantity, on its scale. */
  private static double spread(LoggerQuantity quantity) {
    return quantity.expected() / NINETY;
  }

  private double value(int quantity, double at) {
    LoggerQuantity of = quantities.get(quantity);
    return of.at(spread(of) * at);
  }

  private double start(double[] at) {
    return usualStart + START * at[ofRuns - 1];
  }

  List<LoggerFit.Estimate> estimates() {
    List<LoggerFit.Estimate> all = new ArrayList<>();
    for (int index = 0; index < quantities.size(); index++) {
      double half = NINETY * deviation(index);
      Range interval =
          new Range(value(index, point[index] - half), value(index, point[index] + half));
      double value = value(index, point[index]);
      all.add(new LoggerFit.Estimate(quantities.get(index), value, interval));
    }
    return List.copyOf(all);
  }

  private double deviation(int unknown) {
    return Math.sqrt(covariance.getEntry(unknown, unknown));
  }

  double correlation(int one, int other) {
    return covariance.getEntry(one, other) / deviation(one) / deviation(other);
  }

  /** Pairs that go together too closely, in sentences. */
  List<String> inseparable(double most) {
    List<String> all = new ArrayList<>();
    for (int one = 0; one < quantities.size(); one++) {
      for (int other = one + 1; other < unknowns; other++) {
        if (Math.abs(correlation(one, other)) > most) {
          all.add(
              "The trace does not tell the "
                  + name(one)
                  + " from the "
                  + name(other)
                  + ": only what both do together is known.");
        }
      }
    }
    return all;
  }

  private String name(int unknown) {
    if (unknown < quantities.size()) {
      return quantities.get(unknown).name();
    }
    if (unknown == quantities.size()) {
      return Factor.SURFACE_FILM.words();
    }
    return unknown == ofRuns - 1
        ? "temperature at closing"
        : "offset of sensor '" + box.sensors().get(unknown - ofRuns).name() + "'";
  }

  /** Puts unknowns where they can be computed. */
  private double[] bounded(double[] at) {
    double[] bounded = new double[unknowns];
    for (int unknown = 0; unknown < unknowns; unknown++) {
      bounded[unknown] = Math.min(highest[unknown], Math.max(lowest[unknown], at[unknown]));
    }
    return bounded;
  }

  /** Readings with offsets [K]: a row for each sensor. */
  double[][] computed() {
    return computed(point);
  }

  private double[][] computed(double[] at) {
    double[][] run =
        runs.computeIfAbsent(Arrays.stream(at, 0, ofRuns).boxed().toList(), unseen -> run(at));
    double[][] shown = new double[run.length][];
    for (int sensor = 0; sensor < run.length; sensor++) {
      double offset = OFFSET * at[ofRuns + sensor];
      shown[sensor] = Arrays.stream(run[sensor]).map(value -> value + offset).toArray();
    }
    return shown;
  }

  /** A run, averaged as the trace is. */
  private double[][] run(double[] at) {
    double[][] readings = box.readings(trace, start(at), variation(at));
    for (int sensor = 0; sensor < readings.length; sensor++) {
      readings[sensor] = LoggerTrace.means(readings[sensor], TestBox.MOST_ROWS);
    }
    return readings;
  }

  private Variation variation(double[] at) {
    // spread of the films is their stated range
    Variation variation =
        Variation.NOMINAL.with(Factor.SURFACE_FILM, at[quantities.size()] / NINETY);
    for (int index = 0; index < quantities.size(); index++) {
      LoggerQuantity quantity = quantities.get(index);
      variation = variation.with(quantity.factor(), quantity.position(value(index, at[index])));
    }
    return variation;
  }

  private double[][] left(double[] at) {
    double[][] left = computed(at);
    for (int sensor = 0; sensor < left.length; sensor++) {
      for (int row = 0; row < left[sensor].length; row++) {
        left[sensor][row] -= measured[sensor][row];
      }
    }
    return left;
  }

  /** What is left, made independent and of deviation 1, then the unknowns. */
  private double[] residuals(double[] at) {
    double[][] left = left(at);
    double[] all = new double[left.length * times.length + unknowns];
    int next = 0;
    for (int row = 0; row < times.length; row++) {
      double kept = row == 0 ? 0 : kept(row);
      for (int sensor = 0; sensor < left.length; sensor++) {
        double before = row == 0 ? 0 : left[sensor][row - 1];
        double fresh = (left[sensor][row] - kept * before) / Math.sqrt(1 - kept * kept);
        // forward substitution: what other sensors share is taken off
        for (int other = 0; other < sensor; other++) {
          fresh -= shared.getEntry(sensor, other) * all[next - sensor + other];
        }
        all[next++] = fresh / shared.getEntry(sensor, sensor);
      }
    }
    System.arraycopy(at, 0, all, next, unknowns);
    return all;
  }

  /** Correlation of what is left with the row before: rows need not be evenly spaced [-]. */
  private double kept(int row) {
    return Math.pow(correlated, (times[row] - times[row - 1]) / spacing);
  }

  /** Takes noise and its correlations, over time and between sensors, from what a fit leaves. */
  private void takeNoise(Optimum best) {
    double[][] left = left(point);
    // what the trace rather than its prior decides
    double told = unknowns - best.getCovariances(1e-14).getTrace();
    double rows = times.length - told / left.length;
    RealMatrix squares = MatrixUtils.createRealMatrix(left.length, left.length);
    double square = 0;
    double product = 0;
    for (int row = 0; row < times.length; row++) {
      for (int sensor = 0; sensor < left.length; sensor++) {
        for (int other = 0; other < left.length; other++) {
          squares.addToEntry(sensor, other, left[sensor][row] * left[other][row] / rows);
        }
        square += left[sensor][row] * left[sensor][row];
        product += row == 0 ? 0 : left[sensor][row] * left[sensor][row - 1];
      }
    }
    for (int sensor = 0; sensor < left.length; sensor++) {
      squares.addToEntry(sensor, sensor, LEAST_NOISE * LEAST_NOISE);
    }
    noise = Math.sqrt(squares.getTrace() / left.length);
    // the sensor outside errs like those inside, and what it errs by all of them have in common:
    // over hours as much as stated, over minutes less, which the box smooths away
    RealMatrix outside = squares.createMatrix(left.length, left.length).scalarAdd(noise * noise);
    shared = new CholeskyDecomposition(squares.add(outside)).getL();
    correlated = Math.max(0, Math.min(MOST_CORRELATED, product / square));
  }

  /** Levenberg-Marquardt from where the last fit ended, with central differences. */
  private Optimum least() {
    int count = residuals(point).length;
    try {
      Optimum best =
          new LevenbergMarquardtOptimizer()
              .withInitialStepBoundFactor(FIRST_STEP)
              .withCostRelativeTolerance(NO_GAIN)
              .withParameterRelativeTolerance(1e-3)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(point)
                      .target(new double[count])
                      .model(new Slopes())
                      .parameterValidator(at -> new ArrayRealVector(bounded(at.toArray()), false))
                      .checker(
                          (step, before, after) ->
                              hasArrived(step, before.getRMS(), after.getRMS()))
                      .lazyEvaluation(true)
                      .maxEvaluations(MOST_EVALUATIONS)
                      .maxIterations(MOST_STEPS)
                      .build());
      point = best.getPoint().toArray();
      return best;
    } catch (MathIllegalStateException e) {
      InvalidInputException none =
          new InvalidInputException("trace", "no values of what is fitted come near it");
      none.initCause(e);
      throw none;
    }
  }

  /**
   * Tells whether a fit need not go on. Readings have kinks, where noise of the slopes promises a
   * gain that no step finds, so that the criteria of the method alone may never be met.
   *
   * @param before root mean square of the residuals before the step
   * @param after the same after it
   */
  static boolean hasArrived(int step, double before, double after) {
    return step >= PATIENCE && before - after <= NO_GAIN * before;
  }

  /** Residuals and their slopes; these are asked for where a step was an improvement alone. */
  private final class Slopes implements ValueAndJacobianFunction {
    @Override
    public RealVector computeValue(double[] at) {
      Checks.notInterrupted("while a trace was fitted");
      return new ArrayRealVector(residuals(at), false);
    }

    @Override
    public RealMatrix computeJacobian(double[] at) {
      double[][] slopes = new double[residuals(at).length][unknowns];
      for (int unknown = 0; unknown < unknowns; unknown++) {
        double[] below = at.clone();
        below[unknown] = Math.max(lowest[unknown], at[unknown] - STEP);
        double[] above = at.clone();
        above[unknown] = Math.min(highest[unknown], at[unknown] + STEP);
        double[] left = residuals(below);
        double[] right = residuals(above);
        for (int row = 0; row < left.length; row++) {
          slopes[row][unknown] = (right[row] - left[row]) / (above[unknown] - below[unknown]);
        }
      }
      return new Array2DRowRealMatrix(slopes, false);
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector at) {
      return new Pair<>(computeValue(at.toArray()), computeJacobian(at.toArray()));
    }
  }
}
