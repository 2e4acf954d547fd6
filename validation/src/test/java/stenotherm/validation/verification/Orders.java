package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;

/** Observed orders of convergence of errors under successive refinement. */
final class Orders {
  private Orders() {}

  /** Orders between neighbours of a series; the number of parts is that of cells or of steps. */
  static double[] of(double[] parts, double[] errors) {
    double[] orders = new double[errors.length - 1];
    for (int pair = 0; pair < orders.length; pair++) {
      orders[pair] =
          Math.log(errors[pair] / errors[pair + 1]) / Math.log(parts[pair + 1] / parts[pair]);
    }
    return orders;
  }

  /** Checks the last two pairs of a series. */
  static void check(double expected, double tolerance, double[] parts, double[] errors) {
    double[] orders = of(parts, errors);
    for (int pair = orders.length - 2; pair < orders.length; pair++) {
      assertEquals(
          expected,
          orders[pair],
          tolerance,
          () -> "errors " + Arrays.toString(errors) + ", orders " + Arrays.toString(orders));
    }
  }
}
