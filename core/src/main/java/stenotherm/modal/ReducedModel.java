package stenotherm.modal;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Workers;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.conduction.ReducibleNetwork;
import stenotherm.conduction.TemperatureField;
import stenotherm.grid.Block;

/**
 * A linear heat network reduced to a few modes, for any number of runs. A run may use any surface
 * coefficients, and any factors on the conductivities of the blocks that vary. One rational Krylov
 * basis spans the solutions for all inputs under the configurations that the model was built for.
 * The less another configuration is like these, the less exact it is.
 *
 * <p>Experimental. Immutable, thus thread-safe; each thread makes its own engine.
 */
public final class ReducedModel {
  /**
   * Shifts at which solutions enter the basis [1/s]: 0 for steady states, then those of some hours
   * to some seconds. The last ones fill the gap at minutes, where most of the error lies.
   */
  private static final double[] SHIFTS = {0, 6e-5, 2e-4, 5e-4, 1.2e-3, 8e-2, 2.5e-2, 8e-3, 3e-3};

  /**
   * Takes the place of shift 0 where no film and no held surface fixes the temperature level [1/s].
   */
  static final double LEAST_SHIFT = 4e-7;

  /** The most configurations whose steady solutions are all found. */
  private static final int MOST_SOLVED = 4;

  private final OutputPlan plan;
  private final Body body;
  private final List<String> varying;
  private final ReducedNetwork network;
  private final Rows rows;

  /** Position of the boundary that each linear output belongs to, or -1. */
  private final int[] boundaryOf;

  private final boolean readsBoundaries;

  private final List<ModalConfiguration> spanned;
  private final long iterations;

  /** The cells; none in a model that was read. */
  private final @Nullable Cells cells;

  /** What a model keeps of its cells. */
  record Cells(HeatNetwork network, KrylovBasis basis) {}

  /**
   * The rows of the outputs.
   *
   * @param outputs linear outputs, then the candidates of each block with extremes
   * @param firstCandidate position among these of the first candidate of each block; one more at
   *     the end
   * @param coarser the basis vectors of each coarser model
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Rows(InterpolatedRows outputs, int[] firstCandidate, int[][] coarser) {}

  /** A configuration that the basis spans, as given. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Spanned(double[] films, double[] factors) {}

  /** The parts of a model that are stored. */
  record Content(
      OutputPlan plan,
      Body body,
      List<String> varying,
      ReducedNetwork network,
      Rows rows,
      List<Spanned> spanned,
      long iterations) {}

  /**
   * Finds the modes under the coefficients that are spanned.
   *
   * @throws IllegalStateException if there are none, as in a model that was read
   */
  ReducedModel(Content content, @Nullable Cells cells) {
    this.plan = content.plan;
    this.body = content.body;
    this.varying = content.varying;
    this.network = content.network;
    this.rows = content.rows;
    this.iterations = content.iterations;
    this.cells = cells;
    this.boundaryOf = new int[plan.linear.size()];
    for (int row = 0; row < boundaryOf.length; row++) {
      String boundary = plan.boundaryOf(row);
      boundaryOf[row] = boundary == null ? -1 : body.boundary(boundary);
    }
    this.readsBoundaries = Arrays.stream(boundaryOf).anyMatch(boundary -> boundary >= 0);
    List<ModalConfiguration> made = new ArrayList<>();
    for (Spanned each : content.spanned) {
      made.add(new ModalConfiguration(this, each.films, each.factors).forManyReadings());
    }
    this.spanned = List.copyOf(made);
  }

  /**
   * Starts a model.
   *
   * @param network the body
   * @param probes the outputs; points and blocks with extremes lie inside, not on an outer surface
   * @return a builder that needs at least one configuration
   * @throws InvalidInputException if a name occurs twice
   */
  public static Builder builder(HeatNetwork network, List<Probe> probes) {
    return new Builder(network, new OutputPlan(probes));
  }

