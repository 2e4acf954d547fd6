package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Mass;
import stenotherm.base.Masses;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * A kind of warmer: its pad and how it comes by its heat.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name
 * @param size extent of the pad
 * @param mass mass of the fresh contents, which with their specific heat store heat [kg]; 100 to
 *     3000 kg per m3 of the pad
 * @param heat how it comes by its heat; the iron of iron powder is 30 to 70 % of the mass
 * @param usual factor on the power as given [-]: 1 unless measured
 * @param strength range of that factor over single warmers, around the usual one; of iron powder it
 *     scales film and iron alike, so that a stronger one does not last shorter
 * @param bench range of another factor on power, film and iron alike, one for all warmers, around
 *     1: what is not known for want of the resistances of the bench behind a rating or a curve, see
 *     {@link WarmerFit}
 * @param source where the values come from
 */
public record WarmerClass(
    String name,
    PadSize size,
    double mass,
    HeatRelease heat,
    double usual,
    Range strength,
    Range bench,
    Source source) {
  /**
   * By what single warmers differ from their kind [-]: assumed, none was measured. What is unknown
   * of the kind is the bench's, {@link Bench#CONDUCTANCES}.
   */
  public static final Range SINGLE = new Range(0.9, 1.1);

  /** No bench stands behind it: its power or its powder is known. */
  private static final Range NO_BENCH = new Range(1, 1);

  /** From a pad that is half empty to pressed iron powder [kg/m3]. */
  private static final Range DENSITIES = new Range(100, 3000);

  /** Iron in the mass of the contents, see {@link WarmerFit#IRON_SOURCE} [-]. */
  static final Range IRON = new Range(0.3, 0.7);

  /**
   * The extent of a warmer's pad.
   *
   * @param length longer side [m]
   * @param width shorter side [m]
   * @param thickness thickness [m]
   */
  public record PadSize(double length, double width, double thickness) {
    /**
     * Checks the extents.
     *
     * @throws InvalidInputException if one is not above 0
     */
    public PadSize {
      Checks.extent("warmer length", length);
      Checks.extent("warmer width", width);
      Checks.extent("warmer thickness", thickness);
    }

    /**
     * Returns the area of one of the two large faces; the film takes up one.
     *
     * @return length times width [m2]
     */
    public double face() {
      return length * width;
    }

    /**
     * Returns the area of the edges.
     *
     * @return circumference times thickness [m2]
     */
    public double edges() {
      return 2 * (length + width) * thickness;
    }

    /**
     * Returns the volume.
     *
     * @return length times width times thickness [m3]
     */
    public double volume() {
      return length * width * thickness;
    }
  }

  /**
   * Checks the parts.
   *
   * @throws InvalidInputException if the name is blank, the mass does not fit the size, the iron
   *     does not fit the mass, the strength is not a positive range that holds the usual one, or
   *     that of the bench is not one that holds 1
   */
  public WarmerClass {
    Checks.name("warmer name", name);
    Checks.given("size of " + name, size);
    Checks.given("heat of " + name, heat);
    Checks.given("strength of " + name, strength);
    Checks.given("bench of " + name, bench);
    Checks.given("source of " + name, source);
    Checks.mass(
        "mass of " + name,
        mass,
        new Range(DENSITIES.low() * size.volume(), DENSITIES.high() * size.volume()),
        "Contents have 100 to 3000 kg per cubic metre of the pad.");
    if (heat instanceof IronPowder powder) {
      Checks.mass(
          "iron of " + name,
          powder.iron(),
          new Range(IRON.low() * mass, IRON.high() * mass),
          "It is 30 to 70 % of the mass of the contents.");
    }
    Checks.positive("weakest strength of " + name, strength.low(), "");
    Checks.positive("lowest bench of " + name, bench.low(), "");
    if (!bench.contains(1)) {
      throw new InvalidInputException(
          "bench of " + name, bench.low() + " to " + bench.high() + " must hold 1");
    }
    if (!strength.contains(usual)) {
      throw new InvalidInputException(
          "strength of " + name,
          strength.low() + " to " + strength.high() + " must hold the usual one, " + usual);
    }
  }

  /**
   * A kind of warmer that has the power as given, with no bench behind it.
   *
   * @param name name
   * @param size extent of the pad
   * @param mass mass of the fresh contents [kg]
   * @param heat how it comes by its heat
   * @param strength range of the factor by which the power of single warmers differs, around 1
   * @param source where the values come from
   * @throws InvalidInputException as the other constructor
   */
  public WarmerClass(
      String name, PadSize size, double mass, HeatRelease heat, Range strength, Source source) {
    this(name, size, mass, heat, 1, strength, NO_BENCH, source);
  }

  /**
   * The same kind with a strength that was measured, whatever the bench.
   *
   * @param other factor on the power as given [-]
   * @param range range that holds it with 90 % [-]
   * @return the changed kind
   * @throws InvalidInputException if the factor is not in its range or that not above 0
   */
  public WarmerClass measured(double other, Range range) {
    return new WarmerClass(name, size, mass, heat, other, range, NO_BENCH, source);
  }

  /**
   * The same kind with all that is unknown of its power in the strength, as a measurement finds it:
   * strength and bench are independent, their logarithms add in squares.
   *
   * @return the changed kind
   */
  public WarmerClass unmeasured() {
    if (!isRated()) {
      return this;
    }
    Range both =
        new Range(
            usual / StrictMath.exp(halfWidth(strength.low() / usual, bench.low())),
            usual * StrictMath.exp(halfWidth(strength.high() / usual, bench.high())));
    return measured(usual, both);
  }

  private static double halfWidth(double strength, double bench) {
    return StrictMath.hypot(StrictMath.log(strength), StrictMath.log(bench));
  }

  /**
   * Returns the strength at a position in its range.
   *
   * @param position the position [-], see {@link Range#at}
   * @return factor on the power as given [-]
   */
  public double strengthAt(double position) {
    return strength.at(position, usual);
  }

  /**
   * Tells whether its watts are those of a bench that is not well known.
   *
   * @return false if no bench stands behind it
   */
  public boolean isRated() {
    return bench.low() < bench.high();
  }

  /**
   * Returns the factor for the bench at a position in its range.
   *
   * @param position the position [-], see {@link Range#at}
   * @return factor on power, film and iron [-], 1 at 0
   */
  public double benchAt(double position) {
    return bench.at(position, 1);
  }

  /**
   * Returns the density of the contents, spread over the pad.
   *
   * @return mass over volume [kg/m3]
   */
  public double density() {
    return mass / size.volume();
  }

  /**
   * A user's own warmer of which a rating is known: iron powder that has the rating on the bench of
   * {@link Bench#RATING}. Its powder comes from {@link WarmerFit}.
   *
   * @param name name
   * @param size extent of the pad
   * @param mass mass of the fresh contents
   * @param rating what is printed on it
   * @return the class
   * @throws InvalidInputException if no iron powder of that mass has that rating
   */
  public static WarmerClass rated(String name, PadSize size, Mass mass, Rating rating) {
    return fitted(name, size, mass, WarmerFit.of(rating, size, mass), rating.words());
  }

  /**
   * A user's own warmer as a fit gives it. Single ones differ by {@link #SINGLE}.
   *
   * @param name name
   * @param size extent of the pad that was fitted
   * @param mass mass of the fresh contents that was fitted
   * @param fit the fit
   * @param data what was fitted, for example "rating of 55 °C at most"
   * @return the class
   * @throws InvalidInputException as the constructor
   */
  public static WarmerClass fitted(
      String name, PadSize size, Mass mass, WarmerFit fit, String data) {
    Checks.given("fit", fit);
    return new WarmerClass(
        name,
        size,
        Checks.given("mass of " + name, mass).kilograms(),
        fit.powder(),
        1,
        SINGLE,
        fit.watts(),
        Source.derived(data, WarmerFit.HOW));
  }

  /**
   * Returns name, extent and mass, without source.
   *
   * @return for example "40 hour warmer, 128 x 82 x 12 mm, 100 g"
   */
  @Override
  public String toString() {
    return name
        + ", "
        + Checks.show(Lengths.toMillimetres(size.length()), "x ")
        + Checks.show(Lengths.toMillimetres(size.width()), "x ")
        + Checks.show(Lengths.toMillimetres(size.thickness()), "mm")
        + ", "
        + Checks.show(Masses.toGrams(mass), "g");
  }
}
