package stenotherm.air;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A round hole.
 *
 * <p>A value, thus thread-safe.
 *
 * @param diameter diameter [m]
 * @param length thickness of what it goes through [m]
 */
public record VentHole(double diameter, double length) implements Opening {
  /**
   * Checks the sizes.
   *
   * @throws InvalidInputException if the diameter is not above 0 or the length is negative
   */
  public VentHole {
    Checks.positive("diameter of a vent hole", diameter, "m");
    Checks.notNegative("length of a vent hole", length, "m");
  }

  /**
   * {@inheritDoc}
   *
   * <p>Each end adds π d / 8 to the length: half of what diffusion to and from a disc in a wall
   * meets (Rayleigh; Brown and Escombe 1900).
   */
  @Override
  public double conductance(Gas gas, double temperature, double pressure) {
    return gas.diffusivity(temperature, pressure) * area() / (length + Math.PI / 4 * diameter);
  }

  /**
   * {@inheritDoc}
   *
   * <p>Poiseuille's law. The ends add 3 π d / 16 to the length: creeping flow through a hole in a
   * thin wall (Sampson 1891), the sum of both after Dagan et al. 1982 (from memory).
   */
  @Override
  public double laminarResistance(double temperature) {
    return 128
        * MoistAir.viscosity(temperature)
        * (length + 3 * Math.PI / 16 * diameter)
        / (Math.PI * Math.pow(diameter, 4));
  }

  @Override
  public double inertialResistance(double density) {
    return LOSSES * density / (2 * area() * area());
  }

  @Override
  public double reynolds(double flow, double temperature, double density) {
    return Math.abs(flow) / area() * diameter * density / MoistAir.viscosity(temperature);
  }

  private double area() {
    return Math.PI / 4 * diameter * diameter;
  }
}
