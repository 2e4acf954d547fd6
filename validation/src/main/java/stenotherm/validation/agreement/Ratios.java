package stenotherm.validation.agreement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;

/**
 * Error estimates over the errors they stand for. Errors that are not well above those of the
 * reference tell nothing about an estimate and are left out.
 *
 * @param least the least ratio; infinite if there is none
 * @param median the median; NaN if there is none
 * @param count how many there are
 */
record Ratios(double least, double median, int count) {
  /** Of the errors above a limit [K]. */
  static Ratios of(Collection<Deviation> deviations, double resolved) {
    List<Double> ratios = new ArrayList<>();
    for (Deviation deviation : deviations) {
      if (deviation.largest() > resolved) {
        ratios.add(deviation.estimate() / deviation.largest());
      }
    }
    Collections.sort(ratios);
    return ratios.isEmpty()
        ? new Ratios(Double.POSITIVE_INFINITY, Double.NaN, 0)
        : new Ratios(ratios.get(0), ratios.get(ratios.size() / 2), ratios.size());
  }
}
