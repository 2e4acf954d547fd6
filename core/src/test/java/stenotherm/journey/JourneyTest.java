package stenotherm.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

class JourneyTest {
  private static final Place EAST = new Place("east", ZoneOffset.ofHours(-5));
  private static final Place WEST = new Place("west", ZoneOffset.ofHours(-8));
  private static final Place HALF = new Place("half", ZoneOffset.ofHoursMinutes(5, 30));

  private static Leg leg(String name, Place place, double hours) {
    return new Leg(
        name,
        place,
        Times.fromHours(hours),
        Ambient.constant(290),
        2,
        FaceFilms.indoors(),
        Source.assumed("made up"));
  }

  private static Journey journey(Leg... legs) {
    return new Journey(LocalDateTime.of(2026, 12, 31, 18, 30), 294, List.of(legs));
  }

  private static final Journey WESTWARD =
      journey(leg("collected", EAST, 4), leg("flown", WEST, 6), leg("delivered", WEST, 2));

  @Test
  void legsFollowEachOther() {
    assertEquals(0, WESTWARD.start(0));
    assertEquals(Times.fromHours(4), WESTWARD.start(1));
    assertEquals(Times.fromHours(10), WESTWARD.start(2));
    assertEquals(Times.fromHours(12), WESTWARD.start(3));
    assertEquals(Times.fromHours(12), WESTWARD.duration());
  }

  @Test
  void theLaterLegHoldsAtAChange() {
    assertEquals(0, WESTWARD.legAt(0));
    assertEquals(0, WESTWARD.legAt(Times.fromHours(4) - 1e-3));
    assertEquals(1, WESTWARD.legAt(Times.fromHours(4)));
    assertEquals(2, WESTWARD.legAt(Times.fromHours(10)));
    assertEquals(2, WESTWARD.legAt(Times.fromHours(12)));
    assertEquals(2, WESTWARD.legAt(Times.fromHours(100)));
    assertEquals(0, WESTWARD.legAt(-5));
  }

  @Test
  void theClockIsThatOfThePlace() {
    assertEquals(LocalDateTime.of(2026, 12, 31, 18, 30), WESTWARD.localClock(0));
    assertEquals(
        LocalDateTime.of(2026, 12, 31, 22, 29, 59), WESTWARD.localClock(Times.fromHours(4) - 1));
    // three hours back when the leg in the west begins
    assertEquals(LocalDateTime.of(2026, 12, 31, 19, 30), WESTWARD.localClock(Times.fromHours(4)));
    // over midnight and into the next year
    assertEquals(LocalDateTime.of(2027, 1, 1, 1, 30), WESTWARD.localClock(Times.fromHours(10)));
    assertEquals(
        LocalDateTime.of(2026, 12, 31, 23, 59, 59), WESTWARD.localClock(Times.fromHours(8.5) - 1));
    assertEquals(LocalDateTime.of(2027, 1, 1, 0, 0), WESTWARD.localClock(Times.fromHours(8.5)));
  }

  @Test
  void offsetsOfHalfHoursCount() {
    Journey journey = journey(leg("one", EAST, 4), leg("two", HALF, 2));
    assertEquals(LocalDateTime.of(2027, 1, 1, 9, 0), journey.localClock(Times.fromHours(4)));
  }

  @Test
  void aHeldJourneyHasALongerLastLeg() {
    Journey held = WESTWARD.held(Times.fromHours(5));
    assertEquals(3, held.legs().size());
    assertEquals(WESTWARD.legs().subList(0, 2), held.legs().subList(0, 2));
    assertEquals(WESTWARD.legs().get(2).delayed(Times.fromHours(5)), held.legs().get(2));
    assertEquals(Times.fromHours(2), held.legs().get(2).duration());
    assertEquals(Times.fromHours(7), held.legs().get(2).lasting());
    assertEquals(Times.fromHours(17), held.duration());
    assertEquals(WESTWARD.startTemperature(), held.startTemperature());
    assertEquals(WESTWARD.sealing(), held.sealing());
    assertEquals(Times.fromHours(12), WESTWARD.duration());
    assertThrows(InvalidInputException.class, () -> WESTWARD.held(0));
  }

  /** A delay makes what comes later later, on every clock. */
  @Test
  void anyLegCanBeDelayed() {
    Journey late = WESTWARD.delayed(0, Times.fromHours(100));
    assertEquals(Times.fromHours(104), late.start(1));
    assertEquals(Times.fromHours(112), late.duration());
    assertEquals(
        WESTWARD.localClock(WESTWARD.duration()).plusHours(100), late.localClock(late.duration()));
    assertEquals(late, WESTWARD.delayed(0, Times.fromHours(60)).delayed(0, Times.fromHours(40)));
    assertEquals(WESTWARD, WESTWARD.delayed(1, 0));
    assertThrows(InvalidInputException.class, () -> WESTWARD.delayed(3, 60));
    assertThrows(InvalidInputException.class, () -> WESTWARD.delayed(0, -60));
  }

