package stenotherm.text;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import stenotherm.base.MessageText;

/** Whatever a file holds, reading it either works or gives the one exception. */
class DocumentProperties {
  private static final String GOOD =
      """
      format: 1
      title: "Frog, overnight" # a note
      journey:
        sealed: 2013-12-12 18:00
        offset: UTC-5
        legs:
          - {name: 'porch', lasts: 1 h 30 min, lows: [28 °F, 45 °F]}
          - name: van
            lasts: 9 h
            ambient: 5 to 20 °C
      box:
        size: 300 x 200 x 150 mm
        foam: 0.75 in
      note: |
        two lines
        of text 😀
      """;

  private static final List<Consumer<ScalarNode>> READINGS =
      List.of(
          ScalarNode::text,
          ScalarNode::number,
          ScalarNode::yesOrNo,
          ScalarNode::temperature,
          ScalarNode::temperatureRange,
          ScalarNode::temperatureDifference,
          ScalarNode::length,
          ScalarNode::size,
          ScalarNode::mass,
          ScalarNode::duration,
          ScalarNode::speed,
          ScalarNode::thermalResistance,
          ScalarNode::percentage,
          ScalarNode::localDateTime,
          ScalarNode::clock,
          ScalarNode::utcOffset);

  /** Replaces some characters from a place on by others. */
  record Edit(int place, int removed, String inserted) {
    String apply(String text) {
      int start = Math.min(place, text.length());
      int end = Math.min(start + removed, text.length());
      return text.substring(0, start) + inserted + text.substring(end);
    }
  }

  @Provide
  Arbitrary<List<Edit>> edits() {
    Arbitrary<String> signs =
        Arbitraries.strings()
            .withChars(":-[]{},&*!?|>'\"%@`#~<=. \t\n\r\\0159eExWmKF°C_+\uFEFF\u0085\u2028é\uD800")
            .ofMaxLength(4);
    Arbitrary<String> words =
        Arbitraries.of(
            "---\n",
            "...\n",
            "%YAML 1.1\n",
            "null",
            "<<: ",
            "? ",
            "- ",
            ": ",
            "\n\n",
            "😀",
            ".nan",
            "1e999",
            "!!binary ",
            "\\u12");
    return Combinators.combine(
            Arbitraries.integers().between(0, GOOD.length()),
            Arbitraries.integers().between(0, 12),
            Arbitraries.oneOf(signs, words))
        .as(Edit::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6);
  }

  @Property(tries = 4000, seed = "20131212")
  void readsOrGivesTheOneException(@ForAll("edits") List<Edit> edits) {
    String text = GOOD;
    for (Edit edit : edits) {
      text = edit.apply(text);
    }
    readEverything(text);
  }

  @Property(tries = 1000, seed = "20131213")
  void readsAnyBytesOrGivesTheOneException(@ForAll byte[] bytes) {
    attempt(() -> visit(Document.parse("f", bytes).root()));
  }

  @Property(tries = 1000, seed = "20131214")
  void readsAnyTextOrGivesTheOneException(@ForAll String text) {
    readEverything(text);
    attempt(() -> visit(Document.parse("f", text.getBytes(StandardCharsets.UTF_16)).root()));
  }

  private static void readEverything(String text) {
    attempt(() -> visit(Document.parse("f", text).root()));
  }

  private static void visit(Node node) {
    attempt(node::temperatureRange);
    if (node instanceof MappingNode mapping) {
      mapping.keys().forEach(key -> visit(mapping.require(key)));
    } else if (node instanceof SequenceNode sequence) {
      sequence.items().forEach(DocumentProperties::visit);
    } else {
      READINGS.forEach(reading -> attempt(() -> reading.accept(node.asScalar())));
    }
  }

  /** Lets every other exception fail the property. */
  private static void attempt(Runnable reading) {
    try {
      reading.run();
    } catch (TextFormatException expected) {
      for (TextFormatException each : expected.faults()) {
        String message = each.getMessage();
        if (message.indexOf('\n') >= 0 || message.length() > MessageText.LONGEST) {
          throw new AssertionError("message of more than one line", expected);
        }
      }
    }
  }
}
