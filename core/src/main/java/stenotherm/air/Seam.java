package stenotherm.air;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * A narrow gap, as around a lid. One that is taped has no gap and is left out. A seam that climbs
 * is given in pieces, each at its own height.
 *
 * <p>A value, thus thread-safe.
 *
 * @param gap width across [m], below the depth
 * @param length length along the edge [m]
 * @param depth path of the air through the gap [m]
 */
public record Seam(double gap, double length, double depth) implements Opening {
  /**
   * Checks the sizes.
   *
   * @throws InvalidInputException if a size is not above 0 or the gap is not below the depth
   */
  public Seam {
    Checks.positive("gap of a seam", gap, "m");
    Checks.positive("length of a seam", length, "m");
    Checks.positive("depth of a seam", depth, "m");
    if (gap >= depth) {
      throw new InvalidInputException(
          "gap of a seam",
          Checks.show(gap, "m")
              + " must be below its depth of "
              + Checks.show(depth, "m")
              + ". The gap is the width across, the depth the way through.");
    }
  }

  @Override
  public double conductance(Gas gas, double temperature, double pressure) {
    return gas.diffusivity(temperature, pressure) * gap * length / depth;
  }

  /**
   * {@inheritDoc}
   *
   * <p>Flow between parallel plates.
   */
  @Override
  public double laminarResistance(double temperature) {
    return 12 * MoistAir.viscosity(temperature) * depth / (length * gap * gap * gap);
  }

  @Override
  public double inertialResistance(double density) {
    double area = gap * length;
    return LOSSES * density / (2 * area * area);
  }

  @Override
  public double reynolds(double flow, double temperature, double density) {
    return 2 * Math.abs(flow) / length * density / MoistAir.viscosity(temperature);
  }
}
