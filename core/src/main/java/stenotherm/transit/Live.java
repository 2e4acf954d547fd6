package stenotherm.transit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stenotherm.conduction.FullEngine;

/**
 * Coefficients that follow the temperatures: films and air that convects are taken anew every few
 * minutes, the engine follows the laws of materials by itself.
 */
final class Live implements Regime {
  /** Time between two refreshes [s]. */
  private static final double REFRESH = 300;

  private final Course course;
  private final FullEngine engine;
  private final VariedCells cells;
  private final List<Stage> stages;

  Live(Course course, FullEngine engine, VariedCells cells) {
    this.course = course;
    this.engine = engine;
    this.cells = cells;
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
  public Coefficients enter(int stage) {
    int leg = stages.get(stage).leg();
    double now = stages.get(stage).from();
    Temperatures temperatures = course.temperatures(engine.field());
    double[] films =
        standsForLeg(stage)
            ? course.outside(leg).coefficients(temperatures.surfaces(), now, course.plannedEnd(leg))
            : course.outside(leg).coefficients(temperatures.surfaces(), now);
    Coefficients taken = new Coefficients(films, course.conductivities(leg, temperatures.blocks()));
    engine.use(cells.at(taken));
    engine.useCoefficients(films);
    course.outside(leg).use(films);
    return taken;
  }

  @Override
  public boolean standsForLeg(int stage) {
    return stages.get(stage).from() == course.journey().start(stages.get(stage).leg());
  }
}
