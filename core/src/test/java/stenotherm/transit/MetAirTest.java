package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Stowage;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;

/** What a parcel meets leg by leg, alone and among others. */
class MetAirTest {
  private static final double HOUR = Times.HOUR;
  private static final Place HOME = new Place("home", ZoneOffset.UTC);

  /** In a van, among others in a hub and a hold, on a porch. */
  private static final Journey JOURNEY =
      new Journey(
          LocalDateTime.of(2026, 1, 5, 18, 0),
          294,
          List.of(
              leg("van", 288, Stowage.ALONE),
              leg("hub", 280, Stowage.AMONG_OTHERS),
              leg("hold", 295, Stowage.AMONG_OTHERS),
              leg("porch", 270, Stowage.ALONE)));

  private static Leg leg(String name, double ambient, Stowage stowage) {
    Surroundings alone = Surroundings.of(Ambient.constant(ambient), 4, FaceFilms.indoors());
    return new Leg(
        name,
        HOME,
        4 * HOUR,
        new Surroundings(
            alone.ambient(),
            alone.spread(),
            alone.films(),
            stowage,
            alone.orientation(),
            0,
            alone.sunshine(),
            List.of()),
        Source.assumed("made up"));
  }

  private static double at(MetAir met, double hours) {
    return met.course().at(hours * HOUR) + met.shift();
  }

  private static Variation depth(double position) {
    return Variation.NOMINAL.with(Factor.STOWAGE, position);
  }

  @Test
  void aPileForgetsExponentiallyWhatItMetBefore() {
    for (double position : new double[] {-0.6, 0, 0.8}) {
      List<MetAir> met = MetAir.of(JOURNEY, depth(position));
      double lag = Stowage.AMONG_OTHERS.lag(Stowage.depth((1 + position) / 2)) / HOUR;
      double hub = 280 + 8 * Math.exp(-4 / lag);
      assertEquals(280 + 8 * Math.exp(-1.5 / lag), at(met.get(1), 5.5), 1e-9);
      assertEquals(hub, met.get(1).before(8 * HOUR), 1e-9);
      assertEquals(295 + (hub - 295) * Math.exp(-3 / lag), at(met.get(2), 11), 1e-9);
    }
  }

  /** A pile takes its temperature from one leg to the next, also where the air is warmer. */
  @Test
  void whatAPileMeetsHasNoJumps() {
    Variation warm = depth(0.3).with(Factor.AMBIENT, 1).withOffsetIn(2, -7);
    List<MetAir> met = MetAir.of(JOURNEY, warm);
    for (int leg = 1; leg <= 2; leg++) {
      assertEquals(met.get(leg - 1).before(4 * leg * HOUR), at(met.get(leg), 4 * leg), 1e-9);
    }
    // the van is 4 K warmer; the porch, alone, is what its air is at once
    assertEquals(292, at(met.get(0), 3), 1e-9);
    assertEquals(274, at(met.get(3), 12), 1e-9);
    assertTrue(Math.abs(met.get(2).before(12 * HOUR) - 274) > 1);
  }

  @Test
  void atTheOutsideOfThePileItMeetsTheAir() {
    List<MetAir> met = MetAir.of(JOURNEY, depth(-1));
    for (int leg = 0; leg < 4; leg++) {
      assertSame(JOURNEY.legs().get(leg).surroundings().ambient(), met.get(leg).course());
      assertEquals(0, met.get(leg).shift());
    }
  }

  @Test
  void theDeeperTheLaterItFollows() {
    double last = 280;
    for (double position = -1; position <= 1; position += 0.25) {
      double met = at(MetAir.of(JOURNEY, depth(position)).get(1), 6);
      assertTrue(met > last - 1e-12 && met < 288, met + " K at " + position);
      last = met;
    }
    assertTrue(last > 287);
    assertThrows(InvalidInputException.class, () -> MetAir.of(JOURNEY, depth(1.01)));
  }

  /** The first leg finds the pile at the temperature of its air, shift and all. */
  @Test
  void aFirstPileIsAsWarmAsItsAir() {
    Journey hub =
        new Journey(
            LocalDateTime.of(2026, 1, 5, 18, 0),
            294,
            List.of(leg("hub", 280, Stowage.AMONG_OTHERS)));
    MetAir met = MetAir.of(hub, depth(0.5).with(Factor.AMBIENT, -1)).get(0);
    assertEquals(276, at(met, 0), 1e-9);
    assertEquals(276, at(met, 3.9), 1e-9);
  }
}
