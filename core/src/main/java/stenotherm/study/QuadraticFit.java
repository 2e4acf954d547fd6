package stenotherm.study;

import java.util.ArrayList;
import java.util.List;

/** A quadratic function of standard normal scores. Immutable, thus thread-safe. */
final class QuadraticFit {
  private final int quantities;
  private final double[] coefficients;
  private final double unexplained;

  QuadraticFit(int quantities, double[] coefficients, double unexplained) {
    this.quantities = quantities;
    this.coefficients = coefficients;
    this.unexplained = unexplained;
  }

  /** Whether it has products of two scores, not linear terms and squares only. */
  boolean isCrossed() {
    return quantities > 1 && coefficients.length > 1 + 2 * quantities;
  }

  /**
   * The part of the samples' variance that it does not explain, adjusted for the number of
   * coefficients: about 1 if it explains nothing, even a little above.
   */
  double unexplained() {
    return unexplained;
  }

  /**
   * The value at a point.
   *
   * @param point shares of all cases that lie lower, one for each quantity, above 0 and below 1
   */
  double at(double[] point) {
    double[] terms = new double[coefficients.length];
    QuadraticResponse.evaluate(quantities, point, terms);
    double sum = 0;
    for (int term = 0; term < terms.length; term++) {
      sum += coefficients[term] * terms[term];
    }
    return sum;
  }

  /**
   * The shares of this function's variance, exactly: the terms are orthonormal.
   *
   * @param names what the quantities are called
   * @return the shares in the order of the names; 0 if the function does not vary
   */
  List<Share> shares(List<String> names) {
    double[] first = new double[quantities];
    double[] total = new double[quantities];
    double variance = 0;
    for (int quantity = 0; quantity < quantities; quantity++) {
      first[quantity] = square(1 + quantity) + square(1 + quantities + quantity);
      total[quantity] += first[quantity];
      variance += first[quantity];
    }
    if (isCrossed()) {
      int next = 1 + 2 * quantities;
      for (int one = 0; one < quantities; one++) {
        for (int other = one + 1; other < quantities; other++) {
          double part = square(next++);
          total[one] += part;
          total[other] += part;
          variance += part;
        }
      }
    }
    List<Share> shares = new ArrayList<>();
    for (int quantity = 0; quantity < quantities; quantity++) {
      shares.add(
          variance > 0
              ? new Share(
                  names.get(quantity), first[quantity] / variance, total[quantity] / variance)
              : new Share(names.get(quantity), 0, 0));
    }
    return List.copyOf(shares);
  }

  private double square(int term) {
    return coefficients[term] * coefficients[term];
  }
}
