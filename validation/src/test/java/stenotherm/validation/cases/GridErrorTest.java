package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The estimate from three grids. */
class GridErrorTest {
  private static final double[] HALVED = {4, 2, 1};

  @Test
  void secondOrderIsSeen() {
    // values 5 + 0.1 h^2: the error of the finest grid is 0.1, times the safety factor of 1.25
    GridError error = GridError.of(new double[] {6.6, 5.4, 5.1}, HALVED);
    assertEquals(2, error.order(), 1e-9);
    assertEquals(0.125, error.size(), 1e-9);
  }

  @Test
  void luckIsNotTrusted() {
    // the fine change is tiny, but the coarse one says what second order would leave: 1.2 / 12
    GridError error = GridError.of(new double[] {6.6, 5.4, 5.399}, HALVED);
    assertEquals(0.125, error.size(), 1e-9);
  }

  @Test
  void unequalRatiosAgree() {
    double[] widths = {3, 2, 1.6};
    double[] values = new double[3];
    for (int grid = 0; grid < 3; grid++) {
      values[grid] = 7 - 0.2 * widths[grid] * widths[grid];
    }
    GridError error = GridError.of(values, widths);
    assertEquals(1.25 * 0.2 * 1.6 * 1.6, error.size(), 1e-9);
  }

  @Test
  void valuesThatDoNotApproachALimitKeepTheirLargestChange() {
    GridError error = GridError.of(new double[] {1, 2, 0.5}, HALVED);
    assertTrue(Double.isNaN(error.order()));
    assertEquals(1.25 * 1.5, error.size(), 1e-9);
  }
}
