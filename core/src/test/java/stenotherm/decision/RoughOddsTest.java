package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import stenotherm.decision.RoughOdds.Margins;

/**
 * Shares of a normal distribution, from its table: 84.13 % lie below one deviation above the mean.
 */
class RoughOddsTest {
  private static final double ONE_ABOVE = 0.8413;

  /** Nine of ten within 2 times 1.645 deviations, here of 1 K and 2 K. */
  private static final RoughOdds ODDS =
      new RoughOdds(new Margins(-2, 1), new Margins(ONE_ABOVE, ONE_ABOVE), new Margins(3.29, 6.58));

  @Test
  void withoutAChangeTheOddsStay() {
    assertEquals(2 * (1 - ONE_ABOVE), ODDS.failing(new Margins(-2, 1)), 1e-3);
  }

  /** One deviation less on either side makes a half fail there, one more 2.28 %. */
  @Test
  void marginsMoveTheOdds() {
    assertEquals(0.5 + 1 - ONE_ABOVE, ODDS.failing(new Margins(-3, 1)), 1e-3);
    assertEquals(0.5 + 1 - ONE_ABOVE, ODDS.failing(new Margins(-2, -1)), 1e-3);
    assertEquals(0.0228 + 0.0228, ODDS.failing(new Margins(-1, 3)), 1e-3);
  }

  @Test
  void noneAndAllAreNeverCertain() {
    RoughOdds all = new RoughOdds(new Margins(5, 5), new Margins(1, 1), new Margins(0, 0));
    assertEquals(0.004, all.failing(new Margins(5, 5)), 1e-6);
  }
}
