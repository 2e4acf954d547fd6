package stenotherm.validation.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.grid.MeshControl;
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

  /** What users type to get SciPy. */
  private static final String INSTALL = "apt-get install python3-scipy";

  private static final double LOOSEST = 1;

  /** Ratio of one tolerance that is tried to the next. */
  private static final double TIGHTER = 1.1;

  private static final int REPETITIONS = 3;

  /** How a comparison ended. */
  public enum Status {
    /** Both programs gave the same answers. */
    AGREES(0),
    /** They did not, or the script went wrong. */
    FAILED(1),
    /** There is no Python or no SciPy; nothing was compared. */
    MISSING(3);

    private final int exitStatus;

    Status(int exitStatus) {
      this.exitStatus = exitStatus;
    }

    /**
     * Returns the exit status of the command.
     *
     * @return 0 if all is well
     */
    public int exitStatus() {
      return exitStatus;
    }
  }

  /**
   * What came out.
   *
   * @param status how it ended
   * @param title heading of the section
   * @param exhibits what a report shows
   */
  public record Result(Status status, String title, List<Exhibit> exhibits) {
    /** Copies the list. */
    public Result {
      exhibits = List.copyOf(exhibits);
    }
  }

  /** A run of the full solver. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  private record Own(
      String what,
      double tolerance,
      TransientSolution solution,
      double processor,
      double wall,
      double[][] values,
      double error) {}

  private final ReferenceTransient journey;
  private final PortableProblem problem;
  private final List<Probe> probes;
  private final List<String> python;
  private final boolean quick;

  private ScipyComparison(
      ReferenceTransient journey, PortableProblem problem, List<String> python, boolean quick) {
    this.journey = journey;
    this.problem = problem;
    this.python = List.copyOf(python);
    this.quick = quick;
    this.probes =
        problem.blocks().stream().map(block -> (Probe) new Probe.Mean(block, block)).toList();
  }

  /**
   * Makes the comparison of reports: about 65,000 cells, 48 h.
   *
   * @param python how Python is started, with its arguments if it needs any
   * @return the comparison, not yet run
   */
  public static ScipyComparison full(List<String> python) {
    ReferenceTransient journey = new ReferenceTransient(fullMesh());
    return new ScipyComparison(journey, journey.portable(), python, false);
  }

  /**
   * Makes a small one for tests.
   *
   * @param python how Python is started
   * @return the comparison, not yet run
   */
  public static ScipyComparison quick(List<String> python) {
    ReferenceTransient journey = new ReferenceTransient(fullMesh().scaled(8));
    return new ScipyComparison(journey, journey.portable().until(3), python, true);
  }

  private static MeshControl fullMesh() {
    return ReferenceTransient.fullMesh().scaled(0.99);
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
    Path folder =
        keep == null
            ? Files.createTempDirectory("stenotherm-scipy")
            : Files.createDirectories(keep);
    try {
      return compare(folder);
    } finally {
      if (keep == null) {
        delete(folder);
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (UncheckedIOException fault) {
      throw fault.getCause();
    }
  }

  private Result compare(Path folder) throws IOException, InterruptedException {
    double standard = IntegratorSettings.DEFAULT_STEP_TOLERANCE;
    // the first run comes before anything has warmed the program up
    Own first = own("", standard, null);
    Own exact = own("ours, reference", FullSolverReport.REFERENCE_TOLERANCE, null);
    problem.write(folder, exact.values());
    List<Own> runs = new ArrayList<>();
    double loosest = loosest(exact);
    runs.add(repeated("ours, loosest", loosest, exact));
    runs.add(repeated("ours, standard", standard, exact));
    runs.add(with("ours, first run", first, exact));
    runs.add(exact);
    ScipyScript.End end = ScipyScript.run(python, folder, probes.size(), quick);
    List<Exhibit> exhibits = new ArrayList<>();
    exhibits.add(new Exhibit.Text(about()));
    List<List<String>> rows = new ArrayList<>();
    runs.forEach(run -> rows.add(row(run)));
    if (end instanceof ScipyScript.End.Solved solved) {
      solved.runs().forEach(run -> rows.add(row(run)));
    }
    exhibits.add(new Exhibit.Table(COLUMNS, rows));
    Status status = conclude(end, runs.get(0), exact, exhibits);
    return new Result(status, TITLE, exhibits);
  }

  private Own own(String what, double tolerance, @Nullable Own exact) {
    double start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() * 1e-9;
    long wallStart = System.nanoTime();
    TransientSolution solution =
        journey.run(IntegratorSettings.adaptive(tolerance), probes, problem.outputTimes());
    double wall = (System.nanoTime() - wallStart) * 1e-9;
    double end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() * 1e-9;
    if (!solution.outcome().isCompleted()) {
      throw new IllegalStateException("the run did not complete: " + solution.outcome());
    }
    double[][] values = new double[problem.outputTimes().length][];
    for (int row = 0; row < values.length; row++) {
      int at = row;
      values[row] =
          probes.stream().mapToDouble(probe -> solution.history(probe.name())[at]).toArray();
    }
    double error = exact == null ? 0 : largestDifference(values, exact.values());
    return new Own(what, tolerance, solution, end - start, wall, values, error);
  }

  private static Own with(String what, Own run, Own exact) {
    double error = largestDifference(run.values(), exact.values());
    return new Own(
        what, run.tolerance(), run.solution(), run.processor(), run.wall(), run.values(), error);
  }

  /** The cheapest of some runs of the same. */
  private Own repeated(String what, double tolerance, Own exact) {
    return IntStream.range(0, quick ? 1 : REPETITIONS)
        .mapToObj(repetition -> own(what, tolerance, exact))
        .min(Comparator.comparingDouble(Own::processor))
        .orElseThrow();
  }

  /** The loosest step tolerance that keeps the outputs within what is allowed. */
  private double loosest(Own exact) {
    double tolerance = LOOSEST;
    while (own("", tolerance, exact).error() > ALLOWED) {
      tolerance /= TIGHTER;
    }
    return tolerance;
  }

  private static double largestDifference(double[][] some, double[][] others) {
    double largest = 0;
    for (int row = 0; row < some.length; row++) {
      for (int output = 0; output < some[row].length; output++) {
        largest = Math.max(largest, Math.abs(some[row][output] - others[row][output]));
      }
    }
    return largest;
  }

  private String about() {
    return format(
        "The journey of the full solver's report: %,d cells, %.0f h, ambient by the hour, three"
            + " sets of films in five legs. Outputs: means of %s at every hour. Their error is the"
            + " largest difference to our run at a step tolerance of %s K; it may be %s K. Of each"
            + " program the cheapest run within that. One thread each; seconds of the integration"
            + " alone, matrices and preconditioners of SciPy apart (setup), ours included; the"
            + " least of three but for the first run, which nothing has warmed up.",
        problem.network().solidCellCount(),
        problem.end() / 3600,
        String.join(" and ", problem.blocks()),
        FullSolverReport.REFERENCE_TOLERANCE,
        ALLOWED);
  }

  private static final List<String> COLUMNS =
      List.of(
          "run",
          "scheme",
          "steps by",
          "linear solver",
          "steps",
          "iterations",
          "setup [s]",
          "CPU [s]",
          "wall [s]",
          "error [K]",
          "heat balance");

  private static List<String> row(Own run) {
    TransientSolution.Work work = run.solution().work();
    return List.of(
        run.what(),
        "TR-BDF2",
        format("tolerance %.2g K", run.tolerance()),
        "own",
        format("%d + %d tried again", work.steps(), work.rejected()),
        format("%,d", work.iterations()),
        "",
        format("%.2f", run.processor()),
        format("%.2f", run.wall()),
        format("%.4f", run.error()),
        format(
            "%.0e",
            Math.abs(run.solution().ledger().residual()) / run.solution().ledger().scale()));
  }

  private static List<String> row(ScipyRun run) {
    return List.of(
        "SciPy, " + run.run(),
        run.scheme(),
        format("%.0f s", run.step()),
        run.preconditioner() + ", " + run.tolerance(),
        format("%,d", run.steps()),
        format("%,d", run.iterations()),
        format("%.2f", run.cost().setup()),
        format("%.2f", run.cost().processor()),
        format("%.2f", run.cost().wall()),
        format("%.4f", run.error()),
        run.imbalance().isPresent() ? format("%.0e", run.imbalance().getAsDouble()) : "");
  }

  private Status conclude(ScipyScript.End end, Own own, Own exact, List<Exhibit> exhibits) {
    if (end instanceof ScipyScript.End.Missing missing) {
      exhibits.add(
          new Exhibit.Text(
              "NOT COMPARED: Python or SciPy is missing ("
                  + missing.why()
                  + "). To get it: "
                  + INSTALL
                  + ", then the command scipy-comparison."));
      return Status.MISSING;
    }
    if (end instanceof ScipyScript.End.Failed failed) {
      exhibits.add(new Exhibit.Text("FAILED: " + failed.why() + "."));
      return Status.FAILED;
    }
    ScipyScript.End.Solved solved = (ScipyScript.End.Solved) end;
    exhibits.add(new Exhibit.Text(solved.versions() + ", one thread; Java " + Runtime.version()));
    StringBuilder differences = new StringBuilder("Largest difference of the answers at any hour,");
    differences.append(" ours at the loosest tolerance against SciPy's best:");
    for (int output = 0; output < probes.size(); output++) {
      double largest = 0;
      for (int row = 0; row < exact.values().length; row++) {
        double difference = own.values()[row][output] - solved.best()[row][output];
        largest = Math.max(largest, Math.abs(difference));
      }
      differences.append(format(" %s %.4f K;", probes.get(output).name(), largest));
    }
    double fine = named(solved, "fine").map(ScipyRun::error).orElse(Double.NaN);
    double best = named(solved, "best").map(ScipyRun::error).orElse(Double.NaN);
    differences.append(
        format(" SciPy at small steps against our reference: %.4f K of any output.", fine));
    exhibits.add(new Exhibit.Text(differences.toString()));
    for (String[] ratio : RATIOS) {
      named(solved, ratio[0])
          .ifPresent(
              run ->
                  exhibits.add(
                      new Exhibit.Text(
                          format(
                              "%s: ours takes %.2f s, SciPy %.2f s, %.1f times as long%s",
                              ratio[1],
                              own.processor(),
                              run.cost().processor(),
                              run.cost().processor() / own.processor(),
                              ratio[2]))));
    }
    boolean agrees = fine <= SAME_ANSWER && best <= ALLOWED && own.error() <= ALLOWED;
    exhibits.add(
        new Exhibit.Text(
            agrees
                ? "Both programs give the same answers."
                : format(
                    "FAILED: the answers differ; %s K is allowed at small steps.", SAME_ANSWER)));
    return agrees ? Status.AGREES : Status.FAILED;
  }

  private static final String[][] RATIOS = {
    {"best", "Equal accuracy of the outputs", " (aim: 10, at least 3)."},
    {"balanced", "Equal accuracy of the outputs, heat balance closed", "."},
    {"plain", "The plain way", " (at least 10), and its error is larger."},
    {"default", "The plain way, as accurate as SciPy solves by default", "."},
  };

  private static Optional<ScipyRun> named(ScipyScript.End.Solved solved, String name) {
    return solved.runs().stream().filter(run -> run.run().equals(name)).findFirst();
  }

  private static String format(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