  @Test
  void atAChangeOneLegEndsAndOneBegins() {
    double change = Times.fromHours(4);
    assertEquals(0, WESTWARD.legUntil(change));
    assertEquals(1, WESTWARD.legUntil(change + 1));
    assertEquals(0, WESTWARD.legUntil(0));
    assertEquals(2, WESTWARD.legUntil(Times.fromHours(50)));
    assertEquals(LocalDateTime.of(2026, 12, 31, 22, 30), WESTWARD.localClock(change, 0));
    assertEquals(LocalDateTime.of(2026, 12, 31, 19, 30), WESTWARD.localClock(change, 1));
  }

  @Test
  void badJourneysAreRefused() {
    assertThrows(InvalidInputException.class, () -> journey());
    assertThrows(InvalidInputException.class, () -> leg(" ", EAST, 1));
    assertThrows(InvalidInputException.class, () -> new Place("", ZoneOffset.UTC));
    assertThrows(
        InvalidInputException.class,
        () -> new Journey(LocalDateTime.of(2026, 1, 1, 0, 0), -5, WESTWARD.legs()));
    String message =
        assertThrows(InvalidInputException.class, () -> leg("x", EAST, 2 / 3600.0)).getMessage();
    assertTrue(message.startsWith("duration of leg 'x': 2 s must lie between 1 min and"), message);
  }

  private static Journey sunny(TimeFunction sun, double delay) {
    Leg porch = leg("porch", WEST, 6);
    Surroundings shade = porch.surroundings();
    return journey(
        leg("collected", EAST, 4),
        porch
            .in(shade.under(Sunshine.on(Face.Z_MAX, sun, SolarAbsorptance.KRAFT_BOARD)))
            .delayed(Times.fromHours(delay)));
  }

  private static TimeFunction rows(double[] hours, double... values) {
    return TimeFunction.table(Arrays.stream(hours).map(Times::fromHours).toArray(), values);
  }

  private static void assertRefused(String message, Executable executable) {
    assertEquals(message, assertThrows(InvalidInputException.class, executable).getMessage());
  }

  /** Beyond its ends a table stays at its first and last row: the sun would shine on. */
  @Test
  void sunlightCoversItsLeg() {
    TimeFunction whole = rows(new double[] {4, 6, 10}, 200, 500, 300);
    sunny(whole, 0);
    assertRefused(
        "sunlight on zMax in leg 'porch': its last row is 300 W/m2 at 10 h after sealing, but the"
            + " leg ends at 11.5 h; add rows for the last 1.5 h of it, or end with 0 W/m2",
        () -> sunny(whole, 1.5));
    assertRefused(
        "sunlight on zMax in leg 'porch': its last row is 500 W/m2 at 8 h after sealing, but the"
            + " leg ends at 10 h; add rows for the last 2 h of it, or end with 0 W/m2",
        () -> sunny(rows(new double[] {2, 8}, 500, 500), 0));
    assertRefused(
        "sunlight on zMax in leg 'porch': its last row is 500 W/m2 at 2 h after sealing, but the"
            + " leg ends at 10 h; add rows for the last 6 h of it, or end with 0 W/m2",
        () -> sunny(rows(new double[] {0, 2}, 0, 500), 0));
    assertRefused(
        "sunlight on zMax in leg 'porch': its first row is 100 W/m2 at 5 h after sealing, but the"
            + " leg begins at 4 h; add rows for the first 1 h of it, or begin with 0 W/m2",
        () -> sunny(rows(new double[] {5, 8, 9}, 100, 500, 0), 0));
    Leg porch = leg("porch", EAST, 6);
    Contact spot =
        Contact.whole(Face.X_MIN, new Contact.Sunlit(rows(new double[] {0, 2}, 500, 500)));
    assertRefused(
        "sunlight on a part of the left in leg 'porch': its last row is 500 W/m2 at 2 h after sealing,"
            + " but the leg ends at 6 h; add rows for the last 4 h of it, or end with 0 W/m2",
        () -> journey(porch.in(porch.surroundings().touching(List.of(spot)))));
  }

  @Test
  void sunlightMayEndDarkOrNever() {
    sunny(rows(new double[] {5, 6, 8}, 0, 500, 0), 40);
    sunny(TimeFunction.constant(500), 40);
    sunny(rows(new double[] {0, 40}, 500, 500), 0);
    sunny(rows(new double[] {-1, 2, 12}, 100, 500, 500), 0);
  }

  @Test
  void sunlightIsNotNegative() {
    assertRefused(
        "irradiance on zMax: -20 W/m2 at 7200 s must be 0 or above",
        () -> sunny(rows(new double[] {0, 2, 3}, 0, -20, 0), 0));
    assertRefused(
        "irradiance on zMax: -1 W/m2 at 7200 s must be 0 or above",
        () -> sunny(rows(new double[] {0, 2, 2, 3}, 0, -1, 5, 0), 0));
    assertRefused(
        "irradiance on zMax: -5 W/m2 must be a finite number, 0 or above",
        () -> sunny(TimeFunction.constant(-5), 0));
    assertRefused(
        "irradiance on a part of a face: -5 W/m2 must be a finite number, 0 or above",
        () -> new Contact.Sunlit(TimeFunction.constant(-5)));
  }
}
