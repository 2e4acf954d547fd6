package stenotherm.validation.cases;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import stenotherm.base.Checks;
import stenotherm.base.Sinusoid;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.text.Keys;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;

/** Reads what drives a case: boundaries, and quantities that may vary in time. */
final class DrivingReader {
  private static final Keys SINUSOID = Keys.of("mean", "amplitude", "period", "phase");
  private static final Keys FILM = Keys.of("coefficient", "ambient");
  private static final Keys ANY_BOUNDARY = Keys.of("kind", "coefficient", "ambient", "value");
  private static final Map<String, BiFunction<DrivingReader, MappingNode, Boundary>> KINDS =
      kinds();

  /** Whether quantities may vary. */
  private final boolean steady;

  DrivingReader(boolean steady) {
    this.steady = steady;
  }

  private static Map<String, BiFunction<DrivingReader, MappingNode, Boundary>> kinds() {
    Map<String, BiFunction<DrivingReader, MappingNode, Boundary>> kinds =
        new java.util.LinkedHashMap<>();
    kinds.put(
        "convection",
        (reader, node) -> reader.film(node.withKeys(Keys.of("kind", "coefficient", "ambient"))));
    kinds.put(
        "temperature",
        (reader, node) ->
            new Boundary.PrescribedTemperature(
                reader.temperature(node.withKeys(Keys.of("kind", "value")).require("value"))));
    kinds.put(
        "flux",
        (reader, node) ->
            new Boundary.PrescribedFlux(
                reader.constantIfSteady(node.withKeys(Keys.of("kind", "value")).require("value"))));
    kinds.put(
        "adiabatic",
        (reader, node) -> {
          node.withKeys(Keys.of("kind"));
          return new Boundary.Adiabatic();
        });
    return kinds;
  }

  /** A face of the domain. */
  Boundary boundary(Node node) {
    MappingNode mapping = node.asMapping().withKeys(ANY_BOUNDARY);
    return mapping.require("kind").asScalar().choice(KINDS).apply(this, node.asMapping());
  }

  /** The surface of an environment. */
  Boundary environment(Node node) {
    return film(node.asMapping().withKeys(FILM));
  }

  private Boundary film(MappingNode mapping) {
    Node coefficient = mapping.require("coefficient");
    double film = coefficient.asScalar().number();
    coefficient.locate(() -> Checks.notNegative("surface coefficient", film, "W/(m2 K)"));
    return new Boundary.Convection(
        TimeFunction.constant(film), temperature(mapping.require("ambient")));
  }

  /** A power: a number or a table. */
  TimeFunction power(Node node) {
    if (node instanceof MappingNode) {
      throw node.fail("must be a number or a table of [s, W]");
    }
    return constantIfSteady(node);
  }

  private TimeFunction temperature(Node node) {
    TimeFunction function = constantIfSteady(node);
    if (function instanceof Sinusoid sinusoid) {
      double amplitude = Math.abs(sinusoid.wave().amplitude());
      checkTemperature(node, sinusoid.mean() - amplitude);
      checkTemperature(node, sinusoid.mean() + amplitude);
    } else if (node instanceof SequenceNode table) {
      table.items().forEach(row -> checkTemperature(row, rowOf(row)[1]));
    } else {
      checkTemperature(node, function.at(0));
    }
    return function;
  }

  static double checkTemperature(Node node, double kelvin) {
    return node.locate(() -> Checks.temperature("temperature", kelvin));
  }

  private TimeFunction constantIfSteady(Node node) {
    TimeFunction function = function(node);
    if (steady && !function.isConstant()) {
      throw node.fail("varies in time, which a steady case cannot; give one number");
    }
    return function;
  }

  private static TimeFunction function(Node node) {
    if (node instanceof ScalarNode number) {
      return TimeFunction.constant(number.number());
    }
    if (node instanceof SequenceNode table) {
      List<double[]> rows = table.items().stream().map(DrivingReader::rowOf).toList();
      double[] times = rows.stream().mapToDouble(row -> row[0]).toArray();
      double[] values = rows.stream().mapToDouble(row -> row[1]).toArray();
      return node.locate(() -> TimeFunction.table(times, values));
    }
    MappingNode mapping = node.asMapping().withKeys(SINUSOID);
    double mean = mapping.require("mean").asScalar().number();
    double amplitude = mapping.require("amplitude").asScalar().number();
    double period = mapping.require("period").asScalar().number();
    double phase = mapping.require("phase").asScalar().number();
    return node.locate(() -> new Sinusoid(mean, new Sinusoid.Wave(amplitude, period, phase)));
  }

  /** Time and value of a row of a table. */
  private static double[] rowOf(Node node) {
    return node.asSequence().requireSize(2).scalars().stream()
        .mapToDouble(ScalarNode::number)
        .toArray();
  }
}
