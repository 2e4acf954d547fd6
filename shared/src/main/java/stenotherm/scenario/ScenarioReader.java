package stenotherm.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.text.Document;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.TextFormatException;
import stenotherm.words.Units;

/**
 * Reads scenario files.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class ScenarioReader {
  private static final String FORMAT = "format";
  private static final Map<String, Units> UNITS = units();

  private static final double LONGEST_HOLD = Times.fromDays(29);

  private ScenarioReader() {}

  private static Map<String, Units> units() {
    Map<String, Units> units = new LinkedHashMap<>();
    for (Units each : Units.values()) {
      units.put(each.label(), each);
    }
    return Collections.unmodifiableMap(units);
  }

  /**
   * Reads a scenario from text.
   *
   * @param fileName the name that messages show
   * @param text the scenario
   * @return the scenario
   * @throws TextFormatException if the text is not a scenario that can be computed
   */
  public static Scenario read(String fileName, String text) {
    return read(Document.parse(fileName, text, Vocabulary::exampleAt));
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
    return read(Document.read(path, Vocabulary::exampleAt));
  }

  private static Scenario read(Document document) {
    MappingNode file = document.root().asMapping();
    checkFormat(file);
    Assumptions assumptions = new Assumptions();
    KeyedSection root = KeyedSection.of(file, Vocabulary.SCENARIO, assumptions);
    String title = root.require("title").asScalar().text();
    Units units = root.value("units").asScalar().choice(UNITS);
    double hold = hold(root.value("hold").asScalar());
    Node journeyNode = root.require("journey");
    Journey journey = new JourneyReader(assumptions, hold).read(journeyNode);
    List<Parcel> packings = new PackingReader(assumptions, root).read(root.require("packings"));
    packings.forEach(assumptions::packing);
    return new Scenario(title, units, packings, journey, hold, assumptions.sentences());
  }

  private static void checkFormat(MappingNode file) {
    Node format =
        file.optional(FORMAT).orElseThrow(() -> file.fail("must begin with the line format: 1"));
    if (!format.asScalar().text().equals("1")) {
      throw format.fail("this version reads format 1 only");
    }
    if (!file.keys().iterator().next().equals(FORMAT)) {
      throw file.failAt(FORMAT, "must be the first key");
    }
  }

  private static double hold(ScalarNode node) {
    double hold = node.duration();
    if (!(hold > 0) || hold > LONGEST_HOLD) {
      throw node.fail("must be longer than 0 and at most 29 d");
    }
    return hold;
  }
}
