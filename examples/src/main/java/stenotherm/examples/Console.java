package stenotherm.examples;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stenotherm.decision.Assessment;
import stenotherm.decision.Margin;
import stenotherm.decision.Side;

/** The comparison as text. */
final class Console {
  private Console() {}

  static void print(String title, List<Judged> rows, PrintWriter out) {
    out.println(title);
    out.println();
    out.println(Words.headline(rows));
    Words.warmerEffects(rows).forEach(out::println);
    out.println();
    out.println("Nominal temperatures of the animal until opening, local clock:");
    table(List.of("packing", "warmer", "lowest", "highest", "verdict"), rows, Console::heat, out);
    out.println();
    out.println("Margin to the alarm band [K], nominal (worst to best of the ranges):");
    table(
        List.of("packing", "warmer", "cold", "hot", "grid ±", "delay left", "L", "kg"),
        rows,
        Console::margins,
        out);
    out.println();
    for (Judged row : rows) {
      out.println(row.label() + ": " + row.assessment().verdict().level().words() + ".");
      out.println("  " + row.sentence());
    }
    out.println();
    out.println("Mind:");
    Words.cautions(rows).forEach(caution -> out.println("- " + caution));
  }

  static String lowest(Judged row) {
    return moment(row, Side.COLD);
  }

  static String highest(Judged row) {
    return moment(row, Side.HOT);
  }

  private static String moment(Judged row, Side side) {
    Margin margin = row.assessment().nominalMargin(side);
    return Words.temperature(margin.temperature())
        + ", "
        + Words.dayAndClock(row.held(), margin.time());
  }

  static List<String> heat(Judged row) {
    return List.of(
        row.parcel().name(),
        row.warmerWords(),
        lowest(row),
        highest(row),
        row.assessment().verdict().level().words());
  }

  static List<String> margins(Judged row) {
    Assessment assessment = row.assessment();
    return List.of(
        row.parcel().name(),
        row.warmerWords(),
        Words.margin(assessment, Side.COLD),
        Words.margin(assessment, Side.HOT),
        Words.gridError(assessment),
        Words.delay(assessment.delay()),
        Words.litres(row.parcel().outerVolume()),
        Words.kilograms(row.parcel().mass()));
  }

  private static void table(
      List<String> head,
      List<Judged> rows,
      java.util.function.Function<Judged, List<String>> cells,
      PrintWriter out) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(head);
    rows.forEach(row -> lines.add(cells.apply(row)));
    int[] widths =
        IntStream.range(0, head.size())
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
