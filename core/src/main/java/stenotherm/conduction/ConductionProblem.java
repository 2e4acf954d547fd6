package stenotherm.conduction;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.TimeFunction;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;

/**
 * A complete conduction problem: blocks, boundaries and sources that vary in time, and the state at
 * the start.
 *
 * <pre>{@code
 * ConductionProblem wall =
 *     ConductionProblem.builder(Layout.of(slab), MeshControl.uniform(0.005))
 *         .boundary(Face.X_MIN, Boundary.Convection.of(7.7, 293.15))
 *         .boundary(Face.X_MAX, Boundary.Convection.of(25, 263.15))
 *         .build();
 * }</pre>
 *
 * <p>Immutable, thus thread-safe.
 */
public final class ConductionProblem {
  private final HeatNetwork network;
  private final Boundary[] boundaries;
  private final TimeFunction[] powers;
  private final @Nullable InitialState initial;

  private ConductionProblem(Builder builder) {
    network = builder.network.build();
    Map<String, Boundary> byName = new HashMap<>(builder.environments);
    builder.faces.forEach((face, boundary) -> byName.put(face.label(), boundary));
    builder.patches.forEach((patch, boundary) -> byName.put(patch.name(), boundary));
    boundaries =
        network.boundaryPorts().stream()
            .map(port -> byName.get(port.name()))
            .toArray(Boundary[]::new);
    powers =
        network.sourcePorts().stream()
            .map(port -> builder.sources.get(port.name()))
            .toArray(TimeFunction[]::new);
    initial = builder.initialState();
    if (initial != null) {
      BodyState.check(network, initial);
    }
  }

  /**
   * Starts a problem. All faces are adiabatic until set otherwise.
   *
   * @param layout the blocks
   * @param mesh how fine the grid is
   * @return a builder
   */
  public static Builder builder(Layout layout, MeshControl mesh) {
    return new Builder(layout, mesh);
  }

  /**
   * Returns the network.
   *
   * @return the network of the blocks
   */
  public HeatNetwork network() {
    return network;
  }

  /** State at the start. */
  BodyState initial(HeatOperator operator) {
    if (initial == null) {
      throw new InvalidInputException(
          "initial temperature", "is missing; a transient needs a start");
    }
    return BodyState.of(operator, initial);
  }

  Forcing forcing() {
    return new Forcing() {
      @Override
      public void at(double time, Conditions into) {
        fill(time, false, into);
      }

      @Override
      public void before(double time, Conditions into) {
        fill(time, true, into);
      }
    };
  }

  private void fill(double time, boolean before, Conditions into) {
    for (int index = 0; index < boundaries.length; index++) {
      Boundary boundary = boundaries[index];
      Optional<TimeFunction> film = boundary.film();
      if (film.isPresent()) {
        into.coefficient[index] =
            Checks.notNegative("surface coefficient", value(film.get(), time, before), "W/(m2 K)");
      }
      into.boundary[index] = value(boundary.value(), time, before);
    }
    for (int index = 0; index < powers.length; index++) {
      into.power[index] = value(powers[index], time, before);
    }
  }

  private static double value(TimeFunction function, double time, boolean before) {
    return before ? function.before(time) : function.at(time);
  }

