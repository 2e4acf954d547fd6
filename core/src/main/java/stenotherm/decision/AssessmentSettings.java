package stenotherm.decision;

import stenotherm.base.Checks;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;

/**
 * How a packing is judged.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param transit how finely the runs are computed; decisions take grids coarser than its mesh and
 *     extrapolate from them
 * @param longestHold how long after the planned opening the last leg is followed [s], above 0
 * @param study how many journeys are run
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
   * The default: standard transits, a day of hold.
   *
   * @return the settings
   */
  public static AssessmentSettings standard() {
    return new AssessmentSettings(TransitSettings.standard(), 86_400);
  }
}
