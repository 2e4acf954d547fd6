package stenotherm.modal;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.conduction.ReducibleNetwork;

/**
 * A linear heat network reduced to a few modes, for any number of runs. One Krylov basis
 * approximates the resolvents of the body for all its inputs under all configurations (network and
 * surface coefficients) that it was built for.
 *
 * <p>Experimental. Immutable, thus thread-safe; each thread makes its own engine.
 */
public final class ReducedModel {
  /**
   * Shifts s of the resolvents in the basis [1/s]: 0 for the steady state, then from some hours to
   * some seconds. The last ones close the gap at minutes, where most of the error lies.
   */
  private static final double[] SHIFTS = {0, 6e-5, 2e-4, 5e-4, 1.2e-3, 8e-2, 2.5e-2, 8e-3, 3e-3};

  /** Shift in place of 0 where no film and no held surface fixes the temperature level [1/s]. */
  static final double LEAST_SHIFT = 4e-7;

  /** The most configurations whose steady states are solved for when a model is built. */
  private static final int MOST_SAMPLED = 4;

  private final OutputPlan plan;
  private final Body body;
  private final List<PreparedLeg> legs;
  private final long iterations;

  /** What needs the cells; none in a model that was read. */
  private final @Nullable Cells cells;

  /** What a model keeps of its cells, and how it goes about them. */
  private record Cells(
      KrylovBasis basis, List<Candidates> candidates, BasisSettings settings, Workers workers) {}

  private ReducedModel(
      OutputPlan plan, Body body, List<PreparedLeg> legs, long iterations, @Nullable Cells cells) {
    this.plan = plan;
    this.body = body;
    this.legs = List.copyOf(legs);
    this.iterations = iterations;
    this.cells = cells;
  }

  /**
   * Starts a model.
   *
   * @param probes the outputs
   * @return a builder that needs at least one configuration
   * @throws InvalidInputException if a name occurs twice
   */
  public static Builder builder(List<Probe> probes) {
    return new Builder(new OutputPlan(probes));
  }

  /**
   * Tells why a run cannot be made with a reduced model.
   *
   * @param network the body
   * @param conductivities what conductivities that depend on temperature are to do
   * @return a reason that begins with a verb, or nothing if it can
   */
  public static Optional<String> reasonAgainst(
      HeatNetwork network, IntegratorSettings.Conductivities conductivities) {
    Optional<String> melting = ReducibleNetwork.reasonAgainst(network);
    return melting.isPresent() || conductivities == IntegratorSettings.Conductivities.FROZEN
        ? melting
        : ReducibleNetwork.reasonAgainstLive(network);
  }

  /**
   * Makes an engine at time zero. It stands under the first configuration until told otherwise.
   *
   * @param state state of every block; one that starts apart must have been announced to the
   *     builder
   * @return the engine
   * @throws InvalidInputException if a block starts apart that was not announced, does not exist,
   *     or is given a liquid fraction
   */
  public ModalEngine engine(InitialState state) {
    return new ModalEngine(this, state, true);
  }

  /**
   * Makes an engine that runs no coarser models beside its own and so has no error estimates: up to
   * twice as fast. For many runs of which a first one has been made with estimates.
   *
   * @param state state of every block, as in {@link #engine}
   * @return the engine
   * @throws InvalidInputException as {@link #engine}
   */
  public ModalEngine engineWithoutEstimates(InitialState state) {
    return new ModalEngine(this, state, false);
  }

  /**
   * Writes what runs need, without the cells: ports, outputs, all configurations by their numbers
   * in their modes, and states to start from. The package's documentation lists each byte. A model
   * of 60 modes takes about 0.3 MB for each configuration.
   *
   * @param out where to write to; neither flushed nor closed
   * @throws IOException if it cannot be written to
   * @throws IllegalStateException if the model is larger than the form allows, see {@link #read}
   */
  public void write(DataOutput out) throws IOException {
    StoredModel.write(new StoredModel.Content(plan, body, legs, iterations), out);
  }

