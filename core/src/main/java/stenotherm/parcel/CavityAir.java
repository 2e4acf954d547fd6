package stenotherm.parcel;

import java.util.Locale;
import stenotherm.base.HeatDirection;
import stenotherm.base.Range;
import stenotherm.material.AirLayer;

/** The air in a cavity without fill, as a solid. */
record CavityAir(Filling.Unfilled filling, double gap) {
  /** Gaps that the rule of air layers is used for [m]; a full cavity leaves none. */
  private static final Range GAPS = new Range(0.001, 0.3);

  /**
   * Conductivity with heat going a stated way through layers that lie level, which have a share of
   * the surface, and sideways through the others [W/(m K)].
   */
  double conductivity(HeatDirection vertical, double levelShare, double meanTemperature) {
    double nominal =
        levelShare * conductivity(vertical, meanTemperature)
            + (1 - levelShare) * conductivity(HeatDirection.HORIZONTAL, meanTemperature);
    double downward = conductivity(HeatDirection.DOWNWARD, meanTemperature);
    double upward = conductivity(HeatDirection.UPWARD, meanTemperature);
    return new Range(downward, upward).at(filling.position(), nominal);
  }

  /** What every output about such a parcel must say. */
  static String caution(Filling.Unfilled filling) {
    return String.format(
        Locale.ROOT,
        "The box has no fill: the heat that its moving air carries is computed roughly. An animal"
            + " may be %.1f K warmer or colder for that (assumed; the odds count it), and"
            + " more with a warmer beneath it; a loose container also moves about.",
        filling.error());
  }

  private double conductivity(HeatDirection heatFlow, double meanTemperature) {
    double thickness = Math.max(GAPS.low(), Math.min(gap, GAPS.high()));
    return new AirLayer(heatFlow, thickness, filling.emissivity(), filling.emissivity())
        .effectiveConductivity(meanTemperature);
  }
}
