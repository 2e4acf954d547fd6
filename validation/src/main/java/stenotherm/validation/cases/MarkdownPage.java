package stenotherm.validation.cases;

import java.util.List;
import java.util.stream.Collectors;
import stenotherm.picture.Picture;

/** A page in Markdown with tables; pictures are files of their own beside it. */
final class MarkdownPage implements Page {
  private final StringBuilder markdown = new StringBuilder();

  @Override
  public void heading(int level, String text) {
    markdown.append("#".repeat(level)).append(' ').append(escaped(text)).append("\n\n");
  }

  @Override
  public void paragraph(String text) {
    markdown.append(escaped(text)).append("\n\n");
  }

  @Override
  public void list(List<String> items) {
    items.forEach(item -> markdown.append("- ").append(escaped(item)).append('\n'));
    markdown.append('\n');
  }

  @Override
  public void table(List<String> header, List<List<String>> rows) {
    row(header);
    row(header.stream().map(name -> "---").toList());
    rows.forEach(cells -> row(cells.stream().map(MarkdownPage::escaped).toList()));
    markdown.append('\n');
  }

  private void row(List<String> cells) {
    markdown.append(cells.stream().collect(Collectors.joining(" | ", "| ", " |\n")));
  }

  @Override
  public void picture(String name, Picture picture) {
    markdown.append("![").append(escaped(picture.title())).append("](");
    markdown.append(ReportFiles.PLOTS).append('/').append(name).append(".svg)\n\n");
  }

  /** Texts come from files; what Markdown would read as its own is escaped. */
  private static String escaped(String text) {
    return text.replaceAll("([\\\\`*_<>\\[\\]|#])", "\\\\$1").replaceAll("\\s+", " ");
  }

  @Override
  public String text() {
    return markdown.toString();
  }
}
