package stenotherm.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Times;
import stenotherm.decision.LoggerSensor;
import stenotherm.decision.LoggerTrace;
import stenotherm.decision.SensorSpot;
import stenotherm.grid.Point;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.text.CsvTable;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;
import stenotherm.text.TextFormatException;

/**
 * Reads what loggers recorded in and around a packing without its animal, a table with commas. Its
 * columns:
 *
 * <ul>
 *   <li>{@code hours}, {@code minutes}, or {@code time} with dates and times;
 *   <li>{@code outside [°F]}; of several columns that begin with {@code outside} the mean counts;
 *   <li>one for each sensor inside, with its unit: the name of a container, as {@code cup [°F]},
 *       for its air; {@code inside [°C]} if there is one container only; or a name and a place, as
 *       {@code under lid at 90 x 90 x 150 mm [°C]}, from the left, the front and the floor of the
 *       box outside.
 * </ul>
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class TraceReader {
  private static final Pattern READING = Pattern.compile("(.*\\S)\\s*\\[\\s*(.+?)\\s*]");
  private static final Pattern PLACED = Pattern.compile("(.*\\S)\\s+at\\s+([0-9].*)");
  private static final String OUTSIDE = "outside";
  private static final String INSIDE = "inside";

  private TraceReader() {}

  /**
   * Reads a trace from a file in UTF-8.
   *
   * @param path the file; messages show it as given
   * @param packing the packing that was tested
   * @return the trace
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the file is no trace of that packing
   */
  public static LoggerTrace read(Path path, Parcel packing) throws IOException {
    return read(CsvTable.read(path), packing);
  }

  /**
   * Reads a trace from text.
   *
   * @param fileName the name that messages show
   * @param text the table
   * @param packing the packing that was tested
   * @return the trace
   * @throws TextFormatException if the text is no trace of that packing
   */
  public static LoggerTrace read(String fileName, String text, Parcel packing) {
    return read(CsvTable.parse(fileName, text), packing);
  }

  /** A column of temperatures. */
  private record Column(int number, String name, ScalarNode node, String unit) {
    double[] kelvin(CsvTable table) {
      return table.rows().stream()
          .map(row -> row.get(number))
          .mapToDouble(value -> kelvin(value, unit))
          .toArray();
    }

    private static double kelvin(ScalarNode value, String unit) {
      if (value.isBlank()) {
        throw value.fail("has no reading, take the row out");
      }
      // a number alone: the unit is the column's
      value.number();
      return value.piece(value.text() + " " + unit).temperature();
    }
  }

  private static LoggerTrace read(CsvTable table, Parcel packing) {
    double[] times = times(table);
    List<Column> outside = new ArrayList<>();
    List<LoggerSensor> sensors = new ArrayList<>();
    List<double[]> inside = new ArrayList<>();
    for (int number = 1; number < table.header().size(); number++) {
      Column column = column(number, table.header().get(number));
      if (column.name().startsWith(OUTSIDE)) {
        outside.add(column);
      } else {
        sensors.add(sensor(column, packing));
        inside.add(column.kelvin(table));
      }
    }
    ScalarNode first = table.header().get(0);
    if (outside.isEmpty() || sensors.isEmpty()) {
      throw first.fail(
          "needs a column 'outside' and one for each sensor inside, write for example hours, outside"
              + " [°F], "
              + packing.containers().get(0).name()
              + " [°F]");
    }
    double[] mean = new double[times.length];
    for (Column each : outside) {
      double[] kelvin = each.kelvin(table);
      for (int row = 0; row < mean.length; row++) {
        mean[row] += kelvin[row] / outside.size();
      }
    }
    return first.locate(
        "trace", () -> new LoggerTrace(times, mean, sensors, inside.toArray(new double[0][])));
  }

  private static double[] times(CsvTable table) {
    ScalarNode head = table.header().get(0);
    ToDoubleFunction<ScalarNode> reader =
        head.choice(
            Map.of(
                "hours", value -> Times.fromHours(value.number()),
                "minutes", value -> Times.fromMinutes(value.number()),
                "time", value -> seconds(value.localDateTime())));
    double[] times = new double[table.rows().size()];
    for (int row = 0; row < times.length; row++) {
      ScalarNode value = table.rows().get(row).get(0);
      times[row] = reader.applyAsDouble(value);
      if (row > 0 && !(times[row] > times[row - 1])) {
        throw value.fail(
            "must be later than the row before, " + table.rows().get(row - 1).get(0).text());
      }
    }
    return times;
  }

  private static double seconds(LocalDateTime clock) {
    return Duration.between(LocalDateTime.of(2000, 1, 1, 0, 0), clock).toSeconds();
  }

  private static Column column(int number, ScalarNode head) {
    Matcher parts = READING.matcher(head.text());
    if (!parts.matches()) {
      throw head.fail("needs its unit in brackets, write for example " + head.text() + " [°F]");
    }
    // a reading of 0 tells whether it is a unit
    head.piece("0 " + parts.group(2)).temperature();
    return new Column(number, parts.group(1), head, parts.group(2));
  }

  private static LoggerSensor sensor(Column column, Parcel packing) {
    Matcher placed = PLACED.matcher(column.name());
    if (placed.matches()) {
      Size from = column.node().piece(placed.group(2)).size();
      Point point = new Point(from.x(), from.y(), from.z());
      if (!packing.outer().contains(point)) {
        throw column.node().fail("is not inside the box, count from its left, front and floor");
      }
      return new LoggerSensor(placed.group(1), new SensorSpot.AtPoint(point));
    }
    Map<String, String> cups = new LinkedHashMap<>();
    packing.containers().stream().map(Container::name).forEach(cup -> cups.put(cup, cup));
    if (cups.size() == 1) {
      cups.putIfAbsent(INSIDE, packing.containers().get(0).name());
    }
    String cup = column.node().piece(column.name()).choice(cups);
    return new LoggerSensor(column.name(), new SensorSpot.InCup(cup));
  }
}
