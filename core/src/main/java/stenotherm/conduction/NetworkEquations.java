package stenotherm.conduction;

import java.util.Arrays;
import stenotherm.base.Axis;
import stenotherm.base.InvalidInputException;

/**
 * The equations of a network in plain numbers, C dT/dt = -G T + heat from the ports, for other
 * programs that check or solve them: heat capacities, conductances between cells, areas and
 * resistances at the boundaries, shares of the sources.
 *
 * <p>Solid cells are numbered from 0; cells of environments are left out. Nothing in the library
 * reads these numbers: programs that couple physics to a body use {@link HeatEngine}, those that
 * reduce it {@link ReducibleNetwork}.
 *
 * <p>Experimental. Immutable, thus thread-safe. Arrays are copies.
 */
public final class NetworkEquations {
  private final HeatNetwork network;

  /** Number of each cell of the grid among the solid ones; -1 for one of an environment. */
  private final int[] numberOf;

  private final double[] capacity;
  private final int[] first;
  private final int[] second;
  private final double[] conductance;

  private NetworkEquations(HeatNetwork network) {
    this.network = network;
    numberOf = new int[network.grid().cellCount()];
    capacity = new double[network.solidCellCount()];
    int count = 0;
    for (int cell = 0; cell < numberOf.length; cell++) {
      numberOf[cell] = -1;
      if (network.isSolid(cell)) {
        capacity[count] = network.capacity(cell);
        numberOf[cell] = count++;
      }
    }
    int[] one = new int[3 * count];
    int[] other = new int[3 * count];
    double[] between = new double[3 * count];
    int couplings = 0;
    for (Axis axis : Axis.values()) {
      double[] along = network.coupling(axis);
      int stride = network.grid().stride(axis);
      for (int cell = 0; cell < along.length; cell++) {
        if (along[cell] > 0) {
          one[couplings] = numberOf[cell];
          other[couplings] = numberOf[cell + stride];
          between[couplings++] = along[cell];
        }
      }
    }
    first = Arrays.copyOf(one, couplings);
    second = Arrays.copyOf(other, couplings);
    conductance = Arrays.copyOf(between, couplings);
  }

  /**
   * Writes the equations of a network down.
   *
   * @param network the body
   * @return its equations
   * @throws InvalidInputException if something melts: the equations are not linear then
   */
  public static NetworkEquations of(HeatNetwork network) {
    ReducibleNetwork.reasonAgainst(network)
        .ifPresent(
            reason -> {
              throw new InvalidInputException("network", reason);
            });
    return new NetworkEquations(network);
  }

  /**
   * Returns the number of unknowns.
   *
   * @return the number of solid cells
   */
  public int cells() {
    return capacity.length;
  }

  /**
   * Returns the diagonal of C.
   *
   * @return the heat capacity of each cell [J/K]
   */
  public double[] capacities() {
    return capacity.clone();
  }

  /**
   * Returns the conductances between cells; each pair of neighbours occurs once.
   *
   * @return the conductances [W/K], all above 0
   */
  public double[] conductances() {
    return conductance.clone();
  }

  /**
   * Returns the one cell of each pair.
   *
   * @return numbers of cells, in the order of {@link #conductances()}
   */
  public int[] firstCells() {
    return first.clone();
  }

  /**
   * Returns the other cell of each pair.
   *
   * @return numbers of cells, in the order of {@link #conductances()}
   */
  public int[] secondCells() {
    return second.clone();
  }

  /**
   * Returns the cells behind the faces of a boundary. A cell occurs once for each of its faces.
   *
   * @param boundary position in {@link HeatNetwork#boundaryPorts()}
   * @return numbers of cells
   */
  public int[] boundaryCells(int boundary) {
    return numbers(network.patches().get(boundary).cell());
  }

  /**
   * Returns the areas of the faces of a boundary.
   *
   * @param boundary position in {@link HeatNetwork#boundaryPorts()}
   * @return areas in the order of {@link #boundaryCells} [m2]
   */
  public double[] boundaryAreas(int boundary) {
    return network.patches().get(boundary).area().clone();
  }

  /**
   * Returns the resistances of unit area between the cells' centres and a boundary. With a surface
   * coefficient h the conductance of a face is its area over the sum of its resistance and 1/h; to
   * a held surface it is its area over its resistance; a prescribed flux enters by the area alone.
   *
   * @param boundary position in {@link HeatNetwork#boundaryPorts()}
   * @return resistances in the order of {@link #boundaryCells} [m2 K/W]
   */
  public double[] boundaryResistances(int boundary) {
    return network.patches().get(boundary).resistance().clone();
  }

  /**
   * Returns the cells that a source heats.
   *
   * @param source position in {@link HeatNetwork#sourcePorts()}
   * @return numbers of cells
   */
  public int[] sourceCells(int source) {
    return numbers(network.sources().get(source).cell());
  }

  /**
   * Returns which part of a source's power each of its cells gets.
   *
   * @param source position in {@link HeatNetwork#sourcePorts()}
   * @return parts in the order of {@link #sourceCells}; their sum is 1
   */
  public double[] sourceShares(int source) {
    return network.sources().get(source).share().clone();
  }

  /**
   * Returns the cells of a block.
   *
   * @param block name of the block
   * @return numbers of cells
   * @throws InvalidInputException if there is no such block, nothing is left of it, or it is an
   *     environment
   */
  public int[] blockCells(String block) {
    return numbers(TemperatureField.requireSolidCells(network, block));
  }

  /**
   * Returns the weights of a block's cells in its mean.
   *
   * @param block name of the block
   * @return volume of each cell over the block's, in the order of {@link #blockCells}; their sum is
   *     1
   * @throws InvalidInputException if there is no such block, nothing is left of it, or it is an
   *     environment
   */
  public double[] blockShares(String block) {
    return Probes.volumeShares(network, TemperatureField.requireSolidCells(network, block));
  }

  private int[] numbers(int[] cells) {
    return Arrays.stream(cells).map(cell -> numberOf[cell]).toArray();
  }
}
