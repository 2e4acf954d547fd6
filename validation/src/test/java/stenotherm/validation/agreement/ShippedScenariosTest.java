package stenotherm.validation.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.grid.MeshControl;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.Factor;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * Reduced models of the scenarios that come with the examples, against the full solver: the last
 * packing of each of them that does not melt. Parcels of all kinds have the command
 * modal-agreement.
 */
class ShippedScenariosTest {
  private static final Path FOLDER =
      Path.of("..", "examples", "src", "main", "resources", "stenotherm", "examples");

  /** Coarse cells: what is compared has the same grid; full solver within 2 mK. */
  private static final TransitSettings SETTINGS =
      ModelAgreement.settings(MeshControl.uniform(0.008).scaled(6), 4e-4);

  private static final Variation VARIED =
      Variation.NOMINAL
          .with(Factor.WALL_CONDUCTIVITY, 0.7)
          .with(Factor.FILL_CONDUCTIVITY, -0.8)
          .with(Factor.SURFACE_FILM, 0.5)
          .withOffset(-3);

  private static Scenario read(String name) throws IOException {
    return ScenarioReader.read(FOLDER.resolve(name + ".yaml"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cold-night", "summer-day", "two-frogs-by-air"})
  void agreeWithTheFullSolver(String name) throws IOException {
    Scenario scenario = read(name);
    // packs have a test of their own
    List<Parcel> packings =
        scenario.packings().stream().filter(packing -> packing.packs().isEmpty()).toList();
    Parcel last = packings.get(packings.size() - 1);
    ModelAgreement agreement = ModelAgreement.of(last, scenario.journey(), VARIED, SETTINGS);
    for (Deviation each : agreement.all()) {
      assertTrue(each.part() <= 1, each::toString);
    }
    assertTrue(agreement.nominal().ledger().closes());
  }
}
