package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;

/** A computation on finer and finer grids. Immutable. */
final class Ladder {
  /**
   * Ratio of the two step tolerances from whose runs the error of the time steps is estimated: that
   * of a second-order scheme falls with the power 2/3 of the tolerance, here to a quarter; that of
   * steps with the correction of third order falls faster, so that the estimate is cautious.
   */
  private static final double TOLERANCE_RATIO = 8;

  private static final double STEP_ERROR = 1.25 / (1 - Math.pow(TOLERANCE_RATIO, -2.0 / 3));

  private final List<Double> widths;
  private final List<Grid> grids;
  private final List<Findings.Cost> runs;
  private final List<Double> stepErrors;

  private Ladder(
      List<Double> widths, List<Grid> grids, List<Findings.Cost> runs, List<Double> stepErrors) {
    this.widths = List.copyOf(widths);
    this.grids = List.copyOf(grids);
    this.runs = List.copyOf(runs);
    this.stepErrors = List.copyOf(stepErrors);
  }

  /**
   * What one grid gives.
   *
   * @param values the outputs
   * @param cells number of cells
   * @param steps time steps; 0 if steady
   */
  record Grid(List<Double> values, int cells, long steps) {
    Grid {
      values = List.copyOf(values);
    }
  }

  /** Computes a steady case. */
  interface Steady {
    /** Computes it on a grid with cells of a relative width. */
    Grid on(double width);
  }

  /** Computes a transient case. */
  interface Transient {
    /** Computes it on a grid with cells of a relative width and with a step tolerance [K]. */
    Grid on(double width, double stepTolerance);
  }

  /** Widths for three grids: the finest has cells of the width given. */
  static List<Double> three(double finest) {
    return List.of(4 * finest, 2 * finest, finest);
  }

  /** Computes a steady case on all grids. */
  static Ladder steady(List<Double> widths, Steady steady) {
    List<Grid> grids = new ArrayList<>();
    List<Findings.Cost> runs = new ArrayList<>();
    for (double width : widths) {
      add(() -> steady.on(width), grids, runs);
    }
    return new Ladder(widths, grids, runs, grids.get(0).values().stream().map(v -> 0.0).toList());
  }

  /** Computes a transient case on all grids, and on the coarsest with a smaller step tolerance. */
  static Ladder over(List<Double> widths, double stepTolerance, Transient history) {
    List<Grid> grids = new ArrayList<>();
    List<Findings.Cost> runs = new ArrayList<>();
    for (double width : widths) {
      add(() -> history.on(width, stepTolerance), grids, runs);
    }
    Grid finer = history.on(widths.get(0), stepTolerance / TOLERANCE_RATIO);
    List<Double> errors = new ArrayList<>();
    for (int index = 0; index < finer.values().size(); index++) {
      double change = grids.get(0).values().get(index) - finer.values().get(index);
      errors.add(STEP_ERROR * Math.abs(change));
    }
    return new Ladder(widths, grids, runs, errors);
  }

  private static void add(
      java.util.function.Supplier<Grid> solve, List<Grid> grids, List<Findings.Cost> runs) {
    long start = System.nanoTime();
    Grid grid = solve.get();
    grids.add(grid);
    runs.add(new Findings.Cost(grid.cells(), grid.steps(), (System.nanoTime() - start) * 1e-9));
  }

  /** Value of an output on the finest grid. */
  double finest(int output) {
    return grids.get(grids.size() - 1).values().get(output);
  }

  /** One of the outputs, times a factor, with the estimated error at which it has converged. */
  Check.Computed output(int output, double target) {
    List<Double> values = grids.stream().map(grid -> grid.values().get(output)).toList();
    return new Check.Computed(values, widths, stepErrors.get(output), target);
  }

  List<Findings.Cost> runs() {
    return runs;
  }

  /** Runs of several ladders, grid by grid: cells of the largest, steps and seconds in all. */
  static List<Findings.Cost> together(List<Ladder> ladders) {
    List<Findings.Cost> all = new ArrayList<>();
    for (int rung = 0; rung < ladders.get(0).runs.size(); rung++) {
      int cells = 0;
      long steps = 0;
      double seconds = 0;
      for (Ladder ladder : ladders) {
        Findings.Cost run = ladder.runs.get(rung);
        cells = Math.max(cells, run.cells());
        steps += run.steps();
        seconds += run.seconds();
      }
      all.add(new Findings.Cost(cells, steps, seconds));
    }
    return all;
  }
}
