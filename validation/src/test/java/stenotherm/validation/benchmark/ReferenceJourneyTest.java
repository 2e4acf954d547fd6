package stenotherm.validation.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Times;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Leg;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.transit.TransitResult;
import stenotherm.warmer.Warmers;

/** The committed scenario is what figures that are quoted for it were measured on. */
class ReferenceJourneyTest {
  private final Scenario scenario = ReferenceJourney.scenario();

  @Test
  void oneCupAndOneWarmer() {
    assertEquals(1, scenario.packings().size());
    Parcel parcel = scenario.packings().get(0);
    assertEquals(1, parcel.occupied().size());
    assertEquals("damp paper towel", parcel.occupied().get(0).bedding().get(0).material().name());
    assertEquals(1, parcel.warmers().size());
    assertEquals(Warmers.FORTY_HOUR.name(), parcel.warmers().get(0).warmer().name());
  }

  @Test
  void fiveLegsWithThreeSetsOfFilmsAndAmbientByTheHour() {
    List<Leg> legs = scenario.journey().legs();
    assertEquals(5, legs.size());
    assertEquals(Times.fromHours(48), scenario.journey().duration(), 1e-6);
    Set<FaceFilms> films = new HashSet<>();
    for (int number = 0; number < legs.size(); number++) {
      Leg leg = legs.get(number);
      films.add(leg.surroundings().films());
      double from = scenario.journey().start(number);
      double to = scenario.journey().start(number + 1);
      double[] kinks = leg.surroundings().ambient().breakpoints(from, to);
      assertEquals((to - from) / Times.HOUR - 1, kinks.length, leg.name());
    }
    assertEquals(3, films.size(), films::toString);
  }

  /** The report has it on the full grid, against small steps. */
  @Test
  void reducedModelAndEveryCellAgree() {
    MeshControl mesh = ReferenceJourney.fullMesh().scaled(8);
    TransitResult reduced = ReferenceJourney.reduced(mesh);
    assertTrue(reduced.reduction().isPresent(), reduced::engine);
    assertTrue(reduced.ledger().closes(), reduced.ledger()::toString);
    TransitResult cells = ReferenceJourney.everyCell(mesh, TransitReport.REFERENCE_TOLERANCE);
    TransitDifference difference = TransitDifference.of(reduced, cells);
    double means = Math.max(difference.mean(), difference.warmer());
    double extremes = Math.max(difference.coldest(), difference.hottest());
    assertTrue(means <= ModalReport.MEAN_ERROR, difference::toString);
    assertTrue(extremes <= ModalReport.EXTREME_ERROR, difference::toString);
  }
}
