package stenotherm.transit;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Port;

/**
 * Coefficients that hold for a stage.
 *
 * @param network the body with its conductivities
 * @param films surface coefficient of each boundary [W/(m2 K)]
 * @param conductivities conductivity of each block whose own depends on temperature or on how the
 *     parcel lies, at its mean temperature [W/(m K)]
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record Coefficients(HeatNetwork network, double[] films, Map<String, Double> conductivities) {
  /** The largest ratio of a coefficient to that of others, less one. */
  double change(Coefficients other) {
    double change = network == other.network ? 0 : network.conductivityChange(other.network);
    for (int port = 0; port < films.length; port++) {
      if (films[port] != other.films[port]) {
        double ratio = films[port] / other.films[port];
        change = Math.max(change, Math.max(ratio, 1 / ratio) - 1);
      }
    }
    return change;
  }

  double sumOfFilms() {
    return Arrays.stream(films).sum();
  }

  LegCoefficients ofLeg(int leg, List<Port.BoundaryPort> ports) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int port = 0; port < films.length; port++) {
      named.put(ports.get(port).name(), films[port]);
    }
    return new LegCoefficients(leg, named, conductivities);
  }
}
