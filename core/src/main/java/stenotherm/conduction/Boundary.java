package stenotherm.conduction;

import stenotherm.base.TimeFunction;

/**
 * What happens at a face of the domain, a patch of it or the surface of an environment. All of it
 * may vary in time.
 *
 * <p>Stable. Values, thus thread-safe.
 */
public sealed interface Boundary {
  /**
   * A film: heat flux into the body h (T_ambient - T_surface).
   *
   * @param coefficient surface coefficient h [W/(m2 K)], never below 0
   * @param ambient ambient temperature [K]
   */
  record Convection(TimeFunction coefficient, TimeFunction ambient) implements Boundary {
    /**
     * A film whose coefficient and ambient never change.
     *
     * @param coefficient surface coefficient [W/(m2 K)]
     * @param ambient ambient temperature [K]
     * @return the boundary
     */
    public static Convection of(double coefficient, double ambient) {
      return new Convection(TimeFunction.constant(coefficient), TimeFunction.constant(ambient));
    }
  }

  /**
   * A surface held at a temperature.
   *
   * @param value surface temperature [K]
   */
  record PrescribedTemperature(TimeFunction value) implements Boundary {
    /**
     * A surface temperature that never changes.
     *
     * @param value surface temperature [K]
     * @return the boundary
     */
    public static PrescribedTemperature of(double value) {
      return new PrescribedTemperature(TimeFunction.constant(value));
    }
  }

  /**
   * A prescribed heat flux.
   *
   * @param value heat flux into the body [W/m2]
   */
  record PrescribedFlux(TimeFunction value) implements Boundary {
    /**
     * A heat flux that never changes.
     *
     * @param value heat flux into the body [W/m2]
     * @return the boundary
     */
    public static PrescribedFlux of(double value) {
      return new PrescribedFlux(TimeFunction.constant(value));
    }
  }

  /** No heat passes: insulation, or a plane of symmetry. */
  record Adiabatic() implements Boundary {}
}
