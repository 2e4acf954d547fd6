package stenotherm.animal;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * The body temperatures that an animal tolerates, as three nested ranges.
 *
 * <p>The bands hold for hours and are keepers' practice. The critical limits are another kind of
 * number: temperatures at which animals lose their righting response, or at which half of them die,
 * in tests that ramp the temperature by 0.1 K to 1 K per minute. They end a test within minutes, so
 * they are never a band to plan for. They also depend on acclimation: the lower one by up to 12 K.
 *
 * <p>Which temperature: that of the core of the body. Tests of critical limits read it with a probe
 * in the cloaca, the mouth or the body, or wait until a body so small follows its surroundings
 * (Bennett et al. 2018 compile both; from memory). Keepers' bands are those of the air in which an
 * animal sits for hours, which a resting ectotherm takes on. What stands for the core here is the
 * mean of an animal's block: a verdict holds its running mean over {@code averaging} against the
 * alarm band, and each moment against the critical limits. The coldest and the hottest part of the
 * block are temperatures of skin, toes and tail; as no blood moves heat within it, they lie farther
 * from its mean than in a live animal (1.1 K were seen at a corner), and none of the sources says
 * what harms them.
 *
 * <p>A value, thus thread-safe.
 *
 * @param comfortable the band to plan for
 * @param alarm the band outside which the animal should not be for any length of time; holds {@code
 *     comfortable}
 * @param critical the lower and the upper limit of ramped tests; holds {@code alarm}
 * @param averaging time over which a temperature is averaged before it is held against the alarm
 *     band [s]: a body takes minutes to hours of a temperature to be harmed by it
 */
public record Tolerance(
    TemperatureBand comfortable,
    TemperatureBand alarm,
    TemperatureBand critical,
    double averaging) {
  /** The usual averaging time [s]: assumed, no source. */
  public static final double AVERAGING = 3600;

  private static final Source LIMITS_UNKNOWN =
      Source.assumed(
          "None are known of it or of a near relative: the ends of the alarm band stand in, at each"
              + " moment");

  private static final Range AVERAGINGS = new Range(60, 24 * 3600);

  /**
   * A tolerance with the usual averaging time.
   *
   * @param comfortable the band to plan for
   * @param alarm the band outside which the animal should not be for any length of time
   * @param critical the lower and the upper limit of ramped tests
   * @throws InvalidInputException if they are not nested
   */
  public Tolerance(TemperatureBand comfortable, TemperatureBand alarm, TemperatureBand critical) {
    this(comfortable, alarm, critical, AVERAGING);
  }

  /**
   * A tolerance of an animal whose critical limits nobody knows: the ends of the alarm band stand
   * in for them, so that no moment may lie outside it, however short.
   *
   * @param comfortable the band to plan for
   * @param alarm the band outside which the animal should not be at any moment
   * @throws InvalidInputException if they are not nested
   */
  public Tolerance(TemperatureBand comfortable, TemperatureBand alarm) {
    this(
        comfortable,
        alarm,
        new TemperatureBand(Checks.given("alarm", alarm).range(), LIMITS_UNKNOWN));
  }

  /** Hottest that a place may be that an animal can touch: 40 °C [K]. */
  public static final double HOTTEST_TOUCH = 313.15;

  /** Where that comes from. */
  public static final Source TOUCH_SOURCE =
      Source.assumed("small animals burn themselves on what is hotter than 40 °C to the touch");

  /**
   * Checks that the three pairs are nested.
   *
   * @throws InvalidInputException if the comfortable band reaches out of the alarm band, or that
   *     out of the critical limits, or the averaging time is not within a minute and a day
   */
  public Tolerance {
    Checks.given("comfortable band", comfortable);
    Checks.given("alarm band", alarm);
    Checks.given("critical limits", critical);
    Checks.within("averaging time", averaging, AVERAGINGS, "s", "An hour is 3600 s.");
    inside("comfortable band", comfortable.range(), "alarm band", alarm.range());
    inside("alarm band", alarm.range(), "critical limits", critical.range());
  }

  private static void inside(String inner, Range narrow, String outer, Range wide) {
    if (!(narrow.low() >= wide.low() && narrow.high() <= wide.high())) {
      throw new InvalidInputException(
          inner, show(narrow) + " must lie inside the " + outer + ", " + show(wide));
    }
  }

  private static String show(Range range) {
    return Checks.show(range.low(), "K") + " to " + Checks.show(range.high(), "K");
  }

  /**
   * Returns one of the three pairs.
   *
   * @param limit which one
   * @return the band and its source
   */
  public TemperatureBand band(Limit limit) {
    return switch (limit) {
      case COMFORTABLE -> comfortable;
      case ALARM -> alarm;
      case CRITICAL -> critical;
    };
  }
}
