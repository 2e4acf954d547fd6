package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Stowage;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.transit.Factor;
import stenotherm.transit.Variation;
import stenotherm.warmer.Warmers;

class UncertaintiesTest {
  private static final int RUNS = 4096;
  private static final Place HOME = new Place("home", ZoneOffset.UTC);
  private static final Place AWAY = new Place("away", ZoneOffset.UTC);

  /** Porch and van at home, a hub and a porch away, and a room whose air is known. */
  private static final Journey JOURNEY =
      journey(
          leg("porch", HOME, 0, 3),
          leg("van", HOME, 2, 3),
          leg("hub", AWAY, 4, 0),
          leg("far porch", AWAY, 0, 5),
          leg("room", AWAY, 0, 0));

  private static Journey journey(Leg... legs) {
    return new Journey(LocalDateTime.of(2026, 1, 5, 18, 0), 294, List.of(legs));
  }

  private static Leg leg(String name, Place place, double own, double outdoors) {
    return leg(name, place, own, outdoors, Stowage.ALONE);
  }

  private static Leg leg(String name, Place place, double own, double outdoors, Stowage stowage) {
    Surroundings alone = Surroundings.of(Ambient.constant(280), 0, FaceFilms.indoors());
    return new Leg(
        name,
        place,
        4 * Times.HOUR,
        new Surroundings(
            alone.ambient(),
            new AmbientSpread(own, outdoors),
            alone.films(),
            stowage,
            alone.orientation(),
            0,
            alone.sunshine(),
            List.of()),
        Source.assumed("made up"));
  }

  private static Parcel twoWarmers() {
    return Packings.warmed(
        List.of(
            new PlacedWarmer("left", Packings.steady(1), Face.X_MIN, Mounting.taped(), 0),
            new PlacedWarmer("right", Packings.steady(1), Face.X_MAX, Mounting.taped(), 0)));
  }

  private static Parcel unfilled(Filling air) {
    return new Parcel(
        "bare",
        Packings.OUTER,
        Packings.WALLS,
        air,
        List.of(Packings.cup("cup", Position.MIDDLE_OF_FLOOR)),
        List.of(),
        List.of());
  }

  private static Uncertainties of(Parcel parcel, double correlation, double error) {
    return Uncertainties.of(parcel, JOURNEY, new Uncertainties.Ranges(correlation, 1, error));
  }

  /** One value of each of many runs. */
  private static double[] runs(Uncertainties all, ToDoubleFunction<Draft> value) {
    SobolPoints points = new SobolPoints(all.count(), 5, 0);
    double[] point = new double[all.count()];
    double[] values = new double[RUNS];
    for (int run = 0; run < RUNS; run++) {
      points.point(run, point);
      values[run] = value.applyAsDouble(all.at(point));
    }
    return values;
  }

  private static double[] ofLeg(Uncertainties all, int leg) {
    return runs(all, draft -> draft.variation().legs().getOrDefault(leg, 0.0));
  }

  private static double covariance(double[] one, double[] other) {
    double mean = Arrays.stream(one).average().orElseThrow();
    double otherMean = Arrays.stream(other).average().orElseThrow();
    double sum = 0;
    for (int run = 0; run < one.length; run++) {
      sum += (one[run] - mean) * (other[run] - otherMean);
    }
    return sum / one.length;
  }

  private static double deviation(double[] values) {
    return Math.sqrt(covariance(values, values));
  }

  private static double correlation(double[] one, double[] other) {
    return covariance(one, other) / deviation(one) / deviation(other);
  }

  /** A point in the middle of everything but one quantity. */
  private static Draft only(Uncertainties all, String words, double share) {
    double[] point = new double[all.count()];
    Arrays.fill(point, 0.5);
    int index = all.words().indexOf(words);
    assertTrue(index >= 0, words + " in " + all.words());
    point[index] = share;
    return all.at(point);
  }

  @Test
  void aRangeIsTheCentralNinetyPercentOfANormalDistribution() {
    assertEquals(-1, Law.NORMAL.position(0.05, 1), 1e-5);
    assertEquals(0, Law.NORMAL.position(0.5, 1), 1e-12);
    assertEquals(1, Law.NORMAL.position(0.95, 1), 1e-5);
    // one standard deviation
    assertEquals(1 / 1.6448536, Law.NORMAL.position(0.841344746, 1), 1e-5);
    for (double share : new double[] {1e-12, 1 - 1e-12}) {
      double farthest = Law.NORMAL.position(share, 1.5);
      assertTrue(Math.abs(farthest) > 4.4 && Math.abs(farthest) < Variation.MOST);
    }
  }

