package stenotherm.validation.benchmark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.OptionalDouble;

/**
 * An integration by the script, as its {@code runs.csv} tells.
 *
 * @param run what it stands for: best, balanced, plain, default, fine or tried
 * @param scheme time scheme
 * @param preconditioner of the conjugate gradients
 * @param tolerance where they stop, with its unit
 * @param step length of a time step [s]
 * @param steps number of time steps
 * @param iterations of the conjugate gradients
 * @param cost what it took
 * @param error largest difference of an output to the reference [K]
 * @param imbalance part of the heat that the balance does not know of, where that was asked for
 */
record ScipyRun(
    String run,
    String scheme,
    String preconditioner,
    String tolerance,
    double step,
    long steps,
    long iterations,
    Cost cost,
    double error,
    OptionalDouble imbalance) {
  /**
   * What an integration takes.
   *
   * @param setup making matrices and preconditioners, processor time [s]
   * @param processor integrating, processor time [s]
   * @param wall integrating, wall-clock time [s]
   */
  record Cost(double setup, double processor, double wall) {}

  /**
   * Reads all of a file.
   *
   * @throws NoSuchElementException if a column is missing
   * @throws NumberFormatException if a number is none
   */
  static List<ScipyRun> all(List<String> lines) {
    return rows(lines).stream().map(ScipyRun::of).toList();
  }

  private static ScipyRun of(Map<String, String> row) {
    String imbalance = text(row, "imbalance");
    return new ScipyRun(
        text(row, "run"),
        text(row, "scheme"),
        text(row, "preconditioner"),
        text(row, "tolerance"),
        number(row, "step_s"),
        (long) number(row, "steps"),
        (long) number(row, "iterations"),
        new Cost(number(row, "setup_s"), number(row, "processor_s"), number(row, "wall_s")),
        number(row, "error_K"),
        imbalance.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(imbalance)));
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(text(row, column));
  }

  private static String text(Map<String, String> row, String column) {
    String text = row.get(column);
    if (text == null) {
      throw new NoSuchElementException("the script's table has no column " + column);
    }
    return text;
  }

  /** Rows of a table without quotes, by the names of its columns. */
  static List<Map<String, String>> rows(List<String> lines) {
    String[] header = lines.get(0).split(",", -1);
    List<Map<String, String>> rows = new ArrayList<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      Map<String, String> row = new HashMap<>();
      for (int column = 0; column < Math.min(header.length, cells.length); column++) {
        row.put(header[column], cells[column]);
      }
      rows.add(row);
    }
    return rows;
  }
}
