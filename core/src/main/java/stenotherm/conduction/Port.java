package stenotherm.conduction;

/**
 * A named input of a heat network.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Port {
  /**
   * Returns the name: that of a face, an environment or a patch for a boundary, a block's name or
   * one of its own for a source.
   *
   * @return the name
   */
  String name();

  /**
   * Returns the unit of the port's value.
   *
   * @return the unit
   */
  String unit();

  /**
   * A boundary; its value is a temperature [K] or a flux into the body [W/m2].
   *
   * @param name face label, name of an environment or of a patch
   * @param kind kind of boundary
   * @param area area through which heat passes [m2]
   */
  record BoundaryPort(String name, BoundaryKind kind, double area) implements Port {
    @Override
    public String unit() {
      return kind.unit();
    }
  }

  /**
   * A heat source, spread evenly over the cells of blocks; its value is the power of the whole
   * source [W].
   *
   * @param name name of the block, or the source's own
   * @param volume volume that the blocks keep after overriding [m3]
   */
  record SourcePort(String name, double volume) implements Port {
    @Override
    public String unit() {
      return "W";
    }
  }
}
