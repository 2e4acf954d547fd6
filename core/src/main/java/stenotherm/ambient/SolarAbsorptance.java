package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * The part of sunlight that a surface absorbs.
 *
 * <p>A value, thus thread-safe.
 *
 * @param nominal absorptance [-], 0 to 1
 * @param range where it may lie, within 0 to 1 and around the nominal value
 * @param source where both come from
 */
public record SolarAbsorptance(double nominal, Range range, Source source) {
  // before the constants, whose constructors use it
  private static final Range POSSIBLE = new Range(0, 1);

  /** Brown kraft board. No measurement was found. */
  public static final SolarAbsorptance KRAFT_BOARD =
      new SolarAbsorptance(
          0.60,
          new Range(0.45, 0.75),
          Source.assumed("brown board absorbs more than half of the sun; no measurement found"));

  /** White paint or a white label. */
  public static final SolarAbsorptance WHITE_PAINT =
      new SolarAbsorptance(
          0.22,
          new Range(0.19, 0.25),
          Source.read("html.scirp.org/file/88555_1.htm", "white paints 0.19 to 0.25"));

  /** Black paint, the darkest a face can be. */
  public static final SolarAbsorptance BLACK_PAINT =
      new SolarAbsorptance(
          0.975,
          new Range(0.95, 0.98),
          Source.read("html.scirp.org/file/88555_1.htm", "black paint 0.975; range assumed"));

  /**
   * Checks the values.
   *
   * @throws InvalidInputException if one is not within 0 and 1, or the nominal value is not within
   *     the range
   */
  public SolarAbsorptance {
    Checks.given("range", range);
    Checks.given("source", source);
    String hint = "Absorptance is the part of sunlight that is absorbed.";
    Checks.within("solar absorptance", nominal, POSSIBLE, "", hint);
    Checks.within("low end of solar absorptance", range.low(), POSSIBLE, "", hint);
    Checks.within("high end of solar absorptance", range.high(), POSSIBLE, "", hint);
    Checks.within("solar absorptance", nominal, range, "", "The value must lie in its own range.");
  }

  /**
   * A known absorptance.
   *
   * @param value the absorptance [-], 0 to 1
   * @param source where it comes from
   * @return the absorptance without a range
   * @throws InvalidInputException if it is not within 0 and 1
   */
  public static SolarAbsorptance of(double value, Source source) {
    return new SolarAbsorptance(value, new Range(value, value), source);
  }
}
