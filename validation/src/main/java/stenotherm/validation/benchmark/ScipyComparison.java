package stenotherm.validation.benchmark;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Times;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.validation.benchmark.Stopwatch.Taken;
import stenotherm.validation.studies.Findings.Exhibit;

/**
 * Solves one problem with the full solver and with a program that uses SciPy, in one go, and
 * compares answers and cost. The problem is the journey of {@link ReferenceTransient}; the outputs
 * are the means of animal and warmer at every hour. Answers are judged; seconds are told, as they
 * depend on the machine.
 *
 * <p>Internal. Immutable, thus thread-safe.
 */
public final class ScipyComparison {
  /** Largest error of an output that either program may have [K]. */
  static final double ALLOWED = FullSolverReport.LARGEST_TIME_ERROR;

  /**
   * Largest difference between the script's run at small steps and our reference [K]: four times
   * what steps of 150 s leave.
   */
  static final double SAME_ANSWER = 0.004;

  /** Heading of the section in a report. */
  public static final String TITLE = "Full solver and a program that uses SciPy";

  private static final double LOOSEST = 1;

  /** Ratio of one tolerance that is tried to the next. */
  private static final double TIGHTER = 1.1;

  private static final int REPETITIONS = 3;

  /** How a comparison ended. */
  public enum Ending {
    /** Both programs gave the same answers. */
    AGREES,
    /** They did not, or the script went wrong. */
    FAILED,
    /** There is no Python or no SciPy; nothing was compared. */
    MISSING
  }

  /**
   * What came out.
   *
   * @param status how it ended
   * @param exhibits what a report shows
   */
  public record Result(Ending status, List<Exhibit> exhibits) {
    /** Copies the list. */
    public Result {
      exhibits = List.copyOf(exhibits);
    }
  }

  private final ReferenceTransient journey;
  private final ScipyProblem problem;
  private final List<String> python;
  private final boolean quick;

  /**
   * Makes a comparison: of about 65,000 cells and 48 h, or a small one for tests.
   *
   * @param python how Python is started, with its arguments if it needs any
   * @param quick whether it is the small one
   */
  public ScipyComparison(List<String> python, boolean quick) {
    this.journey =
        new ReferenceTransient(ReferenceTransient.fullMesh().scaled(0.99).scaled(quick ? 8 : 1));
    this.problem =
        new ScipyProblem(journey.grid(), Times.fromHours(quick ? 3 : ReferenceTransient.HOURS));
    this.python = List.copyOf(python);
    this.quick = quick;
  }

