package stenotherm.base;

/**
 * The three axes of a rectilinear body. In a parcel x runs along the length, y along the width and
 * z upwards.
 *
 * <p>Thread-safe.
 */
public enum Axis {
  /** The first axis, index i. */
  X,
  /** The second axis, index j. */
  Y,
  /** The third axis, index k; upwards in a parcel. */
  Z
}
