package stenotherm.transit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.Point;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;

/**
 * Sends a parcel on a journey.
 *
 * <p>For each leg the surface coefficients are those of its films between the mean surface
 * temperature of each face when the leg begins and the mean ambient temperature of its planned
 * duration; a face in the sun counts with its mean sol-air temperature. Conductivities that depend
 * on temperature are those at the temperature of each cell, those of air that convects at the mean
 * temperature of its block and by how the parcel lies. All of them are frozen, and taken again as
 * the parcel settles: a quarter of an hour, an hour and four hours after the leg began. With
 * {@linkplain stenotherm.conduction.IntegratorSettings#live live} conductivities they follow the
 * temperatures, films and air every five minutes.
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

  /** How much warmer the middle of a cavity's floor is than that of its ceiling, and their mean. */
  record FillDifference(double kelvin, double meanTemperature) {}

  /** One run. */
  private static final class Run {
    /** Time between two refreshes of live coefficients [s]. */
    private static final double REFRESH = 300;

    /**
     * Times after a leg's beginning at which frozen coefficients are taken again [s]: surfaces,
     * walls and fill settle one after another, ever more slowly.
     */
    private static final List<Double> SETTLING = List.of(900.0, 3600.0, 14400.0);

    private final Parcel parcel;
    private final Journey journey;
    private final Variation variation;
    private final TransitSettings settings;
    private final boolean live;

    /** The packing with walls and fill at the ends of the variation. */
    private final Parcel varied;

    private final FaceParts parts;
    private final HeatNetwork network;
    private final List<Port.BoundaryPort> ports;
    private final Set<String> air;
    private final List<String> changing;
    private final List<Probe> probes;
    private final int firstSurface;
    private final int firstMean;
    private final int firstInner;
    private final @Nullable FillDifference[] fill;
    private final HeatEngine engine;
    private final List<TimeFunction> powers;
    private final double[] strengths;
    private final List<Double> times = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private final List<LegCoefficients> coefficients = new ArrayList<>();
    private double coldMargin = Double.POSITIVE_INFINITY;
    private double hotMargin = Double.POSITIVE_INFINITY;
    private @Nullable Snapshot coldest;
    private @Nullable Snapshot hottest;

    Run(Parcel parcel, Journey journey, Variation variation, TransitSettings settings) {
      this.parcel = parcel;
      this.journey = journey;
      this.variation = variation;
      this.settings = settings;
      this.live = settings.stepping().conductivities() == IntegratorSettings.Conductivities.LIVE;
      this.varied =
          parcel.at(variation.of(Factor.WALL_CONDUCTIVITY), variation.of(Factor.FILL_CONDUCTIVITY));
      this.parts = new FaceParts(journey, parcel.outer());
      this.network = varied.network(settings.mesh(), parts.patches());
      this.ports = network.boundaryPorts();
      this.air = varied.conductivities(Orientation.LID_UP, journey.startTemperature()).keySet();
      this.changing = changing();
      List<Probe> all = new ArrayList<>(contents(parcel));
      this.firstSurface = all.size();
      for (Port.BoundaryPort port : ports) {
        all.add(new Probe.SurfaceMean(TransitResult.surfaceOf(port.name()), port.name()));
        all.add(new Probe.HeatFlow(TransitResult.heatThrough(port.name()), port.name()));
      }
      this.firstMean = all.size();
      changing.forEach(block -> all.add(new Probe.Mean("mean of block " + block, block)));
      this.firstInner = all.size();
      for (Face face : Face.values()) {
        all.add(new Probe.At("inside " + face.label(), middleOf(parcel.cavity(), face)));
      }
      this.fill = new FillDifference[journey.legs().size()];
      this.probes = List.copyOf(all);
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
    }

    /** Blocks whose conductivity depends on their temperature or on how the parcel lies. */
    private List<String> changing() {
      List<String> names = new ArrayList<>();
      List<Block> blocks = network.grid().layout().blocks();
      for (int index = 0; index < blocks.size(); index++) {
        if (blocks.get(index) instanceof Block.Solid solid
            && network.grid().cellsOf(index).length > 0
            && (air.contains(solid.name()) || follows(solid.material().behaviour()))) {
          names.add(solid.name());
        }
      }
      return List.copyOf(names);
    }

    private static boolean follows(Behaviour behaviour) {
      return behaviour instanceof Behaviour.Corrected || behaviour instanceof Behaviour.Voids;
    }

    private static Point middleOf(Box box, Face face) {
      double[] middle = {box.centre().x(), box.centre().y(), box.centre().z()};
      middle[face.axis().ordinal()] = box.at(face);
      return new Point(middle[0], middle[1], middle[2]);
    }

    private static List<Probe> contents(Parcel parcel) {
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
      for (PlacedPack pack : parcel.packs()) {
        list.add(new Probe.Mean(TransitResult.meanOf(pack.name()), pack.name()));
        if (pack.pack().melts()) {
          list.add(new Probe.LiquidFraction(TransitResult.liquidOf(pack.name()), pack.name()));
        }
      }
      return list;
    }

    TransitResult run(ProgressListener listener) {
      Outcome outcome = new Outcome.Completed();
      double[] atStart = new double[ports.size() + powers.size()];
      double[] atEnd = new double[ports.size() + powers.size()];
      double[] row = new double[probes.size()];
      double end = journey.duration();
      try {
        for (int number = 0; number < journey.legs().size() && outcome.isCompleted(); number++) {
          Leg leg = journey.legs().get(number);
          double from = journey.start(number);
          double to = journey.start(number + 1);
          Outside outside = new Outside(leg, ports, parts, variation);
          coefficients.add(settle(number, outside));
          double now = from;
          if (number == 0) {
            inputs(outside, now, false, atStart);
            // an instant without duration: the first stored row needs inputs, not a step
            engine.advance(1e-6, atStart, atStart);
            engine.read(row);
            store(0, row);
            now = 1e-6;
          }
          double refreshed = from;
          for (double stop : stops(outside, from, to)) {
            if (live && now >= refreshed + REFRESH) {
              refresh(leg, outside, now);
              refreshed = now;
            } else if (!live && settlesAt(now, from)) {
              coefficients.set(number, settle(number, outside));
            }
            inputs(outside, now, false, atStart);
            inputs(outside, stop, true, atEnd);
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
      return new TransitResult(parcel, journey, variation, outcome, history());
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
          network.solidCellCount(),
          ports,
          parts,
          coefficients,
          TransitCautions.of(parcel, journey, fill));
    }

    private static boolean settlesAt(double time, double from) {
      return SETTLING.stream().anyMatch(after -> time == from + after);
    }

    /** Takes the coefficients for a leg from the state now. */
    private LegCoefficients settle(int number, Outside outside) {
      Leg leg = journey.legs().get(number);
      double from = journey.start(number);
      double[] row = read();
      Map<String, Double> conductivities = ofAir(leg.surroundings().orientation(), row);
      HeatNetwork settled = network.withConductivities(conductivities);
      if (live) {
        engine.use(settled);
      } else {
        engine.use(settled.withConductivitiesAt(engine.field()));
        conductivities.putAll(ofMeans(row));
      }
      // the mean over what is planned: a delay must not change what happens before it
      double[] surfaces = outside.coefficients(surfaces(row), from, from + leg.duration());
      engine.useCoefficients(surfaces);
      return new LegCoefficients(number, byName(surfaces), conductivities);
    }

    private Map<String, Double> byName(double[] surfaces) {
      Map<String, Double> byName = new LinkedHashMap<>();
      for (int port = 0; port < surfaces.length; port++) {
        byName.put(ports.get(port).name(), surfaces[port]);
      }
      return byName;
    }

    /** Takes the coefficients from the state now; laws of materials are followed by the engine. */
    private void refresh(Leg leg, Outside outside, double now) {
      double[] row = read();
      engine.useCoefficients(outside.coefficients(surfaces(row), now));
      if (!air.isEmpty()) {
        engine.use(network.withConductivities(ofAir(leg.surroundings().orientation(), row)));
      }
    }

    private double[] read() {
      double[] row = new double[probes.size()];
      engine.read(row);
      return row;
    }

    private double[] surfaces(double[] row) {
      double[] surfaces = new double[ports.size()];
      for (int port = 0; port < surfaces.length; port++) {
        surfaces[port] = row[firstSurface + 2 * port];
      }
      return surfaces;
    }

    /** Conductivities of air that convects, at the mean temperatures of its blocks. */
    private Map<String, Double> ofAir(Orientation orientation, double[] row) {
      Map<String, Double> all = new LinkedHashMap<>();
      for (int index = 0; index < changing.size(); index++) {
        String name = changing.get(index);
        if (air.contains(name)) {
          double mean = row[firstMean + index];
          all.put(name, varied.conductivities(orientation, mean).get(name));
        }
      }
      return all;
    }

    /** Conductivities that depend on temperature, at the mean temperatures of their blocks. */
    private Map<String, Double> ofMeans(double[] row) {
      Map<String, Double> all = new LinkedHashMap<>();
      for (int index = 0; index < changing.size(); index++) {
        String name = changing.get(index);
        if (!air.contains(name)) {
          all.put(name, material(name).conductivityAt(row[firstMean + index]));
        }
      }
      return all;
    }

    private Material material(String block) {
      Layout layout = network.grid().layout();
      return ((Block.Solid) layout.blocks().get(layout.indexOf(block))).material();
    }

    /** Inputs at a time within a leg; {@code before} takes the limit from earlier times. */
    private void inputs(Outside outside, double time, boolean before, double[] into) {
      outside.inputs(time, before, into);
      for (int index = 0; index < powers.size(); index++) {
        into[ports.size() + index] =
            strengths[index] * Outside.value(powers.get(index), time, before);
      }
    }

    /** Kinks, jumps and stored times of a leg, its end included. */
    private double[] stops(Outside outside, double from, double to) {
      TreeSet<Double> all = new TreeSet<>();
      addMultiples(all, settings.interval(), from, to);
      if (live) {
        addMultiples(all, REFRESH, from, to);
      } else {
        SETTLING.stream().map(after -> from + after).filter(time -> time < to).forEach(all::add);
      }
      List<TimeFunction> courses = new ArrayList<>(outside.courses());
      courses.addAll(powers);
      for (TimeFunction course : courses) {
        for (double time : course.breakpoints(from, to)) {
          all.add(time);
        }
      }
      all.add(to);
      return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void addMultiples(Set<Double> all, double interval, double from, double to) {
      for (long n = (long) Math.floor(from / interval) + 1; n * interval < to; n++) {
        all.add(n * interval);
      }
    }

    /** Keeps the moment of each leg when the cavity is most warmer below than above. */
    private void noteFill(int leg, double[] row) {
      Orientation orientation = journey.legs().get(leg).surroundings().orientation();
      double below = row[firstInner + orientation.down().ordinal()];
      double above = row[firstInner + orientation.up().ordinal()];
      FillDifference now = new FillDifference(below - above, (below + above) / 2);
      FillDifference kept = fill[leg];
      if (kept == null || now.kelvin() > kept.kelvin()) {
        fill[leg] = now;
      }
    }

    private boolean isStored(double time, double legEnd) {
      double interval = settings.interval();
      // the product, as in the stops: a remainder would miss intervals that are no whole numbers
      return time == legEnd || time == Math.rint(time / interval) * interval;
    }

    private void store(double time, double[] row) {
      times.add(time);
      rows.add(row.clone());
      noteFill(journey.legUntil(time), row);
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
