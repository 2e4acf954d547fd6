package stenotherm.parcel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.base.Checks;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/**
 * A packed parcel that stands upright.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param name name of the packing
 * @param outer outer box, its lower corner at the origin [m]
 * @param walls layers of the six faces
 * @param fill what fills the room between walls, cups and warmers
 * @param cups the cups, at least one
 * @param warmers the warmers; may be empty
 */
public record Parcel(
    String name,
    Box outer,
    Walls walls,
    Material fill,
    List<Cup> cups,
    List<PlacedWarmer> warmers) {
  /** How far things may overlap by round-off [m]. */
  private static final double ROUND_OFF = 1e-9;

  /**
   * Checks that everything fits.
   *
   * @throws InvalidInputException if the name is blank, there is no cup, a name occurs twice, or
   *     two things overlap or one sticks out of the cavity; the message gives both names and by how
   *     many millimetres
   */
  public Parcel {
    Checks.name("packing name", name);
    cups = Checks.notEmpty("cups of " + name, cups);
    warmers = List.copyOf(warmers);
    Box cavity = walls.inside(outer, walls.shells());
    List<Item> items = new ArrayList<>();
    cups.forEach(cup -> items.add(cup.item(cavity)));
    warmers.forEach(warmer -> items.add(warmer.item(cavity)));
    for (int index = 0; index < items.size(); index++) {
      Item item = items.get(index);
      for (Face face : Face.values()) {
        double excess = cavity.excess(item.box(), face);
        if (excess > ROUND_OFF) {
          throw new InvalidInputException(
              "'" + item.name() + "'",
              millimetres(
                  "sticks out of the cavity into the wall " + face.label() + " by", excess));
        }
      }
      for (Item other : items.subList(0, index)) {
        double depth = item.box().overlap(other.box());
        if (other.name().equals(item.name())) {
          throw new InvalidInputException("'" + item.name() + "'", "occurs twice in the parcel");
        }
        if (depth > ROUND_OFF) {
          throw new InvalidInputException(
              "'" + item.name() + "'", millimetres("overlaps '" + other.name() + "' by", depth));
        }
      }
    }
  }

  private static String millimetres(String what, double metres) {
    return String.format(Locale.ROOT, "%s %.1f mm", what, Lengths.toMillimetres(metres));
  }

  /**
   * Returns the room inside the walls.
   *
   * @return the cavity [m]
   */
  public Box cavity() {
    return walls.inside(outer, walls.shells());
  }

  /**
   * The same packing without its warmers.
   *
   * @return the changed parcel
   */
  public Parcel withoutWarmers() {
    return new Parcel(name, outer, walls, fill, cups, List.of());
  }

  /**
   * The same packing with walls and fill at ends of their ranges of conductivity.
   *
   * @param wallEnd end for all wall layers
   * @param fillEnd end for the fill
   * @return the changed parcel
   */
  public Parcel at(End wallEnd, End fillEnd) {
    return new Parcel(name, outer, walls.at(wallEnd), fill.at(fillEnd), cups, warmers);
  }

  /**
   * Returns the blocks.
   *
   * @return walls, fill, contents of cups, warmers
   */
  public Layout layout() {
    Box cavity = cavity();
    List<Block> blocks = new ArrayList<>(walls.blocks(outer));
    blocks.add(new Block.Solid("fill", cavity, fill));
    cups.forEach(cup -> blocks.addAll(cup.blocks(cavity)));
    for (PlacedWarmer warmer : warmers) {
      blocks.add(
          new Block.Solid(warmer.name(), warmer.item(cavity).box(), Materials.WARMER_MIX_FRESH));
    }
    return new Layout(blocks);
  }

  /**
   * Returns the heat network: a film on each outer face, a source for each warmer.
   *
   * @param mesh how fine the grid is
   * @return the network
   */
  public HeatNetwork network(MeshControl mesh) {
    HeatNetwork.Builder network = HeatNetwork.builder(layout(), mesh);
    for (Face face : Face.values()) {
      network.boundary(face, BoundaryKind.CONVECTION);
    }
    cups.forEach(cup -> network.thinResistance(cup.wallResistance()));
    for (PlacedWarmer warmer : warmers) {
      network.source(warmer.name());
      if (warmer.mounting().standOff() == 0) {
        network.thinResistance(
            ThinResistance.between(
                warmer.name(),
                walls.innermost(warmer.face()),
                warmer.mounting().contactResistance()));
      }
    }
    return network.build();
  }

  /**
   * Returns the mass of the packed parcel.
   *
   * @return walls, fill, cups with contents and warmers [kg]
   */
  public double mass() {
    double sum = 0;
    Box cavity = cavity();
    for (int shell = 0; shell < walls.shells(); shell++) {
      Box box = walls.inside(outer, shell);
      Box within = walls.inside(outer, shell + 1);
      for (Face face : Face.values()) {
        List<WallLayer> layers = walls.layers().getOrDefault(face, List.of());
        if (layers.size() > shell) {
          // edges belong to two faces; the mean of outer and inner area counts them about once
          double area = (box.area(face) + within.area(face)) / 2;
          sum += layers.get(shell).material().density() * layers.get(shell).thickness() * area;
        }
      }
    }
    double free = cavity.volume();
    for (Cup cup : cups) {
      free -= cup.item(cavity).box().volume();
      sum += cup.mass();
    }
    for (PlacedWarmer warmer : warmers) {
      double volume = warmer.item(cavity).box().volume();
      free -= volume;
      sum += volume * Materials.WARMER_MIX_FRESH.density();
    }
    return sum + free * fill.density();
  }

  /**
   * Returns the outer volume.
   *
   * @return the volume [m3]
   */
  public double outerVolume() {
    return outer.volume();
  }
}
