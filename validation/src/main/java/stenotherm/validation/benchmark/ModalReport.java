package stenotherm.validation.benchmark;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.modal.ModalConfiguration;
import stenotherm.modal.ModalEngine;
import stenotherm.modal.ReducedModel;
import stenotherm.validation.studies.Findings.Exhibit;

/**
 * Tells what reduced models of the parcel of {@link PortJourney} cost: building one, finding its
 * modes under other films, and following the journey, with errors against the full solver at small
 * steps. It passes if the errors are allowed and the ledgers close; seconds are told, not judged,
 * as they depend on the machine.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class ModalReport {
  /** Largest error of a mean [K]. */
  static final double MEAN_ERROR = 0.02;

  /** Largest error of an extreme [K]. */
  static final double EXTREME_ERROR = 0.05;

  private static final int BUILDS = 3;
  private static final int RUNS = 300;

  private final PrintWriter out;
  private boolean passed = true;

  private ModalReport(PrintWriter out) {
    this.out = out;
  }

  /**
   * Measures and prints.
   *
   * @param out where to
   * @return true if all errors are allowed and all ledgers close
   */
  public static boolean print(PrintWriter out) {
    ModalReport report = new ModalReport(out);
    report.report();
    return report.passed;
  }

  private void report() {
    PortJourney journey = new PortJourney(ReferenceTransient.fullMesh());
    text(
        "Reduced models of a parcel with %,d cells, %d inputs, %d outputs (two extremes of the"
            + " animal, one of the warmer) on a journey of 48 h in %d steps of 15 min under %d sets"
            + " of films.",
        journey.cells(),
        journey.inputCount(),
        journey.probes().size(),
        journey.steps(),
        journey.filmSets().size());
    text("Times are the least of several; CPU: all threads, but of steps the computing thread's.");
    builds(journey);
    steps(journey);
    text(passed ? "PASSED" : "FAILED");
  }

  private void builds(PortJourney journey) {
    int sets = journey.filmSets().size();
    List<List<String>> rows = new ArrayList<>();
    for (int threads : new int[] {1, 2}) {
      rows.add(
          build("8 inputs, 1 set of films", threads, () -> journey.model(1, threads), journey));
      rows.add(build("8 inputs", threads, () -> journey.model(sets, threads), journey));
      rows.add(build("faces in one air", threads, () -> journey.modelInOneAir(threads), journey));
    }
    text("Building, and finding the modes under films a tenth higher");
    table(
        List.of(
            "model", "threads", "modes", "iterations", "CPU [s]", "wall [s]", "other films [ms]"),
        rows);
  }

  private static List<String> build(
      String what, int threads, Supplier<ReducedModel> building, PortJourney journey) {
    Stopwatch.Taken<ReducedModel> build = Stopwatch.least(BUILDS, building);
    ReducedModel model = build.result();
    double[] films = journey.otherFilms();
    Stopwatch.Taken<ModalConfiguration> other =
        Stopwatch.least(10 * BUILDS, () -> model.configuration(films, new double[0]));
    long iterations = model.engineWithoutEstimates(journey.initialState()).work().iterations();
    return List.of(
        what,
        Integer.toString(threads),
        Integer.toString(model.modes()),
        format("%,d", iterations),
        format("%.2f", build.processor()),
        format("%.2f", build.wall()),
        format("%.2f", 1e3 * other.wall()));
  }

  private void steps(PortJourney journey) {
    Stopwatch.Taken<double[][]> exact =
        Stopwatch.least(1, () -> full(journey, FullSolverReport.REFERENCE_TOLERANCE));
    Stopwatch.Taken<double[][]> standard =
        Stopwatch.least(2, () -> full(journey, IntegratorSettings.DEFAULT_STEP_TOLERANCE));
    List<List<String>> rows = new ArrayList<>();
    rows.add(full("full solver, small steps", exact, exact, journey));
    rows.add(full("full solver, standard", standard, exact, journey));
    for (boolean inOneAir : new boolean[] {false, true}) {
      ReducedModel model =
          inOneAir ? journey.modelInOneAir(1) : journey.model(journey.filmSets().size(), 1);
      for (boolean estimates : new boolean[] {true, false}) {
        rows.add(
            modes(
                (inOneAir ? "faces in one air" : "8 inputs")
                    + (estimates ? ", with estimates" : ", without"),
                model,
                estimates,
                exact.result(),
                journey));
      }
    }
    text("Following the journey on a ready model, %d steps", journey.steps());
    table(
        List.of(
            "engine",
            "modes",
            "CPU [ms]",
            "error of means [K]",
            "of extremes [K]",
            "estimate: means [K]",
            "extremes [K]"),
        rows);
    text(
        "Errors against the full solver at a step tolerance of %s K; allowed are %s K and %s K.",
        FullSolverReport.REFERENCE_TOLERANCE, MEAN_ERROR, EXTREME_ERROR);
  }

  private static double[][] full(PortJourney journey, double tolerance) {
    double[][] rows = journey.rows();
    journey.follow(journey.fullEngine(tolerance), rows);
    return rows;
  }

  private List<String> full(
      String what,
      Stopwatch.Taken<double[][]> run,
      Stopwatch.Taken<double[][]> exact,
      PortJourney journey) {
    return List.of(
        what,
        format("%,d cells", journey.cells()),
        format("%.0f", run.thread() * 1e3),
        format("%.4f", error(journey, run.result(), exact.result(), false)),
        format("%.4f", error(journey, run.result(), exact.result(), true)),
        "",
        "");
  }

  private List<String> modes(
      String what, ReducedModel model, boolean estimates, double[][] exact, PortJourney journey) {
    double[][] rows = journey.rows();
    double least = Double.POSITIVE_INFINITY;
    ModalEngine engine = engine(model, estimates, journey);
    for (int run = 0; run < RUNS; run++) {
      engine = engine(model, estimates, journey);
      double start = Stopwatch.threadSeconds();
      journey.follow(engine, rows);
      least = Math.min(least, Stopwatch.threadSeconds() - start);
    }
    double means = error(journey, rows, exact, false);
    double extremes = error(journey, rows, exact, true);
    passed &= means <= MEAN_ERROR && extremes <= EXTREME_ERROR && engine.ledger().closes();
    double[] estimate = estimates ? engine.errorEstimates() : new double[0];
    return List.of(
        what,
        Integer.toString(model.modes()),
        format("%.3f", least * 1e3),
        format("%.4f", means),
        format("%.4f", extremes),
        estimates ? format("%.4f", largest(journey, estimate, false)) : "",
        estimates ? format("%.4f", largest(journey, estimate, true)) : "");
  }

  private static ModalEngine engine(ReducedModel model, boolean estimates, PortJourney journey) {
    return estimates
        ? model.engine(journey.initialState())
        : model.engineWithoutEstimates(journey.initialState());
  }

  /** Largest difference of the temperatures that are extremes, or of those that are none. */
  private static double error(
      PortJourney journey, double[][] rows, double[][] exact, boolean extremes) {
    double largest = 0;
    for (int row = 0; row < rows.length; row++) {
      double[] difference = rows[row].clone();
      for (int output = 0; output < difference.length; output++) {
        difference[output] = Math.abs(difference[output] - exact[row][output]);
      }
      largest = Math.max(largest, largest(journey, difference, extremes));
    }
    return largest;
  }

  private static double largest(PortJourney journey, double[] values, boolean extremes) {
    double largest = 0;
    for (int output = 0; output < values.length; output++) {
      Probe probe = journey.probes().get(output);
      boolean extreme = probe instanceof Probe.Minimum || probe instanceof Probe.Maximum;
      if (probe.unit().equals("K") && extreme == extremes) {
        largest = Math.max(largest, values[output]);
      }
    }
    return largest;
  }

  private void text(String format, Object... values) {
    PlainText.print(new Exhibit.Paragraph(format(format, values)), out);
    out.flush();
  }

  private void table(List<String> header, List<List<String>> rows) {
    PlainText.print(new Exhibit.Tabulation(header, rows), out);
    out.flush();
  }

  private static String format(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
