package stenotherm.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
 *   <li>{@code hours}, {@code minutes}, or {@code time} with dates and times; {@code 11/20/2026
 *       4:00 PM} tells the day from the month if one of both is above 12 in some row;
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

  private static LoggerTrace read(CsvTable table, Parcel packing) {
    String example = packing.containers().get(0).name() + " [°F]";
    List<ScalarNode> header = table.headerLike("time,outside [°F]," + example);
    double[] times = MeasuredColumn.times(table);
    List<MeasuredColumn> outside = new ArrayList<>();
    List<LoggerSensor> sensors = new ArrayList<>();
    List<double[]> inside = new ArrayList<>();
    for (int number = 1; number < table.header().size(); number++) {
      MeasuredColumn column = MeasuredColumn.of(number, header.get(number), example);
      if (column.name().toLowerCase(Locale.ROOT).startsWith(OUTSIDE)) {
        outside.add(column);
      } else {
        sensors.add(sensor(column, packing));
        inside.add(column.kelvin(table));
      }
    }
    ScalarNode first = table.header().get(0);
    if (outside.isEmpty() || sensors.isEmpty()) {
      throw header.get(0).fail("needs a column 'outside' beside it and one for each sensor inside");
    }
    double[] mean = new double[times.length];
    for (MeasuredColumn each : outside) {
      double[] kelvin = each.kelvin(table);
      for (int row = 0; row < mean.length; row++) {
        mean[row] += kelvin[row] / outside.size();
      }
    }
    return first.locate(
        "trace", () -> new LoggerTrace(times, mean, sensors, inside.toArray(new double[0][])));
  }

  private static LoggerSensor sensor(MeasuredColumn column, Parcel packing) {
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
    String cup = column.nameOf(List.copyOf(cups.keySet()));
    return new LoggerSensor(column.name(), new SensorSpot.InCup(cup));
  }
}
