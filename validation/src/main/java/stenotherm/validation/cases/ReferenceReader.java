package stenotherm.validation.cases;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.text.Keys;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads the reference values of a case. */
final class ReferenceReader {
  private static final Keys KEYS =
      Keys.of("probe", "time", "value", "tolerance", "unit", "source", "why");

  private final CaseFile.Body body;
  private final CaseGeometry geometry;
  private final RunPlan run;
  private final Map<String, Probe> probes;
  private final String caseSource;

  ReferenceReader(
      CaseFile.Body body,
      CaseGeometry geometry,
      RunPlan run,
      Map<String, Probe> probes,
      String caseSource) {
    this.body = body;
    this.geometry = geometry;
    this.run = run;
    this.probes = probes;
    this.caseSource = caseSource;
  }

  Reference read(MappingNode item) {
    MappingNode node = item.withKeys(KEYS);
    Probe probe = node.require("probe").asScalar().choice(probes);
    OptionalDouble time = time(node);
    ReferenceUnit unit = unit(node, probe);
    Node valueNode = node.require("value");
    double value = valueNode.asScalar().number();
    if (unit.equals(ReferenceUnit.KELVIN)) {
      DrivingReader.checkTemperature(valueNode, value);
    }
    double tolerance = tolerance(node.require("tolerance").asScalar(), value);
    String source = node.optional("source").map(text -> text.asScalar().text()).orElse(caseSource);
    String why = node.optional("why").map(text -> text.asScalar().text()).orElse("");
    return new Reference(
        probe.name(), time, new Reference.Expected(value, tolerance, unit), source, why);
  }

  private OptionalDouble time(MappingNode node) {
    if (run.history().isPresent()) {
      double until = run.history().get().until();
      Node given = node.require("time");
      double time = given.asScalar().number();
      if (!(time >= 0 && time <= until)) {
        throw given.fail(
            Checks.show(time, "s") + " must lie within the run, 0 s to " + Checks.show(until, "s"));
      }
      return OptionalDouble.of(time);
    }
    Optional<Node> given = node.optional("time");
    if (given.isPresent() && given.get().asScalar().number() != 0) {
      throw given.get().fail("a steady case has no time, leave the key out");
    }
    return OptionalDouble.empty();
  }

  /** A tolerance in the unit of the value, or as a share of the value in percent. */
  private static double tolerance(ScalarNode node, double value) {
    double tolerance =
        node.text().endsWith("%") ? node.percentage() * Math.abs(value) : node.number();
    return node.locate(() -> Checks.notNegative("tolerance", tolerance, ""));
  }

  private ReferenceUnit unit(MappingNode node, Probe probe) {
    Map<String, ReferenceUnit> units = new LinkedHashMap<>();
    if (probe instanceof Probe.HeatFlow flow) {
      units.put("W", ReferenceUnit.WATT);
      // units per length or area are worked out only if the file names them
      units.put("W/m", ReferenceUnit.WATT);
      units.put("W/m2", ReferenceUnit.WATT);
      Optional<Node> given = node.optional("unit");
      if (given.isEmpty()) {
        return ReferenceUnit.WATT;
      }
      given.get().asScalar().choice(units);
      return switch (given.get().asScalar().text()) {
        case "W/m" -> new ReferenceUnit("W/m", depth(given.get()), 0);
        case "W/m2" -> new ReferenceUnit("W/m2", area(flow.boundary()), 0);
        default -> ReferenceUnit.WATT;
      };
    }
    units.put("K", ReferenceUnit.KELVIN);
    units.put("°C", ReferenceUnit.CELSIUS);
    units.put("C", ReferenceUnit.CELSIUS);
    units.put("degC", ReferenceUnit.CELSIUS);
    return node.optional("unit")
        .map(given -> given.asScalar().choice(units))
        .orElse(ReferenceUnit.KELVIN);
  }

  /** Extent along the one axis along which nothing varies [m]. */
  private double depth(Node node) {
    Set<Axis> varying = geometry.varying();
    if (varying.size() != 2) {
      throw node.fail(
          "a heat flow per metre needs one axis along which nothing varies, here there are "
              + (3 - varying.size()));
    }
    for (Axis axis : Axis.values()) {
      if (!varying.contains(axis)) {
        return body.layout().domain().size(axis);
      }
    }
    throw new IllegalStateException("two of three axes vary, but no third was found");
  }

  /** Area of the surface under a boundary [m2]. */
  private double area(String boundary) {
    ConductionProblem.Builder builder =
        ConductionProblem.builder(body.layout(), CaseGeometry.COARSEST);
    body.boundaries().forEach(builder::boundary);
    body.environments().forEach(builder::boundary);
    Port.BoundaryPort port =
        builder.build().network().boundaryPorts().stream()
            .filter(each -> each.name().equals(boundary))
            .findFirst()
            .orElseThrow();
    return port.area();
  }
}
