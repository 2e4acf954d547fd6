package stenotherm.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stenotherm.base.MessageText;
import stenotherm.scenario.Scenario;
import stenotherm.words.Figures;

/** The comparison as text. */
final class ConsoleReport {
  private final ComparisonReport report;
  private final Scenario scenario;
  private final List<Judged> rows;
  private final PrintWriter out;
  private final VerdictWords verdicts;
  private final ClimateWords climate;
  private final Tables tables;

  private ConsoleReport(ComparisonReport report, PrintWriter out) {
    this.report = report;
    this.scenario = report.scenario();
    this.rows = report.rows();
    this.out = out;
    Words words = new Words(new Figures(scenario.units()));
    this.verdicts = new VerdictWords(words.figures());
    this.climate = new ClimateWords(words);
    this.tables = new Tables(words, rows);
  }

  static void print(ComparisonReport report, PrintWriter out) {
    new ConsoleReport(report, out).print();
  }

  private void print() {
    println(scenario.title());
    out.println();
    println(verdicts.headline(report));
    print(tables.overview());
    tables.animals().ifPresent(this::print);
    tables.packs().ifPresent(this::print);
    tables.legDelays().ifPresent(this::print);
    out.println();
    for (Judged row : rows) {
      println(row.label() + ": " + row.verdict().level().words() + ".");
      println("  " + verdicts.sentence(row.assessment()));
      climate.warmers(row).ifPresent(sentence -> println("  " + sentence));
      println("  " + climate.air(row));
      verdicts.costliest(row).ifPresent(sentence -> println("  " + sentence));
    }
    out.println();
    out.println("Cautions:");
    Cautions.of(report).forEach(caution -> println("- " + caution));
    out.println();
    out.println(
        "These results rest on "
            + StatedAssumptions.sentences(scenario).size()
            + " assumptions; the report lists them with their sources.");
  }

  private void print(TextTable table) {
    out.println();
    println(table.caption() + ":");
    List<List<String>> lines = new ArrayList<>();
    lines.add(shown(table.head()));
    table.lines().forEach(line -> lines.add(shown(line)));
    int[] widths =
        IntStream.range(0, table.head().size())
            .map(column -> lines.stream().mapToInt(l -> l.get(column).length()).max().orElse(0))
            .toArray();
    lines.add(1, Arrays.stream(widths).mapToObj("-"::repeat).toList());
    for (List<String> line : lines) {
      out.println(
          IntStream.range(0, line.size())
              .mapToObj(column -> padded(line.get(column), widths[column]))
              .collect(Collectors.joining("  "))
              .stripTrailing());
    }
  }

  private static List<String> shown(List<String> texts) {
    return texts.stream().map(ConsoleReport::shown).toList();
  }

  /** Names come from files: what would steer a terminal is written out. */
  private static String shown(String text) {
    return MessageText.of(text, Integer.MAX_VALUE);
  }

  private void println(String text) {
    out.println(shown(text));
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(width - text.length());
  }
}
