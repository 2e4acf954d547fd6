package stenotherm.parcel;

import java.util.Optional;
import stenotherm.material.Behaviour;
import stenotherm.material.EnthalpyCurve;
import stenotherm.material.Melting;

/**
 * A pack that melts as one body: its mean temperature follows from its enthalpy and from the heat
 * that it takes up. That heat passes what has melted already (or has frozen), so that the mean lies
 * above the melting temperature: with a front parallel to the pack's large sides, and the heat from
 * one of them, by Q L f^2 / (2 k A), of a pack of thickness L and area A whose part f is liquid;
 * from both alike it is a quarter of that.
 *
 * <p>Immutable, thus thread-safe.
 */
public final class OneBody {
  /**
   * Between 1/8, heat from both large sides, and 1/2, from one: assumed; with it they come nearest
   * to packs each cell of which melts by its own temperature, see {@code PacksAsBodiesTest}.
   */
  private static final double FRONT = 0.35;

  private final EnthalpyCurve curve;
  private final double atSealing;

  /**
   * Rise of the mean by one watt through all that is liquid, and through all that is solid [K/W].
   */
  private final double throughLiquid;

  private final double throughSolid;

  private OneBody(PlacedPack placed, Behaviour.MeltsAsOneBody behaviour) {
    PackClass pack = placed.pack();
    Melting melting = behaviour.melting();
    this.curve = behaviour.curve(pack.mass());
    this.atSealing = placed.start().enthalpyOf(curve);
    double thickness = pack.size().height();
    double perConductivity = FRONT * thickness * thickness / pack.size().volume();
    this.throughLiquid = perConductivity / melting.liquidConductivity();
    this.throughSolid = perConductivity / behaviour.solidConductivity();
  }

  /** How a pack melts as one body; empty if it does not melt, or part by part. */
  static Optional<OneBody> of(PlacedPack placed) {
    return placed.pack().contents().behaviour() instanceof Behaviour.MeltsAsOneBody one
        ? Optional.of(new OneBody(placed, one))
        : Optional.empty();
  }

  /**
   * Returns the enthalpy of the pack if it had one temperature.
   *
   * @return the curve
   */
  public EnthalpyCurve curve() {
    return curve;
  }

  /**
   * Returns the enthalpy with which the pack starts.
   *
   * @return the enthalpy [J]
   */
  public double atSealing() {
    return atSealing;
  }

  /**
   * Returns the mean temperature.
   *
   * @param enthalpy enthalpy [J]
   * @param taken heat that the pack takes up [W], less than 0 if it gives heat
   * @return the temperature [K]
   */
  public double temperature(double enthalpy, double taken) {
    double fraction = liquidFraction(enthalpy, taken);
    if (fraction == 0 || fraction == 1) {
      return curve.temperature(enthalpy);
    }
    double passed = taken > 0 ? fraction : 1 - fraction;
    double through = taken > 0 ? throughLiquid : throughSolid;
    return curve.temperature(curve.enthalpyAtFraction(fraction))
        + taken * through * passed * passed;
  }

  /**
   * Returns the liquid part. What has melted is warmer than the melting temperature, which takes up
   * some of the enthalpy.
   *
   * @param enthalpy enthalpy [J]
   * @param taken heat that the pack takes up [W], less than 0 if it gives heat
   * @return the part [-], 0 to 1
   */
  public double liquidFraction(double enthalpy, double taken) {
    double latent = curve.latent();
    if (taken > 0) {
      double sensible = curve.slope(1) * taken * throughLiquid;
      return part(enthalpy - curve.enthalpyAtFraction(0), latent, sensible);
    }
    double sensible = curve.slope(-1) * -taken * throughSolid;
    return 1 - part(curve.enthalpyAtFraction(1) - enthalpy, latent, sensible);
  }

  /** The part p, 0 to 1, for which latent p + sensible p^2 = heat. */
  private static double part(double heat, double latent, double sensible) {
    if (heat <= 0) {
      return 0;
    }
    return Math.min(1, 2 * heat / (latent + Math.sqrt(latent * latent + 4 * sensible * heat)));
  }
}
