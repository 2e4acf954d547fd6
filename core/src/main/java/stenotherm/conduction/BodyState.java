package stenotherm.conduction;

import java.util.Set;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.material.Melting;

/**
 * The state of every cell.
 *
 * @param temperature temperatures [K], padded; 0 in environments
 * @param enthalpy enthalpies of the melting cells [J]
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record BodyState(double[] temperature, double[] enthalpy) {
  /**
   * The state of every cell at the start.
   *
   * @throws InvalidInputException if the state does not fit, see {@link #check}
   */
  static BodyState of(HeatOperator operator, InitialState initial) {
    HeatNetwork network = operator.network();
    check(network, initial);
    double[] temperature = operator.system.vector();
    for (int cell = 0; cell < operator.system.cells; cell++) {
      if (network.cells().isSolid(cell)) {
        temperature[cell + operator.system.pad] =
            initial
                .temperatures()
                .getOrDefault(network.cells().nameOf(cell), initial.temperature());
      }
    }
    MeltingCells melting = operator.melting;
    double[] enthalpy = new double[melting.count()];
    for (int m = 0; m < enthalpy.length; m++) {
      Double fraction = initial.liquidFractions().get(network.cells().nameOf(melting.cell[m]));
      enthalpy[m] =
          fraction == null
              ? melting.enthalpy(m, temperature[melting.at[m]])
              : melting.enthalpyAtFraction(m, fraction);
      temperature[melting.at[m]] = melting.temperature(m, enthalpy[m]);
    }
    return new BodyState(temperature, enthalpy);
  }

  /**
   * Checks that a state fits a network.
   *
   * @throws InvalidInputException if it names a block that does not exist or is an environment, a
   *     liquid fraction of a block that does not melt, both a temperature and a fraction of one
   *     block, or if a block starts at its melting temperature without a fraction
   */
  static void check(HeatNetwork network, InitialState initial) {
    requireSolid(network, initial.temperatures().keySet(), "initial temperature");
    requireSolid(network, initial.liquidFractions().keySet(), "initial liquid fraction");
    for (Block block : network.grid().layout().blocks()) {
      String name = block.name();
      Melting melting = block.phaseChange().orElse(null);
      boolean partly = initial.liquidFractions().containsKey(name);
      if (partly && melting == null) {
        throw new InvalidInputException(
            "initial liquid fraction of " + name, "is given, but its material does not melt");
      }
      if (partly && initial.temperatures().containsKey(name)) {
        throw new InvalidInputException(
            "initial state of " + name,
            "gives both a temperature and a liquid fraction; the one follows from the other");
      }
      double temperature = initial.temperatures().getOrDefault(name, initial.temperature());
      if (melting != null
          && !partly
          && melting.range().low() == melting.range().high()
          && temperature == melting.range().low()) {
        throw new InvalidInputException(
            "initial temperature of " + name,
            temperature + " K is where it melts; say instead how much of it is liquid");
      }
    }
  }

  private static void requireSolid(HeatNetwork network, Set<String> names, String what) {
    for (String name : names) {
      int index = network.grid().layout().indexOf(name);
      if (!network.grid().layout().blocks().get(index).isSolid()) {
        throw new InvalidInputException(
            what + " of " + name, "is that of an environment, which stores no heat");
      }
    }
  }

  /** A copy that a run may change. */
  BodyState copy() {
    return new BodyState(temperature.clone(), enthalpy.clone());
  }
}
