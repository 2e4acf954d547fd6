package stenotherm.parcel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.HeatDirection;
import stenotherm.base.Orientation;
import stenotherm.grid.Box;
import stenotherm.grid.Point;

/** The solids that stand for air that convects; see {@link Parcel#conductivities}. */
final class ParcelAir {
  private final Parcel parcel;
  private final List<PlacedWarmer> heating;
  private final Box cavity;

  /**
   * Starts from the warmers that heat.
   *
   * @param heating warmers that heat
   */
  ParcelAir(Parcel parcel, List<PlacedWarmer> heating) {
    this.parcel = parcel;
    this.heating = heating;
    this.cavity = parcel.cavity();
  }

  /** Conductivity of each block by its name [W/(m K)]. */
  Map<String, Double> conductivities(Orientation orientation, double meanTemperature) {
    Checks.temperature("mean temperature of the air", meanTemperature);
    Axis up = orientation.up().axis();
    Map<String, Double> all = new LinkedHashMap<>();
    for (Container container : parcel.containers()) {
      HeatDirection vertical = vertical(container.item(cavity).box(), orientation, meanTemperature);
      all.put(container.airBlock(), container.airConductivity(vertical, up, meanTemperature));
    }
    Optional<Filling.Unfilled> unfilled = parcel.filling().air();
    if (unfilled.isPresent()) {
      CavityAir air = new CavityAir(unfilled.get(), new ParcelLayout(parcel).gap());
      double level =
          2 * cavity.volume() / cavity.size(up) / new Item(Parcel.FILL, cavity).surface();
      HeatDirection vertical = vertical(middle(cavity), orientation, meanTemperature);
      all.put(Parcel.FILL, air.conductivity(vertical, level, meanTemperature));
    }
    return all;
  }

  /** The middle third of a box along each axis. */
  private static Box middle(Box box) {
    return new Dimensions(box.size(Axis.X) / 3, box.size(Axis.Y) / 3, box.size(Axis.Z) / 3)
        .above(
            new Point(box.centre().x(), box.centre().y(), box.centre().z() - box.size(Axis.Z) / 6));
  }

  /** Which way heat goes vertically at a thing, by where warmers and packs are. */
  private HeatDirection vertical(Box thing, Orientation orientation, double meanTemperature) {
    int downward = 0;
    for (PlacedWarmer warmer : heating) {
      downward += side(warmer.item(cavity).box(), thing, orientation);
    }
    for (PlacedPack pack : parcel.packs()) {
      int warm = pack.startTemperature() > meanTemperature ? 1 : -1;
      downward += warm * side(pack.item(cavity).box(), thing, orientation);
    }
    if (downward == 0) {
      return HeatDirection.HORIZONTAL;
    }
    return downward > 0 ? HeatDirection.DOWNWARD : HeatDirection.UPWARD;
  }

  /** 1 if a box lies above a thing, -1 below it, 0 beside it. */
  private static int side(Box box, Box thing, Orientation orientation) {
    if (gap(box, thing, orientation.up()) > -Parcel.ROUND_OFF) {
      return 1;
    }
    return gap(box, thing, orientation.down()) > -Parcel.ROUND_OFF ? -1 : 0;
  }

  /** Distance from a thing's face to a box that lies beyond it; negative if it begins before. */
  private static double gap(Box box, Box thing, Face face) {
    double distance = box.at(face.opposite()) - thing.at(face);
    return face.isMax() ? distance : -distance;
  }
}
