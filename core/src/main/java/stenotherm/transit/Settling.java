package stenotherm.transit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.TemperatureField;

/**
 * Coefficients of the full solver: taken from its state as a leg begins and again as the parcel
 * settles, constant in between.
 */
final class Settling implements Regime {
  /**
   * Times after a leg's beginning at which they are taken again [s]: surfaces, walls and fill
   * settle one after another, ever more slowly.
   */
  private static final List<Double> SETTLING = List.of(900.0, 3600.0, 14400.0);

  private final Course course;
  private final FullEngine engine;
  private final VariedCells cells;
  private final List<Stage> stages;

  Settling(Course course, FullEngine engine, VariedCells cells) {
    this.course = course;
    this.engine = engine;
    this.cells = cells;
    this.stages =
        course.stages(
            leg -> {
              Set<Double> times = new HashSet<>();
              SETTLING.forEach(after -> times.add(course.journey().start(leg) + after));
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
    TemperatureField field = engine.field();
    Temperatures now = course.temperatures(field);
    // the mean over what is planned: a delay must not change what happens before it
    double[] films =
        course
            .outside(leg)
            .coefficients(now.surfaces(), course.journey().start(leg), course.plannedEnd(leg));
    Coefficients taken = new Coefficients(films, course.conductivities(leg, now.blocks()));
    engine.use(cells.at(taken).withConductivitiesAt(field));
    engine.useCoefficients(films);
    course.outside(leg).use(films);
    return taken;
  }

  @Override
  public boolean standsForLeg(int stage) {
    return true;
  }
}
