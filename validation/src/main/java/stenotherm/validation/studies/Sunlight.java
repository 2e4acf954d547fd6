package stenotherm.validation.studies;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import stenotherm.base.Source;
import stenotherm.sun.ClearSky;
import stenotherm.sun.Irradiance;
import stenotherm.sun.OpticalDepths;
import stenotherm.sun.SunPosition;
import stenotherm.sun.SunSite;
import stenotherm.validation.studies.Check.Expected;

/** Printed examples of a solar position algorithm and of a clear-sky model. */
final class Sunlight implements Study {
  private static final String NREL =
      "Reda and Andreas 2008, NREL/TP-560-34302, appendix A.5: 17 October 2003 in Colorado"
          + " (read)";

  /** Altitude of the sun in the example [°]. */
  private static final double ALTITUDE_AT_15_H = 68.62;

  private static final int DAY_OF_EXAMPLE = 202;

  private static final String ASHRAE =
      "ASHRAE Handbook - Fundamentals 2021, ch. 14, examples 3 and 4: Atlanta on 21 July (read)";

  @Override
  public Heading heading() {
    return new Heading(
        "sun-position",
        "Where the sun stands, and how strong it is",
        NREL + "; " + ASHRAE,
        Kind.BENCHMARK);
  }

  @Override
  public Findings run(Depth depth) {
    SunSite site = new SunSite(39.742476, -105.1786, ZoneOffset.ofHours(-7));
    SunPosition noon = SunPosition.at(site, LocalDateTime.of(2003, 10, 17, 12, 30, 30));
    SunPosition transit = SunPosition.at(site, LocalDateTime.of(2003, 10, 17, 11, 46, 5));
    SunPosition rise = SunPosition.at(site, LocalDateTime.of(2003, 10, 17, 6, 12, 43));
    OpticalDepths july = new OpticalDepths(0.515, 2.066, Source.read(ASHRAE, "optical depths"));
    Irradiance sky =
        ClearSky.irradiance(july, new SunPosition(90 - ALTITUDE_AT_15_H, 180), DAY_OF_EXAMPLE);
    String rounded = "half of the last printed digit, and the exponents' three decimals";
    return Findings.of(
        List.of(
            Check.closed(
                "beam of the clear sky at 15 h, on a face turned to the sun",
                sky.directNormal(),
                new Expected(770, 1, "W/m2", ASHRAE, rounded)),
            Check.closed(
                "diffuse light of the clear sky at 15 h, on a level face",
                sky.diffuseHorizontal(),
                new Expected(162, 1, "W/m2", ASHRAE, rounded)),
            Check.closed(
                "zenith angle at 12:30:30",
                noon.zenithAngle(),
                new Expected(
                    50.11162,
                    0.0045,
                    "°",
                    NREL,
                    "refraction is 0.0201° at sea level, as here, and 0.0163° in the example's"
                        + " thin air at 1830 m")),
            Check.closed(
                "azimuth at 12:30:30",
                noon.azimuth(),
                new Expected(
                    194.34024,
                    5e-4,
                    "°",
                    NREL,
                    "the algorithm is good to 0.0003°; parallax at 1830 m does the rest")),
            Check.closed(
                "azimuth at the printed transit, 11:46:05",
                transit.azimuth(),
                new Expected(180, 0.006, "°", NREL, "what the sun turns in a second")),
            Check.closed(
                "zenith angle at the printed sunrise, 06:12:43",
                rise.zenithAngle(),
                new Expected(
                    90.83337,
                    0.008,
                    "°",
                    NREL,
                    "printed to the second, in which the sun climbs by 0.0033°; refraction sets"
                        + " in just there"))));
  }
}
