package stenotherm.validation.agreement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;

/**
 * Error estimates over the errors they stand for. Errors that are as small as those of the
 * reference tell nothing about an estimate and are left out.
 *
 * @param least the least ratio; infinite if there is none
 * @param median the median; NaN if there is none
 * @param count how many there are
 */
record Ratios(double least, double median, int count) {
  /**
   * Errors below it are not told from those of the reference [K]. At a step tolerance of 0.02 mK
   * the full solver is off by up to 0.2 mK, at 0.1 mK by up to 0.5 mK, found by steps at a tenth of
   * the tolerance on ten random parcels and journeys.
   */
  static final double RESOLVED = 1e-3;

  static Ratios of(Collection<Deviation> deviations) {
    List<Double> ratios = new ArrayList<>();
    for (Deviation deviation : deviations) {
      if (deviation.largest() > RESOLVED) {
        ratios.add(deviation.estimate() / deviation.largest());
      }
    }
    Collections.sort(ratios);
    return ratios.isEmpty()
        ? new Ratios(Double.POSITIVE_INFINITY, Double.NaN, 0)
        : new Ratios(ratios.get(0), ratios.get(ratios.size() / 2), ratios.size());
  }
}
