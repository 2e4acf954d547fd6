package stenotherm.report;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntUnaryOperator;
import stenotherm.decision.Verdict;
import stenotherm.picture.Picture;
import stenotherm.scenario.Scenario;
import stenotherm.words.Markup;

/**
 * A page that answers one question, in the one look of all pages. It works offline and without
 * scripts, on screens, phones and paper. The answer stands first; what follows is written in the
 * order of the calls. Each picture is drawn twice, for wide and for narrow screens.
 *
 * <p>Not thread-safe.
 */
final class AnswerPage {
  /** Widths at which a picture's letters are large enough on paper, and on a phone [pixel]. */
  private static final int WIDE = 760;

  private static final int NARROW = 340;

  private static final String STYLE =
      """
      body { font: 16px/1.5 system-ui, sans-serif; color: #1b1b1b; background: #fff;
        max-width: 1080px; margin: 0 auto; padding: .5rem 1rem 3rem; }
      h1 { font-size: 1.1rem; font-weight: 500; line-height: 1.25; margin: .6rem 0 .3rem; }
      h2 { font-size: 1.2rem; margin: 1.6rem 0 .4rem; }
      h3 { font-size: 1.05rem; margin: 1.4rem 0 .3rem; }
      .answer { font-size: 1.4rem; font-weight: 700; line-height: 1.3; margin: .6rem 0 .2rem; }
      .cautions { border: 2px solid #1b1b1b; border-left-width: 10px; padding: 0 1rem;
        margin: 1.6rem 0; }
      .cautions h2 { margin-top: .6rem; }
      ul, ol { padding-left: 1.2rem; }
      .columns { display: grid; grid-template-columns: 1fr 1fr; column-gap: 1.6rem; }
      details { border-top: 1px solid #888; padding: .5rem 0; }
      summary { cursor: pointer; font-size: 1.1rem; font-weight: 600; }
      table { border-collapse: collapse; font-size: .9rem; width: 100%; margin: .6rem 0; }
      caption { text-align: left; padding: .3rem 0; color: #444; }
      th, td { border-bottom: 1px solid #bbb; padding: .3rem .5rem .3rem 0; text-align: left;
        vertical-align: top; }
      thead th { border-bottom: 2px solid #1b1b1b; vertical-align: bottom; }
      pre { background: #f3f3f3; padding: .6rem .8rem; overflow-x: auto; font-size: .9rem; white-space: pre-wrap; }
      figure { margin: 1rem 0; }
      svg { width: 100%; height: auto; display: block; }
      .narrow { display: none; max-width: 34rem; }
      figcaption, .small { color: #444; font-size: .9rem; }
      dt { font-weight: 600; } dd { margin: 0 0 .4rem; }
      .paper { display: none; }
      @media screen and (max-width: 800px) {
        .wide { display: none; } .narrow { display: block; }
        table, caption, tbody, tr, tbody th, td { display: block; } thead { display: none; }
        tbody tr { border-top: 2px solid #1b1b1b; padding: .3rem 0; }
        tbody th, td { border: 0; padding: .1rem 0; }
        td { display: grid; grid-template-columns: 9.5rem 1fr; column-gap: .5rem; }
        td.none { display: none; } .columns { display: block; }
        td::before { content: attr(data-head); color: #444; }
      }
      @media print {
        @page { margin: 12mm; }
        body { max-width: none; padding: 0; font-size: 10pt; }
        table { font-size: 8.5pt; } dl, .small { font-size: 9pt; } dt, dd { display: inline; }
        p { margin: .4rem 0; } .answer { font-size: 14pt; } main > figure { margin: .4rem 0; }
        main > figure svg { max-height: 100mm; }
        h2, .cautions { margin-top: .8rem; }
        h1, h2, h3, caption { break-after: avoid; }
        figure, tr, li, dl div, .cautions { break-inside: avoid; }
        details:not([open]) { display: none; }
        .paper { display: block; }
        @page sheet { margin: 8mm; }
        .sheet { page: sheet; font-size: 7.8pt; line-height: 1.22; }
        .sheet .answer { font-size: 11pt; line-height: 1.2; }
        .sheet h1 { font-size: 9pt; margin: 0; } .sheet h2 { font-size: 9.5pt; margin: .35rem 0 .1rem; }
        .sheet ul, .sheet ol { margin: 0; padding-left: 1rem; } .sheet p { margin: .2rem 0; }
        .sheet > figure svg { max-height: 67mm; } .sheet figcaption { font-size: 7.5pt; }
        .sheet .cautions { margin: .4rem 0 0; padding: 0 .6rem .2rem; border-width: 1px 1px 1px 6px; }
        .sheet .cautions ul { font-size: 7pt; } .sheet .cautions h2 { margin-top: .2rem; }
        main.sheet > figure { margin: 0; }
      }
      """;

