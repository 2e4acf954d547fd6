package stenotherm.validation.cases;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Point;
import stenotherm.text.Keys;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads the outputs of a case. */
final class ProbeReader {
  private static final String HEAT_OUT = "heatOut";
  private static final List<String> KINDS = List.of("point", "mean", "max", "min", HEAT_OUT);
  private static final Keys KEYS = Keys.of("name", "point", "mean", "max", "min", HEAT_OUT);

  private final CaseGeometry geometry;

  /** Solid blocks by name. */
  private final Map<String, String> blocks = new LinkedHashMap<>();

  /** Faces that carry heat, and environments, by name. */
  private final Map<String, String> boundaries = new LinkedHashMap<>();

  ProbeReader(CaseFile.Body body, CaseGeometry geometry) {
    this.geometry = geometry;
    for (Block block : body.layout().blocks()) {
      blocks.put(block.name(), block.name());
    }
    for (Face face : Face.values()) {
      boundaries.put(face.label(), face.label());
    }
    Set<String> environments = body.environments().keySet();
    environments.forEach(name -> boundaries.put(name, name));
  }

  Probe read(MappingNode item) {
    MappingNode node = item.withKeys(KEYS);
    String name = node.require("name").asScalar().text();
    List<String> given = KINDS.stream().filter(node.keys()::contains).toList();
    if (given.size() != 1) {
      throw node.fail(
          "must have exactly one of "
              + String.join(", ", KINDS)
              + ", not "
              + (given.isEmpty() ? "none" : String.join(" and ", given)));
    }
    Node target = node.require(given.get(0));
    switch (given.get(0)) {
      case "point" -> {
        return new Probe.At(name, point(target));
      }
      case "mean" -> {
        return new Probe.Mean(name, block(target));
      }
      case "max" -> {
        return new Probe.Maximum(name, block(target));
      }
      case "min" -> {
        return new Probe.Minimum(name, block(target));
      }
      default -> {
        return new Probe.HeatFlow(name, boundary(target));
      }
    }
  }

  private Point point(Node node) {
    double[] xyz =
        node.asSequence().requireSize(3).scalars().stream()
            .mapToDouble(ScalarNode::number)
            .toArray();
    return node.locate(
        () -> {
          Point point = new Point(xyz[0], xyz[1], xyz[2]);
          geometry.requireSolid(point);
          return point;
        });
  }

  private String block(Node node) {
    String block = node.asScalar().choice(blocks);
    return node.locate(
        () -> {
          geometry.requireSolid(block);
          return block;
        });
  }

  private String boundary(Node node) {
    return node.asScalar().choice(boundaries);
  }

  private static Optional<Face> faceOf(String name) {
    for (Face face : Face.values()) {
      if (face.label().equals(name)) {
        return Optional.of(face);
      }
    }
    return Optional.empty();
  }

  /**
   * Refuses a heat flow that is infinite in the continuous problem: any number that a grid gives
   * for it says how fine the grid is and nothing else.
   *
   * @param probe the output
   * @param node where the output is named
   * @param time when it is wanted; empty in a steady case
   * @param run what is computed
   */
  void requireFinite(Probe probe, Node node, OptionalDouble time, RunPlan run) {
    if (!(probe instanceof Probe.HeatFlow flow) || faceOf(flow.boundary()).isEmpty()) {
      return;
    }
    Face face = faceOf(flow.boundary()).get();
    double when = time.orElse(0);
    Optional<Face> beside = geometry.jumpBeside(face, when);
    if (beside.isPresent()) {
      throw node.fail(
          "the prescribed temperature jumps where "
              + face.label()
              + " meets "
              + beside.get().label()
              + ", the heat flow through either is infinite and no grid converges to it");
    }
    Optional<TimeFunction> held = geometry.prescribed(face);
    if (run.history().isPresent() && held.isPresent()) {
      TimeFunction value = held.get();
      double before = when == 0 ? run.history().get().initial() : value.before(when);
      if (before != value.at(when)) {
        throw node.fail(
            "the prescribed temperature of "
                + face.label()
                + " jumps at "
                + when
                + " s, the heat flow is infinite at that instant");
      }
    }
  }
}
