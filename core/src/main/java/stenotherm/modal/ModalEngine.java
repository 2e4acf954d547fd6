package stenotherm.modal;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.conduction.PortIndex;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TemperatureField;
import stenotherm.conduction.TransientSolution;

/**
 * The engine that steps the modes of a reduced model, exactly for inputs that are linear over each
 * interval. Two coarser models may run beside it; how far their outputs lie from its own gives an
 * estimate of the error of the reduction.
 *
 * <p>Experimental. Not thread-safe: one engine belongs to one thread. {@link #advance} and {@link
 * #read} make no objects while the configuration stays.
 */
public final class ModalEngine implements HeatEngine {
  /** The rise of the whole body that the scale of a ledger counts [K]. */
  private static final double SCALE_RISE = 1e-3;

  /**
   * Factor on the summed differences to the two coarser models, taken for the error. How the
   * estimates then compare with errors on random parcels is printed by {@code modal-agreement}.
   */
  private static final double SAFETY = 1.25;

  private final ReducedModel model;
  private final List<Port> inputs;
  private final int boundaries;
  private final double[] startCoordinates;
  private final double[] now;
  private final double[] change;
  private final double[] heat;
  private final double[] largestDifference;
  private final double[] difference;
  private final ModalState whole;
  private final RunningMean mean = new RunningMean();

  /** The states of the coarser models, if there are estimates. */
  private final ModalState[] coarser;

  /** Configurations in the modes of the coarser models, by the configuration. */
  private final IdentityHashMap<ModalConfiguration, ModalConfiguration.Coarser[]> known =
      new IdentityHashMap<>();

  private ModalConfiguration configuration;
  private ModalConfiguration.Coarser[] coarse;
  private Readings readings;
  private double time;
  private double heatMoved;
  private long steps;

  ModalEngine(ReducedModel model, InitialState state, boolean estimates) {
    this.model = model;
    this.configuration = model.spanned().get(0);
    this.inputs = model.inputs();
    this.boundaries = configuration.films().length;
    this.startCoordinates = model.reducedBody().coordinates(state);
    this.whole = new ModalState(configuration.system, startCoordinates);
    this.coarser = new ModalState[estimates ? model.coarser().length : 0];
    this.coarse = coarse(configuration);
    for (int m = 0; m < coarser.length; m++) {
      coarser[m] = new ModalState(coarse[m].system(), startCoordinates);
    }
    this.now = new double[inputs.size()];
    this.change = new double[inputs.size()];
    this.heat = new double[inputs.size()];
    this.largestDifference = new double[model.outputs().size()];
    this.difference = new double[largestDifference.length];
    this.readings = new Readings(model, configuration);
    for (int p = 0; p < boundaries; p++) {
      if (inputs.get(p).unit().equals("K")) {
        now[p] = state.temperature();
      }
    }
    startMean();
  }

  private ModalConfiguration.Coarser[] coarse(ModalConfiguration of) {
    if (coarser.length == 0) {
      return new ModalConfiguration.Coarser[0];
    }
    return known.computeIfAbsent(
        of,
        each ->
            Arrays.stream(model.coarser())
                .map(each::coarser)
                .toArray(ModalConfiguration.Coarser[]::new));
  }

  /**
   * Restarts the time over which means are taken. A change of the configuration restarts it too.
   */
  public void startMean() {
    double[] moved = moved();
    for (int u = 0; u < heat.length; u++) {
      heat[u] += moved[u];
      heatMoved += Math.abs(moved[u]);
    }
    mean.restart(whole.z.length, now.length);
  }

  /** Heat that came in by each input since the mean was started [J]. */
  private double[] moved() {
    if (mean.isEmpty()) {
      return new double[heat.length];
    }
    double[] moved = mean.integralOfInputs().clone();
    double[] coordinates = new double[model.modes()];
    configuration.system.toBasis(mean.integralOfAmplitudes(), coordinates);
    double[] flows = new double[boundaries];
    configuration.flows.values(coordinates, mean.integralOfInputs(), flows);
    System.arraycopy(flows, 0, moved, 0, boundaries);
    return moved;
  }

