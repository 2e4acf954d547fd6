package stenotherm.validation.cases;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import stenotherm.picture.Picture;

/** Writes the results of a run into a folder. */
final class CaseReportFolder {
  static final String RESULTS = "results.csv";
  static final String HTML = "report.html";
  static final String MARKDOWN = "report.md";
  static final String PLOTS = "plots";

  private CaseReportFolder() {}

  /**
   * Writes all files.
   *
   * @param more sections beside those of the cases
   * @throws IOException if one cannot be written
   */
  static void write(Path folder, List<CaseResult> results, List<Report.Section> more)
      throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(RESULTS), ResultsCsv.of(results));
    Page html = new HtmlPage(Report.TITLE);
    Report.write(results, more, html);
    Files.writeString(folder.resolve(HTML), html.text());
    Page markdown = new MarkdownPage();
    Report.write(results, more, markdown);
    Files.writeString(folder.resolve(MARKDOWN), markdown.text());
    for (CaseResult result : results) {
      int number = 0;
      for (Picture picture : result.pictures()) {
        Path plots = Files.createDirectories(folder.resolve(PLOTS));
        Files.writeString(
            plots.resolve(Report.pictureName(result, number++) + ".svg"),
            picture.svg(Page.WIDTH, Page.HEIGHT));
      }
    }
  }
}
