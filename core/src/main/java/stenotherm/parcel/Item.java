package stenotherm.parcel;

import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.grid.Shape;

/** Something that lies in the cavity and takes up room. */
record Item(String name, Box box, Shape shape) {
  Item(String name, Box box) {
    this(name, box, Shape.BOX);
  }

  double volume() {
    return shape == Shape.BOX ? box.volume() : box.volume() * Math.PI / 4;
  }

  /** Surface [m2]; a cylinder has pi/4 of its square box's, at the ends and around. */
  double surface() {
    double sum = 0;
    for (Face face : Face.values()) {
      sum += box.area(face);
    }
    return shape == Shape.BOX ? sum : sum * Math.PI / 4;
  }

  private static Shape alongAxis(Axis axis) {
    return switch (axis) {
      case X -> Shape.CYLINDER_X;
      case Y -> Shape.CYLINDER_Y;
      case Z -> Shape.CYLINDER_Z;
    };
  }

  /**
   * Depth by which two things overlap [m]; zero or negative if they do not. Round things that stand
   * side by side may share the corners of their boxes.
   */
  double overlap(Item other) {
    double depth = box.overlap(other.box);
    for (Axis axis : Axis.values()) {
      boolean round = shape == alongAxis(axis);
      boolean otherRound = other.shape == alongAxis(axis);
      if ((round || otherRound)
          && (shape == other.shape || shape == Shape.BOX || other.shape == Shape.BOX)) {
        Item circle = round ? this : other;
        depth = Math.min(depth, circle.overlapInPlane(round ? other : this, axis));
      }
    }
    return depth;
  }

  /** The same in the plane across this round thing's axis. */
  private double overlapInPlane(Item other, Axis axis) {
    double squared = 0;
    double reach = 0;
    for (Axis across : Axis.values()) {
      if (across == axis) {
        continue;
      }
      double distance = Math.abs(box.centre().along(across) - other.box.centre().along(across));
      reach = box.size(across) / 2;
      if (other.shape == Shape.BOX) {
        distance = Math.max(0, distance - other.box.size(across) / 2);
      } else {
        reach += other.box.size(across) / 2;
      }
      squared += distance * distance;
    }
    return reach - Math.sqrt(squared);
  }
}
