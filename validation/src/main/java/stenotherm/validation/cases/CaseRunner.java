package stenotherm.validation.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.ConductionProblem;
import stenotherm.grid.GridBudget;
import stenotherm.grid.MeshControl;
import stenotherm.picture.Picture;
import stenotherm.validation.cases.GridRun.Unfinished;

/**
 * Runs one case on finer and finer grids until each value is accurate enough: its estimated error,
 * of grid and time steps together, is below the target of {@link Targets}. Where the tolerance of a
 * reference value is narrower than that, half of it is aimed at as far as the limits allow. Where
 * one grading of the cells does not lead there within the limits, the next one is tried.
 */
final class CaseRunner {
  /** Step tolerance that a transient starts with where the file does not give one [K]. */
  private static final double FIRST_STEP_TOLERANCE = 2e-3;

  private static final double SMALLEST_STEP_TOLERANCE = 1e-7;

  /**
   * Ratio of the two step tolerances from whose runs the error of the time steps is estimated. The
   * error of a second-order scheme falls with the power 2/3 of the tolerance, here to a quarter;
   * that of steps with the correction of third order falls faster, so that the estimate is
   * cautious.
   */
  private static final double TOLERANCE_RATIO = 8;

  /** From the change between the two tolerances to the error at the first; with a factor 1.25. */
  private static final double STEP_ERROR = 1.25 / (1 - Math.pow(TOLERANCE_RATIO, -2.0 / 3));

  /** The part of a target that time steps may use up where the runner chooses them. */
  private static final double SHARE_OF_STEPS = 0.25;

  /**
   * Memory that a grid takes for each of its cells [byte]: measured, 1.6 million cells left 380 MB
   * after a collection, and as much again may wait for the next one; the rest is a margin.
   */
  static final double BYTES_PER_CELL = 700;

  /** How the time of a grid grows with its cells. */
  private static final double TIME_EXPONENT = 1.3;

  /** In three dimensions, the least by which cells become narrower on the next grid. */
  private static final double SMALLEST_RATIO = 1.5;

  /** How much narrower cells become than what is missing asks for. */
  private static final double SURPLUS = 1.1;

  /** A last grid is worth its time only if its cells are narrower by this ratio. */
  private static final double SMALLEST_LAST_RATIO = 1.15;

  private final CaseFile file;
  private final Limits limits;
  private final int refine;
  private final Consumer<String> progress;
  private final Deadline deadline;
  private List<Double> stepErrors;
  private double stepTolerance = Double.NaN;

  private CaseRunner(
      CaseFile file, Limits limits, int refine, Consumer<String> progress, Deadline deadline) {
    this.file = file;
    this.limits = limits;
    this.refine = refine;
    this.progress = progress;
    this.deadline = deadline;
    this.stepErrors = file.references().stream().map(reference -> 0.0).toList();
  }

  /**
   * Runs a case.
   *
   * @param file the case
   * @param limits where it ends
   * @param refine how many more grids are solved after the values are accurate enough
   * @param progress told a line after each grid
   * @return the result
   * @throws CancellationException if the thread is interrupted
   */
  static CaseResult run(CaseFile file, Limits limits, int refine, Consumer<String> progress) {
    try (Deadline deadline = new Deadline(limits.seconds())) {
      return new CaseRunner(file, limits, refine, progress, deadline).run();
    } catch (InvalidInputException fault) {
      return CaseResult.refused(file.heading(), String.valueOf(fault.getMessage()));
    }
  }

  private CaseResult run() {
    List<MeshSeries> all;
    Targets targets;
    try {
      all = MeshSeries.of(file);
      targets = new Targets(file);
    } catch (CancellationException interrupt) {
      deadline.requirePassed(interrupt);
      return result(Attempt.unknown(file), List.of(), timeLimit(), List.of());
    }
    Attempt best = new Attempt(file, all.get(0), targets);
    String limit = "";
    for (int number = 0; number < all.size() && !isConverged(best); number++) {
      Attempt attempt = number == 0 ? best : new Attempt(file, all.get(number), targets);
      boolean last = number == all.size() - 1;
      if (number > 0) {
        progress.accept(file.id() + ": starts again with cells that are finer at edges");
      }
      String ended = refine(attempt, last).orElse("");
      if (number == 0 || excess(attempt) < excess(best)) {
        best = attempt;
        limit = ended;
      }
    }
    return result(values(best), best.grids(), isConverged(best) ? "" : limit, pictures(best));
  }

  private CaseResult result(
      List<ValueResult> values, List<GridRun> grids, String limit, List<Picture> pictures) {
    boolean converged = values.stream().allMatch(ValueResult::isConverged);
    return new CaseResult(
        file.heading(),
        values,
        grids,
        converged ? Optional.empty() : Optional.of(notConverged(values, limit)),
        pictures,
        List.of(),
        deadline.elapsed());
  }

