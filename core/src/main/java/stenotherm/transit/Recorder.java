package stenotherm.transit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stenotherm.animal.Limit;
import stenotherm.base.Orientation;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.conduction.HeatEngine;
import stenotherm.modal.ModalEngine;
import stenotherm.parcel.Container;

/** What a run stores on its way. */
final class Recorder implements Run.Visitor {
  private final Course course;
  private final HeatEngine engine;
  private final double interval;
  private final ProgressListener listener;
  private final List<Double> times = new ArrayList<>();
  private final List<double[]> rows = new ArrayList<>();
  private final Transit.@Nullable FillDifference[] fill;
  private final Moment coldest;
  private final Moment hottest;

  /** The state when a margin was smallest; its field is put together at the end. */
  private static final class Moment {
    private double margin = Double.POSITIVE_INFINITY;
    private double time;
    private HeatEngine.@Nullable State state;

    void offer(double offered, double at, HeatEngine engine) {
      if (!(offered < margin)) {
        return;
      }
      margin = offered;
      time = at;
      if (state == null) {
        state = engine.save();
      } else {
        engine.save(state);
      }
    }

    @Nullable Snapshot snapshot(HeatEngine engine) {
      if (state == null) {
        return null;
      }
      engine.restore(state);
      return new Snapshot(time, engine.field());
    }
  }

  Recorder(Course course, HeatEngine engine, double interval, ProgressListener listener) {
    this.course = course;
    this.engine = engine;
    this.interval = interval;
    this.listener = listener;
    this.fill = new Transit.FillDifference[course.journey().legs().size()];
    this.coldest = new Moment();
    this.hottest = new Moment();
  }

  /** Follows a run to its end, whatever that is. */
  Outcome outcome(Run run) {
    try {
      return run.go(this);
    } catch (IllegalStateException failure) {
      return new Outcome.Failed(String.valueOf(failure.getMessage()), engine.time());
    }
  }

  @Override
  public void start() {
    store(0);
  }

  @Override
  public @Nullable Outcome stop(Stage stage, double time) {
    if (Thread.currentThread().isInterrupted()) {
      // an interrupt ends the engine's interval early: its state is not that of the stop
      double last = times.get(times.size() - 1);
      return new Outcome.Stopped("interrupted before the journey's end", last);
    }
    if (isStored(stage, time)) {
      store(time);
      if (listener.progress(time, course.journey().duration()) == ProgressListener.Signal.STOP) {
        return new Outcome.Stopped("stopped before the journey's end", time);
      }
    }
    return null;
  }

  private boolean isStored(Stage stage, double time) {
    // the product, as in the stops: a remainder would miss intervals that are no whole numbers
    return time == course.journey().start(stage.leg() + 1)
        || time == Math.rint(time / interval) * interval;
  }

  /** Stores what the engine reads now. */
  private void store(double time) {
    double[] row = new double[course.probes().size()];
    if (engine instanceof ModalEngine modal) {
      modal.readEverywhere(row);
    } else {
      engine.read(row);
    }
    times.add(time);
    rows.add(row);
    noteFill(course.journey().legUntil(time), row);
    double cold = Double.POSITIVE_INFINITY;
    double hot = Double.POSITIVE_INFINITY;
    List<Container> occupied = course.parcel().occupied();
    for (int cup = 0; cup < occupied.size(); cup++) {
      Range alarm =
          occupied.get(cup).occupant().orElseThrow().animal().tolerance().band(Limit.ALARM).range();
      cold = Math.min(cold, row[course.coldest(cup)] - alarm.low());
      hot = Math.min(hot, alarm.high() - row[course.hottest(cup)]);
    }
    coldest.offer(cold, time, engine);
    hottest.offer(hot, time, engine);
  }

  /** Keeps the moment of each leg when the cavity is most warmer below than above. */
  private void noteFill(int leg, double[] row) {
    Orientation orientation = course.journey().legs().get(leg).surroundings().orientation();
    double below = row[course.inner(orientation.down())];
    double above = row[course.inner(orientation.up())];
    Transit.FillDifference now = new Transit.FillDifference(below - above, (below + above) / 2);
    Transit.FillDifference kept = fill[leg];
    if (kept == null || now.kelvin() > kept.kelvin()) {
      fill[leg] = now;
    }
  }

  /** All that was stored. Leaves the engine in another state. */
  TransitResult result(Outcome outcome, List<LegCoefficients> coefficients, EngineChoice choice) {
    return new TransitResult(
        course.parcel(),
        course.journey(),
        course.variation(),
        outcome,
        new TransitResult.History(
            course.probes(),
            times.stream().mapToDouble(Double::doubleValue).toArray(),
            rows.toArray(new double[0][]),
            engine.ledger(),
            engine.work(),
            coldest.snapshot(engine),
            hottest.snapshot(engine),
            course.network().solidCellCount(),
            course.ports(),
            course.parts(),
            coefficients,
            choice,
            TransitCautions.of(course.parcel(), course.journey(), fill)));
  }
}
