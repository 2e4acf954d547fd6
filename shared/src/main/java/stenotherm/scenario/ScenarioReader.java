package stenotherm.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.text.Document;
import stenotherm.text.Keys;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.TextFormatException;

/**
 * Reads scenario files.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class ScenarioReader {
  private static final String FORMAT = "format";

  /** How long a delay is followed if the file does not say [s]. */
  private static final double HOLD = Times.fromHours(24);

  private static final double LONGEST_HOLD = Times.fromDays(29);

  private static final Keys KEYS =
      Keys.of(FORMAT, "title", "animal", "cup", "journey", "packings", "hold")
          .refuse("units", "results come in °C and mm");

  private ScenarioReader() {}

  /**
   * Reads a scenario from text.
   *
   * @param fileName the name that messages show
   * @param text the scenario
   * @return the scenario
   * @throws TextFormatException if the text is not a scenario that can be computed
   */
  public static Scenario read(String fileName, String text) {
    return read(Document.parse(fileName, text));
  }

  /**
   * Reads a scenario from a file in UTF-8.
   *
   * @param path the file; messages show it as given
   * @return the scenario
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the file is not a scenario that can be computed
   */
  public static Scenario read(Path path) throws IOException {
    return read(Document.read(path));
  }

  private static Scenario read(Document document) {
    MappingNode file = document.root().asMapping();
    checkFormat(file);
    MappingNode root = file.withKeys(KEYS);
    String title = root.require("title").asScalar().text();
    Assumptions assumptions = new Assumptions();
    Node animal = root.require("animal");
    JourneyReader journeys = new JourneyReader(assumptions, hold(root, assumptions));
    Journey journey = journeys.read(root.require("journey"));
    List<Parcel> packings =
        new PackingReader(assumptions, animal.asScalar(), root).read(root.require("packings"));
    return new Scenario(title, packings, journey, journeys.hold(), assumptions.sentences());
  }

  private static void checkFormat(MappingNode file) {
    Node format = file.require(FORMAT);
    if (!format.asScalar().text().equals("1")) {
      throw format.fail("this version reads format 1 only");
    }
    if (!file.keys().iterator().next().equals(FORMAT)) {
      throw file.failAt(FORMAT, "must be the first key");
    }
  }

  private static double hold(MappingNode root, Assumptions assumptions) {
    Node node = root.optional("hold").orElse(null);
    if (node == null) {
      assumptions.add("A delay after the planned opening is followed for 24 h (assumed).");
      return HOLD;
    }
    double hold = node.asScalar().duration();
    if (!(hold > 0) || hold > LONGEST_HOLD) {
      throw node.fail("must be longer than 0 and at most 29 d");
    }
    return hold;
  }
}
