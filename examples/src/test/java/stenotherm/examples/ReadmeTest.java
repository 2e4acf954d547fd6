package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stenotherm.scenario.ScenarioReader;

/** What the README shows is what the programs are and print. */
class ReadmeTest {
  private static final Path ROOT = Path.of("..");

  private static String readme() throws IOException {
    return Files.readString(ROOT.resolve("README.md"));
  }

  @Test
  void showsTheShippedScenario() throws IOException {
    String scenario =
        Files.readString(Path.of("src/main/resources/stenotherm/examples/cold-night.yaml"));
    assertTrue(scenario.lines().count() <= 20, "a scenario fits on 20 lines");
    assertTrue(readme().contains("```yaml\n" + scenario.strip() + "\n```"));
  }

  @Test
  void showsOnlyScenariosThatCanBeRead() throws IOException {
    List<String> blocks =
        Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
            .matcher(readme())
            .results()
            .map(block -> block.group(1))
            .filter(block -> !block.startsWith("id: ")) // a case, which a test of validation runs
            .toList();
    assertEquals(2, blocks.size());
    for (String block : blocks) {
      assertFalse(ScenarioReader.read("README.md", block).packings().isEmpty());
    }
  }

  @Test
  void showsTheEmbeddingExampleAndWhatItPrints() throws IOException {
    String source =
        Files.readString(Path.of("src/main/java/stenotherm/examples/EmbeddedParcel.java"));
    String body = source.substring(source.indexOf("    var gecko"), source.lastIndexOf("  }\n}"));
    assertTrue(withoutSpace(readme()).contains("```java" + withoutSpace(body) + "```"));
    String printed = String.join("\n", Printed.by(EmbeddedParcel::main));
    assertTrue(readme().contains("```text\n" + printed.strip() + "\n```"));
  }

  @Test
  void showsWhatTheWallCornerPrints() throws IOException {
    String printed = String.join("\n", Printed.by(WallCorner::main));
    assertTrue(readme().contains("```text\n" + printed.strip() + "\n```"));
  }

  private static String withoutSpace(String text) {
    return text.replaceAll("\\s+", "");
  }
}
