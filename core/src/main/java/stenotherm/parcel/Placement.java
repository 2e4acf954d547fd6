package stenotherm.parcel;

import java.util.Optional;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.grid.Point;

/**
 * Where a flat thing lies: a warmer or a pack. Of its two sides the longer one lies along the
 * longer extent of the cavity.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Placement {
  /**
   * Returns the room that the thing takes.
   *
   * @param pad length, width and, as the height, the thickness of the thing
   * @param cavity the room inside the walls [m]
   * @return the box; it may stick out of the cavity
   */
  Box box(Dimensions pad, Box cavity);

  /**
   * Returns how it is mounted on a wall that it touches.
   *
   * @return the place on the wall; empty if the thing touches none
   */
  Optional<OnFace> onWall();

  /**
   * In the middle of an inner face.
   *
   * @param face the face whose inner side carries it
   * @param mounting how it is held there
   * @return the placement
   */
  static Placement.OnFace onFace(Face face, Mounting mounting) {
    return new OnFace(face, 0, 0, mounting);
  }

  /**
   * On the inner side of a wall.
   *
   * @param face the face whose inner side carries it
   * @param alongFirst from the middle of the face along its first axis (x, or y on an x face) [m]
   * @param alongSecond from the middle of the face along its second axis (z, or y on a z face) [m]
   * @param mounting how it is held there
   */
  record OnFace(Face face, double alongFirst, double alongSecond, Mounting mounting)
      implements Placement {
    /**
     * Checks the offsets.
     *
     * @throws stenotherm.base.InvalidInputException if one is not finite
     */
    public OnFace {
      Checks.given("face", face);
      Checks.given("mounting", mounting);
      Checks.finite("offset on the " + face.words(), alongFirst, "m");
      Checks.finite("offset on the " + face.words(), alongSecond, "m");
    }

    @Override
    public Box box(Dimensions pad, Box cavity) {
      Axis normal = face.axis();
      double depth = mounting.standOff() + pad.height() / 2;
      double[] centre = {cavity.centre().x(), cavity.centre().y(), cavity.centre().z()};
      centre[normal.ordinal()] = cavity.at(face) + (face.isMax() ? -depth : depth);
      centre[first(normal).ordinal()] += alongFirst;
      centre[second(normal).ordinal()] += alongSecond;
      double[][] corners = corners(pad, centre, normal, cavity);
      if (mounting.standOff() == 0) {
        // the pad ends on the wall to the last digit
        corners[face.isMax() ? 1 : 0][normal.ordinal()] = cavity.at(face);
      }
      return new Box(point(corners[0]), point(corners[1]));
    }

    @Override
    public Optional<OnFace> onWall() {
      return mounting.standOff() == 0 ? Optional.of(this) : Optional.empty();
    }
  }

  /**
   * InCavity in what fills the cavity, or lying on a container.
   *
   * @param position where it lies
   * @param thin the axis along which it is thinnest; z if it lies flat
   */
  record InCavity(Position position, Axis thin) implements Placement {
    /**
     * Checks that nothing is null.
     *
     * @throws stenotherm.base.InvalidInputException if something is
     */
    public InCavity {
      Checks.given("position", position);
      Checks.given("thin", thin);
    }

    @Override
    public Box box(Dimensions pad, Box cavity) {
      Point bottom = position.in(cavity);
      double[] centre = {bottom.x(), bottom.y(), bottom.z()};
      double[][] corners = corners(pad, centre, thin, cavity);
      double raise = bottom.z() - corners[0][Axis.Z.ordinal()];
      corners[0][Axis.Z.ordinal()] += raise;
      corners[1][Axis.Z.ordinal()] += raise;
      return new Box(point(corners[0]), point(corners[1]));
    }

    @Override
    public Optional<OnFace> onWall() {
      return Optional.empty();
    }
  }

  private static Axis first(Axis normal) {
    return normal == Axis.X ? Axis.Y : Axis.X;
  }

  private static Axis second(Axis normal) {
    return normal == Axis.Z ? Axis.Y : Axis.Z;
  }

  private static double[][] corners(Dimensions pad, double[] centre, Axis thin, Box cavity) {
    Axis first = first(thin);
    Axis second = second(thin);
    double longer = Math.max(pad.length(), pad.width());
    double shorter = Math.min(pad.length(), pad.width());
    boolean longerFirst = cavity.size(first) >= cavity.size(second);
    double[] half = new double[3];
    half[first.ordinal()] = (longerFirst ? longer : shorter) / 2;
    half[second.ordinal()] = (longerFirst ? shorter : longer) / 2;
    half[thin.ordinal()] = pad.height() / 2;
    double[][] corners = new double[2][3];
    for (int axis = 0; axis < 3; axis++) {
      corners[0][axis] = centre[axis] - half[axis];
      corners[1][axis] = centre[axis] + half[axis];
    }
    return corners;
  }

  private static Point point(double[] xyz) {
    return new Point(xyz[0], xyz[1], xyz[2]);
  }
}
