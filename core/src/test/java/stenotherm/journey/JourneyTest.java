package stenotherm.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
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
    assertTrue(message.startsWith("duration of leg 'x': 2 s must lie between 60 s and"), message);
  }
}
