package stenotherm.conduction;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;

/**
 * The engine that steps every cell of a network.
 *
 * <p>Not thread-safe: one engine belongs to one thread.
 */
public final class FullEngine implements HeatEngine {
  private final HeatOperator operator;
  private final Probes probes;
  private final TimeIntegrator integrator;
  private final BodyState initial;
  private HeatNetwork network;
  private final Conditions atStart;
  private final Conditions atEnd;
  private double intervalStart;
  private double intervalEnd;
  private boolean started;
  private boolean coefficientsAreSet;

  /** The field now, if it has been asked for since the state or the conditions last changed. */
  private @Nullable TemperatureField latest;

  private @Nullable SolverFailure failure;

  /**
   * Makes an engine at a uniform temperature.
   *
   * @param network the body
   * @param probes the outputs
   * @param initialTemperature temperature of every cell at time zero [K]
   * @param settings how to step
   * @throws InvalidInputException if a probe does not exist or the temperature is not absolute
   */
  public FullEngine(
      HeatNetwork network,
      List<Probe> probes,
      double initialTemperature,
      IntegratorSettings settings) {
    this(network, probes, InitialState.uniform(initialTemperature), settings);
  }

  /**
   * Makes an engine in a state.
   *
   * @param network the body
   * @param probes the outputs
   * @param initialState state of every block at time zero; before the first interval the
   *     surroundings have the temperature of the blocks that it does not name
   * @param settings how to step
   * @throws InvalidInputException if a probe or a block does not exist, a liquid fraction is given
   *     for a block that does not melt or beside a temperature, or a block starts at its melting
   *     temperature without a fraction
   */
  public FullEngine(
      HeatNetwork network,
      List<Probe> probes,
      InitialState initialState,
      IntegratorSettings settings) {
    this.network = network;
    this.operator = new HeatOperator(network);
    this.probes = new Probes(operator, probes);
    this.initial = BodyState.of(operator, initialState);
    this.atStart = new Conditions(network);
    this.atEnd = new Conditions(network);
    for (int p = 0; p < atEnd.boundary.length; p++) {
      if (network.boundaryPorts().get(p).kind() != BoundaryKind.FLUX) {
        atEnd.boundary[p] = initialState.temperature();
      }
    }
    this.integrator = new TimeIntegrator(operator, new Linear(), settings, 0, initial.copy());
  }

  /** Inputs linear over the current interval. */
  private final class Linear implements Forcing {
    @Override
    public void at(double time, Conditions into) {
      double fraction = (time - intervalStart) / (intervalEnd - intervalStart);
      into.copyFrom(atStart);
      for (int p = 0; p < into.boundary.length; p++) {
        into.boundary[p] += fraction * (atEnd.boundary[p] - atStart.boundary[p]);
      }
      for (int s = 0; s < into.power.length; s++) {
        into.power[s] += fraction * (atEnd.power[s] - atStart.power[s]);
      }
    }

    @Override
    public void before(double time, Conditions into) {
      at(time, into);
    }
  }

  @Override
  public List<Port> inputs() {
    return network.inputs();
  }

  @Override
  public List<Probe> outputs() {
    return probes.list();
  }

  @Override
  public double time() {
    return integrator.time;
  }

  /** A film that nobody has set would be an adiabatic face. */
  private void requireCoefficients() {
    for (Port.BoundaryPort port : network.boundaryPorts()) {
      if (!coefficientsAreSet && port.kind() == BoundaryKind.CONVECTION) {
        throw new InvalidInputException(
            "surface coefficient of " + port.name(),
            "is not set; set all of them before the first step, 0 where no heat passes");
      }
    }
  }