  /**
   * Returns the mean surface temperatures over the time since {@link #startMean}, from the exact
   * integral of each mode.
   *
   * @return one for each boundary port [K]
   * @throws IllegalStateException if no time has passed
   */
  public double[] meanSurfaces() {
    double[] means = new double[boundaries];
    configuration.surfaces.values(meanCoordinates(), mean.inputs(), means);
    return means;
  }

  /**
   * Returns the mean temperatures of blocks over the time since {@link #startMean}, from the exact
   * integral of each mode.
   *
   * @param blocks names of solid blocks
   * @return one for each block [K]
   * @throws InvalidInputException if there is no such block
   * @throws IllegalStateException if no time has passed
   */
  public double[] meanOf(List<String> blocks) {
    return model.reducedBody().meanOf(model.positionsOf(blocks), meanCoordinates());
  }

  /**
   * Returns the mean temperatures of blocks now.
   *
   * @param blocks names of solid blocks
   * @return one for each block [K]
   * @throws InvalidInputException if there is no such block
   */
  public double[] nowOf(List<String> blocks) {
    return model.reducedBody().meanOf(model.positionsOf(blocks), coordinates());
  }

  private double[] meanAmplitudes() {
    if (mean.isEmpty()) {
      throw new IllegalStateException("no time has passed over which a mean could be taken");
    }
    return mean.amplitudes();
  }

  private double[] meanCoordinates() {
    double[] coordinates = new double[model.modes()];
    configuration.system.toBasis(meanAmplitudes(), coordinates);
    return coordinates;
  }

  /**
   * Returns the mean of the temperatures over the time since {@link #startMean}.
   *
   * @return the continuous field, under the means of the inputs
   * @throws IllegalStateException if no time has passed, or the model was read without its cells
   */
  public TemperatureField meanField() {
    return model.field(
        meanCoordinates(), mean.inputs(), configuration.films(), configuration.factors());
  }

  @Override
  public List<Port> inputs() {
    return inputs;
  }

  @Override
  public List<Probe> outputs() {
    return model.outputs();
  }

  @Override
  public double time() {
    return time;
  }

  /**
   * {@inheritDoc} Conductivities stay. If a run alternates between several configurations, it is
   * cheaper to make each once with {@link ReducedModel#configuration} and to pass it to {@link
   * #use(ModalConfiguration)}.
   */
  @Override
  public void useCoefficients(double[] values) {
    requireLength("coefficients", values, boundaries);
    use(model.configuration(values, configuration.factors()));
  }

  /**
   * Continues in another configuration.
   *
   * @param other one of this engine's model
   * @throws InvalidInputException if it belongs to another model
   */
  public void use(ModalConfiguration other) {
    if (other.model != model) {
      throw new InvalidInputException("configuration", "belongs to another model");
    }
    if (other == configuration) {
      return;
    }
    startMean();
    goOver(other);
    whole.use(other.system);
    for (int m = 0; m < coarser.length; m++) {
      coarser[m].use(coarse[m].system());
    }
  }

  private void goOver(ModalConfiguration other) {
    configuration = other;
    coarse = coarse(other);
    readings = new Readings(model, other);
  }

  private static void requireLength(String field, double[] values, int length) {
    if (values.length != length) {
      throw new InvalidInputException(
          field, values.length + " values given, " + length + " needed");
    }
  }

  @Override
  public void advance(double duration, double[] inputsAtStart, double[] inputsAtEnd) {
    Checks.positive("duration", duration, "s");
    requireLength("inputs at start", inputsAtStart, now.length);
    requireLength("inputs at end", inputsAtEnd, now.length);
    PortIndex.requireFinite(inputs, inputsAtStart);
    PortIndex.requireFinite(inputs, inputsAtEnd);
    model.reducedBody().groups.check(inputsAtStart);
    model.reducedBody().groups.check(inputsAtEnd);
    whole.advance(duration, inputsAtStart, inputsAtEnd);
    for (ModalState state : coarser) {
      state.advance(duration, inputsAtStart, inputsAtEnd);
    }
    for (int u = 0; u < now.length; u++) {
      change[u] = duration * (inputsAtStart[u] + inputsAtEnd[u]) / 2;
    }
    mean.add(duration, whole.integral, change);
    System.arraycopy(inputsAtEnd, 0, now, 0, now.length);
    time += duration;
    steps++;
  }

