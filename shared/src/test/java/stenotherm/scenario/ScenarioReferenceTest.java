package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.text.Document;
import stenotherm.text.MappingNode;

/** The page and the schema say what the reader does. */
class ScenarioReferenceTest {
  /** Set to write both files anew instead of comparing them. */
  private static final String REFRESH = "stenotherm.refresh";

  private static final Path FOLDER = Path.of("src/main/resources/stenotherm/scenario");

  private static void isFresh(String name, String text) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean(REFRESH)) {
      Files.writeString(file, text);
    }
    assertEquals(
        text,
        Files.readString(file),
        () -> file + " is stale, run this test with -D" + REFRESH + "=true");
  }

  @Test
  void pageIsFresh() throws IOException {
    isFresh("reference.md", ScenarioReference.markdown());
  }

  @Test
  void schemaIsFresh() throws IOException {
    isFresh("scenario.schema.json", ScenarioReference.schema());
  }

  @Test
  void schemaIsOneByItsOwnRules() {
    List<?> complaints =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"))
            .validate(Schemas.tree(ScenarioReference.schema()));
    assertEquals(List.of(), complaints);
  }

  @ParameterizedTest
  @MethodSource("goodScenarios")
  void readerTakesGoodScenarios(String text) {
    assertFalse(ScenarioReader.read("s.yaml", text, ScenarioFiles.SHIPPED).packings().isEmpty());
  }

  static Stream<String> goodScenarios() {
    return ScenarioFiles.allGood().stream();
  }

  @ParameterizedTest
  @MethodSource("goodScenarios")
  void schemaTakesGoodScenarios(String text) {
    assertEquals(List.of(), Schemas.complaints(text));
  }

  @Test
  void goodScenariosUseEveryKey() {
    Set<String> used = new TreeSet<>();
    ScenarioFiles.allGood().forEach(text -> collect(Schemas.tree(text), Vocabulary.SCENARIO, used));
    Set<String> known = new TreeSet<>();
    for (FilePart part : Vocabulary.parts()) {
      part.keys().forEach(key -> known.add(part.name() + "." + key.name()));
    }
    known.removeAll(used);
    assertEquals(Set.of(), known, "used by no scenario");
  }

  private static void collect(JsonNode node, FilePart part, Set<String> used) {
    for (Key key : part.keys()) {
      JsonNode value = node.get(key.name());
      if (value != null) {
        used.add(part.name() + "." + key.name());
        for (FilePart inner : key.form().parts()) {
          collect(value, inner, used);
          value.forEach(item -> collect(item, inner, used));
        }
      }
    }
  }

  @Test
  void schemaRefusesOtherKeysNamesAndKinds() {
    for (String bad :
        List.of(
            ScenarioFiles.with("title:", "titel:"),
            ScenarioFiles.with("title: A gecko goes west\n", ""),
            ScenarioFiles.with("hold: 12 h", "hold: 12"),
            ScenarioFiles.with("format: 1", "format: 2"),
            ScenarioFiles.with("hold: 12 h", "hold: 12 h\nunits: nautical"))) {
      assertFalse(Schemas.complaints(bad).isEmpty(), bad);
    }
  }

  @Test
  void whatStandsInIsWhatTheFileCouldHaveSaid() {
    for (FilePart part : Vocabulary.parts()) {
      for (Key key : part.keys()) {
        if (!key.preset().text().isEmpty()) {
          assertTrue(key.leftOut().startsWith(key.preset().text()), key.name());
        }
      }
    }
    Scenario bare = ScenarioReader.read("s.yaml", ScenarioFiles.with("hold: 12 h\n", ""));
    Scenario told = ScenarioReader.read("s.yaml", ScenarioFiles.with("hold: 12 h", "hold: 24 h"));
    assertEquals(told.longestHold(), bare.longestHold());
  }

  @Test
  void everyExampleCanBePastedWithinBraces() {
    for (FilePart part : Vocabulary.parts()) {
      for (Key key : part.keys()) {
        String pasted = "{key: " + key.form().pastedExample() + ", next: 1}";
        MappingNode read = Document.parse("s.yaml", pasted).root().asMapping();
        assertEquals(Set.of("key", "next"), read.keys(), key.name());
      }
    }
    assertEquals("\"New York, UTC-5\"", Vocabulary.exampleAt("journey.from"));
  }

  @Test
  void everyKeyHasAnExampleAtItsPath() {
    assertEquals("8 h", Vocabulary.exampleAt("journey.legs[2].for"));
    assertEquals("24 h", ScenarioFiles.presetOf("scenario", "hold"));
    assertEquals("", Vocabulary.exampleAt("journey.legs[2]"));
    assertEquals("", Vocabulary.exampleAt("journey.lags"));
    for (FilePart part : Vocabulary.parts()) {
      part.keys().forEach(key -> assertFalse(key.form().example().isBlank(), key.name()));
    }
  }
}