  /** Times of kinks and jumps of anything that drives the problem, ascending [s]. */
  double[] breakpoints(double from, double to) {
    java.util.TreeSet<Double> all = new java.util.TreeSet<>();
    for (Boundary boundary : boundaries) {
      boundary.film().ifPresent(film -> addAll(all, film.breakpoints(from, to)));
      addAll(all, boundary.value().breakpoints(from, to));
    }
    for (TimeFunction power : powers) {
      addAll(all, power.breakpoints(from, to));
    }
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void addAll(Set<Double> all, double[] times) {
    for (double time : times) {
      all.add(time);
    }
  }

  /** Builds a problem. Not thread-safe. */
  public static final class Builder {
    private final HeatNetworkBuilder network;
    private final Layout layout;
    private final Map<Face, Boundary> faces = new EnumMap<>(Face.class);
    private final Map<String, Boundary> environments = new LinkedHashMap<>();
    private final Map<FacePatch, Boundary> patches = new LinkedHashMap<>();
    private final Map<String, TimeFunction> sources = new LinkedHashMap<>();
    private final Map<String, Double> initialOf = new HashMap<>();
    private double initial = Double.NaN;
    private @Nullable InitialState whole;

    private Builder(Layout layout, MeshControl mesh) {
      this.layout = layout;
      this.network = HeatNetwork.builder(layout, mesh);
    }

    /**
     * Sets the boundary of a face of the domain.
     *
     * @param face the face
     * @param boundary what happens there
     * @return this builder
     */
    public Builder boundary(Face face, Boundary boundary) {
      faces.put(face, boundary);
      network.boundary(face, boundary.kind());
      return this;
    }

    /**
     * Sets the boundary at the surface of an environment.
     *
     * @param environment name of the environment block
     * @param boundary what happens there
     * @return this builder
     * @throws InvalidInputException if there is no such environment
     */
    public Builder boundary(String environment, Boundary boundary) {
      environments.put(environment, boundary);
      network.boundary(environment, boundary.kind());
      return this;
    }

    /**
     * Sets the boundary of a part of a face; it overrides the face and the patches before it.
     *
     * @param patch the part of a face
     * @param boundary what happens there
     * @return this builder
     * @throws InvalidInputException if its name is taken, or it does not lie on its face
     */
    public Builder boundary(FacePatch patch, Boundary boundary) {
      network.patch(patch, boundary.kind());
      patches.put(patch, boundary);
      return this;
    }

    /**
     * Heats a block.
     *
     * @param block name of the block
     * @param power power of the whole block, spread evenly over the cells that it keeps [W]
     * @return this builder
     */
    public Builder source(String block, TimeFunction power) {
      sources.put(block, power);
      network.source(block);
      return this;
    }

    /**
     * Heats blocks, by a source with a name of its own.
     *
     * @param name name of the source
     * @param blocks names of the blocks
     * @param power power of the whole source, spread evenly over the cells that the blocks keep [W]
     * @return this builder
     * @throws InvalidInputException if the name is blank or taken, or there are no blocks
     */
    public Builder source(String name, Set<String> blocks, TimeFunction power) {
      network.source(name, blocks);
      sources.put(name, power);
      return this;
    }

    /**
     * Adds a thin resistance.
     *
     * @param resistance the resistance
     * @return this builder
     * @throws InvalidInputException if it names a block that does not exist
     */
    public Builder thinResistance(ThinResistance resistance) {
      network.thinResistance(resistance);
      return this;
    }

    /**
     * Sets the temperature at the start; needed for a transient.
     *
     * @param temperature uniform temperature [K]
     * @return this builder
     * @throws InvalidInputException if it is not an absolute temperature
     */
    public Builder initial(double temperature) {
      initial = Checks.temperature("initial temperature", temperature);
      return this;
    }

    /**
     * Sets the temperature of one block at the start; the others need {@link #initial(double)}.
     *
     * @param block name of the block
     * @param temperature uniform temperature of the block [K]
     * @return this builder
     * @throws InvalidInputException if there is no such block or it is not an absolute temperature
     */
    public Builder initial(String block, double temperature) {
      layout.indexOf(block);
      initialOf.put(block, Checks.temperature("initial temperature of " + block, temperature));
      return this;
    }

    /**
     * Sets the state at the start as a whole, instead of temperatures one by one.
     *
     * @param state the state of all blocks
     * @return this builder
     */
    public Builder initial(InitialState state) {
      whole = state;
      return this;
    }

    private @Nullable InitialState initialState() {
      boolean uniform = !Double.isNaN(initial);
      if (whole != null && (uniform || !initialOf.isEmpty())) {
        throw new InvalidInputException(
            "initial state", "is given as a whole and by temperatures; give one of them");
      }
      if (!uniform && !initialOf.isEmpty()) {
        throw new InvalidInputException(
            "initial temperature",
            "is given for " + initialOf.keySet() + " only; the other blocks need one as well");
      }
      return uniform ? new InitialState(initial, initialOf, Map.of()) : whole;
    }

    /**
     * Makes the problem.
     *
     * @return the problem
     * @throws InvalidInputException if the parts do not fit, see {@link
     *     HeatNetworkBuilder#build()}, or the state at the start is given for some blocks only, for
     *     an environment, or is ambiguous, see {@link FullEngine}
     */
    public ConductionProblem build() {
      return new ConductionProblem(this);
    }
  }
}
