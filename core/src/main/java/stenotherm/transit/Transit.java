package stenotherm.transit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Probe;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;

/**
 * Sends a parcel on a journey.
 *
 * <p>For each leg the surface coefficients are those of its films between the mean surface
 * temperature of each face when the leg begins and the leg's mean ambient temperature; they stay
 * frozen until the leg ends.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Transit {
  private Transit() {}

  /**
   * Runs a parcel through a journey.
   *
   * @param parcel the parcel
   * @param journey the journey
   * @param variation which uncertain quantities are at an end of their range
   * @param settings how finely
   * @return the history
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
   */
  public static TransitResult run(
      Parcel parcel, Journey journey, Variation variation, TransitSettings settings) {
    return run(parcel, journey, variation, settings, ProgressListener.NONE);
  }

  /**
   * Runs a parcel through a journey, watched by a listener.
   *
   * @param parcel the parcel
   * @param journey the journey
   * @param variation which uncertain quantities are at an end of their range
   * @param settings how finely
   * @param listener told of each stored value, in simulated seconds; may stop the run
   * @return the history; partial if the outcome is not completed
   * @throws stenotherm.base.InvalidInputException if the ambient of a leg does not cover its time
   */
  public static TransitResult run(
      Parcel parcel,
      Journey journey,
      Variation variation,
      TransitSettings settings,
      ProgressListener listener) {
    return new Run(parcel, journey, variation, settings).run(listener);
  }

  /** One run. */
  private static final class Run {
    private final Parcel parcel;
    private final Journey journey;
    private final Variation variation;
    private final TransitSettings settings;
    private final HeatNetwork network;
    private final List<Probe> probes;
    private final HeatEngine engine;
    private final List<TimeFunction> powers;
    private final double[] strengths;
    private final double filmFactor;
    private final List<Double> times = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private double coldMargin = Double.POSITIVE_INFINITY;
    private double hotMargin = Double.POSITIVE_INFINITY;
    private @Nullable Snapshot coldest;
    private @Nullable Snapshot hottest;

    Run(Parcel parcel, Journey journey, Variation variation, TransitSettings settings) {
      this.parcel = parcel;
      this.journey = journey;
      this.variation = variation;
      this.settings = settings;
      this.network =
          parcel
              .at(variation.of(Factor.WALL_CONDUCTIVITY), variation.of(Factor.FILL_CONDUCTIVITY))
              .network(settings.mesh());
      this.probes = probes(parcel);
      this.engine =
          new FullEngine(
              network,
              probes,
              parcel.initialState(journey.startTemperature()),
              settings.stepping());
      this.powers = parcel.warmers().stream().map(PlacedWarmer::power).toList();
      this.strengths =
          parcel.warmers().stream()
              .mapToDouble(w -> variation.of(Factor.WARMER_STRENGTH).of(w.warmer().strength(), 1))
              .toArray();
      this.filmFactor = variation.of(Factor.SURFACE_FILM).of(Factor.FILM_FACTORS, 1);
    }

    private static List<Probe> probes(Parcel parcel) {
      List<Probe> list = new ArrayList<>();
      for (Container cup : parcel.occupied()) {
        list.add(new Probe.Mean(TransitResult.meanOf(cup.name()), cup.animalBlock()));
        list.add(new Probe.Minimum(TransitResult.coldestOf(cup.name()), cup.animalBlock()));
        list.add(new Probe.Maximum(TransitResult.hottestOf(cup.name()), cup.animalBlock()));
      }
      for (PlacedWarmer warmer : parcel.warmers()) {
        list.add(new Probe.Mean(TransitResult.meanOf(warmer.name()), warmer.name()));
        list.add(new Probe.Maximum(TransitResult.hottestOf(warmer.name()), warmer.name()));
      }
      for (Face face : Face.values()) {
        list.add(new Probe.SurfaceMean(TransitResult.surfaceOf(face), face.label()));
        list.add(new Probe.HeatFlow(TransitResult.heatThrough(face), face.label()));
      }
      return list;
    }

    TransitResult run(ProgressListener listener) {
      Outcome outcome = new Outcome.Completed();
      double[] atStart = new double[6 + powers.size()];
      double[] atEnd = new double[6 + powers.size()];
      double[] row = new double[probes.size()];
      double end = journey.duration();
      try {
        for (int number = 0; number < journey.legs().size() && outcome.isCompleted(); number++) {
          Leg leg = journey.legs().get(number);
          double from = journey.start(number);
          double to = journey.start(number + 1);
          useFilms(leg, from, to);
          double now = from;
          if (number == 0) {
            inputs(leg, now, false, atStart);
            // an instant without duration: the first stored row needs inputs, not a step
            engine.advance(1e-6, atStart, atStart);
            engine.read(row);
            store(0, row);
            now = 1e-6;
          }
          for (double stop : stops(leg, from, to)) {
            inputs(leg, now, false, atStart);
            inputs(leg, stop, true, atEnd);
            engine.advance(stop - now, atStart, atEnd);
            now = stop;
            if (Thread.currentThread().isInterrupted()) {
              // an interrupt ends the engine's interval early: its state is not that of the stop
              double last = times.get(times.size() - 1);
              outcome = new Outcome.Stopped("interrupted before the journey's end", last);
              break;
            }
            if (isStored(stop, to)) {
              engine.read(row);
              store(stop, row);
              if (listener.progress(stop, end) == ProgressListener.Signal.STOP) {
                outcome = new Outcome.Stopped("stopped before the journey's end", stop);
                break;
              }
            }
          }
        }
      } catch (IllegalStateException failure) {
        outcome = new Outcome.Failed(String.valueOf(failure.getMessage()), engine.time());
      }
      return new TransitResult(this.parcel, journey, variation, outcome, history());
    }

    private TransitResult.History history() {
      double[] stored = times.stream().mapToDouble(Double::doubleValue).toArray();
      return new TransitResult.History(
          probes,
          stored,
          rows.toArray(new double[0][]),
          coldest,
          hottest,
          engine.ledger(),
          engine.work(),
          network.solidCellCount());
    }

    private void useFilms(Leg leg, double from, double to) {
      double ambient = leg.surroundings().ambient().mean(from, to) + shift(leg);
      double[] row = new double[probes.size()];
      double[] coefficients = new double[6];
      boolean first = rows.isEmpty();
      if (!first) {
        engine.read(row);
      }
      for (Face face : Face.values()) {
        double surface =
            first ? journey.startTemperature() : row[indexOf(TransitResult.surfaceOf(face))];
        coefficients[face.ordinal()] =
            filmFactor
                * leg.surroundings()
                    .films()
                    .coefficient(
                        face,
                        leg.surroundings().orientation(),
                        surface,
                        ambient,
                        leg.surroundings().pressure());
      }
      engine.useCoefficients(coefficients);
    }

    private int indexOf(String name) {
      for (int index = 0; index < probes.size(); index++) {
        if (probes.get(index).name().equals(name)) {
          return index;
        }
      }
      throw new IllegalStateException(name);
    }

    private double shift(Leg leg) {
      return switch (variation.of(Factor.AMBIENT)) {
        case LOW -> -leg.surroundings().spread();
        case NOMINAL -> 0;
        case HIGH -> leg.surroundings().spread();
      };
    }

    /** Inputs at a time within a leg; {@code before} takes the limit from earlier times. */
    private void inputs(Leg leg, double time, boolean before, double[] into) {
      double ambient = value(leg.surroundings().ambient(), time, before) + shift(leg);
      Arrays.fill(into, 0, 6, ambient);
      for (int index = 0; index < powers.size(); index++) {
        into[6 + index] = strengths[index] * value(powers.get(index), time, before);
      }
    }

    private static double value(TimeFunction function, double time, boolean before) {
      return before ? function.before(time) : function.at(time);
    }

    /** Kinks, jumps and stored times of a leg, its end included. */
    private double[] stops(Leg leg, double from, double to) {
      TreeSet<Double> all = new TreeSet<>();
      double interval = settings.interval();
      for (long n = (long) Math.floor(from / interval) + 1; n * interval < to; n++) {
        all.add(n * interval);
      }
      for (double time : leg.surroundings().ambient().breakpoints(from, to)) {
        all.add(time);
      }
      for (TimeFunction power : powers) {
        for (double time : power.breakpoints(from, to)) {
          all.add(time);
        }
      }
      all.add(to);
      return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private boolean isStored(double time, double legEnd) {
      double interval = settings.interval();
      // the product, as in the stops: a remainder would miss intervals that are no whole numbers
      return time == legEnd || time == Math.rint(time / interval) * interval;
    }

    private void store(double time, double[] row) {
      times.add(time);
      rows.add(row.clone());
      double cold = Double.POSITIVE_INFINITY;
      double hot = Double.POSITIVE_INFINITY;
      List<Container> occupied = parcel.occupied();
      for (int c = 0; c < occupied.size(); c++) {
        var alarm =
            occupied.get(c).occupant().orElseThrow().animal().tolerance().band(Limit.ALARM).range();
        cold = Math.min(cold, row[3 * c + 1] - alarm.low());
        hot = Math.min(hot, alarm.high() - row[3 * c + 2]);
      }
      if (cold < coldMargin || hot < hotMargin) {
        Snapshot snapshot = new Snapshot(time, engine.field());
        if (cold < coldMargin) {
          coldMargin = cold;
          coldest = snapshot;
        }
        if (hot < hotMargin) {
          hotMargin = hot;
          hottest = snapshot;
        }
      }
    }
  }
}