  private final StringBuilder html = new StringBuilder();
  private final boolean sheet;
  private boolean cautioned;

  /**
   * Begins a page.
   *
   * @param title what it is about
   * @param answer the answer in a sentence or two
   */
  AnswerPage(String title, String answer) {
    this(title, answer, false);
  }

  private AnswerPage(String title, String answer, boolean sheet) {
    this.sheet = sheet;
    html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.append("<title>").append(Markup.escaped(title)).append("</title>\n");
    html.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main");
    html.append(sheet ? " class=\"sheet\">\n" : ">\n");
    element("h1", title);
    html.append("<p class=\"answer\">").append(words(answer)).append("</p>\n");
  }

  /** Begins a page that is a single sheet of paper: in small print, with nothing folded. */
  static AnswerPage sheet(String title, String answer) {
    return new AnswerPage(title, answer, true);
  }

  AnswerPage sentence(String text) {
    return element("p", text);
  }

  AnswerPage heading(String text) {
    return element("h2", text);
  }

  /** A heading within what is folded. */
  AnswerPage subheading(String text) {
    return element("h3", text);
  }

  /** Says who decides, and where the cautions are. */
  AnswerPage deferral() {
    html.append("<p><strong>").append(Markup.escaped(Verdict.DEFER)).append("</strong> ");
    html.append("There are <a href=\"#cautions\">more cautions</a> below.</p>\n");
    return this;
  }

  AnswerPage list(List<String> items) {
    html.append("<ul>\n");
    items.forEach(item -> element("li", item));
    html.append("</ul>\n");
    return this;
  }

  /** Adds lines that are copied as they stand. */
  AnswerPage preformatted(String lines) {
    html.append("<pre>");
    // a line at a time: what steers a page, line ends among it, is escaped
    lines.lines().forEach(line -> html.append(Markup.escaped(line)).append('\n'));
    html.append("</pre>\n");
    return this;
  }

  /** Lines to copy into a scenario, each under where they go. */
  AnswerPage pasted(PastedShipment shipment) {
    if (!shipment.journey().isEmpty()) {
      subheading(PastedShipment.UNDER_JOURNEY).preformatted(shipment.journey());
    }
    if (!shipment.packing().isEmpty()) {
      subheading(PastedShipment.UNDER_PACKINGS).preformatted(shipment.packing());
    }
    return this;
  }

  /** A numbered list. */
  AnswerPage steps(List<String> items) {
    html.append("<ol>\n");
    items.forEach(item -> element("li", item));
    html.append("</ol>\n");
    return this;
  }

  /** Two columns, one after the other on narrow screens. */
  AnswerPage columns(Consumer<AnswerPage> left, Consumer<AnswerPage> right) {
    html.append("<div class=\"columns\">\n<div>\n");
    left.accept(this);
    html.append("</div>\n<div>\n");
    right.accept(this);
    html.append("</div>\n</div>\n");
    return this;
  }

