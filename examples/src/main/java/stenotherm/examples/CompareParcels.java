package stenotherm.examples;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.grid.GridBudget;
import stenotherm.grid.MeshControl;
import stenotherm.report.Comparison;
import stenotherm.report.ComparisonReport;
import stenotherm.report.ReportFolder;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.text.TextFormatException;
import stenotherm.transit.TransitSettings;
import stenotherm.words.LastWords;

/**
 * Which of several packings keeps an animal's temperature best on one journey? Reads a scenario
 * file, judges every packing with and without its warmers, prints the comparison and writes a
 * report.
 *
 * <p>Experimental. Not thread-safe; one object for each run.
 */
@Command(
    name = "compare-parcels",
    mixinStandardHelpOptions = true,
    version = CompareParcels.VERSION,
    showDefaultValues = false,
    description = {
      "Compares packings of a small animal on one journey: how cold and how hot it gets, how much"
          + " margin is left over the range of what is uncertain, what a warmer changes.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the comparison is done, the report is written",
      "2:the command line is wrong",
      "3:the scenario is wrong or cannot be read; nothing was written",
      "4:the report cannot be written; an earlier report is kept",
      "5:the computation failed, was stopped or ran out of memory; nothing was written",
      "6:something unforeseen happened, which is a fault of the program"
    })
public final class CompareParcels implements Callable<Integer> {
  static final String VERSION = "Stenotherm 0.1.0-SNAPSHOT";

