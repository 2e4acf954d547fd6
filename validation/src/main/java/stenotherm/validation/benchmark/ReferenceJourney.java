package stenotherm.validation.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * The reference journey as a scenario file that comes with the program: one cup with a damp towel,
 * one warmer of iron powder, five legs with three sets of films, ambient by the hour, 48 h. All of
 * it is invented.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class ReferenceJourney {
  private static final String FILE = "reference-journey.yaml";

  private ReferenceJourney() {}

  /**
   * Reads the scenario.
   *
   * @return the scenario; it has one packing
   */
  public static Scenario scenario() {
    try (InputStream text = ReferenceJourney.class.getResourceAsStream(FILE)) {
      if (text == null) {
        throw new IllegalStateException("the program comes without " + FILE);
      }
      return ScenarioReader.read(FILE, new String(text.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /**
   * Runs the journey with a reduced model, stored every 15 min.
   *
   * @param mesh how fine the grid is
   * @return the history
   */
  public static TransitResult reduced(MeshControl mesh) {
    return run(new TransitSettings(mesh, Times.HOUR / 4, IntegratorSettings.standard()));
  }

  /**
   * Runs the journey with the full solver, stored every 15 min.
   *
   * @param mesh how fine the grid is
   * @param stepTolerance largest estimated local error of a step [K]
   * @return the history
   */
  public static TransitResult run(MeshControl mesh, double stepTolerance) {
    var stepping = IntegratorSettings.adaptive(stepTolerance);
    return run(new TransitSettings(mesh, Times.HOUR / 4, stepping).full());
  }

  /**
   * Runs the journey by stepping every cell under the coefficients of the reduced model, stored
   * every 15 min.
   *
   * @param mesh how fine the grid is
   * @param stepTolerance largest estimated local error of a step [K]
   * @return the history
   */
  public static TransitResult everyCell(MeshControl mesh, double stepTolerance) {
    Scenario scenario = scenario();
    var stepping = IntegratorSettings.adaptive(stepTolerance);
    return ParcelModel.of(
            scenario.packings().get(0),
            scenario.journey(),
            new TransitSettings(mesh, Times.HOUR / 4, stepping))
        .runEveryCell(scenario.journey(), Variation.NOMINAL);
  }

  private static TransitResult run(TransitSettings settings) {
    Scenario scenario = scenario();
    return Transit.run(scenario.packings().get(0), scenario.journey(), Variation.NOMINAL, settings);
  }

  /**
   * The mesh of the report, of more than 60,000 cells.
   *
   * @return the control
   */
  public static MeshControl fullMesh() {
    return ReferenceTransit.fullMesh();
  }
}
