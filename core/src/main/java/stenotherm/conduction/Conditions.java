package stenotherm.conduction;

import java.util.Arrays;

/**
 * The values of all ports at one instant, in the order of {@link HeatNetwork#boundaryPorts()} and
 * {@link HeatNetwork#sourcePorts()}. Mutable working space of the solvers.
 */
final class Conditions {
  /** Surface coefficients [W/(m2 K)]; meaningful for films only. */
  final double[] coefficient;

  /** Ambient or surface temperatures [K], or fluxes [W/m2]. */
  final double[] boundary;

  /** Powers [W]. */
  final double[] power;

  Conditions(HeatNetwork network) {
    coefficient = new double[network.boundaryPorts().size()];
    boundary = new double[network.boundaryPorts().size()];
    power = new double[network.sourcePorts().size()];
  }

  void copyFrom(Conditions other) {
    System.arraycopy(other.coefficient, 0, coefficient, 0, coefficient.length);
    System.arraycopy(other.boundary, 0, boundary, 0, boundary.length);
    System.arraycopy(other.power, 0, power, 0, power.length);
  }

  boolean sameAs(Conditions other) {
    return Arrays.equals(coefficient, other.coefficient)
        && Arrays.equals(boundary, other.boundary)
        && Arrays.equals(power, other.power);
  }
}
