package stenotherm.ambient;

import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * A convective coefficient of still air along a plate, from a correlation of the Rayleigh number.
 * It tells whether the correlation was inside its range; outside, the value is an extrapolation and
 * should be shown as one.
 *
 * <p>A value, thus thread-safe.
 *
 * @param coefficient mean convective coefficient [W/(m2 K)]
 * @param nusselt mean Nusselt number
 * @param rayleigh Rayleigh number
 * @param withinRange whether the Rayleigh number lies where the correlation is stated
 */
public record NaturalConvection(
    double coefficient, double nusselt, double rayleigh, boolean withinRange) {
  /** Where the correlations come from. */
  public static final Source SOURCE =
      Source.read("ASHRAE Handbook - Fundamentals 2021", "ch. 4, Table 9");

  private static final double GRAVITY = 9.80665;

  /** The lower ends of the vertical ranges and the unfavourable range are from memory. */
  private static final Range VERTICAL = new Range(0.1, 1e12);

  private static final Range VERTICAL_LAMINAR = new Range(0.1, 1e9);
  private static final double FAVOURABLE_TURNS_TURBULENT = 8e6;
  private static final Range FAVOURABLE = new Range(2.2e4, 1.5e9);
  private static final Range UNFAVOURABLE = new Range(1e5, 1e10);

  /**
   * A vertical plate, laminar or turbulent (Churchill and Chu 1975, Int. J. Heat Mass Transfer
   * 18:1323): Nu = {0.825 + 0.387 Ra^(1/6) / [1 + (0.492/Pr)^(9/16)]^(8/27)}^2, for Ra from 0.1 to
   * 1e12.
   *
   * @param plate the plate; its length is its height
   * @param air properties of air at the plate's film temperature
   * @return the coefficient
   */
  public static NaturalConvection vertical(Plate plate, AirProperties air) {
    double rayleigh = rayleigh(plate, air);
    double root =
        0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / Math.pow(prandtlTerm(air), 8.0 / 27);
    return of(root * root, rayleigh, VERTICAL, plate, air);
  }

  /**
   * A vertical plate, laminar, more accurate there than {@link #vertical} (Churchill and Chu 1975):
   * Nu = 0.68 + 0.67 Ra^(1/4) / [1 + (0.492/Pr)^(9/16)]^(4/9), for Ra from 0.1 to 1e9.
   *
   * @param plate the plate; its length is its height
   * @param air properties of air at the plate's film temperature
   * @return the coefficient
   */
  public static NaturalConvection verticalLaminar(Plate plate, AirProperties air) {
    double rayleigh = rayleigh(plate, air);
    double nusselt = 0.68 + 0.67 * Math.pow(rayleigh, 0.25) / Math.pow(prandtlTerm(air), 4.0 / 9);
    return of(nusselt, rayleigh, VERTICAL_LAMINAR, plate, air);
  }

  /**
   * The upper side of a horizontal plate. If it is warmer than the air it is the favourable side.
   *
   * @param plate the plate; its length is area over perimeter
   * @param air properties of air at the plate's film temperature
   * @return the coefficient, see {@link #lowerSide} for the correlations
   */
  public static NaturalConvection upperSide(Plate plate, AirProperties air) {
    return horizontal(plate, air, plate.surfaceTemperature() >= plate.airTemperature());
  }

  /**
   * The lower side of a horizontal plate. If it is colder than the air it is the favourable side.
   *
   * <p>Favourable: Nu = 0.54 Ra^(1/4) for Ra from 2.2e4 to 8e6, 0.15 Ra^(1/3) from there to 1.5e9.
   * Unfavourable: Nu = 0.27 Ra^(1/4), for Ra from 1e5 to 1e10; some later textbooks prefer 0.52
   * Ra^(1/5), which is a quarter lower near Ra of 1e8.
   *
   * @param plate the plate; its length is area over perimeter
   * @param air properties of air at the plate's film temperature
   * @return the coefficient
   */
  public static NaturalConvection lowerSide(Plate plate, AirProperties air) {
    return horizontal(plate, air, plate.surfaceTemperature() <= plate.airTemperature());
  }

  private static NaturalConvection horizontal(Plate plate, AirProperties air, boolean favourable) {
    double rayleigh = rayleigh(plate, air);
    if (!favourable) {
      return of(0.27 * Math.pow(rayleigh, 0.25), rayleigh, UNFAVOURABLE, plate, air);
    }
    double nusselt =
        rayleigh < FAVOURABLE_TURNS_TURBULENT
            ? 0.54 * Math.pow(rayleigh, 0.25)
            : 0.15 * StrictMath.cbrt(rayleigh);
    return of(nusselt, rayleigh, FAVOURABLE, plate, air);
  }

  private static double rayleigh(Plate plate, AirProperties air) {
    // A perfect gas expands by 1/T.
    double expansion = 1 / plate.filmTemperature();
    double difference = Math.abs(plate.surfaceTemperature() - plate.airTemperature());
    return GRAVITY
        * expansion
        * difference
        * Math.pow(plate.length(), 3)
        / (air.kinematicViscosity() * air.diffusivity());
  }

  private static double prandtlTerm(AirProperties air) {
    return 1 + Math.pow(0.492 / air.prandtl(), 9.0 / 16);
  }

  private static NaturalConvection of(
      double nusselt, double rayleigh, Range range, Plate plate, AirProperties air) {
    return new NaturalConvection(
        nusselt * air.conductivity() / plate.length(), nusselt, rayleigh, range.contains(rayleigh));
  }
}
