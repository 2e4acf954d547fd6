package stenotherm.examples;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stenotherm.scenario.Scenario;
import stenotherm.words.Figures;

/** The comparison as text. */
final class Console {
  private final Scenario scenario;
  private final List<Judged> rows;
  private final PrintWriter out;
  private final Words words;
  private final Tables tables;

  private Console(Scenario scenario, List<Judged> rows, PrintWriter out) {
    this.scenario = scenario;
    this.rows = rows;
    this.out = out;
    this.words = new Words(new Figures(scenario.units()));
    this.tables = new Tables(words, rows);
  }

  static void print(Scenario scenario, List<Judged> rows, PrintWriter out) {
    new Console(scenario, rows, out).print();
  }

  private void print() {
    out.println(scenario.title());
    out.println();
    out.println(words.headline(rows));
    words.warmerEffects(rows).forEach(out::println);
    print(tables.temperatures());
    print(tables.margins());
    tables.animals().ifPresent(this::print);
    tables.packs().ifPresent(this::print);
    tables.legDelays().ifPresent(this::print);
    out.println();
    for (Judged row : rows) {
      out.println(row.label() + ": " + row.assessment().verdict().level().words() + ".");
      out.println("  " + words.sentence(row));
      words.costliest(row).ifPresent(sentence -> out.println("  " + sentence));
    }
    out.println();
    out.println("Mind:");
    Words.cautions(rows).forEach(caution -> out.println("- " + caution));
    out.println();
    out.println(
        "All this rests on "
            + Sources.sentences(scenario).size()
            + " assumptions, which the report lists with their sources.");
  }

  private void print(Table table) {
    out.println();
    out.println(table.caption() + ":");
    List<List<String>> lines = new ArrayList<>();
    lines.add(table.head());
    lines.addAll(table.lines());
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

  private static String padded(String text, int width) {
    return text + " ".repeat(width - text.length());
  }
}
