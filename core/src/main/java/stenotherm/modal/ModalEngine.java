package stenotherm.modal;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.conduction.ReducibleNetwork;
import stenotherm.conduction.TemperatureField;
import stenotherm.conduction.TransientSolution;

/**
 * The engine that steps the modes of a reduced model, exactly for inputs that are linear over each
 * interval. Two coarser models run beside it, unless the engine was made without error estimates;
 * how far their outputs differ from its own is the estimate of the error of the reduction, see
 * {@link #errorEstimates}.
 *
 * <p>A configuration that the model was not built for is added to it when the run meets it, see
 * {@link ReducedModel#with}: right, but slow, and for this engine alone.
 *
 * <p>Experimental. Not thread-safe: one engine belongs to one thread. {@link #advance} and {@link
 * #read} make no objects while the configuration stays.
 */
public final class ModalEngine implements HeatEngine {
  /** The rise of the whole body that the scale of a ledger counts [K]. */
  private static final double SCALE_RISE = 1e-3;

  /**
   * Part of the errors of the two coarser models that is taken for that of the whole one. Found by
   * comparison with the full engine on 265 random parcels and journeys: of outputs that were off by
   * more than 1 mK the estimate is then at least 0.35 times the error, 5 to 9 times in the median.
   */
  private static final double PART = 0.9;

  private final List<Port> inputs;
  private final int boundaries;
  private final double[] startCoordinates;
  private final double[] now;
  private final double[] change;
  private final double[] heat;
  private final double[] largestDifference;
  private ReducedModel model;

  /** The model that was extended last, and what became of it. */
  private @Nullable ReducedModel extendedFrom;

  private @Nullable ReducedModel extended;
  private PreparedLeg leg;
  private final ModalState whole;
  private final ModalState[] coarser;
  private final double[] flows;
  private final double[] difference;
  private Readings readings;

  /** Whether the configuration asked for may be another than that of the leg. */
  private boolean asked;

  private KnownNetwork network;
  private double[] coefficients;
  private double time;
  private double heatMoved;
  private long steps;

  private final RunningMean mean = new RunningMean();

  /** The operator of the leg, if a field has been asked for in it. */
  private @Nullable ReducibleNetwork operator;

  ModalEngine(ReducedModel model, InitialState state, boolean estimates) {
    this.model = model;
    this.leg = model.firstLeg();
    this.network = leg.configuration.network;
    this.coefficients = leg.configuration.coefficients();
    this.inputs = model.inputs();
    this.boundaries = coefficients.length;
    this.startCoordinates = model.body().coordinates(state);
    this.whole = new ModalState(leg.whole, startCoordinates);
    this.coarser = new ModalState[estimates ? leg.coarser.length : 0];
    for (int m = 0; m < coarser.length; m++) {
      coarser[m] = new ModalState(leg.coarser[m], startCoordinates);
    }
    this.now = new double[inputs.size()];
    this.change = new double[inputs.size()];
    this.heat = new double[inputs.size()];
    this.largestDifference = new double[model.outputs().size()];
    this.flows = new double[boundaries];
    this.difference = new double[largestDifference.length];
    this.readings = new Readings(model.plan(), leg);
    for (int p = 0; p < boundaries; p++) {
      if (inputs.get(p).unit().equals("K")) {
        now[p] = state.temperature();
      }
    }
    startMean();
  }

  /**
   * Begins the time over which {@link #meanField} is taken. A change of the configuration begins it
   * as well.
   */
  public void startMean() {
    mean.restart(whole.z.length, now.length);
  }

