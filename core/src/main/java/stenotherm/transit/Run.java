package stenotherm.transit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stenotherm.air.GasNetwork;
import stenotherm.base.Outcome;
import stenotherm.conduction.HeatEngine;

/** An engine that goes through a course. */
final class Run {
  /** A step too short to change anything: the first stored row needs inputs [s]. */
  private static final double INSTANT = 1e-6;

  /**
   * Longest step of what burns and breathes inside, where results are wanted [s]. Measured beside
   * steps of 15 s, on three packings in three kinds of weather: 0.04 K for a gecko of 40 g, 0.16 K
   * for a frog of 3 g, 0.07 % of oxygen.
   */
  static final double FINE_STEP = 450;

  /** The same where means over hours are wanted. */
  static final double COARSE_STEP = 900;

  private final Course course;
  private final InnerClimate climate;
  private final double longest;
  private final Regime regime;
  private final HeatEngine engine;
  private final double interval;
  private final double[] atStart;
  private final double[] atEnd;

  /** Those that stand for each leg begun. */
  private final List<Coefficients> coefficients = new ArrayList<>();

  private double now;

  /**
   * Starts.
   *
   * @param longest longest step of what burns and breathes inside [s]
   */
  Run(Course course, Regime regime, HeatEngine engine, double interval, double longest) {
    this.course = course;
    this.climate = new InnerClimate(course, engine, longest);
    this.longest = longest;
    this.regime = regime;
    this.engine = engine;
    this.interval = interval;
    this.atStart = new double[course.body().inputCount()];
    this.atEnd = new double[course.body().inputCount()];
  }

  /** What is done on the way. */
  interface Visitor {
    /** At the start, under the inputs that hold from then on. */
    default void start() {}

    /** When the coefficients of a stage hold. */
    default void begin() {}

    /** After each stop of a stage; returns how the run ended if it is not to go on. */
    default @Nullable Outcome stop(Stage stage, double time) {
      return null;
    }

    /** When a stage is over. */
    default void end(Stage stage) {}
  }

  /** Goes from sealing to the end. */
  Outcome go(Visitor visitor) {
    List<Stage> stages = regime.stages();
    for (int number = 0; number < stages.size(); number++) {
      Stage stage = stages.get(number);
      take(number);
      climate.enter(stage.leg());
      visitor.begin();
      if (number == 0) {
        course.inputs(stage.leg(), now, false, atStart);
        climate.addAtEnd(atStart);
        engine.advance(INSTANT, atStart, atStart);
        climate.hold(INSTANT);
        visitor.start();
        now = INSTANT;
      }
      for (double stop : course.stops(stage, interval)) {
        advance(stage.leg(), stop);
        Outcome outcome = visitor.stop(stage, stop);
        if (outcome != null) {
          return outcome;
        }
      }
      visitor.end(stage);
    }
    return new Outcome.Completed();
  }

  /** Advances to a stop, in steps that the climate inside can follow. */
  private void advance(int leg, double stop) {
    while (now < stop) {
      int steps = (int) Math.ceil((stop - now) / climate.longestStep(now, longest));
      double to = steps == 1 ? stop : now + (stop - now) / steps;
      // a kink may lie next to a stored time
      boolean isMoment = to - now < GasNetwork.STEPS.low();
      if (!isMoment) {
        climate.step(now, to);
      }
      course.inputs(leg, now, false, atStart);
      course.inputs(leg, to, true, atEnd);
      if (isMoment) {
        climate.addAtEnd(atStart);
        climate.hold(to - now);
      } else {
        climate.addAtStart(atStart);
      }
      climate.addAtEnd(atEnd);
      engine.advance(to - now, atStart, atEnd);
      if (!isMoment) {
        climate.follow(to - now);
      }
      now = to;
    }
  }

  /** What burns and breathes inside. */
  InnerClimate climate() {
    return climate;
  }

  /** Tells whether a stop is a multiple of an interval, or the end of a leg or its planned end. */
  static boolean isStored(Course course, Stage stage, double time, double interval) {
    // the product, as in the stops: a remainder would miss intervals that are no whole numbers
    return time == course.journey().start(stage.leg() + 1)
        || time == course.plannedEnd(stage.leg())
        || time == Math.rint(time / interval) * interval;
  }

  private void take(int number) {
    int leg = regime.stages().get(number).leg();
    Coefficients taken = regime.enter(number);
    if (regime.standsForLeg(number)) {
      if (coefficients.size() > leg) {
        coefficients.set(leg, taken);
      } else {
        coefficients.add(taken);
      }
    }
  }

  /** Coefficients of the legs that were begun. */
  List<LegCoefficients> coefficients() {
    List<LegCoefficients> all = new ArrayList<>();
    for (int leg = 0; leg < coefficients.size(); leg++) {
      all.add(coefficients.get(leg).ofLeg(leg, course.body()));
    }
    return all;
  }
}
