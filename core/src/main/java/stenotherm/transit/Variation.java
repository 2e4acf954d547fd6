package stenotherm.transit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import stenotherm.base.Checks;
import stenotherm.base.End;
import stenotherm.base.Range;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.warmer.WarmerClass;

/**
 * Where the uncertain quantities of a run lie. What is not named is nominal.
 *
 * <p>Each quantity has a position in its stated range: -1 at the low end, 0 nominal, 1 at the high
 * end, see {@link Range#at}. Warmers may have a strength of their own. On top of the position, air
 * and neighbours may be warmer by some kelvins: everywhere, in all legs at a place, or in one leg;
 * these add up.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param positions position of each quantity in its range [-], -{@value #MOST} to {@value #MOST}
 * @param warmers position of the strength of single warmers [-], by name, instead of that of {@link
 *     Factor#WARMER_STRENGTH}
 * @param offset how much warmer the air is everywhere [K]
 * @param places how much warmer it is in all legs at a place, by the place's name [K]
 * @param legs how much warmer it is in a leg, by the leg's position in the journey, counted from 0
 *     [K]
 */
public record Variation(
    Map<Factor, Double> positions,
    Map<String, Double> warmers,
    double offset,
    Map<String, Double> places,
    Map<Integer, Double> legs) {
  /** The farthest position from nominal. */
  public static final double MOST = 5;

  /** Possible offsets [K]. */
  private static final Range OFFSETS = new Range(-100, 100);

  private static final Range POSITIONS = new Range(-MOST, MOST);

  /** Nothing varied. */
  public static final Variation NOMINAL = new Variation(Map.of(), Map.of(), 0, Map.of(), Map.of());

  /**
   * Copies the maps.
   *
   * @throws stenotherm.base.InvalidInputException if a position is farther than {@value #MOST} from
   *     0, or an offset farther than 100 K
   */
  public Variation {
    Checks.given("positions", positions);
    Checks.given("warmers", warmers);
    Checks.given("places", places);
    Checks.given("legs", legs);
    Map<Factor, Double> copy = new EnumMap<>(Factor.class);
    copy.putAll(positions);
    copy.forEach((factor, position) -> checkedPosition(factor.words(), position));
    warmers.forEach(
        (warmer, position) -> checkedPosition("strength of '" + warmer + "'", position));
    positions = Collections.unmodifiableMap(copy);
    warmers = Collections.unmodifiableMap(new LinkedHashMap<>(warmers));
    checkedOffset("ambient offset", offset);
    places.forEach((place, kelvin) -> checkedOffset("ambient offset at '" + place + "'", kelvin));
    legs.forEach((leg, kelvin) -> checkedOffset("ambient offset of leg " + leg, kelvin));
    places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
    legs = Collections.unmodifiableMap(new LinkedHashMap<>(legs));
  }

  private static void checkedPosition(String of, double position) {
    Checks.within(
        "position of " + of,
        position,
        POSITIONS,
        "",
        "A position is not a value: -1 is the low end of the range, 1 the high end.");
  }

  private static void checkedOffset(String of, double kelvin) {
    Checks.within(of, kelvin, OFFSETS, "K", "It is a difference of temperatures.");
  }

  /**
   * The same variation with one more quantity away from nominal.
   *
   * @param factor the quantity
   * @param position its position [-]
   * @return the changed variation
   * @throws stenotherm.base.InvalidInputException if the position is out of its range
   */
  public Variation with(Factor factor, double position) {
    Map<Factor, Double> changed = new EnumMap<>(Factor.class);
    changed.putAll(positions);
    changed.put(Checks.given("factor", factor), position);
    return new Variation(changed, warmers, offset, places, legs);
  }

  /**
   * The same variation with one more quantity at an end.
   *
   * @param factor the quantity
   * @param end which end
   * @return the changed variation
   */
  public Variation with(Factor factor, End end) {
    return with(factor, Checks.given("end", end).position());
  }

  /**
   * The same variation with a strength of its own for a warmer.
   *
   * @param warmer name of the warmer
   * @param position its position [-]
   * @return the changed variation
   * @throws stenotherm.base.InvalidInputException if the position is out of its range
   */
  public Variation withWarmer(String warmer, double position) {
    Map<String, Double> changed = new LinkedHashMap<>(warmers);
    changed.put(Checks.given("warmer", warmer), position);
    return new Variation(positions, changed, offset, places, legs);
  }

  /**
   * The same variation in air that is warmer everywhere.
   *
   * @param kelvin by how much, instead of the present offset [K]
   * @return the changed variation
   * @throws stenotherm.base.InvalidInputException if it is more than 100 K
   */
  public Variation withOffset(double kelvin) {
    return new Variation(positions, warmers, kelvin, places, legs);
  }

  /**
   * The same variation with air that is warmer in all legs at a place.
   *
   * @param place name of the place
   * @param kelvin by how much [K]
   * @return the changed variation
   * @throws stenotherm.base.InvalidInputException if it is more than 100 K
   */
  public Variation withOffsetAt(String place, double kelvin) {
    Map<String, Double> changed = new LinkedHashMap<>(places);
    changed.put(Checks.given("place", place), kelvin);
    return new Variation(positions, warmers, offset, changed, legs);
  }

  /**
   * The same variation with air that is warmer in one leg.
   *
   * @param leg position of the leg in the journey, counted from 0
   * @param kelvin by how much [K]
   * @return the changed variation
   * @throws stenotherm.base.InvalidInputException if it is more than 100 K
   */
  public Variation withOffsetIn(int leg, double kelvin) {
    Map<Integer, Double> changed = new LinkedHashMap<>(legs);
    changed.put(leg, kelvin);
    return new Variation(positions, warmers, offset, places, changed);
  }

  /**
   * Returns the position of a quantity.
   *
   * @param factor the quantity
   * @return its position [-], 0 if it is not varied
   */
  public double of(Factor factor) {
    return positions.getOrDefault(factor, 0.0);
  }

  /** Position of the strength of a warmer. */
  double ofWarmer(String warmer) {
    return warmers.getOrDefault(warmer, of(Factor.WARMER_STRENGTH));
  }

  /** Factor on the power of a warmer, and on its film and iron if it has them [-]. */
  double power(PlacedWarmer placed) {
    WarmerClass kind = placed.warmer();
    return kind.strengthAt(ofWarmer(placed.name())) * kind.benchAt(of(Factor.RATING_BENCH));
  }

  /** How much warmer the air of a leg is than stated, apart from its spread [K]. */
  double offset(int leg, String place) {
    return offset + places.getOrDefault(place, 0.0) + legs.getOrDefault(leg, 0.0);
  }

  /** Tells whether what conducts heat is varied. */
  boolean movesProperties() {
    return positions.keySet().stream().anyMatch(Factor::changesConduction);
  }
}
