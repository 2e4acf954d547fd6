package stenotherm.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;

/**
 * A linear network as an operator on vectors, for model reduction: G x, C x, (G + s C) x = b, the
 * heat of each input and the outputs of a state.
 *
 * <p>A vector holds one number for each cell, in an order of its own, with zeros around them. Make
 * it with {@link #vector()}, add and scale it, and pass it back to these methods. Every output but
 * the extremes is linear in the state and the inputs together: read with inputs of zero, a basis
 * vector gives the coefficient of its coordinate.
 *
 * <p>Not thread-safe: it holds the solver's working space.
 */
public final class ReducibleNetwork {
  private final HeatNetwork network;
  private final HeatOperator operator;
  private final Conditions conditions;
  private final List<String> solidBlocks;
  private final int[] solidOf;

  /** Found when it is first asked for. */
  private @Nullable Boolean fixesLevel;

  /**
   * Makes the operator of a network under surface coefficients.
   *
   * @param network the body
   * @param coefficients one for each boundary port [W/(m2 K)], ignored for boundaries that are not
   *     films
   * @throws InvalidInputException see {@link #check}
   */
  public ReducibleNetwork(HeatNetwork network, double[] coefficients) {
    check(network, coefficients);
    int boundaries = coefficients.length;
    this.network = network;
    this.operator = new HeatOperator(network);
    this.conditions = new Conditions(network);
    System.arraycopy(coefficients, 0, conditions.coefficient, 0, boundaries);
    operator.coefficients(conditions);
    List<Block> blocks = network.grid().layout().blocks();
    this.solidBlocks = new ArrayList<>();
    this.solidOf = new int[blocks.size()];
    for (int block = 0; block < solidOf.length; block++) {
      solidOf[block] = -1;
      if (blocks.get(block).isSolid()) {
        solidOf[block] = solidBlocks.size();
        solidBlocks.add(blocks.get(block).name());
      }
    }
  }

  /**
   * Checks that a network can be reduced, without the cost of the operator.
   *
   * @param network the body
   * @param coefficients one for each boundary port [W/(m2 K)]
   * @throws InvalidInputException if something melts, the number of coefficients is wrong, or that
   *     of a film is negative or not finite
   */
  public static void check(HeatNetwork network, double[] coefficients) {
    reasonAgainst(network)
        .ifPresent(
            reason -> {
              throw new InvalidInputException("network", reason);
            });
    List<Port.BoundaryPort> ports = network.boundaryPorts();
    if (coefficients.length != ports.size()) {
      throw new InvalidInputException(
          "coefficients", coefficients.length + " values given, " + ports.size() + " needed");
    }
    for (int p = 0; p < coefficients.length; p++) {
      if (ports.get(p).kind() == BoundaryKind.CONVECTION) {
        Checks.notNegative(
            "surface coefficient of " + ports.get(p).name(), coefficients[p], "W/(m2 K)");
      }
    }
  }

