package stenotherm.warmer;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Masses;
import stenotherm.base.Provenance;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * The catalogue of warmers. All are illustrative: no measured power of a real warmer was found. The
 * films and the iron are those that {@link WarmerFit} gives for a rating of common practice on the
 * bench of {@link Bench#RATING}, whose resistances are assumed; watts go with 1 over these. The
 * crust is 0.5 where the rating has no mean. A class for longer has a tighter film and more iron,
 * not more watts. The mass is that of the contents, about half iron; their pouch weighs some grams
 * and is left out. Rated hours are hours on the bench, at or above 40 °C, not hours of useful heat
 * in a cold box.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Warmers {
  /** A small pad of about 20 g that is hot early and spent overnight. */
  public static final WarmerClass TEN_HOUR =
      warmer(
          new WarmerClass.PadSize(0.091, 0.055, 0.006),
          20,
          rating(66, 10, OptionalDouble.of(Temperatures.fromCelsius(55))),
          new Fit(3.166e-8, 6.568, 1.0));

  /** A flat pad of about 50 g, of the kind worn on the body for a day. */
  public static final WarmerClass TWENTY_HOUR =
      warmer(
          new WarmerClass.PadSize(0.13, 0.095, 0.004),
          50,
          rating(58, 20, OptionalDouble.empty()),
          new Fit(2.314e-8, 26.32, 0.5));

  /** A pad of about 100 g for two days in the cold. */
  public static final WarmerClass FORTY_HOUR =
      warmer(
          new WarmerClass.PadSize(0.128, 0.082, 0.012),
          100,
          rating(55, 40, OptionalDouble.empty()),
          new Fit(2.386e-8, 47.81, 0.5));

  /** A pad of about 140 g, lower and flatter. */
  public static final WarmerClass SIXTY_HOUR =
      warmer(
          new WarmerClass.PadSize(0.133, 0.084, 0.013),
          140,
          rating(51, 60, OptionalDouble.empty()),
          new Fit(2.097e-8, 71.82, 0.5));

  /** A pad of about 160 g, the lowest and flattest. */
  public static final WarmerClass SEVENTY_TWO_HOUR =
      warmer(
          new WarmerClass.PadSize(0.137, 0.086, 0.013),
          160,
          rating(48, 72, OptionalDouble.empty()),
          new Fit(1.855e-8, 88.33, 0.5));

  private static final List<WarmerClass> ALL =
      List.of(TEN_HOUR, TWENTY_HOUR, FORTY_HOUR, SIXTY_HOUR, SEVENTY_TWO_HOUR);

  private Warmers() {}

  /** What a fit gave: permeance [mol/(s m2 Pa)], iron [g] and crust [-]. */
  private record Fit(double permeance, double iron, double crust) {}

  private static Rating rating(double peak, double hours, OptionalDouble mean) {
    return new Rating(
        Temperatures.fromCelsius(peak), Times.fromHours(hours), mean, OptionalDouble.empty());
  }

  private static WarmerClass warmer(
      WarmerClass.PadSize size, double grams, Rating rating, Fit fit) {
    AirFilm film = new AirFilm(fit.permeance, size.face(), AirFilm.Transport.KNUDSEN);
    double iron = Masses.fromGrams(fit.iron);
    IronPowder powder =
        new IronPowder(
            iron,
            film,
            fit.crust,
            PowderKinetics.usual(film, iron, rating.duration()),
            OxidationProduct.LEPIDOCROCITE);
    return new WarmerClass(
        String.format(Locale.ROOT, "%.0f hour warmer", Times.toHours(rating.duration())),
        size,
        Masses.fromGrams(grams),
        powder,
        1,
        WarmerClass.SINGLE,
        WarmerFit.watts(iron, Masses.fromGrams(grams)),
        new Source(rating.words(), WarmerFit.HOW, Provenance.ILLUSTRATIVE));
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
