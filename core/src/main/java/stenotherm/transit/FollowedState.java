package stenotherm.transit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.TemperatureField;

/** Coefficients that are taken from the state as a run meets it: for what steps every cell. */
final class FollowedState implements Regime {
  /** Time between two refreshes of what is to follow temperatures all the time [s]. */
  private static final double REFRESH = 300;

  /**
   * Times after a leg's beginning at which others are taken again [s]: surfaces, walls and fill
   * settle one after another, ever more slowly.
   */
  private static final List<Double> SETTLING = List.of(900.0, 3600.0, 14400.0);

  private final Course course;
  private final FullEngine engine;
  private final VariedCells cells;
  private final boolean live;
  private final List<Stage> stages;

  /**
   * Follows an engine.
   *
   * @param live whether films and air that convects are taken anew every few minutes while the
   *     engine follows the laws of materials by itself; else all are frozen until taken again
   */
  FollowedState(Course course, FullEngine engine, VariedCells cells, boolean live) {
    this.course = course;
    this.engine = engine;
    this.cells = cells;
    this.live = live;
    this.stages = course.stages(this::splits);
  }

  private Set<Double> splits(int leg) {
    Set<Double> times = new HashSet<>();
    double start = course.journey().start(leg);
    if (live) {
      Course.addMultiples(times, REFRESH, start, course.journey().start(leg + 1));
    } else {
      SETTLING.forEach(after -> times.add(start + after));
    }
    return times;
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
    double[] films = films(stage, now.surfaces());
    Coefficients taken = new Coefficients(films, course.conductivities(leg, now.blocks()));
    HeatNetwork network = cells.at(taken);
    engine.use(live ? network : network.withConductivitiesAt(field));
    engine.useCoefficients(films);
    course.outside(leg).use(films);
    return taken;
  }

  /** Films; where they stand for more than a moment, at the mean ambient of what is planned. */
  private double[] films(int stage, double[] surfaces) {
    int leg = stages.get(stage).leg();
    Outside outside = course.outside(leg);
    if (live && !standsForLeg(stage)) {
      return outside.coefficients(surfaces, stages.get(stage).from());
    }
    // what is planned, since a delay must not change what happens before it
    return outside.coefficients(surfaces, course.journey().start(leg), course.plannedEnd(leg));
  }

  @Override
  public boolean standsForLeg(int stage) {
    Stage of = stages.get(stage);
    return !live || of.from() == course.journey().start(of.leg());
  }
}
