package stenotherm.transit;

import static stenotherm.transit.TransitOutput.OutputQuantity.COLDEST;
import static stenotherm.transit.TransitOutput.OutputQuantity.HOTTEST;
import static stenotherm.transit.TransitOutput.OutputQuantity.INSIDE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import stenotherm.animal.Limit;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.ListenerGuard;
import stenotherm.base.Orientation;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.TemperatureField;
import stenotherm.parcel.Container;

/** What a run stores on its way. */
class Recorder implements Run.Visitor {
  private final Course course;
  private final HeatEngine engine;
  private final Camera camera;
  private final double interval;
  private final ListenerGuard listener;
  private final List<Double> times = new ArrayList<>();
  private final List<double[]> rows = new ArrayList<>();
  private final List<double[]> climateRows = new ArrayList<>();
  private @Nullable InnerClimate climate;
  private final @Nullable FillDifference[] fill;
  private final int[] inside = new int[Face.values().length];
  private final List<Watched> watched = new ArrayList<>();
  private final Moment coldest = new Moment();
  private final Moment hottest = new Moment();

  /** Keeps what is needed to make the field of a moment later. */
  interface Camera {
    /** Keeps the present state of the engine; its field is made when the result is asked for it. */
    Supplier<TemperatureField> take(double time);
  }

  /**
   * How much warmer the middle of the cavity's lowest face is than that of its highest, and their
   * mean.
   */
  record FillDifference(double kelvin, double meanTemperature) {}

  /** An animal's extremes in a row, and its alarm band. */
  private record Watched(int coldest, int hottest, Range alarm) {}

  /** The moment when a margin was smallest. */
  private static final class Moment {
    private double margin = Double.POSITIVE_INFINITY;
    private @Nullable Snapshot snapshot;

    void offer(double offered, double at, Camera camera) {
      if (offered < margin) {
        margin = offered;
        snapshot = new Snapshot(at, camera.take(at));
      }
    }
  }

  Recorder(
      Course course, HeatEngine engine, Camera camera, double interval, ProgressListener listener) {
    this.course = course;
    this.engine = engine;
    this.camera = camera;
    this.interval = interval;
    this.listener = new ListenerGuard(listener);
    this.fill = new FillDifference[course.journey().legs().size()];
    ParcelBody body = course.body();
    for (Face face : Face.values()) {
      inside[face.ordinal()] = body.position(INSIDE, face.label());
    }
    for (Container cup : body.parcel().occupied()) {
      Range alarm = cup.occupant().orElseThrow().animal().tolerance().band(Limit.ALARM).range();
      watched.add(
          new Watched(
              body.position(COLDEST, cup.name()), body.position(HOTTEST, cup.name()), alarm));
    }
  }

  /** Follows a run to its end, whatever that is. */
  Outcome outcome(Run run) {
    climate = run.climate();
    try {
      return run.go(this);
    } catch (CancellationException interrupt) {
      listener.passOn();
      return interrupted();
    } catch (IllegalStateException failure) {
      listener.passOn();
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
      return interrupted();
    }
    if (Run.isStored(course, stage, time, interval)) {
      store(time);
      if (listener.progress(time, course.journey().duration()) == ProgressListener.Signal.STOP) {
        return new Outcome.Stopped("stopped by the listener " + after(time), time);
      }
    }
    return null;
  }

  /** An interrupt ends the engine's interval early: its state is not that of the stop. */
  private Outcome interrupted() {
    double last = times.isEmpty() ? 0 : times.get(times.size() - 1);
    return new Outcome.Stopped("interrupted " + after(last), last);
  }

  private String after(double time) {
    return "after "
        + Checks.show(Times.toHours(time), "h")
        + " of "
        + Checks.show(Times.toHours(course.journey().duration()), "h");
  }

  private InnerClimate climate() {
    return Objects.requireNonNull(climate, "no run was followed");
  }

  /** Stores what the engine reads now. */
  private void store(double time) {
    double[] row = new double[course.body().outputs().size()];
    engine.read(row);
    times.add(time);
    rows.add(row);
    climateRows.add(climate().read(time));
    noteFill(course.journey().legUntil(time), row);
    double cold = Double.POSITIVE_INFINITY;
    double hot = Double.POSITIVE_INFINITY;
    for (Watched animal : watched) {
      cold = Math.min(cold, row[animal.coldest()] - animal.alarm().low());
      hot = Math.min(hot, animal.alarm().high() - row[animal.hottest()]);
    }
    coldest.offer(cold, time, camera);
    hottest.offer(hot, time, camera);
  }

  /** Keeps the largest excess of the cavity's lowest face over its highest in each leg. */
  private void noteFill(int leg, double[] row) {
    Orientation orientation = course.journey().legs().get(leg).surroundings().orientation();
    double below = row[inside[orientation.down().ordinal()]];
    double above = row[inside[orientation.up().ordinal()]];
    FillDifference now = new FillDifference(below - above, (below + above) / 2);
    FillDifference kept = fill[leg];
    if (kept == null || now.kelvin() > kept.kelvin()) {
      fill[leg] = now;
    }
  }

  /** All that was stored. */
  TransitResult result(Outcome outcome, List<LegCoefficients> coefficients, EngineChoice choice) {
    TransitResult.History history =
        new TransitResult.History(
            times.stream().mapToDouble(Double::doubleValue).toArray(),
            rows.toArray(new double[0][]),
            coldest.snapshot,
            hottest.snapshot,
            Arrays.asList(fill),
            new TransitResult.Climate(
                course.body().climate().columns,
                climateRows.toArray(new double[0][]),
                climate().breathing()));
    TransitResult.Account account =
        new TransitResult.Account(engine.ledger(), engine.work(), choice, coefficients);
    return new TransitResult(
        course.body(), course.journey(), course.variation(), outcome, history, account);
  }
}
