package stenotherm.parcel;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Masses;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/**
 * A vessel in its place, with bedding on its floor and an animal on the bedding, or without.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name, unique in a parcel
 * @param vessel cup, bag or vial
 * @param position where it stands
 * @param bedding layers on its floor, the lowest first; may be empty
 * @param occupant the animal inside, if there is one, or several alike
 */
public record Container(
    String name,
    Vessel vessel,
    Position position,
    List<Bedding> bedding,
    Optional<Occupant> occupant) {
  /** The narrowest gap that the air in a vessel is given, for an animal that fills it [m]. */
  private static final double NARROWEST_GAP = 0.005;

  /** The widest gap that an air layer is meant for [m]. */
  private static final double WIDEST_GAP = 0.3;

  /**
   * A vessel with one layer of bedding and an animal on it.
   *
   * @param name name, unique in a parcel
   * @param vessel cup, bag or vial
   * @param position where it stands
   * @param bedding what lies on its floor
   * @param occupant who is inside
   * @throws InvalidInputException if the name is blank or something sticks out, by how much
   */
  public Container(
      String name, Vessel vessel, Position position, Bedding bedding, Occupant occupant) {
    this(
        name,
        vessel,
        position,
        List.of(Checks.given("bedding", bedding)),
        Optional.of(Checks.given("occupant", occupant)));
  }

  /**
   * Checks that bedding and animal fit.
   *
   * @throws InvalidInputException if the name is blank or something sticks out, by how much
   */
  public Container {
    Checks.given("name", name);
    Checks.given("vessel", vessel);
    Checks.given("position", position);
    Checks.given("bedding", bedding);
    Checks.given("occupant", occupant);
    Checks.name("container name", name);
    bedding = List.copyOf(bedding);
    double lain = thickness(bedding);
    if (isLying(vessel) && (bedding.size() > 1 || lain > vessel.inner().height() / 2)) {
      throw new InvalidInputException(
          "container '" + name + "'",
          "a lying vial takes one layer of bedding, up to half its diameter");
    }
    Optional<Misfit> misfit = Misfit.of(vessel, bedding, occupant);
    if (misfit.isPresent()) {
      throw new InvalidInputException(
          "container '" + name + "'",
          misfit.get().inWords() + ". " + Misfit.remedy(vessel, bedding, occupant));
    }
  }

  /**
   * A vessel without an animal and without bedding.
   *
   * @param name name, unique in a parcel
   * @param vessel cup, bag or vial
   * @param position where it stands
   * @return the container
   * @throws InvalidInputException if the name is blank
   */
  public static Container empty(String name, Vessel vessel, Position position) {
    return new Container(name, vessel, position, List.of(), Optional.empty());
  }

  static double thickness(List<Bedding> bedding) {
    return bedding.stream().mapToDouble(Bedding::thickness).sum();
  }

  static boolean isLying(Vessel vessel) {
    return vessel.shape() == Shape.CYLINDER_X || vessel.shape() == Shape.CYLINDER_Y;
  }

  /**
   * Height above its lowest line at which a lying vial is as wide as a body; 0 in other vessels
   * [m].
   */
  private static double chordHeight(Vessel vessel, Dimensions body) {
    if (!isLying(vessel)) {
      return 0;
    }
    double radius = vessel.inner().height() / 2;
    double half = (vessel.shape() == Shape.CYLINDER_X ? body.width() : body.length()) / 2;
    return radius - Math.sqrt(Math.max(0, radius * radius - half * half));
  }

  static double animalBottom(Vessel vessel, double lain, Dimensions body) {
    return Math.max(lain, chordHeight(vessel, body));
  }

  static double ceiling(Vessel vessel, Dimensions body) {
    return vessel.inner().height() - chordHeight(vessel, body);
  }

  /**
   * The same container with other holes in its lid.
   *
   * @param lid the holes
   * @return the changed container; the same if it is a bag
   */
  public Container with(LidHoles lid) {
    return new Container(name, vessel.with(lid), position, bedding, occupant);
  }

  /**
   * The same container in another place.
   *
   * @param other where it stands
   * @return the changed container
   */
  public Container at(Position other) {
    return new Container(name, vessel, other, bedding, occupant);
  }

  /**
   * Returns the name of the block that is the animal, for probes and pictures.
   *
   * @return name of the animal's block; there is such a block only with an animal inside
   */
  public String animalBlock() {
    return name + " animal";
  }

  /**
   * Returns the name of the block that is the air in the vessel.
   *
   * @return name of the air's block
   */
  public String airBlock() {
    return name + " air";
  }

  /**
   * Returns the name of the block of a layer of bedding.
   *
   * @param layer one of {@link #bedding()}
   * @return name of the layer's block
   */
  public String beddingBlock(Bedding layer) {
    return name + " " + layer.name();
  }

  /**
   * Returns the blocks of bedding that hold water.
   *
   * @return their names; empty if none does
   */
  public Set<String> dampBlocks() {
    Set<String> damp = new TreeSet<>();
    for (Bedding layer : bedding) {
      if (layer.waterPart() > 0) {
        damp.add(beddingBlock(layer));
      }
    }
    return damp;
  }

  Item item(Box cavity) {
    return new Item(name, vessel.inner().above(position.in(cavity)), vessel.shape());
  }

  /** Air, bedding and animal, in the order of painting. */
  List<Block> blocks(Box cavity, double airConductivity) {
    Box room = item(cavity).box();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Solid(
            airBlock(),
            room,
            Materials.STILL_AIR.withConductivity(airConductivity),
            vessel.shape()));
    double bottom = room.min().z();
    for (Bedding layer : bedding) {
      double top = bottom + layer.thickness();
      if (isLying(vessel)) {
        blocks.add(segment(layer, room));
      } else {
        Box box =
            new Box(
                new Point(room.min().x(), room.min().y(), bottom),
                new Point(room.max().x(), room.max().y(), top));
        blocks.add(new Block.Solid(beddingBlock(layer), box, layer.material(), vessel.shape()));
      }
      bottom = top;
    }
    double lain = bottom - room.min().z();
    occupant.ifPresent(
        who -> {
          Dimensions body = who.dimensions(vessel.inner());
          double above = animalBottom(vessel, lain, body);
          Point floor = new Point(room.centre().x(), room.centre().y(), room.min().z() + above);
          blocks.add(new Block.Solid(animalBlock(), body.above(floor), who.animal().tissue()));
        });
    return blocks;
  }

  /**
   * Bedding in a lying vial: the largest box in the segment of its thickness, about 0.58 of it,
   * with the segment's heat capacity.
   */
  private Block segment(Bedding layer, Box room) {
    double radius = vessel.inner().height() / 2;
    double low = layer.thickness() / 3;
    double half = Math.sqrt(low * (2 * radius - low));
    boolean alongX = vessel.shape() == Shape.CYLINDER_X;
    Point centre = room.centre();
    double halfX = alongX ? room.size(Axis.X) / 2 : half;
    double halfY = alongX ? half : room.size(Axis.Y) / 2;
    Box box =
        new Box(
            new Point(centre.x() - halfX, centre.y() - halfY, room.min().z() + low),
            new Point(centre.x() + halfX, centre.y() + halfY, room.min().z() + layer.thickness()));
    Material material = layer.material();
    double density = material.density() * beddingVolume(layer) / box.volume();
    return new Block.Solid(beddingBlock(layer), box, Densities.with(material, density));
  }

  private double beddingVolume(Bedding layer) {
    Dimensions inner = vessel.inner();
    if (isLying(vessel)) {
      double radius = inner.height() / 2;
      double up = radius - layer.thickness();
      double segment =
          radius * radius * Math.acos(up / radius) - up * Math.sqrt(radius * radius - up * up);
      return segment * Math.max(inner.length(), inner.width());
    }
    double base = inner.length() * inner.width();
    double part = vessel.shape() == Shape.BOX ? 1 : Math.PI / 4;
    return base * part * layer.thickness();
  }

  /**
   * Conductivity of a solid that has the resistance of the air in the vessel across the typical gap
   * between animal and wall: the resistance of an air layer hardly grows with its thickness, so
   * that a conductivity taken from the whole vessel would be several times too large beside the
   * animal. The faces of the animal that look up or down count with the vertical direction of heat,
   * the others with the horizontal one.
   */
  double airConductivity(HeatDirection vertical, Axis up, double meanTemperature) {
    double gap = gap();
    double share = verticalShare(up);
    return (1 - share)
            * AirLayer.ordinary(HeatDirection.HORIZONTAL, gap)
                .effectiveConductivity(meanTemperature)
        + share * AirLayer.ordinary(vertical, gap).effectiveConductivity(meanTemperature);
  }

  /**
   * Mean of the gap beside and the gap above the animal; without an animal the smallest extent of
   * the air.
   */
  private double gap() {
    Dimensions inner = vessel.inner();
    double lain = thickness(bedding);
    double gap;
    if (occupant.isPresent()) {
      Dimensions body = occupant.get().dimensions(inner);
      double aside = (inner.length() - body.length() + inner.width() - body.width()) / 4;
      double above = inner.height() - animalBottom(vessel, lain, body) - body.height();
      gap = (aside + above) / 2;
    } else {
      gap = Math.min(inner.height() - lain, Math.min(inner.length(), inner.width()));
    }
    return Math.min(WIDEST_GAP, Math.max(NARROWEST_GAP, gap));
  }

  /** Part of the surface next to the air that looks along an axis. */
  private double verticalShare(Axis up) {
    Dimensions inner = vessel.inner();
    Dimensions body = occupant.map(who -> who.dimensions(inner)).orElse(inner);
    double sum = 0;
    double vertical = 0;
    for (Axis axis : Axis.values()) {
      // an animal lies on its bedding: of its two horizontal faces one meets air
      double faces = axis == Axis.Z && occupant.isPresent() ? 1 : 2;
      double area = faces * body.volume() / body.along(axis);
      sum += area;
      vertical += axis == up ? area : 0;
    }
    return vertical / sum;
  }

  ThinResistance wallResistance() {
    Set<String> inside = new HashSet<>();
    inside.add(airBlock());
    bedding.forEach(layer -> inside.add(beddingBlock(layer)));
    occupant.ifPresent(who -> inside.add(animalBlock()));
    return ThinResistance.around(
        inside, vessel.wall().thickness() / vessel.wall().material().conductivity());
  }

  /** Area of wall and lid [m2]. */
  private double wallArea() {
    Dimensions inner = vessel.inner();
    double box =
        2
            * (inner.length() * inner.width()
                + inner.length() * inner.height()
                + inner.width() * inner.height());
    return vessel.shape() == Shape.BOX ? box : box * Math.PI / 4;
  }

  /**
   * Returns the mass of the vessel with what is inside.
   *
   * @return wall, bedding with its water, and animal [kg]
   */
  public double mass() {
    double sum = wallArea() * vessel.wall().thickness() * vessel.wall().material().density();
    for (Bedding layer : bedding) {
      sum += beddingVolume(layer) * layer.material().density();
    }
    return sum + occupant.map(Occupant::mass).orElse(0.0);
  }

  /**
   * Returns the volume of its air.
   *
   * @return what bedding and animal leave free [m3]
   */
  public double airVolume() {
    double volume = vessel.volume();
    for (Bedding layer : bedding) {
      volume -= beddingVolume(layer);
    }
    return volume - occupant.map(Occupant::volume).orElse(0.0);
  }

  /**
   * Returns the surface at which damp bedding meets the air.
   *
   * @return area of its floor [m2]; 0 without water
   */
  public double dampArea() {
    Dimensions inner = vessel.inner();
    return waterMass() > 0 ? inner.length() * inner.width() : 0;
  }

  /**
   * Returns the mass of the water in the bedding.
   *
   * @return mass of water [kg]
   */
  public double waterMass() {
    return bedding.stream()
        .mapToDouble(layer -> beddingVolume(layer) * layer.material().density() * layer.waterPart())
        .sum();
  }

  /**
   * Returns name, inner extents and who is inside.
   *
   * @return for example "cup, 110 x 110 x 60 mm, leopard gecko of 45 g"
   */
  @Override
  public String toString() {
    Dimensions inner = vessel.inner();
    return name
        + ", "
        + LengthText.millimetres(inner.length(), inner.width(), inner.height())
        + ", "
        + occupant
            .map(
                who ->
                    who.animal().name()
                        + " of "
                        + Checks.show(Masses.toGrams(who.body().mass()), "g"))
            .orElse("empty");
  }
}