  @Test
  void lawsWidenWhatMayBeWider() {
    for (double share : new double[] {0.02, 0.3, 0.5, 0.77}) {
      assertEquals(1.5 * Law.NORMAL.position(share, 1), Law.NORMAL.position(share, 1.5), 1e-12);
      assertEquals(2 * share - 1, Law.ONE_SIDED.position(share, 1), 1e-12);
      // from the end where the effect is absent
      assertEquals(
          1.5 * (Law.ONE_SIDED.position(share, 1) + 1),
          Law.ONE_SIDED.position(share, 1.5) + 1,
          1e-12);
      assertEquals(2 * share - 1, Law.BOUNDED.position(share, 1), 1e-12);
      assertEquals(2 * share - 1, Law.BOUNDED.position(share, 1.5), 1e-12);
    }
  }

  @Test
  void theVarianceOfALegDoesNotDependOnTheCorrelation() {
    // stated ranges are 1.645 standard deviations
    double normal = 1 / 1.6448536;
    for (double correlation : new double[] {0, 0.5, 1}) {
      Uncertainties all = of(Packings.plain(), correlation, 0);
      assertEquals(3 * normal, deviation(ofLeg(all, 0)), 0.03);
      assertEquals(Math.hypot(2, 3) * normal, deviation(ofLeg(all, 1)), 0.05);
      assertEquals(4 * normal, deviation(ofLeg(all, 2)), 0.05);
      assertEquals(0, deviation(ofLeg(all, 4)));
    }
  }

  @Test
  void ownErrorsOfTwoLegsGoTogetherAsStated() {
    for (double correlation : new double[] {0, 0.5, 1}) {
      Uncertainties all =
          Uncertainties.of(
              Packings.plain(),
              journey(leg("hold", HOME, 4, 0), leg("hub", AWAY, 2, 0)),
              new Uncertainties.Ranges(correlation, 1, 0));
      assertEquals(correlation, correlation(ofLeg(all, 0), ofLeg(all, 1)), 0.02);
    }
  }

  @Test
  void theWeatherOfAPlaceIsOneForAllItsLegs() {
    Uncertainties all = of(Packings.plain(), 0, 0);
    Map<Integer, Double> home = only(all, "weather at home", 0.95).variation().legs();
    assertEquals(3, home.get(0), 1e-4);
    assertEquals(3, home.get(1), 1e-4);
    assertFalse(home.getOrDefault(3, 0.0) > 1e-9, "other places have their own weather");
    assertEquals(0, correlation(ofLeg(all, 0), ofLeg(all, 3)), 0.02);
    // 9 of the 13 K2 of the van's variance are the weather's
    assertEquals(3 / Math.hypot(2, 3), correlation(ofLeg(all, 0), ofLeg(all, 1)), 0.02);
  }

  @Test
  void warmersHaveTheirOwnStrengths() {
    Uncertainties all = of(twoWarmers(), 0.5, 0);
    double[] left = runs(all, draft -> draft.variation().warmers().get("left"));
    double[] right = runs(all, draft -> draft.variation().warmers().get("right"));
    assertEquals(0, correlation(left, right), 0.02);
    assertEquals(1 / 1.6448536, deviation(left), 0.01);
    assertEquals(1 / 1.6448536, deviation(right), 0.01);
  }

  @Test
  void everyRunIsOneThatModelsTake() {
    Uncertainties wide = of(twoWarmers(), 0.5, 0.3).widened(1.5);
    runs(wide, draft -> draft.variation().of(Factor.SEAMS));
    for (double corner : new double[] {0, Math.nextDown(1.0)}) {
      double[] point = new double[wide.count()];
      Arrays.fill(point, corner);
      wide.at(point).variation();
    }
    assertEquals(12, wide.spread(12, 1).size());
    assertThrows(InvalidInputException.class, () -> new Uncertainties.Ranges(1.1, 1, 0));
    assertThrows(InvalidInputException.class, () -> new Uncertainties.Ranges(0.5, 2, 0));
    assertThrows(InvalidInputException.class, () -> wide.widened(2));
    assertThrows(InvalidInputException.class, () -> new Uncertainties.Ranges(0.5, 1, -1));
  }

  @Test
  void widerRangesReachHalfAsFarAgain() {
    Uncertainties stated = of(twoWarmers(), 0.5, 0.3);
    Uncertainties wider = stated.widened(1.5);
    for (int leg = 0; leg < 4; leg++) {
      assertEquals(1.5 * deviation(ofLeg(stated, leg)), deviation(ofLeg(wider, leg)), 1e-9);
    }
    double[] film = runs(stated, draft -> draft.variation().of(Factor.SURFACE_FILM));
    double[] widerFilm = runs(wider, draft -> draft.variation().of(Factor.SURFACE_FILM));
    assertEquals(1.5 * deviation(film), deviation(widerFilm), 1e-9);
    assertEquals(stated.words(), wider.words());
  }

