package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;
import stenotherm.warmer.Warmers;

/** What is interpolated between runs is held against runs everywhere. */
class OddsMapTest {
  private static final StudySettings MANY = new StudySettings(16, 8, 1, 2);
  private static final AssessmentSettings SETTINGS =
      new AssessmentSettings(
          new TransitSettings(Packings.FEW_CELLS, Times.HOUR, IntegratorSettings.standard()),
          2 * Times.HOUR,
          MANY);

  private static final Range LOWS = new Range(255, 303);
  private static final OddsMap.Extent EXTENT = new OddsMap.Extent(LOWS, LOWS, 5);

  private static class Quiet implements OddsMap.Listener {
    private final List<FirstLook> looks = new ArrayList<>();

    @Override
    public Signal progress(double done, double total) {
      return Signal.CONTINUE;
    }

    @Override
    public void firstLooks(List<Double> lows, List<FirstLook> first) {
      looks.addAll(first);
    }
  }

  private static Parcel warmed() {
    return Packings.warmed(List.of(Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped())));
  }

  /** A night at either end, the days 8 K warmer than the nights. */
  private static Journey nights(Lows lows) {
    return nights(lows, 3);
  }

  private static Journey nights(Lows lows, double spread) {
    return new Journey(
        LocalDateTime.of(2026, 1, 31, 20, 0),
        295,
        List.of(
            night("here", lows.origin(), 8, spread),
            night("there", lows.destination(), 10, spread)));
  }

  private static Leg night(String place, double low, double hours, double spread) {
    return new Leg(
        "night " + place,
        new Place(place, ZoneOffset.UTC),
        hours * Times.HOUR,
        new DailyExtremes(
            -44 * Times.HOUR,
            List.of(
                new Range(low, low + 8),
                new Range(low, low + 8),
                new Range(low, low + 8),
                new Range(low, low + 8)),
            DiurnalShape.SOLAR_TIME),
        spread,
        FaceFilms.indoors(),
        Source.assumed("made up"));
  }

  /** One for all tests: immutable. */
  private static OddsMap withWarmer;

  @BeforeAll
  static void mapOne() {
    // no constant: its threads would wait for the class that waits for them
    withWarmer = map(warmed());
  }

  private static OddsMap map(Parcel parcel) {
    return OddsMap.of(parcel, EXTENT, OddsMapTest::nights, SETTINGS, new Quiet());
  }

  /** The same journeys run at the lows themselves, on a packing made ready for the same span. */
  private static Function<Lows, JourneyOdds> direct(Parcel parcel) {
    double middle = (LOWS.low() + LOWS.high()) / 2;
    Outlook outlook =
        Outlook.of(
            parcel,
            List.of(
                nights(Lows.equal(middle)),
                nights(Lows.equal(LOWS.low())),
                nights(new Lows(LOWS.low(), LOWS.high())),
                nights(new Lows(LOWS.high(), LOWS.low())),
                nights(Lows.equal(LOWS.high()))),
            SETTINGS,
            ProgressListener.NONE);
    return lows -> {
      Journey journey = nights(lows);
      return JourneyOdds.count(outlook.study(journey).fates(MANY), MANY, journey.duration());
    };
  }

  @Test
  void oddsAndLinesAreThoseOfRunsEverywhere() {
    Parcel parcel = warmed();
    OddsMap map = withWarmer;
    Function<Lows, JourneyOdds> direct = direct(parcel);
    // between four nodes, but not in their middle, where all weigh the same
    int side = EXTENT.side() - 1;
    double apart = (LOWS.high() - LOWS.low()) / side;
    double largest = 0;
    int uncertain = 0;
    for (int i = 0; i < side; i++) {
      for (int j = 0; j < side; j++) {
        Lows lows = new Lows(LOWS.low() + (i + 0.5) * apart, LOWS.low() + (j + 0.25) * apart);
        JourneyOdds there = direct.apply(lows);
        JourneyOdds here = map.odds(lows);
        double share = there.within().within();
        uncertain += share > 0.05 && share < 0.95 ? 1 : 0;
        largest = Math.max(largest, Math.abs(share - here.within().within()));
        assertEquals(there.tooCold(), here.tooCold(), 0.04);
        assertEquals(there.tooHot(), here.tooHot(), 0.04);
        assertEquals(there.shortOfAir(), here.shortOfAir(), 0.04);
        assertEquals(there.burnt(), here.burnt(), 0.04);
      }
    }
    assertTrue(uncertain >= 3, uncertain + " lows tell something");
    assertTrue(largest <= 0.04, largest + " beside runs");
    assertTrue(map.error() <= 0.04, map.error() + " told");
    Lows from = Lows.equal(LOWS.low());
    Lows to = Lows.equal(LOWS.high());
    for (Level level : List.of(Level.LIKELY, Level.GAMBLE)) {
      List<Range> stretches = map.stretches(level, from, to);
      assertFalse(stretches.isEmpty(), level.words());
      for (Range stretch : stretches) {
        for (double end : new double[] {stretch.low(), stretch.high()}) {
          // half a kelvin on either side of a line, runs are on the sides that it says
          double kelvin = 0.5 / (LOWS.high() - LOWS.low());
          boolean isLow = end == stretch.low();
          if (end > 0 && end < 1) {
            Level below = direct.apply(from.towards(to, end - kelvin)).level();
            Level above = direct.apply(from.towards(to, end + kelvin)).level();
            assertTrue((isLow ? below : above).compareTo(level) > 0, level + " at " + end);
            assertTrue((isLow ? above : below).compareTo(level) <= 0, level + " at " + end);
          }
        }
      }
    }
  }

  @Test
  void aWarmerIsOvertakenWhereItIsTooWarm() {
    OddsMap with = withWarmer;
    OddsMap without = map(warmed().withoutWarmers());
    Lows cold = Lows.equal(LOWS.low());
    Lows hot = Lows.equal(LOWS.high());
    double share = with.overtaken(without, cold, hot).orElseThrow();
    Lows above = cold.towards(hot, Math.min(1, share + 0.03));
    Lows below = cold.towards(hot, share - 0.06);
    assertTrue(
        without.odds(above).within().within() > with.odds(above).within().within(), above + "");
    assertTrue(
        without.odds(below).within().within() <= with.odds(below).within().within(), below + "");
    assertTrue(without.overtaken(with, cold, hot).isEmpty());
  }

  @Test
  void typicalJourneysComeFirstAndWorkCanBeStopped() {
    Quiet stopping =
        new Quiet() {
          @Override
          public Signal progress(double done, double total) {
            return Signal.STOP;
          }
        };
    assertThrows(
        CancellationException.class,
        () -> OddsMap.of(warmed(), EXTENT, OddsMapTest::nights, SETTINGS, stopping));
    assertTrue(stopping.looks.get(0).coldest() < stopping.looks.get(8).coldest());
  }

  @Test
  void journeysMustBeAlike() {
    Function<Lows, Journey> longer =
        lows -> nights(lows).delayed(0, lows.origin() > 270 ? Times.HOUR : 0);
    Function<Lows, Journey> surer = lows -> nights(lows, lows.destination() > 290 ? 0 : 3);
    OddsMap.Extent few = new OddsMap.Extent(LOWS, LOWS, 2);
    Quiet working = new Quiet();
    InvalidInputException hours =
        assertThrows(
            InvalidInputException.class,
            () -> OddsMap.of(warmed(), few, longer, SETTINGS, working));
    assertTrue(String.valueOf(hours.getMessage()).contains("must all last as long"));
    InvalidInputException ranges =
        assertThrows(
            InvalidInputException.class, () -> OddsMap.of(warmed(), few, surer, SETTINGS, working));
    assertTrue(String.valueOf(ranges.getMessage()).contains("the same uncertain quantities"));
    assertTrue(working.looks.isEmpty(), "told before any run");
    assertThrows(InvalidInputException.class, () -> new OddsMap.Extent(LOWS, LOWS, 1));
    assertThrows(
        InvalidInputException.class, () -> new OddsMap.Extent(LOWS, new Range(280, 280), 5));
  }
}
