package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Parcel;

/**
 * Hundreds of damaged scenarios: each is read, whole and with every preset told, or refused with
 * messages of one line that name a place. The seed is fixed, so a failure repeats.
 */
class ScenarioFuzzTest {
  private static final int MUTANTS = 600;
  private static final long SEED = 20_140_115;

  @Test
  void everyMutantIsReadWholeOrRefusedInOneSentence() {
    int read = 0;
    int refused = 0;
    for (String mutant : ScenarioFuzz.mutants(SEED, MUTANTS)) {
      if (isRead(mutant)) {
        read++;
      } else {
        refused++;
      }
    }
    // Were all read or all refused, the mutations would miss the point.
    assertTrue(read > MUTANTS / 20, read + " read");
    assertTrue(refused > MUTANTS / 3, refused + " refused");
  }

  private static boolean isRead(String text) {
    ScenarioFuzz.Result result = ScenarioFuzz.read(text);
    assertEquals("", result.complaint(), text);
    if (!result.isRead()) {
      return false;
    }
    Scenario scenario = ScenarioReader.read("s.yaml", text);
    isWhole(scenario);
    assertEquals(List.of(), Schemas.complaints(text), text);
    presetsAreTold(Schemas.tree(text), Vocabulary.SCENARIO, scenario.assumptions(), text);
    return true;
  }

  private static void isWhole(Scenario scenario) {
    Journey journey = scenario.journey();
    double start = 0;
    for (int index = 0; index < journey.legs().size(); index++) {
      Leg leg = journey.legs().get(index);
      boolean last = index == journey.legs().size() - 1;
      double end = start + leg.duration() + (last ? scenario.longestHold() : 0);
      assertTrue(Double.isFinite(leg.surroundings().ambient().at(start)), leg.name());
      assertTrue(Double.isFinite(leg.surroundings().ambient().at(end)), leg.name());
      start += leg.duration();
    }
    for (Parcel parcel : scenario.packings()) {
      assertFalse(parcel.layout().blocks().isEmpty());
      assertTrue(parcel.mass() > 0);
    }
  }

  /** Walks the file by the vocabulary: whatever has a preset and is not given must be told. */
  private static void presetsAreTold(JsonNode node, FilePart part, List<String> told, String text) {
    for (Key key : part.keys()) {
      JsonNode value = node.get(key.name());
      if (value == null) {
        boolean needed = !key.preset().text().isEmpty() && key.preset().condition().isEmpty();
        String start = "Preset, " + part.name() + ": " + key.name() + ", ";
        assertTrue(
            !needed || told.stream().anyMatch(each -> each.startsWith(start)),
            () -> start + "\n" + text);
        continue;
      }
      for (FilePart inner : key.form().parts()) {
        List<JsonNode> mappings = new ArrayList<>();
        (value.isArray() ? value : List.of(value)).forEach(mappings::add);
        for (JsonNode each : mappings) {
          if (each.isObject()) {
            presetsAreTold(each, inner, told, text);
          }
        }
      }
    }
  }
}
