package stenotherm.validation.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stenotherm.base.Face;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.HeatNetworkBuilder;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.PortIndex;
import stenotherm.conduction.Probe;
import stenotherm.grid.MeshControl;
import stenotherm.modal.ReducedModel;

/**
 * The journey of {@link ReferenceTransient} through the ports of an engine, in 192 steps of 15 min,
 * with the animal's own heat besides: eight inputs, eight outputs read after each step, three sets
 * of films.
 */
final class PortJourney {
  /** Heat of the animal [W], a round value. */
  private static final double OWN_HEAT = 0.02;

  private final HeatNetwork network;
  private final List<Probe> probes = ReferenceTransient.probes();
  private final int steps;
  private final double[][] atStart;
  private final double[][] atEnd;

  /** Surface coefficients of each step; the same array where they are the same. */
  private final double[][] coefficients;

  private final List<double[]> filmSets = new ArrayList<>();

  PortJourney(MeshControl mesh) {
    HeatNetworkBuilder builder = HeatNetwork.builder(ReferenceTransient.layout(), mesh);
    for (Face face : Face.values()) {
      builder.boundary(face, BoundaryKind.CONVECTION);
    }
    ReferenceTransient.thinResistances().forEach(builder::thinResistance);
    network = builder.source("warmer").source("animal").build();
    steps = (int) Math.round(ReferenceTransient.HOURS * 3600 / ReferenceTransient.STORED_EVERY);
    atStart = new double[steps][];
    atEnd = new double[steps][];
    coefficients = new double[steps][];
    PortIndex index = PortIndex.of(network.inputs());
    TimeFunction ambient = ReferenceTransient.ambient();
    TimeFunction power = ReferenceTransient.power();
    for (int step = 0; step < steps; step++) {
      double from = step * ReferenceTransient.STORED_EVERY;
      double to = from + ReferenceTransient.STORED_EVERY;
      atStart[step] = inputs(index, ambient.at(from), power.at(from));
      atEnd[step] = inputs(index, ambient.before(to), power.before(to));
      coefficients[step] = filmSet(index, from);
    }
  }

  private static double[] inputs(PortIndex index, double ambient, double power) {
    Map<String, Double> values = new HashMap<>(Map.of("warmer", power, "animal", OWN_HEAT));
    for (Face face : Face.values()) {
      values.put(face.label(), ambient);
    }
    return index.inputs(values);
  }

  private double[] filmSet(PortIndex index, double time) {
    Map<String, Double> values = new HashMap<>();
    for (Face face : Face.values()) {
      values.put(face.label(), ReferenceTransient.film(face).at(time));
    }
    double[] films = index.films(values);
    for (double[] known : filmSets) {
      if (Arrays.equals(known, films)) {
        return known;
      }
    }
    filmSets.add(films);
    return films;
  }

  int cells() {
    return network.solidCellCount();
  }

  int steps() {
    return steps;
  }

  int inputCount() {
    return atStart[0].length;
  }

  List<Probe> probes() {
    return probes;
  }

  /** The sets of films in the order in which the journey meets them. */
  List<double[]> filmSets() {
    return Collections.unmodifiableList(filmSets);
  }

  /**
   * Surface coefficients that the journey does not meet: those of the first leg, a tenth higher.
   */
  double[] otherFilms() {
    return Arrays.stream(filmSets.get(0)).map(film -> 1.1 * film).toArray();
  }

  /**
   * Builds a reduced model to which every face may have an ambient of its own.
   *
   * @param sets number of film sets that it is built for
   * @param threads number of threads that build it
   */
  ReducedModel model(int sets, int threads) {
    return model(ReducedModel.builder(network, probes), sets, threads);
  }

  /** Builds a reduced model to which all faces meet the same air, as they do on this journey. */
  ReducedModel modelInOneAir(int threads) {
    Set<String> faces = Arrays.stream(Face.values()).map(Face::label).collect(Collectors.toSet());
    return model(ReducedModel.builder(network, probes).together(faces), filmSets.size(), threads);
  }

  private ReducedModel model(ReducedModel.Builder builder, int sets, int threads) {
    filmSets.subList(0, sets).forEach(films -> builder.spanning(films, new double[0]));
    return builder.threads(threads).build();
  }

  InitialState initialState() {
    return InitialState.uniform(Temperatures.fromCelsius(ReferenceTransient.START_CELSIUS));
  }

  HeatEngine fullEngine(double tolerance) {
    return new FullEngine(network, probes, initialState(), IntegratorSettings.adaptive(tolerance));
  }

  /** A row for the outputs after each step. */
  double[][] rows() {
    return new double[steps][probes.size()];
  }

  /**
   * Follows the journey from its start.
   *
   * @param engine one at time zero
   * @param rows where to put the outputs after each step
   */
  void follow(HeatEngine engine, double[][] rows) {
    double[] films = {};
    for (int step = 0; step < steps; step++) {
      if (coefficients[step] != films) {
        films = coefficients[step];
        engine.useCoefficients(films);
      }
      engine.advance(ReferenceTransient.STORED_EVERY, atStart[step], atEnd[step]);
      engine.read(rows[step]);
    }
  }
}
