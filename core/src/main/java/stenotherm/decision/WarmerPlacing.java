package stenotherm.decision;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Layout;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;

/** Where warmers may be put. */
final class WarmerPlacing {
  /** Nearer to a cup a warmer may burn what is in it: common practice, no source [m]. */
  private static final double NEAREST = 0.025;

  private WarmerPlacing() {}

  /** Refuses a packing in which a warmer is too near to a cup. */
  static Parcel requireApart(Parcel parcel) {
    Layout layout = parcel.layout();
    for (PlacedWarmer warmer : parcel.warmers()) {
      for (Container cup : parcel.containers()) {
        double apart =
            -layout.block(warmer.name()).box().overlap(layout.block(cup.airBlock()).box());
        if (apart < NEAREST) {
          throw new InvalidInputException(
              "warmer '" + warmer.name() + "'",
              "comes within " + Checks.show(apart, "m") + " of '" + cup.name() + "'");
        }
      }
    }
    return parcel;
  }
}
