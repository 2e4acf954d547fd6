package stenotherm.validation.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import stenotherm.grid.MeshControl;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;

/**
 * The reference journey as a scenario file that comes with the program: one cup with a damp towel,
 * one warmer with a power that varies, five legs with three sets of films, ambient by the hour, 48
 * h. All of it is invented.
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
   * The mesh of the report, of more than 60,000 cells.
   *
   * @return the control
   */
  public static MeshControl fullMesh() {
    return ReferenceTransit.fullMesh();
  }
}
