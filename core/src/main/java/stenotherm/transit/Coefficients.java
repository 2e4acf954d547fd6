package stenotherm.transit;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Coefficients that hold for a stage.
 *
 * @param films surface coefficient of each boundary [W/(m2 K)]
 * @param conductivities conductivity of each block that varies, at its mean temperature, in the
 *     order of {@link ParcelBody#varying} [W/(m K)]
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record Coefficients(double[] films, double[] conductivities) {
  /**
   * Weight of a relative change of a film: about its share in the resistance of an insulated wall.
   */
  private static final double PART_OF_FILM = 0.2;

  /**
   * How far these coefficients are from others: about the relative change of the heat that a wall
   * lets through. Infinite if one of two films is 0.
   */
  double distance(Coefficients other) {
    return Math.max(
        PART_OF_FILM * largestRatio(films, other.films),
        largestRatio(conductivities, other.conductivities));
  }

  /** The largest ratio of two coefficients, less one. */
  double change(Coefficients other) {
    return Math.max(
        largestRatio(films, other.films), largestRatio(conductivities, other.conductivities));
  }

  private static double largestRatio(double[] one, double[] other) {
    double largest = 1;
    for (int i = 0; i < one.length; i++) {
      if (one[i] != other[i]) {
        largest = Math.max(largest, Math.max(one[i] / other[i], other[i] / one[i]));
      }
    }
    return largest - 1;
  }

  /** What multiplies the conductivities given so that they become these [-]. */
  double[] factors(double[] reference) {
    double[] factors = new double[reference.length];
    for (int block = 0; block < factors.length; block++) {
      factors[block] = conductivities[block] / reference[block];
    }
    return factors;
  }

  double sumOfFilms() {
    double sum = 0;
    for (double film : films) {
      sum += film;
    }
    return sum;
  }

  LegCoefficients ofLeg(int leg, ParcelBody body) {
    Map<String, Double> surfaces = new LinkedHashMap<>();
    for (int port = 0; port < films.length; port++) {
      surfaces.put(body.ports().get(port).name(), films[port]);
    }
    Map<String, Double> blocks = new LinkedHashMap<>();
    for (int block = 0; block < conductivities.length; block++) {
      blocks.put(body.varying().get(block), conductivities[block]);
    }
    return new LegCoefficients(leg, surfaces, blocks);
  }
}
