package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stenotherm.base.MessageText;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Parcel;
import stenotherm.text.TextFormatException;

/**
 * Thousands of damaged scenarios: each is read, whole and with every preset told, or refused with
 * one message on one line that names a place. The seed is fixed, so a failure repeats.
 */
class ScenarioFuzzTest {
  private static final int MUTANTS = 2500;
  private static final long SEED = 20_140_115;

  private static final Pattern MESSAGE = Pattern.compile("s\\.yaml:[1-9]\\d*:[1-9]\\d*: \\S.*");

  /** What a message must never show: types, packages, printed objects. */
  private static final Pattern INNARDS =
      Pattern.compile(
          "(?i)exception|stenotherm\\.|java\\.|yaml\\.snake|\\bnull pointer|@[0-9a-f]{6}");

  @Test
  void everyMutantIsReadWholeOrRefusedInOneSentence() {
    List<String> originals = ScenarioFiles.allForDamage();
    Mutations mutations = new Mutations(SEED);
    int read = 0;
    int refused = 0;
    for (int number = 0; number < MUTANTS; number++) {
      String mutant = mutations.of(originals.get(number % originals.size()));
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
    Scenario scenario;
    try {
      scenario = ScenarioReader.read("s.yaml", text);
    } catch (TextFormatException fault) {
      for (TextFormatException each : fault.faults()) {
        String message = String.valueOf(each.getMessage());
        assertTrue(MESSAGE.matcher(message).matches(), () -> message + "\n" + text);
        assertTrue(message.length() <= MessageText.LONGEST, () -> message + "\n" + text);
        assertFalse(INNARDS.matcher(each.problem()).find(), () -> message + "\n" + text);
      }
      return false;
    } catch (RuntimeException | StackOverflowError other) {
      return fail(text, other);
    }
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
