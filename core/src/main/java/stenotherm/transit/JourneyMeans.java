package stenotherm.transit;

/**
 * What a judgement takes from one run.
 *
 * <p>Experimental. Belongs to whoever asked for it: its temperatures are no copy.
 */
public final class JourneyMeans {
  private final double[][] temperatures;
  private final Breathing breathing;

  JourneyMeans(double[][] temperatures, Breathing breathing) {
    this.temperatures = temperatures;
    this.breathing = breathing;
  }

  /**
   * Returns the mean temperatures of the animals.
   *
   * @return the array itself [K]: a row for each occupied cup, a column for each stored time
   */
  public double[][] temperatures() {
    return temperatures;
  }

  /**
   * Returns the air that they breathed.
   *
   * @return the whole run's
   */
  public Breathing breathing() {
    return breathing;
  }
}
