package stenotherm.conduction;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Where the heat of a transient went. Heat through boundaries and from sources is integrated with
 * the scheme's own quadrature; heat stored comes from the temperatures alone. So the residual is a
 * real check.
 *
 * <p>A value, thus thread-safe.
 *
 * @param boundaries heat into the body through each boundary, by name [J]
 * @param sources heat given by each source, by name [J]
 * @param storedIn rise of the heat content of each block, by name, from the temperatures at the
 *     start and the end, and the enthalpies of what melts [J]
 * @param scale what the residual is compared with [J]: the magnitudes of the heat moved in each
 *     step or, by modes, between two changes of coefficients, summed, plus what warms the whole
 *     body by 1 mK
 */
public record HeatLedger(
    Map<String, Double> boundaries,
    Map<String, Double> sources,
    Map<String, Double> storedIn,
    double scale) {
  /** The part of the scale that the residual may reach. */
  public static final double TOLERANCE = 1e-6;

  /** Copies the maps, keeping their order. */
  public HeatLedger {
    boundaries = Collections.unmodifiableMap(new LinkedHashMap<>(boundaries));
    sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
    storedIn = Collections.unmodifiableMap(new LinkedHashMap<>(storedIn));
  }

  /**
   * Returns the heat stored in the whole body.
   *
   * @return sum over all blocks [J]
   */
  public double stored() {
    return sum(storedIn);
  }

  private static double sum(Map<String, Double> heats) {
    double sum = 0;
    for (double heat : heats.values()) {
      sum += heat;
    }
    return sum;
  }

  /**
   * Returns the error of the heat balance.
   *
   * @return heat in through boundaries and from sources less heat stored [J]
   */
  public double residual() {
    return sum(boundaries) + sum(sources) - stored();
  }

  /**
   * Tells whether the ledger closes.
   *
   * @return true if the residual is at most {@link #TOLERANCE} times the scale
   */
  public boolean closes() {
    return Math.abs(residual()) <= TOLERANCE * scale;
  }
}
