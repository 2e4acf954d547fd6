package stenotherm.modal;

import java.util.List;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Port;
import stenotherm.conduction.ReducibleNetwork;

/** A network under surface coefficients, which hold for a part of a run. */
final class Configuration {
  final HeatNetwork network;
  private final double[] coefficients;

  Configuration(HeatNetwork network, double[] coefficients) {
    this.network = network;
    this.coefficients = coefficients.clone();
    ReducibleNetwork.check(network, coefficients);
  }

  void requireSameBody(HeatNetwork other) {
    ReducibleNetwork.requireSameBody(network, other);
  }

  ReducibleNetwork operator() {
    return new ReducibleNetwork(network, coefficients);
  }

  /** Tells whether this is the configuration meant; coefficients of films alone count. */
  boolean is(HeatNetwork other, double[] others) {
    return network == other && sameFilms(network.boundaryPorts(), coefficients, others);
  }

  private static boolean sameFilms(List<Port.BoundaryPort> ports, double[] some, double[] others) {
    for (int p = 0; p < some.length; p++) {
      if (ports.get(p).kind() == BoundaryKind.CONVECTION && some[p] != others[p]) {
        return false;
      }
    }
    return true;
  }

  double[] coefficients() {
    return coefficients.clone();
  }
}
