package stenotherm.conduction;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import stenotherm.base.ProgressListener;

/**
 * Steps C dT/dt = -G T + b(t) from one instant to the next. Within one call the forcing must be
 * smooth; the caller ends calls on kinks and jumps.
 *
 * <p>TR-BDF2 as a diagonally implicit Runge-Kutta method with stages at t, t + gamma dt and t + dt,
 * gamma = 2 - sqrt 2, weights w, w, d and d = gamma / 2, w = sqrt 2 / 4. Both implicit stages share
 * the matrix C / (d dt) + G.
 *
 * <p>The embedded formula of third order differs by dt (E1 q1 + E2 q2 + E3 q3) / C. Filtered once
 * by F = (1 + d dt G / C)^-1 this is the estimate e of the local error (Hosea and Shampine 1996). A
 * step that is not fixed continues from T - F e: filtered twice, the difference still removes the
 * error of third order, and for y' = -s y the step stays L-stable. Its amplification factor lies
 * between -0.045 and 1 for every s dt and goes to zero as 1 / (s dt); that of the embedded formula
 * grows without bound, and filtered once it goes to 1.6. Found by evaluating these factors; order
 * and damping are tested. Fixed steps, for studies of the scheme, and bodies that melt continue
 * from T.
 *
 * <p>The heat of each port over a step is the quadrature that moves the temperatures, dt (w q1 + w
 * q2 + d q3), with the weights of the embedded formula and d times the heat that e + F e costs
 * where the step is corrected: C F e = dt (E1 q1 + E2 q2 + E3 q3) - d dt G (e + F e). So the ledger
 * closes to the round-off of the linear solver.
 */
final class TimeIntegrator {
  private static final double GAMMA = 2 - Math.sqrt(2);
  private static final double D = GAMMA / 2;
  private static final double W = Math.sqrt(2) / 4;

  /**
   * Weights of the local error: those of the scheme less those of the embedded third-order formula.
   */
  private static final double E1 = W - (1 - W) / 3;

  private static final double E2 = W - (3 * W + 1) / 3;
  private static final double E3 = D - D / 3;

  private static final double SAFETY = 0.9;
  private static final double LARGEST_GROWTH = 4;
  private static final double LARGEST_CUT = 0.2;
  private static final int MOST_STEPS = 2_000_000;

  /** Relative difference of two times up to which they count as the same. */
  private static final double SAME_TIME = 1e-14;

  /** The linear solver's tolerance as a part of the step tolerance. */
  private static final double SOLVER_SHARE = 0.01;

  /** The same for the estimate of the local error where something melts. */
  private static final double FILTER_SHARE = 0.05;

  private final HeatOperator operator;
  private final StructuredSystem system;
  private final Forcing forcing;
  private final IntegratorSettings settings;
  private final int start;
  private final int end;

  private final Conditions now;
  private final Conditions middle;
  private final Conditions later;
  private final MeltingCells melting;
  private final EnthalpySolver enthalpySolver;
  private CellConductivities conductivities;
  private double[] temperature;
  private double[] previous;
  private double[] atMiddle;
  private double[] atEnd;
  private double[] heatNow;
  private double[] heatMiddle;
  private double[] heatEnd;

  /** Enthalpies of the melting cells [J], at the times of the temperatures. */
  private double[] enthalpy;

  private double[] enthalpyBefore;
  private double[] enthalpyMiddle;
  private double[] enthalpyEnd;
  private final double[] rightHandSide;

  /** The local error, filtered once and twice [K]. */
  private final double[] error;

  private final double[] errorFilteredTwice;
  private double previousStep;
  private double suggestedStep;
  private boolean smooth;
  private boolean heatNowValid;

  private final double[] flowNow;
  private final double[] flowMiddle;
  private final double[] flowEnd;

  /** Heat that the correction of a step takes through each boundary, over d dt [W]. */
  private final double[] flowOfCorrection;

  /** Heat that has passed each boundary into the body [J]. */
  final double[] boundaryHeat;

  /** Heat that each source has given [J]. */
  final double[] sourceHeat;

  /** Sum of the magnitudes of what has passed boundaries and come from sources [J]. */
  double heatMoved;

  double time;
  long steps;
  long rejected;
  private long iterations;

