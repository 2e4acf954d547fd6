package stenotherm.validation.agreement;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Predicate;
import stenotherm.base.Range;
import stenotherm.base.Times;

/**
 * Draws parcels and journeys at random, runs each with a reduced model and with the full solver at
 * a small step tolerance, and prints how far they are apart. It passes if every mean of an animal
 * or a warmer is within 0.02 K and every extreme within 0.05 K, no error estimate is below a third
 * of the error and their median is at most ten times it.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class AgreementReport {
  /** The step tolerance of the full solver [K]. */
  static final double STEP_TOLERANCE = 2e-5;

  /**
   * Errors of means and extremes below it are not told from those of the full solver [K]. At a step
   * tolerance of 0.1 mK that is off by up to 0.5 mK, found on four tries by steps at a tenth of it;
   * at this one by less (not measured).
   */
  static final double RESOLVED = 1e-3;

  private final PrintStream out;

  private AgreementReport(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the trials and prints the report.
   *
   * @param out where to
   * @param tries how many
   * @param seed for the first; the next ones take the numbers that follow
   * @param cells range of the number of cells
   * @return true if it passes
   * @throws ExecutionException if a trial fails
   * @throws InterruptedException if the thread is interrupted
   */
  public static boolean print(PrintStream out, int tries, long seed, Range cells)
      throws ExecutionException, InterruptedException {
    return new AgreementReport(out).print(tries, seed, cells);
  }

  private boolean print(int tries, long seed, Range cells)
      throws ExecutionException, InterruptedException {
    line("Reduced models against the full solver at a step tolerance of %s K,", STEP_TOLERANCE);
    line("same coefficients, same grid; largest errors over the stored times [K]");
    line("");
    line(
        "%6s %6s %6s %5s %6s %-28s %7s %9s %9s %7s",
        "seed",
        "cells",
        "modes",
        "legs",
        "hours",
        "worst output",
        "at [h]",
        "mean",
        "extreme",
        "ratio");
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    List<Deviation> all = new ArrayList<>();
    try {
      List<Future<ModelAgreement>> runs = new ArrayList<>();
      for (int number = 0; number < tries; number++) {
        Random random = new Random(seed + number);
        runs.add(threads.submit(() -> Trial.of(random, cells).agreement(cells, STEP_TOLERANCE)));
      }
      for (int number = 0; number < tries; number++) {
        ModelAgreement agreement = runs.get(number).get();
        runs.set(number, null);
        printRow(seed + number, agreement);
        all.addAll(agreement.deviations());
      }
    } finally {
      threads.shutdownNow();
    }
    return printSum(all);
  }

  private void printRow(long seed, ModelAgreement agreement) {
    Deviation worst = agreement.deviations().get(0);
    for (Deviation each : agreement.deviations()) {
      worst = each.part() > worst.part() ? each : worst;
    }
    line(
        "%6d %6d %6d %5d %6.1f %-28s %7.2f %9.4f %9.4f %7.2f",
        seed,
        agreement.reduced().cells(),
        agreement.reduced().reduction().orElseThrow().modes(),
        agreement.reduced().journey().legs().size(),
        Times.toHours(agreement.reduced().journey().duration()),
        worst.output(),
        Times.toHours(worst.time()),
        largest(agreement.deviations(), each -> !each.isExtreme()),
        largest(agreement.deviations(), Deviation::isExtreme),
        Ratios.of(agreement.deviations(), RESOLVED).least());
  }

  private static double largest(List<Deviation> deviations, Predicate<Deviation> which) {
    return deviations.stream().filter(which).mapToDouble(Deviation::largest).max().orElse(0);
  }

  private boolean printSum(List<Deviation> all) {
    double mean = largest(all, each -> !each.isExtreme());
    double extreme = largest(all, Deviation::isExtreme);
    Ratios ratios = Ratios.of(all, RESOLVED);
    boolean passed =
        mean <= ModelAgreement.MEAN_LIMIT
            && extreme <= ModelAgreement.EXTREME_LIMIT
            && ratios.least() >= ModelAgreement.LEAST_RATIO
            && !(ratios.median() > ModelAgreement.MEDIAN_RATIO);
    line("");
    line("Largest error of a mean %.4f K, of an extreme %.4f K.", mean, extreme);
    line(
        "Estimate over error, of %d errors above %s K: least %.2f, median %.1f.",
        ratios.count(), RESOLVED, ratios.least(), ratios.median());
    line(passed ? "PASSED" : "FAILED");
    return passed;
  }

  private void line(String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
  }
}
