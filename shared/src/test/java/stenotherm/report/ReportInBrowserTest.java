package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;

/** A report of three packings as people see it: on a phone, on a screen, on paper. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReportInBrowserTest {
  private static final Scenario SCENARIO =
      ScenarioReader.read(
          "test.yaml",
          """
          format: 1
          title: A gecko, westward, in one of three packings
          animal: leopard gecko, 40 g
          cup: 110 x 80 x 60 mm
          hold: 3 h
          journey:
            sealed: 2026-01-31 20:00
            from: Here, UTC-5
            to: There, UTC-8
            legs:
              - {name: night in the cold truck, at: origin, for: 5 h, ambient: 4 °C}
              - {name: depot, at: destination, for: 3 h, ambient: 12 °C}
          packings:
            - {name: small box of thin foam, box: 200 x 170 x 150 mm, foam: EPS 20 13 mm, \
          fill: shredded paper, warmer: 40 hour warmer on lid}
            - {name: middling box, box: 240 x 210 x 190 mm, foam: EPS 20 30 mm, \
          fill: shredded paper, warmer: 40 hour warmer on lid}
            - {name: large box of thick foam, box: 260 x 230 x 210 mm, foam: EPS 20 40 mm, \
          fill: shredded paper, warmer: 40 hour warmer on lid}
          """);

  /**
   * With all parts of the page unfolded: letters in pictures that are shown smaller than 10 pixels,
   * and what reaches beyond the right edge or is cut off within its own box.
   */
  private static final String FAULTS =
      """
      view.document.querySelectorAll('details').forEach(part => part.open = true);
      const faults = [];
      let count = 0;
      view.document.querySelectorAll('svg').forEach(picture => {
        const shown = picture.getBoundingClientRect().width;
        const scale = shown / picture.viewBox.baseVal.width;
        picture.querySelectorAll('text').forEach(text => {
          if (shown === 0 || text.hasAttribute('aria-hidden')) { return; }
          count++;
          const size = scale * parseFloat(text.getAttribute('font-size'));
          if (size < 10) { faults.push(size.toFixed(1) + ' px: ' + text.textContent); }
        });
      });
      if (count < 60) { faults.push('only ' + count + ' texts are shown'); }
      const edge = view.document.documentElement.clientWidth;
      view.document.querySelectorAll('body *').forEach(part => {
        if (part.closest('svg') !== null && part.tagName !== 'svg') { return; }
        const cut = part.scrollWidth > part.clientWidth + 1
            && view.getComputedStyle(part).display !== 'inline';
        if (cut || part.getBoundingClientRect().right > edge + 0.5) {
          faults.push('too wide: ' + part.tagName + ' ' + part.textContent.slice(0, 40));
        }
      });
      if (view.document.documentElement.scrollWidth > edge) { faults.push('scrolls across'); }
      return faults.join('; ');
      """;

  private String page = "";
  private String sheet = "";
  private Optional<Browser> browser = Optional.empty();

  @BeforeAll
  void compare(@TempDir Path folder) {
    browser = Browser.in(folder);
    if (browser.isPresent()) {
      ComparisonReport report = PagesToLookAt.of(SCENARIO);
      page = text(report, ComparisonReport.PAGE);
      sheet = text(PackingSheet.of(report), PackingSheet.PAGE);
    }
  }

  private static String text(Answer answer, String name) {
    return new String(answer.files(true).get(name), StandardCharsets.UTF_8);
  }

  private Browser browser() {
    assumeTrue(
        browser.isPresent(),
        "no chromium on the path, so what people see is not tested; Debian has it as a package");
    return browser.orElseThrow();
  }

  /** Phones, the widths at which the pictures change, a screen. */
  @Test
  void canBeReadWithoutScrollingAcross() throws IOException, InterruptedException {
    List<Integer> widths = List.of(360, 420, 800, 801, 1280);
    Browser.Seen seen = browser().look(page, widths, FAULTS);
    for (int index = 0; index < widths.size(); index++) {
      assertEquals("", seen.texts().get(index), "at " + widths.get(index) + " pixels");
    }
    assertEquals(List.of(), seen.complaints());
  }

  /** On sheets as wide as A4 and as high as Letter: what fits on them fits on both. */
  private int sheets(String page) throws IOException, InterruptedException {
    Browser there = browser();
    String sized = page.replaceAll("(@page[ a-z]*\\{)", "$1 size: 210mm 11in;");
    assertTrue(sized.length() > page.length());
    return there.pagesOnPaper(sized);
  }

  @Test
  void fitsOnFourSheetsOfPaper() throws IOException, InterruptedException {
    int pages = sheets(page);
    assertTrue(pages >= 1 && pages <= 4, pages + " pages");
  }

  @Test
  void thePackingSheetIsOneSheetOfPaper() throws IOException, InterruptedException {
    assertEquals(1, sheets(sheet));
  }

  /**
   * With holes, water, a warmer against foam and an animal of many cautions: the longest of one.
   */
  @Test
  void theSheetOfOneAnimalIsOneSheetOfPaperWithAllThatCanStandOnIt()
      throws IOException, InterruptedException {
    browser();
    Scenario full =
        ScenarioReader.read(
            "full.yaml",
            """
            format: 1
            title: A grown tarantula, northward, with all that a parcel can have in it
            units: us
            animal: Chilean rose tarantula 30 g
            cup: 16 oz
            journey:
              template: overnight by air
              sealed: Dec 8 2026 4pm
              from: {name: Here, utc: UTC-6, lows/highs: 42-62 F}
              to: {name: There, utc: UTC-8, lows/highs: 36-46 F}
            packings:
              - name: the larger box
                box: 10 x 10 x 8 in carton
                foam: EPS 1 1/2 in
                fill: crumpled newspaper
                holes: [2 x 1/4 in on lid, 2 x 1/4 in on front]
                warmer: 40 hour warmer on lid
                packs: [{name: water, pack: water on back, size: 5 x 5 x 1 1/4 in, start: 70 F}]
            """);
    PackingSheet longest =
        PackingSheet.asPacked(PagesToLookAt.of(full))
            .withLows("Packed like this it is good for lows at both ends from 30 °F to 52 °F.");
    assertEquals(1, sheets(text(longest, PackingSheet.PAGE)));
  }

  /** It has fewer texts in its picture than a report. */
  @Test
  void thePackingSheetCanBeReadOnAPhone() throws IOException, InterruptedException {
    String faults = FAULTS.replace("count < 60", "count < 20");
    Browser.Seen seen = browser().look(sheet, List.of(360, 420, 1280), faults);
    assertEquals(List.of("", "", ""), seen.texts());
    assertEquals(List.of(), seen.complaints());
  }

  /** The measure itself: a page with small letters, a wide part and a mistake is found out. */
  @Test
  void theLookFindsWhatItLooksFor() throws IOException, InterruptedException {
    String bad =
        """
        <!DOCTYPE html><html><body><div style="width: 800px">wide</div>
        <svg viewBox="0 0 800 100" width="400">%s</svg>
        <script>nowhere();</script></body></html>
        """
            .formatted("<text font-size=\"11\" x=\"5\" y=\"50\">tiny</text>".repeat(61));
    Browser.Seen seen = browser().look(bad, List.of(1280, 420), FAULTS);
    assertTrue(!seen.texts().get(0).contains("too wide"), seen.texts().get(0));
    String narrow = seen.texts().get(1);
    assertTrue(narrow.startsWith("5.5 px: tiny; "), narrow);
    assertTrue(narrow.contains("too wide: DIV wide"), narrow);
    assertTrue(narrow.endsWith("scrolls across"), narrow);
    assertTrue(seen.complaints().stream().anyMatch(line -> line.contains("nowhere")));
  }
}