  TimeIntegrator(
      HeatOperator operator,
      Forcing forcing,
      IntegratorSettings settings,
      double time,
      BodyState initial) {
    this.operator = operator;
    this.system = operator.system;
    this.forcing = forcing;
    this.settings = settings;
    this.start = system.pad;
    this.end = system.pad + system.cells;
    this.time = time;
    this.now = new Conditions(operator.network());
    this.middle = new Conditions(operator.network());
    this.later = new Conditions(operator.network());
    this.melting = operator.melting;
    this.enthalpySolver = new EnthalpySolver(operator);
    this.conductivities =
        new CellConductivities(operator.network(), melting, settings.conductivities());
    this.temperature = initial.temperature();
    this.enthalpy = initial.enthalpy();
    this.enthalpyBefore = new double[melting.count()];
    this.enthalpyMiddle = new double[melting.count()];
    this.enthalpyEnd = new double[melting.count()];
    this.previous = system.vector();
    this.atMiddle = system.vector();
    this.atEnd = system.vector();
    this.heatNow = system.vector();
    this.heatMiddle = system.vector();
    this.heatEnd = system.vector();
    this.rightHandSide = system.vector();
    this.error = system.vector();
    this.errorFilteredTwice = system.vector();
    int boundaries = now.boundary.length;
    this.flowNow = new double[boundaries];
    this.flowMiddle = new double[boundaries];
    this.flowEnd = new double[boundaries];
    this.flowOfCorrection = new double[boundaries];
    this.boundaryHeat = new double[boundaries];
    this.sourceHeat = new double[now.power.length];
  }

  /** Temperatures at {@link #time} [K], padded; valid until the next step. */
  double[] temperature() {
    return temperature;
  }

  /** Enthalpies of the melting cells at {@link #time} [J]; valid until the next step. */
  double[] enthalpy() {
    return enthalpy;
  }

  /** Conjugate gradient iterations so far. */
  long iterations() {
    return iterations + enthalpySolver.iterations;
  }

  /** Continues with other conductivities or thin resistances of the same body. */
  void use(HeatNetwork other) {
    conductivities = new CellConductivities(other, melting, settings.conductivities());
    operator.use(other);
    jump();
  }

  /** Takes over the conductivities of a state. */
  private void adapt(double[] temperatures, double[] enthalpies) {
    if (conductivities.vary()) {
      operator.use(conductivities.at(temperatures, start, enthalpies));
    }
  }

  /** Tells that conditions jump now: the next step is short and uses no history. */
  void jump() {
    heatNowValid = false;
    smooth = false;
    suggestedStep = 0;
  }

  /**
   * Steps to a time, on which the last step ends exactly.
   *
   * @return false if the listener or an interrupt stopped it; {@link #time} then tells how far it
   *     came
   * @throws SolverFailure if it cannot go on
   */
  boolean advance(double until, ProgressListener listener, double total) {
    operator.forgetMelting();
    while (time < until) {
      double remaining = until - time;
      if (remaining <= SAME_TIME * Math.abs(until)) {
        // a step over a rounding difference would cost as much as any other
        time = until;
        return true;
      }
      double wish = settings.fixed() ? settings.largestStep() : wishedStep(remaining);
      double step = remaining / Math.ceil(remaining / wish * (1 - 1e-9));
      boolean last = step >= remaining * (1 - 1e-9);
      double target = last ? until : time + step;
      try {
        if (settings.scheme() == IntegratorSettings.Scheme.BACKWARD_EULER) {
          eulerStep(target);
        } else {
          trBdf2Step(target, last);
        }
      } catch (CancellationException interrupt) {
        // the thread stays interrupted; the state is that of the last whole step
        return false;
      }
      if (Thread.currentThread().isInterrupted()
          || listener.progress(time, total) == ProgressListener.Signal.STOP) {
        return false;
      }
      if (steps + rejected > MOST_STEPS) {
        throw new SolverFailure(
            "more than " + MOST_STEPS + " steps; the step tolerance is too tight");
      }
    }
    return true;
  }

  private double wishedStep(double remaining) {
    double step = suggestedStep > 0 ? suggestedStep : firstStep(remaining);
    return Math.min(step, settings.largestStep());
  }

  /**
   * A first step from the fastest rate of change; it may be the whole interval if nothing changes.
   */
  private double firstStep(double remaining) {
    prepareHeatNow();
    double fastest = 0;
    double[] capacity = capacityNow();
    for (int i = start; i < end; i++) {
      if (capacity[i] > 0) {
        fastest = Math.max(fastest, Math.abs(heatNow[i]) / capacity[i]);
      }
    }
    double step = 20 * settings.stepTolerance() / Math.max(fastest, 1e-30);
    return Math.min(step, remaining / 4);
  }

