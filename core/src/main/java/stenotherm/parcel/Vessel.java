package stenotherm.parcel;

import java.util.List;
import stenotherm.air.VentHole;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Lengths;
import stenotherm.base.Range;
import stenotherm.grid.Shape;

/**
 * What holds an animal: a cup, a bag or a vial. Its wall is thin and taken as a resistance without
 * thickness.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Vessel {
  /**
   * Returns the inner extents of the box around it.
   *
   * @return the extents as it lies in the upright parcel
   */
  Dimensions inner();

  /**
   * Returns what its wall and lid are made of.
   *
   * @return material and thickness, 10 mm at most
   */
  WallLayer wall();

  /**
   * Returns what part of its box it fills.
   *
   * @return box, or a cylinder along one of the axes
   */
  Shape shape();

  /**
   * Returns the volume inside.
   *
   * @return the volume of its shape [m3]
   */
  default double volume() {
    double part = shape() == Shape.BOX ? 1 : Math.PI / 4;
    return part * inner().length() * inner().width() * inner().height();
  }

  /**
   * Tells whether the animal breathes the air of the parcel rather than that of the vessel.
   *
   * @return true for cloth, false for a lidded vessel
   */
  default boolean isOpen() {
    return false;
  }

  /**
   * Returns how the air of a lidded vessel meets that of the parcel.
   *
   * @return the holes in lid or cap, {@link LidHoles#USUAL} unless stated; none if the vessel is
   *     open
   */
  List<VentHole> holes();

  /**
   * Returns the area of the holes in lid or cap.
   *
   * @return the area of all of them [m2]; 0 if there are none or the vessel is open
   */
  default double holeArea() {
    return Math.PI
        / 4
        * holes().stream().mapToDouble(hole -> hole.diameter() * hole.diameter()).sum();
  }

  /**
   * Tells whether no air passes lid or cap.
   *
   * @return true if it has none of the holes that a lidded vessel needs
   */
  default boolean isTight() {
    return !isOpen() && holes().isEmpty();
  }

  /**
   * Tells whether less air passes lid or cap than keepers let in as a rule.
   *
   * @return true if the area of its holes is below that of {@link LidHoles#USUAL}; never if it is
   *     open
   */
  default boolean hasFewHoles() {
    return !isOpen() && holeArea() < with(LidHoles.USUAL).holeArea();
  }

  /**
   * The same vessel with other holes in lid or cap.
   *
   * @param lid the holes
   * @return the changed vessel; this one if it is open
   */
  Vessel with(LidHoles lid);

  /** Thickest wall [m]: it stores no heat and takes no room. */
  double THICKEST = 0.01;

  /**
   * Checks that a wall is thin enough to be taken as a resistance alone.
   *
   * @param wall the wall
   * @return the wall
   * @throws stenotherm.base.InvalidInputException if it is null, or thicker than 10 mm
   */
  static WallLayer thin(WallLayer wall) {
    double thickness = Checks.given("wall", wall).thickness();
    // half a metre is half a millimetre without its unit; a few centimetres are what they are
    boolean isMillimetres = thickness >= 0.1 && Lengths.fromMillimetres(thickness) <= THICKEST;
    Checks.within(
        "wall of a vessel",
        thickness,
        new Range(0, THICKEST),
        "m",
        isMillimetres ? "Is it in millimetres?" : "It is taken as a resistance alone.");
    return wall;
  }

  /**
   * A lidded cup with straight sides.
   *
   * @param inner inner extents
   * @param wall material and thickness of wall and lid
   * @param lid holes in the lid
   */
  record BoxCup(Dimensions inner, WallLayer wall, LidHoles lid) implements Vessel {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null, or the wall thicker than 10 mm
     */
    public BoxCup {
      Checks.given("inner", inner);
      thin(wall);
      Checks.given("lid", lid);
    }

    /**
     * A cup with {@linkplain LidHoles#USUAL usual holes} in its lid.
     *
     * @param inner inner extents
     * @param wall material and thickness of wall and lid
     * @throws stenotherm.base.InvalidInputException as with holes
     */
    public BoxCup(Dimensions inner, WallLayer wall) {
      this(inner, wall, LidHoles.USUAL);
    }

    @Override
    public BoxCup with(LidHoles other) {
      return new BoxCup(inner, wall, other);
    }

    @Override
    public List<VentHole> holes() {
      return lid.each();
    }

    @Override
    public Shape shape() {
      return Shape.BOX;
    }
  }

  /**
   * A lidded round cup that stands upright. A tapered one is taken at its mean diameter.
   *
   * @param diameter inner diameter [m], above 0
   * @param height inner height [m], above 0
   * @param wall material and thickness of wall and lid
   * @param lid holes in the lid
   */
  record RoundCup(double diameter, double height, WallLayer wall, LidHoles lid) implements Vessel {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if an extent is not above 0, or the wall
     *     thicker than 10 mm
     */
    public RoundCup {
      thin(wall);
      Checks.given("lid", lid);
      Checks.positive("diameter of a cup", diameter, "m");
      Checks.positive("height of a cup", height, "m");
    }

    /**
     * A cup with {@linkplain LidHoles#USUAL usual holes} in its lid.
     *
     * @param diameter inner diameter [m], above 0
     * @param height inner height [m], above 0
     * @param wall material and thickness of wall and lid
     * @throws stenotherm.base.InvalidInputException as with holes
     */
    public RoundCup(double diameter, double height, WallLayer wall) {
      this(diameter, height, wall, LidHoles.USUAL);
    }

    @Override
    public RoundCup with(LidHoles other) {
      return new RoundCup(diameter, height, wall, other);
    }

    @Override
    public List<VentHole> holes() {
      return lid.each();
    }

    @Override
    public Dimensions inner() {
      return new Dimensions(diameter, diameter, height);
    }

    @Override
    public Shape shape() {
      return Shape.CYLINDER_Z;
    }
  }

  /**
   * A cloth bag, taken as the box that the tied bag takes up.
   *
   * @param inner extents of the tied bag
   * @param wall material and thickness of the cloth
   */
  record Bag(Dimensions inner, WallLayer wall) implements Vessel {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null, or the wall thicker than 10 mm
     */
    public Bag {
      Checks.given("inner", inner);
      thin(wall);
    }

    @Override
    public Shape shape() {
      return Shape.BOX;
    }

    @Override
    public boolean isOpen() {
      return true;
    }

    @Override
    public Bag with(LidHoles lid) {
      return this;
    }

    @Override
    public List<VentHole> holes() {
      return List.of();
    }
  }

  /**
   * A round vial, standing or lying.
   *
   * @param diameter inner diameter [m], above 0
   * @param length inner length [m], above 0
   * @param axis the axis of the parcel that it lies along; z if it stands
   * @param wall material and thickness of wall and cap
   * @param cap holes in the cap
   */
  record Vial(double diameter, double length, Axis axis, WallLayer wall, LidHoles cap)
      implements Vessel {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if an extent is not above 0, or the wall
     *     thicker than 10 mm
     */
    public Vial {
      Checks.given("axis", axis);
      thin(wall);
      Checks.given("cap", cap);
      Checks.positive("diameter of a vial", diameter, "m");
      Checks.positive("length of a vial", length, "m");
    }

    /**
     * A vial with {@linkplain LidHoles#USUAL usual holes} in its cap.
     *
     * @param diameter inner diameter [m], above 0
     * @param length inner length [m], above 0
     * @param axis the axis of the parcel that it lies along; z if it stands
     * @param wall material and thickness of wall and cap
     * @throws stenotherm.base.InvalidInputException as with holes
     */
    public Vial(double diameter, double length, Axis axis, WallLayer wall) {
      this(diameter, length, axis, wall, LidHoles.USUAL);
    }

    @Override
    public Vial with(LidHoles other) {
      return new Vial(diameter, length, axis, wall, other);
    }

    @Override
    public List<VentHole> holes() {
      return cap.each();
    }

    @Override
    public Dimensions inner() {
      return switch (axis) {
        case X -> new Dimensions(length, diameter, diameter);
        case Y -> new Dimensions(diameter, length, diameter);
        case Z -> new Dimensions(diameter, diameter, length);
      };
    }

    @Override
    public Shape shape() {
      return switch (axis) {
        case X -> Shape.CYLINDER_X;
        case Y -> Shape.CYLINDER_Y;
        case Z -> Shape.CYLINDER_Z;
      };
    }
  }
}