  AnswerPage table(TextTable table) {
    html.append("<table>\n<caption>").append(words(table.caption()));
    html.append(".</caption>\n<thead><tr>");
    for (String name : table.head()) {
      html.append("<th scope=\"col\">").append(Markup.escaped(name)).append("</th>");
    }
    html.append("</tr></thead>\n<tbody>\n");
    for (List<String> line : table.lines()) {
      html.append("<tr><th scope=\"row\">").append(Markup.escaped(line.get(0))).append("</th>");
      for (int column = 1; column < line.size(); column++) {
        // on narrow screens, where the head of the table is left out, each cell has its own
        html.append(line.get(column).equals(Tables.NOTHING) ? "<td class=\"none\"" : "<td");
        html.append(" data-head=\"").append(Markup.escaped(table.head().get(column)));
        html.append("\">").append(words(line.get(column))).append("</td>");
      }
      html.append("</tr>\n");
    }
    html.append("</tbody></table>\n");
    return this;
  }

  /**
   * Adds a picture.
   *
   * @param picture the picture
   * @param heightFor the height at which it fills a width best [pixel]
   * @param caption what the reader is to conclude from it, or what it shows
   */
  AnswerPage picture(Picture picture, IntUnaryOperator heightFor, String caption) {
    html.append("<figure>\n");
    drawing("wide", picture.svg(WIDE, heightFor.applyAsInt(WIDE)));
    drawing("narrow", picture.svg(NARROW, heightFor.applyAsInt(NARROW)));
    element("figcaption", caption);
    html.append("</figure>\n");
    return this;
  }

  private void drawing(String kind, String svg) {
    html.append("<div class=\"").append(kind).append("\">");
    html.append(svg.substring(svg.indexOf("<svg"))).append("</div>\n");
  }

  /** Adds what most readers pass over; neither is it printed. */
  AnswerPage folded(String summary, Consumer<AnswerPage> content) {
    html.append("<details>\n");
    element("summary", summary);
    content.accept(this);
    html.append("</details>\n");
    return this;
  }

  /** Folds what an answer rests on. */
  AnswerPage restsOn(Scenario scenario) {
    return folded(
        "What this rests on", content -> content.list(StatedAssumptions.sentences(scenario)));
  }

  /** Points to files beside this page. */
  AnswerPage files(String sentence, List<String> names) {
    html.append("<p class=\"small\">").append(Markup.escaped(sentence)).append(": ");
    for (int index = 0; index < names.size(); index++) {
      String name = Markup.escaped(names.get(index));
      html.append(index == 0 ? "" : " and ");
      html.append("<a href=\"").append(name).append("\">").append(name).append("</a>");
    }
    html.append(" beside this file.</p>\n");
    return this;
  }

  /**
   * Adds the cautions, which no page goes without; what is deferred to stands above them, but on a
   * sheet among them.
   */
  AnswerPage cautions(List<String> cautions) {
    html.append("<section class=\"cautions\" id=\"cautions\">\n");
    heading("Cautions");
    list(cautions.stream().filter(caution -> sheet || !caution.equals(Verdict.DEFER)).toList());
    html.append("</section>\n");
    cautioned = true;
    if (sheet) {
      return this;
    }
    html.append("<p class=\"small paper\">What the page on the screen has folded is not printed;");
    html.append(" open it there to print it.</p>\n");
    return this;
  }

  /** Adds the list of words. */
  AnswerPage words(Map<String, String> meanings) {
    heading("Words used here");
    html.append("<dl>\n");
    meanings.forEach(
        (word, meaning) -> {
          html.append("<div>");
          element("dt", word);
          element("dd", meaning);
          html.append("</div>\n");
        });
    html.append("</dl>\n");
    return this;
  }

  /**
   * Ends the page.
   *
   * @return its bytes
   * @throws IllegalStateException if it has no cautions
   */
  byte[] html() {
    if (!cautioned) {
      throw new IllegalStateException("a page has cautions");
    }
    return (html + "</main>\n</body>\n</html>\n").getBytes(StandardCharsets.UTF_8);
  }

  /** Text in which no line ends between a number and its unit. */
  private static String words(String text) {
    return Markup.escaped(Words.unbroken(text));
  }

  private AnswerPage element(String name, String text) {
    html.append('<').append(name).append('>').append(words(text));
    html.append("</").append(name).append(">\n");
    return this;
  }
}