  /** Heat that each cell takes per kelvin now [J/K], padded. */
  private double[] capacityNow() {
    if (melting.isEmpty()) {
      return operator.capacity;
    }
    double[] capacity = operator.capacity.clone();
    for (int m = 0; m < enthalpy.length; m++) {
      capacity[melting.at[m]] = melting.slope(m, melting.phase(m, enthalpy[m]));
    }
    return capacity;
  }

  private void prepareHeatNow() {
    if (heatNowValid) {
      return;
    }
    adapt(temperature, enthalpy);
    forcing.at(time, now);
    operator.coefficients(now);
    operator.netHeat(temperature, now, heatNow);
    operator.heatFlows(temperature, now, flowNow);
    heatNowValid = true;
  }

  private void conditionsAtEnd(double target, boolean last) {
    if (last) {
      forcing.before(target, later);
    } else {
      forcing.at(target, later);
    }
  }

  private void trBdf2Step(double target, boolean last) {
    prepareHeatNow();
    double step = target - time;
    double refusedStep = 0;
    double refusedEstimate = 0;
    while (true) {
      forcing.at(time + GAMMA * step, middle);
      conditionsAtEnd(last ? target : time + step, last);
      boolean solved = solveMiddle(step) && solveEnd(step);
      double estimate = solved && !settings.fixed() ? localError() : 0;
      if (solved && estimate <= settings.stepTolerance()) {
        if (!settings.fixed()) {
          suggestedStep = step * stepFactor(estimate);
        }
        boolean corrected = !settings.fixed() && melting.isEmpty();
        if (corrected) {
          correct(step);
        }
        account(step, corrected);
        accept(step, last ? target : time + step);
        return;
      }
      if (settings.fixed()) {
        throw notMelted(step);
      }
      rejected++;
      if (rejected + steps > MOST_STEPS || step < 1e-12 * Math.max(1, Math.abs(time))) {
        throw new SolverFailure(
            "the step shrank to " + step + " s without meeting the step tolerance");
      }
      double cut = solved ? Math.min(0.8, stepFactor(estimate)) : LARGEST_CUT;
      if (solved && refusedStep > 0) {
        // after a kink the estimate at a stiff surface is of first order in the step
        double power = Math.log(refusedEstimate / estimate) / Math.log(refusedStep / step);
        double ratio = settings.stepTolerance() / estimate;
        cut = Math.min(cut, SAFETY * Math.pow(ratio, 1 / Math.max(1, power)));
      }
      refusedStep = solved ? step : 0;
      refusedEstimate = estimate;
      step *= Math.max(LARGEST_CUT, cut);
      last = false;
    }
  }

  private static SolverFailure notMelted(double step) {
    return new SolverFailure(
        "melting did not settle within a step of " + step + " s; take a shorter one");
  }

  /** Solves the stage at t + gamma dt; false if what melts does not settle. */
  private boolean solveMiddle(double step) {
    double stage = D * step;
    guessMiddle(step);
    keepEnvironment(atMiddle);
    // a solve with the last conductivities is of first order, good enough to find better ones from
    int passes = conductivities.vary() && !smooth ? 2 : 1;
    for (int pass = 0; pass < passes; pass++) {
      adapt(atMiddle, enthalpyMiddle);
      operator.coefficients(middle);
      factorStage(stage);
      for (int i = start; i < end; i++) {
        rightHandSide[i] = operator.capacity[i] / stage * temperature[i] + heatNow[i];
      }
      for (int m = 0; m < enthalpy.length; m++) {
        int i = melting.at[m];
        rightHandSide[i] = enthalpy[m] / stage + heatNow[i];
      }
      operator.addPortHeat(middle, rightHandSide);
      if (!solveStage(atMiddle, enthalpyMiddle, stage)) {
        return false;
      }
    }
    operator.heatFlows(atMiddle, middle, flowMiddle);
    return true;
  }

