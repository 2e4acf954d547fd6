package stenotherm.validation.benchmark;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import stenotherm.base.Times;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.grid.MeshControl;

/**
 * Tells what the journey of {@link ReferenceTransient} costs and how far its outputs are off: by
 * the time steps, from a run at a small step tolerance, and beside it by the grid, from coarser
 * grids. A run passes if its cells are at least 60,000, its temperatures are within 0.02 K of the
 * run at the small tolerance at every stored time, and its heat ledger closes. Seconds are told,
 * not judged, as they depend on the machine.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class FullSolverReport {
  /** Largest difference of a temperature that time steps may cause [K]. */
  public static final double LARGEST_TIME_ERROR = 0.02;

  /** The step tolerance of the run that stands for exact steps [K]. */
  public static final double REFERENCE_TOLERANCE = 1e-4;

  /** Cell widths of the grids for the discretisation estimate, the run's own last. */
  private static final double[] SCALES = {2, Math.sqrt(2), 1};

  /** A run on a mesh. */
  private record Timed(int cells, TransientSolution solution, double seconds, double processor) {
    static Timed of(MeshControl mesh, IntegratorSettings settings) {
      double processorStart = processorSeconds();
      long start = System.nanoTime();
      ReferenceTransient journey = new ReferenceTransient(mesh);
      TransientSolution solution = journey.run(settings);
      double seconds = (System.nanoTime() - start) * 1e-9;
      double processor = processorSeconds() - processorStart;
      if (!solution.outcome().isCompleted()) {
        throw new IllegalStateException("the run did not complete: " + solution.outcome());
      }
      return new Timed(journey.cells(), solution, seconds, processor);
    }

    /** Processor time of all threads, the compiler's and the collector's included; or NaN. */
    private static double processorSeconds() {
      return ProcessHandle.current()
          .info()
          .totalCpuDuration()
          .map(duration -> duration.toMillis() * 1e-3)
          .orElse(Double.NaN);
    }
  }

  /** The discretisation estimates where the error is largest, at a time, and at the last time. */
  private record GridError(
      DiscretisationEstimate largest, double time, DiscretisationEstimate last) {}

  private final PrintStream out;

  private FullSolverReport(PrintStream out) {
    this.out = out;
  }

  /**
   * Prints the report and ends with status 1 if the run does not pass.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    if (!print(System.out)) {
      System.exit(1);
    }
  }

  /**
   * Runs the journey and prints the report.
   *
   * @param out where to
   * @return true if the run passes
   */
  public static boolean print(PrintStream out) {
    return new FullSolverReport(out).report();
  }

  private boolean report() {
    // the timed run comes first: nothing has warmed the program up for it
    Timed run = Timed.of(ReferenceTransient.fullMesh(), IntegratorSettings.standard());
    TransientSolution.Work work = run.solution().work();
    line("Journey of 48 h, stored every 15 min");
    line("cells              %d", run.cells());
    line("step tolerance     %s K", IntegratorSettings.DEFAULT_STEP_TOLERANCE);
    line("steps              %d, and %d tried again", work.steps(), work.rejected());
    line("iterations         %d", work.iterations());
    line("seconds            %.2f, from blocks to outputs", run.seconds());
    line("processor seconds  %.2f, of all threads", run.processor());
    HeatLedger ledger = run.solution().ledger();
    line(
        "ledger             residual %.1e of its scale, %s",
        Math.abs(ledger.residual()) / ledger.scale(),
        ledger.closes() ? "closes" : "DOES NOT CLOSE");

    Timed exact =
        Timed.of(ReferenceTransient.fullMesh(), IntegratorSettings.adaptive(REFERENCE_TOLERANCE));
    line(
        "reference          step tolerance %s K, %d steps, %.2f s",
        REFERENCE_TOLERANCE, exact.solution().work().steps(), exact.seconds());
    boolean timely = printErrors(run, exact);
    boolean passed = run.cells() >= ReferenceTransient.FEWEST_CELLS && timely && ledger.closes();
    line(passed ? "PASSED" : "FAILED");
    return passed;
  }

  /**
   * Prints a row for each output; true if the time steps' error of every temperature is allowed.
   */
  private boolean printErrors(Timed run, Timed exact) {
    Timed[] grids = new Timed[SCALES.length];
    grids[SCALES.length - 1] = run;
    for (int grid = 0; grid < SCALES.length - 1; grid++) {
      grids[grid] =
          Timed.of(
              ReferenceTransient.fullMesh().scaled(SCALES[grid]), IntegratorSettings.standard());
    }
    line("grids              %d, %d, %d cells", grids[0].cells(), grids[1].cells(), run.cells());
    line("");
    line(
        "Error by the time steps and by the grid: the largest over the stored times, with its hour,");
    line("and at the end; order of convergence where the grids show one");
    line(
        "%-16s %4s %12s %7s %12s %7s %7s %12s %7s",
        "output", "", "time steps", "hour", "grid", "hour", "order", "grid at end", "order");
    double largest = 0;
    for (Probe probe : ReferenceTransient.probes()) {
      HistoryDifference time = HistoryDifference.of(run.solution(), exact.solution(), probe);
      GridError grid = gridError(List.of(grids), probe);
      line(
          "%-16s %4s %12.5f %7.2f %12.5f %7.2f %7s %12.5f %7s",
          probe.name(),
          probe.unit(),
          time.largest(),
          Times.toHours(time.time()),
          grid.largest().error(),
          Times.toHours(grid.time()),
          order(grid.largest()),
          grid.last().error(),
          order(grid.last()));
      if (probe.unit().equals("K")) {
        largest = Math.max(largest, time.largest());
      }
    }
    line("");
    boolean allowed = largest <= LARGEST_TIME_ERROR;
    line(
        "Time steps: temperatures are off by at most %.5f K; %s K %s.",
        largest, LARGEST_TIME_ERROR, allowed ? "is allowed" : "IS EXCEEDED");
    return allowed;
  }

  private static GridError gridError(List<Timed> grids, Probe probe) {
    List<double[]> histories =
        grids.stream().map(grid -> grid.solution().history(probe.name())).toList();
    double[] times = grids.get(0).solution().times();
    DiscretisationEstimate last = at(0, histories);
    DiscretisationEstimate largest = last;
    double time = times[0];
    for (int row = 1; row < times.length; row++) {
      last = at(row, histories);
      if (last.error() > largest.error()) {
        largest = last;
        time = times[row];
      }
    }
    return new GridError(largest, time, last);
  }

  private static String order(DiscretisationEstimate estimate) {
    return Double.isNaN(estimate.order())
        ? "none"
        : String.format(Locale.ROOT, "%.2f", estimate.order());
  }

  private static DiscretisationEstimate at(int row, List<double[]> histories) {
    return DiscretisationEstimate.of(
        histories.stream().mapToDouble(history -> history[row]).toArray(), SCALES);
  }

  private void line(String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
  }
}
