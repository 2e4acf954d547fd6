package stenotherm.validation.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.conduction.Probe;
import stenotherm.modal.ModalEngine;
import stenotherm.modal.ReducedModel;

/** What the report on reduced models rests on, on a grid coarse enough for every build. */
class ModalReportTest {
  private final PortJourney journey = new PortJourney(ReferenceTransient.fullMesh().scaled(5));

  @Test
  void bothModelsFollowTheFullSolver() {
    double[][] exact = journey.rows();
    journey.follow(journey.fullEngine(FullSolverReport.REFERENCE_TOLERANCE), exact);
    follow(journey.model(journey.filmSets().size(), 1), exact);
    follow(journey.modelInOneAir(2), exact);
  }

  private void follow(ReducedModel model, double[][] exact) {
    double[][] rows = journey.rows();
    ModalEngine engine = model.engine(journey.initialState());
    journey.follow(engine, rows);
    assertTrue(engine.ledger().closes(), engine.ledger()::toString);
    for (int output = 0; output < journey.probes().size(); output++) {
      Probe probe = journey.probes().get(output);
      boolean extreme = probe instanceof Probe.Minimum || probe instanceof Probe.Maximum;
      // the heat flow, in W, is held to the same number
      double allowed = extreme ? ModalReport.EXTREME_ERROR : ModalReport.MEAN_ERROR;
      for (int row = 0; row < rows.length; row++) {
        assertEquals(exact[row][output], rows[row][output], allowed, probe.name());
      }
    }
  }

  @Test
  void theJourneyIsWhatTheReportSays() {
    assertEquals(192, journey.steps());
    assertEquals(3, journey.filmSets().size());
    assertEquals(8, journey.inputCount());
    assertEquals(8, journey.probes().size());
  }
}
