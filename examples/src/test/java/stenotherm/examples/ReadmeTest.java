package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stenotherm.scenario.ScenarioReader;

/** What the top page and the page of examples show is what the programs are and print. */
class ReadmeTest {
  private static final Path TOP = Path.of("../README.md");
  private static final Path EXAMPLES = Path.of("README.md");

  private static List<String> blocks(Path page, String language) throws IOException {
    return Pattern.compile("^```" + language + "\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE)
        .matcher(Files.readString(page))
        .results()
        .map(block -> block.group(1))
        .toList();
  }

  private static boolean showsWhatIsPrinted(Path page, Consumer<String[]> program)
      throws IOException {
    String printed = String.join("\n", Printed.by(program));
    return blocks(page, "text").contains(printed.strip() + "\n");
  }

  @Test
  void topPageBeginsWithTheMainJobAndTheTests() throws IOException {
    List<String> commands = blocks(TOP, "sh");
    assertTrue(Files.readString(Path.of("../.ci/shown")).contains(commands.get(0).strip()));
    assertEquals("mvn -B -ntp verify\n", commands.get(1));
  }

  @Test
  void topPageShowsAShortScenarioThatCanBeRead() throws IOException {
    List<String> scenarios = blocks(TOP, "yaml");
    assertEquals(1, scenarios.size());
    assertTrue(scenarios.get(0).lines().count() <= 15, "a first scenario fits on 15 lines");
    assertFalse(ScenarioReader.read("README.md", scenarios.get(0)).packings().isEmpty());
  }

  @Test
  void examplesShowTheShippedScenario() throws IOException {
    String scenario =
        Files.readString(Path.of("src/main/resources/stenotherm/examples/cold-night.yaml"));
    assertTrue(scenario.lines().count() <= 20, "a scenario fits on 20 lines");
    assertEquals(List.of(scenario.strip() + "\n"), blocks(EXAMPLES, "yaml"));
  }

  @Test
  void topPageShowsTheBeginningOfTheEmbeddingExampleAndWhatItPrints() throws IOException {
    String source =
        Files.readString(Path.of("src/main/java/stenotherm/examples/EmbeddedParcel.java"));
    String body = source.substring(source.indexOf("    var gecko"), source.lastIndexOf("  }\n}"));
    List<String> shown = blocks(TOP, "java");
    assertEquals(1, shown.size());
    assertTrue(shown.get(0).lines().count() <= 15, "a first program fits on 15 lines");
    assertTrue(withoutSpace(body).startsWith(withoutSpace(shown.get(0))), shown.get(0));
    assertTrue(showsWhatIsPrinted(TOP, EmbeddedParcel::main));
  }

  @Test
  void examplesShowWhatTheWallCornerPrints() throws IOException {
    assertTrue(showsWhatIsPrinted(EXAMPLES, WallCorner::main));
  }

  /** The program with odds, then what depends on the libraries alone, see {@code .ci/consumer}. */
  @Test
  void examplesShowCodeOfPrograms() throws IOException {
    List<String> shown = blocks(EXAMPLES, "java");
    List<String> files =
        List.of(
            "main/java/stenotherm/examples/OvernightOdds",
            "consumer/src/main/java/consumer/TwoCups",
            "consumer/src/main/java/consumer/Thermostat",
            "consumer/src/main/java/consumer/Offsets");
    List<Integer> longest = List.of(15, 25, 12, 6);
    assertEquals(files.size(), shown.size());
    for (int n = 0; n < files.size(); n++) {
      String block = shown.get(n);
      String source = Files.readString(Path.of("src/" + files.get(n) + ".java"));
      assertTrue(withoutSpace(source).contains(withoutSpace(block)), block);
      assertTrue(block.lines().count() <= longest.get(n), block);
    }
  }

  @Test
  void examplesShowWhatTheOddsAre() throws IOException {
    assertTrue(showsWhatIsPrinted(EXAMPLES, OvernightOdds::main));
  }

  /**
   * A dependency as in the project that {@code .ci/consumer} builds, of the version that there is.
   */
  @Test
  void examplesShowTheDependency() throws IOException {
    String shown = blocks(EXAMPLES, "xml").get(0);
    assertTrue(shown.lines().count() <= 10, shown);
    String version = Stenotherm.VERSION.replace("Stenotherm ", "");
    String consumer =
        withoutSpace(Files.readString(Path.of("src/consumer/pom.xml")))
            .replace("${stenotherm.version}", version);
    String managed = withoutSpace(shown.substring(shown.indexOf("<dependencyManagement>")));
    assertTrue(consumer.contains(managed.replaceFirst("</dependencies>$", "")), managed);
  }

  private static String withoutSpace(String text) {
    return text.replaceAll("\\s+", "");
  }
}