  /**
   * Makes an engine at time zero, in the first configuration that the model was built for.
   *
   * @param state state of every block; a block that starts apart must have been named to {@link
   *     Builder#startsApart}
   * @return the engine
   * @throws InvalidInputException if a block is given a liquid fraction, does not exist, or starts
   *     apart and was not named to the builder
   */
  public ModalEngine engine(InitialState state) {
    return new ModalEngine(this, state, true);
  }

  /**
   * Makes an engine without coarser models beside it and so without error estimates. It is up to
   * twice as fast, and a change of the configuration is much cheaper.
   *
   * @param state state of every block, as in {@link #engine}
   * @return the engine
   * @throws InvalidInputException as {@link #engine}
   */
  public ModalEngine engineWithoutEstimates(InitialState state) {
    return new ModalEngine(this, state, false);
  }

  /**
   * Finds the modes for surface coefficients and factors on conductivities. These need not be among
   * those that the model was built for. It sums a small matrix for each group of conductances and
   * needs no cells.
   *
   * @param films surface coefficient of each boundary port [W/(m2 K)], ignored for boundaries that
   *     are not films
   * @param factors factor on the conductivity of each block that varies [-], in the order in which
   *     they were named
   * @return the configuration
   * @throws InvalidInputException if the number of values is wrong, a film is negative or not
   *     finite, or a factor not finite and above 0
   * @throws IllegalStateException if a model that was read has no modes there
   */
  public ModalConfiguration configuration(double[] films, double[] factors) {
    network.check(films, factors, varying.size());
    return new ModalConfiguration(this, checked(films, body.inputs), factors);
  }

  /** The coefficients of films; 0 for boundaries that are none. */
  private static double[] checked(double[] films, List<? extends Port> ports) {
    double[] checked = new double[films.length];
    for (int port = 0; port < films.length; port++) {
      if (((Port.BoundaryPort) ports.get(port)).kind() == BoundaryKind.CONVECTION) {
        Checks.notNegative(
            "surface coefficient of " + ports.get(port).name(), films[port], "W/(m2 K)");
        checked[port] = films[port];
      }
    }
    return checked;
  }

  /**
   * Returns the configurations that the model was built for.
   *
   * @return the configurations in their order; unmodifiable
   */
  public List<ModalConfiguration> spanned() {
    return spanned;
  }

  /**
   * Writes what runs need, without the cells: ports, outputs, the projected network and outputs,
   * initial states and configurations. The package documentation lists each byte.
   *
   * @param out where to write to; neither flushed nor closed
   * @throws IOException if it cannot be written to
   * @throws IllegalStateException if the model is larger than the form allows, see {@link #read}
   */
  public void write(DataOutput out) throws IOException {
    List<Spanned> coefficients =
        spanned.stream().map(each -> new Spanned(each.films(), each.factors())).toList();
    StoredModel.write(
        new Content(plan, body, varying, network, rows, coefficients, iterations), out);
  }

  /**
   * Reads a model that {@link #write} wrote. Its engines give the same bits as those of that model.
   * Methods that need the cells, for a field or the body, throw an {@link IllegalStateException}.
   *
   * <p>Safe for data of unknown origin: every length is compared with a limit before anything is
   * allocated (1000 boundary ports and as many sources; 10,000 blocks, outputs and groups of
   * conductances; 2000 modes; 1000 configurations; 4000 bytes for a name; 2^25 numbers in all),
   * numbers must be finite and the checksum must match.
   *
   * @param in where to read from; nothing after the model is read
   * @return the model
   * @throws ModelFormatException if it is not a stored model, has another version or is damaged
   * @throws IOException if it cannot be read from
   */
  public static ReducedModel read(DataInput in) throws IOException {
    return StoredModel.read(in);
  }

  /**
   * Makes the continuous field of a state.
   *
   * @param coordinates coordinates in the basis
   * @param inputs values of the ports
   */
  TemperatureField field(double[] coordinates, double[] inputs, double[] films, double[] factors) {
    Cells own = cells();
    return new ReducibleNetwork(withFactors(own.network, varying, factors), films)
        .field(own.basis.expand(coordinates), inputs);
  }

