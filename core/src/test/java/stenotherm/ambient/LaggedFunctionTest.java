package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

class LaggedFunctionTest {
  private static final double HOUR = Times.HOUR;
  private static final Range DAYS = new Range(0, 10 * Times.DAY);

  @Test
  void aStepIsFollowedByAnExponential() {
    TimeFunction step =
        TimeFunction.table(
            new double[] {0, 5 * HOUR, 5 * HOUR, 300 * HOUR}, new double[] {280, 280, 290, 290});
    TimeFunction van = Ambient.following(step, DAYS, 3, 2 * HOUR);
    assertEquals(283, van.at(4 * HOUR), 1e-12);
    assertEquals(283, van.at(5 * HOUR), 1e-12);
    for (double hours : new double[] {0.01, 0.5, 1, 2, 7.3}) {
      double exact = 293 - 10 * Math.exp(-hours / 2);
      assertEquals(exact, van.at((5 + hours) * HOUR), 1e-9);
      assertEquals(exact, van.before((5 + hours) * HOUR), 1e-9);
    }
  }

  /** In the end a ramp is followed with just the lag. */
  @Test
  void aRampIsFollowedLate() {
    TimeFunction ramp =
        TimeFunction.table(new double[] {0, 10 * Times.DAY}, new double[] {250, 350});
    TimeFunction hall = Ambient.following(ramp, DAYS, 0, 4 * HOUR);
    assertEquals(ramp.at(100 * HOUR - 4 * HOUR), hall.at(100 * HOUR), 1e-9);
    double start = 100 / DAYS.high() * (HOUR - 4 * HOUR * (1 - Math.exp(-0.25)));
    assertEquals(250 + start, hall.at(HOUR), 1e-9);
  }

  /** The factor that the documentation states, for a daily swing; ten-minute pieces are close. */
  @Test
  void aDailySwingIsDampened() {
    double omega = 2 * Math.PI / Times.DAY;
    TimeFunction swing = time -> 290 + 8 * Math.sin(omega * time);
    for (double lag : new double[] {HOUR, 4 * HOUR}) {
      TimeFunction air = Ambient.following(swing, DAYS, 0, lag);
      double highest = 0;
      for (double time = 8 * Times.DAY; time < 9 * Times.DAY; time += 60) {
        highest = Math.max(highest, air.at(time));
      }
      assertEquals(1 / Math.hypot(1, omega * lag), (highest - 290) / 8, 1e-3);
    }
    assertEquals(0.97, 1 / Math.hypot(1, omega * HOUR), 0.005);
    assertEquals(0.69, 1 / Math.hypot(1, omega * 4 * HOUR), 0.005);
  }

  @Test
  void withoutALagItIsTheOutdoorAir() {
    TimeFunction jump =
        TimeFunction.table(
            new double[] {0, HOUR, HOUR, 900 * HOUR}, new double[] {271, 271, 272, 273});
    TimeFunction ramp = Ambient.following(jump, DAYS, 10, 0);
    assertEquals(281, ramp.before(HOUR));
    assertEquals(282, ramp.at(HOUR));
    assertArrayEquals(new double[] {HOUR}, ramp.breakpoints(0, 2 * HOUR));
  }

  @Test
  void theOffsetMustNotLeaveWhatAirMayBe() {
    for (double lag : new double[] {0, HOUR}) {
      InvalidInputException thrown =
          assertThrows(
              InvalidInputException.class,
              () -> Ambient.following(TimeFunction.constant(300), DAYS, 55, lag));
      assertTrue(thrown.getMessage().startsWith("ambient temperature with its offset: 355 K"));
    }
  }

