package stenotherm.air;

import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;

/**
 * Air that flows through openings at different heights because the air inside is lighter or heavier
 * than outside. It enters on one side of the neutral level, where both pressures are equal, and
 * leaves on the other.
 *
 * <p>Openings at one height exchange nothing here: see {@link #throughOneHole}. What gas the parcel
 * makes or takes up, and what a change of pressure drives, is left out: it is a hundredth of such a
 * flow.
 *
 * <p>A value, thus thread-safe.
 *
 * @param exchange flow in, equal to the flow out [m3/s]
 * @param neutralLevel height at which nothing flows [m]
 * @param laminar true if all flows are: beyond a Reynolds number of 2000 the law is out of its
 *     range
 */
public record StackFlow(double exchange, double neutralLevel, boolean laminar) {
  /** Where the bound for one hole comes from. */
  public static final Source ONE_HOLE =
      Source.memory(
          "Epstein 1988, J. Heat Transfer 110:885",
          "greatest exchange through one horizontal opening, 0.055 (g d^5 Δρ/ρ)^0.5");

  private static final double GRAVITY = 9.80665;

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
    // outflow falls as the neutral level rises if the inside is lighter, else it grows
    double tolerance = 1e-12 * (high - low);
    while (high - low > tolerance) {
      double middle = (low + high) / 2;
      if (net(openings, middle, gradient, temperature, density) * gradient > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double level = (low + high) / 2;
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

  /**
   * Returns the most that light air below and heavy air above can exchange through one horizontal
   * hole. In holes below 10 mm the air is too viscous to reach it: an upper bound, no estimate.
   *
   * @param hole the hole
   * @param inside density of the air inside [kg/m3]
   * @param outside density of the air outside [kg/m3]
   * @return the exchange [m3/s]
   */
  public static double throughOneHole(VentHole hole, double inside, double outside) {
    double relative = 2 * Math.abs(outside - inside) / (outside + inside);
    return 0.055 * Math.sqrt(GRAVITY * Math.pow(hole.diameter(), 5) * relative);
  }
}
