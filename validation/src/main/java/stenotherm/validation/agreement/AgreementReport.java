package stenotherm.validation.agreement;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
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
 * Draws parcels, journeys and variations at random, makes a model of each parcel on its journey,
 * runs it nominal and varied, reduced and stepping every cell at a small step tolerance, and prints
 * how far they are apart. It passes if every mean of an animal, a warmer or a pack is within 0.02 K
 * and every extreme within 0.05 K, no error estimate of a nominal run is below a third of the error
 * and their median is at most ten times it.
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

  private static boolean isMean(Deviation deviation) {
    return !deviation.isExtreme();
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
    line("Reduced models against stepping every cell at a step tolerance of %s K,", STEP_TOLERANCE);
    line("same coefficients, same grid; largest errors over the stored times [K]: of means and");
    line("extremes, as built for (nominal) and with uncertain quantities elsewhere (varied)");
    line("");
    line(
        "%6s %6s %6s %5s %6s %8s %8s %8s %8s %6s  %s",
        "seed",
        "cells",
        "modes",
        "legs",
        "hours",
        "mean",
        "extreme",
        "mean v.",
        "extr. v.",
        "ratio",
        "worst output");
    ExecutorService threads =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    List<ModelAgreement> all = new ArrayList<>();
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
        all.add(agreement);
      }
    } finally {
      threads.shutdownNow();
    }
    return printSum(all);
  }

  private void printRow(long seed, ModelAgreement agreement) {
    Deviation worst = Collections.max(agreement.all(), Comparator.comparingDouble(Deviation::part));
    line(
        "%6d %6d %6d %5d %6.1f %8.4f %8.4f %8.4f %8.4f %6.2f  %s",
        seed,
        agreement.nominal().cells(),
        agreement.nominal().reduction().orElseThrow().modes(),
        agreement.nominal().journey().legs().size(),
        Times.toHours(agreement.nominal().journey().duration()),
        largest(agreement.ofNominal(), AgreementReport::isMean),
        largest(agreement.ofNominal(), Deviation::isExtreme),
        largest(agreement.ofVaried(), AgreementReport::isMean),
        largest(agreement.ofVaried(), Deviation::isExtreme),
        Ratios.of(agreement.ofNominal(), RESOLVED).least(),
        worst.output());
  }

  private static double largest(List<Deviation> deviations, Predicate<Deviation> which) {
    return deviations.stream().filter(which).mapToDouble(Deviation::largest).max().orElse(0);
  }

  private boolean printSum(List<ModelAgreement> agreements) {
    List<Deviation> nominal =
        agreements.stream().flatMap(each -> each.ofNominal().stream()).toList();
    List<Deviation> varied = agreements.stream().flatMap(each -> each.ofVaried().stream()).toList();
    line("");
    boolean nominalPassed = printLargest("Nominal", nominal);
    boolean passed = printLargest("Varied", varied) && nominalPassed;
    Ratios ratios = Ratios.of(nominal, RESOLVED);
    passed &=
        ratios.least() >= ModelAgreement.LEAST_RATIO
            && !(ratios.median() > ModelAgreement.MEDIAN_RATIO);
    line(
        "Estimate over error, of %d nominal errors above %s K: least %.2f, median %.1f.",
        ratios.count(), RESOLVED, ratios.least(), ratios.median());
    line(passed ? "PASSED" : "FAILED");
    return passed;
  }

  private boolean printLargest(String which, List<Deviation> all) {
    double mean = largest(all, AgreementReport::isMean);
    double extreme = largest(all, Deviation::isExtreme);
    line("%s: largest error of a mean %.4f K, of an extreme %.4f K.", which, mean, extreme);
    return mean <= ModelAgreement.MEAN_LIMIT && extreme <= ModelAgreement.EXTREME_LIMIT;
  }

  private void line(String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
  }
}
