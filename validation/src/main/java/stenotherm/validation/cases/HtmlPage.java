package stenotherm.validation.cases;

import java.util.List;
import stenotherm.picture.Picture;
import stenotherm.words.Markup;

/** A page that needs nothing else, neither a network nor a script. */
final class HtmlPage implements Page {
  private static final String STYLE =
      """
      body { font: 16px/1.5 system-ui, sans-serif; color: #1b1b1b; background: #fff;
        max-width: 1600px; margin: 0 auto; padding: 1rem 1.25rem 4rem; }
      h1 { font-size: 1.6rem; line-height: 1.25; }
      h2 { margin-top: 2.4rem; border-bottom: 1px solid #bbb; font-size: 1.3rem; }
      h3 { margin-top: 1.6rem; font-size: 1.05rem; }
      .wide { overflow-x: auto; }
      table { border-collapse: collapse; font-size: .85rem; font-variant-numeric: tabular-nums; }
      th, td { border-bottom: 1px solid #ccc; padding: .25rem .6rem; text-align: left;
        vertical-align: top; }
      td { min-width: 2rem; max-width: 22rem; }
      thead th { border-bottom: 2px solid #1b1b1b; }
      svg { max-width: 100%; height: auto; display: block; margin: 1rem 0; }
      @media print { body { max-width: none; } svg, tr { break-inside: avoid; } }
      """;

  private final StringBuilder html = new StringBuilder();

  HtmlPage(String title) {
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.append("<title>").append(Markup.escaped(title)).append("</title>\n");
    html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
  }

  @Override
  public void heading(int level, String text) {
    element("h" + level, text);
  }

  @Override
  public void paragraph(String text) {
    element("p", text);
  }

  @Override
  public void list(List<String> items) {
    html.append("<ul>\n");
    items.forEach(item -> element("li", item));
    html.append("</ul>\n");
  }

  @Override
  public void table(List<String> header, List<List<String>> rows) {
    html.append("<div class=\"wide\"><table>\n<thead>");
    row("th", header);
    html.append("</thead>\n<tbody>\n");
    rows.forEach(row -> row("td", row));
    html.append("</tbody>\n</table></div>\n");
  }

  private void row(String tag, List<String> cells) {
    html.append("<tr>");
    for (String cell : cells) {
      html.append('<').append(tag).append('>');
      html.append(Markup.escaped(cell)).append("</").append(tag).append('>');
    }
    html.append("</tr>\n");
  }

  @Override
  public void picture(String name, Picture picture) {
    String svg = picture.svg(WIDTH, HEIGHT);
    html.append(svg.substring(svg.indexOf("<svg"))).append('\n');
  }

  private void element(String tag, String text) {
    html.append('<').append(tag).append('>').append(Markup.escaped(text));
    html.append("</").append(tag).append(">\n");
  }

  @Override
  public String text() {
    return html + "</main>\n</body>\n</html>\n";
  }
}
