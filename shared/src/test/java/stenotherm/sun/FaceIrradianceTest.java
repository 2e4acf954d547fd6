package stenotherm.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

class FaceIrradianceTest {
  private static final double HOUR = 3600;
  private static final SunSite GOLDEN = new SunSite(39.742476, -105.1786, ZoneOffset.ofHours(-7));
  private static final Sky SKY = Sky.cloudless(OpticalDepths.CLEAR_WINTER);
  private static final LocalDateTime MIDNIGHT = LocalDateTime.of(2003, 10, 17, 0, 0);
  private static final Range TWO_DAYS = new Range(0, 48 * HOUR);

  private static Map<Face, TimeFunction> heading(double degrees) {
    return FaceIrradiance.of(GOLDEN, SKY, degrees, MIDNIGHT, TWO_DAYS);
  }

  @Test
  void everyFaceHasItsSideOfTheWorld() {
    Map<Face, TimeFunction> eastward = heading(90);
    double morning = 8 * HOUR;
    double noon = 11.768 * HOUR;
    double evening = 16 * HOUR;

    assertTrue(eastward.get(Face.X_MAX).at(morning) > 5 * eastward.get(Face.X_MIN).at(morning));
    assertTrue(eastward.get(Face.X_MIN).at(evening) > 5 * eastward.get(Face.X_MAX).at(evening));
    assertTrue(eastward.get(Face.Y_MIN).at(noon) > 5 * eastward.get(Face.Y_MAX).at(noon));
    assertTrue(eastward.get(Face.Z_MAX).at(noon) > 500);
    assertEquals(0.2 * eastward.get(Face.Z_MAX).at(noon), eastward.get(Face.Z_MIN).at(noon), 1e-9);
  }

  @Test
  void turningTheParcelTurnsTheFaces() {
    Map<Face, TimeFunction> eastward = heading(90);
    Map<Face, TimeFunction> southward = heading(180);
    for (double time = 0; time < 24 * HOUR; time += 0.7 * HOUR) {
      assertEquals(eastward.get(Face.X_MAX).at(time), southward.get(Face.Y_MAX).at(time), 1e-9);
      assertEquals(eastward.get(Face.Y_MIN).at(time), southward.get(Face.X_MAX).at(time), 1e-9);
      assertEquals(eastward.get(Face.Z_MAX).at(time), southward.get(Face.Z_MAX).at(time), 1e-9);
    }
    assertEquals(180, FaceIrradiance.azimuth(Face.Y_MIN, 90));
    assertEquals(350, FaceIrradiance.azimuth(Face.X_MAX, -10));
    assertThrows(InvalidInputException.class, () -> FaceIrradiance.azimuth(Face.Z_MAX, 0));
  }

  /**
   * The model's light, up to 36 W/m2 here, is there at once when the sun rises; the tables fade it
   * in over the ten minutes in which the sun climbs by 2°.
   */
  @Test
  void tablesFollowTheSky() {
    Map<Face, TimeFunction> faces = heading(30);
    for (double time = 0; time < 24 * HOUR; time += 173) {
      LocalDateTime clock = MIDNIGHT.plusSeconds(Math.round(time));
      SunPosition sun = SunPosition.at(GOLDEN, clock);
      int day = clock.getDayOfYear();
      double tolerance = Math.abs(sun.elevation()) < 2 ? 36 : 2;
      assertEquals(SKY.onUpperFace(sun, day), faces.get(Face.Z_MAX).at(time), tolerance);
      assertEquals(SKY.onVerticalFace(sun, day, 30), faces.get(Face.X_MAX).at(time), tolerance);
      assertEquals(SKY.onVerticalFace(sun, day, 300), faces.get(Face.Y_MAX).at(time), tolerance);
    }
  }

  @Test
  void nightIsDarkAndHasNoRows() {
    for (TimeFunction face : heading(0).values()) {
      assertEquals(0, face.at(3 * HOUR));
      assertEquals(0, face.at(22 * HOUR));
      assertEquals(0, face.breakpoints(18 * HOUR, 30 * HOUR - 1).length);
      assertTrue(face.breakpoints(6 * HOUR, 18 * HOUR).length > 40);
    }
    Map<Face, TimeFunction> polarNight =
        FaceIrradiance.of(
            new SunSite(80, 0, ZoneOffset.UTC),
            SKY,
            0,
            LocalDateTime.of(2024, 12, 21, 0, 0),
            TWO_DAYS);
    polarNight.values().forEach(face -> assertTrue(face.isConstant()));
  }

  @Test
  void nothingFallsOutsideTheTimeAskedFor() {
    Range noon = new Range(11 * HOUR, 12 * HOUR);
    TimeFunction lid = FaceIrradiance.of(GOLDEN, SKY, 0, MIDNIGHT, noon).get(Face.Z_MAX);

    assertEquals(0, lid.at(10.9 * HOUR));
    assertTrue(lid.at(11 * HOUR) > 500);
    assertTrue(lid.before(12 * HOUR) > 500);
    assertEquals(0, lid.at(12 * HOUR));
    assertFalse(lid.isConstant());
  }

  /** South of the tropics the sun passes through north. */
  @Test
  void southernNoonIsInTheNorth() {
    SunSite south = new SunSite(-35, 149, ZoneOffset.ofHours(10));
    Map<Face, TimeFunction> faces =
        FaceIrradiance.of(south, SKY, 0, LocalDateTime.of(2024, 6, 21, 0, 0), TWO_DAYS);

    assertTrue(faces.get(Face.X_MAX).at(12 * HOUR) > 5 * faces.get(Face.X_MIN).at(12 * HOUR));
  }

  @Test
  void refusesWhatIsNoHeadingAndNoTime() {
    assertThrows(InvalidInputException.class, () -> heading(361));
    assertThrows(
        InvalidInputException.class,
        () -> FaceIrradiance.of(GOLDEN, SKY, 0, MIDNIGHT, new Range(5, 5)));
  }
}
