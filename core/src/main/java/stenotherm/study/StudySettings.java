package stenotherm.study;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Workers;

/**
 * How many journeys are run.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param replicates scramblings of the points, from whose differences the interval comes, 16 to
 *     1024
 * @param points points of each, a power of two, 1 to 65,536
 * @param seed seed of the scramblings
 * @param workers threads that share the journeys; results have the same bits for any
 */
public record StudySettings(int replicates, int points, long seed, Workers workers) {
  private static final int LEAST_REPLICATES = 16;
  private static final int MOST_REPLICATES = 1024;
  private static final int MOST_POINTS = 65_536;

  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if one is out of its range
   */
  public StudySettings {
    if (replicates < LEAST_REPLICATES || replicates > MOST_REPLICATES) {
      throw new InvalidInputException(
          "replicates",
          replicates + " must be within " + LEAST_REPLICATES + " to " + MOST_REPLICATES);
    }
    if (points < 1 || points > MOST_POINTS || Integer.bitCount(points) != 1) {
      throw new InvalidInputException(
          "points", points + " must be a power of two within 1 to " + MOST_POINTS);
    }
    Checks.given("workers", workers);
  }

  /**
   * Settings with threads of their own.
   *
   * @param replicates scramblings of the points
   * @param points points of each
   * @param seed seed of the scramblings
   * @param threads most threads at a time, the calling one included
   * @throws InvalidInputException if one is out of its range
   */
  public StudySettings(int replicates, int points, long seed, int threads) {
    this(replicates, points, seed, new Workers(threads));
  }

  /**
   * 512 journeys.
   *
   * @param seed seed of the scramblings
   * @param threads number of threads
   * @return the settings
   */
  public static StudySettings standard(long seed, int threads) {
    return new StudySettings(LEAST_REPLICATES, 32, seed, threads);
  }

  /**
   * The same with another number of points.
   *
   * @param other points of each replicate
   * @return the changed settings
   */
  public StudySettings withPoints(int other) {
    return new StudySettings(replicates, other, seed, workers);
  }

  /**
   * The same with other threads.
   *
   * @param others the threads, for example of the caller's executor
   * @return the changed settings
   */
  public StudySettings with(Workers others) {
    return new StudySettings(replicates, points, seed, others);
  }

  /**
   * Returns the number of journeys.
   *
   * @return replicates times points
   */
  public int journeys() {
    return replicates * points;
  }
}
