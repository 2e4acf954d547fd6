package stenotherm.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/** Wherever and whenever: no face gets less than nothing, or more than there is. */
class SunProperties {
  /**
   * What the clearest sky lets through to one face, with light from sky and white ground [W/m2].
   */
  private static final double MOST = 2 * 1412;

  @Property(tries = 30, seed = "2101")
  void irradianceIsBounded(
      @ForAll @DoubleRange(min = -90, max = 90) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double longitude,
      @ForAll @DoubleRange(min = -360, max = 360) double heading,
      @ForAll @DoubleRange(min = 0, max = 1) double cloud,
      @ForAll @IntRange(min = 1, max = 365) int day) {
    SunSite site = new SunSite(latitude, longitude, ZoneOffset.UTC);
    Sky sky = new Sky(OpticalDepths.CLEAR_WINTER, cloud, 0.8);
    LocalDateTime start = LocalDateTime.of(2025, 1, 1, 0, 0).plusDays(day - 1);

    Map<Face, TimeFunction> faces =
        FaceIrradiance.of(site, sky, heading, start, new Range(0, 86400));

    for (double time = 0; time < 86400; time += 1237) {
      double lid = faces.get(Face.Z_MAX).at(time);
      assertEquals(0.8 * lid, faces.get(Face.Z_MIN).at(time), 1e-9 * MOST);
      for (Face face : Face.values()) {
        double value = faces.get(face).at(time);
        assertTrue(value >= 0 && value < MOST, face + " " + value);
      }
    }
  }

  /** Clouds only take: each face's beam, and all that reaches the lid. */
  @Property(tries = 30, seed = "2101")
  void cloudsOnlyTakeFromTheLid(
      @ForAll @DoubleRange(min = 0, max = 89) double zenith,
      @ForAll @DoubleRange(min = 0, max = 1) double cloud,
      @ForAll @IntRange(min = 1, max = 365) int day) {
    SunPosition sun = new SunPosition(zenith, 180);
    Sky clear = Sky.cloudless(OpticalDepths.HAZY_SUMMER);
    Sky cloudy = new Sky(OpticalDepths.HAZY_SUMMER, cloud, Sky.COMMON_GROUND);

    assertTrue(cloudy.onUpperFace(sun, day) <= clear.onUpperFace(sun, day) * (1 + 1e-12));
    assertTrue(
        cloudy.irradiance(sun, day).directNormal() <= clear.irradiance(sun, day).directNormal());
    assertTrue(cloudy.irradiance(sun, day).diffuseHorizontal() >= 0);
  }
}
