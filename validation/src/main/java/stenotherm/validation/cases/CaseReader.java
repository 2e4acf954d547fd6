package stenotherm.validation.cases;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.text.Document;
import stenotherm.text.Keys;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;
import stenotherm.text.TextFormatException;
import stenotherm.validation.studies.Study;

/** Reads case files. All values are in SI units; messages name line and column of a fault. */
final class CaseReader {
  private static final String FORMAT = "format";
  private static final Keys KEYS =
      Keys.of(
          FORMAT,
          "id",
          "title",
          "source",
          "kind",
          "domain",
          "blocks",
          "boundaries",
          "initial",
          "run",
          "probes",
          "reference",
          "mesh");
  private static final Keys BOX = Keys.of("x", "y", "z");
  private static final Keys SOLID =
      Keys.of(
          "name", "x", "y", "z", "conductivity", "density", "specificHeat", "power", "environment");
  private static final Keys ENVIRONMENT = Keys.of("name", "x", "y", "z", "environment");
  private static final Keys FACES = Keys.of("xMin", "xMax", "yMin", "yMax", "zMin", "zMax");
  private static final Keys RUN = Keys.of("kind", "until", "timeTolerance");
  private static final Keys MESH = Keys.of("largestCell", "firstCell", "growth");

  /** Identifiers name files, too. */
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]*");

  /** Beyond any body; products of lengths and their inverses stay far from overflow [m]. */
  private static final Range EXTENTS = new Range(1e-6, 1e5);

  /** Stands for density and specific heat in a steady case, which does not depend on them. */
  private static final double NO_INFLUENCE = 1000;

  private final MappingNode root;
  private final boolean steady;

  private CaseReader(MappingNode root) {
    this.root = root;
    Map<String, Boolean> kinds = new LinkedHashMap<>();
    kinds.put("steady", true);
    kinds.put("transient", false);
    this.steady =
        root.require("run").asMapping().withKeys(RUN).require("kind").asScalar().choice(kinds);
  }

  /**
   * Reads a case from a file in UTF-8.
   *
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if it is not a case that can be computed
   */
  static CaseFile read(Path path) throws IOException {
    return read(Document.read(path));
  }

  /**
   * Reads a case.
   *
   * @throws TextFormatException if it is not a case that can be computed
   */
  static CaseFile read(Document document) {
    MappingNode file = document.root().asMapping();
    checkFormat(file);
    return new CaseReader(file.withKeys(KEYS)).read();
  }

  private static void checkFormat(MappingNode file) {
    Optional<Node> format = file.optional(FORMAT);
    if (format.isEmpty()) {
      return;
    }
    if (!format.get().asScalar().text().equals("1")) {
      throw format.get().fail("this version reads format 1 only");
    }
    if (!file.keys().iterator().next().equals(FORMAT)) {
      throw file.failAt(FORMAT, "must be the first key");
    }
  }

  private CaseFile read() {
    Study.Heading heading = heading();
    CaseFile.Body body = body();
    RunPlan run = run();
    CaseGeometry geometry = new CaseGeometry(body);
    ProbeReader probeReader = new ProbeReader(body, geometry);
    SequenceNode nodes = root.require("probes").asSequence();
    Map<String, Probe> probes = new LinkedHashMap<>();
    Map<String, Node> probeNodes = new LinkedHashMap<>();
    for (Node node : nodes.items()) {
      Probe probe = probeReader.read(node.asMapping());
      if (probes.put(probe.name(), probe) != null) {
        throw node.fail("the name '" + probe.name() + "' is given to two probes");
      }
      probeNodes.put(probe.name(), node);
    }
    if (probes.isEmpty()) {
      throw nodes.fail("must name at least one output");
    }
    ReferenceReader referenceReader =
        new ReferenceReader(body, geometry, run, probes, heading.source());
    SequenceNode referenceNodes = root.require("reference").asSequence();
    List<Reference> references = new ArrayList<>();
    for (Node node : referenceNodes.items()) {
      Reference reference = referenceReader.read(node.asMapping());
      references.add(reference);
      // the reader of references has refused the names of probes that do not exist
      probeReader.requireFinite(
          Objects.requireNonNull(probes.get(reference.probe())),
          Objects.requireNonNull(probeNodes.get(reference.probe())),
          reference.time(),
          run);
    }
    if (references.isEmpty()) {
      throw referenceNodes.fail("must have at least one value, or there is nothing to check");
    }
    Optional<MeshControl> mesh = root.optional("mesh").map(CaseReader::mesh);
    return new CaseFile(heading, body, run, List.copyOf(probes.values()), references, mesh);
  }

  private Study.Heading heading() {
    ScalarNode id = root.require("id").asScalar();
    if (!ID.matcher(id.text()).matches()) {
      throw id.fail("must be made of letters, digits, '-', '_' and '.', it names files, too");
    }
    Map<String, Study.Kind> kinds = new LinkedHashMap<>();
    for (Study.Kind kind : Study.Kind.values()) {
      if (kind != Study.Kind.UNSTATED) {
        kinds.put(kind.word(), kind);
      }
    }
    Study.Kind kind =
        root.optional("kind")
            .map(node -> node.asScalar().choice(kinds))
            .orElse(Study.Kind.UNSTATED);
    return new Study.Heading(
        id.text(),
        root.require("title").asScalar().text(),
        root.require("source").asScalar().text(),
        kind);
  }

  private CaseFile.Body body() {
    MappingNode domainNode = root.require("domain").asMapping().withKeys(BOX);
    Box domain = box(domainNode);
    for (String axis : List.of("x", "y", "z")) {
      Node extent = domainNode.require(axis);
      double[] ends = interval(extent);
      extent.locate(
          () -> Checks.within("extent", ends[1] - ends[0], EXTENTS, "m", "Lengths are in metres."));
    }
    SequenceNode blockNodes = root.require("blocks").asSequence();
    DrivingReader driving = new DrivingReader(steady);
    List<Block> blocks = new ArrayList<>();
    Map<String, Boundary> environments = new LinkedHashMap<>();
    Map<String, TimeFunction> powers = new LinkedHashMap<>();
    Set<String> names = new HashSet<>();
    for (Node item : blockNodes.items()) {
      MappingNode node = item.asMapping();
      boolean air = node.keys().contains("environment");
      node = node.withKeys(air ? ENVIRONMENT : SOLID);
      String name = node.require("name").asScalar().text();
      if (!names.add(name)) {
        throw node.require("name").fail("'" + name + "' is given to two blocks");
      }
      Box box = blocks.isEmpty() ? firstBox(node, domain) : box(node);
      if (air) {
        blocks.add(new Block.Environment(name, box));
        environments.put(name, driving.environment(node.require("environment")));
      } else {
        blocks.add(new Block.Solid(name, box, material(node, name)));
        node.optional("power").ifPresent(power -> powers.put(name, driving.power(power)));
      }
      // checks the block that was added last, so that a message names its place
      node.locate(() -> new Layout(blocks));
    }
    Layout layout = blockNodes.locate(() -> new Layout(blocks));
    Map<Face, Boundary> boundaries = new EnumMap<>(Face.class);
    MappingNode faces = root.require("boundaries").asMapping().withKeys(FACES);
    for (Face face : Face.values()) {
      boundaries.put(face, driving.boundary(faces.require(face.label())));
    }
    CaseFile.Body body = new CaseFile.Body(layout, boundaries, environments, powers);
    checkPowers(new CaseGeometry(body), blockNodes, powers.keySet());
    return body;
  }

  private static void checkPowers(CaseGeometry geometry, SequenceNode blocks, Set<String> heated) {
    for (MappingNode block : blocks.mappings()) {
      String name = block.require("name").asScalar().text();
      if (heated.contains(name)) {
        block.locate(
            () -> {
              geometry.requireSolid(name);
              return name;
            });
      }
    }
  }

  /** The first block fills the domain; it may say so, and may not say otherwise. */
  private static Box firstBox(MappingNode node, Box domain) {
    for (Axis axis : Axis.values()) {
      String key = axis.name().toLowerCase(java.util.Locale.ROOT);
      Optional<Node> given = node.optional(key);
      if (given.isPresent()) {
        double[] ends = interval(given.get());
        if (ends[0] != domain.min().along(axis) || ends[1] != domain.max().along(axis)) {
          throw given
              .get()
              .fail(
                  "the first block fills the domain, "
                      + Checks.show(domain.min().along(axis), "m")
                      + " to "
                      + Checks.show(domain.max().along(axis), "m")
                      + "; leave x, y and z out or give the same");
        }
      }
    }
    return domain;
  }

  private static Box box(MappingNode node) {
    double[] x = interval(node.require("x"));
    double[] y = interval(node.require("y"));
    double[] z = interval(node.require("z"));
    return new Box(new Point(x[0], y[0], z[0]), new Point(x[1], y[1], z[1]));
  }

  /** Two coordinates in ascending order [m]. */
  private static double[] interval(Node node) {
    double[] ends =
        node.asSequence().requireSize(2).scalars().stream()
            .mapToDouble(ScalarNode::number)
            .toArray();
    if (!(ends[1] > ends[0])) {
      throw node.fail(
          "runs from "
              + Checks.show(ends[0], "m")
              + " to "
              + Checks.show(ends[1], "m")
              + ", the end must be larger than the start");
    }
    return ends;
  }

  private Material material(MappingNode node, String name) {
    double conductivity = node.require("conductivity").asScalar().number();
    double density = storage(node, "density");
    double specificHeat = storage(node, "specificHeat");
    return node.locate(() -> Material.of(name, conductivity, density, specificHeat));
  }

  private double storage(MappingNode node, String key) {
    if (steady && node.optional(key).isEmpty()) {
      return NO_INFLUENCE;
    }
    return node.require(key).asScalar().number();
  }

  private RunPlan run() {
    MappingNode node = root.require("run").asMapping().withKeys(RUN);
    if (steady) {
      for (String key : List.of("until", "timeTolerance")) {
        if (node.optional(key).isPresent()) {
          throw node.failAt(key, "belongs to a transient case, this one is steady");
        }
      }
      root.optional("initial")
          .ifPresent(
              initial -> DrivingReader.checkTemperature(initial, initial.asScalar().number()));
      return new RunPlan.Steady();
    }
    Node initial = root.require("initial");
    double start = DrivingReader.checkTemperature(initial, initial.asScalar().number());
    Node until = node.require("until");
    double end = until.asScalar().number();
    until.locate(() -> Checks.positive("end of the run", end, "s"));
    OptionalDouble tolerance = OptionalDouble.empty();
    Optional<Node> given = node.optional("timeTolerance");
    if (given.isPresent()) {
      double value = given.get().asScalar().number();
      given
          .get()
          .locate(() -> stenotherm.conduction.IntegratorSettings.adaptive(value).stepTolerance());
      tolerance = OptionalDouble.of(value);
    }
    return new RunPlan.Transient(start, end, tolerance);
  }

  private static MeshControl mesh(Node node) {
    MappingNode mesh = node.asMapping().withKeys(MESH);
    double largest = mesh.require("largestCell").asScalar().number();
    double first = mesh.optional("firstCell").map(cell -> cell.asScalar().number()).orElse(largest);
    double growth =
        mesh.optional("growth")
            .map(ratio -> ratio.asScalar().number())
            .orElse(MeshControl.DEFAULT_GROWTH);
    return node.locate(() -> new MeshControl(largest, first, growth));
  }
}
