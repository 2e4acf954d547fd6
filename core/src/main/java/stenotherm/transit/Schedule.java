package stenotherm.transit;

import java.util.List;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.modal.ModalConfiguration;
import stenotherm.modal.ModalEngine;

/**
 * The coefficients of each stage, found before the run that uses them.
 *
 * @param stages the stages from sealing until the end
 * @param settings what holds in each of them
 */
record Schedule(List<Stage> stages, List<Setting> settings) {
  /**
   * Coefficients with the modes under them.
   *
   * @param coefficients the coefficients
   * @param modes the reduced model under them
   */
  record Setting(Coefficients coefficients, ModalConfiguration modes) {
    /** The same setting, cheaper to read. */
    Setting forManyReadings() {
      return new Setting(coefficients, modes.forManyReadings());
    }
  }

  /** Copies the lists. */
  Schedule {
    stages = List.copyOf(stages);
    settings = List.copyOf(settings);
  }

  /** A delay has coefficients of its own. */
  private boolean standsForLeg(int stage, Course course) {
    Stage of = stages.get(stage);
    return of.from() < course.plannedEnd(of.leg());
  }

  /** This schedule on a reduced model. */
  Regime on(ModalEngine engine, Course course) {
    return new On(course) {
      @Override
      void use(Setting setting) {
        engine.use(setting.modes());
      }
    };
  }

  /**
   * This schedule with every cell stepped.
   *
   * @param reference network that was reduced
   * @param conductivities those of the blocks that vary in it [W/(m K)]
   */
  Regime on(FullEngine engine, Course course, HeatNetwork reference, double[] conductivities) {
    return new On(course) {
      @Override
      void use(Setting setting) {
        double[] factors = setting.coefficients().factors(conductivities);
        engine.use(reference.withFactors(course.body().named(factors)));
        engine.useCoefficients(setting.coefficients().films());
      }
    };
  }

  /** This schedule on an engine. */
  private abstract class On implements Regime {
    private final Course course;

    On(Course course) {
      this.course = course;
    }

    abstract void use(Setting setting);

    @Override
    public List<Stage> stages() {
      return stages;
    }

    @Override
    public Coefficients enter(int stage) {
      Setting setting = settings.get(stage);
      use(setting);
      course.outside(stages.get(stage).leg()).use(setting.coefficients().films());
      return setting.coefficients();
    }

    @Override
    public boolean standsForLeg(int stage) {
      return Schedule.this.standsForLeg(stage, course);
    }
  }
}
