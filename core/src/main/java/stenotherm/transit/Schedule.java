package stenotherm.transit;

import java.util.ArrayList;
import java.util.List;
import stenotherm.conduction.HeatEngine;

/** Coefficients that are known beforehand: those at the mean temperatures of each stage. */
final class Schedule implements Regime {
  private final Course course;
  private final List<Stage> stages;
  private final List<Coefficients> coefficients;

  private Schedule(Course course, List<Stage> stages, List<Coefficients> coefficients) {
    this.course = course;
    this.stages = stages;
    this.coefficients = List.copyOf(coefficients);
  }

  /** The schedule at given mean temperatures of the stages. */
  static Schedule at(Course course, List<Stage> stages, List<Temperatures> means) {
    List<Coefficients> coefficients = new ArrayList<>();
    for (int number = 0; number < stages.size(); number++) {
      coefficients.add(course.coefficients(stages.get(number), means.get(number)));
    }
    return new Schedule(course, stages, coefficients);
  }

  /**
   * The schedule at other mean temperatures; this one if nothing would change.
   *
   * @param tolerance coefficients of a stage that would change by no more stay as they are
   */
  Schedule at(List<Temperatures> means, double tolerance) {
    List<Coefficients> revised = new ArrayList<>();
    boolean changed = false;
    for (int number = 0; number < stages.size(); number++) {
      Coefficients old = coefficients.get(number);
      Coefficients other = course.coefficients(stages.get(number), means.get(number));
      boolean moved = other.change(old) > tolerance;
      revised.add(moved ? other : old);
      changed |= moved;
    }
    return changed ? new Schedule(course, stages, revised) : this;
  }

  /** The largest change of a coefficient from those of another schedule of the same stages. */
  double change(Schedule other) {
    double change = 0;
    for (int number = 0; number < stages.size(); number++) {
      change = Math.max(change, coefficients.get(number).change(other.coefficients.get(number)));
    }
    return change;
  }

  @Override
  public List<Stage> stages() {
    return stages;
  }

  List<Coefficients> coefficients() {
    return coefficients;
  }

  @Override
  public Coefficients of(int stage, HeatEngine engine) {
    return coefficients.get(stage);
  }

  /** A delay has coefficients of its own. */
  @Override
  public boolean standsForLeg(int stage) {
    Stage of = stages.get(stage);
    return of.from() < course.plannedEnd(of.leg());
  }
}
