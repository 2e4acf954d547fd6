package stenotherm.warmer;

import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Masses;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/**
 * The catalogue of warmers with prescribed curves. All are illustrative: no measured power of a
 * real warmer was found, so the curves follow only the oxidation heat of 2.5 to 3 kJ per gram of
 * contents and the rated hours. A class for longer has a tighter film and more iron, not more
 * watts. The mass is that of the contents; their pouch weighs some grams and is left out. Rated
 * hours are hours on a bench, warm to the touch, not hours of useful heat in a cold box.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Warmers {
  private static final Range STRENGTH = new Range(0.75, 1.25);

  /** A small pad of about 20 g that is hot early and spent overnight; about 54 kJ. */
  public static final WarmerClass TEN_HOUR =
      new WarmerClass(
          "10 hour warmer",
          new WarmerClass.PadSize(0.091, 0.055, 0.006),
          Masses.fromGrams(20),
          curve(
              new double[] {0, 0.25, 1, 4, 8, 10, 14},
              new double[] {0, 1.5, 1.7, 1.5, 1.1, 0.8, 0}),
          STRENGTH,
          illustrative("20 g of contents"));

  /** A flat pad of about 40 g, of the kind worn on the body for a day; about 111 kJ. */
  public static final WarmerClass TWENTY_HOUR =
      new WarmerClass(
          "20 hour warmer",
          new WarmerClass.PadSize(0.13, 0.095, 0.004),
          Masses.fromGrams(40),
          curve(
              new double[] {0, 0.5, 1.5, 4, 10, 16, 20, 26},
              new double[] {0, 1.2, 1.8, 1.8, 1.5, 1.2, 0.8, 0}),
          STRENGTH,
          illustrative("40 g of contents"));

  /** A pad of about 100 g for two days in the cold; about 280 kJ. */
  public static final WarmerClass FORTY_HOUR =
      new WarmerClass(
          "40 hour warmer",
          new WarmerClass.PadSize(0.128, 0.082, 0.012),
          Masses.fromGrams(100),
          curve(
              new double[] {0, 1, 3, 6, 20, 30, 40, 48, 60},
              new double[] {0, 1.6, 2.1, 2.1, 1.8, 1.5, 1.1, 0.6, 0}),
          STRENGTH,
          illustrative("100 g of contents"));

  /** A pad of about 130 g, lower and flatter; about 355 kJ. */
  public static final WarmerClass SIXTY_HOUR =
      new WarmerClass(
          "60 hour warmer",
          new WarmerClass.PadSize(0.13, 0.09, 0.014),
          Masses.fromGrams(130),
          curve(
              new double[] {0, 1.5, 4, 10, 30, 45, 60, 72, 90},
              new double[] {0, 1.2, 1.7, 1.7, 1.5, 1.3, 1.0, 0.5, 0}),
          STRENGTH,
          illustrative("130 g of contents"));

  /** A pad of about 150 g, the lowest and flattest; about 400 kJ. */
  public static final WarmerClass SEVENTY_TWO_HOUR =
      new WarmerClass(
          "72 hour warmer",
          new WarmerClass.PadSize(0.135, 0.095, 0.015),
          Masses.fromGrams(150),
          curve(
              new double[] {0, 2, 6, 12, 36, 54, 72, 84, 100},
              new double[] {0, 1.1, 1.6, 1.6, 1.45, 1.3, 1.0, 0.5, 0}),
          STRENGTH,
          illustrative("150 g of contents"));

  private static final List<WarmerClass> ALL =
      List.of(TEN_HOUR, TWENTY_HOUR, FORTY_HOUR, SIXTY_HOUR, SEVENTY_TWO_HOUR);

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
