package stenotherm.study;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Suggestions;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;

/**
 * How many journeys of a packing went.
 *
 * <p>An animal stays within what it tolerates if the running mean of its temperature stays within
 * its alarm band, and each moment within its critical limits. Its temperature is the mean over its
 * body.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class StudyResult {
  private static final Range SHARES = new Range(0, 1);

  private final List<String> cups;
  private final List<Tolerance> tolerances;
  private final double[] times;
  private final double opening;
  private final StudySettings settings;
  private final Tally tally;

  /** Fitted once: a report asks for them row by row. */
  private final Optional<Apportioned> sharesOfCold;

  private final Optional<Apportioned> sharesOfHot;

  StudyResult(
      Parcel parcel,
      double[] times,
      double opening,
      StudySettings settings,
      Tally tally,
      Margins margins,
      Uncertainties uncertainties) {
    this.cups = parcel.occupied().stream().map(Container::name).toList();
    this.tolerances = JourneyStudy.tolerances(parcel);
    this.times = times.clone();
    this.opening = opening;
    this.settings = settings;
    this.tally = tally;
    this.sharesOfCold = apportioned(margins.fit(true), uncertainties.words());
    this.sharesOfHot = apportioned(margins.fit(false), uncertainties.words());
  }

  private static Optional<Apportioned> apportioned(
      Optional<QuadraticFit> fitted, List<String> words) {
    return fitted
        .filter(fit -> Double.isFinite(fit.unexplained()))
        .map(
            fit ->
                new Apportioned(
                    fit.shares(words).stream()
                        .sorted(Comparator.comparingDouble(Share::total).reversed())
                        .toList(),
                    fit.unexplained()));
  }

  /**
   * Returns the number of journeys.
   *
   * @return how many were run
   */
  public int journeys() {
    return settings.journeys();
  }

  /**
   * Returns the odds, and in a second line the margins of the middle case.
   *
   * @return for example "84 of 100 (81 to 87), 512 journeys" and "middle case: 2.1 K to the cold
   *     end, 8.0 K to the hot end"
   */
  @Override
  public String toString() {
    Odds odds = within();
    return String.format(
        Locale.ROOT,
        "%.0f of 100 (%.0f to %.0f), %d journeys%nmiddle case: %.1f K to the cold end, %.1f K to the"
            + " hot end",
        100 * odds.within(),
        100 * odds.low(),
        100 * odds.high(),
        journeys(),
        coldMargin(0.5),
        hotMargin(0.5));
  }

  /**
   * Returns the odds that every animal stays within what it tolerates until the planned opening.
   *
   * @return the share of journeys, with its interval
   */
  public Odds within() {
    return withinUntil(0);
  }

  /**
   * Returns the odds that every animal stays within what it tolerates until the parcel is opened
   * some hours late.
   *
   * @param hours whole hours after the planned opening, 0 to {@link #longestDelay}
   * @return the share of journeys, with its interval
   * @throws InvalidInputException if the journeys did not last so long
   */
  public Odds withinUntil(int hours) {
    if (hours < 0 || hours > longestDelay()) {
      throw new InvalidInputException(
          "hours of delay", hours + " must be within 0 to " + longestDelay());
    }
    return Odds.of(tally.within[hours], settings.points());
  }

  /**
   * Returns the longest delay that was followed.
   *
   * @return whole hours after the planned opening
   */
  public int longestDelay() {
    return tally.within.length - 1;
  }

  /**
   * Returns the odds that no animal gets too cold until the planned opening.
   *
   * @return the share of journeys, with its interval
   */
  public Odds notTooCold() {
    return Odds.of(tally.cold, settings.points());
  }

  /**
   * Returns the odds that no animal gets too hot until the planned opening.
   *
   * @return the share of journeys, with its interval
   */
  public Odds notTooHot() {
    return Odds.of(tally.hot, settings.points());
  }

  /**
   * Returns the odds that every animal has enough air until the planned opening.
   *
   * @return the share of journeys, with its interval
   */
  public Odds enoughAir() {
    return Odds.of(tally.enoughAir, settings.points());
  }

  /**
   * Returns the odds that no place that an animal can reach is too hot to touch until the planned
   * opening.
   *
   * @return the share of journeys, with its interval
   */
  public Odds notBurnt() {
    return Odds.of(tally.unburnt, settings.points());
  }

  /**
   * Returns the odds until the planned opening, all together and by cause.
   *
   * @return the shares of journeys, with their intervals
   */
  public OddsByCause byCause() {
    return new OddsByCause(within(), notTooCold(), notTooHot(), enoughAir(), notBurnt());
  }

  /**
   * Returns a quantile of the lowest oxygen that an animal breathes, delays that are followed
   * included.
   *
   * @param share share of journeys with less [-], 0 to 1
   * @return mole fraction, at altitude that of sea-level air with the same partial pressure [-]
   * @throws InvalidInputException if the share is not within 0 and 1
   */
  public double leastOxygen(double share) {
    return tally.leastOxygen.quantile(checked(share));
  }

  /**
   * Returns a quantile of the smallest distance of an animal's running mean to the cold end of its
   * alarm band until the planned opening.
   *
   * @param share share of journeys that leave less [-], 0 to 1
   * @return the margin [K], negative outside
   * @throws InvalidInputException if the share is not within 0 and 1
   */
  public double coldMargin(double share) {
    return tally.coldMargin.quantile(checked(share));
  }

  /**
   * Returns a quantile of the smallest distance of an animal's running mean to the hot end of its
   * alarm band until the planned opening.
   *
   * @param share share of journeys that leave less [-], 0 to 1
   * @return the margin [K], negative outside
   * @throws InvalidInputException if the share is not within 0 and 1
   */
  public double hotMargin(double share) {
    return tally.hotMargin.quantile(checked(share));
  }

  /**
   * Returns a quantile of the time outside the alarm band until the planned opening.
   *
   * @param share share of journeys with less [-], 0 to 1
   * @return the time [s]
   * @throws InvalidInputException if the share is not within 0 and 1
   */
  public double outside(double share) {
    return 3600 * tally.outside.quantile(checked(share));
  }

  /**
   * Returns for how long an animal typically is outside its alarm band, where it leaves it.
   *
   * @return the median time until the planned opening, over the journeys on which it leaves it [s];
   *     empty if there is none
   */
  public OptionalDouble typicallyOutside() {
    OptionalDouble hours = tally.outside.medianAboveLow();
    return hours.isEmpty() ? hours : OptionalDouble.of(3600 * hours.getAsDouble());
  }

  /**
   * Returns how far beyond one end of its alarm band an animal's running mean typically gets, where
   * it gets beyond that.
   *
   * @param cold whether the cold end is meant
   * @return the median until the planned opening of the farthest that it gets, over the journeys on
   *     which it is beyond [K], positive; empty if there is none
   */
  public OptionalDouble typicallyBeyond(boolean cold) {
    OptionalDouble margin = (cold ? tally.coldMargin : tally.hotMargin).medianBelow(0);
    return margin.isEmpty() ? margin : OptionalDouble.of(-margin.getAsDouble());
  }

  private static double checked(double share) {
    return Checks.within("share of journeys", share, SHARES, "", "0.5 is the middle case.");
  }

  /**
   * Returns the cups with an animal.
   *
   * @return their names; unmodifiable
   */
  public List<String> cups() {
    return cups;
  }

  /**
   * Returns the times of temperatures.
   *
   * @return a copy, since sealing, ascending [s]
   */
  public double[] times() {
    return times.clone();
  }

  /**
   * Returns a quantile of an animal's temperature at each time.
   *
   * @param cup name of its cup
   * @param share share of journeys in which it is colder [-], 0 to 1
   * @return the temperature at each time [K]
   * @throws InvalidInputException if there is no such cup, or the share is not within 0 and 1
   */
  public double[] temperatures(String cup, double share) {
    int animal = cups.indexOf(cup);
    if (animal < 0) {
      throw Suggestions.unknown("cup", cup, cups);
    }
    checked(share);
    double[] values = new double[times.length];
    for (int time = 0; time < values.length; time++) {
      values[time] = tally.temperatures[animal][time].quantile(share);
    }
    return values;
  }

  /**
   * Returns when the middle case comes closest to one end of an alarm band until the planned
   * opening.
   *
   * @param cold whether the cold end is meant
   * @return the time [s]
   */
  public double tightest(boolean cold) {
    double least = Double.POSITIVE_INFINITY;
    double when = 0;
    for (int animal = 0; animal < cups.size(); animal++) {
      Tolerance tolerance = tolerances.get(animal);
      Range band = tolerance.band(Limit.ALARM).range();
      double[] middle = temperatures(cups.get(animal), 0.5);
      double[] means = Judge.runningMeans(times, middle, tolerance.averaging());
      for (int row = 0; row < times.length && times[row] <= opening; row++) {
        double left = cold ? means[row] - band.low() : band.high() - means[row];
        if (left < least) {
          least = left;
          when = times[row];
        }
      }
    }
    return when;
  }

  /**
   * Returns how much of the variance of a margin comes from each uncertain quantity, by a quadratic
   * function fitted to the journeys.
   *
   * @param cold whether the margin at the cold end is meant
   * @return the shares, largest total first, and what the function does not explain; empty if more
   *     is uncertain than can be fitted to that many journeys, or the margin does not vary
   */
  public Optional<Apportioned> shares(boolean cold) {
    return cold ? sharesOfCold : sharesOfHot;
  }

  /**
   * The variance of a margin, shared out.
   *
   * @param shares the shares of a fitted function's variance, largest total first
   * @param unexplained part of the variance that the function does not explain [-]
   */
  public record Apportioned(List<Share> shares, double unexplained) {
    /** Copies the list. */
    public Apportioned {
      shares = List.copyOf(shares);
    }
  }
}
