package stenotherm.examples;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.GridBudget;
import stenotherm.grid.MeshControl;
import stenotherm.report.Answer;
import stenotherm.report.ReportFolder;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.text.TextFormatException;
import stenotherm.transit.TransitSettings;

/**
 * A question about a scenario file: reads it, has the question answered, prints the answer and
 * writes its files, all of them or none.
 *
 * <p>Not thread-safe; one object for each run.
 */
abstract class ScenarioCommand extends ConsoleCommand implements Callable<Integer> {
  private static final String SHIPPED = "cold-night.yaml";
  private static final int MOST_THREADS = 256;

  @Parameters(
      arity = "0..1",
      paramLabel = "SCENARIO",
      description = "Scenario file (YAML); the shipped " + SHIPPED + " if left out.")
  private @Nullable Path scenarioFile;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = {
        "Folder of the report: new, empty, or with an earlier report, which is replaced.",
        "Default: in a built source tree a folder of its own in examples/target, else one"
            + " that begins with stenotherm-."
      })
  private @Nullable Path out;

  @Option(
      names = "--json",
      description = {
        "Prints the answer as JSON in SI units instead of words.",
        "Files are written if --out is given."
      })
  private boolean json;

  @Option(names = "--quick", description = "Leaves the pictures out.")
  private boolean quick;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Work done at a time; results are the same. Default: the processors.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Option(
      names = "--mesh-scale",
      paramLabel = "FACTOR",
      hidden = true,
      description = "Cell widths times this, for quick tries (2) and convergence studies (0.7).")
  private double meshScale = 1;

  @Option(
      names = "--most-cells",
      paramLabel = "N",
      description = {
        "Largest grid of a packing. Default: ${DEFAULT-VALUE}.",
        "Its memory may be half of what java -Xmx gives."
      })
  private long mostCells = GridBudget.standard().cells();

  /** Names of all files that an answer may have, the page that people open first. */
  abstract List<String> fileNames();

  /** Name of the folder of the report where none is given. */
  abstract String folderName();

  /**
   * Refuses options of this command, before any work.
   *
   * @throws picocli.CommandLine.ParameterException if an option has a wrong value
   */
  void checkOwnOptions() {}

  /**
   * Answers the question.
   *
   * @param scenario what is asked about
   * @param progress to be told how far the work is, and an early answer
   * @throws InvalidInputException if the scenario does not fit the question, best found before any
   *     work
   * @throws TextFormatException likewise, with the place in the file
   * @throws IllegalStateException if the computation failed or was stopped by an interrupt
   */
  abstract Answer answer(Scenario scenario, Progress progress);

  /**
   * Reads the scenario file that is named.
   *
   * @param file the file
   * @throws IOException if it cannot be read
   * @throws TextFormatException if it is no scenario
   */
  Scenario scenario(Path file) throws IOException {
    return ScenarioReader.read(file);
  }

  /** Reads a file that a question goes with. */
  interface Reading<T> {
    T read() throws IOException;
  }

  /**
   * Reads a file that the question goes with.
   *
   * @param what what it is, in the words of a message
   * @throws InvalidInputException if it cannot be read
   */
  static <T> T read(String what, Reading<T> reading) {
    try {
      return reading.read();
    } catch (IOException problem) {
      throw new InvalidInputException(what, "cannot be read: " + inWords(problem));
    }
  }

  /** How finely to compute, as the options say. */
  final TransitSettings settings() {
    TransitSettings usual = TransitSettings.standard().meshScaled(meshScale);
    MeshControl mesh = usual.mesh().within(GridBudget.standard().withCells(mostCells));
    return new TransitSettings(mesh, usual.interval(), usual.stepping());
  }

  final int threads() {
    return threads;
  }

  /**
   * Does the work.
   *
   * @return the exit code
   */
  @Override
  public final Integer call() {
    checkOptions();
    if (isShipped()) {
      complain(
          0,
          "No file is named: the shipped example "
              + SHIPPED
              + " is taken.\nWith a file of your own: "
              + program().stripLeading()
              + command().getCommandName()
              + " my-scenario.yaml");
    }
    Scenario scenario;
    try {
      scenario = readScenario();
    } catch (TextFormatException | InvalidInputException problem) {
      return complain(BAD_SCENARIO, String.valueOf(problem.getMessage()));
    } catch (IOException problem) {
      return complain(BAD_SCENARIO, "cannot read the scenario: " + inWords(problem));
    }
    boolean writes = out != null || !json;
    ReportFolder folder =
        new ReportFolder(out == null ? defaultFolder() : out, Set.copyOf(fileNames()));
    try {
      if (writes) {
        folder.check();
      }
    } catch (IOException problem) {
      return complain(CANNOT_WRITE, "cannot write the report: " + inWords(problem));
    }
    Answer answer;
    try {
      answer = compute(scenario);
    } catch (TextFormatException problem) {
      // another file that the question goes with; its message has the name
      return complain(BAD_SCENARIO, String.valueOf(problem.getMessage()));
    } catch (InvalidInputException problem) {
      return complain(BAD_SCENARIO, scenarioName() + ": " + problem.getMessage());
    } catch (IllegalStateException problem) {
      return complain(FAILED, "computation ended early: " + problem.getMessage());
    }
    if (json) {
      out().print(answer.json());
    } else {
      answer.print(out());
    }
    try {
      if (writes) {
        folder
            .write(answer.files(!quick))
            .ifPresent(
                left -> complain(0, "the earlier report could not be deleted, it is " + left));
      }
    } catch (IOException problem) {
      return complain(CANNOT_WRITE, "cannot write the report: " + inWords(problem));
    }
    if (!json) {
      out().println();
      out().println("Report: " + folder.file(fileNames().get(0)));
    }
    out().flush();
    return 0;
  }

  private Answer compute(Scenario scenario) {
    Progress progress = new Progress(err());
    try {
      return answer(scenario, progress);
    } finally {
      progress.end();
    }
  }

  private void checkOptions() {
    require(
        threads >= 1 && threads <= MOST_THREADS,
        "--threads",
        threads,
        "within 1 to " + MOST_THREADS);
    require(
        mostCells >= 1 && mostCells <= GridBudget.MOST_CELLS,
        "--most-cells",
        mostCells,
        "within 1 to " + GridBudget.MOST_CELLS);
    // the coarsest grid of a verdict is four times as coarse
    require(meshScale >= 0.25 && meshScale <= 2, "--mesh-scale", meshScale, "within 0.25 to 2");
    checkOwnOptions();
  }

  private Scenario readScenario() throws IOException {
    if (scenarioFile != null) {
      if (Files.isDirectory(scenarioFile)) {
        throw new IOException(scenarioFile + " is a folder, name the file in it");
      }
      return scenario(scenarioFile);
    }
    try (InputStream in = ScenarioCommand.class.getResourceAsStream(SHIPPED)) {
      if (in == null) {
        throw new FileNotFoundException(SHIPPED);
      }
      return ScenarioReader.read(SHIPPED, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  /** Whether the shipped scenario is asked about. */
  final boolean isShipped() {
    return scenarioFile == null;
  }

  private String scenarioName() {
    return scenarioFile == null ? SHIPPED : scenarioFile.toString();
  }

  private Path defaultFolder() {
    Path built = Path.of("examples", "target");
    return Files.isDirectory(built)
        ? built.resolve(folderName())
        : Path.of("stenotherm-" + folderName());
  }
}