  /** Solves the stage at t + dt; false if what melts does not settle. */
  private boolean solveEnd(double step) {
    double stage = D * step;
    // from the stage's own equation, which smooths the solver's error; -G T would amplify it
    for (int i = start; i < end; i++) {
      double capacity = operator.capacity[i];
      heatMiddle[i] = capacity / stage * (atMiddle[i] - temperature[i]) - heatNow[i];
      rightHandSide[i] = capacity / stage * temperature[i] + W / D * (heatNow[i] + heatMiddle[i]);
    }
    for (int m = 0; m < enthalpy.length; m++) {
      int i = melting.at[m];
      heatMiddle[i] = (enthalpyMiddle[m] - enthalpy[m]) / stage - heatNow[i];
      rightHandSide[i] = enthalpy[m] / stage + W / D * (heatNow[i] + heatMiddle[i]);
    }
    guessEnd(step);
    keepEnvironment(atEnd);
    adapt(atEnd, enthalpyEnd);
    operator.coefficients(later);
    factorStage(stage);
    operator.addPortHeat(later, rightHandSide);
    if (!solveStage(atEnd, enthalpyEnd, stage)) {
      return false;
    }
    operator.heatFlows(atEnd, later, flowEnd);
    for (int i = start; i < end; i++) {
      heatEnd[i] =
          operator.capacity[i] / stage * (atEnd[i] - temperature[i])
              - W / D * (heatNow[i] + heatMiddle[i]);
    }
    for (int m = 0; m < enthalpy.length; m++) {
      int i = melting.at[m];
      heatEnd[i] = (enthalpyEnd[m] - enthalpy[m]) / stage - W / D * (heatNow[i] + heatMiddle[i]);
    }
    return true;
  }

  /** Factors a stage; where something melts that is left to the enthalpy solver. */
  private void factorStage(double stage) {
    if (melting.isEmpty()) {
      operator.factor(stage);
    }
  }

  /** Solves an implicit stage from a first guess; false if what melts does not settle. */
  private boolean solveStage(double[] guess, double[] enthalpies, double stage) {
    double tolerance = SOLVER_SHARE * settings.stepTolerance();
    if (melting.isEmpty()) {
      iterations += system.solveAnyway(rightHandSide, guess, tolerance);
      return true;
    }
    return enthalpySolver.solve(rightHandSide, guess, enthalpies, stage, tolerance);
  }

  private double stepFactor(double estimate) {
    double factor = SAFETY * StrictMath.cbrt(settings.stepTolerance() / Math.max(estimate, 1e-300));
    return Math.max(LARGEST_CUT, Math.min(LARGEST_GROWTH, factor));
  }

  /** First guess of the middle stage: extrapolated from the last step, or unchanged. */
  private void guessMiddle(double step) {
    double reach = smooth ? GAMMA * step / previousStep : 0;
    for (int i = start; i < end; i++) {
      atMiddle[i] = temperature[i] + reach * (temperature[i] - previous[i]);
    }
    for (int m = 0; m < enthalpy.length; m++) {
      enthalpyMiddle[m] = enthalpy[m] + reach * (enthalpy[m] - enthalpyBefore[m]);
    }
  }

  /**
   * First guess of the end: the parabola through the last step and the middle stage, or the line
   * through the stage.
   */
  private void guessEnd(double step) {
    double ofMiddle = 1 / GAMMA;
    double ofPrevious = 0;
    if (smooth) {
      double forward = GAMMA * step;
      double bend = step * (step - forward) / (forward + previousStep);
      ofMiddle += bend / forward;
      ofPrevious = bend / previousStep;
    }
    double ofNow = 1 - ofMiddle - ofPrevious;
    for (int i = start; i < end; i++) {
      atEnd[i] = ofPrevious * previous[i] + ofNow * temperature[i] + ofMiddle * atMiddle[i];
    }
    for (int m = 0; m < enthalpy.length; m++) {
      enthalpyEnd[m] =
          ofPrevious * enthalpyBefore[m] + ofNow * enthalpy[m] + ofMiddle * enthalpyMiddle[m];
    }
  }

  /** Environments have no temperature of their own; their rows read x = 0. */
  private void keepEnvironment(double[] guess) {
    for (int i : operator.environment) {
      guess[i] = 0;
    }
  }

  /**
   * Largest local error over the cells [K]: the difference to the embedded formula, filtered by the
   * implicit operator so that stiff components do not count (Hosea and Shampine 1996).
   */
  private double localError() {
    for (int i = start; i < end; i++) {
      rightHandSide[i] = E1 / D * heatNow[i] + E2 / D * heatMiddle[i] + E3 / D * heatEnd[i];
    }
    for (int m = 0; m < enthalpy.length; m++) {
      int phase = melting.phase(m, enthalpy[m]);
      if (phase != melting.phase(m, enthalpyMiddle[m])
          || phase != melting.phase(m, enthalpyEnd[m])) {
        rightHandSide[melting.at[m]] = 0;
      }
    }
    if (melting.isEmpty()) {
      iterations +=
          system.solveFromZero(rightHandSide, error, SOLVER_SHARE * settings.stepTolerance());
    } else {
      // no iteration is forced: what the stages leave in the few cells of a front would count as an
      // error of the step, and grow as it shrinks
      Arrays.fill(error, 0);
      iterations += system.solve(rightHandSide, error, FILTER_SHARE * settings.stepTolerance());
    }
    double largest = 0;
    for (int i = start; i < end; i++) {
      double magnitude = Math.abs(error[i]);
      // faster than Math.max, which would wait for its last result in each cell
      if (!(magnitude <= largest)) {
        if (!Double.isFinite(magnitude)) {
          throw new SolverFailure("the local error is not finite");
        }
        largest = magnitude;
      }
    }
    return largest;
  }

