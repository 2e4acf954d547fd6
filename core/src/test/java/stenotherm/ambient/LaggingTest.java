package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/** What a parcel meets that lies among others. */
class LaggingTest {
  private static final double HOUR = Times.HOUR;
  private static final Range NIGHT = new Range(4 * HOUR, 16 * HOUR);

  @Test
  void aPileForgetsItsBeginningExponentially() {
    TimeFunction pile = Ambient.lagging(Ambient.constant(275), NIGHT, 291, 3 * HOUR);
    for (double hours : new double[] {0, 0.01, 0.5, 1, 3, 7.77, 12}) {
      double exact = 275 + 16 * Math.exp(-hours / 3);
      assertEquals(exact, pile.at((4 + hours) * HOUR), 1e-9);
    }
    assertEquals(275 + 16 * Math.exp(-1), pile.before(7 * HOUR), 1e-9);
  }

  /** The exact mean of an exponential; the lagged value is taken as linear over ten minutes. */
  @Test
  void itsMeanIsThatOfTheExponential() {
    TimeFunction pile = Ambient.lagging(Ambient.constant(275), NIGHT, 291, 3 * HOUR);
    double exact = 275 + 16 * 3 / 5.0 * (Math.exp(-1 / 3.0) - Math.exp(-6 / 3.0));
    assertEquals(exact, pile.mean(5 * HOUR, 10 * HOUR), 16 * 600 * 600 / (12 * 9 * HOUR * HOUR));
  }

  @Test
  void aRampIsFollowedFromWhereThePileBegins() {
    TimeFunction ramp = Ambient.series(new double[] {0, 20 * HOUR}, new double[] {270, 290});
    TimeFunction pile = Ambient.lagging(ramp, NIGHT, 290, 2 * HOUR);
    for (double hours : new double[] {0, 1, 5, 12}) {
      double behind = 1 * 2.0;
      double exact = 274 + hours - behind + (290 - 274 + behind) * Math.exp(-hours / 2);
      assertEquals(exact, pile.at((4 + hours) * HOUR), 1e-9);
    }
  }

  @Test
  void theDeeperTheLessItSwings() {
    TimeFunction day = time -> 285 + 8 * Math.sin(2 * Math.PI * time / Times.DAY);
    double last = 8;
    for (double depth : new double[] {0.1, 0.2, 0.4, 0.7, 1}) {
      double lag = Stowage.AMONG_OTHERS.lag(depth);
      TimeFunction pile = Ambient.lagging(day, new Range(0, 3 * Times.DAY), 285, lag);
      double most = 0;
      for (double time = 2 * Times.DAY; time <= 3 * Times.DAY; time += 900) {
        most = Math.max(most, Math.abs(pile.at(time) - 285));
      }
      assertTrue(most < last, most + " K at depth " + depth);
      last = most;
    }
  }

  @Test
  void itIsKnownDuringItsLegAlone() {
    TimeFunction pile = Ambient.lagging(Ambient.constant(275), NIGHT, 291, 3 * HOUR);
    assertThrows(InvalidInputException.class, () -> pile.at(3.9 * HOUR));
    assertThrows(InvalidInputException.class, () -> pile.at(16.1 * HOUR));
    assertThrows(
        InvalidInputException.class,
        () -> Ambient.lagging(Ambient.constant(275), NIGHT, 20, 3 * HOUR));
    assertThrows(
        InvalidInputException.class, () -> Ambient.lagging(Ambient.constant(275), NIGHT, 291, -1));
  }

  /** By hand: of the cube of edge 2, parcels deeper than d fill a cube of edge 2 (1 - d). */
  @Test
  void parcelsFillACubeEvenly() {
    for (double depth : new double[] {0, 0.1, 0.5, 0.9, 1}) {
      double inner = 2 * (1 - depth);
      assertEquals(depth, Stowage.depth(1 - inner * inner * inner / 8), 1e-9);
    }
    assertEquals(1 - Math.cbrt(0.5), Stowage.depth(0.5), 1e-12);
    assertThrows(InvalidInputException.class, () -> Stowage.depth(1.01));
    assertEquals(0, Stowage.AMONG_OTHERS.lag(0));
    assertEquals(0, Stowage.ALONE.lag(1));
  }
}
