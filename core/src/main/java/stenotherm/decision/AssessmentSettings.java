package stenotherm.decision;

import stenotherm.base.Checks;
import stenotherm.base.Workers;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;

/**
 * How a packing is judged.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param transit how finely the runs are computed, and on how many threads models are built;
 *     decisions take grids coarser than its mesh and extrapolate from them
 * @param longestHold how long after the planned opening the last leg is followed [s], above 0
 * @param study how many journeys are run, and on how many threads
 */
public record AssessmentSettings(TransitSettings transit, double longestHold, StudySettings study) {
  /** Seed of the journeys unless another is given. */
  public static final long SEED = 20_261_129;

  /**
   * Checks the hold.
   *
   * @throws stenotherm.base.InvalidInputException if it is not above 0
   */
  public AssessmentSettings {
    Checks.given("transit", transit);
    Checks.given("study", study);
    Checks.positive("longest hold", longestHold, "s");
  }

  /**
   * Settings with the usual number of journeys.
   *
   * @param transit how finely the runs are computed
   * @param longestHold how long after the planned opening the last leg is followed [s], above 0
   */
  public AssessmentSettings(TransitSettings transit, double longestHold) {
    this(
        Checks.given("transit", transit),
        longestHold,
        StudySettings.standard(SEED, transit.workers().threads()).with(transit.workers()));
  }

  /**
   * The default: standard transits, a day of hold, all on one thread.
   *
   * @return the settings
   * @see #withThreads
   */
  public static AssessmentSettings standard() {
    return new AssessmentSettings(TransitSettings.standard(), 86_400);
  }

  /**
   * The same settings with several threads of their own, which build models and share journeys.
   * Results have the same bits for any number.
   *
   * @param number most threads at a time, the calling one included
   * @return the changed settings
   * @throws stenotherm.base.InvalidInputException if it is not above 0
   */
  public AssessmentSettings withThreads(int number) {
    return with(new Workers(number));
  }

  /**
   * The same settings with other threads, which build models and share journeys.
   *
   * @param others the threads, for example of the caller's executor
   * @return the changed settings
   */
  public AssessmentSettings with(Workers others) {
    return new AssessmentSettings(transit.with(others), longestHold, study.with(others));
  }
}
