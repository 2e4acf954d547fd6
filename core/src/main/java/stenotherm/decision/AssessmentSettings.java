package stenotherm.decision;

import stenotherm.base.Checks;
import stenotherm.transit.TransitSettings;

/**
 * How a packing is judged.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param transit how finely the runs are computed
 * @param longestHold how long after the planned opening the last leg is followed [s], above 0
 */
public record AssessmentSettings(TransitSettings transit, double longestHold) {
  /**
   * Checks the hold.
   *
   * @throws stenotherm.base.InvalidInputException if it is not above 0
   */
  public AssessmentSettings {
    Checks.positive("longest hold", longestHold, "s");
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
