package stenotherm.report;

import stenotherm.base.ProgressListener;
import stenotherm.decision.AssessmentSettings;
import stenotherm.scenario.Scenario;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;

/** The whole of a comparison, of an eighth of its journeys: for tests that look at no odds. */
public final class HurriedComparison {
  private HurriedComparison() {}

  public static ComparisonReport run(Scenario scenario, TransitSettings settings) {
    StudySettings journeys = new StudySettings(16, 4, AssessmentSettings.SEED, 1);
    return Comparison.run(scenario, settings, journeys, 1, ProgressListener.NONE::progress);
  }
}
