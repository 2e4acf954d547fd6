package stenotherm.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.transit.Factor;
import stenotherm.transit.Variation;

/**
 * What is uncertain about a packing on a journey, and what of it goes together.
 *
 * <ul>
 *   <li>One number each for the conductivity of all walls, that of the fill, all surface films, the
 *       absorptance of the outside, leaking seams, how deep the parcel lies among others, the bench
 *       and the powder behind all warmers.
 *   <li>A strength for each warmer.
 *   <li>The error of the forecast of a place is one for all its legs.
 *   <li>Given the weather, the air of each leg has an error of its own and a part of one that all
 *       legs share, as from the season and the network: their correlation is a parameter.
 *   <li>What the model leaves out, see {@link UnmodelledEffect}, is one number each for all
 *       animals.
 *   <li>The numerical error.
 * </ul>
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Uncertainties {
  /** Correlation of the own errors of legs unless another is given [-]: assumed. */
  public static final double CORRELATION = 0.5;

  private static final Range CORRELATIONS = new Range(0, 1);

  private final List<UncertainQuantity> quantities;
  private final double widening;

  private Uncertainties(List<UncertainQuantity> quantities, double widening) {
    this.quantities = quantities;
    this.widening = widening;
  }

  /**
   * Finds what is uncertain.
   *
   * @param parcel the packing
   * @param journey the journey
   * @param ranges how the ranges are read
   * @return the uncertain quantities
   */
  public static Uncertainties of(Parcel parcel, Journey journey, Ranges ranges) {
    Checks.given("parcel", parcel);
    Checks.given("journey", journey);
    Uncertainties all =
        new Uncertainties(new ArrayList<>(), Checks.given("ranges", ranges).widening());
    all.addProperties(parcel, journey);
    all.addForecasts(journey);
    all.addAirOfLegs(journey, ranges.correlation());
    UnmodelledEffect.of(parcel).forEach(all::addEffect);
    double error = ranges.numericalError();
    if (error > 0) {
      all.add("numerical error", Law.NORMAL, (at, draft) -> draft.warmAnimals(at * error));
    }
    return all;
  }

  /**
   * How ranges are read.
   *
   * @param correlation correlation of the own errors of legs [-], 0 to 1
   * @param widening by how much all ranges are wider than stated [-], 1 as stated
   * @param numericalError error of the computed temperature of an animal, as a central 90 % [K]
   */
  public record Ranges(double correlation, double widening, double numericalError) {
    private static final Range WIDENINGS = new Range(0, 1.6);

    /**
     * Checks the numbers.
     *
     * @throws stenotherm.base.InvalidInputException if one is out of its range
     */
    public Ranges {
      Checks.within("correlation of legs", correlation, CORRELATIONS, "", "0 is none.");
      checkedWidening(widening);
      Checks.notNegative("numerical error", numericalError, "K");
    }

    private static double checkedWidening(double widening) {
      return Checks.within("widening of ranges", widening, WIDENINGS, "", "1 is as stated.");
    }

    /**
     * Ranges as stated.
     *
     * @param numericalError error of the computed temperature of an animal [K]
     * @return the ranges
     */
    public static Ranges stated(double numericalError) {
      return new Ranges(CORRELATION, 1, numericalError);
    }
  }

  /**
   * The same quantities in other ranges. A range widens on both sides of its middle; one that
   * begins where there is no effect, as of leaking seams or evaporation, widens at its other end
   * alone; a depth among other parcels cannot lie beyond its ends.
   *
   * @param other by how much they are wider than stated [-], 1 as stated
   * @return the changed quantities
   * @throws stenotherm.base.InvalidInputException if it is not within 0 and 1.6
   */
  public Uncertainties widened(double other) {
    return new Uncertainties(quantities, Ranges.checkedWidening(other));
  }

  private void add(String words, Law law, UncertainQuantity.Effect effect) {
    quantities.add(new UncertainQuantity(words, law, effect));
  }

  private void addProperties(Parcel parcel, Journey journey) {
    addFactor(Factor.WALL_CONDUCTIVITY, Law.NORMAL);
    addFactor(Factor.FILL_CONDUCTIVITY, Law.NORMAL);
    addFactor(Factor.SURFACE_FILM, Law.NORMAL);
    for (Factor factor :
        List.of(
            Factor.CUP_AIR,
            Factor.SEAMS,
            Factor.FOAM_DIFFUSIVITY,
            Factor.RATING_BENCH,
            Factor.REACTION,
            Factor.ACTIVATION_ENERGY,
            Factor.EVAPORATION,
            Factor.METABOLISM)) {
      // crude ranges: nothing says that their middle is likelier
      if (factor.matters(parcel, journey)) {
        addFactor(factor, Law.EVEN);
      }
    }
    if (Factor.STOWAGE.matters(parcel, journey)) {
      addFactor(Factor.STOWAGE, Law.BOUNDED);
    }
    if (Factor.SOLAR_ABSORPTANCE.matters(parcel, journey)) {
      addFactor(Factor.SOLAR_ABSORPTANCE, Law.NORMAL);
    }
    for (PlacedWarmer warmer : parcel.warmers()) {
      add(
          "strength of '" + warmer.name() + "'",
          Law.NORMAL,
          (at, draft) -> draft.placeWarmer(warmer.name(), at));
    }
  }

  private void addFactor(Factor factor, Law law) {
    add(factor.words(), law, (at, draft) -> draft.place(factor, at));
  }

  private void addForecasts(Journey journey) {
    Set<String> places = new TreeSet<>();
    journey.legs().forEach(leg -> places.add(leg.place().name()));
    for (String place : places) {
      List<Integer> there = new ArrayList<>();
      for (int leg = 0; leg < journey.legs().size(); leg++) {
        Leg each = journey.legs().get(leg);
        if (each.place().name().equals(place) && spread(each).outdoors() > 0) {
          there.add(leg);
        }
      }
      if (!there.isEmpty()) {
        add(
            "weather at " + place,
            Law.NORMAL,
            (at, draft) ->
                there.forEach(
                    leg -> draft.warmLeg(leg, at * spread(journey.legs().get(leg)).outdoors())));
      }
    }
  }

  private static AmbientSpread spread(Leg leg) {
    return leg.surroundings().spread();
  }

  private void addAirOfLegs(Journey journey, double correlation) {
    double common = Math.sqrt(correlation);
    double own = Math.sqrt(1 - correlation);
    List<Integer> uncertain = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      if (spread(journey.legs().get(leg)).own() > 0) {
        uncertain.add(leg);
      }
    }
    if (uncertain.isEmpty()) {
      return;
    }
    if (common > 0) {
      add(
          "how warm the whole way runs",
          Law.NORMAL,
          (at, draft) ->
              uncertain.forEach(
                  leg -> draft.warmLeg(leg, common * at * spread(journey.legs().get(leg)).own())));
    }
    for (int leg : uncertain) {
      double kelvin = own * spread(journey.legs().get(leg)).own();
      if (kelvin > 0) {
        add(
            "air during '" + journey.legs().get(leg).name() + "'",
            Law.NORMAL,
            (at, draft) -> draft.warmLeg(leg, at * kelvin));
      }
    }
  }

  private void addEffect(UnmodelledEffect effect) {
    Range kelvin = effect.kelvin();
    double middle = (kelvin.low() + kelvin.high()) / 2;
    double half = (kelvin.high() - kelvin.low()) / 2;
    // an end at which there is no effect stays where it is if ranges are widened
    boolean isOneSided = kelvin.low() == 0 || kelvin.high() == 0;
    double outwards = Math.abs(kelvin.high()) < Math.abs(kelvin.low()) ? -half : half;
    add(
        effect.words(),
        isOneSided ? Law.ONE_SIDED : Law.EVEN,
        (at, draft) -> draft.warmAnimals(middle + at * outwards));
  }

  /**
   * Returns what the quantities are called.
   *
   * @return the words, in the order of a point's coordinates
   */
  public List<String> words() {
    return quantities.stream().map(UncertainQuantity::words).toList();
  }

  /**
   * Returns runs spread over what is uncertain, for a model to learn from.
   *
   * @param count how many
   * @param seed seed of the points
   * @return the runs
   */
  public List<Variation> spread(int count, long seed) {
    // no study has a replicate of this number
    SobolPoints points = new SobolPoints(count(), seed, -1);
    double[] point = new double[count()];
    List<Variation> runs = new ArrayList<>();
    for (int index = 0; index < count; index++) {
      points.point(index, point);
      runs.add(at(point).variation());
    }
    return runs;
  }

  int count() {
    return quantities.size();
  }

  /** The run at a point, whose coordinates lie between 0 and 1. */
  Draft at(double[] point) {
    Draft draft = new Draft();
    for (int index = 0; index < quantities.size(); index++) {
      UncertainQuantity quantity = quantities.get(index);
      quantity.effect().act(quantity.law().position(point[index], widening), draft);
    }
    return draft;
  }
}
