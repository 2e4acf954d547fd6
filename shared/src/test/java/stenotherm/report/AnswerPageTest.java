package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.decision.Verdict;

class AnswerPageTest {
  @Test
  void noPageGoesWithoutCautions() {
    assertThrows(IllegalStateException.class, () -> new AnswerPage("Box", "Do.").html());
  }

  @Test
  void theAnswerStandsFirstAndWhoDecidesStandsOnce() {
    AnswerPage page = new AnswerPage("A <box>", "Take \"it\".").deferral();
    page.folded("More", folded -> folded.list(List.of("one", "two")));
    page.cautions(List.of("It may be cold.", Verdict.DEFER));
    String html = new String(page.html(), StandardCharsets.UTF_8);
    assertTrue(
        html.contains("<h1>A &lt;box&gt;</h1>\n<p class=\"answer\">Take &quot;it&quot;.</p>"));
    assertEquals(2, html.split(Verdict.DEFER, -1).length);
    assertTrue(html.contains("<summary>More</summary>\n<ul>\n<li>one</li>\n<li>two</li>\n</ul>"));
    assertTrue(html.contains("<li>It may be cold.</li>\n</ul>\n</section>"));
  }

  @Test
  void noLineEndsBetweenANumberAndItsUnit() {
    AnswerPage page = new AnswerPage("Box", "Do.");
    page.table(
        new TextTable(
            "Odds",
            List.of("packing", "coldest", "mass"),
            List.of(List.of("thin", "7.5 °C, day 2, 10:00", "1.79 kg"))));
    String html = new String(page.cautions(List.of()).html(), StandardCharsets.UTF_8);
    assertTrue(html.contains(">7.5\u00a0°C, day\u00a02, 10:00<"), html);
    assertTrue(html.contains(">1.79\u00a0kg<"), html);
  }
}
