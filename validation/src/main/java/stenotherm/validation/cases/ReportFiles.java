package stenotherm.validation.cases;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stenotherm.picture.Picture;

/** The files that the results of a run fill. */
final class ReportFiles {
  static final String RESULTS = "results.csv";
  static final String HTML = "report.html";
  static final String MARKDOWN = "report.md";
  static final String PLOTS = "plots";

  /** What a folder of a report may hold. */
  static final Set<String> NAMES = Set.of(RESULTS, HTML, MARKDOWN, PLOTS);

  private ReportFiles() {}

  /**
   * Makes all files.
   *
   * @param more sections beside those of the cases
   * @return contents by name
   */
  static Map<String, byte[]> of(List<CaseResult> results, List<Report.Section> more) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(RESULTS, bytes(ResultsCsv.of(results)));
    Page html = new HtmlPage(Report.TITLE);
    Report.write(results, more, html);
    files.put(HTML, bytes(html.text()));
    Page markdown = new MarkdownPage();
    Report.write(results, more, markdown);
    files.put(MARKDOWN, bytes(markdown.text()));
    for (CaseResult result : results) {
      int number = 0;
      for (Picture picture : result.pictures()) {
        files.put(
            PLOTS + "/" + Report.pictureName(result, number++) + ".svg",
            bytes(picture.svg(Page.WIDTH, Page.HEIGHT)));
      }
    }
    return files;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
