package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import stenotherm.text.TextFormatException;

/** Whatever a file holds, it is read or gives the one exception. */
class ScenarioProperties {
  /** Replaces some characters from a place on by others. */
  record Edit(int place, int removed, String inserted) {
    String apply(String text) {
      int from = place % (text.length() + 1);
      int to = Math.min(text.length(), from + removed);
      return text.substring(0, from) + inserted + text.substring(to);
    }
  }

  @Provide
  Arbitrary<Edit> edits() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 2000),
            Arbitraries.integers().between(0, 6),
            Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(
                    3,
                    Arbitraries.of(
                        "",
                        "0",
                        "9",
                        "-",
                        "99999999",
                        "1e300",
                        ",",
                        " ",
                        "\n",
                        "m",
                        "°",
                        "none",
                        "lid",
                        "outdoors",
                        " to ",
                        "x",
                        ":",
                        "{",
                        "]",
                        "UTC+18",
                        "EPS ")),
                net.jqwik.api.Tuple.of(1, Arbitraries.strings().ofMaxLength(4))))
        .as(Edit::new);
  }

  @Provide
  Arbitrary<List<Edit>> changes() {
    return edits().list().ofMinSize(1).ofMaxSize(3);
  }

  @Property(tries = 600, seed = "20131212")
  void changedFilesAreReadOrRefused(@ForAll("changes") List<Edit> changes) {
    String text = ScenarioFiles.GOOD;
    for (Edit change : changes) {
      text = change.apply(text);
    }
    readOrRefuse(text);
  }

  @Provide
  Arbitrary<String> values() {
    return Arbitraries.of(
        "",
        "0",
        "-1",
        "1e308 d",
        "1e-320 mm",
        "1 x 1 x 1 mm",
        "1e9 x 1e9 x 1e9 m",
        "9999-12-31 23:59",
        "0000-01-01 00:00",
        "2013-12-12 18:00",
        "[]",
        "{}",
        "[a, b]",
        "none",
        "a on lid",
        "EPS 20, 1e300 m",
        "EPS 20.5, 1e-300 m",
        "corn snake, 1e-4 g",
        "corn snake, 20 kg",
        "x, UTC+18",
        "Seattle, UTC-18",
        "30 d",
        "1e9 d before sealing",
        "-300 to 400 °C",
        "0 K",
        "1 s",
        "origin",
        "~",
        "\"\"");
  }

  @Property(tries = 600, seed = "20131213")
  void otherValuesAreReadOrRefused(@ForAll("values") String value, @ForAll("places") int place) {
    String[] lines = ScenarioFiles.GOOD.split("\n", -1);
    int line = place % lines.length;
    int colon = lines[line].indexOf(':');
    if (colon >= 0) {
      lines[line] = lines[line].substring(0, colon + 1) + " " + value;
    }
    readOrRefuse(String.join("\n", lines));
  }

  @Provide
  Arbitrary<Integer> places() {
    return Arbitraries.integers().between(0, 40);
  }

  private static void readOrRefuse(String text) {
    try {
      ScenarioReader.read("s.yaml", text);
    } catch (TextFormatException fault) {
      assertTrue(String.valueOf(fault.getMessage()).startsWith("s.yaml:"), fault.getMessage());
    }
  }
}
