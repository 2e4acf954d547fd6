package stenotherm.ambient;

import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * How a parcel is stowed: alone, or in a pile of others, which then lie between it and the air.
 *
 * <p>Constants, thus thread-safe.
 */
public enum Stowage {
  /** The parcel stands alone: it meets the air. */
  ALONE("alone", 0),

  /** The parcel lies in a pile of others: what it meets follows the air late. */
  AMONG_OTHERS("among others", Stowage.DEEPEST);

  /** Where the lag comes from. */
  public static final Source SOURCE =
      Source.assumed(
          "a pile of parcels conducts as a slab of 0.08 W/(m K), 150 kg/m3 and 1400 J/(kg K); a"
              + " parcel lies 0 to 0.4 m deep in a cube that parcels fill evenly; the lag of a depth d with diffusivity a is 4"
              + " d2/(pi2 a), the slowest time constant of a layer so thick with nothing behind it:"
              + " 3 h at 0.1 m, 12 h at 0.2 m, 47 h at 0.4 m");

  /** Depth of the deepest parcel [m]: in the middle of a cube of 0.8 m, assumed. */
  private static final double DEEPEST = 0.4;

  /** Heat conductivity of a pile: paper, plastics and the air in and between cartons [W/(m K)]. */
  private static final double CONDUCTIVITY = 0.08;

  /** Density of a pile [kg/m3]. */
  private static final double DENSITY = 150;

  /** Specific heat of paper and plastics [J/(kg K)]. */
  private static final double SPECIFIC_HEAT = 1400;

  private static final double DIFFUSIVITY = CONDUCTIVITY / (DENSITY * SPECIFIC_HEAT);
  private static final Range DEPTHS = new Range(0, 1);

  private final String words;
  private final double deepest;

  Stowage(String words, double deepest) {
    this.words = words;
    this.deepest = deepest;
  }

  /**
   * Returns the time constant with which what a parcel meets follows the air.
   *
   * <p>The parcels above a depth d are taken as a layer that conducts, of diffusivity a, whose
   * outside has the temperature of the air and whose inside passes no heat. Its slowest part decays
   * with 4 d²/(π² a) (Carslaw and Jaeger 1959, section 3.4, from memory). What lies behind the
   * parcel holds heat too and would make the lag longer; gaps through which air moves would make it
   * shorter.
   *
   * @param depth how deep the parcel lies [-]: 0 at the outside of the pile, 1 as deep as parcels
   *     come, 0.4 m; of no effect for a parcel that stands alone
   * @return the lag [s]; 0 if it stands alone
   * @throws stenotherm.base.InvalidInputException if the depth is not within 0 to 1
   */
  public double lag(double depth) {
    Checks.within("depth in the pile", depth, DEPTHS, "", "1 is as deep as parcels come.");
    double layer = depth * deepest;
    return 4 * layer * layer / (Math.PI * Math.PI * DIFFUSIVITY);
  }

  /**
   * Returns how deep parcels lie that fill a cube evenly: the depth that a share of them does not
   * reach.
   *
   * @param share share of the parcels that lie less deep [-], 0 to 1
   * @return the depth [-], 0 at the outside of the cube, 1 in its middle
   * @throws stenotherm.base.InvalidInputException if the share is not within 0 to 1
   */
  public static double depth(double share) {
    Checks.within("share of parcels", share, DEPTHS, "", "0.5 is the middle case.");
    return 1 - StrictMath.cbrt(1 - share);
  }

  /**
   * Returns the stowage in words.
   *
   * @return for example "among others"
   */
  public String words() {
    return words;
  }
}
