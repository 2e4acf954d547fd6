package stenotherm.validation.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The script that solves a {@link PortableProblem} with SciPy, and how it is started. */
final class ScipyScript {
  private static final String NAME = "scipy-comparison.py";

  /** Status with which the script tells that NumPy or SciPy is missing. */
  private static final int MISSING = 3;

  private static final String RUNS = "runs.csv";
  private static final String OUTPUTS = "outputs.csv";
  private static final String VERSIONS = "versions.txt";

  /** How the script ended. */
  sealed interface End {
    /**
     * It solved the problem.
     *
     * @param versions of Python, NumPy and SciPy
     * @param runs its integrations
     * @param best outputs of the best, a row for each time [K]
     */
    @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
    record Solved(String versions, List<ScipyRun> runs, double[][] best) implements End {}

    /** There is no Python or no SciPy. */
    record Missing(String why) implements End {}

    /** It went wrong. */
    record Failed(String why) implements End {}
  }

  private ScipyScript() {}

  /**
   * Runs the script on a folder.
   *
   * @param python how Python is started
   * @param folder what {@link PortableProblem#write} wrote; the results come beside it
   * @param outputs number of outputs
   * @param quick the script's short form for tests
   * @throws IOException if a file cannot be read or written
   * @throws InterruptedException if the thread is interrupted while the script runs
   */
  static End run(List<String> python, Path folder, int outputs, boolean quick)
      throws IOException, InterruptedException {
    Path script = folder.resolve(NAME);
    try (InputStream text = ScipyScript.class.getResourceAsStream(NAME)) {
      if (text == null) {
        throw new IllegalStateException("the program comes without " + NAME);
      }
      Files.write(script, text.readAllBytes());
    }
    List<String> command = new ArrayList<>(python);
    command.add(script.toString());
    command.add(folder.toString());
    if (quick) {
      command.add("--quick");
    }
    Path log = folder.resolve("script.log");
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectErrorStream(true).redirectOutput(log.toFile());
    Process process;
    try {
      process = builder.start();
    } catch (IOException notFound) {
      return new End.Missing(String.valueOf(notFound.getMessage()));
    }
    int status;
    try {
      status = process.waitFor();
    } finally {
      process.destroy();
    }
    if (status != 0) {
      String last = lastLine(Files.readString(log, StandardCharsets.UTF_8));
      return status == MISSING
          ? new End.Missing(last)
          : new End.Failed("the script ended with status " + status + ": " + last);
    }
    for (String file : new String[] {RUNS, OUTPUTS, VERSIONS}) {
      if (!Files.exists(folder.resolve(file))) {
        return new End.Failed("the script left no " + file);
      }
    }
    return new End.Solved(
        Files.readString(folder.resolve(VERSIONS)).strip(),
        ScipyRun.all(Files.readAllLines(folder.resolve(RUNS))),
        bestOutputs(Files.readAllLines(folder.resolve(OUTPUTS)), outputs));
  }

  private static String lastLine(String text) {
    List<String> lines = text.lines().filter(line -> !line.isBlank()).toList();
    return lines.isEmpty() ? "it said nothing" : lines.get(lines.size() - 1);
  }

  private static double[][] bestOutputs(List<String> lines, int outputs) {
    List<Map<String, String>> rows = ScipyRun.rows(lines);
    List<String> header = List.of(lines.get(0).split(","));
    double[][] values = new double[rows.size()][outputs];
    for (int row = 0; row < values.length; row++) {
      for (int output = 0; output < outputs; output++) {
        // after the time those of the best run come first
        values[row][output] =
            Double.parseDouble(rows.get(row).getOrDefault(header.get(1 + output), "NaN"));
      }
    }
    return values;
  }
}
