package stenotherm.grid;

import stenotherm.base.Axis;

/**
 * What the three coordinates of a layout measure. Cells, neighbours and solvers are the same for
 * all; only volumes, face areas and the lengths of conducting paths differ.
 *
 * <p>Thread-safe.
 */
public enum Coordinates {
  /** Three lengths. */
  CARTESIAN,

  /**
   * x is the radius [m], from 0 or above; y the angle [rad]; z the length along the axis [m].
   * Conduction along the radius is exact for T = a + b ln r.
   */
  CYLINDRICAL,

  /**
   * x is the radius [m], from 0 or above; y and z have no meaning and all blocks span them: every
   * block is a whole sphere or shell. Conduction along the radius is exact for T = a + b / r.
   */
  SPHERICAL;

  /** Tells whether x is a radius. */
  boolean isRadial() {
    return this != CARTESIAN;
  }

  /**
   * The factor of an interval of an axis in the volume of its cells; a volume is the product of
   * three.
   *
   * @param extent length of the domain along the axis
   */
  double measure(Axis axis, double low, double high, double extent) {
    return switch (this) {
      case CARTESIAN -> high - low;
      case CYLINDRICAL -> axis == Axis.X ? (high - low) * (high + low) / 2 : high - low;
      case SPHERICAL ->
          axis == Axis.X
              ? 4 * Math.PI / 3 * (high - low) * (high * high + high * low + low * low)
              : (high - low) / extent;
    };
  }

  /** Area at a radius for unit measure of both other axes. */
  double areaAt(double radius) {
    return this == SPHERICAL ? 4 * Math.PI * radius * radius : radius;
  }

  /**
   * Length of a slab, of the area of a cell's face, with the same conductance as the layer between
   * this face and where the cell has its mean temperature: the integral of area at the face over
   * area.
   *
   * <p>A cell's temperature is its mean. It is placed at the radius where a steady field has this
   * mean, which makes such a field exact. With a node in the middle the error would be of the order
   * of the width squared times its logarithm.
   *
   * @param inner inner radius of the cell
   * @param outer its outer radius
   * @param isMax whether the face is the outer one
   */
  double reach(double inner, double outer, boolean isMax) {
    double face = isMax ? outer : inner;
    if (face == 0) {
      return 0;
    }
    if (this == SPHERICAL) {
      double meanInverse = 1.5 * (outer + inner) / (outer * outer + outer * inner + inner * inner);
      return face * Math.abs(face * meanInverse - 1);
    }
    double ratio = inner / outer;
    double logarithm = ratio == 0 ? 0 : Math.log(ratio);
    // mean of ln(outer / r) over the ring
    double toOuter = 0.5 + ratio * ratio * logarithm / ((1 - ratio) * (1 + ratio));
    return isMax ? outer * toOuter : inner * (-logarithm - toOuter);
  }
}
