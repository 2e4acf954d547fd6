package stenotherm.modal;

/**
 * What exp(-lambda s) and its integrals are for all modes at times s that grow by a factor, from
 * before the fastest mode has changed. The panels between these times carry the bounds of {@link
 * Response}. Immutable.
 */
final class Decays {
  /** The first time, in units of the fastest mode's. */
  private static final double FIRST = 0.1;

  /** The last time, in units of the slowest mode's, unless another one is given. */
  private static final double LAST = 25;

  /** Part of the fastest rate that round-off may leave of one that is zero. */
  private static final double ROUND_OFF = 1e-12;

  /** A mode has no more to say where its exponent is larger. */
  private static final double DEAD = 40;

  final int panels;

  /** Rates, ascending. */
  final double[] lambda;

  /** Number of the first mode that decays at all; one that does not is a uniform field. */
  final int decaying;

  /** End of each panel [s]. */
  private final double[] end;

  /** Width of each panel [s]. */
  final double[] width;

  /** Of each mode, how many panels it lives to see. */
  final int[] alive;

  /** exp(-lambda s) of each mode at the end of each panel. */
  final double[][] atEnd;

  /** Its integral over each panel. */
  final double[][] integral;

  /** Its second derivative at the beginning of each panel, where that is largest. */
  final double[][] curvature;

  /** Its integral from the last time on; 0 where there is nothing after it. */
  final double[] tail;

  /** The panels of all times. */
  static Decays ever(double[] lambda, double growth) {
    return new Decays(lambda, growth, LAST / slowest(lambda), true);
  }

  /** The panels up to a time. */
  static Decays until(double last, double[] lambda, double growth) {
    return new Decays(lambda, growth, last, false);
  }

  private static double slowest(double[] lambda) {
    for (double rate : lambda) {
      if (decays(rate, lambda)) {
        return rate;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static boolean decays(double rate, double[] lambda) {
    return rate > ROUND_OFF * lambda[lambda.length - 1];
  }

  private Decays(double[] lambda, double growth, double last, boolean goesOn) {
    this.lambda = lambda;
    int first = 0;
    while (first < lambda.length && !decays(lambda[first], lambda)) {
      first++;
    }
    decaying = first;
    double start = decaying < lambda.length ? FIRST / lambda[lambda.length - 1] : last;
    panels = last > start ? 1 + (int) Math.ceil(Math.log(last / start) / Math.log(growth)) : 1;
    width = new double[panels];
    int modes = lambda.length;
    alive = new int[modes];
    atEnd = new double[modes][panels];
    integral = new double[modes][panels];
    curvature = new double[modes][panels];
    tail = new double[modes];
    end = new double[panels];
    double from = 0;
    for (int k = 0; k < panels; k++) {
      double to = k == panels - 1 ? last : start * Math.pow(growth, k);
      end[k] = to;
      width[k] = to - from;
      for (int j = decaying; j < modes && lambda[j] * from < DEAD; j++) {
        alive[j] = k + 1;
        double before = Math.exp(-lambda[j] * from);
        atEnd[j][k] = Math.exp(-lambda[j] * to);
        integral[j][k] = -before * Math.expm1(-lambda[j] * width[k]) / lambda[j];
        curvature[j][k] = before * lambda[j] * lambda[j];
      }
      from = to;
    }
    for (int j = decaying; goesOn && j < lambda.length; j++) {
      tail[j] = Math.exp(-lambda[j] * last) / lambda[j];
    }
  }

  /** The time at which a panel begins; with the number of panels, the last one [s]. */
  double time(int panel) {
    return panel == 0 ? 0 : end[panel - 1];
  }
}
