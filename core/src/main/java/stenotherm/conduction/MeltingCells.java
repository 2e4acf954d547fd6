package stenotherm.conduction;

import java.util.ArrayList;
import java.util.List;
import stenotherm.material.EnthalpyCurve;
import stenotherm.material.Material;

/**
 * The cells that melt, each with its {@link EnthalpyCurve}.
 *
 * <p>Vectors of enthalpies have one entry for each melting cell, in the order of {@link #cell}.
 */
final class MeltingCells {
  /** Indices of the cells, ascending. */
  final int[] cell;

  /** Positions in padded vectors. */
  final int[] at;

  private final EnthalpyCurve[] curves;

  MeltingCells(HeatNetwork network, int pad) {
    List<Integer> found = new ArrayList<>();
    for (int index = 0; index < network.grid().cellCount(); index++) {
      if (network.cells().melting(index).isPresent()) {
        found.add(index);
      }
    }
    cell = found.stream().mapToInt(Integer::intValue).toArray();
    at = found.stream().mapToInt(index -> index + pad).toArray();
    curves = new EnthalpyCurve[cell.length];
    for (int m = 0; m < curves.length; m++) {
      Material material = network.cells().material(cell[m]);
      double mass = network.cells().capacity(cell[m]) / material.specificHeat();
      curves[m] =
          new EnthalpyCurve(
              network.cells().melting(cell[m]).orElseThrow(), mass, material.specificHeat());
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
    return curves[m].phase(enthalpy);
  }

  /** Temperature of a cell [K]. */
  double temperature(int m, double enthalpy) {
    return curves[m].temperature(enthalpy);
  }

  /** Enthalpy of a cell [J]. */
  double enthalpy(int m, double temperature) {
    return curves[m].enthalpy(temperature);
  }

  /** Enthalpy of a cell that is partly liquid [J]. */
  double enthalpyAtFraction(int m, double fraction) {
    return curves[m].enthalpyAtFraction(fraction);
  }

  /** Heat that a cell takes per kelvin in a phase [J/K]. */
  double slope(int m, int phase) {
    return curves[m].slope(phase);
  }

  /** Heat between solidus and liquidus [J]. */
  double latent(int m) {
    return curves[m].latent();
  }

  /** Liquid part of a cell, 0 to 1. */
  double liquidFraction(int m, double enthalpy) {
    return curves[m].liquidFraction(enthalpy);
  }
}
