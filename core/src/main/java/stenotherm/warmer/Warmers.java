package stenotherm.warmer;

import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/**
 * The catalogue of warmers with prescribed curves. All are illustrative: no measured power of a
 * real warmer was found, so the curves follow only the oxidation heat of 2.5 to 3 kJ per gram of
 * contents and the rated hours.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Warmers {
  private static final Range STRENGTH = new Range(0.75, 1.25);

  /** A small pad of about 20 g that is hot early and spent overnight; about 54 kJ. */
  public static final WarmerClass TEN_HOUR =
      new WarmerClass(
          "10 hour warmer",
          new WarmerClass.PadSize(0.091, 0.055, 0.006),
          curve(
              new double[] {0, 0.25, 1, 4, 8, 10, 14},
              new double[] {0, 1.5, 1.7, 1.5, 1.1, 0.8, 0}),
          STRENGTH,
          illustrative("20 g of contents"));

  /** A pad of about 100 g for two days in the cold; about 280 kJ. */
  public static final WarmerClass FORTY_HOUR =
      new WarmerClass(
          "40 hour warmer",
          new WarmerClass.PadSize(0.128, 0.082, 0.012),
          curve(
              new double[] {0, 1, 3, 6, 20, 30, 40, 48, 60},
              new double[] {0, 1.6, 2.1, 2.1, 1.8, 1.5, 1.1, 0.6, 0}),
          STRENGTH,
          illustrative("100 g of contents"));

  private static final List<WarmerClass> ALL = List.of(TEN_HOUR, FORTY_HOUR);

  private Warmers() {}

  private static TimeFunction curve(double[] hours, double[] watts) {
    double[] times = new double[hours.length];
    for (int row = 0; row < hours.length; row++) {
      times[row] = Times.fromHours(hours[row]);
    }
    return TimeFunction.table(times, watts);
  }

  private static Source illustrative(String contents) {
    return new Source(
        "power curve made up for " + contents,
        "scaled to 2.5 to 3 kJ per gram, with a rise and a long sag",
        stenotherm.base.Provenance.ILLUSTRATIVE);
  }

  /**
   * Returns all warmers.
   *
   * @return the catalogue
   */
  public static List<WarmerClass> all() {
    return ALL;
  }

  /**
   * Finds a warmer.
   *
   * @param name its name
   * @return the warmer
   * @throws InvalidInputException if there is none; the message suggests the closest name
   */
  public static WarmerClass named(String name) {
    return Suggestions.find("warmer", name, ALL, WarmerClass::name);
  }
}
