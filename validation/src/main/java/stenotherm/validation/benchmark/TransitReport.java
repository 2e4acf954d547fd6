package stenotherm.validation.benchmark;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.Reduction;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * Tells what the journeys of {@link ReferenceTransit} cost and how far time steps put them off, and
 * what freezing coefficients does to scenarios. A journey passes if its cells are at least 60,000,
 * its temperatures are within 0.02 K of a run at a small step tolerance at every stored time, and
 * its heat ledger closes. Seconds are told, not judged, as they depend on the machine.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class TransitReport {
  /** The step tolerance of the run that stands for exact steps [K]. */
  public static final double REFERENCE_TOLERANCE = 2.5e-4;

  private final PrintStream out;

  private TransitReport(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the journeys and prints the report.
   *
   * @param out where to
   * @param scenarios scenario files whose packings are computed with frozen and live coefficients
   * @return true if the journeys pass
   * @throws IOException if a file cannot be read
   */
  public static boolean print(PrintStream out, List<Path> scenarios) throws IOException {
    TransitReport report = new TransitReport(out);
    boolean passed = report.printJourneys();
    passed &= report.printReduced();
    if (!scenarios.isEmpty()) {
      report.printScenarios(scenarios);
    }
    return passed;
  }

  private boolean printJourneys() {
    line(
        "Journeys of 48 h in five legs, stored every 15 min; full solver, step tolerance %s K,",
        tolerance());
    line(
        "against %s K: largest difference of animal and warmer over the stored times",
        REFERENCE_TOLERANCE);
    line("");
    line(
        "%-22s %7s %8s %6s %9s %11s %14s %10s %8s",
        "",
        "cells",
        "CPU [s]",
        "steps",
        "rejected",
        "iterations",
        "time error [K]",
        "ledger",
        "heap");
    boolean passed = true;
    for (ReferenceTransit journey : ReferenceTransit.values()) {
      passed &= printJourney(journey);
    }
    line("");
    line("CPU: seconds of the computing thread, from parcel to outputs; heap: its peak in MB.");
    line(passed ? "PASSED" : "FAILED");
    return passed;
  }

  private boolean printReduced() {
    line("");
    line("The same with a reduced model, and the reference journey's scenario file:");
    line(
        "largest differences to every cell, same coefficients, stepped at %s K [K]",
        REFERENCE_TOLERANCE);
    line("");
    line(
        "%-22s %7s %6s %8s %10s %8s %8s %8s %8s %9s %10s",
        "",
        "cells",
        "modes",
        "CPU [s]",
        "full [s]",
        "mean",
        "coldest",
        "hottest",
        "warmer",
        "estimate",
        "change [%]");
    boolean passed = true;
    MeshControl mesh = ReferenceTransit.fullMesh();
    for (ReferenceTransit journey :
        new ReferenceTransit[] {ReferenceTransit.CONSTANT, ReferenceTransit.FROZEN}) {
      passed &=
          printReduced(
              journey.title(),
              () -> journey.reduced(mesh),
              () -> journey.run(mesh, tolerance()),
              journey.everyCell(mesh, REFERENCE_TOLERANCE));
    }
    passed &=
        printReduced(
            "scenario file",
            () -> ReferenceJourney.reduced(mesh),
            () -> ReferenceJourney.run(mesh, tolerance()),
            ReferenceJourney.everyCell(mesh, REFERENCE_TOLERANCE));
    line("");
    line("CPU: of all threads, from parcel to outputs, coefficients and model included; full: the");
    line(
        "full solver at %s K likewise. Estimate: of the error of the animal's extremes.",
        tolerance());
    line("Change: of a frozen coefficient, if it were taken again at the run's mean temperatures.");
    line(passed ? "PASSED" : "FAILED");
    return passed;
  }

  private boolean printReduced(
      String title,
      Supplier<TransitResult> reduced,
      Supplier<TransitResult> full,
      TransitResult exact) {
    Stopwatch.Taken<TransitResult> run = Stopwatch.least(2, reduced);
    Stopwatch.Taken<TransitResult> standard = Stopwatch.least(1, full);
    TransitDifference difference = TransitDifference.of(run.result(), exact);
    double estimate = 0;
    for (var cup : run.result().parcel().occupied()) {
      estimate = Math.max(estimate, run.result().reductionErrorOfColdest(cup.name()));
      estimate = Math.max(estimate, run.result().reductionErrorOfHottest(cup.name()));
    }
    line(
        "%-22s %7d %6d %8.2f %10.2f %8.4f %8.4f %8.4f %8.4f %9.4f %10.1f",
        title,
        run.result().cells(),
        run.result().reduction().map(Reduction::modes).orElse(0),
        run.processor(),
        standard.processor(),
        difference.mean(),
        difference.coldest(),
        difference.hottest(),
        difference.warmer(),
        estimate,
        1e2 * run.result().coefficientChange().orElse(Double.NaN));
    return run.result().reduction().isPresent()
        && Math.max(difference.mean(), difference.warmer()) <= ModalReport.MEAN_ERROR
        && Math.max(difference.coldest(), difference.hottest()) <= ModalReport.EXTREME_ERROR
        && run.result().ledger().closes();
  }

  private boolean printJourney(ReferenceTransit journey) {
    heapPools().forEach(MemoryPoolMXBean::resetPeakUsage);
    double start = threadSeconds();
    TransitResult run = journey.run(ReferenceTransit.fullMesh(), tolerance());
    double seconds = threadSeconds() - start;
    double heap = heapPools().stream().mapToDouble(pool -> pool.getPeakUsage().getUsed()).sum();
    TransitResult exact = journey.run(ReferenceTransit.fullMesh(), REFERENCE_TOLERANCE);
    double error = TransitDifference.of(run, exact).largest();
    line(
        "%-22s %7d %8.1f %6d %9d %11d %14.4f %10.1e %8.0f",
        journey.title(),
        run.cells(),
        seconds,
        run.work().steps(),
        run.work().rejected(),
        run.work().iterations(),
        error,
        Math.abs(run.ledger().residual()) / run.ledger().scale(),
        heap * 1e-6);
    return run.cells() >= ReferenceTransient.FEWEST_CELLS
        && error <= FullSolverReport.LARGEST_TIME_ERROR
        && run.ledger().closes();
  }

  private void printScenarios(List<Path> files) throws IOException {
    line("");
    line("Frozen against live coefficients: largest differences until the planned opening [K]");
    line("");
    line(
        "%-22s %-22s %8s %8s %8s %8s",
        "scenario", "packing", "mean", "coldest", "hottest", "warmer");
    double largest = 0;
    for (Path file : files) {
      Scenario scenario = ScenarioReader.read(file);
      for (Parcel packing : scenario.packings()) {
        TransitDifference difference = liveAgainstFrozen(scenario, packing);
        largest =
            Math.max(
                largest,
                Math.max(difference.mean(), Math.max(difference.coldest(), difference.hottest())));
        line(
            "%-22s %-22s %8.3f %8.3f %8.3f %8.3f",
            file.getFileName(),
            packing.name(),
            difference.mean(),
            difference.coldest(),
            difference.hottest(),
            difference.warmer());
      }
    }
    line("");
    line(
        "Freezing moves an animal by at most %.2f K here; compare that with how far the ranges of",
        largest);
    line("fill, films and warmers move it in a verdict.");
  }

  private static TransitDifference liveAgainstFrozen(Scenario scenario, Parcel packing) {
    TransitSettings settings = TransitSettings.standard().meshScaled(2).full();
    return TransitDifference.of(
        Transit.run(packing, scenario.journey(), Variation.NOMINAL, settings),
        Transit.run(packing, scenario.journey(), Variation.NOMINAL, settings.live()));
  }

  private static double tolerance() {
    return IntegratorSettings.DEFAULT_STEP_TOLERANCE;
  }

  private static double threadSeconds() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() * 1e-9;
  }

  private static List<MemoryPoolMXBean> heapPools() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .toList();
  }

  private void line(String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
  }
}
