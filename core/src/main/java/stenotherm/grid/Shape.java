package stenotherm.grid;

/**
 * What part of its box a block fills.
 *
 * <p>Stable. Thread-safe.
 */
public enum Shape {
  /** The whole box. */
  BOX,
  /** The elliptic cylinder with its axis along x that touches the box; round if it is square. */
  CYLINDER_X,
  /** The elliptic cylinder with its axis along y that touches the box. */
  CYLINDER_Y,
  /** The elliptic cylinder with its axis along z that touches the box. */
  CYLINDER_Z
}