  @Test
  void itNeverLeavesTheRangeOfWhatItFollows() {
    DailyExtremes days =
        new DailyExtremes(
            0,
            List.of(new Range(270, 285), new Range(260, 275), new Range(280, 290)),
            DiurnalShape.SOLAR_TIME);
    TimeFunction hall = Ambient.following(days, new Range(0, 3 * Times.DAY), 0, 3 * HOUR);
    for (double time = 0; time <= 3 * Times.DAY; time += 500) {
      double value = hall.at(time);
      assertTrue(value > 259.999 && value < 290.001, "at " + time);
    }
    assertTrue(hall.mean(0, Times.DAY) > 270);
  }

  @Test
  void badValuesAreRefused() {
    TimeFunction ten = TimeFunction.constant(283);
    assertTrue(Ambient.following(ten, DAYS, 1, HOUR).isConstant());
    assertThrows(InvalidInputException.class, () -> Ambient.following(ten, DAYS, 283, HOUR));
    assertThrows(InvalidInputException.class, () -> Ambient.following(ten, DAYS, 1, -1));
    assertThrows(InvalidInputException.class, () -> new AmbientRule.Following(Double.NaN, 0));
    assertThrows(InvalidInputException.class, () -> new AmbientRule.Following(3, -5));
    AmbientRule.Following unheated = new AmbientRule.Following(3, 0);
    assertThrows(InvalidInputException.class, () -> new AmbientRule.HeatedWhenCold(unheated, 16));
    assertThrows(
        InvalidInputException.class, () -> Ambient.following(ten, new Range(5, 5), 1, HOUR));
    TimeFunction record = Ambient.hourly(0, new double[] {280, 281, 282});
    assertThrows(InvalidInputException.class, () -> Ambient.following(record, DAYS, 1, HOUR));
    TimeFunction hall = Ambient.following(record, new Range(0, 2 * HOUR), 1, HOUR);
    assertThrows(InvalidInputException.class, () -> hall.at(3 * HOUR));
  }

  /** From 280 K to 290 K in an hour and back, 3 K warmer inside, heated to 288 K. */
  @Test
  void airIsHeatedOnlyWhereItWouldBeTooCold() {
    TimeFunction outdoors =
        TimeFunction.table(new double[] {0, 3600, 7200}, new double[] {280, 290, 280});
    AmbientRule hall = new AmbientRule.HeatedWhenCold(new AmbientRule.Following(3, 0), 288);
    Range times = new Range(0, 7200);
    TimeFunction air = hall.course(outdoors, times);
    assertEquals(288, air.at(0));
    assertEquals(288, air.at(1800), 1e-9);
    assertEquals(290.5, air.at(2700), 1e-9);
    assertEquals(293, air.at(3600), 1e-9);
    assertEquals(288, air.at(6000), 1e-9);
    // heating ends half way up and begins half way down: kinks, as at the top
    assertArrayEquals(new double[] {1800, 3600, 5400}, air.breakpoints(0, 7200), 1e-9);
    assertEquals(288 + 2.5 / 2, air.mean(0, 7200), 1e-9);
    assertEquals(0.5, hall.passedOn(air, times), 1e-9);
    assertEquals(0, hall.passedOn(air, new Range(0, 1700)));
    assertEquals(1, new AmbientRule.Following(3, 0).passedOn(outdoors, times));
    assertEquals(0, new AmbientRule.Held(288).passedOn(air, times));
  }

  @Test
  void aHeatedHallFollowsLate() {
    TimeFunction outdoors =
        TimeFunction.table(
            new double[] {0, 36_000, 36_000, 90_000}, new double[] {300, 300, 270, 270});
    Range times = new Range(0, 90_000);
    AmbientRule.Following unheated = new AmbientRule.Following(3, 7200);
    TimeFunction free = unheated.course(outdoors, times);
    TimeFunction air = new AmbientRule.HeatedWhenCold(unheated, 288).course(outdoors, times);
    for (double time = 0; time <= 90_000; time += 1234) {
      assertEquals(Math.max(288, free.at(time)), air.at(time), 0.02);
    }
    assertEquals(
        288,
        new AmbientRule.HeatedWhenCold(unheated, 288)
            .course(TimeFunction.constant(270), times)
            .at(5));
  }
}
