package stenotherm.conduction;

import stenotherm.base.Checks;
import stenotherm.grid.Point;

/**
 * A named output.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Probe {
  /**
   * Returns the name under which results list the output.
   *
   * @return the name
   */
  String name();

  /**
   * Returns the unit of the output.
   *
   * @return "K", "W", or "" for a fraction
   */
  default String unit() {
    return "K";
  }

  /**
   * Lets a visitor answer for this kind of output.
   *
   * @param visitor the visitor
   * @param <R> type of the answer
   * @return its answer
   */
  <R> R accept(ProbeVisitor<R> visitor);

  /**
   * Tells whether the output is a heat flow.
   *
   * @return true for {@link HeatFlow} only
   */
  default boolean isHeatFlow() {
    return false;
  }

  /**
   * The volume mean over the cells that a block keeps.
   *
   * @param name name of the output
   * @param block name of the block
   */
  record Mean(String name, String block) implements Probe {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public Mean {
      Checks.name("probe name", name);
      Checks.given("block of probe " + name, block);
    }

    @Override
    public <R> R accept(ProbeVisitor<R> visitor) {
      return visitor.mean(this);
    }
  }

  /**
   * The highest temperature of the continuous field in the closed block, surfaces and corners
   * included.
   *
   * @param name name of the output
   * @param block name of the block
   */
  record Maximum(String name, String block) implements Probe {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public Maximum {
      Checks.name("probe name", name);
      Checks.given("block of probe " + name, block);
    }

    @Override
    public <R> R accept(ProbeVisitor<R> visitor) {
      return visitor.maximum(this);
    }
  }

  /**
   * The lowest temperature of the continuous field in the closed block, surfaces and corners
   * included.
   *
   * @param name name of the output
   * @param block name of the block
   */
  record Minimum(String name, String block) implements Probe {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public Minimum {
      Checks.name("probe name", name);
      Checks.given("block of probe " + name, block);
    }

    @Override
    public <R> R accept(ProbeVisitor<R> visitor) {
      return visitor.minimum(this);
    }
  }

  /**
   * The continuous field at a point; on a surface it is the surface temperature.
   *
   * @param name name of the output
   * @param point where
   */
  record At(String name, Point point) implements Probe {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public At {
      Checks.name("probe name", name);
      Checks.given("point of probe " + name, point);
    }

    @Override
    public <R> R accept(ProbeVisitor<R> visitor) {
      return visitor.at(this);
    }
  }

  /**
   * The area mean of the surface temperature under a boundary.
   *
   * @param name name of the output
   * @param boundary face label, name of an environment or of a patch
   */
  record SurfaceMean(String name, String boundary) implements Probe {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public SurfaceMean {
      Checks.name("probe name", name);
      Checks.given("boundary of probe " + name, boundary);
    }

    @Override
    public <R> R accept(ProbeVisitor<R> visitor) {
      return visitor.surfaceMean(this);
    }
  }

  /**
   * The liquid fraction of the cells that a melting block keeps: latent heat taken up over the
   * whole latent heat, 0 to 1.
   *
   * @param name name of the output
   * @param block name of the block
   */
  record LiquidFraction(String name, String block) implements Probe {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public LiquidFraction {
      Checks.name("probe name", name);
      Checks.given("block of probe " + name, block);
    }

    @Override
    public <R> R accept(ProbeVisitor<R> visitor) {
      return visitor.liquidFraction(this);
    }

    @Override
    public String unit() {
      return "";
    }
  }

  /**
   * The heat flow into the body through a boundary [W]; 0 where it is adiabatic.
   *
   * @param name name of the output
   * @param boundary face label, name of an environment or of a patch
   */
  record HeatFlow(String name, String boundary) implements Probe {
    /**
     * Checks the parts.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public HeatFlow {
      Checks.name("probe name", name);
      Checks.given("boundary of probe " + name, boundary);
    }

    @Override
    public <R> R accept(ProbeVisitor<R> visitor) {
      return visitor.heatFlow(this);
    }

    @Override
    public boolean isHeatFlow() {
      return true;
    }

    @Override
    public String unit() {
      return "W";
    }
  }
}
