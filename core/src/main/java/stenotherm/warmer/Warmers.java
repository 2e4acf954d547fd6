package stenotherm.warmer;

import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Masses;
import stenotherm.base.Provenance;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;

/**
 * The catalogue of warmers. All are illustrative: no measured power of a real warmer was found. The
 * films and the iron are those that give the rated peak and hours on a bench whose resistances are
 * assumed; watts scale with these. A class for longer has a tighter film and more iron, not more
 * watts. The mass is that of the contents; their pouch weighs some grams and is left out. Rated
 * hours are hours on a bench, at or above 40 °C, not hours of useful heat in a cold box.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Warmers {
  private static final Range STRENGTH = new Range(0.75, 1.25);

  /** Activation energy of salted wet iron [J/mol]: assumed, no measurement was found. */
  private static final double ACTIVATION = 40e3;

  /** A grain that shrinks. */
  private static final double ORDER = 2.0 / 3;

  /** Fine powder of small pads and the usual one [mol/(s Pa kg)]: assumed. */
  private static final double FINE = 1.8e-7;

  private static final double USUAL = 4e-8;

  /** A small pad of about 20 g that is hot early and spent overnight. */
  public static final WarmerClass TEN_HOUR =
      new WarmerClass(
          "10 hour warmer",
          new WarmerClass.PadSize(0.091, 0.055, 0.006),
          Masses.fromGrams(20),
          powder(7.3, new Film(3.24e-8, 0.0050), 1.0, FINE, 120),
          STRENGTH,
          illustrative("66 °C and 10 h on the bench"));

  /** A flat pad of about 40 g, of the kind worn on the body for a day. */
  public static final WarmerClass TWENTY_HOUR =
      new WarmerClass(
          "20 hour warmer",
          new WarmerClass.PadSize(0.13, 0.095, 0.004),
          Masses.fromGrams(40),
          powder(20, new Film(1.6e-8, 0.0123), 0.5, USUAL, 300),
          STRENGTH,
          illustrative("20 h on the bench"));

  /** A pad of about 100 g for two days in the cold. */
  public static final WarmerClass FORTY_HOUR =
      new WarmerClass(
          "40 hour warmer",
          new WarmerClass.PadSize(0.128, 0.082, 0.012),
          Masses.fromGrams(100),
          powder(48, new Film(2.39e-8, 0.0105), 0.5, USUAL, 600),
          STRENGTH,
          illustrative("55 °C and 40 h on the bench"));

  /** A pad of about 130 g, lower and flatter. */
  public static final WarmerClass SIXTY_HOUR =
      new WarmerClass(
          "60 hour warmer",
          new WarmerClass.PadSize(0.13, 0.09, 0.014),
          Masses.fromGrams(130),
          powder(72, new Film(2.09e-8, 0.0112), 0.5, USUAL, 700),
          STRENGTH,
          illustrative("51 °C and 60 h on the bench"));

  /** A pad of about 150 g, the lowest and flattest. */
  public static final WarmerClass SEVENTY_TWO_HOUR =
      new WarmerClass(
          "72 hour warmer",
          new WarmerClass.PadSize(0.135, 0.095, 0.015),
          Masses.fromGrams(150),
          powder(89, new Film(1.86e-8, 0.0118), 0.5, USUAL, 800),
          STRENGTH,
          illustrative("48 °C and 72 h on the bench"));

  private static final List<WarmerClass> ALL =
      List.of(TEN_HOUR, TWENTY_HOUR, FORTY_HOUR, SIXTY_HOUR, SEVENTY_TWO_HOUR);

  private Warmers() {}

  /** Permeance [mol/(s m2 Pa)] and breathable area [m2]. */
  private record Film(double permeance, double area) {}

  private static IronPowder powder(
      double grams, Film film, double crust, double conductance, double wetting) {
    return new IronPowder(
        Masses.fromGrams(grams),
        new AirFilm(film.permeance, film.area, AirFilm.Transport.KNUDSEN),
        crust,
        new PowderKinetics(conductance, ACTIVATION, ORDER, wetting),
        OxidationProduct.LEPIDOCROCITE);
  }

  private static Source illustrative(String rating) {
    return new Source(
        "film and iron fitted to a rating of " + rating,
        "bench resistances, powder and crust assumed",
        Provenance.ILLUSTRATIVE);
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