  private static HeatNetwork withFactors(
      HeatNetwork network, List<String> blocks, double[] factors) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int block = 0; block < factors.length; block++) {
      named.put(blocks.get(block), factors[block]);
    }
    return network.withFactors(named);
  }

  private Cells cells() {
    if (cells == null) {
      throw new IllegalStateException("the model was read without its cells; the field needs them");
    }
    return cells;
  }

  /**
   * Returns the body that the model was made of.
   *
   * @return the network
   * @throws IllegalStateException if the model was read without its cells
   */
  public HeatNetwork body() {
    return cells().network;
  }

  /**
   * Makes a smaller model of the same body for runs like some that were seen: it spans the
   * strongest principal directions of their states. It gives means and points to some millikelvins
   * where inputs and coefficients are like those of these runs, finds configurations tens of times
   * faster, and has no extremes, no error estimates and no cells. How far it lies from this model
   * is for the caller to measure on runs of both.
   *
   * @param states states met on these runs, each of length {@link #modes}, see {@link
   *     ModalEngine#coordinates} [sqrt(J K)]
   * @param outputs outputs of this model that it is to have, none of them an extreme
   * @param modes its number of modes; fewer if the states span less
   * @return the smaller model
   * @throws InvalidInputException if there is no state or an output is not one of this model, or an
   *     extreme
   */
  public ReducedModel condensed(List<double[]> states, List<Probe> outputs, int modes) {
    if (states.isEmpty()) {
      throw new InvalidInputException("states", "there is none; a smaller model needs some");
    }
    for (Probe output : outputs) {
      if (!plan.linear.contains(output)) {
        throw new InvalidInputException(
            "output '" + output.name() + "'", "is none of this model, or the extreme of a block");
      }
    }
    return new ReducedModel(new Condensation(this, states, modes).content(outputs), null);
  }

  ReducedNetwork network() {
    return network;
  }

  InterpolatedRows rows() {
    return rows.outputs;
  }

  Body reducedBody() {
    return body;
  }

  OutputPlan plan() {
    return plan;
  }

  /**
   * Rows of all outputs but those of boundaries, interpolated between those that were read; made
   * anew by each call.
   */
  Projection.Rows outputRows(double[] factors) {
    return rows.outputs.at(factors);
  }

  int[] firstCandidate() {
    return rows.firstCandidate;
  }

  int[][] coarser() {
    return rows.coarser;
  }

  int[] allVectors() {
    return IntStream.range(0, body.basisSize()).toArray();
  }

  /** Rows of outputs with those of boundaries, which a projection has, in their places. */
  Projection.Rows withBoundaries(Projection.Rows inside, Projection projection) {
    Projection.Rows outputs = inside.copy();
    for (int row = 0; row < plan.linear.size(); row++) {
      if (boundaryOf[row] >= 0) {
        outputs.replace(
            row,
            plan.isHeatFlow(row) ? projection.flows() : projection.surfaces(),
            boundaryOf[row]);
      }
    }
    return outputs;
  }

  /** Whether a linear output belongs to a boundary. */
  boolean readsBoundaries() {
    return readsBoundaries;
  }

  /** Position of the boundary that a linear output belongs to, or -1. */
  int boundaryOf(int linearOutput) {
    return boundaryOf[linearOutput];
  }

  /** Positions of blocks among the solid ones. */
  int[] positionsOf(List<String> blocks) {
    return blocks.stream().mapToInt(body.solidBlocks::indexOf).toArray();
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
   * Returns the boundaries.
   *
   * @return the boundary ports, the first of the inputs
   */
  public List<Port.BoundaryPort> boundaryPorts() {
    return body.inputs.stream()
        .filter(Port.BoundaryPort.class::isInstance)
        .map(Port.BoundaryPort.class::cast)
        .toList();
  }

  /**
   * Returns the names of the blocks whose conductivity varies.
   *
   * @return the names, in the order of factors
   */
  public List<String> varying() {
    return varying;
  }

  /**
   * Returns the number of modes.
   *
   * @return the size of the basis
   */
  public int modes() {
    return body.basisSize();
  }

  /** Builds a model. Not thread-safe. */
  public static final class Builder {
    private final HeatNetwork network;
    private final OutputPlan plan;
    private final List<Spanned> spanned = new ArrayList<>();
    private final List<double[]> read = new ArrayList<>();
    private final Set<String> startingApart = new TreeSet<>();
    private final List<Set<String>> together = new ArrayList<>();
    private final Set<String> weak = new TreeSet<>();
    private List<String> varying = List.of();
    private BasisSettings basisSettings = BasisSettings.WHOLE;
    private Workers workers = new Workers(1);

    private Builder(HeatNetwork network, OutputPlan plan) {
      this.network = network;
      this.plan = plan;
    }

    /**
     * Names the blocks whose conductivity varies from configuration to configuration.
     *
     * @param blocks their names
     * @return this builder
     * @throws InvalidInputException if configurations were given before, a block is named twice, or
     *     there is no solid block of that name
     */
    public Builder varying(List<String> blocks) {
      for (String block : blocks) {
        if (Collections.frequency(blocks, block) > 1) {
          throw new InvalidInputException("varying blocks", "'" + block + "' is named twice");
        }
        int index = network.grid().layout().indexOf(block);
        if (!(network.grid().layout().blocks().get(index) instanceof Block.Solid)) {
          throw new InvalidInputException(
              "varying blocks", "'" + block + "' is an environment, which conducts nothing");
        }
      }
      if (!spanned.isEmpty()) {
        throw new InvalidInputException(
            "varying blocks", "must be named before the first configuration is given");
      }
      varying = List.copyOf(blocks);
      return this;
    }

    /**
     * Adds a configuration that the basis is to span. Steady states enter the basis for the first
     * one and for the three that differ most from it and from one another. All other solutions
     * enter it where its approximation is not good enough.
     *
     * @param films surface coefficient of each boundary port [W/(m2 K)], ignored for boundaries
     *     that are not films
     * @param factors factor on the conductivity of each block that varies [-], in the order in
     *     which they were named
     * @return this builder
     * @throws InvalidInputException if the number of values is wrong, something melts, or a value
     *     is out of its range
     */
    public Builder spanning(double[] films, double[] factors) {
      checkFactors(factors);
      ReducibleNetwork.check(network, films);
      double[] own = checked(films, network.boundaryPorts());
      for (Spanned known : spanned) {
        if (Arrays.equals(known.films, own) && Arrays.equals(known.factors, factors)) {
          return this;
        }
      }
      spanned.add(new Spanned(own, factors.clone()));
      return this;
    }

    private void checkFactors(double[] factors) {
      if (factors.length != varying.size()) {
        throw new InvalidInputException(
            "factors", factors.length + " values given, " + varying.size() + " needed");
      }
      for (double factor : factors) {
        Checks.positive("factor on a conductivity", factor, "");
      }
    }

    /**
     * Adds conductivities at which outputs inside the body are to be read, beside those that are
     * spanned. At edges of blocks outputs depend on the conductivities on both sides; between these
     * and those spanned they are interpolated.
     *
     * @param factors factor on the conductivity of each block that varies [-], in the order in
     *     which they were named
     * @return this builder
     * @throws InvalidInputException if the number of values is wrong, or one is not finite and
     *     above 0
     */
    public Builder reading(double[] factors) {
      checkFactors(factors);
      read.add(factors.clone());
      return this;
    }

    /**
     * Names a block that may start at another temperature than the rest.
     *
     * @param block name of the block
     * @return this builder
     */
    public Builder startsApart(String block) {
      startingApart.add(block);
      return this;
    }

    /**
     * Names inputs that have the same value at all times, such as the ambients of faces in the same
     * air. The basis then needs one solution for all of them. An engine refuses different values.
     *
     * @param ports names of inputs in the same unit
     * @return this builder
     */
    public Builder together(Set<String> ports) {
      together.add(Set.copyOf(ports));
      return this;
    }

    /**
     * Names heat sources that hardly heat, such as the milliwatts of a small animal: the basis
     * takes some hundredths of what they do as error, for far fewer vectors.
     *
     * @param sources names of heat sources
     * @return this builder
     */
    public Builder weak(Collection<String> sources) {
      weak.addAll(sources);
      return this;
    }

    /**
     * Asks for a small model that gives mean temperatures over an hour or more to some tenths of a
     * kelvin: enough to find coefficients that depend on them. It has no error estimates.
     *
     * @return this builder
     */
    public Builder scouting() {
      basisSettings = BasisSettings.SCOUTING;
      return this;
    }

    /**
     * Asks for a model that gives means of blocks to some hundredths of a kelvin where what settles
     * within half a minute does not matter. It has half of the modes and no error estimates. Points
     * are read as under the first configuration.
     *
     * @return this builder
     */
    public Builder means() {
      basisSettings = BasisSettings.MEANS;
      return this;
    }

    /**
     * Sets the number of threads that share the work of {@link #build}. They end before the call
     * returns. The model has the same bits for any number.
     *
     * @param number the number, including the calling thread; 1 unless set
     * @return this builder
     * @throws InvalidInputException if it is not positive
     */
    public Builder threads(int number) {
      return workers(new Workers(number));
    }

    /**
     * Sets the threads that share the work of {@link #build}. The model has the same bits for any.
     *
     * @param others the threads
     * @return this builder
     */
    public Builder workers(Workers others) {
      workers = Checks.given("workers", others);
      return this;
    }

    /**
     * Solves for the responses of the body to all its inputs and projects it on them.
     *
     * @return the model
     * @throws InvalidInputException if there is no configuration; if a block, boundary or point of
     *     an output, or an input that goes together with others, does not exist; or if a point or
     *     an extreme lies on an outer surface
     * @throws IllegalStateException if the linear solver does not converge
     */
    public ReducedModel build() {
      if (spanned.isEmpty()) {
        throw new InvalidInputException(
            "configurations", "there is none; a model needs coefficients that its basis spans");
      }
      List<Configuration> configurations = spanned.stream().map(this::configuration).toList();
      ReducibleNetwork given = new ReducibleNetwork(network, spanned.get(0).films);
      InputGroups groups = new InputGroups(given.inputs(), together, weak);
      List<ResolventSolver> reductions = new ArrayList<>();
      for (Configuration each : configurations) {
        ResolventSolver reduction = new ResolventSolver(each, workers, groups, startingApart);
        reduction.release();
        reductions.add(reduction);
      }
      KrylovBasis basis = new KrylovBasis(given);
      List<double[]> starts = new ArrayList<>();
      starts.add(given.indicator(Optional.empty()));
      for (String block : startingApart) {
        starts.add(given.indicator(Optional.of(block)));
      }
      basis.add(starts, -1, workers);
      int loads = groups.strong() + startingApart.size();
      double threshold = basisSettings.residualThreshold(loads, lightest(given));
      addSolutions(reductions, threshold, basis);
      long iterations = reductions.stream().mapToLong(ResolventSolver::iterations).sum();
      Body body = new Body(given, basis, startingApart, groups);
      ReducedNetwork reduced = new ReducedNetwork(given, varying, basis, workers);
      List<OutputRows> outputs = new ArrayList<>();
      for (double[] factors : readAt()) {
        Configuration at = configuration(new Spanned(spanned.get(0).films, factors));
        outputs.add(OutputRows.of(at, plan, basis, workers));
      }
      Rows rows = rows(reduced, outputs, basis, body);
      Content content = new Content(plan, body, varying, reduced, rows, spanned, iterations);
      return new ReducedModel(content, new Cells(network, basis));
    }

    /** Factors at which outputs are read: first those that are spanned, each once. */
    private List<double[]> readAt() {
      if (plan.isOfMeans() || basisSettings == BasisSettings.MEANS) {
        return List.of(spanned.get(0).factors);
      }
      List<double[]> all = new ArrayList<>();
      for (Spanned each : spanned) {
        if (all.stream().noneMatch(known -> Arrays.equals(known, each.factors))) {
          all.add(each.factors);
        }
      }
      all.addAll(read);
      return all;
    }

    /** Position of factors that are spanned among those at which outputs are read. */
    private int positionOf(double[] factors) {
      List<double[]> all = readAt();
      int position = 0;
      while (!Arrays.equals(all.get(position), factors)) {
        position++;
      }
      return position;
    }

    private Configuration configuration(Spanned of) {
      return new Configuration(withFactors(network, varying, of.factors), of.films);
    }

    private Rows rows(
        ReducedNetwork reduced, List<OutputRows> outputs, KrylovBasis basis, Body body) {
      List<Candidates> candidates = List.of();
      if (!plan.blocks.isEmpty()) {
        List<ModalSystem> systems = new ArrayList<>();
        List<OutputRows> ofSystems = new ArrayList<>();
        for (Spanned each : spanned) {
          Projection projection = reduced.at(each.films, each.factors);
          systems.add(new ModalSystem(projection, basis.members()));
          ofSystems.add(outputs.get(positionOf(each.factors)));
        }
        candidates = Candidates.choose(plan, ofSystems, systems, body);
      }
      int[] firstCandidate = new int[candidates.size() + 1];
      firstCandidate[0] = plan.linear.size();
      for (int block = 0; block < candidates.size(); block++) {
        firstCandidate[block + 1] = firstCandidate[block] + candidates.get(block).nodes().size();
      }
      int[][] coarser = new int[basisSettings.shiftsLeftOut.length][];
      for (int n = 0; n < coarser.length; n++) {
        coarser[n] = basis.membersWithoutShift(basisSettings.shiftsLeftOut[n]);
      }
      List<Projection.Rows> chosen = new ArrayList<>();
      for (OutputRows each : outputs) {
        chosen.add(each.chosen(candidates));
      }
      return new Rows(new InterpolatedRows(readAt(), chosen), firstCandidate, coarser);
    }

    /** Part of the lightest block with extremes in the heat capacity of the body. */
    private double lightest(ReducibleNetwork given) {
      double[] held = given.storedIn(given.indicator(Optional.empty()));
      double least = network.totalCapacity();
      for (String block : plan.blocks) {
        least = Math.min(least, held[given.solidBlocks().indexOf(block)]);
      }
      return least / network.totalCapacity();
    }

    private void addSolutions(
        List<ResolventSolver> reductions, double threshold, KrylovBasis basis) {
      ResolventSolver first = reductions.get(0);
      int steady = basisSettings.shifts[0];
      first.addResolvents(steady, 0, basisSettings.tolerance(steady), basis);
      List<ResolventSolver> solved = FarthestPointSampling.choose(reductions, basis, MOST_SOLVED);
      addStrong(solved, basisSettings.shifts, threshold, basis);
      // what is added later is orthogonal to what was there, and useless without it: so what no
      // coarser model is to lack comes before what they leave out
      first.addWeak(basisSettings, basis);
      addStrong(solved, basisSettings.shiftsLeftOut, threshold, basis);
      for (ResolventSolver each : reductions) {
        if (!solved.contains(each)) {
          each.enrich(basisSettings, threshold, basis);
        }
        each.release();
      }
      for (int c = 1; c < reductions.size(); c++) {
        reductions.get(c).addSwitch(reductions.get(c - 1), basisSettings, basis);
      }
    }

    /**
     * Resolvents of the configurations that are solved, at some shifts but the steady one of the
     * first.
     */
    private void addStrong(
        List<ResolventSolver> solved, int[] shifts, double threshold, KrylovBasis basis) {
      ResolventSolver first = solved.get(0);
      int steady = basisSettings.shifts[0];
      for (int rate : shifts) {
        for (ResolventSolver each : solved) {
          if (each != first || rate != steady) {
            double fits = each == first || rate == steady ? 0 : threshold;
            each.addResolvents(rate, fits, basisSettings.tolerance(rate), basis);
          }
        }
      }
    }
  }

  static double[] shifts(boolean fixesLevel) {
    double[] shifts = SHIFTS.clone();
    if (!fixesLevel) {
      shifts[0] = LEAST_SHIFT;
    }
    return shifts;
  }
}