  /** Subtracts the local error, filtered once more, from the end of a step. */
  private void correct(double step) {
    double stage = D * step;
    for (int i = start; i < end; i++) {
      rightHandSide[i] = operator.capacity[i] / stage * error[i];
    }
    iterations +=
        system.solveFromZero(
            rightHandSide, errorFilteredTwice, SOLVER_SHARE * settings.stepTolerance());
    for (int i = start; i < end; i++) {
      double taken = errorFilteredTwice[i];
      atEnd[i] -= taken;
      // -G (T - F e) from the filter's own equation, which does not amplify the solver's error
      heatEnd[i] += operator.capacity[i] / stage * (error[i] - taken);
      error[i] += taken;
    }
    operator.heatLost(error, flowOfCorrection);
  }

  /** Counts the heat of a step. */
  private void account(double step, boolean corrected) {
    double first = corrected ? W - E1 : W;
    double second = corrected ? W - E2 : W;
    double third = corrected ? D - E3 : D;
    for (int p = 0; p < boundaryHeat.length; p++) {
      double heat = step * (first * flowNow[p] + second * flowMiddle[p] + third * flowEnd[p]);
      if (corrected) {
        heat += step * D * flowOfCorrection[p];
      }
      boundaryHeat[p] += heat;
      heatMoved += Math.abs(heat);
    }
    for (int s = 0; s < sourceHeat.length; s++) {
      double heat =
          step * (first * now.power[s] + second * middle.power[s] + third * later.power[s]);
      sourceHeat[s] += heat;
      heatMoved += Math.abs(heat);
    }
    if (corrected) {
      operator.heatFlows(atEnd, later, flowNow);
    } else {
      System.arraycopy(flowEnd, 0, flowNow, 0, flowNow.length);
    }
  }

  private void accept(double step, double newTime) {
    double[] oldest = previous;
    previous = temperature;
    temperature = atEnd;
    atEnd = oldest;
    double[] oldestEnthalpy = enthalpyBefore;
    enthalpyBefore = enthalpy;
    enthalpy = enthalpyEnd;
    enthalpyEnd = oldestEnthalpy;
    double[] oldHeat = heatNow;
    heatNow = heatEnd;
    heatEnd = oldHeat;
    now.copyFrom(later);
    previousStep = step;
    smooth = true;
    time = newTime;
    steps++;
  }

  private void eulerStep(double target) {
    double step = target - time;
    forcing.before(target, later);
    adapt(temperature, enthalpy);
    operator.coefficients(later);
    factorStage(step);
    for (int i = start; i < end; i++) {
      rightHandSide[i] = operator.capacity[i] / step * temperature[i];
    }
    for (int m = 0; m < enthalpy.length; m++) {
      rightHandSide[melting.at[m]] = enthalpy[m] / step;
    }
    operator.addPortHeat(later, rightHandSide);
    System.arraycopy(temperature, 0, atEnd, 0, atEnd.length);
    System.arraycopy(enthalpy, 0, enthalpyEnd, 0, enthalpy.length);
    keepEnvironment(atEnd);
    if (!solveStage(atEnd, enthalpyEnd, step)) {
      throw notMelted(step);
    }
    operator.heatFlows(atEnd, later, flowEnd);
    for (int p = 0; p < boundaryHeat.length; p++) {
      boundaryHeat[p] += step * flowEnd[p];
      heatMoved += Math.abs(step * flowEnd[p]);
    }
    for (int s = 0; s < sourceHeat.length; s++) {
      sourceHeat[s] += step * later.power[s];
      heatMoved += Math.abs(step * later.power[s]);
    }
    double[] old = temperature;
    temperature = atEnd;
    atEnd = old;
    double[] oldEnthalpy = enthalpy;
    enthalpy = enthalpyEnd;
    enthalpyEnd = oldEnthalpy;
    time = target;
    steps++;
  }
}
