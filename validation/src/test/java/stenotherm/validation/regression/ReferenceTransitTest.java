package stenotherm.validation.regression;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stenotherm.base.End;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.transit.Factor;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.Variation;
import stenotherm.validation.benchmark.FullSolverReport;
import stenotherm.validation.benchmark.ReferenceTransit;
import stenotherm.validation.benchmark.TransitDifference;
import stenotherm.validation.benchmark.TransitReport;

/**
 * The journeys of the transit report on a grid coarse enough for every build; the report has them
 * on the full grid, each of them against small steps.
 */
class ReferenceTransitTest {
  private static final MeshControl MESH = ReferenceTransit.fullMesh().scaled(8);

  private static final Map<ReferenceTransit, TransitResult> RUNS =
      new EnumMap<>(ReferenceTransit.class);

  /** One model's run with frozen coefficients, and the same coefficients with every cell. */
  private static TransitResult reduced;

  private static TransitResult everyCell;

  @BeforeAll
  static void runAll() {
    for (ReferenceTransit journey : ReferenceTransit.values()) {
      RUNS.put(journey, journey.run(MESH, IntegratorSettings.DEFAULT_STEP_TOLERANCE));
    }
    ReferenceTransit frozen = ReferenceTransit.FROZEN;
    ParcelModel model = frozen.model(MESH, TransitReport.REFERENCE_TOLERANCE);
    reduced = model.run(frozen.journey(), Variation.NOMINAL);
    everyCell = model.runEveryCell(frozen.journey(), Variation.NOMINAL);
  }

  private static TransitResult run(ReferenceTransit journey) {
    return Objects.requireNonNull(RUNS.get(journey));
  }

  @ParameterizedTest
  @EnumSource
  void everyLedgerCloses(ReferenceTransit journey) {
    assertTrue(run(journey).ledger().closes(), run(journey).ledger()::toString);
  }

  /** Of the journeys that freeze coefficients, those that try the steps most. */
  @ParameterizedTest
  @EnumSource(
      mode = EnumSource.Mode.EXCLUDE,
      names = {"CONSTANT", "LIVE"})
  void standardToleranceKeepsTheTimeError(ReferenceTransit journey) {
    TransitResult exact = journey.run(MESH, TransitReport.REFERENCE_TOLERANCE);
    assertTrue(exact.ledger().closes(), exact.ledger()::toString);
    TransitDifference difference = TransitDifference.of(run(journey), exact);
    assertTrue(difference.largest() <= FullSolverReport.LARGEST_TIME_ERROR, difference::toString);
  }

  /** The same coefficients with every cell and with a few modes: the figures of the design. */
  @Test
  void reductionStaysWithinItsError() {
    TransitDifference difference = TransitDifference.of(reduced, everyCell);
    assertTrue(difference.mean() <= 0.02, difference::toString);
    assertTrue(difference.coldest() <= 0.05, difference::toString);
    assertTrue(difference.hottest() <= 0.05, difference::toString);
    assertTrue(difference.warmer() <= 0.02, difference::toString);
  }

  /**
   * Freezing is allowed for what it saves as long as it moves an animal less than one end of any of
   * the ranges does that a verdict covers: of the fill, the films or the warmers, each on its own.
   */
  @Test
  void freezingMovesAnAnimalLessThanEachUncertainQuantity() {
    TransitDifference freezing = TransitDifference.of(everyCell, run(ReferenceTransit.LIVE));
    assertTrue(freezing.mean() > 0.001, freezing::toString);
    // as the limits in the top README say
    assertTrue(Math.max(freezing.coldest(), freezing.hottest()) < 0.14, freezing::toString);
    for (Factor factor :
        List.of(Factor.FILL_CONDUCTIVITY, Factor.SURFACE_FILM, Factor.WARMER_STRENGTH)) {
      TransitResult atEnd =
          ReferenceTransit.FROZEN.run(
              MESH,
              IntegratorSettings.DEFAULT_STEP_TOLERANCE,
              Variation.NOMINAL.with(factor, End.LOW));
      TransitDifference range = TransitDifference.of(atEnd, run(ReferenceTransit.FROZEN));
      String both = factor + ": " + range + ", freezing: " + freezing;
      assertTrue(freezing.mean() < range.mean(), both);
      assertTrue(freezing.coldest() < range.coldest(), both);
      assertTrue(freezing.hottest() < range.hottest(), both);
    }
  }
}
