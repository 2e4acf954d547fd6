package stenotherm.parcel;

import java.util.List;
import java.util.Set;
import stenotherm.animal.Animal;
import stenotherm.animal.AnimalBody;
import stenotherm.base.Checks;
import stenotherm.base.HeatFlow;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Temperatures;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/**
 * A lidded box-shaped cup with a damp towel on its floor and an animal on the towel.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param name name, unique in a parcel
 * @param size inner extents [m]; the wall is thin and taken as part of what is around
 * @param position where it stands
 * @param wall material and thickness of wall and lid
 * @param towel what lies on the floor, with its water, and how thick it is
 * @param occupant who is inside
 */
public record Cup(
    String name, Size size, Position position, WallLayer wall, WallLayer towel, Occupant occupant) {
  /**
   * Extents of a cup.
   *
   * @param length along x [m]
   * @param width along y [m]
   * @param height along z [m]
   */
  public record Size(double length, double width, double height) {
    /**
     * Checks the extents.
     *
     * @throws InvalidInputException if one is not above 0
     */
    public Size {
      Checks.positive("cup length", length, "m");
      Checks.positive("cup width", width, "m");
      Checks.positive("cup height", height, "m");
    }
  }

  /**
   * Where a cup stands.
   *
   * @param alongX centre of the cup from the centre of the cavity, along x [m]
   * @param alongY centre of the cup from the centre of the cavity, along y [m]
   * @param aboveFloor bottom of the cup above the inner floor [m], 0 or above
   */
  public record Position(double alongX, double alongY, double aboveFloor) {
    /** In the middle, on the floor. */
    public static final Position MIDDLE_OF_FLOOR = new Position(0, 0, 0);

    /**
     * Checks the position.
     *
     * @throws InvalidInputException if a coordinate is not finite or the height is negative
     */
    public Position {
      Checks.finite("cup offset along x", alongX, "m");
      Checks.finite("cup offset along y", alongY, "m");
      Checks.notNegative("cup height above floor", aboveFloor, "m");
    }
  }

  /**
   * An animal in a cup.
   *
   * @param animal which animal
   * @param body its mass and shape
   */
  public record Occupant(Animal animal, AnimalBody body) {}

  /** The temperature at which the effective conductivity of the air in a cup is taken [K]. */
  private static final double AIR_TEMPERATURE = Temperatures.fromCelsius(15);

  /** The narrowest gap that the air in a cup is given, for an animal that fills it [m]. */
  private static final double NARROWEST_GAP = 0.005;

  /**
   * Checks that towel and animal fit.
   *
   * @throws InvalidInputException if the name is blank or something sticks out, by how much
   */
  public Cup {
    Checks.name("cup name", name);
    AnimalBody.Extents body = occupant.body().extents(occupant.animal().tissue());
    fits(name, "length", body.length(), size.length());
    fits(name, "width", body.width(), size.width());
    fits(name, "height, on its towel", body.height() + towel.thickness(), size.height());
  }

  private static void fits(String cup, String what, double needed, double room) {
    if (needed > room) {
      throw new InvalidInputException(
          "cup '" + cup + "'",
          String.format(
              java.util.Locale.ROOT,
              "the animal's %s takes %.1f mm but the cup has %.1f mm: %.1f mm too little",
              what,
              Lengths.toMillimetres(needed),
              Lengths.toMillimetres(room),
              Lengths.toMillimetres(needed - room)));
    }
  }

  /**
   * Returns the name of the block that is the animal, for probes and pictures.
   *
   * @return name of the animal's block
   */
  public String animalBlock() {
    return name + " animal";
  }

  private String airBlock() {
    return name + " air";
  }

  private String towelBlock() {
    return name + " towel";
  }

  Item item(Box cavity) {
    Point centre = cavity.centre();
    double floor = cavity.min().z() + position.aboveFloor();
    double x = centre.x() + position.alongX();
    double y = centre.y() + position.alongY();
    Box box =
        new Box(
            new Point(x - size.length() / 2, y - size.width() / 2, floor),
            new Point(x + size.length() / 2, y + size.width() / 2, floor + size.height()));
    return new Item(name, box);
  }

  /** Air, towel and animal, in the order of painting. */
  List<Block> blocks(Box cavity) {
    Box cup = item(cavity).box();
    Point low = cup.min();
    Box onFloor =
        new Box(low, new Point(cup.max().x(), cup.max().y(), low.z() + towel.thickness()));
    AnimalBody.Extents body = occupant.body().extents(occupant.animal().tissue());
    Point centre = cup.centre();
    double bottom = low.z() + towel.thickness();
    Box animal =
        new Box(
            new Point(centre.x() - body.length() / 2, centre.y() - body.width() / 2, bottom),
            new Point(
                centre.x() + body.length() / 2,
                centre.y() + body.width() / 2,
                bottom + body.height()));
    return List.of(
        new Block.Solid(airBlock(), cup, air()),
        new Block.Solid(towelBlock(), onFloor, towel.material()),
        new Block.Solid(animalBlock(), animal, occupant.animal().tissue()));
  }

  /**
   * Air that convects and radiates, as a solid of the same resistance across the typical gap
   * between animal and wall: the resistance of an air layer hardly grows with its thickness, so
   * that a conductivity taken from the whole cup would be several times too large beside the
   * animal.
   */
  private Material air() {
    AnimalBody.Extents body = occupant.body().extents(occupant.animal().tissue());
    double aside = (size.length() - body.length() + size.width() - body.width()) / 4;
    double above = size.height() - towel.thickness() - body.height();
    double gap = Math.max(NARROWEST_GAP, (aside + above) / 2);
    double conductivity =
        AirLayer.ordinary(HeatFlow.HORIZONTAL, gap).effectiveConductivity(AIR_TEMPERATURE);
    return Materials.STILL_AIR.withConductivity(conductivity);
  }

  ThinResistance wallResistance() {
    return ThinResistance.around(
        Set.of(airBlock(), towelBlock(), animalBlock()),
        wall.thickness() / wall.material().conductivity());
  }

  double mass() {
    double towelMass =
        towel.thickness() * size.length() * size.width() * towel.material().density();
    double area =
        2
            * (size.length() * size.width()
                + size.length() * size.height()
                + size.width() * size.height());
    return occupant.body().mass() + towelMass + area * wall.thickness() * wall.material().density();
  }
}
