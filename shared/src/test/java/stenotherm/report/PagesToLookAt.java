package stenotherm.report;

import stenotherm.base.ProgressListener;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.decision.AssessmentSettings;
import stenotherm.scenario.Scenario;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;

/** Comparisons whose pages are looked at: these do not depend on how well odds are known. */
final class PagesToLookAt {
  private static final StudySettings JOURNEYS =
      new StudySettings(16, 4, AssessmentSettings.SEED, 2);

  private static final TransitSettings COARSE =
      new TransitSettings(
          TransitSettings.standard().mesh().scaled(8),
          Times.HOUR / 2,
          IntegratorSettings.adaptive(0.1));

  private PagesToLookAt() {}

  static ComparisonReport of(Scenario scenario) {
    return Comparison.run(scenario, COARSE, JOURNEYS, 2, ProgressListener.NONE::progress);
  }
}