  /**
   * Tells why a network cannot be treated as linear.
   *
   * @param network the body
   * @return a reason that begins with a verb, or nothing if it is linear
   */
  public static Optional<String> reasonAgainst(HeatNetwork network) {
    List<String> melting =
        network.grid().layout().blocks().stream()
            .filter(block -> block.phaseChange().isPresent())
            .map(block -> "'" + block.name() + "'")
            .toList();
    return melting.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "is not linear, since "
                + String.join(", ", melting)
                + " can melt; step every cell instead");
  }

  /**
   * Returns the body.
   *
   * @return the network
   */
  public HeatNetwork network() {
    return network;
  }

  /**
   * Returns the ports.
   *
   * @return boundary ports, then source ports
   */
  public List<Port> inputs() {
    return network.inputs();
  }

  /**
   * Returns the names of the solid blocks.
   *
   * @return the names, in the order of {@link #storedIn}
   */
  public List<String> solidBlocks() {
    return List.copyOf(solidBlocks);
  }

  /**
   * Makes a vector.
   *
   * @return zeros [K]; its length, that of all vectors, depends on the grid alone
   */
  public double[] vector() {
    return operator.system.vector();
  }

  /**
   * Makes the vector that is 1 in a block, or everywhere, and 0 elsewhere.
   *
   * @param block name of the block; empty for all solid blocks
   * @return the vector [-], of the length of {@link #vector}
   * @throws InvalidInputException if there is no such block, nothing is left of it, or it is an
   *     environment
   */
  public double[] indicator(Optional<String> block) {
    double[] indicator = vector();
    if (block.isPresent()) {
      for (int cell : TemperatureField.requireSolidCells(network, block.get())) {
        indicator[cell + operator.system.pad] = 1;
      }
    } else {
      for (int cell = 0; cell < operator.system.cells; cell++) {
        indicator[cell + operator.system.pad] = network.cells().isSolid(cell) ? 1 : 0;
      }
    }
    return indicator;
  }

  /**
   * Makes the heat that an input of 1 gives each cell: the column of B.
   *
   * @param input position of the port in {@link #inputs()}
   * @return the heat [W], of the length of {@link #vector}
   */
  public double[] heatOf(int input) {
    Conditions unit = new Conditions(network);
    int boundaries = unit.boundary.length;
    if (input < boundaries) {
      unit.boundary[input] = 1;
    } else {
      unit.power[input - boundaries] = 1;
    }
    double[] heat = vector();
    operator.addPortHeat(unit, heat);
    return heat;
  }

  /**
   * Computes C x.
   *
   * @param temperature a vector of the length of {@link #vector} [K]
   * @param heat where to put the heat content [J], of the same length
   */
  public void store(double[] temperature, double[] heat) {
    for (int i = operator.system.pad; i < operator.system.pad + operator.system.cells; i++) {
      heat[i] = operator.capacity[i] * temperature[i];
    }
  }

  /**
   * Computes G x: the heat that leaves each cell for its neighbours and for boundaries at 0 K.
   *
   * @param temperature a vector of the length of {@link #vector} [K]
   * @param heat where to put the heat flow [W], of the same length
   */
  public void conduct(double[] temperature, double[] heat) {
    for (int i = operator.system.pad; i < operator.system.pad + operator.system.cells; i++) {
      heat[i] = operator.outflow(i, temperature);
    }
  }

  /**
   * Computes a part of G x.
   *
   * @param temperature a vector of the length of {@link #vector} [K]
   * @param from position in vectors at which the part begins
   * @param count how many entries it has
   * @param heat where to put the heat flows [W], from its start; its length is {@code count} or
   *     more
   */
  public void conduct(double[] temperature, int from, int count, double[] heat) {
    int start = Math.max(from, operator.system.pad);
    int end = Math.min(from + count, operator.system.pad + operator.system.cells);
    Arrays.fill(heat, 0, count, 0);
    for (int i = start; i < end; i++) {
      heat[i - from] = operator.outflow(i, temperature);
    }
  }

  /**
   * Tells whether every cell has a path to a film or a held surface, so that G can be inverted.
   *
   * @return true if the temperature level is fixed
   */
  public boolean fixesLevel() {
    if (fixesLevel == null) {
      fixesLevel = operator.floatingCell() < 0;
    }
    return fixesLevel;
  }

  /**
   * Estimates the error of a solution of (G + s C) x = b.
   *
   * @param shift s, as in {@link #solve} [1/s]
   * @param heat b, of the length of {@link #vector} [W]
   * @param temperature x, of the same length [K]
   * @return the uniform error of the same energy norm [K]
   */
  public double error(double shift, double[] heat, double[] temperature) {
    operator.factor(shift == 0 ? Double.POSITIVE_INFINITY : 1 / shift);
    return operator.system.error(heat, temperature);
  }

  /**
   * Solves (G + s C) x = b.
   *
   * @param shift s, at least 0 [1/s]; above 0 unless the level is fixed
   * @param heat b, of the length of {@link #vector} [W]
   * @param temperature first guess in, solution out, of the same length [K]
   * @param tolerance largest estimated error, as the uniform error of the same energy norm [K]
   * @return number of iterations, 0 if the guess was good enough
   * @throws IllegalStateException if the solver does not converge
   * @throws java.util.concurrent.CancellationException if the thread is interrupted
   */
  public int solve(double shift, double[] heat, double[] temperature, double tolerance) {
    operator.factor(shift == 0 ? Double.POSITIVE_INFINITY : 1 / shift);
    return operator.system.solve(heat, temperature, tolerance);
  }

  /**
   * Sums the heat content over each solid block.
   *
   * @param temperature a vector of the length of {@link #vector} [K]
   * @return sum of C x, one for each of {@link #solidBlocks()} [J]
   */
  public double[] storedIn(double[] temperature) {
    double[] sums = new double[solidBlocks.size()];
    for (int cell = 0; cell < operator.system.cells; cell++) {
      int block = solidOf[network.grid().blockOf(cell)];
      if (block >= 0) {
        int i = cell + operator.system.pad;
        sums[block] += operator.capacity[i] * temperature[i];
      }
    }
    return sums;
  }

  private void set(double[] inputs) {
    int boundaries = conditions.boundary.length;
    System.arraycopy(inputs, 0, conditions.boundary, 0, boundaries);
    System.arraycopy(inputs, boundaries, conditions.power, 0, conditions.power.length);
  }

  /**
   * Sorts the conductances into groups that change by the same ratio.
   *
   * @param blocks names of the blocks whose conductivity varies
   * @return the groups, which hold every conductance once, in an order that depends on the network
   *     alone
   * @throws InvalidInputException if there is no such block
   */
  public List<ConductanceGroup> groups(List<String> blocks) {
    return ConductanceGroups.of(network, operator.system.pad, blocks);
  }

  /**
   * Makes the continuous field of a state.
   *
   * @param temperature a vector of the length of {@link #vector} [K]
   * @param inputs values of the ports in the order of {@link #inputs()} [K, W/m2 or W]
   * @return the field
   */
  public TemperatureField field(double[] temperature, double[] inputs) {
    set(inputs);
    return new TemperatureField(operator, temperature, conditions);
  }

  /** Reads outputs of a vector; looks names and points up once. Not thread-safe. */
  public final class Reader {
    private final Probes probes;

    /**
     * Looks every name and point up.
     *
     * @param list the outputs
     * @throws InvalidInputException if a block, boundary or point does not exist
     */
    public Reader(List<Probe> list) {
      this.probes = new Probes(operator, list);
    }

    /**
     * Reads the outputs.
     *
     * @param temperature a vector of the length of {@link #vector} [K]
     * @param inputs values of the ports in the order of {@link #inputs()} [K, W/m2 or W]
     * @return the outputs in their order [K or W, see {@link Probe#unit()}]
     */
    public double[] read(double[] temperature, double[] inputs) {
      set(inputs);
      double[] values = new double[probes.count()];
      probes.read(temperature, new double[0], conditions, values);
      return values;
    }
  }

  /**
   * The points among which the extremes of a block's continuous field lie: the field is trilinear
   * between centres, faces, edges and vertices of the cells, so that it is largest and smallest at
   * one of those.
   */
  public final class Nodes {
    private final int[] cell;
    private final int[] node;
    private final NodeRows rows;

    /**
     * Lists the nodes of a closed block.
     *
     * @param block name of the block
     * @throws InvalidInputException if there is no such block, nothing is left of it, or it is an
     *     environment
     */
    public Nodes(String block) {
      int[] cells = TemperatureField.requireSolidCells(network, block);
      int[] cellOf = new int[27 * cells.length];
      int[] nodeOf = new int[27 * cells.length];
      int count = 0;
      for (int each : cells) {
        for (int n = 0; n < 27; n++) {
          if (!belongsToNeighbour(each, n)) {
            cellOf[count] = each;
            nodeOf[count++] = n;
          }
        }
      }
      this.cell = Arrays.copyOf(cellOf, count);
      this.node = Arrays.copyOf(nodeOf, count);
      this.rows = new NodeRows(network, conditions.coefficient, cell, node);
    }

    /**
     * Shares the nodes of another operator of the same network and coefficients, for use on another
     * thread.
     *
     * @param other its nodes
     */
    public Nodes(Nodes other) {
      this.cell = other.cell;
      this.node = other.node;
      this.rows = other.rows;
    }

    /** Tells whether an earlier cell of the same block shares a node, with the same temperature. */
    private boolean belongsToNeighbour(int each, int n) {
      int[] side = {n % 3 - 1, n / 3 % 3 - 1, n / 9 - 1};
      for (Axis axis : Axis.values()) {
        if (side[axis.ordinal()] < 0) {
          int next = network.cells().solidAcross(each, Face.of(axis, false));
          if (next >= 0 && network.grid().blockOf(next) == network.grid().blockOf(each)) {
            return true;
          }
        }
      }
      return false;
    }

    /**
     * Returns how many there are.
     *
     * @return the number
     */
    public int count() {
      return cell.length;
    }

    /**
     * Reads the field at each node where all inputs are zero: many times as fast as with inputs.
     *
     * @param temperature a vector of the length of {@link #vector} [K]
     * @return the temperatures [K], one for each node
     */
    public double[] read(double[] temperature) {
      return rows.read(temperature, operator.system.pad);
    }

    /**
     * Tells whether inputs may change the temperature of a node at once, as they do on outer
     * surfaces.
     *
     * @return false if nodes follow from the temperatures of cells alone
     */
    public boolean reachedByInputs() {
      return rows.reachedByInputs();
    }

    /**
     * Reads the field at each node.
     *
     * @param temperature a vector of the length of {@link #vector} [K]
     * @param inputs values of the ports in the order of {@link #inputs()} [K, W/m2 or W]
     * @return the temperatures [K], one for each node
     */
    public double[] read(double[] temperature, double[] inputs) {
      TemperatureField field = field(temperature, inputs);
      double[] values = new double[cell.length];
      for (int index = 0; index < values.length; index++) {
        int n = node[index];
        values[index] = field.node(cell[index], n % 3 - 1, n / 3 % 3 - 1, n / 9 - 1);
      }
      return values;
    }
  }
}
