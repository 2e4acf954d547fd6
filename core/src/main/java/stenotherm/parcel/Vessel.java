package stenotherm.parcel;

import java.util.Collections;
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
   * @return the holes in lid or cap; none if the vessel is open
   */
  default List<VentHole> holes() {
    return isOpen() ? List.of() : Collections.nCopies(HOLES, new VentHole(HOLE, LID));
  }

  /** Holes that keepers punch into the lid of a cup, and their size [m]: common practice. */
  int HOLES = 8;

  /** Their diameter [m]. */
  double HOLE = 0.002;

  /** Thickness of a lid or cap [m]. */
  double LID = 0.0005;

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
   */
  record BoxCup(Dimensions inner, WallLayer wall) implements Vessel {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null, or the wall thicker than 10 mm
     */
    public BoxCup {
      Checks.given("inner", inner);
      thin(wall);
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
   */
  record RoundCup(double diameter, double height, WallLayer wall) implements Vessel {
    /**
     * Checks the extents.
     *
     * @throws stenotherm.base.InvalidInputException if one is not above 0, or the wall thicker than
     *     10 mm
     */
    public RoundCup {
      thin(wall);
      Checks.positive("diameter of a cup", diameter, "m");
      Checks.positive("height of a cup", height, "m");
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
  }

  /**
   * A round vial, standing or lying.
   *
   * @param diameter inner diameter [m], above 0
   * @param length inner length [m], above 0
   * @param axis the axis of the parcel that it lies along; z if it stands
   * @param wall material and thickness of wall and cap
   */
  record Vial(double diameter, double length, Axis axis, WallLayer wall) implements Vessel {
    /**
     * Checks the extents.
     *
     * @throws stenotherm.base.InvalidInputException if one is not above 0, or the wall thicker than
     *     10 mm
     */
    public Vial {
      Checks.given("axis", axis);
      thin(wall);
      Checks.positive("diameter of a vial", diameter, "m");
      Checks.positive("length of a vial", length, "m");
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
