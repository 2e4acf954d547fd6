package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A body with a resistance and a heat capacity, beside its integration in short steps. */
class LumpTest {
  private static final double RESISTANCE = 50;
  private static final double CAPACITY = 10;
  private static final double AIR = 290;
  private static final double STEP = 450;

  /** Temperature after a step over which the power goes from one to another [K]. */
  private static double after(double temperature, double from, double to) {
    int parts = 45_000;
    double part = STEP / parts;
    double now = temperature;
    for (int n = 0; n < parts; n++) {
      double power = from + (to - from) * (n + 0.5) / parts;
      double middle = now + part / 2 * change(now, power);
      now += part * change(middle, power);
    }
    return now;
  }

  private static double change(double temperature, double power) {
    return ((AIR - temperature) / RESISTANCE + power) / CAPACITY;
  }

  @Test
  void whatThePowerWouldNotDoIsTold() {
    double first = 300;
    double second = after(first, 0.1, -0.2);
    double third = after(second, -0.2, 0);
    ClimatePlan.Response response = new ClimatePlan.Lump(RESISTANCE, CAPACITY).over(STEP);
    double expected = second + (second - first);
    assertEquals(third, response.without(second, expected, 0.1, -0.2, -0.2), 1e-6);
    assertEquals(after(second, -0.2, 1) - third, response.ofEnd(), 1e-6);
  }

  /** Beside a step that lasts long the powers do what they do in a steady state. */
  @Test
  void longStepsEndSteady() {
    ClimatePlan.Response response = new ClimatePlan.Lump(RESISTANCE, CAPACITY).over(1e9);
    assertEquals(0, response.left());
    assertEquals(0, response.ofStart(), 1e-4);
    assertEquals(RESISTANCE, response.ofEnd(), 1e-4);
  }
}
