package stenotherm.modal;

import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.ReducibleNetwork;

/** A network under surface coefficients that the basis is to span. */
final class Configuration {
  final HeatNetwork network;
  private final double[] films;

  /**
   * A configuration, checked.
   *
   * @param films one for each boundary port [W/(m2 K)]
   */
  Configuration(HeatNetwork network, double[] films) {
    ReducibleNetwork.check(network, films);
    this.network = network;
    this.films = films.clone();
  }

  ReducibleNetwork operator() {
    return new ReducibleNetwork(network, films);
  }
}
