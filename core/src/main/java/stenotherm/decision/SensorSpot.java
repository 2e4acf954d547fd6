package stenotherm.decision;

import stenotherm.base.Checks;
import stenotherm.grid.Point;
import stenotherm.transit.TransitOutput;

/**
 * Where the sensor of a logger was in a box.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface SensorSpot {
  /**
   * Returns what the sensor shows.
   *
   * @param sensor name of the sensor
   * @return the output of a run that it is compared with
   */
  TransitOutput output(String sensor);

  /**
   * Anywhere in the air of a cup: its mean counts.
   *
   * @param cup name of a container
   */
  record InCup(String cup) implements SensorSpot {
    /**
     * Checks the name.
     *
     * @throws stenotherm.base.InvalidInputException if it is blank
     */
    public InCup {
      Checks.name("cup of a sensor", cup);
    }

    @Override
    public TransitOutput output(String sensor) {
      return new TransitOutput(TransitOutput.OutputQuantity.MEAN, cup + " air");
    }
  }

  /**
   * At a point.
   *
   * @param point where, from the lower corner of the outer box [m]
   */
  record AtPoint(Point point) implements SensorSpot {
    /** Checks the point. */
    public AtPoint {
      Checks.given("point of a sensor", point);
    }

    @Override
    public TransitOutput output(String sensor) {
      return new TransitOutput(TransitOutput.OutputQuantity.PLACE, sensor);
    }
  }
}
