package stenotherm.validation.regression;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.validation.benchmark.FullSolverReport;
import stenotherm.validation.benchmark.HistoryDifference;
import stenotherm.validation.benchmark.ReferenceTransient;

/** The journey of two days on grids coarse enough for every build. */
class ReferenceTransientTest {
  private static ReferenceTransient journey(double scale) {
    return new ReferenceTransient(ReferenceTransient.fullMesh().scaled(scale));
  }

  @Test
  void standardToleranceKeepsTheTimeErrorAndTheLedger() {
    ReferenceTransient journey = journey(3);
    assertTrue(journey.cells() > 8_000 && journey.cells() < 15_000, "cells " + journey.cells());
    TransientSolution run = journey.run(IntegratorSettings.standard());
    TransientSolution exact =
        journey.run(IntegratorSettings.adaptive(FullSolverReport.REFERENCE_TOLERANCE));
    assertTrue(run.ledger().closes(), run.ledger()::toString);
    assertTrue(exact.ledger().closes(), exact.ledger()::toString);
    for (Probe probe : ReferenceTransient.probes()) {
      HistoryDifference difference = HistoryDifference.of(run, exact, probe);
      // the heat flow, in W, is held to the same number
      assertTrue(difference.largest() <= FullSolverReport.LARGEST_TIME_ERROR, difference::toString);
    }
  }

  @Test
  void sameBitsTwice() {
    TransientSolution one = journey(5).run(IntegratorSettings.standard());
    TransientSolution other = journey(5).run(IntegratorSettings.standard());
    assertEquals(one.work(), other.work());
    assertEquals(one.ledger(), other.ledger());
    for (Probe probe : ReferenceTransient.probes()) {
      // no tolerance: compared by their bits
      assertArrayEquals(one.history(probe.name()), other.history(probe.name()), probe.name());
    }
  }
}
