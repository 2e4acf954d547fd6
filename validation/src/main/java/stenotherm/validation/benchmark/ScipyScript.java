package stenotherm.validation.benchmark;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import stenotherm.validation.benchmark.ScipyComparison.Ending;

/** The script that solves a {@link ScipyProblem} with SciPy, and how it is started. */
final class ScipyScript {
  private static final String NAME = "scipy-comparison.py";

  /** Ending with which the script tells that NumPy or SciPy is missing. */
  private static final int MISSING = 3;

  /** An integration: its seconds of processor time, its error [K], what a report shows of it. */
  record Run(String name, double processor, double error, List<String> row) {}

  /** Versions of the programs, integrations, and the history of each output in the best one [K]. */
  record Solved(String versions, List<Run> runs, List<double[]> best) {
    Run run(String name) {
      return runs.stream()
          .filter(run -> run.name().equals(name))
          .findFirst()
          .orElseThrow(() -> new NoSuchElementException("the script has no run " + name));
    }
  }

  /** Nothing was solved; the message is a sentence. */
  static final class Unsolved extends Exception {
    private static final long serialVersionUID = 1;

    final Ending status;

    private Unsolved(Ending status, String message) {
      super(message);
      this.status = status;
    }
  }

  private ScipyScript() {}

  /**
   * Runs the script on a folder.
   *
   * @param python how Python is started
   * @param folder what {@link ScipyProblem#write} wrote; the results come beside it
   * @param quick the script's short form for tests
   * @throws Unsolved if Python or SciPy is missing, or the script fails
   */
  static Solved run(List<String> python, Path folder, boolean quick)
      throws IOException, InterruptedException, Unsolved {
    Path script = folder.resolve(NAME);
    try (InputStream text = ScipyScript.class.getResourceAsStream(NAME)) {
      Files.write(script, Objects.requireNonNull(text).readAllBytes());
    }
    List<String> command = new ArrayList<>(python);
    command.addAll(List.of(script.toString(), folder.toString()));
    if (quick) {
      command.add("--quick");
    }
    Path log = folder.resolve("script.log");
    int status = statusOf(new ProcessBuilder(command).redirectErrorStream(true), log);
    if (status != 0) {
      List<String> said = Files.readAllLines(log).stream().filter(line -> !line.isBlank()).toList();
      String last = said.isEmpty() ? "it said nothing" : said.get(said.size() - 1);
      throw status == MISSING
          ? missing(last)
          : failed("the script ended with status " + status + ": " + last);
    }
    Path result = folder.resolve("result.json");
    if (!Files.exists(result)) {
      throw failed("the script left no " + result.getFileName());
    }
    return new ObjectMapper().readValue(result.toFile(), Solved.class);
  }

  private static Unsolved missing(String why) {
    String install = "apt-get install python3-scipy, then the command scipy-comparison.";
    String message = "NOT COMPARED: Python or SciPy is missing (" + why + "). To get it: ";
    return new Unsolved(Ending.MISSING, message + install);
  }

  private static Unsolved failed(String why) {
    return new Unsolved(Ending.FAILED, "FAILED: " + why + ".");
  }

  private static int statusOf(ProcessBuilder builder, Path log)
      throws InterruptedException, Unsolved {
    Process process;
    try {
      process = builder.redirectOutput(log.toFile()).start();
    } catch (IOException notFound) {
      throw missing(String.valueOf(notFound.getMessage()));
    }
    try {
      return process.waitFor();
    } finally {
      process.destroy();
    }
  }
}
