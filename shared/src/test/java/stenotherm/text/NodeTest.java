package stenotherm.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

class NodeTest {
  private static final Keys KEYS =
      Keys.of("format", "journey", "animal").refuse("coldPack", "cold packs cannot be computed");

  private static MappingNode parse(String yaml) {
    return Document.parse("f", yaml).root().asMapping();
  }

  private static void assertFault(String message, Executable action) {
    assertEquals(message, assertThrows(TextFormatException.class, action).getMessage());
  }

  @Test
  void refusesUnknownKeysBeforeAnyValueIsRead() {
    assertFault(
        "f:2:1: joruney: unknown key, allowed are format, journey, animal. Did you mean"
            + " 'journey'?",
        () -> parse("format: 1\njoruney: x\n").withKeys(KEYS));
    assertFault(
        "f:1:7: p.qqqqqq: unknown key, allowed are format, journey, animal",
        () -> parse("  p: {qqqqqq: x}\n").require("p").asMapping().withKeys(KEYS));
  }

  @Test
  void refusesKeysOfPartsThatDoNotExistYet() {
    assertFault(
        "f:1:1: coldPack: cannot be used yet, cold packs cannot be computed",
        () -> parse("coldPack: 1\n").withKeys(KEYS));
  }

  @Test
  void givesValuesByKey() {
    MappingNode root = parse("format: 1\n").withKeys(KEYS);

    assertEquals(Set.of("format"), root.keys());
    assertEquals(1, root.require("format").asScalar().number());
    assertEquals(Optional.empty(), root.optional("animal"));
    assertFault("f:1:1: journey: is missing and must be given", () -> root.require("journey"));
    assertThrows(IllegalArgumentException.class, () -> root.optional("other"));
    assertThrows(IllegalArgumentException.class, () -> root.keyPosition("animal"));
  }

  @Test
  void refusesValuesOfAnotherKind() {
    MappingNode root = parse("a: 1\nb: [1]\nc: {d: 1}\n");

    assertFault(
        "f:1:4: a: must be lines of 'key: value', not a single value",
        () -> root.require("a").asMapping());
    assertFault(
        "f:1:4: a: must be a list, not a single value", () -> root.require("a").asSequence());
    assertFault(
        "f:3:4: c: must be a list: begin each item with '- ', or put it into brackets as in [{key: value}]; it is lines of 'key: value'",
        () -> root.require("c").asSequence());
    assertFault("f:2:4: b: must be a single value, not a list", () -> root.require("b").asScalar());
    assertFault(
        "f:3:4: c: must be two temperatures, write 28 to 45 °F or [28 °F, 45 °F]",
        () -> root.require("c").temperatureRange());
    assertFault(
        "f:2:4: b: must have 2 items, not 1", () -> root.require("b").asSequence().requireSize(2));
  }

  @Test
  void readsListOfTwoTemperatures() {
    MappingNode root = parse("a: [20 °C, 30 °C]\nb: [20, 30]\nc: [30 °C, 20 °C]\n");

    assertEquals(new Range(293.15, 303.15), root.require("a").temperatureRange());
    assertFault(
        "f:2:5: b[0]: '20' has no unit, write for example 20 °C or 20 °F",
        () -> root.require("b").temperatureRange());
    assertFault(
        "f:3:4: c: '[30 °C, 20 °C]' must have the lower temperature first, write [20 °C, 30 °C]",
        () -> root.require("c").temperatureRange());
  }

  @Test
  void givesFaultsOfTheDomainTheirPlace() {
    Node node = parse("thickness: -1 mm\n").require("thickness");

    TextFormatException fault =
        assertThrows(
            TextFormatException.class,
            () -> node.locate(() -> Checks.positive("foam", node.asScalar().length(), "m")));

    assertEquals("f:1:12: thickness: foam: -1 mm must be above 0", fault.getMessage());
    assertTrue(fault.getCause() instanceof InvalidInputException);
    assertEquals("thickness", fault.path());
    assertEquals("foam: -1 mm must be above 0", fault.problem());
    assertEquals(new TextPosition("f", 1, 12), fault.position());
    assertSame(node, node.locate(() -> node));
  }

