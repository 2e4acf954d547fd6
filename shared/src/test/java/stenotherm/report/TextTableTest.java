package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
  private static List<String> printed(TextTable table) {
    StringWriter text = new StringWriter();
    table.print(new PrintWriter(text, true));
    return text.toString().lines().toList();
  }

  @Test
  void whatFitsStandsOnALineEach() {
    assertEquals(
        List.of("", "What:", "name   of 100", "-----  ------", "small  7", "large  93"),
        printed(
            new TextTable(
                "What",
                List.of("name", "of 100"),
                List.of(List.of("small", "7"), List.of("large", "93")))));
  }

  /** The widest columns give way, heads before cells; no word is broken, nothing is lost. */
  @Test
  void whatIsTooWideGoesOnBelow() {
    String change = "two holes of 6 mm through board and foam, one in the lid and one in a side, ";
    TextTable table =
        new TextTable(
            "Changes",
            List.of("change", "of 100 go well", "too cold", "short of air"),
            List.of(
                List.of(change.repeat(2).strip(), "72 (63 to 79)", "28", "5"),
                List.of("leave it", "3", "97", "1")));
    List<String> lines = printed(table);
    assertTrue(lines.stream().allMatch(line -> line.length() <= 100), lines.toString());
    assertEquals(2, lines.stream().skip(2).takeWhile(line -> !line.startsWith("-")).count());
    String all = String.join(" ", lines).replaceAll(" +", " ");
    for (String word : change.split(" ")) {
      assertTrue(all.contains(word), word);
    }
    assertTrue(lines.get(lines.size() - 1).matches("leave it +3 +97 +1"), lines.toString());
  }

  @Test
  void aWordIsNeverBroken() {
    String word = "x".repeat(120);
    List<String> lines =
        printed(new TextTable("Files", List.of("file"), List.of(List.of("a " + word))));
    assertEquals(word, lines.get(lines.size() - 1));
  }
}
