package stenotherm.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import stenotherm.text.CsvTable;
import stenotherm.text.ScalarNode;
import stenotherm.warmer.BenchCurve;

/**
 * Reads the curve of a warmer that its user measured, a table with commas and two columns:
 *
 * <ul>
 *   <li>{@code hours} or {@code minutes} since it was opened, from 0 on, or {@code time} with dates
 *       and times, the first one that of the opening;
 *   <li>its temperature, {@code pouch [°C]}, or by how much it is warmer than the room, {@code rise
 *       [K]}.
 * </ul>
 */
final class BenchCurveReader {
  private static final String POUCH = "pouch";
  private static final String RISE = "rise";
  private static final String ROOM = "room";

  private BenchCurveReader() {}

  /** A curve and the room that it was measured in [K]. */
  record Measured(BenchCurve curve, double room) {}

  /**
   * Reads a curve.
   *
   * @param own the warmer, which may name the room's temperature
   */
  static Measured read(CsvTable table, KeyedSection own) {
    ScalarNode first = table.header().get(0);
    if (table.header().size() != 2) {
      throw first.fail(
          "there must be two columns, a time and a temperature, write for example hours, pouch"
              + " [°C]");
    }
    double[] times = MeasuredColumn.times(table);
    if (times.length == 0) {
      throw first.fail("there is no row below it");
    }
    for (int row = times.length - 1; row >= 0; row--) {
      times[row] -= MeasuredColumn.isClock(first) ? times[0] : 0;
    }
    if (times[0] != 0) {
      throw table.rows().get(0).get(0).fail("must be 0, the moment at which the warmer was opened");
    }
    MeasuredColumn column = MeasuredColumn.of(1, table.header().get(1), "pouch [°C]");
    boolean isRise = column.nameOf(List.of(POUCH, RISE)).equals(RISE);
    Optional<ScalarNode> given = own.optional(ROOM).map(node -> node.asScalar());
    OptionalDouble stated = given.stream().mapToDouble(ScalarNode::temperature).findAny();
    if (!isRise) {
      double[] kelvin = column.kelvin(table);
      return new Measured(curve(first, times, kelvin), stated.orElse(kelvin[0]));
    }
    if (stated.isEmpty()) {
      throw own.node().fail("must have the room's temperature, as its curve tells rises over it");
    }
    double room = stated.getAsDouble();
    double[] kelvin = column.differences(table);
    for (int row = 0; row < kelvin.length; row++) {
      kelvin[row] += room;
    }
    return new Measured(curve(first, times, kelvin), room);
  }

  private static BenchCurve curve(ScalarNode first, double[] times, double[] kelvin) {
    return first.locate(() -> new BenchCurve(times, kelvin));
  }
}