  /**
   * Runs both programs.
   *
   * @param keep folder for the files that pass between them; null for one that is deleted
   * @return what came out
   * @throws IOException if a file cannot be written or read
   * @throws InterruptedException if the thread is interrupted while the script runs
   */
  public Result run(@Nullable Path keep) throws IOException, InterruptedException {
    if (keep != null) {
      return compare(Files.createDirectories(keep));
    }
    Path folder = Files.createTempDirectory("stenotherm-scipy");
    try {
      return compare(folder);
    } finally {
      delete(folder);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  private Result compare(Path folder) throws IOException, InterruptedException {
    double standard = IntegratorSettings.DEFAULT_STEP_TOLERANCE;
    // the first run comes before anything has warmed the program up
    Taken<TransientSolution> first = run(standard, 1);
    Taken<TransientSolution> exact = run(FullSolverReport.REFERENCE_TOLERANCE, 1);
    problem.write(folder, exact.result());
    double loosest = LOOSEST;
    while (error(run(loosest, 1), exact) > ALLOWED) {
      loosest /= TIGHTER;
    }
    int repetitions = quick ? 1 : REPETITIONS;
    Taken<TransientSolution> own = run(loosest, repetitions);
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("ours, loosest", loosest, own, error(own, exact)));
    Taken<TransientSolution> usual = run(standard, repetitions);
    rows.add(row("ours, standard", standard, usual, error(usual, exact)));
    rows.add(row("ours, first run", standard, first, error(first, exact)));
    rows.add(row("ours, reference", FullSolverReport.REFERENCE_TOLERANCE, exact, 0));
    List<Exhibit> exhibits = new ArrayList<>();
    Ending status;
    try {
      ScipyScript.Solved solved = ScipyScript.run(python, folder, quick);
      for (ScipyScript.Run run : solved.runs()) {
        rows.add(Stream.concat(Stream.of("SciPy, " + run.name()), run.row().stream()).toList());
      }
      status = conclude(solved, own, exact, exhibits);
    } catch (ScipyScript.Unsolved unsolved) {
      status = unsolved.status;
      exhibits.add(new Exhibit.Paragraph(String.valueOf(unsolved.getMessage())));
    }
    exhibits.add(0, new Exhibit.Paragraph(about()));
    exhibits.add(1, new Exhibit.Tabulation(COLUMNS, rows));
    return new Result(status, exhibits);
  }

  /** The least that some runs of the same take. */
  private Taken<TransientSolution> run(double tolerance, int times) {
    IntegratorSettings settings = IntegratorSettings.adaptive(tolerance);
    return Stopwatch.least(
        times, () -> journey.run(settings, ScipyProblem.OUTPUTS, problem.outputTimes()));
  }

  private static double error(Taken<TransientSolution> run, Taken<TransientSolution> exact) {
    return ScipyProblem.OUTPUTS.stream()
        .mapToDouble(each -> HistoryDifference.of(run.result(), exact.result(), each).largest())
        .max()
        .orElseThrow();
  }

  private String about() {
    return format(
        "The journey of the full solver's report: %,d cells, %.0f h, ambient by the hour, three"
            + " sets of films in five legs. Outputs: means of %s at every hour. Their error is the"
            + " largest difference to our run at a step tolerance of %s K; it may be %s K. Of each"
            + " program the cheapest run within that. One thread each; seconds of the integration"
            + " alone, matrices and preconditioners of SciPy apart (setup), ours included; the"
            + " least of three but for the first run, which nothing has warmed up.",
        journey.cells(),
        Times.toHours(problem.end()),
        ScipyProblem.OUTPUTS.stream().map(Probe::name).collect(Collectors.joining(" and ")),
        FullSolverReport.REFERENCE_TOLERANCE,
        ALLOWED);
  }

  /** The script writes its rows by the same columns. */
  private static final List<String> COLUMNS =
      split(
          "run|scheme|steps by|linear solver|steps|iterations|setup [s]|CPU [s]|wall [s]|error [K]"
              + "|heat balance");

  private static List<String> split(String row) {
    return List.of(row.split("\\|"));
  }

  private static List<String> row(
      String what, double tolerance, Taken<TransientSolution> run, double error) {
    TransientSolution.Work work = run.result().work();
    HeatLedger ledger = run.result().ledger();
    return split(
        format(
            "%s|TR-BDF2|tolerance %.2g K|own|%d + %d tried again|%,d||%.2f|%.2f|%.4f|%.0e",
            what,
            tolerance,
            work.steps(),
            work.rejected(),
            work.iterations(),
            run.thread(),
            run.wall(),
            error,
            Math.abs(ledger.residual()) / ledger.scale()));
  }

  private static Ending conclude(
      ScipyScript.Solved solved,
      Taken<TransientSolution> own,
      Taken<TransientSolution> exact,
      List<Exhibit> exhibits) {
    exhibits.add(
        new Exhibit.Paragraph(solved.versions() + ", one thread; Java " + Runtime.version()));
    double fine = solved.run("fine").error();
    StringBuilder differences = new StringBuilder();
    for (int output = 0; output < solved.best().size(); output++) {
      String name = ScipyProblem.OUTPUTS.get(output).name();
      double[] ours = own.result().history(name);
      double[] other = solved.best().get(output);
      IntStream rows = IntStream.range(0, ours.length);
      double largest =
          rows.mapToDouble(row -> Math.abs(ours[row] - other[row])).max().orElseThrow();
      differences.append(format(" %s %.4f K;", name, largest));
    }
    String text =
        "Largest difference of the answers at any hour, ours at the loosest tolerance against"
            + " SciPy's best:%s SciPy at small steps against our reference: %.4f K of any output.";
    exhibits.add(new Exhibit.Paragraph(format(text, differences, fine)));
    for (String[] ratio : RATIOS) {
      double seconds = solved.run(ratio[0]).processor();
      String line = "%s: ours takes %.2f s, SciPy %.2f s, %.1f times as long%s";
      double times = seconds / own.thread();
      exhibits.add(
          new Exhibit.Paragraph(format(line, ratio[1], own.thread(), seconds, times, ratio[2])));
    }
    boolean agrees =
        fine <= SAME_ANSWER
            && solved.run("best").error() <= ALLOWED
            && error(own, exact) <= ALLOWED;
    String differ = "FAILED: the answers differ; " + SAME_ANSWER + " K is allowed at small steps.";
    exhibits.add(new Exhibit.Paragraph(agrees ? "Both programs give the same answers." : differ));
    return agrees ? Ending.AGREES : Ending.FAILED;
  }

  private static final String[][] RATIOS = {
    {"best", "Equal accuracy of the outputs", " (aim: 10, at least 3)."},
    {"balanced", "Equal accuracy of the outputs, heat balance closed", "."},
    {"plain", "The plain way", " (at least 10), and its error is larger."},
    {"default", "The plain way, as accurate as SciPy solves by default", "."},
  };

  private static String format(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
