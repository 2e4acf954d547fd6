package stenotherm.warmer;

import java.util.Locale;
import java.util.OptionalDouble;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * What is printed on a warmer: the outcome of a run on a bench in the sense of {@link BenchCurve}.
 *
 * <p>A value, thus thread-safe.
 *
 * @param peak highest temperature [K], 315 to 363 K
 * @param duration time at or above 40 °C [s], 1 to 150 h
 * @param mean mean temperature while at or above 40 °C [K], above 40 °C and below the peak; empty
 *     if it is not printed
 * @param rise time until 40 °C is reached [s], 1 min to 6 h; empty if it is not printed
 */
public record Rating(double peak, double duration, OptionalDouble mean, OptionalDouble rise) {
  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if one is out of its range
   */
  public Rating {
    Checks.within(
        "rated peak", peak, new Range(315, 363), "K", "Most peaks lie between 45 and 70 °C.");
    Checks.within(
        "rated time",
        duration,
        new Range(Times.HOUR, Times.fromHours(150)),
        "s",
        "Rated times are 1 to 150 hours.");
    Checks.given("rated mean", mean);
    Checks.given("rated rise time", rise);
    if (mean.isPresent()) {
      Checks.within(
          "rated mean",
          mean.getAsDouble(),
          new Range(BenchCurve.USEFUL, peak),
          "K",
          "It is taken while the warmer has 40 °C or more.");
    }
    if (rise.isPresent()) {
      Checks.within(
          "rated rise time",
          rise.getAsDouble(),
          new Range(Times.MINUTE, Times.fromHours(6)),
          "s",
          "Rise times are minutes.");
    }
  }

  /**
   * A rating of a peak and hours alone.
   *
   * @param peak highest temperature [K]
   * @param duration time at or above 40 °C [s]
   * @throws stenotherm.base.InvalidInputException if one is out of its range
   */
  public Rating(double peak, double duration) {
    this(peak, duration, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /**
   * Returns the rating as sources name it.
   *
   * @return for example "rating of 55 °C at most and 40 h at or above 40 °C"
   */
  public String words() {
    return String.format(
        Locale.ROOT,
        "rating of %.0f °C at most and %s at or above 40 °C%s",
        Temperatures.toCelsius(peak),
        Checks.show(Times.toHours(duration), "h"),
        mean.isPresent()
            ? String.format(
                Locale.ROOT, ", %.0f °C on the mean", Temperatures.toCelsius(mean.getAsDouble()))
            : "");
  }
}
