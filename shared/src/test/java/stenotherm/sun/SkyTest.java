package stenotherm.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;

class SkyTest {
  private static final OpticalDepths CLEAR = OpticalDepths.CLEAR_WINTER;
  private static final OpticalDepths HAZY = OpticalDepths.HAZY_SUMMER;

  /**
   * Worked by hand (in another language) from the printed equations; no printed results of the
   * model could be read.
   */
  @ParameterizedTest
  @CsvSource({
    "21,  0.325, 2.461, 30, 1.99429285, 838.72728, 79.6185035",
    "202, 0.556, 1.779, 75, 1.03486870, 747.90069, 219.503454",
    "202, 0.556, 1.779, 5,  10.3057913, 45.588329, 39.7672043"
  })
  void clearSky(
      int day, double beam, double diffuse, double elevation, double mass, double eb, double ed) {
    OpticalDepths depths = new OpticalDepths(beam, diffuse, CLEAR.source());

    Irradiance irradiance = ClearSky.irradiance(depths, new SunPosition(90 - elevation, 180), day);

    assertEquals(mass, ClearSky.airMass(elevation), 1e-8 * mass);
    assertEquals(eb, irradiance.directNormal(), 1e-6 * eb);
    assertEquals(ed, irradiance.diffuseHorizontal(), 1e-6 * ed);
  }

  /** Kasten and Young's table begins with 38.09 at the horizon; their formula gives 37.92. */
  @Test
  void airMassAtTheEnds() {
    assertEquals(1, ClearSky.airMass(90), 1e-3);
    assertEquals(37.92, ClearSky.airMass(0), 0.005);
  }

  /** The earth is 3.4 % nearer than at its mean distance, squared, on about 3 January. */
  @Test
  void sunIsStrongestInJanuary() {
    assertEquals(1412.1, ClearSky.extraterrestrial(3), 0.1);
    assertEquals(1321.9, ClearSky.extraterrestrial(185), 0.1);
  }

  @Test
  void noSunBelowTheHorizon() {
    SunPosition down = new SunPosition(90.01, 270);

    assertEquals(Irradiance.NONE, ClearSky.irradiance(CLEAR, down, 100));
    assertEquals(0, Sky.cloudless(CLEAR).onVerticalFace(down, 100, 270));
  }

  @Test
  void cloudsLeaveAQuarterAndNoShadow() {
    SunPosition sun = new SunPosition(40, 180);
    double clear = Sky.cloudless(HAZY).onUpperFace(sun, 200);
    Sky overcast = new Sky(HAZY, 1, 0);

    assertEquals(0.25 * clear, overcast.onUpperFace(sun, 200), 1e-9);
    assertEquals(0, overcast.irradiance(sun, 200).directNormal());
    assertEquals(0.125 * clear, overcast.onVerticalFace(sun, 200, 0), 1e-9);
    assertEquals(0.125 * clear, overcast.onVerticalFace(sun, 200, 180), 1e-9);
  }

  @Test
  void moreCloudNeverGivesMoreSunOnTheLid() {
    SunPosition sun = new SunPosition(55, 120);
    double before = Double.POSITIVE_INFINITY;
    for (int tenth = 0; tenth <= 10; tenth++) {
      Sky sky = new Sky(CLEAR, tenth / 10.0, 0.2);
      double now = sky.onUpperFace(sun, 80);
      assertTrue(now <= before && now > 0);
      assertTrue(sky.irradiance(sun, 80).diffuseHorizontal() > 0);
      before = now;
    }
  }

  /** The sun at 30° straight in front: beam cos 30°, Threlkeld's ratio at that angle. */
  @Test
  void verticalFaces() {
    SunPosition sun = new SunPosition(60, 135);
    Sky sky = new Sky(CLEAR, 0, 0.2);
    Irradiance irradiance = ClearSky.irradiance(CLEAR, sun, 21);
    double direct = irradiance.directNormal();
    double diffuse = irradiance.diffuseHorizontal();
    double ground = 0.1 * (direct * 0.5 + diffuse);
    double cosine = Math.sqrt(0.75);

    double share = 0.55 + 0.437 * cosine + 0.313 * 0.75;
    assertEquals(
        direct * cosine + diffuse * share + ground, sky.onVerticalFace(sun, 21, 135), 1e-9);
    assertEquals(0.45 * diffuse + ground, sky.onVerticalFace(sun, 21, 315), 1e-9);
    assertEquals(2 * ground, sky.onLowerFace(sun, 21), 1e-9);
  }

  @Test
  void refusesSkiesThatAreNone() {
    Source source = Source.assumed("test");
    assertThrows(InvalidInputException.class, () -> new Sky(CLEAR, 1.1, 0.2));
    assertThrows(InvalidInputException.class, () -> new Sky(CLEAR, 0, -0.1));
    assertThrows(InvalidInputException.class, () -> new OpticalDepths(0, 2, source));
    assertThrows(InvalidInputException.class, () -> new OpticalDepths(1.5, 3.5, source));
    assertThrows(
        InvalidInputException.class, () -> ClearSky.irradiance(CLEAR, new SunPosition(0, 0), 0));
    assertThrows(InvalidInputException.class, () -> new Irradiance(-1, 0));
  }
}
