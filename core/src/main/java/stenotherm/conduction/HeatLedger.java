package stenotherm.conduction;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Where the heat of a transient went. Each term is integrated from its own flux by the scheme's own
 * quadrature; what is stored comes from the temperatures alone; so the residual is a check, not a
 * definition.
 *
 * <p>A value, thus thread-safe.
 *
 * @param boundaries heat into the body through each boundary, by name [J]
 * @param sources heat given by each source, by name [J]
 * @param storedIn rise of the heat content of each block, by name, from the temperatures at the
 *     start and the end, and the enthalpies of what melts [J]
 * @param scale what the residual is judged by [J]: the sum of all heat moved, step by step in
 *     magnitude, plus what warms the whole body by 1 mK
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
   * Returns what does not add up.
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
