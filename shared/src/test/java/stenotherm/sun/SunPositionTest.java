package stenotherm.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;

/** The printed example of NREL/TP-560-34302, appendix A.5. */
class SunPositionTest {
  private static final SunSite GOLDEN = new SunSite(39.742476, -105.1786, ZoneOffset.ofHours(-7));

  /**
   * Without refraction the example's zenith angle is 50.127954 (an independent implementation of
   * the algorithm); refraction, 0.0201° here and 0.0163° in the example's thin air on a mountain,
   * is what the two differ by.
   */
  @Test
  void printedExample() {
    SunPosition sun = SunPosition.at(GOLDEN, LocalDateTime.of(2003, 10, 17, 12, 30, 30));

    assertEquals(50.127954 - 0.0201, sun.zenithAngle(), 5e-4);
    assertEquals(50.11162, sun.zenithAngle(), 0.0201 - 0.0163 + 5e-4);
    assertEquals(194.34024, sun.azimuth(), 5e-4);
    assertEquals(39.87, sun.elevation(), 0.03);
  }

  /** Transit 11:46:04.96; in one second the azimuth turns by 0.0055°. */
  @Test
  void sunIsInTheSouthAtTransit() {
    SunPosition sun = SunPosition.at(GOLDEN, LocalDateTime.of(2003, 10, 17, 11, 46, 5));

    assertEquals(180, sun.azimuth(), 0.006);
  }

  /**
   * Sunrise and sunset are printed for a true zenith angle of 90° + 0.26667° + 0.5667°, just where
   * the algorithm begins to apply refraction. In one second the sun climbs by 0.0033°. The printed
   * sunset is that of the same day in UTC, the evening before on the local clock.
   */
  @Test
  void sunriseAndSunset() {
    SunPosition rise = SunPosition.at(GOLDEN, LocalDateTime.of(2003, 10, 17, 6, 12, 42));
    SunPosition set = SunPosition.at(GOLDEN, LocalDateTime.of(2003, 10, 16, 17, 20, 20));

    assertEquals(90.8334, rise.zenithAngle(), 2 * 0.0033 + 0.001);
    assertEquals(90.8334, set.zenithAngle(), 2 * 0.0033 + 0.001);
  }

  @Test
  void sameMomentOnTwoClocks() {
    SunSite onUtc = new SunSite(GOLDEN.latitude(), GOLDEN.longitude(), ZoneOffset.UTC);

    assertEquals(
        SunPosition.at(GOLDEN, LocalDateTime.of(2003, 10, 17, 20, 30)),
        SunPosition.at(onUtc, LocalDateTime.of(2003, 10, 18, 3, 30)));
  }

  @Test
  void refusesPlacesThatAreNowhere() {
    assertThrows(InvalidInputException.class, () -> new SunSite(90.1, 0, ZoneOffset.UTC));
    assertThrows(InvalidInputException.class, () -> new SunSite(Double.NaN, 0, ZoneOffset.UTC));
    assertEquals(
        "longitude: 181 ° must lie between -180 ° and 180 °. East is positive: all of the Americas"
            + " is negative.",
        assertThrows(InvalidInputException.class, () -> new SunSite(0, 181, ZoneOffset.UTC))
            .getMessage());
    assertThrows(InvalidInputException.class, () -> new SunPosition(181, 0));
    assertThrows(InvalidInputException.class, () -> new SunPosition(0, -1));
  }
}