  @Override
  public void read(double[] values) {
    requireLength("outputs", values, largestDifference.length);
    readings.read(whole.z, now, values);
    Arrays.fill(difference, 0);
    for (int m = 0; m < coarser.length; m++) {
      readings.addDifferences(coarse[m].outputs(), coarser[m].z, now, values, difference);
    }
    for (int index = 0; index < values.length; index++) {
      largestDifference[index] = Math.max(largestDifference[index], SAFETY * difference[index]);
    }
  }

  @Override
  public void readMeans(double[] values) {
    requireLength("outputs", values, largestDifference.length);
    readings.readMeans(whole.z, values);
  }

  /**
   * Estimates the error of the reduction. For each output it is 1.25 times the summed differences
   * to two coarser models, the largest over all readings so far. Each coarser model leaves out the
   * resolvents at one shift; an extreme is compared at the node where it was found. It is an
   * estimate, not a bound. It does not include the error of the grid, nor what the candidates miss
   * of an extreme.
   *
   * @return one for each output [K or W], 0 before the first reading
   * @throws IllegalStateException if the engine was made without estimates
   */
  public double[] errorEstimates() {
    if (coarser.length == 0) {
      throw new IllegalStateException("the engine was made without error estimates");
    }
    return largestDifference.clone();
  }

  /**
   * Returns the present state.
   *
   * @return a copy of its coordinates in the basis of the model, of length {@link
   *     ReducedModel#modes} [sqrt(J K)]
   */
  public double[] coordinates() {
    return Arrays.copyOf(whole.coordinates(), model.modes());
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalStateException if the model was read without its cells
   */
  @Override
  public TemperatureField field() {
    return model.field(coordinates(), now, configuration.films(), configuration.factors());
  }

  /**
   * Keeps this moment in a few numbers, from which its field can be made later.
   *
   * @return what makes the field, on any thread; it throws an {@link IllegalStateException} if the
   *     model was read without its cells
   */
  public Supplier<TemperatureField> moment() {
    double[] coordinates = coordinates();
    double[] inputsNow = now.clone();
    double[] films = configuration.films();
    double[] factors = configuration.factors();
    ReducedModel of = model;
    return () -> of.field(coordinates, inputsNow, films, factors);
  }

  @Override
  public HeatLedger ledger() {
    Map<String, Double> atBoundaries = new LinkedHashMap<>();
    Map<String, Double> fromSources = new LinkedHashMap<>();
    double[] moved = moved();
    double allMoved = heatMoved;
    for (int u = 0; u < heat.length; u++) {
      double all = heat[u] + moved[u];
      (u < boundaries ? atBoundaries : fromSources).put(inputs.get(u).name(), all);
      allMoved += Math.abs(moved[u]);
    }
    double[] rise = coordinates();
    for (int j = 0; j < startCoordinates.length; j++) {
      rise[j] -= startCoordinates[j];
    }
    double[] sums = model.reducedBody().storedIn(rise);
    Map<String, Double> stored = new LinkedHashMap<>();
    for (int block = 0; block < sums.length; block++) {
      stored.put(model.reducedBody().solidBlocks.get(block), sums[block]);
    }
    double scale = allMoved + model.reducedBody().capacity * SCALE_RISE;
    return new HeatLedger(atBoundaries, fromSources, stored, scale);
  }

  /**
   * Returns the work of the run.
   *
   * @return exact steps, none rejected, and the iterations that the model took to build
   */
  @Override
  public TransientSolution.Work work() {
    return new TransientSolution.Work(steps, 0, model.iterations());
  }
}