  /** Crude ranges lie evenly between their ends; what is not there is not uncertain. */
  @Test
  void airAndWhatAnimalsDoLieEvenlyInTheirRanges() {
    Uncertainties all = of(Packings.plain(), 0.5, 0);
    for (Factor factor :
        List.of(
            Factor.SEAMS,
            Factor.FOAM_DIFFUSIVITY,
            Factor.EVAPORATION,
            Factor.METABOLISM,
            Factor.CUP_AIR)) {
      for (double share : new double[] {0, 0.25, 0.5, 1}) {
        double position = only(all, factor.words(), share).variation().of(factor);
        assertEquals(2 * share - 1, position, 1e-12, factor.words());
      }
    }
    Parcel taped = Packings.plain().withOpenings(new Openings(0, List.of()));
    assertFalse(of(taped, 0.5, 0).words().contains(Factor.SEAMS.words()));
    // no iron: a power that is prescribed has no reaction, and no bench behind it
    Parcel iron =
        Packings.warmed(List.of(Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped())));
    Uncertainties burning = of(iron, 0.5, 0);
    for (Factor factor : List.of(Factor.REACTION, Factor.ACTIVATION_ENERGY, Factor.RATING_BENCH)) {
      assertEquals(0.5, only(burning, factor.words(), 0.75).variation().of(factor), 1e-12);
      assertFalse(of(twoWarmers(), 0.5, 0).words().contains(factor.words()));
    }
  }

  @Test
  void depthIsUncertainAmongOthersOnly() {
    assertFalse(of(Packings.plain(), 0.5, 0).words().contains(Factor.STOWAGE.words()));
    Uncertainties stowed =
        Uncertainties.of(
            Packings.plain(),
            journey(leg("hub", HOME, 1, 0, Stowage.AMONG_OTHERS)),
            Uncertainties.Ranges.stated(0));
    assertEquals(
        1, only(stowed.widened(1.5), Factor.STOWAGE.words(), 1).variation().of(Factor.STOWAGE));
  }

  /** The ends of each effect, and what is not computed of a packing without a warmer. */
  @Test
  void whatTheModelLeavesOutMovesAnimals() {
    Uncertainties all = of(twoWarmers(), 0.5, 0);
    double middle = only(all, UnmodelledEffect.CONTACT.words(), 0.5).shift();
    List<UnmodelledEffect> effects = UnmodelledEffect.of(twoWarmers());
    for (UnmodelledEffect effect : effects) {
      double one = only(all, effect.words(), 0).shift() - middle;
      double other = only(all, effect.words(), 1).shift() - middle;
      double half = (effect.kelvin().high() - effect.kelvin().low()) / 2;
      assertEquals(half, Math.max(one, other), 1e-12, effect.words());
      assertEquals(-half, Math.min(one, other), 1e-12, effect.words());
    }
    double centre =
        effects.stream()
            .mapToDouble(each -> (each.kelvin().low() + each.kelvin().high()) / 2)
            .sum();
    assertEquals(centre, middle, 1e-12);
    List<String> bare = of(Packings.plain(), 0.5, 0).words();
    assertFalse(bare.contains(UnmodelledEffect.CONTACT.words()));
  }

  /** Both ends of a warmer's contact are assumed: it may be colder and warmer by more. */
  @Test
  void anEffectToEitherSideWidensAtBothEnds() {
    Uncertainties all = of(twoWarmers(), 0.5, 0);
    String air = UnmodelledEffect.CONTACT.words();
    Uncertainties wider = all.widened(1.5);
    double middle = only(wider, air, 0.5).shift();
    for (double end : new double[] {0, 1}) {
      double stated = only(all, air, end).shift() - only(all, air, 0.5).shift();
      assertEquals(1.5 * stated, only(wider, air, end).shift() - middle, 1e-9);
    }
  }

  /** A solid in place of air and radiation is off to either side, more so between foil. */
  @Test
  void anUnfilledCavityIsUncertainByItsModel() {
    String air = "air and radiation in a cavity without fill";
    assertFalse(of(Packings.plain(), 0.5, 0).words().contains(air));
    for (double emissivity : new double[] {0.9, 0.05}) {
      Parcel bare = unfilled(new Filling.Unfilled(emissivity, 0));
      Uncertainties all = of(bare, 0.5, 0);
      double error = emissivity < 0.5 ? 1.9 : 1.7;
      double middle = only(all, air, 0.5).shift();
      assertEquals(error, only(all, air, 1).shift() - middle, 1e-9);
      assertEquals(-error, only(all, air, 0).shift() - middle, 1e-9);
    }
  }

  @Test
  void theNumericalErrorIsUncertainToo() {
    Uncertainties all = of(Packings.plain(), 0.5, 0.4);
    double middle = only(all, "numerical error", 0.5).shift();
    assertEquals(0.4, only(all, "numerical error", 0.95).shift() - middle, 1e-5);
    assertEquals(-0.4, only(all, "numerical error", 0.05).shift() - middle, 1e-5);
    assertFalse(of(Packings.plain(), 0.5, 0).words().contains("numerical error"));
  }
}
