package stenotherm.validation.benchmark;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.grid.MeshControl;
import stenotherm.modal.ModalEngine;
import stenotherm.modal.ReducedModel;
import stenotherm.validation.studies.Findings.Exhibit;

/**
 * Tells what reduced models of the parcel of {@link PortJourney} cost: building one, projecting a
 * further network on one, following the journey with one, and how building grows with the cells.
 * Beside each time stand what it was for, the error against the full solver at small steps, and
 * what the same takes otherwise or at the very least. It passes if the errors are allowed and the
 * ledgers close; seconds are told, not judged, as they depend on the machine.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class ModalReport {
  /** Largest error of a mean [K]. */
  static final double MEAN_ERROR = 0.02;

  /** Largest error of an extreme [K]. */
  static final double EXTREME_ERROR = 0.05;

  /**
   * Cell widths for about 15,000, 30,000, 60,000 and 120,000 cells, as parts of the full mesh's.
   */
  private static final double[] GRIDS = {2.44, 1.63, 1, 0.96};

  /** The third of {@link #GRIDS}: the one that everything else is measured on. */
  private static final int FULL = 2;

  private static final int BUILDS = 3;
  private static final int RUNS = 300;

  /** Three vectors of this length take as much room as the vectors of an iteration. */
  private static final int ITERATION_LENGTH = 250_000;

  /** Three vectors of this length take as much room as a basis. */
  private static final int BASIS_LENGTH = 4_000_000;

  /** Vectors that an iteration of conjugate gradients must at least read or write, of any kind. */
  private static final int VECTORS_PER_ITERATION = 10;

  private final PrintWriter out;

  /** Bytes that move in a second where the vectors of one iteration are at hand. */
  private final double bandwidth;

  /** The same where a whole basis is read. */
  private final double memoryBandwidth;

  private boolean passed = true;

  private ModalReport(PrintWriter out) {
    this.out = out;
    this.bandwidth = bandwidth(ITERATION_LENGTH);
    this.memoryBandwidth = bandwidth(BASIS_LENGTH);
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
    text(
        "Times are the least of several. CPU: all threads, the compiler's and the collector's"
            + " included, but of steps the computing thread's. Least: the time in which this"
            + " machine moves the numbers that cannot be spared, at the %.0f GB/s that adding two"
            + " vectors reached where all vectors of an iteration are at hand, %.0f GB/s where a"
            + " whole basis is read.",
        bandwidth * 1e-9, memoryBandwidth * 1e-9);
    builds(journey);
    projection(journey);
    steps(journey);
    missed(journey);
    growth();
    text(passed ? "PASSED" : "FAILED");
  }

  private void builds(PortJourney journey) {
    List<List<String>> rows = new ArrayList<>();
    for (int sets : new int[] {1, journey.filmSets().size()}) {
      for (int threads : new int[] {1, 2}) {
        Stopwatch.Taken<ReducedModel> build =
            Stopwatch.least(BUILDS, () -> journey.model(sets, threads));
        rows.add(build(journey, "8 inputs", sets, threads, build));
      }
    }
    Stopwatch.Taken<ReducedModel> inOneAir =
        Stopwatch.least(BUILDS, () -> journey.modelInOneAir(2));
    rows.add(build(journey, "faces in one air", journey.filmSets().size(), 2, inOneAir));
    text("Building");
    table(
        List.of(
            "model",
            "film sets",
            "threads",
            "modes",
            "iterations",
            "CPU [s]",
            "wall [s]",
            "least [s]"),
        rows);
  }

  private List<String> build(
      PortJourney journey,
      String what,
      int sets,
      int threads,
      Stopwatch.Taken<ReducedModel> build) {
    long iterations = iterations(journey, build.result());
    return List.of(
        what,
        Integer.toString(sets),
        Integer.toString(threads),
        Integer.toString(build.result().modes()),
        format("%,d", iterations),
        format("%.2f", build.processor()),
        format("%.2f", build.wall()),
        format("%.2f", least(iterations, journey.cells()) / threads));
  }

  private static long iterations(PortJourney journey, ReducedModel model) {
    return model.engineWithoutEstimates(journey.initialState()).work().iterations();
  }

  private double least(long iterations, int cells) {
    return iterations * (double) VECTORS_PER_ITERATION * cells * Double.BYTES / bandwidth;
  }

  private void projection(PortJourney journey) {
    int sets = journey.filmSets().size();
    text("One more network on a basis that is there: the first set of films, a tenth higher");
    List<List<String>> rows = new ArrayList<>();
    for (int threads : new int[] {1, 2}) {
      rows.add(projection(journey, "8 inputs", threads, journey.model(sets, threads)));
      rows.add(projection(journey, "faces in one air", threads, journey.modelInOneAir(threads)));
    }
    table(
        List.of(
            "model",
            "threads",
            "modes before",
            "after",
            "iterations",
            "CPU [s]",
            "wall [s]",
            "least [s]",
            "multiply-adds [1e9]"),
        rows);
    text(
        "Least: to read the basis once. Multiply-adds: of all vectors with what the whole network"
            + " makes of them, half of it by symmetry.");
  }

  private List<String> projection(
      PortJourney journey, String what, int threads, ReducedModel base) {
    Stopwatch.Taken<ReducedModel> more =
        Stopwatch.least(BUILDS, () -> base.with(journey.network(), journey.otherFilms()));
    double numbers = (double) base.modes() * journey.cells();
    double products = numbers * base.modes() / 2;
    return List.of(
        what,
        Integer.toString(threads),
        Integer.toString(base.modes()),
        Integer.toString(more.result().modes()),
        format("%,d", iterations(journey, more.result()) - iterations(journey, base)),
        format("%.3f", more.processor()),
        format("%.3f", more.wall()),
        format("%.3f", numbers * Double.BYTES / memoryBandwidth),
        format("%.1f", products * 1e-9));
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
            "least [ms]",
            "error of means [K]",
            "of extremes [K]",
            "estimate: means [K]",
            "extremes [K]"),
        rows);
    text(
        "Least: to read what carries modes and inputs to modes and outputs once in each step."
            + " Errors against the full solver at a step tolerance of %s K; allowed are %s K and %s"
            + " K.",
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
        "",
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
    double numbers =
        journey.steps() * (double) model.modes() * (journey.inputCount() + journey.probes().size());
    return List.of(
        what,
        Integer.toString(model.modes()),
        format("%.3f", least * 1e3),
        format("%.3f", numbers * Double.BYTES / bandwidth * 1e3),
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

  /** What the chosen nodes of extremes miss on this journey. */
  private void missed(PortJourney journey) {
    text("What extremes miss at the chosen nodes on this journey");
    List<List<String>> rows = new ArrayList<>();
    rows.add(missed("8 inputs", 1, journey.model(1, 2), journey));
    rows.add(
        missed("faces in one air", journey.filmSets().size(), journey.modelInOneAir(2), journey));
    table(List.of("model", "film sets", "extremes: nodes", "missed [K]"), rows);
  }

  private static List<String> missed(
      String what, int sets, ReducedModel model, PortJourney journey) {
    // one set of films all the way where the model has no other
    double[] missed = journey.missed(model, sets > 1);
    List<String> nodes = new ArrayList<>();
    List<String> onJourney = new ArrayList<>();
    int[] counts = model.nodesOfExtremes();
    for (int output = 0; output < counts.length; output++) {
      if (counts[output] > 0) {
        nodes.add(journey.probes().get(output).name() + " " + counts[output]);
        onJourney.add(format("%.4f", missed[output]));
      }
    }
    return List.of(
        what, Integer.toString(sets), String.join(", ", nodes), String.join(", ", onJourney));
  }

  private void growth() {
    List<List<String>> rows = new ArrayList<>();
    double[] cells = new double[GRIDS.length];
    double[][] cost = new double[3][GRIDS.length];
    for (int grid = 0; grid < GRIDS.length; grid++) {
      MeshControl mesh = ReferenceTransient.fullMesh();
      PortJourney journey = new PortJourney(grid == FULL ? mesh : mesh.scaled(GRIDS[grid]));
      Stopwatch.Taken<ReducedModel> build = Stopwatch.least(BUILDS, () -> journey.model(1, 1));
      Stopwatch.Taken<double[][]> full =
          Stopwatch.least(1, () -> full(journey, IntegratorSettings.DEFAULT_STEP_TOLERANCE));
      cells[grid] = journey.cells();
      cost[0][grid] = build.processor();
      cost[1][grid] = iterations(journey, build.result());
      cost[2][grid] = full.thread();
      rows.add(
          List.of(
              format("%,d", journey.cells()),
              Integer.toString(build.result().modes()),
              format("%,.0f", cost[1][grid]),
              format("%.2f", cost[0][grid]),
              format("%.2f", least((long) cost[1][grid], journey.cells())),
              format("%.2f", cost[2][grid])));
    }
    text(
        "How it grows: one set of films, 8 inputs, one thread; beside it the full solver's"
            + " journey");
    table(
        List.of(
            "cells",
            "modes",
            "iterations",
            "building, CPU [s]",
            "least [s]",
            "full journey, CPU [s]"),
        rows);
    text(
        "Exponents of the number of cells, fitted to the four: building %.2f, its iterations %.2f,"
            + " the full solver's journey %.2f.",
        exponent(cells, cost[0]), exponent(cells, cost[1]), exponent(cells, cost[2]));
  }

  /** Slope of the line through the logarithms, by least squares. */
  static double exponent(double[] x, double[] y) {
    double[] logX = Arrays.stream(x).map(Math::log).toArray();
    double[] logY = Arrays.stream(y).map(Math::log).toArray();
    double meanX = Arrays.stream(logX).average().orElseThrow();
    double meanY = Arrays.stream(logY).average().orElseThrow();
    double both = 0;
    double square = 0;
    for (int i = 0; i < x.length; i++) {
      both += (logX[i] - meanX) * (logY[i] - meanY);
      square += (logX[i] - meanX) * (logX[i] - meanX);
    }
    return both / square;
  }

  /** Bytes that the machine moves in a second when it adds two vectors into a third. */
  private static double bandwidth(int length) {
    int repetitions = BASIS_LENGTH / length;
    double[] a = new double[length];
    double[] b = new double[length];
    double[] c = new double[length];
    Arrays.fill(a, 1);
    Arrays.fill(b, 2);
    double least = Double.POSITIVE_INFINITY;
    for (int time = 0; time < 20; time++) {
      double start = Stopwatch.threadSeconds();
      for (int repetition = 0; repetition < repetitions; repetition++) {
        add(a, b, c);
      }
      least = Math.min(least, Stopwatch.threadSeconds() - start);
    }
    return 3.0 * Double.BYTES * length * repetitions / least;
  }

  private static void add(double[] a, double[] b, double[] c) {
    for (int i = 0; i < c.length; i++) {
      c[i] = a[i] + b[i];
    }
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
