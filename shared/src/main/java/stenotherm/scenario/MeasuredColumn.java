package stenotherm.scenario;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Checks;
import stenotherm.base.Times;
import stenotherm.text.CsvTable;
import stenotherm.text.ScalarNode;

/**
 * A column of readings in a table of a logger, its unit in brackets as in {@code cup [°F]}.
 *
 * @param number position of the column
 * @param name its name without the unit
 * @param node its head
 * @param unit the unit
 */
record MeasuredColumn(int number, String name, ScalarNode node, String unit) {
  private static final Pattern READING = Pattern.compile("(.*\\S)\\s*\\[\\s*(.+?)\\s*]");
  private static final String CLOCK = "time";
  private static final Map<String, Function<CsvTable, double[]>> TIMES = readersOfTimes();

  private static Map<String, Function<CsvTable, double[]>> readersOfTimes() {
    Map<String, Function<CsvTable, double[]>> times = new LinkedHashMap<>();
    times.put("hours", table -> numbers(table, Times::fromHours));
    times.put("minutes", table -> numbers(table, Times::fromMinutes));
    times.put(
        CLOCK,
        table -> table.datesWithTimes(0).stream().mapToDouble(MeasuredColumn::seconds).toArray());
    return Collections.unmodifiableMap(times);
  }

  private static double[] numbers(CsvTable table, DoubleUnaryOperator seconds) {
    return table.rows().stream()
        .mapToDouble(row -> seconds.applyAsDouble(row.get(0).number()))
        .toArray();
  }

  /** A column by its head; {@code example} is one that would do. */
  static MeasuredColumn of(int number, ScalarNode head, String example) {
    Matcher parts = READING.matcher(head.text());
    if (!parts.matches()) {
      throw head.fail("needs its unit in brackets, as in " + example);
    }
    return new MeasuredColumn(number, parts.group(1), head, parts.group(2));
  }

  /** The name as one of some. */
  String nameOf(List<String> names) {
    Map<String, String> choices = new LinkedHashMap<>();
    names.forEach(each -> choices.put(each, each));
    return node.piece(name).choiceInAnyCase(choices);
  }

  /** Temperatures [K]. */
  double[] kelvin(CsvTable table) {
    return read(table, ScalarNode::temperature);
  }

  /** Differences of temperatures [K]. */
  double[] differences(CsvTable table) {
    return read(table, ScalarNode::temperatureDifference);
  }

  private double[] read(CsvTable table, ToDoubleFunction<ScalarNode> reader) {
    // a reading of 0 tells whether it is a unit
    Checks.finite("0 " + unit, reader.applyAsDouble(node.piece("0 " + unit)), "K");
    return table.rows().stream()
        .map(row -> row.get(number))
        .mapToDouble(value -> reader.applyAsDouble(with(value)))
        .toArray();
  }

  /** A number alone, with the unit of its column. */
  private ScalarNode with(ScalarNode value) {
    if (value.isBlank()) {
      throw value.fail("has no reading, take the row out");
    }
    value.number();
    return value.piece(value.text() + " " + unit);
  }

  /** The first column, a time that ascends [s]. */
  static double[] times(CsvTable table) {
    double[] times = table.header().get(0).choiceInAnyCase(TIMES).apply(table);
    for (int row = 1; row < times.length; row++) {
      if (!(times[row] > times[row - 1])) {
        throw table
            .rows()
            .get(row)
            .get(0)
            .fail("must be later than the row before, " + table.rows().get(row - 1).get(0).text());
      }
    }
    return times;
  }

  /** Tells whether times are dates and hours, from no beginning of their own. */
  static boolean isClock(ScalarNode head) {
    return head.text().equalsIgnoreCase(CLOCK);
  }

  private static double seconds(LocalDateTime clock) {
    return Duration.between(LocalDateTime.of(2000, 1, 1, 0, 0), clock).toSeconds();
  }
}
