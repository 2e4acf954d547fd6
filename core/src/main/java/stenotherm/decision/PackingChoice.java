package stenotherm.decision;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.Container;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.warmer.WarmerClass;

/**
 * A way to pack what a parcel holds.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param box the carton
 * @param foam thickness of the foam on all six faces [m]; 0 for none
 * @param filling what fills the room
 * @param warmer class of the warmers; empty for none
 * @param count how many warmers, the first under the lid and the second on a side; 0 for none
 * @param changes what is done beside it, one after the other
 */
public record PackingChoice(
    BoxSize box,
    double foam,
    Filling filling,
    Optional<WarmerClass> warmer,
    int count,
    List<Remedy> changes) {
  /** Boards conduct at least this well, foams worse [W/(m K)]. */
  private static final double FOAM_BELOW = 0.05;

  /**
   * Checks the parts.
   *
   * @throws InvalidInputException if the foam is negative, or there are warmers without a class, or
   *     none or more than two of one
   */
  public PackingChoice {
    Checks.given("box", box);
    Checks.given("filling", filling);
    Checks.given("warmer", warmer);
    Checks.notNegative("foam", foam, "m");
    changes = List.copyOf(changes);
    if (count < 0 || count > 2 || (count == 0) != warmer.isEmpty()) {
      throw new InvalidInputException(
          "number of warmers", count + " must be 0 without a warmer, else 1 or 2");
    }
  }

  PackingChoice with(Remedy change) {
    List<Remedy> more = new ArrayList<>(changes);
    more.add(change);
    return new PackingChoice(box, foam, filling, warmer, count, more);
  }

  PackingChoice in(BoxSize other, double thickness) {
    return new PackingChoice(other, thickness, filling, warmer, count, changes);
  }

  PackingChoice heatedBy(Optional<WarmerClass> other, int many) {
    return new PackingChoice(box, foam, filling, other, many, changes);
  }

  /**
   * Packs it: board and kind of foam as they were, cups at the same places of the floor, what stood
   * above the floor as much nearer to it as the room is lower.
   *
   * @param parcel the packing whose contents and materials are taken
   * @param journey its journey
   * @return packing and journey
   * @throws InvalidInputException if something does not fit, or a warmer comes too near to a cup
   */
  public Remedy.Shipment applyTo(Parcel parcel, Journey journey) {
    Walls walls = new Walls(layers(parcel.walls()), parcel.walls().joints());
    Parcel bare =
        new Parcel(
            parcel.name(),
            box.outer(walls),
            walls,
            filling,
            containers(parcel, box.outer(walls), walls),
            List.of(),
            parcel.packs(),
            parcel.openings());
    Remedy.Shipment packed = warmed(parcel, new Remedy.Shipment(bare, journey));
    for (Remedy change : changes) {
      packed = change.applyTo(packed.parcel(), packed.journey());
    }
    WarmerPlacing.requireApart(packed.parcel());
    return packed;
  }

  /** Tells foam from board. */
  static boolean isFoam(WallLayer layer) {
    return layer.material().conductivity() < FOAM_BELOW;
  }

  private Map<Face, List<WallLayer>> layers(Walls walls) {
    Map<Face, List<WallLayer>> layers = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      Material kind = Materials.EPS_20;
      List<WallLayer> here = new ArrayList<>();
      for (WallLayer layer : walls.layersOf(face)) {
        if (isFoam(layer)) {
          kind = layer.material();
        } else {
          here.add(layer);
        }
      }
      if (here.isEmpty()) {
        here.add(new WallLayer(Materials.CORRUGATED_BOARD, 0.004));
      }
      if (foam > 0) {
        here.add(new WallLayer(kind, foam));
      }
      layers.put(face, here);
    }
    return layers;
  }

  private static List<Container> containers(Parcel parcel, Box outer, Walls walls) {
    double top = 0;
    double bottom = Double.POSITIVE_INFINITY;
    double floor = parcel.cavity().min().z();
    for (Container each : parcel.containers()) {
      top = Math.max(top, parcel.room(each).max().z() - floor);
      bottom = Math.min(bottom, parcel.room(each).min().z() - floor);
    }
    double before = parcel.cavity().size(Axis.Z) - (top - bottom);
    double now =
        (outer.size(Axis.Z) - walls.thickness(Face.Z_MIN) - walls.thickness(Face.Z_MAX))
            - (top - bottom);
    double lower = before > 0 ? bottom * (1 - Math.max(0, now) / before) : 0;
    List<Container> moved = new ArrayList<>();
    for (Container each : parcel.containers()) {
      Position at = each.position();
      moved.add(
          new Container(
              each.name(),
              each.vessel(),
              new Position(at.alongX(), at.alongY(), Math.max(0, at.aboveFloor() - lower)),
              each.bedding(),
              each.occupant()));
    }
    return moved;
  }

  /** A first warmer under the lid, a second one on a side. */
  private Remedy.Shipment warmed(Parcel before, Remedy.Shipment bare) {
    if (warmer.isEmpty()) {
      return bare;
    }
    double opened =
        before.warmers().stream()
            .mapToDouble(PlacedWarmer::opened)
            .findFirst()
            .orElse(PlacedWarmer.USUALLY_OPENED);
    Parcel one =
        bare.parcel()
            .withWarmers(
                List.of(
                    new PlacedWarmer(
                        "warmer", warmer.get(), Face.Z_MAX, Mounting.taped(), opened)));
    return count == 1
        ? new Remedy.Shipment(one, bare.journey())
        : Remedy.SecondWarmer.beside(one).orElseThrow().applyTo(one, bare.journey());
  }
}
