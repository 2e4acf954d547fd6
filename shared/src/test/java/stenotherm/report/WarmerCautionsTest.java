package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.material.Materials;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.WallLayer;
import stenotherm.scenario.ScenarioReader;
import stenotherm.warmer.IronPowder;
import stenotherm.words.Figures;

/** What reports say of a warmer that may tip over, is spent, or lacks air. */
class WarmerCautionsTest {
  private static final Parcel PARCEL =
      ScenarioReader.read(
              "test.yaml",
              """
              format: 1
              title: test
              animal: leopard gecko, 40 g
              cup: 110 x 80 x 60 mm
              journey: overnight by air, 2 to 9 °C
              packings:
                - {name: box, box: 12 x 9 x 8 in, foam: EPS 20 19 mm, fill: shredded paper, warmer: 40 h on lid}
              """)
          .packings()
          .get(0);

  private static final double HOUR = 3600;

  private static List<String> of(
      IronPowder.LimitedBy limit, Optional<Double> spent, double tipping) {
    PlacedWarmer warmer = PARCEL.warmers().get(0);
    Climate.WarmerCourse course =
        new Climate.WarmerCourse(
            warmer, 2, 20 * HOUR, 320, Map.of(limit, 20 * HOUR), spent, tipping);
    List<String> all = new ArrayList<>();
    ClimateWords.ofWarmer(PARCEL, 24 * HOUR, course, all);
    return all;
  }

  /** A gain near 1 is told, one that is far from it is not. */
  @Test
  void aWarmerNearTippingIsTold() {
    assertEquals(List.of(), of(IronPowder.LimitedBy.KINETICS, Optional.empty(), 0.79));
    assertEquals(
        List.of(
            "The warmer may tip over: a little more cold and it goes out, a little more warmth or"
                + " air and it runs away to a hotter state."),
        of(IronPowder.LimitedBy.KINETICS, Optional.empty(), 0.81));
  }

  @Test
  void aSpentWarmerAndOneWithoutAirAreTold() {
    assertEquals(
        List.of("The warmer is spent after 18.0 h, 6.0 h before opening."),
        of(IronPowder.LimitedBy.FILM, Optional.of(18 * HOUR), 0));
    List<String> airless = of(IronPowder.LimitedBy.OXYGEN, Optional.empty(), 0);
    assertEquals(1, airless.size());
    assertTrue(airless.get(0).startsWith("The warmer lacks air most of the time"));
  }

  /** Foam of another kind bears more, and so does foam that the warmer does not touch. */
  @Test
  void foamThatMaySoftenIsTold() {
    Words words = new Words(Figures.METRIC, true);
    String told = Cautions.softening(PARCEL, fromCelsius(83), words).orElseThrow();
    assertTrue(told.contains("against the foam, has 83 °C: polystyrene foam softens"), told);
    assertTrue(Cautions.softening(PARCEL, fromCelsius(79), words).isEmpty());
    PlacedWarmer warmer = PARCEL.warmers().get(0);
    for (Parcel other :
        List.of(
            PARCEL.withWalls(
                PARCEL.walls().with(Face.Z_MAX, List.of(new WallLayer(Materials.PIR, 0.019)))),
            PARCEL.withoutWarmers(),
            PARCEL.withWarmers(
                List.of(
                    warmer.at(new Placement.OnFace(Face.Z_MAX, 0, 0, new Mounting(0.01, 0))))))) {
      assertTrue(Cautions.softening(other, fromCelsius(83), words).isEmpty(), other::toString);
    }
  }
}
