package stenotherm.ambient;

import stenotherm.air.StandardAtmosphere;
import stenotherm.base.Checks;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * How the air moves along a surface, which sets the convective part of its film.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface AirMovement {
  /** Still air by the rule of ISO 6946, the default of this library. */
  AirMovement STILL = new Still();

  /**
   * Where the dependence on pressure comes from. At one temperature conductivity and viscosity do
   * not depend on it, so that density enters by the Grashof and the Reynolds number only. Natural
   * convection at a parcel's size goes with the fourth root of the Grashof number, which holds the
   * square of density; forced convection depends on the product of density and speed.
   */
  Source PRESSURE_SOURCE =
      Source.derived(
          "ASHRAE Handbook - Fundamentals 2021, ch. 4, Table 9, laminar natural convection;"
              + " Reynolds similarity",
          "natural part times (p/p0)^(1/2), speed times p/p0");

  /**
   * Returns the convective coefficient.
   *
   * @param heatFlow direction of the heat that leaves or enters the surface
   * @param pressure pressure of the air [Pa], 30 000 to 110 000
   * @return the coefficient [W/(m2 K)]
   * @throws InvalidInputException if the pressure is out of its range
   */
  double convective(HeatDirection heatFlow, double pressure);

  /**
   * Air that only the surface itself sets in motion, as indoors: 5.0 upward, 2.5 horizontal, 0.7
   * downward [W/(m2 K)]. What another handbook prints (ASHRAE Fundamentals 2021, ch. 26, Table 10)
   * leaves 4.03, 3.06 and 0.94 when radiation is taken off: so well is such a coefficient known.
   */
  record Still() implements AirMovement {
    /** Where the coefficients come from. */
    public static final Source SOURCE =
        Source.memory("ISO 6946:2017", "Annex C, internal surfaces");

    @Override
    public double convective(HeatDirection heatFlow, double pressure) {
      return Math.sqrt(StandardAtmosphere.relativePressure(pressure)) * atSeaLevel(heatFlow);
    }

    static double atSeaLevel(HeatDirection heatFlow) {
      return switch (heatFlow) {
        case UPWARD -> 5.0;
        case HORIZONTAL -> 2.5;
        case DOWNWARD -> 0.7;
      };
    }
  }

  /**
   * Air that moves along the surface: 4 + 4 v (ISO 6946:2017, Annex C; from memory), the same for
   * every direction of heat. Below a quarter of a metre per second the rule would fall short of
   * still air above a warm surface; the larger of the two holds there.
   *
   * @param speed speed of the air next to the surface [m/s], 0 to 10, as far as the standard's own
   *     table goes
   */
  record Moving(double speed) implements AirMovement {
    private static final Range SPEEDS = new Range(0, 10);

    /**
     * Checks the speed.
     *
     * @throws InvalidInputException if the speed is out of its range
     */
    public Moving {
      Checks.within(
          "air speed",
          speed,
          SPEEDS,
          "m/s",
          "Speeds are those next to the parcel, in metres per second: 10 mph are 4.5 m/s.");
    }

    @Override
    public double convective(HeatDirection heatFlow, double pressure) {
      double relative = StandardAtmosphere.relativePressure(pressure);
      double still = Math.sqrt(relative) * Still.atSeaLevel(heatFlow);
      return Math.max(4 * Math.sqrt(relative) + 4 * speed * relative, still);
    }
  }
}
