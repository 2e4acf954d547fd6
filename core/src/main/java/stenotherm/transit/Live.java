package stenotherm.transit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stenotherm.conduction.HeatEngine;

/**
 * Coefficients that follow the temperatures: films and air that convects are taken anew every few
 * minutes, the engine follows the laws of materials by itself.
 */
final class Live implements Regime {
  /** Time between two refreshes [s]. */
  private static final double REFRESH = 300;

  private final Course course;
  private final List<Stage> stages;

  Live(Course course) {
    this.course = course;
    this.stages =
        course.stages(
            leg -> {
              Set<Double> times = new HashSet<>();
              Course.addMultiples(
                  times, REFRESH, course.journey().start(leg), course.journey().start(leg + 1));
              return times;
            });
  }

  @Override
  public List<Stage> stages() {
    return stages;
  }

  @Override
  public Coefficients of(int stage, HeatEngine engine) {
    int leg = stages.get(stage).leg();
    double now = stages.get(stage).from();
    Temperatures temperatures = course.temperatures(engine.field());
    double[] films =
        standsForLeg(stage)
            ? course.outside(leg).coefficients(temperatures.surfaces(), now, course.plannedEnd(leg))
            : course.outside(leg).coefficients(temperatures.surfaces(), now);
    return course.live(leg, temperatures, films);
  }

  @Override
  public boolean standsForLeg(int stage) {
    return stages.get(stage).from() == course.journey().start(stages.get(stage).leg());
  }
}
