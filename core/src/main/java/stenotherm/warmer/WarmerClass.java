package stenotherm.warmer;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
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
 * @param source where the values come from
 */
public record WarmerClass(
    String name,
    PadSize size,
    double mass,
    HeatRelease heat,
    double usual,
    Range strength,
    Source source) {
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
      Checks.positive("warmer length", length, "m");
      Checks.positive("warmer width", width, "m");
      Checks.positive("warmer thickness", thickness, "m");
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
   *     does not fit the mass, or the strength is not a positive range that holds 1
   */
  public WarmerClass {
    Checks.name("warmer name", name);
    Checks.given("size of " + name, size);
    Checks.given("heat of " + name, heat);
    Checks.given("strength of " + name, strength);
    Checks.given("source of " + name, source);
    Checks.within(
        "mass of " + name,
        mass,
        new Range(DENSITIES.low() * size.volume(), DENSITIES.high() * size.volume()),
        "kg",
        "Contents have 100 to 3000 kg per cubic metre of the pad.");
    if (heat instanceof IronPowder powder) {
      Checks.within(
          "iron of " + name,
          powder.iron(),
          new Range(IRON.low() * mass, IRON.high() * mass),
          "kg",
          "It is 30 to 70 % of the mass of the contents.");
    }
    Checks.positive("weakest strength of " + name, strength.low(), "");
    if (!strength.contains(usual)) {
      throw new InvalidInputException(
          "strength of " + name,
          strength.low() + " to " + strength.high() + " must hold the usual one, " + usual);
    }
  }

  /**
   * A kind of warmer that has the power as given.
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
    this(name, size, mass, heat, 1, strength, source);
  }

  /**
   * The same kind with a strength that was measured.
   *
   * @param other factor on the power as given [-]
   * @param range range that holds it with 90 % [-]
   * @return the changed kind
   * @throws InvalidInputException if the factor is not in its range or that not above 0
   */
  public WarmerClass measured(double other, Range range) {
    return new WarmerClass(name, size, mass, heat, other, range, source);
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
   * Returns the density of the contents, spread over the pad.
   *
   * @return mass over volume [kg/m3]
   */
  public double density() {
    return mass / size.volume();
  }

  /**
   * A user's own warmer of which a rating is known: iron powder that has the rating on the bench of
   * {@link Bench#RATING}. The strength is how far the watts may be off, see {@link WarmerFit}.
   *
   * @param name name
   * @param size extent of the pad
   * @param mass mass of the fresh contents [kg]
   * @param rating what is printed on it
   * @return the class
   * @throws InvalidInputException if no iron powder of that mass has that rating
   */
  public static WarmerClass rated(String name, PadSize size, double mass, Rating rating) {
    WarmerFit fit = WarmerFit.of(rating, size, mass);
    return new WarmerClass(
        name, size, mass, fit.powder(), fit.watts(), Source.derived(rating.words(), WarmerFit.HOW));
  }
}
