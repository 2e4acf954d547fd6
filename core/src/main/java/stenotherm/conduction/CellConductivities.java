package stenotherm.conduction;

import java.util.Arrays;
import stenotherm.base.Face;
import stenotherm.material.Behaviour;
import stenotherm.material.Melting;

/**
 * Conductivities that follow the state of their cells. In melting cells they always follow the
 * liquid fraction, k = k_solid + f (k_liquid - k_solid). Those of materials that depend on
 * temperature follow it if asked for, unless the caller has replaced them.
 *
 * <p>A cell that is partly liquid holds a front, with liquid on one side of it and solid on the
 * other. Towards a neighbour it conducts as the neighbour's phase does. With one mean for both
 * sides the front would be late or early by a part of a cell in every cell.
 */
final class CellConductivities {
  /**
   * The liquid fraction over which the two sides of a cell come to differ; without this ramp
   * conductances would jump in time.
   */
  private static final double RAMP = 0.02;

  private final HeatNetwork stated;
  private final MeltingCells melting;
  private final double[] solid;
  private final double[] liquid;

  /** Cells whose conductivity follows their temperature, with what multiplies it. */
  private final int[] following;

  private final Behaviour[] behaviour;

  /** The solid cells beyond the six faces of each melting cell, or -1. */
  private final int[] beyond;

  /** Position of each cell among the melting ones, or -1. */
  private final int[] position;

  private HeatNetwork latest;

  /** Starts from a network that holds the conductivities as stated or replaced. */
  CellConductivities(
      HeatNetwork network, MeltingCells melting, IntegratorSettings.Conductivities kind) {
    this.stated = network;
    this.latest = network;
    this.melting = melting;
    this.solid = new double[melting.count()];
    this.liquid = new double[melting.count()];
    for (int m = 0; m < solid.length; m++) {
      Melting law = network.cells().melting(melting.cell[m]).orElseThrow();
      solid[m] = network.cells().conductivity(melting.cell[m]);
      liquid[m] = law.liquidConductivity();
    }
    this.position = new int[melting.isEmpty() ? 0 : network.grid().cellCount()];
    Arrays.fill(position, -1);
    this.beyond = new int[6 * melting.count()];
    for (int m = 0; m < solid.length; m++) {
      position[melting.cell[m]] = m;
      for (Face face : Face.values()) {
        beyond[6 * m + face.ordinal()] = network.cells().solidAcross(melting.cell[m], face);
      }
    }
    boolean live = kind == IntegratorSettings.Conductivities.LIVE;
    int[] cells = new int[live ? network.grid().cellCount() : 0];
    int count = 0;
    for (int cell = 0; cell < cells.length; cell++) {
      if (network.cells().followsTemperature(cell)) {
        cells[count++] = cell;
      }
    }
    this.following = Arrays.copyOf(cells, count);
    this.behaviour =
        Arrays.stream(following)
            .mapToObj(cell -> network.cells().material(cell).behaviour())
            .toArray(Behaviour[]::new);
  }

  /** Tells whether any conductivity follows the state. */
  boolean vary() {
    return following.length > 0 || !melting.isEmpty();
  }

  /** The network in a state: temperatures, padded [K], and enthalpies of melting cells [J]. */
  HeatNetwork at(double[] temperature, int pad, double[] enthalpy) {
    double[] fraction = new double[solid.length];
    for (int m = 0; m < fraction.length; m++) {
      fraction[m] = melting.liquidFraction(m, enthalpy[m]);
    }
    return withFractions(temperature, pad, fraction);
  }

  /** The network in a state: temperatures, padded [K], and liquid fractions of melting cells. */
  HeatNetwork withFractions(double[] temperature, int pad, double[] fraction) {
    double[] conductivity = new double[stated.grid().cellCount()];
    boolean changed = false;
    for (int cell = 0; cell < conductivity.length; cell++) {
      conductivity[cell] = stated.cells().conductivity(cell);
    }
    for (int index = 0; index < following.length; index++) {
      int cell = following[index];
      conductivity[cell] *= behaviour[index].conductivityRatio(temperature[cell + pad]);
    }
    for (int m = 0; m < fraction.length; m++) {
      conductivity[melting.cell[m]] = mixed(m, fraction[m]);
    }
    for (int cell = 0; cell < conductivity.length; cell++) {
      changed |= conductivity[cell] != latest.cells().conductivity(cell);
    }
    if (changed) {
      latest =
          latest.withCells(
              conductivity,
              melting.isEmpty() ? null : position,
              towards(temperature, pad, fraction));
    }
    return latest;
  }

  private double mixed(int m, double fraction) {
    return solid[m] + fraction * (liquid[m] - solid[m]);
  }

  /** Conductivity of melting cells towards each of their faces. */
  private double[] towards(double[] temperature, int pad, double[] fraction) {
    double[] towards = new double[beyond.length];
    for (int face = 0; face < beyond.length; face++) {
      int m = face / 6;
      int next = beyond[face];
      double own = fraction[m];
      double other = own;
      if (next >= 0 && position[next] >= 0) {
        other = fraction[position[next]];
      } else if (next >= 0) {
        other = melting.liquidFraction(m, melting.enthalpy(m, temperature[next + pad]));
      }
      double share = Math.min(1, Math.min(own, 1 - own) / RAMP);
      towards[face] = mixed(m, own + share * (other - own));
    }
    return towards;
  }
}
