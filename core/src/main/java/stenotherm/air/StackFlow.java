package stenotherm.air;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * Air that flows through openings at different heights because the air inside is lighter or heavier
 * than outside. It enters on one side of the neutral level, where both pressures are equal, and
 * leaves on the other.
 *
 * <p>Openings at one height exchange nothing here: through a single horizontal hole of 6 mm light
 * and heavy air change places by less than half a litre an hour. What gas the parcel makes or takes
 * up, and what a change of pressure drives, is left out: it is a hundredth of such a flow.
 *
 * <p>A value, thus thread-safe.
 *
 * @param exchange flow in, equal to the flow out [m3/s]
 * @param neutralLevel height at which nothing flows [m]
 * @param laminar true if all flows are: beyond a Reynolds number of 2000 the law is out of its
 *     range
 */
public record StackFlow(double exchange, double neutralLevel, boolean laminar) {
  /** Standard gravity [m/s2], exact by definition (CGPM 1901). */
  private static final double GRAVITY = 9.80665;

  /** Bisection alone would take forty. */
  private static final int MOST_EVALUATIONS = 200;

  /**
   * An opening in its place.
   *
   * @param opening the opening
   * @param height height above any level, as the parcel lies now [m]
   */
  public record OpeningAtHeight(Opening opening, double height) {
    /**
     * Checks the place.
     *
     * @throws InvalidInputException if the height is no finite number
     */
    public OpeningAtHeight {
      Checks.given("opening", opening);
      Checks.finite("height of an opening", height, "m");
    }
  }

  /**
   * Finds the flow.
   *
   * @param openings the openings; may be none
   * @param temperature mean temperature in the openings [K]
   * @param inside density of the air inside [kg/m3]
   * @param outside density of the air outside [kg/m3]
   * @return the flow; none where fewer than two openings at different heights let air through
   * @throws InvalidInputException if a density is not above 0
   */
  public static StackFlow of(
      List<OpeningAtHeight> openings, double temperature, double inside, double outside) {
    Checks.given("openings", openings);
    Checks.parcelTemperature("temperature of openings", temperature);
    Checks.positive("density of air inside", inside, "kg/m3");
    Checks.positive("density of air outside", outside, "kg/m3");
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (OpeningAtHeight each : openings) {
      if (Double.isFinite(each.opening().laminarResistance(temperature))) {
        low = Math.min(low, each.height());
        high = Math.max(high, each.height());
      }
    }
    if (!(high > low)) {
      return new StackFlow(0, high == low ? low : 0, true);
    }
    double gradient = (outside - inside) * GRAVITY;
    double density = (inside + outside) / 2;
    double level =
        new BrentSolver(0, 1e-12 * (high - low), 0)
            .solve(
                MOST_EVALUATIONS,
                height -> net(openings, height, gradient, temperature, density),
                low,
                high);
    double through = 0;
    boolean laminar = true;
    for (OpeningAtHeight each : openings) {
      double flow = each.opening().flow(gradient * (each.height() - level), temperature, density);
      through += Math.abs(flow) / 2;
      laminar &= each.opening().reynolds(flow, temperature, density) <= 2000;
    }
    return new StackFlow(through, level, laminar);
  }

  private static double net(
      List<OpeningAtHeight> openings,
      double level,
      double gradient,
      double temperature,
      double density) {
    double sum = 0;
    for (OpeningAtHeight each : openings) {
      sum += each.opening().flow(gradient * (each.height() - level), temperature, density);
    }
    return sum;
  }
}
