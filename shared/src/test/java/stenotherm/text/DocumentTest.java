package stenotherm.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DocumentTest {
  private static final String QUOTE_IT = ", put a text that starts like this in quotes";
  private static final String STRAY_COLON =
      "has a ':' that starts no key here, indent keys of one level alike, write a blank after"
          + " the '-' of each item and the ':' of each key, and put a text that contains ': ' in quotes";
  private static final String INDENTED =
      "is indented unlike the lines above, indent keys of one level alike";
  private static final String NO_VALUE =
      "has no value, write one or remove the line; inside { } a comma ends a value, so that a text with"
          + " one goes in quotes";

  static Stream<Arguments> malformed() {
    return Stream.of(
        // Nothing there.
        arguments("", "1:1: is empty"),
        arguments("# only a comment\n", "1:1: is empty"),
        arguments("---\n", "2:1: is empty"),
        arguments("\uFEFF", "1:1: is empty"),
        arguments("a:\n", "1:3: a: " + NO_VALUE),
        arguments("a: ~\n", "1:4: a: " + NO_VALUE),
        arguments("a: null\n", "1:4: a: " + NO_VALUE),
        arguments("a:\n  b: 1\n  c:\n", "3:5: a.c: " + NO_VALUE),
        arguments("- 1\n-\n", "2:2: [1]: " + NO_VALUE),
        arguments("{\"a\": null}", "1:7: a: " + NO_VALUE),
        arguments("\uFEFFa:\n", "1:3: a: " + NO_VALUE),
        // More than is allowed.
        arguments("a: 1\nb: 2\na: 3\n", "3:1: a: is given twice, first on line 1"),
        arguments("p:\n  q: 1\n  q: 2\n", "3:3: p.q: is given twice, first on line 2"),
        arguments("- {b: 1, b: 2}\n", "1:10: [0].b: is given twice, first on line 1"),
        arguments("a: &x 1\n", "1:4: a: an anchor (&) is not allowed here" + QUOTE_IT),
        arguments("&x a: 1\n", "1:1: an anchor (&) is not allowed here" + QUOTE_IT),
        arguments("a: 1\nb: *a\n", "2:4: b: an alias (*) is not allowed here" + QUOTE_IT),
        arguments("a: !!int 1\n", "1:4: a: a tag (!) is not allowed here" + QUOTE_IT),
        arguments("a: !x {b: 1}\n", "1:4: a: a tag (!) is not allowed here" + QUOTE_IT),
        arguments("!!str a: 1\n", "1:1: a tag (!) is not allowed here" + QUOTE_IT),
        arguments("é: 😀\n😀: !x 1\n", "2:4: 😀: a tag (!) is not allowed here" + QUOTE_IT),
        arguments("<<: {a: 1}\n", "1:1: a merge key (<<) is not allowed here, write the keys out"),
        arguments("a: 1\n---\nb: 2\n", "3:1: starts a second document, a file must hold one"),
        arguments("a: 1\n---\n", "3:1: starts a second document, a file must hold one"),
        arguments(
            "a: 1\n...\nb: 2\n",
            "3:1: does not belong to the document above, indent keys of one level alike"),
        arguments(
            "[".repeat(21) + "1" + "]".repeat(21),
            "1:21: " + "[0]".repeat(20) + ": is nested deeper than 20 levels"),
        arguments("a: " + "x".repeat(1_000_000), "1:1: is larger than 1000000 bytes"),
        arguments("a: " + "é".repeat(500_000), "1:1: is larger than 1000000 bytes"),
        // Keys.
        arguments("\"\": 1\n", "1:1: has an empty key before ':'"),
        arguments(
            "\"a\\nb\": 1\n",
            "1:1: has a key with a line break or a tab, a key must be plain text"),
        arguments(
            "? [1, 2]\n: 3\n", "1:4: has a list or mapping as a key, a key must be a single text"),
        arguments("a: 1\nb\n", "2:1: is not 'key: value', a ':' with a blank after it is missing"),
        arguments(
            "a: 1\nb\nc: 2\n", "2:1: is not 'key: value', a ':' with a blank after it is missing"),
        arguments("a: b: c\n", "1:5: " + STRAY_COLON),
        arguments("a\nb: 1\n", "2:2: " + STRAY_COLON),
        // Indentation.
        arguments("a:\n\tb: 1\n", "2:1: has a tab in its indentation, use spaces"),
        arguments("a: 1\n  \tb: 2\n", "2:3: has a tab in its indentation, use spaces"),
        arguments("a:\t@x\n", "1:3: has a tab where a value must start, use spaces"),
        arguments("a: 1\n b: 2\n", "2:3: " + STRAY_COLON),
        arguments("a:\n    b: 1\n  c: 2\n", "3:3: " + INDENTED),
        arguments("a:\n  - 1\n  b: 2\n", "3:3: " + INDENTED),
        arguments("- a\nb: 1\n", "2:1: " + INDENTED),
        arguments(
            " a: 1\nb: 2\n",
            "2:1: does not belong to the document above, indent keys of one level alike"),
        arguments(
            "a: - 1\n",
            "1:4: has a '- ' where no list can start, begin the list on a line of its own"),
        // Quotes, brackets and signs.
        arguments("a: \"xx\nb: 1\n", "1:4: opens quotes that are never closed"),
        arguments(
            "a: 1\nb: 'it's'\n",
            "2:8: has text after a value that ended, put the whole text in quotes"),
        arguments("a: 'x\n---\ny'\n", "1:4: opens quotes that are never closed"),
        arguments(
            "a: 'x' y\n", "1:8: has text after a value that ended, put the whole text in quotes"),
        arguments(
            "a: \"\\q\"\n",
            "1:6: has an unknown escape after a backslash, put the text in single quotes"),
        arguments(
            "a: [1, 2\nb: 3\n",
            "2:2: the list opened with '[' on line 1 must go on with ',' or end with ']'"),
        arguments(
            "a: {x: 1, y: 2\n",
            "2:1: the mapping opened with '{' on line 1 must go on with ',' or end with '}'"),
        arguments(
            "a: [1]]\n", "1:7: has text after a value that ended, put the whole text in quotes"),
        arguments(
            "a: ]\n",
            "1:4: is not YAML at this place, look at the indentation, the quotes and the brackets"
                + " here and on the line before"),
        arguments("a: @x\n", "1:4: a text cannot start with @, put it in quotes"),
        arguments("a: %x\n", "1:4: a text cannot start with %, put it in quotes"),
        arguments(
            "lows: [28, 45] °F\n",
            "1:16: has text after a list, write the unit in each item ([28 °F, 45 °F]) or a range"
                + " as 28 to 45 °F"),
        arguments("é: 😀\u0007\n", "1:5: has a character that is not text (U+0007), remove it"));
  }

  @ParameterizedTest
  @MethodSource
  void malformed(String text, String message) {
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> Document.parse("trip.yaml", text));

    assertEquals("trip.yaml:" + message, fault.getMessage());
  }

  /** What does not keep the parser from going on is told together, with what does. */
  @Test
  void faultsBesideEachOtherAreToldAtOnce() {
    String text =
        "a: &x 1\nb: *x\n<<: {c: 2}\nd: !!int 3\n\"\": 4\n\"e\\nf\": 5\ng:\nb: 6\nh: [7\n";
    TextFormatException all =
        assertThrows(TextFormatException.class, () -> Document.parse("trip.yaml", text));
    assertEquals(
        List.of(1, 2, 3, 4, 5, 6, 7, 8, 10),
        all.faults().stream().map(fault -> fault.position().line()).toList(),
        all.getMessage());
  }

  @Test
  void readingEndsAfterManyFaults() {
    TextFormatException all =
        assertThrows(
            TextFormatException.class, () -> Document.parse("trip.yaml", "- &x 1\n".repeat(5000)));
    assertEquals(100, all.faults().size());
  }

  @Test
  void keepsPlacesOfKeysAndValues() {
    Document document =
        Document.parse("trip.yaml", "# note\nlegs:\n  - name: é 😀\n    lasts: 2 h\n");

    MappingNode root = document.root().asMapping();
    SequenceNode legs = root.require("legs").asSequence();
    MappingNode leg = legs.mappings().get(0);
    assertEquals("trip.yaml:2:1", root.position().toString());
    assertEquals("trip.yaml:3:3", legs.position().toString());
    assertEquals("trip.yaml:4:5", leg.keyPosition("lasts").toString());
    assertEquals("trip.yaml:4:12", leg.require("lasts").position().toString());
    assertEquals("legs[0].lasts", leg.require("lasts").path());
    assertEquals("é 😀", leg.require("name").asScalar().text());
  }

  @Test
  void readsJson() {
    Node root = Document.parse("a.json", "{\"format\": 1, \"fans\": [true, \"no\"]}").root();

    SequenceNode fans = root.asMapping().require("fans").asSequence();
    assertEquals(1, root.asMapping().require("format").asScalar().number());
    assertEquals(true, fans.scalars().get(0).yesOrNo());
    assertEquals(false, fans.scalars().get(1).yesOrNo());
  }

  @Test
  void quotedTextIsNeverMissing() {
    MappingNode root = Document.parse("a.yaml", "a: 'null'\nb: \"~\"\n").root().asMapping();

    assertEquals("null", root.require("a").asScalar().text());
    assertEquals("~", root.require("b").asScalar().text());
  }

  @Test
  void readsBytesWithByteOrderMark() {
    byte[] bytes = "\uFEFFa: 20 °C\r\nb: 2\r\n".getBytes(StandardCharsets.UTF_8);

    MappingNode root = Document.parse("a.yaml", bytes).root().asMapping();

    assertEquals(293.15, root.require("a").asScalar().temperature());
    assertEquals("a.yaml:2:4", root.require("b").position().toString());
  }

  @Test
  void refusesBytesThatAreNotUtf8() {
    assertBytesRefused(
        "a: 1\nb: 20 °C".getBytes(StandardCharsets.ISO_8859_1),
        "a.yaml:2:7: is not UTF-8 text, save the file as UTF-8");
    assertBytesRefused(
        "a: 1".getBytes(StandardCharsets.UTF_16),
        "a.yaml:1:1: is not UTF-8 text, save the file as UTF-8");
    assertBytesRefused(new byte[1_000_001], "a.yaml:1:1: is larger than 1000000 bytes");
  }

  private static void assertBytesRefused(byte[] bytes, String message) {
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> Document.parse("a.yaml", bytes));
    assertEquals(message, fault.getMessage());
  }

  @Test
  void readsFiles(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a.yaml");
    Files.writeString(file, "a:\n");

    TextFormatException fault = assertThrows(TextFormatException.class, () -> Document.read(file));

    assertEquals(file + ":1:3: a: " + NO_VALUE, fault.getMessage());
  }
}