  /**
   * Reads a model that was written. Its engines run to the same bits as those of the model that was
   * written. What needs the cells throws an {@link IllegalStateException} that says so: fields,
   * {@link #with}, networks that an engine is to use, {@link ModalEngine#missedNow}; choose
   * configurations by number, {@link ModalEngine#useConfiguration}, or by their coefficients.
   *
   * <p>Safe to use on data of unknown origin: every length is held against a limit before anything
   * is allocated (1000 boundary ports and as many sources, 10,000 blocks and outputs, 2000 modes,
   * 1000 configurations, 4000 bytes for a name, 2^25 numbers altogether), numbers must be finite
   * and the checksum must match.
   *
   * @param in where to read from; exactly the model is read
   * @return the model
   * @throws ModelFormatException if it is no stored model, one of another version, or damaged
   * @throws IOException if it cannot be read from
   */
  public static ReducedModel read(DataInput in) throws IOException {
    StoredModel.Content content = StoredModel.read(in);
    return new ReducedModel(
        content.plan(), content.body(), content.legs(), content.iterations(), null);
  }

  /** A network as this model knows it, or with the next number. */
  KnownNetwork known(HeatNetwork network) {
    int next = 0;
    for (PreparedLeg leg : legs) {
      KnownNetwork known = leg.configuration.network;
      if (known.is(network)) {
        return known;
      }
      next = Math.max(next, known.number + 1);
    }
    return new KnownNetwork(next, network);
  }

  static IllegalStateException withoutCells(String purpose) {
    return new IllegalStateException(
        "the model was read without its cells; " + purpose + " needs them");
  }

  private Cells cells(String purpose) {
    if (cells == null) {
      throw withoutCells(purpose);
    }
    return cells;
  }

  /**
   * The same model with one more configuration. The network is projected on the basis there is;
   * only where the residual of an input's Galerkin solution is too large does the basis grow by
   * that resolvent. A model that was built for it would differ by less than 1 mK in means and some
   * hundredths of a kelvin in extremes, as measured on random bodies; see the package for what it
   * takes.
   *
   * @param network the same body, with other conductivities or thin resistances
   * @param coefficients one for each boundary port [W/(m2 K)], not read for boundaries that are no
   *     films
   * @return the extended model; this one if it has the configuration already
   * @throws InvalidInputException if it is not the same body or something melts
   * @throws IllegalStateException if the model was read
   */
  public ReducedModel with(HeatNetwork network, double[] coefficients) {
    Cells own = cells("another configuration");
    if (find(network, coefficients).isPresent()) {
      return this;
    }
    ReducibleNetwork.requireSameBody(
        firstLeg().configuration.network.cells("another configuration"), network);
    Configuration added = Configuration.of(known(network), coefficients);
    ResolventSolver solver =
        new ResolventSolver(added, own.workers, body.groups, body.startingApart());
    KrylovBasis grown = own.basis.copy();
    if (own.settings.grows) {
      solver.enrich(own.settings, grown);
    }
    Body same = grown.size() == own.basis.size() ? body : new Body(body, solver.operator(0), grown);
    List<PreparedLeg> all = new ArrayList<>(legs);
    // extremes are looked for where they are in the configurations that the model was built for
    all.add(new PreparedLeg(projected(solver, grown, plan), own.candidates, grown, own.settings));
    return new ReducedModel(
        plan,
        same,
        all,
        iterations + solver.iterations(),
        new Cells(grown, own.candidates, own.settings, own.workers));
  }

  /**
   * The same model with its first configuration alone: later ones are forgotten, but not what the
   * basis has grown by.
   *
   * @return the smaller model
   */
  public ReducedModel withFirstAlone() {
    return new ReducedModel(plan, body, List.of(firstLeg()), iterations, cells);
  }

  private static ProjectedLeg projected(
      ResolventSolver solver, KrylovBasis basis, OutputPlan plan) {
    Projection projection = new Projection(solver, basis, plan);
    return new ProjectedLeg(solver.configuration, projection, basis);
  }

  static double[] shifts(boolean fixesLevel) {
    double[] shifts = SHIFTS.clone();
    if (!fixesLevel) {
      shifts[0] = LEAST_SHIFT;
    }
    return shifts;
  }

  Optional<PreparedLeg> find(HeatNetwork network, double[] coefficients) {
    return legs.stream().filter(leg -> leg.configuration.is(network, coefficients)).findFirst();
  }

  Optional<PreparedLeg> find(KnownNetwork network, double[] coefficients) {
    return legs.stream().filter(leg -> leg.configuration.is(network, coefficients)).findFirst();
  }

