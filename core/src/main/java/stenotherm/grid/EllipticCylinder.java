package stenotherm.grid;

import stenotherm.base.Axis;

/** The elliptic cylinder that touches a box, with its axis along one of the box's. */
final class EllipticCylinder {
  /** Five-point Gauss-Legendre nodes and weights on -1 to 1 (standard values, from memory). */
  private static final double[] NODE = {
    0, -0.5384693101056831, 0.5384693101056831, -0.9061798459386640, 0.9061798459386640
  };

  private static final double[] WEIGHT = {
    0.5688888888888889,
    0.4786286704993665,
    0.4786286704993665,
    0.2369268850561891,
    0.2369268850561891
  };

  private final Axis axis;
  private final Axis first;
  private final Axis second;
  private final Box box;

  EllipticCylinder(Axis axis, Box box) {
    this.axis = axis;
    this.first = axis == Axis.X ? Axis.Y : Axis.X;
    this.second = axis == Axis.Z ? Axis.Y : Axis.Z;
    this.box = box;
  }

  Axis axis() {
    return axis;
  }

  Axis first() {
    return first;
  }

  Axis second() {
    return second;
  }

  private double halfWidth(Axis across) {
    return box.size(across) / 2;
  }

  /** Distance from the cylinder's axis in units of the half width: -1 to 1 within the box. */
  private double scaled(Axis across, double coordinate) {
    double centre = (box.min().along(across) + box.max().along(across)) / 2;
    return (coordinate - centre) / halfWidth(across);
  }

  /** Tells whether the ellipse holds a point of the plane normal to the axis. */
  boolean holds(double alongFirst, double alongSecond) {
    double u = scaled(first, alongFirst);
    double v = scaled(second, alongSecond);
    return u * u + v * v < 1;
  }

  /** Tells whether the ellipse holds the point that a point in space has in its plane. */
  boolean holds(double x, double y, double z) {
    return holds(first == Axis.X ? x : y, second == Axis.Z ? z : y);
  }

  /** Tells whether the ellipse passes through the interior of a rectangle. */
  boolean cuts(double firstLow, double firstHigh, double secondLow, double secondHigh) {
    double u0 = scaled(first, firstLow);
    double u1 = scaled(first, firstHigh);
    double v0 = scaled(second, secondLow);
    double v1 = scaled(second, secondHigh);
    double nearU = Math.max(0, Math.max(u0, -u1));
    double nearV = Math.max(0, Math.max(v0, -v1));
    double farU = Math.max(Math.abs(u0), Math.abs(u1));
    double farV = Math.max(Math.abs(v0), Math.abs(v1));
    return nearU * nearU + nearV * nearV < 1 && farU * farU + farV * farV > 1;
  }

  /**
   * Half the chord parallel to an axis at a coordinate of the other lateral axis [m]; 0 outside.
   */
  double halfChord(Axis parallel, double coordinate) {
    double v = scaled(other(parallel), coordinate);
    return halfWidth(parallel) * Math.sqrt(Math.max(0, 1 - v * v));
  }

  /** Where the chord parallel to an axis has its middle [m]. */
  double middle(Axis parallel) {
    return (box.min().along(parallel) + box.max().along(parallel)) / 2;
  }

  private Axis other(Axis lateral) {
    return lateral == first ? second : first;
  }

  /**
   * Mean, over an interval of the other lateral axis, of the component along an axis of the
   * surface's unit normal. Times the interval's length it is the integral of that component's
   * square over the piece of surface that projects onto the interval.
   */
  double meanNormal(Axis component, double low, double high) {
    Axis other = other(component);
    double a = halfWidth(component);
    double b = halfWidth(other);
    // the angle from the ellipse's vertex makes the integrand smooth to the interval's ends
    double from = Math.asin(Math.max(-1, Math.min(1, scaled(other, low))));
    double to = Math.asin(Math.max(-1, Math.min(1, scaled(other, high))));
    double integral = 0;
    for (int point = 0; point < NODE.length; point++) {
      double angle = (from + to) / 2 + NODE[point] * (to - from) / 2;
      double cosine = Math.cos(angle);
      double normal = cosine / a / Math.hypot(cosine / a, Math.sin(angle) / b);
      integral += WEIGHT[point] * normal * b * cosine;
    }
    return integral * (to - from) / 2 / (high - low);
  }
}
