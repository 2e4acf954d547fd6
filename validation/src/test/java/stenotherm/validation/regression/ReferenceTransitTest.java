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
  private static final MeshControl MESH = ReferenceTransit.fullMesh().scaled(3);

  private static TransitResult run(ReferenceTransit journey) {
    return journey.run(MESH, IntegratorSettings.DEFAULT_STEP_TOLERANCE);
  }

  @ParameterizedTest
  @EnumSource
  void standardToleranceKeepsTheTimeErrorAndTheLedger(ReferenceTransit journey) {
    TransitResult run = run(journey);
    TransitResult exact = journey.run(MESH, TransitReport.REFERENCE_TOLERANCE);
    assertTrue(run.ledger().closes(), run.ledger()::toString);
    assertTrue(exact.ledger().closes(), exact.ledger()::toString);
    TransitDifference difference = TransitDifference.of(run, exact);
    assertTrue(difference.largest() <= FullSolverReport.LARGEST_TIME_ERROR, difference::toString);
  }

  /** What freezing leaves, and that it is a small part of what temperature does to properties. */
  @Test
  void frozenCoefficientsStayCloseToLiveOnes() {
    Map<ReferenceTransit, TransitResult> runs = new EnumMap<>(ReferenceTransit.class);
    for (ReferenceTransit journey : ReferenceTransit.values()) {
      runs.put(journey, run(journey));
    }
    TransitResult live = runs.get(ReferenceTransit.LIVE);
    TransitDifference freezing = TransitDifference.of(runs.get(ReferenceTransit.FROZEN), live);
    assertTrue(freezing.mean() > 0.001, freezing::toString);
    assertTrue(Math.max(freezing.coldest(), freezing.hottest()) < 0.15, freezing::toString);
    TransitDifference physics = TransitDifference.of(runs.get(ReferenceTransit.CONSTANT), live);
    assertTrue(physics.mean() > 5 * freezing.mean(), physics::toString);
  }
}
