package stenotherm.conduction;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * Steps an engine whose inputs depend on its outputs, by a fixed-point iteration. It extrapolates
 * the outputs to the end of the step, advances with the inputs that follow from them, reads the
 * outputs, and repeats the step with the inputs that follow from these, until the inputs no longer
 * change.
 *
 * <p>The inputs are taken as linear over a step, between those that the law gives at both ends. So
 * the error is of second order in the step's length. This holds even for a step that did not
 * settle, since at least two passes are allowed; {@link #advance} and {@link #unsettled} report
 * such steps. The passes converge if the step is short compared with the time in which the inputs
 * change the outputs; a steeper law needs shorter steps.
 *
 * <p>Makes no objects while stepping, if neither engine nor law does. Not thread-safe: it belongs
 * to the thread of its engine.
 */
public final class CoupledStep {
  private final HeatEngine engine;
  private final InputLaw law;
  private final Settings settings;
  private final HeatEngine.State state;
  private final boolean[] inKelvin;
  private final double[] largest;

  /** Inputs at the start and at the end of the step, and those by the law at the end. */
  private final double[] start;

  private final double[] end;
  private final double[] corrected;

  /** Outputs now, and at the start of the last step. */
  private double[] outputs;

  private double[] before;
  private final double[] predicted;
  private double lastDuration;
  private boolean smooth;
  private long steps;
  private long passes;
  private long unsettled;

  /**
   * When the inputs of a step count as settled. For temperatures the tolerance is absolute; for all
   * other inputs it is relative to their largest magnitude so far.
   *
   * @param kelvins largest change of a temperature from one pass to the next [K], above 0
   * @param relative largest change of another input, above 0 and below 1
   * @param mostPasses largest number of passes for a step, 2 to 100
   */
  public record Settings(double kelvins, double relative, int mostPasses) {
    /**
     * Checks the values.
     *
     * @throws InvalidInputException if one is out of its range
     */
    public Settings {
      Checks.positive("tolerance in kelvins", kelvins, "K");
      Checks.positive("relative tolerance", relative, "");
      if (relative >= 1) {
        throw new InvalidInputException("relative tolerance", relative + " must be below 1");
      }
      if (mostPasses < 2 || mostPasses > 100) {
        throw new InvalidInputException(
            "passes", mostPasses + " must lie between 2 and 100; one pass only predicts");
      }
    }

    /**
     * The settings for steps of some minutes.
     *
     * @return 1 mK, one in ten thousand, ten passes
     */
    public static Settings standard() {
      return new Settings(1e-3, 1e-4, 10);
    }
  }

  /**
   * Couples a law to an engine, at the moment that the engine has reached.
   *
   * @param engine the engine; between steps the caller may change its coefficients or network
   * @param law the law
   * @param settings when a step counts as settled
   */
  public CoupledStep(HeatEngine engine, InputLaw law, Settings settings) {
    this.engine = engine;
    this.law = law;
    this.settings = settings;
    int inputs = engine.inputs().size();
    int count = engine.outputs().size();
    this.state = engine.save();
    this.inKelvin = new boolean[inputs];
    for (int u = 0; u < inputs; u++) {
      inKelvin[u] = engine.inputs().get(u).unit().equals("K");
    }
    this.largest = new double[inputs];
    this.start = new double[inputs];
    this.end = new double[inputs];
    this.corrected = new double[inputs];
    this.outputs = new double[count];
    this.before = new double[count];
    this.predicted = new double[count];
  }

  /**
   * Advances by a step. An interrupt of the thread may end it early, as it does the engine.
   *
   * @param duration its length [s], above 0
   * @return whether the inputs settled
   * @throws InvalidInputException if the duration is not above 0 or the law gives an input that is
   *     not finite
   * @throws IllegalStateException if the engine fails
   */
  public boolean advance(double duration) {
    Checks.positive("duration", duration, "s");
    double target = engine.time() + duration;
    engine.read(outputs);
    law.at(engine.time(), outputs, corrected);
    if (steps == 0 || !moveLittle(end, corrected)) {
      // a jump, perhaps of the law alone: earlier outputs say nothing about later ones
      System.arraycopy(corrected, 0, end, 0, end.length);
      smooth = false;
    }
    // otherwise go on from the last inputs, so that the engine sees no jump
    System.arraycopy(end, 0, start, 0, end.length);
    double reach = smooth ? duration / lastDuration : 0;
    for (int y = 0; y < predicted.length; y++) {
      predicted[y] = outputs[y] + reach * (outputs[y] - before[y]);
    }
    double[] oldest = before;
    before = outputs;
    outputs = oldest;
    engine.save(state);
    boolean settled = repeat(duration, target);
    steps++;
    unsettled += settled ? 0 : 1;
    smooth = true;
    lastDuration = duration;
    law.settled(engine.time(), outputs);
    return settled;
  }

  private boolean repeat(double duration, double target) {
    law.before(target, predicted, end);
    for (int pass = 1; ; pass++) {
      engine.advance(duration, start, end);
      passes++;
      engine.read(outputs);
      if (engine.time() < target) {
        return false;
      }
      law.before(target, outputs, corrected);
      if (moveLittle(end, corrected)) {
        return true;
      }
      if (pass == settings.mostPasses()) {
        return false;
      }
      engine.restore(state);
      System.arraycopy(corrected, 0, end, 0, end.length);
    }
  }

  /** Tells whether inputs change by less than the tolerance. */
  private boolean moveLittle(double[] from, double[] to) {
    boolean little = true;
    for (int u = 0; u < from.length; u++) {
      largest[u] = Math.max(largest[u], Math.abs(to[u]));
      double allowed = inKelvin[u] ? settings.kelvins() : settings.relative() * largest[u];
      little &= Math.abs(to[u] - from[u]) <= allowed;
    }
    return little;
  }

  /**
   * Copies the outputs at the end of the last step.
   *
   * @param values where to put them [K, W or 1]; zeros before the first step
   */
  public void outputs(double[] values) {
    System.arraycopy(outputs, 0, values, 0, outputs.length);
  }

  /**
   * Copies the inputs at the end of the last step; they match what the law gives for the outputs
   * within the tolerance.
   *
   * @param values where to put them [K, W/m2 or W]; zeros before the first step
   */
  public void inputs(double[] values) {
    System.arraycopy(end, 0, values, 0, end.length);
  }

  /**
   * Returns how many steps did not settle.
   *
   * @return the number so far
   */
  public long unsettled() {
    return unsettled;
  }

  /**
   * Returns how often the engine was advanced.
   *
   * @return the number so far, at least that of the steps
   */
  public long passes() {
    return passes;
  }
}