  @Test
  void givesFaultsOfKeysTheirPlace() {
    MappingNode root = parse("low: 1\nhigh: 2\n");

    assertEquals(
        "f:2:1: high: cannot be given together with low",
        root.failAt("high", "cannot be given together with low").getMessage());
  }

  @Test
  void aFieldThatIsTheKeyIsNotRepeated() {
    Node foam = parse("foam: -1 mm\n").require("foam");
    Node inner = parse("a: {foam: -1 mm}\n").require("a").asMapping().require("foam");

    for (Node node : List.of(foam, inner)) {
      TextFormatException fault =
          assertThrows(
              TextFormatException.class, () -> node.locate(() -> Checks.positive("foam", -1, "m")));
      assertEquals("-1000 mm must be above 0", fault.problem());
    }
  }

  @Test
  void faultsCarryTheNamesOfWhatTheyBelongTo() {
    TextFormatException fault = parse("a: [x]\n").require("a").fail("is odd");

    assertEquals(
        "f:1:4: a (outer box, cup): is odd", fault.in("cup").in("outer\nbox").getMessage());
    assertEquals("is odd", fault.in("cup").problem());
    assertEquals("f:1:4: a: is odd", fault.getMessage());
    TextFormatException ofNoKey = parse("a: 1\n").fail("is odd");
    assertEquals("f:1:1: is odd", ofNoKey.in("cup").getMessage());
  }

  @Test
  void examplesHelpWhereSomethingIsMissing() {
    MappingNode root = parse("animal: x\n").withKeys(KEYS.example("format", "1"));

    assertFault(
        "f:1:1: format: is missing and must be given, write for example format: 1",
        () -> root.require("format"));
    assertFault("f:1:1: journey: is missing and must be given", () -> root.require("journey"));
    assertFault(
        "f:1:4: a: has no value, write one, for example a: 1, or remove the line",
        () -> Document.parse("f", "a: ~\n", path -> path.equals("a") ? "1" : ""));
    assertThrows(InvalidInputException.class, () -> KEYS.example("other", "1"));
  }

  @Test
  void presetsStandInForWhatIsLeftOut() {
    MappingNode root = parse("p:\n  animal: x\n").require("p").asMapping().withKeys(KEYS);
    ScalarNode preset = root.preset("format", "12 mm");

    assertEquals(0.012, preset.length(), 1e-15);
    assertEquals("p.format", preset.path());
    assertEquals(root.position(), preset.position());
    assertThrows(IllegalArgumentException.class, () -> root.preset("animal", "y"));
    assertThrows(IllegalArgumentException.class, () -> root.preset("other", "y"));
  }

  @Test
  void aShortFormIsAMapping() {
    ScalarNode node = parse("cup: 12 mm\n").require("cup").asScalar();
    MappingNode cup = node.shortFor(Map.of("size", "12 mm"));

    assertEquals(0.012, cup.require("size").asScalar().length(), 1e-15);
    assertEquals("cup", cup.require("size").path());
    assertFault("f:1:6: cup.wall: is missing and must be given", () -> cup.require("wall"));
  }

  @Test
  void shortensWhatItRepeats() {
    ScalarNode node = parse("a: |\n  " + "x".repeat(100) + "\n  y\n").require("a").asScalar();

    assertFault(
        "f:1:4: a: '" + "x".repeat(39) + "…' is not a length, write for example 30 cm or 12 in",
        node::length);
  }

  @Test
  void keysAreNamedOnce() {
    assertThrows(InvalidInputException.class, () -> Keys.of("a", "a"));
    assertThrows(InvalidInputException.class, () -> KEYS.refuse("format", "twice"));
    assertThrows(InvalidInputException.class, () -> Keys.of(" "));
    assertThrows(InvalidInputException.class, () -> new TextPosition("f", 0, 1));
  }
}
