package stenotherm.conduction;

/**
 * The kinds of boundary.
 *
 * <p>Thread-safe.
 */
public enum BoundaryKind {
  /** A film; its port takes the ambient temperature [K]. */
  CONVECTION("K"),
  /** A surface held at a temperature; its port takes this temperature [K]. */
  TEMPERATURE("K"),
  /** A prescribed flux; its port takes the heat flux into the body [W/m2]. */
  FLUX("W/m2"),
  /** No heat passes; there is no port. */
  ADIABATIC("");

  private final String unit;

  BoundaryKind(String unit) {
    this.unit = unit;
  }

  /**
   * Returns the unit of the port's value.
   *
   * @return the unit
   */
  public String unit() {
    return unit;
  }
}