  static final int BAD_COMMAND_LINE = 2;
  static final int BAD_SCENARIO = 3;
  static final int CANNOT_WRITE = 4;
  static final int FAILED = 5;
  static final int UNFORESEEN = 6;

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
        "Default: examples/target/report in a built source tree, else stenotherm-report."
      })
  private @Nullable Path out;

  @Option(names = "--quick", description = "Leaves the pictures out.")
  private boolean quick;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Packings judged at a time; results are the same. Default: the processors.")
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

  @Spec private @Nullable CommandSpec spec;

  /** Creates the program with its defaults. */
  public CompareParcels() {}

  /**
   * Runs the program. Returns if all went well, ends the JVM with a documented exit code if not.
   *
   * @param args the command line, see {@code --help}
   */
  public static void main(String[] args) {
    CommandLine command = commandLine();
    Charset console =
        Charset.forName(System.getProperty("stdout.encoding", Charset.defaultCharset().name()));
    if (!console.newEncoder().canEncode('°')) {
      command.setOut(new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8)));
    }
    int code = command.execute(args);
    command.getOut().flush();
    if (code != 0) {
      System.exit(code);
    }
  }

  /** The command line, as {@link #main} runs it. */
  static CommandLine commandLine() {
    return new CommandLine(new CompareParcels())
        .setExpandAtFiles(false)
        .setParameterExceptionHandler((wrong, args) -> explain(wrong))
        .setExecutionStrategy(CompareParcels::execute);
  }

  private static int explain(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    command.getErr().println(MessageText.of(String.valueOf(wrong.getMessage())));
    command.usage(command.getErr());
    return BAD_COMMAND_LINE;
  }

  /** Whatever ends the program, nobody sees a stack trace. */
  private static int execute(ParseResult parsed) {
    try {
      return new CommandLine.RunLast().execute(parsed);
    } catch (ParameterException wrong) {
      throw wrong;
    } catch (RuntimeException | Error end) {
      Throwable cause = end instanceof ExecutionException ? end.getCause() : end;
      Throwable known = cause == null ? end : cause;
      CommandLine command = parsed.commandSpec().commandLine();
      command.getErr().println(LastWords.of(known));
      return LastWords.isWantOfMemory(known) ? FAILED : UNFORESEEN;
    }
  }

  /**
   * Does the work.
   *
   * @return the exit code
   */
  @Override
  public Integer call() {
    checkOptions();
    Scenario scenario;
    try {
      scenario = readScenario();
    } catch (TextFormatException | InvalidInputException problem) {
      return complain(BAD_SCENARIO, String.valueOf(problem.getMessage()));
    } catch (IOException problem) {
      return complain(BAD_SCENARIO, "cannot read the scenario: " + inWords(problem));
    }
    ReportFolder folder =
        new ReportFolder(out == null ? defaultFolder() : out, ComparisonReport.FILES);
    try {
      folder.check();
    } catch (IOException problem) {
      return complain(CANNOT_WRITE, "cannot write the report: " + inWords(problem));
    }
    ComparisonReport report;
    try {
      report = compare(scenario);
    } catch (InvalidInputException problem) {
      return complain(BAD_SCENARIO, scenarioName() + ": " + problem.getMessage());
    } catch (IllegalStateException problem) {
      return complain(FAILED, "computation ended early: " + problem.getMessage());
    }
    report.print(out());
    try {
      folder
          .write(report.files(!quick))
          .ifPresent(left -> complain(0, "the earlier report could not be deleted, it is " + left));
    } catch (IOException problem) {
      return complain(CANNOT_WRITE, "cannot write the report: " + inWords(problem));
    }
    out().println();
    out().println("Report: " + folder.file(ComparisonReport.PAGE));
    out().flush();
    return 0;
  }

  private ComparisonReport compare(Scenario scenario) {
    TransitSettings usual = TransitSettings.standard().meshScaled(meshScale);
    MeshControl mesh = usual.mesh().within(GridBudget.standard().withCells(mostCells));
    TransitSettings settings = new TransitSettings(mesh, usual.interval(), usual.stepping());
    Progress progress = new Progress(err());
    try {
      return Comparison.run(scenario, settings, threads, progress);
    } finally {
      progress.end();
    }
  }

  private void checkOptions() {
    CommandLine command = command();
    if (threads < 1 || threads > MOST_THREADS) {
      throw new ParameterException(
          command, "--threads: " + threads + " must be within 1 to " + MOST_THREADS);
    }
    if (mostCells < 1 || mostCells > GridBudget.MOST_CELLS) {
      throw new ParameterException(
          command, "--most-cells: " + mostCells + " must be within 1 to " + GridBudget.MOST_CELLS);
    }
    // the coarsest grid of a verdict is four times as coarse
    if (!(meshScale >= 0.25 && meshScale <= 2)) {
      throw new ParameterException(
          command, "--mesh-scale: " + meshScale + " must be within 0.25 to 2");
    }
  }

  private Scenario readScenario() throws IOException {
    if (scenarioFile != null) {
      return ScenarioReader.read(scenarioFile);
    }
    try (InputStream in = CompareParcels.class.getResourceAsStream(SHIPPED)) {
      if (in == null) {
        throw new FileNotFoundException(SHIPPED);
      }
      return ScenarioReader.read(SHIPPED, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  private String scenarioName() {
    return scenarioFile == null ? SHIPPED : scenarioFile.toString();
  }

  private static Path defaultFolder() {
    Path built = Path.of("examples", "target");
    return Files.isDirectory(built) ? built.resolve("report") : Path.of("stenotherm-report");
  }

  /** Messages of file exceptions are often a bare name; their kind says what is wrong. */
  private static String inWords(IOException problem) {
    String kind =
        problem.getClass() == IOException.class
            ? ""
            : " (" + problem.getClass().getSimpleName() + ")";
    return problem.getMessage() + kind;
  }

  private int complain(int code, String message) {
    message.lines().map(MessageText::of).forEach(err()::println);
    err().flush();
    return code;
  }

  private CommandLine command() {
    if (spec == null) {
      throw new IllegalStateException("runs through its command line only");
    }
    return spec.commandLine();
  }

  private PrintWriter out() {
    return command().getOut();
  }

  private PrintWriter err() {
    return command().getErr();
  }
}