  /** Solves grid after grid; returns what ended it, if that was not enough accuracy. */
  private Optional<String> refine(Attempt attempt, boolean last) {
    int more = refine;
    while (true) {
      if (attempt.hasEstimate() && !wantsMore(attempt) && more-- <= 0) {
        return Optional.empty();
      }
      double width = nextWidth(attempt);
      Optional<String> beyond = beyondLimits(attempt, width);
      if (beyond.isPresent() && !isConverged(attempt)) {
        width = lastWidth(attempt);
        boolean worthwhile = width > 0 && (last || isPromising(attempt, width));
        beyond = worthwhile ? beyondLimits(attempt, width) : beyond;
      }
      Optional<String> limit = beyond.isPresent() ? beyond : solve(attempt, width);
      if (limit.isPresent()) {
        return limit;
      }
    }
  }

  /** Width of the cells of the next grid: no narrower than what is missing asks for. */
  private double nextWidth(Attempt attempt) {
    double width = attempt.nextWidth();
    if (attempt.series().dimensions() < 3 || !attempt.hasEstimate() || isConverged(attempt)) {
      return width;
    }
    double ratio = Math.max(SMALLEST_RATIO, SURPLUS * neededRatio(attempt));
    return Math.max(width, lastWidthOf(attempt) / ratio);
  }

  /** Ratio by which cells must be narrower to meet the targets, if errors go on as they did. */
  private double neededRatio(Attempt attempt) {
    ValueResult worst = farthest(values(attempt));
    return Attempt.widthRatio(worst.accuracy(), worst.accuracy().target());
  }

  private boolean isConverged(Attempt attempt) {
    return attempt.hasEstimate() && values(attempt).stream().allMatch(ValueResult::isConverged);
  }

  private List<ValueResult> values(Attempt attempt) {
    return attempt.values(stepErrors);
  }

  /** How many times the worst estimated error exceeds its target; infinite if it is not known. */
  private double excess(Attempt attempt) {
    return attempt.hasEstimate() ? excess(farthest(values(attempt))) : Double.POSITIVE_INFINITY;
  }

  private static double excess(ValueResult value) {
    return value.accuracy().estimate() / value.accuracy().target();
  }

  /**
   * Whether a further grid is needed: a target is not met, or a narrower tolerance is in reach of
   * the limits.
   */
  private boolean wantsMore(Attempt attempt) {
    List<ValueResult> values = values(attempt);
    boolean more = false;
    for (int index = 0; index < values.size(); index++) {
      ValueResult value = values.get(index);
      ValueResult.Accuracy accuracy = value.accuracy();
      if (!value.isConverged()) {
        // a finer grid does not reduce the error of the time steps
        boolean hopeless = accuracy.steps() > accuracy.target();
        more |= !hopeless || accuracy.grid() > SHARE_OF_STEPS * accuracy.target();
        continue;
      }
      double divisor = value.reference().expected().unit().divisor();
      double goal = attempt.goal(index, attempt.last().values()) / divisor;
      if (accuracy.estimate() > goal) {
        double ratio = Attempt.widthRatio(accuracy, goal);
        double width = Math.min(attempt.nextWidth(), lastWidthOf(attempt) / ratio);
        more |= beyondLimits(attempt, width).isEmpty();
      }
    }
    return more;
  }

  /** Whether a grid would meet the targets if errors go on falling as they did. */
  private boolean isPromising(Attempt attempt, double width) {
    if (!attempt.hasEstimate()) {
      return false;
    }
    return lastWidthOf(attempt) / width >= neededRatio(attempt);
  }

  private static double lastWidthOf(Attempt attempt) {
    return attempt.width(attempt.grids().size() - 1);
  }

  /** Which limit a grid would exceed, judged by the one before it. */
  private Optional<String> beyondLimits(Attempt attempt, double width) {
    if (attempt.grids().isEmpty()) {
      return Optional.empty();
    }
    GridRun last = attempt.last();
    double cellRatio = attempt.series().cellRatio(lastWidthOf(attempt) / width);
    double cells = last.cells() * cellRatio;
    if (cells > limits.cells()) {
      return Optional.of(cellLimit());
    }
    if (cells * BYTES_PER_CELL > mostBytes()) {
      return Optional.of(memoryLimit());
    }
    double seconds = last.seconds() * Math.pow(cellRatio, TIME_EXPONENT);
    return deadline.elapsed() + seconds > limits.seconds()
        ? Optional.of(timeLimit())
        : Optional.empty();
  }

  /** Width of the cells of a last grid just within the limits; 0 if it is not worth its time. */
  private double lastWidth(Attempt attempt) {
    GridRun last = attempt.last();
    double cells = 0.95 * Math.min((double) limits.cells(), mostBytes() / BYTES_PER_CELL);
    double ratio = Math.pow(cells / last.cells(), 1.0 / attempt.series().dimensions());
    return ratio < SMALLEST_LAST_RATIO ? 0 : lastWidthOf(attempt) / ratio;
  }

