package stenotherm.validation.cases;

import java.util.ArrayList;
import java.util.List;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.validation.cases.ValueResult.Accuracy;

/** The grids of one series that were solved for a case, and what they tell. Not thread-safe. */
final class Attempt {
  private final CaseFile file;
  private final MeshSeries series;
  private final Targets targets;
  private final List<GridRun> grids = new ArrayList<>();
  private final List<Double> widths = new ArrayList<>();

  Attempt(CaseFile file, MeshSeries series, Targets targets) {
    this.file = file;
    this.series = series;
    this.targets = targets;
  }

  void add(double width, GridRun grid) {
    widths.add(width);
    grids.add(grid);
  }

  MeshSeries series() {
    return series;
  }

  List<GridRun> grids() {
    return grids;
  }

  GridRun last() {
    return grids.get(grids.size() - 1);
  }

  /** How wide the cells of a grid are, relative to the first one. */
  double width(int grid) {
    return widths.get(grid);
  }

  /** How wide the cells of the next grid are, relative to the first one. */
  double nextWidth() {
    return grids.isEmpty() ? 1 : widths.get(widths.size() - 1) / series.ratio();
  }

  boolean hasEstimate() {
    return grids.size() >= 3;
  }

  /** Estimated error that is aimed at [SI]: the target, or less where the tolerance is narrow. */
  double goal(int index, List<Double> values) {
    Reference.Expected expected = file.references().get(index).expected();
    double tolerance = expected.tolerance() * expected.unit().divisor();
    return Math.min(targets.of(index, values), tolerance / 2);
  }

  /** What the grids give for each reference value, with the errors of the time steps [SI]. */
  List<ValueResult> values(List<Double> stepErrors) {
    List<ValueResult> results = new ArrayList<>();
    for (int index = 0; index < file.references().size(); index++) {
      results.add(value(index, stepErrors.get(index)));
    }
    return results;
  }

  private ValueResult value(int index, double stepError) {
    Reference reference = file.references().get(index);
    if (grids.isEmpty()) {
      return unknown(reference);
    }
    ReferenceUnit unit = reference.expected().unit();
    double target = unit.shownDifference(targets.of(index, last().values()));
    if (!hasEstimate()) {
      double finest = unit.shown(last().values().get(index));
      Accuracy accuracy =
          new Accuracy(Double.NaN, unit.shownDifference(stepError), Double.NaN, target);
      return new ValueResult(reference, finest, accuracy);
    }
    DiscretisationEstimate estimate = estimate(index);
    Accuracy accuracy =
        new Accuracy(
            unit.shownDifference(estimate.valueError()),
            unit.shownDifference(stepError),
            estimate.order(),
            target);
    return new ValueResult(reference, unit.shown(estimate.value()), accuracy);
  }

  /** What is known of each reference value before any grid is solved: nothing. */
  static List<ValueResult> unknown(CaseFile file) {
    return file.references().stream().map(Attempt::unknown).toList();
  }

  private static ValueResult unknown(Reference reference) {
    Accuracy accuracy = new Accuracy(Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    return new ValueResult(reference, Double.NaN, accuracy);
  }

  private DiscretisationEstimate estimate(int index) {
    int first = grids.size() - 3;
    double[] values = new double[3];
    double[] width = new double[3];
    for (int grid = 0; grid < 3; grid++) {
      values[grid] = grids.get(first + grid).values().get(index);
      width[grid] = widths.get(first + grid);
    }
    return DiscretisationEstimate.of(values, width);
  }

  /**
   * Ratio by which cells must be narrower for an error to fall to a goal, if it goes on falling as
   * it did.
   */
  static double widthRatio(Accuracy accuracy, double goal) {
    double order = Double.isNaN(accuracy.order()) ? 1 : accuracy.order();
    return Math.max(1, Math.pow(accuracy.estimate() / goal, 1 / order));
  }
}
