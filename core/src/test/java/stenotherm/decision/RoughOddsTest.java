package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.decision.RoughOdds.Look;
import stenotherm.decision.RoughOdds.Margins;

/**
 * Shares of a normal distribution, from its table: 84.13 % lie below one deviation above the mean,
 * 95 % below 1.645.
 */
class RoughOddsTest {
  private static final double ONE_ABOVE = 0.8413;

  /** Margins whose deviation is 1 K towards the cold and 2 K towards the heat. */
  private static Look look(double cold, double hot) {
    return new Look(new Margins(cold, hot), new Margins(cold - 1.645, hot - 2 * 1.645));
  }

  @Test
  void theSideThatIsNearerToFailingCounts() {
    RoughOdds exact = new RoughOdds(look(1, 2), new Margins(ONE_ABOVE, ONE_ABOVE));
    assertEquals(1, exact.score(look(1, 2)), 1e-3);
    assertEquals(1, exact.score(look(1, 9)), 1e-3);
    assertEquals(0.5, exact.score(look(1, 1)), 1e-3);
    assertEquals(-2, exact.score(look(-2, 2)), 1e-3);
  }

  /** A rough look that is one deviation too hopeful is so for all changes. */
  @Test
  void whatIsMissedOfThePackingAsItIsIsAddedToAll() {
    RoughOdds hopeful = new RoughOdds(look(2, 20), new Margins(ONE_ABOVE, 0.9));
    assertEquals(1, hopeful.score(look(2, 20)), 1e-3);
    assertEquals(2, hopeful.score(look(3, 40)), 1e-3);
  }

  /** Where nearly all fail a packing that is less bad still counts as better. */
  @Test
  void badPackingsAreToldFromWorseOnes() {
    RoughOdds none = new RoughOdds(look(-9, 5), new Margins(0, 1));
    assertTrue(none.score(look(-6, 4)) > none.score(look(-8.9, 5)) + 2);
  }

  /** A packing that never gets warm lets its changes get warm. */
  @Test
  void aSideThatNeverVariedSaysNothingOfChanges() {
    Look never = new Look(new Margins(-5, 8), new Margins(-7, 7.99));
    RoughOdds odds = new RoughOdds(never, new Margins(0.01, 1));
    Look warmed = new Look(new Margins(-2, 4), new Margins(-4, 2.5));
    assertTrue(odds.score(warmed) > odds.score(never) + 1);
  }
}
