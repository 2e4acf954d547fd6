package stenotherm.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Stowage;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;

/** Degrees Celsius given as kelvin are found where a journey is made, however they are given. */
class PlausibleJourneyTest {
  private static final LocalDateTime SEALING = LocalDateTime.of(2024, 1, 15, 18, 0);
  private static final Surroundings ROOM =
      Surroundings.of(TimeFunction.constant(293), 2, FaceFilms.indoors());

  private static Journey journey(double start, Surroundings surroundings) {
    Place place = new Place("here", ZoneOffset.UTC);
    return new Journey(
        SEALING,
        start,
        List.of(new Leg("van", place, 7200, 0, surroundings, Source.assumed("a test"))));
  }

  private static void assertRefused(String start, Executable action) {
    String message = assertThrows(InvalidInputException.class, action).getMessage();
    assertEquals(start, message.substring(0, Math.min(start.length(), message.length())));
  }

  @Test
  void startAndAirAreThoseOfAParcel() {
    journey(293, ROOM);
    assertRefused(
        "start temperature: 22 K must lie between 200 K and 350 K", () -> journey(22, ROOM));
    assertRefused(
        "ambient temperature of leg 'van': 22 K must lie",
        () -> journey(293, Surroundings.of(TimeFunction.constant(22), 2, FaceFilms.indoors())));
    TimeFunction later =
        TimeFunction.table(new double[] {0, 3600, 9000}, new double[] {290, 351, 290});
    assertRefused(
        "ambient temperature of leg 'van': 351 K must lie",
        () -> journey(293, Surroundings.of(later, 2, FaceFilms.indoors())));
    Contact hot = Contact.whole(Face.X_MIN, new Contact.Neighbour(TimeFunction.constant(400), 0.1));
    assertRefused(
        "temperature of a neighbour of leg 'van': 400 K must lie",
        () -> journey(293, ROOM.touching(List.of(hot))));
    assertRefused(
        "ambient spread: 300 K must lie between 0 K and 30 K",
        () -> Surroundings.of(TimeFunction.constant(293), 300, FaceFilms.indoors()));
  }

  @Test
  void otherwiseStowedNothingElseChanges() {
    Surroundings piled = ROOM.stowed(Stowage.AMONG_OTHERS);
    assertEquals(Stowage.ALONE, ROOM.stowage());
    assertEquals(Stowage.AMONG_OTHERS, piled.stowage());
    assertEquals(
        Stowage.AMONG_OTHERS, piled.atAltitude(1000).lying(Orientation.LID_DOWN).stowage());
    assertEquals(ROOM, piled.stowed(Stowage.ALONE));
  }
}