  /**
   * Returns the mean of the temperatures over the time since {@link #startMean}, from the exact
   * integral of each mode. All that is linear in the temperatures has its own mean in it: means of
   * blocks, surface temperatures, heat flows.
   *
   * @return the continuous field, under the means of the inputs
   * @throws IllegalStateException if no time has passed
   */
  public TemperatureField meanField() {
    if (mean.isEmpty()) {
      throw new IllegalStateException("no time has passed over which a mean could be taken");
    }
    double[] coordinates = new double[model.modes()];
    leg.whole.toBasis(mean.amplitudes(), coordinates);
    return operator().field(model.basis().expand(coordinates), mean.inputs());
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

  @Override
  public void useCoefficients(double[] values) {
    requireLength("coefficients", values, boundaries);
    for (int p = 0; p < boundaries; p++) {
      if (((Port.BoundaryPort) inputs.get(p)).kind() == BoundaryKind.CONVECTION) {
        Checks.notNegative("surface coefficient of " + inputs.get(p).name(), values[p], "W/(m2 K)");
      }
    }
    coefficients = values.clone();
    asked = true;
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalStateException if the model was read without its cells
   */
  @Override
  public void use(HeatNetwork other) {
    HeatNetwork own = network.cells("another network");
    KnownNetwork known = model.known(other);
    if (model.find(known).isEmpty()) {
      ReducibleNetwork.requireSameBody(own, other);
    }
    network = known;
    asked = true;
  }

  /**
   * Goes over to a configuration of the model; the network and the coefficients that hold from now
   * on are its own.
   *
   * @param configuration its position, in the order in which it was added
   * @throws InvalidInputException if there is none of that position
   */
  public void useConfiguration(int configuration) {
    Configuration chosen = model.leg(configuration).configuration;
    network = chosen.network;
    coefficients = chosen.coefficients();
    asked = true;
  }

  /** Goes over to the configuration that was asked for, once both its parts are known. */
  private void follow() {
    if (!asked) {
      return;
    }
    asked = false;
    if (leg.configuration.is(network, coefficients)) {
      return;
    }
    Optional<PreparedLeg> next = model.find(network, coefficients);
    if (next.isEmpty()) {
      model = extended();
      next = model.find(network, coefficients);
    }
    leg = next.orElseThrow();
    network = leg.configuration.network;
    whole.use(leg.whole);
    for (int m = 0; m < coarser.length; m++) {
      coarser[m].use(leg.coarser[m]);
    }
    readings = new Readings(model.plan(), leg);
    operator = null;
    startMean();
  }

  /** The model with the configuration asked for, remembered for when an interval is repeated. */
  private ReducedModel extended() {
    if (model == extendedFrom
        && extended != null
        && extended.find(network, coefficients).isPresent()) {
      return extended;
    }
    extendedFrom = model;
    extended = model.with(network.cells("another configuration"), coefficients);
    return extended;
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
    for (int u = 0; u < now.length; u++) {
      Checks.finite("input", inputsAtStart[u], "");
      Checks.finite("input", inputsAtEnd[u], "");
    }
    model.body().groups.check(inputsAtStart);
    model.body().groups.check(inputsAtEnd);
    follow();
    whole.advance(duration, inputsAtStart, inputsAtEnd);
    for (ModalState state : coarser) {
      state.advance(duration, inputsAtStart, inputsAtEnd);
    }
    for (int u = 0; u < now.length; u++) {
      change[u] = duration * (inputsAtStart[u] + inputsAtEnd[u]) / 2;
    }
    leg.flows.values(whole.integral, change, flows);
    for (int u = 0; u < now.length; u++) {
      double moved = u < boundaries ? flows[u] : change[u];
      heat[u] += moved;
      heatMoved += Math.abs(moved);
    }
    mean.add(duration, whole.integral, change);
    System.arraycopy(inputsAtEnd, 0, now, 0, now.length);
    time += duration;
    steps++;
  }

  @Override
  public void read(double[] values) {
    requireLength("outputs", values, largestDifference.length);
    follow();
    readings.read(whole.z, now, values);
    Arrays.fill(difference, 0);
    for (int m = 0; m < coarser.length; m++) {
      readings.addDifferences(leg.coarserOutputs[m], coarser[m].z, now, values, difference);
    }
    for (int index = 0; index < values.length; index++) {
      largestDifference[index] = Math.max(largestDifference[index], PART * difference[index]);
    }
  }

  /**
   * Reads the outputs now as {@link #read} does, but looks for extremes at all nodes of their
   * blocks: nothing is missed; it costs as much as some ten to hundred readings.
   *
   * @param values where to put them [K or W]
   * @throws InvalidInputException if the number of values is wrong
   * @throws IllegalStateException if the model was read without its cells
   */
  public void readEverywhere(double[] values) {
    read(values);
    readings.missed(whole.z, now, model.body(), values, difference);
    readings.add(difference, values);
  }

  /**
   * Tells how large the error of the reduction may be: the largest difference so far, over all
   * readings, between each output and those of two coarser models, nine tenths of their sum. Each
   * of them leaves out the resolvents at one shift, of those that entered the basis last; an
   * extreme is compared at the node where it was found. It is an estimate, not a bound, and says
   * nothing about the error of the grid, nor about what the chosen nodes miss of an extreme, see
   * {@link #readEverywhere}.
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
   * Tells by how much the readings of extremes miss those of the whole field in the state now. A
   * reading looks at nodes chosen when the model was built; this looks at all nodes of the block,
   * where the extremes of the continuous field lie. So it is what is missed, to 0.1 mK, not an
   * estimate of it; it takes as long as ten to a hundred readings.
   *
   * @param missed where to put it, one for each output [K], at least 0; 0 for those that are no
   *     extremes
   * @throws InvalidInputException if the number of values is wrong
   */
  public void missedNow(double[] missed) {
    requireLength("outputs", missed, largestDifference.length);
    follow();
    readings.read(whole.z, now, missed);
    readings.missed(whole.z, now, model.body(), missed, missed);
  }

  private ReducibleNetwork operator() {
    if (operator == null) {
      operator = leg.configuration.operator();
    }
    return operator;
  }

  private double[] coordinates() {
    return Arrays.copyOf(whole.coordinates(), model.modes());
  }

  @Override
  public TemperatureField field() {
    follow();
    return operator().field(model.basis().expand(coordinates()), now);
  }

  @Override
  public HeatLedger ledger() {
    Map<String, Double> atBoundaries = new LinkedHashMap<>();
    Map<String, Double> fromSources = new LinkedHashMap<>();
    for (int u = 0; u < heat.length; u++) {
      (u < boundaries ? atBoundaries : fromSources).put(inputs.get(u).name(), heat[u]);
    }
    double[] rise = coordinates();
    for (int j = 0; j < startCoordinates.length; j++) {
      rise[j] -= startCoordinates[j];
    }
    double[] sums = model.body().storedIn(rise);
    Map<String, Double> stored = new LinkedHashMap<>();
    for (int block = 0; block < sums.length; block++) {
      stored.put(model.body().solidBlocks.get(block), sums[block]);
    }
    double scale = heatMoved + model.body().capacity * SCALE_RISE;
    return new HeatLedger(atBoundaries, fromSources, stored, scale);
  }

  /**
   * Returns what the run has cost.
   *
   * @return exact steps, none rejected, and the iterations that the model took to build
   */
  @Override
  public TransientSolution.Work work() {
    return new TransientSolution.Work(steps, 0, model.iterations());
  }

  /** A moment of this engine. */
  private static final class Saved implements State {
    private final ModalEngine engine;
    private final double[] now;
    private final double[] heat;
    private final double[] largestDifference;
    private final double[][] amplitudes;
    private final RunningMean mean = new RunningMean();
    private ReducedModel model;
    private PreparedLeg leg;
    private KnownNetwork network;
    private double[] coefficients;
    private double time;
    private double heatMoved;

    private Saved(ModalEngine engine) {
      this.engine = engine;
      now = new double[engine.now.length];
      heat = new double[engine.heat.length];
      largestDifference = new double[engine.largestDifference.length];
      amplitudes = new double[1 + engine.coarser.length][0];
      model = engine.model;
      leg = engine.leg;
      network = engine.network;
      coefficients = engine.coefficients;
    }
  }

  @Override
  public State save() {
    Saved state = new Saved(this);
    save(state);
    return state;
  }

  private Saved own(State state) {
    if (state instanceof Saved saved && saved.engine == this) {
      return saved;
    }
    throw new InvalidInputException("state", "was made by another engine");
  }

  @Override
  public void save(State into) {
    Saved state = own(into);
    copy(now, state.now);
    copy(heat, state.heat);
    copy(largestDifference, state.largestDifference);
    for (int m = 0; m < state.amplitudes.length; m++) {
      double[] z = stepped(m).z;
      if (state.amplitudes[m].length != z.length) {
        state.amplitudes[m] = new double[z.length];
      }
      copy(z, state.amplitudes[m]);
    }
    state.mean.copyFrom(mean);
    state.model = model;
    state.leg = leg;
    state.network = network;
    state.coefficients = coefficients;
    state.time = time;
    state.heatMoved = heatMoved;
  }

  @Override
  public void restore(State from) {
    Saved state = own(from);
    copy(state.now, now);
    copy(state.heat, heat);
    copy(state.largestDifference, largestDifference);
    if (leg != state.leg) {
      leg = state.leg;
      readings = new Readings(state.model.plan(), leg);
      operator = null;
    }
    whole.restore(leg.whole, state.amplitudes[0]);
    for (int m = 0; m < coarser.length; m++) {
      coarser[m].restore(leg.coarser[m], state.amplitudes[m + 1]);
    }
    mean.copyFrom(state.mean);
    model = state.model;
    network = state.network;
    coefficients = state.coefficients;
    asked = true;
    time = state.time;
    heatMoved = state.heatMoved;
  }

  private ModalState stepped(int index) {
    return index == 0 ? whole : coarser[index - 1];
  }

  private static void copy(double[] from, double[] to) {
    System.arraycopy(from, 0, to, 0, to.length);
  }
}