  @Override
  public void useCoefficients(double[] coefficients) {
    requireLength("coefficients", coefficients, atStart.coefficient.length);
    for (int p = 0; p < coefficients.length; p++) {
      Port.BoundaryPort port = network.boundaryPorts().get(p);
      if (port.kind() == BoundaryKind.CONVECTION) {
        Checks.notNegative("surface coefficient of " + port.name(), coefficients[p], "W/(m2 K)");
      }
    }
    latest = null;
    coefficientsAreSet = true;
    boolean changed = false;
    for (int p = 0; p < coefficients.length; p++) {
      Port.BoundaryPort port = network.boundaryPorts().get(p);
      if (port.kind() == BoundaryKind.CONVECTION) {
        changed |= coefficients[p] != atEnd.coefficient[p];
        atStart.coefficient[p] = coefficients[p];
        atEnd.coefficient[p] = coefficients[p];
      }
    }
    if (changed) {
      integrator.jump();
    }
  }

  /**
   * Continues with other conductivities or thin resistances of the same body. Temperatures and the
   * ledger stay; the solver treats it as a jump.
   *
   * @param other a network of the same blocks, grid and ports, see {@link
   *     HeatNetwork#withConductivities}
   * @throws stenotherm.base.InvalidInputException if its grid, its ports, its heat capacities or
   *     how it melts are not the same
   */
  public void use(HeatNetwork other) {
    network.requireSameBody(other);
    latest = null;
    network = other;
    integrator.use(other);
  }

  private static void requireLength(String field, double[] values, int length) {
    if (values.length != length) {
      throw new InvalidInputException(
          field, values.length + " values given, " + length + " needed");
    }
  }

  @Override
  public void advance(double duration, double[] inputsAtStart, double[] inputsAtEnd) {
    requireCoefficients();
    if (failure != null) {
      throw new IllegalStateException(failure.getMessage(), failure);
    }
    Checks.positive("duration", duration, "s");
    requireLength("inputs at start", inputsAtStart, atStart.boundary.length + atStart.power.length);
    requireLength("inputs at end", inputsAtEnd, atEnd.boundary.length + atEnd.power.length);
    PortIndex.requireFinite(inputs(), inputsAtStart);
    PortIndex.requireFinite(inputs(), inputsAtEnd);
    latest = null;
    boolean jump = !started || set(atEnd, inputsAtStart);
    set(atStart, inputsAtStart);
    set(atEnd, inputsAtEnd);
    intervalStart = integrator.time;
    intervalEnd = integrator.time + duration;
    if (jump) {
      integrator.jump();
    }
    started = true;
    try {
      integrator.advance(intervalEnd, ProgressListener.NONE, intervalEnd);
    } catch (SolverFailure fatal) {
      failure = fatal;
      throw new IllegalStateException(fatal.getMessage(), fatal);
    }
  }

  /** Takes over inputs; tells whether any changed. */
  private static boolean set(Conditions conditions, double[] inputs) {
    boolean changed = false;
    int boundaries = conditions.boundary.length;
    for (int index = 0; index < inputs.length; index++) {
      double[] target = index < boundaries ? conditions.boundary : conditions.power;
      int position = index < boundaries ? index : index - boundaries;
      changed |= target[position] != inputs[index];
      target[position] = inputs[index];
    }
    return changed;
  }

  @Override
  public void read(double[] values) {
    requireLength("outputs", values, probes.count());
    operator.coefficients(atEnd);
    probes.read(
        probes.needField() ? field() : null,
        integrator.temperature(),
        integrator.enthalpy(),
        atEnd,
        values);
  }

  @Override
  public void readMeans(double[] values) {
    requireLength("outputs", values, probes.count());
    probes.readMeans(integrator.temperature(), integrator.enthalpy(), values);
  }

  @Override
  public TemperatureField field() {
    if (latest == null) {
      operator.coefficients(atEnd);
      latest = new TemperatureField(operator, integrator.temperature(), atEnd);
    }
    return latest;
  }

  @Override
  public HeatLedger ledger() {
    return Ledgers.of(operator, integrator, initial);
  }

  @Override
  public TransientSolution.Work work() {
    return new TransientSolution.Work(
        integrator.steps, integrator.rejected, integrator.iterations());
  }
}
