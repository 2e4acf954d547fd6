package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExponentialStepTest {
  /** The series in sixty terms, good to round-off below x = 3; the closed forms beyond. */
  private static double phi(int k, double x) {
    if (x >= 3) {
      double exponential = Math.exp(-x);
      double one = (1 - exponential) / x;
      double two = (1 - one) / x;
      return k == 1 ? one : k == 2 ? two : (0.5 - two) / x;
    }
    double term = 1;
    for (int n = 2; n <= k; n++) {
      term /= n;
    }
    double sum = 0;
    for (int n = 0; n < 60; n++) {
      sum += term;
      term *= -x / (k + n + 1);
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(
      doubles = {0, 1e-300, 1e-17, 1e-9, 1e-4, 0.1, 0.5, 0.999999, 1, 1.000001, 2, 10, 1e4, 1e9})
  void functionsKeepTheirDigits(double x) {
    ExponentialStep step = new ExponentialStep(new double[] {x / 900}, 900);
    assertEquals(Math.exp(-x), step.decay[0], 1e-15);
    assertEquals(phi(1, x), step.phi1[0], 4e-15 * phi(1, x));
    assertEquals(phi(2, x), step.phi2[0], 4e-15 * phi(2, x));
    assertEquals(phi(3, x), step.phi3[0], 4e-15 * phi(3, x));
  }
}
