package stenotherm.transit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The coefficients of a leg: those of the last stage that begins before its planned end; with live
 * coefficients, those with which the leg began.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param leg position of the leg
 * @param surfaces surface coefficient of each face or part of a face, by its name [W/(m2 K)]
 * @param conductivities conductivity of each block whose own depends on temperature or on how the
 *     parcel lies, at its mean temperature, by its name [W/(m K)]
 */
public record LegCoefficients(
    int leg, Map<String, Double> surfaces, Map<String, Double> conductivities) {
  /** Copies the maps, their order kept. */
  public LegCoefficients {
    surfaces = Collections.unmodifiableMap(new LinkedHashMap<>(surfaces));
    conductivities = Collections.unmodifiableMap(new LinkedHashMap<>(conductivities));
  }
}