  /** Solves the next grid, or says which limit forbids it. */
  private Optional<String> solve(Attempt attempt, double width) {
    int number = attempt.grids().size() + 1;
    try {
      double wanted = attempt.series().cells(file, width);
      if (wanted > limits.cells()) {
        return Optional.of(cellLimit());
      }
      if (wanted * BYTES_PER_CELL > mostBytes()) {
        return Optional.of(memoryLimit());
      }
      // these limits have been looked at and stand for the mesh's own
      GridBudget budget = new GridBudget(limits.cells(), Long.MAX_VALUE);
      ConductionProblem problem = file.problem(attempt.series().mesh(width).within(budget));
      int cells = problem.network().grid().cellCount();
      GridRun grid = solve(attempt, problem);
      attempt.add(width, grid);
      progress.accept(
          String.format(
              Locale.ROOT,
              "%s: grid %d, %,d cells, %.1f s%s",
              file.id(),
              number,
              cells,
              grid.seconds(),
              attempt.hasEstimate() ? ", " + estimateOf(farthest(values(attempt))) : ""));
      return Optional.empty();
    } catch (Unfinished unfinished) {
      return Optional.of("on grid " + number + ", " + unfinished.getMessage());
    } catch (CancellationException interrupt) {
      deadline.requirePassed(interrupt);
      return Optional.of(timeLimit());
    } catch (OutOfMemoryError tooLarge) {
      return Optional.of("at the memory of this Java machine, on grid " + number);
    }
  }

  private GridRun solve(Attempt attempt, ConductionProblem problem) throws Unfinished {
    if (file.run().history().isEmpty()) {
      return GridRun.steady(file, problem);
    }
    RunPlan.Transient history = file.run().history().get();
    if (!Double.isNaN(stepTolerance)) {
      return GridRun.history(file, problem, stepTolerance);
    }
    boolean free = history.timeTolerance().isEmpty();
    double tolerance = history.timeTolerance().orElse(FIRST_STEP_TOLERANCE);
    GridRun run = GridRun.history(file, problem, tolerance);
    while (true) {
      GridRun finer = GridRun.history(file, problem, tolerance / TOLERANCE_RATIO);
      stepErrors = stepErrors(run, finer);
      if (!free || areSmall(attempt, run) || tolerance < SMALLEST_STEP_TOLERANCE) {
        stepTolerance = tolerance;
        return run;
      }
      tolerance /= TOLERANCE_RATIO;
      run = finer;
    }
  }

  private static List<Double> stepErrors(GridRun run, GridRun finer) {
    List<Double> errors = new ArrayList<>();
    for (int index = 0; index < run.values().size(); index++) {
      double change = run.values().get(index) - finer.values().get(index);
      errors.add(STEP_ERROR * Math.abs(change));
    }
    return errors;
  }

  private boolean areSmall(Attempt attempt, GridRun run) {
    for (int index = 0; index < stepErrors.size(); index++) {
      if (stepErrors.get(index) > SHARE_OF_STEPS * attempt.goal(index, run.values())) {
        return false;
      }
    }
    return true;
  }

  private String cellLimit() {
    return String.format(Locale.ROOT, "at the limit of %,d cells", limits.cells());
  }

  private String memoryLimit() {
    double gigabytes = mostBytes() / (1L << 30);
    return String.format(Locale.ROOT, "at the limit of %.1f GB of memory", gigabytes);
  }

  private double mostBytes() {
    return Math.min(limits.bytes(), Runtime.getRuntime().maxMemory());
  }

  private String timeLimit() {
    return String.format(Locale.ROOT, "at the limit of %.0f s", limits.seconds());
  }

  /** The value that is farthest from its target. */
  private static ValueResult farthest(List<ValueResult> values) {
    ValueResult worst = values.get(0);
    for (ValueResult value : values) {
      if (excess(value) > excess(worst) || Double.isNaN(excess(value))) {
        worst = value;
      }
    }
    return worst;
  }

  private static String estimateOf(ValueResult value) {
    Reference reference = value.reference();
    return "estimate "
        + Digits.of(value.accuracy().estimate())
        + " "
        + reference.expected().unit().differenceLabel()
        + " at "
        + reference.probe();
  }

  private static String notConverged(List<ValueResult> values, String limit) {
    ValueResult worst = farthest(values);
    if (Double.isNaN(worst.accuracy().estimate())) {
      return "not converged: no estimate, fewer than three grids were solved; ended " + limit;
    }
    String text =
        "not converged: "
            + estimateOf(worst)
            + ", target "
            + Digits.of(worst.accuracy().target())
            + " "
            + worst.reference().expected().unit().differenceLabel();
    if (worst.accuracy().steps() > worst.accuracy().grid()) {
      text += ", mostly from the time steps; make timeTolerance smaller or leave it out";
    }
    return limit.isEmpty() ? text : text + "; ended " + limit;
  }

  private List<Picture> pictures(Attempt attempt) {
    if (file.run().history().isEmpty() || attempt.grids().isEmpty() || deadline.hasPassed()) {
      return List.of();
    }
    int grid = 0;
    while (grid + 1 < attempt.grids().size()
        && attempt.grids().get(grid + 1).cells() <= CaseCharts.MOST_CELLS) {
      grid++;
    }
    MeshControl mesh = attempt.series().mesh(attempt.width(grid));
    try {
      return CaseCharts.of(file, file.problem(mesh), stepTolerance);
    } catch (CancellationException interrupt) {
      deadline.requirePassed(interrupt);
      return List.of();
    }
  }
}
