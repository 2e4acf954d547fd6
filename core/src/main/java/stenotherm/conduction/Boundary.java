package stenotherm.conduction;

import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.TimeFunction;

/**
 * The thermal boundary condition at a face of the domain, at a patch of a face or at the surface of
 * an environment. All values may vary in time.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Boundary {
  /**
   * Returns the kind of boundary.
   *
   * @return the kind
   */
  BoundaryKind kind();

  /**
   * Returns the value of the boundary's port.
   *
   * @return ambient or surface temperature [K], or heat flux into the body [W/m2]; 0 if adiabatic
   */
  TimeFunction value();

  /**
   * Returns the surface coefficient of a film.
   *
   * @return the coefficient [W/(m2 K)]; nothing if there is no film
   */
  default Optional<TimeFunction> film() {
    return Optional.empty();
  }

  /**
   * A film: heat flux into the body h (T_ambient - T_surface).
   *
   * @param coefficient surface coefficient h [W/(m2 K)], never below 0
   * @param ambient ambient temperature [K]
   */
  record Convection(TimeFunction coefficient, TimeFunction ambient) implements Boundary {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null
     */
    public Convection {
      Checks.given("surface coefficient", coefficient);
      Checks.given("ambient", ambient);
    }

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

    @Override
    public BoundaryKind kind() {
      return BoundaryKind.CONVECTION;
    }

    @Override
    public TimeFunction value() {
      return ambient;
    }

    @Override
    public Optional<TimeFunction> film() {
      return Optional.of(coefficient);
    }
  }

  /**
   * A surface held at a temperature.
   *
   * @param value surface temperature [K]
   */
  record PrescribedTemperature(TimeFunction value) implements Boundary {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null
     */
    public PrescribedTemperature {
      Checks.given("surface temperature", value);
    }

    /**
     * A surface temperature that never changes.
     *
     * @param value surface temperature [K]
     * @return the boundary
     */
    public static PrescribedTemperature of(double value) {
      return new PrescribedTemperature(TimeFunction.constant(value));
    }

    @Override
    public BoundaryKind kind() {
      return BoundaryKind.TEMPERATURE;
    }
  }

  /**
   * A prescribed heat flux.
   *
   * @param value heat flux into the body [W/m2]
   */
  record PrescribedFlux(TimeFunction value) implements Boundary {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if one is null
     */
    public PrescribedFlux {
      Checks.given("heat flux", value);
    }

    /**
     * A heat flux that never changes.
     *
     * @param value heat flux into the body [W/m2]
     * @return the boundary
     */
    public static PrescribedFlux of(double value) {
      return new PrescribedFlux(TimeFunction.constant(value));
    }

    @Override
    public BoundaryKind kind() {
      return BoundaryKind.FLUX;
    }
  }

  /** No heat passes: insulation, or a plane of symmetry. */
  record Adiabatic() implements Boundary {
    @Override
    public BoundaryKind kind() {
      return BoundaryKind.ADIABATIC;
    }

    @Override
    public TimeFunction value() {
      return TimeFunction.constant(0);
    }
  }
}
