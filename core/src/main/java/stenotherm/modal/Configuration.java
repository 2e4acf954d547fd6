package stenotherm.modal;

import java.util.List;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Port;
import stenotherm.conduction.ReducibleNetwork;

/** A network under surface coefficients, which hold for a part of a run. */
final class Configuration {
  final KnownNetwork network;
  private final List<Port.BoundaryPort> ports;
  private final double[] coefficients;

  Configuration(KnownNetwork network, List<Port.BoundaryPort> ports, double[] coefficients) {
    this.network = network;
    this.ports = ports;
    this.coefficients = coefficients.clone();
  }

  /** A configuration of a network with cells, checked. */
  static Configuration of(KnownNetwork known, double[] coefficients) {
    HeatNetwork network = known.cells("a configuration");
    ReducibleNetwork.check(network, coefficients);
    return new Configuration(known, network.boundaryPorts(), coefficients);
  }

  ReducibleNetwork operator() {
    return new ReducibleNetwork(network.cells("the field"), coefficients);
  }

  /** Tells whether this is the configuration meant; coefficients of films alone count. */
  boolean is(KnownNetwork other, double[] others) {
    return network.is(other) && hasFilms(others);
  }

  /** Tells whether this is the configuration meant. */
  boolean is(HeatNetwork other, double[] others) {
    return network.is(other) && hasFilms(others);
  }

  private boolean hasFilms(double[] others) {
    for (int p = 0; p < coefficients.length; p++) {
      if (isFilm(p) && coefficients[p] != others[p]) {
        return false;
      }
    }
    return true;
  }

  private boolean isFilm(int port) {
    return ports.get(port).kind() == BoundaryKind.CONVECTION;
  }

  /** The coefficients; 0 for what is no film. */
  double[] coefficients() {
    double[] films = coefficients.clone();
    for (int p = 0; p < films.length; p++) {
      films[p] = isFilm(p) ? films[p] : 0;
    }
    return films;
  }
}
