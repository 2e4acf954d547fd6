package stenotherm.conduction;

import java.util.ArrayList;
import java.util.List;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/**
 * The cells that melt, and their enthalpy h(T) [J]: that of the solid up to the solidus, then the
 * latent heat over the melting range, then that of the liquid. Its zero is the solid at 0 K, so
 * that a solid cell holds C T as every other cell does. A cell freezes along the same curve: there
 * is no supercooling.
 *
 * <p>The curve must rise everywhere, so that temperature and enthalpy follow from each other. A
 * range narrower than {@link #NARROWEST} is spread to that width about its middle, with the
 * sensible heat of that width added to the latent heat, so that nothing changes outside it.
 *
 * <p>Vectors of enthalpies have one entry for each melting cell, in the order of {@link #cell}.
 */
final class MeltingCells {
  /** The narrowest melting range [K]; it moves a melting temperature by half of that at most. */
  static final double NARROWEST = 0.002;

  /** Indices of the cells, ascending. */
  final int[] cell;

  /** Positions in padded vectors. */
  final int[] at;

  private final double[] solidus;
  private final double[] liquidus;
  private final double[] solidCapacity;
  private final double[] liquidCapacity;
  private final double[] atSolidus;
  private final double[] atLiquidus;

  MeltingCells(HeatNetwork network, int pad) {
    List<Integer> found = new ArrayList<>();
    for (int index = 0; index < network.grid().cellCount(); index++) {
      if (network.cells().melting(index).isPresent()) {
        found.add(index);
      }
    }
    int count = found.size();
    cell = found.stream().mapToInt(Integer::intValue).toArray();
    at = found.stream().mapToInt(index -> index + pad).toArray();
    solidus = new double[count];
    liquidus = new double[count];
    solidCapacity = new double[count];
    liquidCapacity = new double[count];
    atSolidus = new double[count];
    atLiquidus = new double[count];
    for (int m = 0; m < count; m++) {
      Melting melting = network.cells().melting(cell[m]).orElseThrow();
      Material material = network.cells().material(cell[m]);
      solidCapacity[m] = network.cells().capacity(cell[m]);
      double mass = solidCapacity[m] / material.specificHeat();
      liquidCapacity[m] = mass * melting.liquidSpecificHeat();
      double width = melting.range().high() - melting.range().low();
      double spread = Math.max(0, NARROWEST - width) / 2;
      solidus[m] = melting.range().low() - spread;
      liquidus[m] = melting.range().high() + spread;
      atSolidus[m] = solidCapacity[m] * solidus[m];
      atLiquidus[m] =
          atSolidus[m]
              + mass * melting.latentHeat()
              + (solidCapacity[m] + liquidCapacity[m]) * spread;
    }
  }

  int count() {
    return cell.length;
  }

  boolean isEmpty() {
    return cell.length == 0;
  }

  /** Phase of a cell: -1 solid, 0 melting, 1 liquid. */
  int phase(int m, double enthalpy) {
    if (enthalpy <= atSolidus[m]) {
      return -1;
    }
    return enthalpy < atLiquidus[m] ? 0 : 1;
  }

  /** Temperature of a cell [K]. */
  double temperature(int m, double enthalpy) {
    return switch (phase(m, enthalpy)) {
      case -1 -> enthalpy / solidCapacity[m];
      case 0 -> solidus[m] + (enthalpy - atSolidus[m]) / slope(m, 0);
      default -> liquidus[m] + (enthalpy - atLiquidus[m]) / liquidCapacity[m];
    };
  }

  /** Enthalpy of a cell [J]. */
  double enthalpy(int m, double temperature) {
    if (temperature <= solidus[m]) {
      return solidCapacity[m] * temperature;
    }
    if (temperature < liquidus[m]) {
      return atSolidus[m] + slope(m, 0) * (temperature - solidus[m]);
    }
    return atLiquidus[m] + liquidCapacity[m] * (temperature - liquidus[m]);
  }

  /** Enthalpy of a cell that is partly liquid [J]. */
  double enthalpyAtFraction(int m, double fraction) {
    return atSolidus[m] + fraction * latent(m);
  }

  /** Heat that a cell takes per kelvin in a phase [J/K]. */
  double slope(int m, int phase) {
    return switch (phase) {
      case -1 -> solidCapacity[m];
      case 0 -> latent(m) / (liquidus[m] - solidus[m]);
      default -> liquidCapacity[m];
    };
  }

  /** Heat between solidus and liquidus [J]. */
  double latent(int m) {
    return atLiquidus[m] - atSolidus[m];
  }

  /** Liquid part of a cell, 0 to 1. */
  double liquidFraction(int m, double enthalpy) {
    return Math.max(0, Math.min(1, (enthalpy - atSolidus[m]) / latent(m)));
  }
}
