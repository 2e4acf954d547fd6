package stenotherm.validation.regression;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.transit.TransitResult;
import stenotherm.validation.benchmark.FullSolverReport;
import stenotherm.validation.benchmark.ReferenceTransit;
import stenotherm.validation.benchmark.TransitDifference;
import stenotherm.validation.benchmark.TransitReport;

/** The journeys of the transit report on a grid coarse enough for every build. */
class ReferenceTransitTest {
  private static final MeshControl MESH = ReferenceTransit.fullMesh().scaled(5);

  private static final Map<ReferenceTransit, TransitResult> RUNS =
      new EnumMap<>(ReferenceTransit.class);

  private static TransitResult run(ReferenceTransit journey) {
    return RUNS.computeIfAbsent(
        journey, one -> one.run(MESH, IntegratorSettings.DEFAULT_STEP_TOLERANCE));
  }

  /** Live coefficients end a step every five minutes anyway; the report runs them too. */
  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "LIVE")
  void standardToleranceKeepsTheTimeErrorAndTheLedger(ReferenceTransit journey) {
    TransitResult run = run(journey);
    TransitResult exact = journey.run(MESH, TransitReport.REFERENCE_TOLERANCE);
    assertTrue(run.ledger().closes(), run.ledger()::toString);
    assertTrue(exact.ledger().closes(), exact.ledger()::toString);
    TransitDifference difference = TransitDifference.of(run, exact);
    assertTrue(difference.largest() <= FullSolverReport.LARGEST_TIME_ERROR, difference::toString);
  }

  /**
   * What freezing leaves, and that it is a small part of what temperature does to properties. It
   * leaves most an hour after the start, when films were taken last from warmer faces, and late in
   * the leg of 24 h, when the warmer fades and its insulation is still taken as hot.
   */
  @Test
  void frozenCoefficientsStayAsCloseToLiveOnesAsDocumented() {
    TransitResult live = run(ReferenceTransit.LIVE);
    TransitDifference freezing = TransitDifference.of(run(ReferenceTransit.FROZEN), live);
    assertTrue(freezing.mean() > 0.001, freezing::toString);
    // the README's figure
    assertTrue(Math.max(freezing.coldest(), freezing.hottest()) < 0.2, freezing::toString);
    TransitDifference physics = TransitDifference.of(run(ReferenceTransit.CONSTANT), live);
    assertTrue(physics.mean() > 5 * freezing.mean(), physics::toString);
  }
}