  Optional<PreparedLeg> find(KnownNetwork network) {
    return legs.stream().filter(leg -> leg.configuration.network.is(network)).findFirst();
  }

  PreparedLeg leg(int configuration) {
    if (configuration < 0 || configuration >= legs.size()) {
      throw new InvalidInputException(
          "configuration", configuration + " must lie between 0 and " + (legs.size() - 1));
    }
    return legs.get(configuration);
  }

  PreparedLeg firstLeg() {
    return legs.get(0);
  }

  Body body() {
    return body;
  }

  OutputPlan plan() {
    return plan;
  }

  KrylovBasis basis() {
    return cells("the field").basis;
  }

  /**
   * Returns at how many nodes of its block each extreme is looked for.
   *
   * @return one for each output, 0 for those that are no extremes
   */
  public int[] nodesOfExtremes() {
    int[] counts = new int[plan.probes.size()];
    int[] first = firstLeg().firstCandidate;
    for (int index = 0; index < counts.length; index++) {
      if (plan.side[index] != 0) {
        counts[index] = first[plan.position[index] + 1] - first[plan.position[index]];
      }
    }
    return counts;
  }

  long iterations() {
    return iterations;
  }

  /**
   * Returns the outputs.
   *
   * @return the probes in their order
   */
  public List<Probe> outputs() {
    return plan.probes;
  }

  /**
   * Returns the inputs.
   *
   * @return boundary ports, then source ports
   */
  public List<Port> inputs() {
    return body.inputs;
  }

  /**
   * Returns the number of modes.
   *
   * @return the size of the basis
   */
  public int modes() {
    return body.basisSize();
  }

  /**
   * Returns the number of configurations.
   *
   * @return the number
   */
  public int configurations() {
    return legs.size();
  }

  /**
   * Returns the rates at which the modes of a configuration decay.
   *
   * @param configuration its position, in the order in which it was added
   * @return a copy, ascending [1/s]; none is negative
   * @throws InvalidInputException if there is none of that position
   */
  public double[] rates(int configuration) {
    double[] rates = leg(configuration).whole.lambda.clone();
    Arrays.sort(rates);
    return rates;
  }

  /**
   * Returns the surface coefficients of a configuration.
   *
   * @param configuration its position, in the order in which it was added
   * @return a copy, one for each boundary port [W/(m2 K)]; 0 for boundaries that are no films
   * @throws InvalidInputException if there is none of that position
   */
  public double[] coefficients(int configuration) {
    return leg(configuration).configuration.coefficients();
  }

  /** Builds a model. Not thread-safe. */
  public static final class Builder {
    private final OutputPlan plan;
    private final List<Configuration> configurations = new ArrayList<>();
    private final Set<String> startingApart = new TreeSet<>();
    private final List<Set<String>> together = new ArrayList<>();
    private BasisSettings settings = BasisSettings.WHOLE;
    private Workers workers = new Workers(1);

    private Builder(OutputPlan plan) {
      this.plan = plan;
    }

    /**
     * Adds a configuration that runs will meet. The first one's resolvents enter the basis for all
     * inputs and shifts; then the steady states of three more at most, those that differ most from
     * one another; then what has too large a residual under any of them, as by {@link
     * ReducedModel#with}; last the resolvents of what the switch from each configuration to the
     * next adds to the heat balance of steady states.
     *
     * @param network the body; from the second on with other conductivities or thin resistances
     * @param coefficients one for each boundary port [W/(m2 K)], not read for boundaries that are
     *     no films
     * @return this builder
     * @throws InvalidInputException if it is not the same body, something melts, or the number of
     *     coefficients is wrong
     */
    public Builder configuration(HeatNetwork network, double[] coefficients) {
      for (Configuration known : configurations) {
        if (known.is(network, coefficients)) {
          return this;
        }
      }
      KnownNetwork same = null;
      int next = 0;
      for (Configuration other : configurations) {
        same = other.network.is(network) ? other.network : same;
        next = Math.max(next, other.network.number + 1);
      }
      Configuration added =
          Configuration.of(same == null ? new KnownNetwork(next, network) : same, coefficients);
      if (!configurations.isEmpty()) {
        ReducibleNetwork.requireSameBody(
            configurations.get(0).network.cells("a configuration"), network);
      }
      configurations.add(added);
      return this;
    }

