package stenotherm.study;

import stenotherm.base.Checks;

/**
 * How much of a variance comes from one uncertain quantity.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param of what the quantity is called
 * @param firstOrder part of the variance that would go if the quantity alone were known [-], 0 to
 *     1; estimates from samples may lie slightly outside
 * @param total part of the variance that would stay if all other quantities were known [-], not
 *     below the first order; for estimates likewise. With fewer than three journeys for each
 *     coefficient of the fitted response, products of two quantities are not looked for, and it is
 *     the first order
 */
public record Share(String of, double firstOrder, double total) {
  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank or a part is not finite
   */
  public Share {
    Checks.name("quantity", of);
    Checks.finite("first-order share of '" + of + "'", firstOrder, "");
    Checks.finite("total share of '" + of + "'", total, "");
  }
}
