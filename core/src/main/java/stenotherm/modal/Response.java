package stenotherm.modal;

import java.util.Arrays;

/**
 * Bounds of sums of decaying exponentials g(s) = sum of a_j exp(-lambda_j s), which is how a
 * difference of temperatures answers to an input that was 1 for a moment, a time s ago. If an input
 * stays between two ends, the difference is largest where the input was at the upper end whenever g
 * is positive and at the lower one whenever it is negative: the integrals of these two parts of g
 * give a bound that cannot be bettered.
 *
 * <p>In a panel of width w on which |g''| is at most M, the straight line between the ends is off
 * by at most M w^2 / 8. Where |g| is larger than that at both ends and of one sign, g has this sign
 * all over the panel, and the integral of |g| is the magnitude of that of g, which is exact.
 * Elsewhere it is at most that of the line's magnitude, exact again, and M w^3 / 12. M is the sum
 * of the magnitudes at the panel's beginning. So nothing is left out, however often the sign
 * changes (derived). Not thread-safe: it holds what was found last.
 */
final class Response {
  private final Decays decays;

  /** At least the integral of the positive part of g up to the end of each panel. */
  final double[] positiveUntil;

  /** The same of the negative part, counted positive. */
  final double[] negativeUntil;

  /** The same over all times. */
  double positive;

  double negative;

  /** At least the largest value of g, and of -g; 0 if there is none. */
  double highest;

  double lowest;

  private final double[] atEnd;
  private final double[] integral;
  private final double[] bend;

  Response(Decays decays) {
    this.decays = decays;
    atEnd = new double[decays.panels];
    integral = new double[decays.panels];
    bend = new double[decays.panels];
    positiveUntil = new double[decays.panels];
    negativeUntil = new double[decays.panels];
  }

  /**
   * Bounds a sum.
   *
   * @param a its amplitudes
   */
  void bound(double[] a) {
    double before = 0;
    Arrays.fill(atEnd, 0);
    Arrays.fill(integral, 0);
    Arrays.fill(bend, 0);
    for (int j = decays.decaying; j < a.length; j++) {
      before += a[j];
      if (a[j] != 0) {
        add(a[j], decays.atEnd[j], atEnd, decays.alive[j]);
        add(a[j], decays.integral[j], integral, decays.alive[j]);
        add(Math.abs(a[j]), decays.curvature[j], bend, decays.alive[j]);
      }
    }
    double total = 0;
    double absolute = 0;
    highest = Math.max(0, before);
    lowest = Math.max(0, -before);
    for (int k = 0; k < decays.panels; k++) {
      double after = atEnd[k];
      double width = decays.width[k];
      double sag = bend[k] * width * width / 8;
      boolean oneSign = before * after > 0 && Math.min(Math.abs(before), Math.abs(after)) >= sag;
      total += integral[k];
      absolute +=
          oneSign ? Math.abs(integral[k]) : ofLine(before, after) * width + sag * width * (2.0 / 3);
      positiveUntil[k] = (absolute + total) / 2;
      negativeUntil[k] = (absolute - total) / 2;
      highest = Math.max(highest, Math.max(before, after) + sag);
      lowest = Math.max(lowest, Math.max(-before, -after) + sag);
      before = after;
    }
    double left = 0;
    for (int j = decays.decaying; j < a.length; j++) {
      total += a[j] * decays.tail[j];
      absolute += Math.abs(a[j]) * decays.tail[j];
      left += Math.abs(a[j]) * decays.lambda[j] * decays.tail[j];
    }
    positive = (absolute + total) / 2;
    negative = (absolute - total) / 2;
    highest = Math.max(highest, left);
    lowest = Math.max(lowest, left);
  }

  private static void add(double much, double[] of, double[] sum, int count) {
    for (int k = 0; k < count; k++) {
      sum[k] += much * of[k];
    }
  }

  /** Mean of the magnitude of the straight line between two values. */
  private static double ofLine(double from, double to) {
    double sum = Math.abs(from) + Math.abs(to);
    return from * to < 0 ? (from * from + to * to) / (2 * sum) : sum / 2;
  }
}