    /**
     * Announces a block that may start at another temperature than the rest.
     *
     * @param block name of the block
     * @return this builder
     */
    public Builder startsApart(String block) {
      startingApart.add(block);
      return this;
    }

    /**
     * Announces inputs that have the same value at all times, such as the ambient of faces that
     * meet the same air: to the basis they are one input. An engine refuses other values.
     *
     * @param ports names of inputs in the same unit
     * @return this builder
     */
    public Builder together(Set<String> ports) {
      together.add(Set.copyOf(ports));
      return this;
    }

    /**
     * Asks for a small model that is good enough for mean temperatures over an hour or more, to
     * some tenths of a kelvin: for finding coefficients that depend on them. It never grows and
     * makes no error estimates.
     *
     * @return this builder
     */
    public Builder scouting() {
      settings = BasisSettings.SCOUTING;
      return this;
    }

    /**
     * Sets the number of threads that share the work of {@link #build} and of {@link
     * ReducedModel#with}. They end before the call returns. The model is the same to the last bit
     * for any number.
     *
     * @param number the number, with the thread that calls; 1 unless set
     * @return this builder
     * @throws InvalidInputException if it is not positive
     */
    public Builder threads(int number) {
      if (number < 1) {
        throw new InvalidInputException("threads", number + " must be at least 1");
      }
      workers = new Workers(number);
      return this;
    }

    /**
     * Builds the Krylov basis and projects all configurations on it.
     *
     * @return the model
     * @throws InvalidInputException if there is no configuration, or if a block, boundary or point
     *     of an output, or an input that goes together with others, does not exist
     * @throws IllegalStateException if the linear solver does not converge
     */
    public ReducedModel build() {
      if (configurations.isEmpty()) {
        throw new InvalidInputException(
            "configurations", "there is none; a model needs the network and its coefficients");
      }
      ReducibleNetwork operator = configurations.get(0).operator();
      InputGroups groups = new InputGroups(operator.inputs(), together);
      List<ResolventSolver> solvers = new ArrayList<>();
      for (Configuration each : configurations) {
        ResolventSolver solver = new ResolventSolver(each, workers, groups, startingApart);
        solver.release();
        solvers.add(solver);
      }
      KrylovBasis basis = new KrylovBasis(operator);
      List<double[]> starts = new ArrayList<>();
      starts.add(operator.indicator(Optional.empty()));
      for (String block : startingApart) {
        starts.add(operator.indicator(Optional.of(block)));
      }
      basis.add(starts, -1, workers);
      addResolvents(solvers, basis);
      Body body = new Body(operator, basis, startingApart, groups);
      List<ProjectedLeg> projected = new ArrayList<>();
      long iterations = 0;
      for (ResolventSolver each : solvers) {
        projected.add(projected(each, basis, plan));
        iterations += each.iterations();
        each.release();
      }
      List<Candidates> candidates = Candidates.choose(plan, projected, body);
      List<PreparedLeg> legs = new ArrayList<>();
      for (ProjectedLeg each : projected) {
        legs.add(new PreparedLeg(each, candidates, basis, settings));
      }
      Cells cells = new Cells(basis, candidates, settings, workers);
      return new ReducedModel(plan, body, legs, iterations, cells);
    }

    private void addResolvents(List<ResolventSolver> solvers, KrylovBasis basis) {
      ResolventSolver first = solvers.get(0);
      int steady = settings.shifts[0];
      first.addResolvents(steady, 0, settings.tolerance(steady), basis);
      List<ResolventSolver> sampled = FarthestPointSampling.choose(solvers, basis, MOST_SAMPLED);
      for (int shift : settings.shifts) {
        for (ResolventSolver each : sampled) {
          if (each != first || shift != steady) {
            double threshold = each == first || shift == steady ? 0 : each.threshold(settings);
            each.addResolvents(shift, threshold, settings.tolerance(shift), basis);
          }
        }
      }
      for (ResolventSolver each : solvers) {
        if (!sampled.contains(each)) {
          each.enrich(settings, basis);
        }
        each.release();
      }
      for (int c = 1; c < solvers.size(); c++) {
        solvers.get(c).addSwitch(solvers.get(c - 1), settings, basis);
      }
    }
  }
}
