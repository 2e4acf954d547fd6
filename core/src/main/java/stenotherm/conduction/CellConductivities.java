package stenotherm.conduction;

import java.util.Arrays;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/**
 * Conductivities of cells that follow the state: those of melting cells always, by their liquid
 * fraction, k = k_solid + f (k_liquid - k_solid); those of materials whose conductivity depends on
 * temperature if asked for, unless the caller has replaced them.
 */
final class CellConductivities {
  private final HeatNetwork stated;
  private final MeltingCells melting;
  private final double[] solid;
  private final double[] liquid;

  /** Cells whose conductivity follows their temperature, with what multiplies it. */
  private final int[] following;

  private final Behaviour[] behaviour;
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
      Melting law = network.melting(melting.cell[m]).orElseThrow();
      solid[m] = network.conductivity(melting.cell[m]);
      liquid[m] = law.liquidConductivity();
    }
    boolean live = kind == IntegratorSettings.Conductivities.LIVE;
    int[] cells = new int[live ? network.grid().cellCount() : 0];
    int count = 0;
    for (int cell = 0; cell < cells.length; cell++) {
      if (network.isSolid(cell) && !network.isReplaced(cell) && follows(network.material(cell))) {
        cells[count++] = cell;
      }
    }
    this.following = Arrays.copyOf(cells, count);
    this.behaviour =
        Arrays.stream(following)
            .mapToObj(cell -> network.material(cell).behaviour())
            .toArray(Behaviour[]::new);
  }

  private static boolean follows(Material material) {
    return material.behaviour() instanceof Behaviour.Corrected
        || material.behaviour() instanceof Behaviour.Voids;
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
      conductivity[cell] = stated.conductivity(cell);
    }
    for (int index = 0; index < following.length; index++) {
      int cell = following[index];
      conductivity[cell] *= behaviour[index].conductivityRatio(temperature[cell + pad]);
    }
    for (int m = 0; m < fraction.length; m++) {
      conductivity[melting.cell[m]] = solid[m] + fraction[m] * (liquid[m] - solid[m]);
    }
    for (int cell = 0; cell < conductivity.length; cell++) {
      changed |= conductivity[cell] != latest.conductivity(cell);
    }
    if (changed) {
      latest = latest.withCells(conductivity);
    }
    return latest;
  }
}
