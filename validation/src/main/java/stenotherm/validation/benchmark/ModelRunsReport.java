package stenotherm.validation.benchmark;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Reduction;
import stenotherm.transit.TransitResult;
import stenotherm.validation.studies.Findings.Exhibit;

/**
 * Tells what the runs of {@link ModelRuns} cost and how far they are from stepping every cell under
 * the same coefficients. It passes if means are within {@value ModalReport#MEAN_ERROR} K and
 * extremes within {@value ModalReport#EXTREME_ERROR} K and the ledgers close; times are told, not
 * judged.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class ModelRunsReport {
  private static final int RUNS = 20;

  private ModelRunsReport() {}

  /**
   * Measures and prints.
   *
   * @param out where to
   * @return true if all errors are allowed and all ledgers close
   */
  public static boolean print(PrintWriter out) {
    boolean passed = true;
    List<List<String>> rows = new ArrayList<>();
    for (ModelRuns each : ModelRuns.values()) {
      Stopwatch.Taken<ParcelModel> build = Stopwatch.least(2, () -> each.model(1));
      ParcelModel model = build.result();
      Stopwatch.Taken<TransitResult> run = Stopwatch.least(RUNS, () -> each.on(model));
      Stopwatch.Taken<TransitResult> cells = Stopwatch.least(1, () -> each.everyCell(model));
      TransitDifference difference = TransitDifference.of(run.result(), cells.result());
      double means = Math.max(difference.mean(), difference.warmer());
      double extremes = Math.max(difference.coldest(), difference.hottest());
      passed &=
          means <= ModalReport.MEAN_ERROR
              && extremes <= ModalReport.EXTREME_ERROR
              && run.result().ledger().closes();
      rows.add(
          List.of(
              each.title(),
              format("%,d", model.cells()),
              format("%d", model.reduction().map(Reduction::modes).orElse(0)),
              format("%.2f", build.processor()),
              format("%.1f", run.thread() * 1e3),
              format("%.1f", cells.thread()),
              format("%.4f", means),
              format("%.4f", extremes)));
    }
    PlainText.print(
        new Exhibit.Tabulation(
            List.of(
                "run",
                "cells",
                "modes",
                "build, CPU [s]",
                "run [ms]",
                "every cell [s]",
                "means [K]",
                "extremes [K]"),
            rows),
        out);
    for (int threads : new int[] {1, 2}) {
      Stopwatch.Taken<double[]> all = Stopwatch.least(1, () -> ModelRuns.offsets(threads));
      text(
          out,
          "Build of a model of means and %d ambient offsets on %d threads: %.1f s; coldest within"
              + " %.4f K of whole results.",
          ModelRuns.OFFSETS,
          threads,
          all.wall(),
          ModelRuns.errorOfOffsets(all.result()));
    }
    text(out, passed ? "PASSED" : "FAILED");
    return passed;
  }

  private static void text(PrintWriter out, String format, Object... values) {
    PlainText.print(new Exhibit.Paragraph(format(format, values)), out);
    out.flush();
  }

  private static String format(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
