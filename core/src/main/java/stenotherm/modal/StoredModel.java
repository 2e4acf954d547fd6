package stenotherm.modal;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.grid.Point;

/**
 * Writes and reads stored models: what runs need, without the cells. The package documentation
 * lists each byte.
 */
final class StoredModel {
  private static final long MAGIC = 0x5354454E4F4D4F44L;
  private static final int VERSION = 3;
  private static final int MOST_PORTS = 1000;
  private static final int MOST_BLOCKS = 10_000;
  private static final int MOST_VECTORS = 2000;
  private static final int MOST_OUTPUTS = 10_000;
  private static final int MOST_NODES = 10_000;
  private static final int MOST_ROWS = 50_000;
  private static final int MOST_CONFIGURATIONS = 1000;
  private static final int MOST_COARSER = 2;
  private static final int MOST_TERMS = 10_000;

  /** What round-off may add to shares whose sum is 1. */
  private static final double SHARE_ROUND_OFF = 1e-9;

  private static final BoundaryKind[] KINDS = {
    BoundaryKind.CONVECTION, BoundaryKind.TEMPERATURE, BoundaryKind.FLUX
  };

  private StoredModel() {}

  static void write(ReducedModel.Content content, DataOutput to) throws IOException {
    checkLimits(content);
    StoredOutput out = new StoredOutput(to);
    out.large(MAGIC);
    out.integer(VERSION);
    writeBody(content.body(), out);
    out.integer(content.plan().probes.size());
    for (Probe probe : content.plan().probes) {
      writeProbe(probe, out);
    }
    out.large(content.iterations());
    writeTexts(content.varying(), content.varying().size(), out);
    out.integer(content.network().terms().size());
    for (ReducedNetwork.Term term : content.network().terms()) {
      writeTerm(term, out);
    }
    writeColumns(content.network().ofSource(), out);
    out.integer(content.spanned().size());
    for (ReducedModel.Spanned each : content.spanned()) {
      out.reals(each.films());
      out.reals(each.factors());
    }
    writeRows(content.rows(), out);
    out.checksum();
  }

  private static void writeTerm(ReducedNetwork.Term term, StoredOutput out) throws IOException {
    out.integer(term.port() + 1);
    out.integer(term.first() + 1);
    out.integer(term.second() + 1);
    out.real(term.ofFirst());
    out.real(term.ofSecond());
    double[] areas = term.areas();
    if (areas != null) {
      out.real(term.area());
      out.reals(areas);
    }
    out.reals(term.matrix());
  }

  private static void writeRows(ReducedModel.Rows rows, StoredOutput out) throws IOException {
    for (int block = 0; block + 1 < rows.firstCandidate().length; block++) {
      out.integer(rows.firstCandidate()[block + 1] - rows.firstCandidate()[block]);
    }
    out.integer(rows.outputs().rows().size());
    for (int read = 0; read < rows.outputs().rows().size(); read++) {
      out.reals(rows.outputs().factors().get(read));
      writeColumns(rows.outputs().rows().get(read).ofVector(), out);
      writeColumns(rows.outputs().rows().get(read).ofInput(), out);
    }
    out.integer(rows.coarser().length);
    for (int[] members : rows.coarser()) {
      writeIntegers(members, out);
    }
  }

  private static void writeColumns(double[][] columns, StoredOutput out) throws IOException {
    for (double[] column : columns) {
      out.reals(column);
    }
  }

  /** Refuses numbers of things that {@link #read} would refuse. */
  private static void checkLimits(ReducedModel.Content content) {
    limit("ports", content.body().inputs.size(), MOST_PORTS);
    limit("solid blocks", content.body().solidBlocks.size(), MOST_BLOCKS);
    limit("basis vectors", content.body().basisSize(), MOST_VECTORS);
    limit("outputs", content.plan().probes.size(), MOST_OUTPUTS);
    limit("rows", content.rows().outputs().count(), MOST_NODES);
    limit("groups of conductances", content.network().terms().size(), MOST_TERMS);
    limit("configurations", content.spanned().size(), MOST_CONFIGURATIONS);
  }

  private static void limit(String what, int count, int most) {
    if (count > most) {
      throw new IllegalStateException(
          "the model has " + count + " " + what + "; its stored form has room for " + most);
    }
  }

  private static void writeIntegers(int[] values, StoredOutput out) throws IOException {
    out.integer(values.length);
    for (int value : values) {
      out.integer(value);
    }
  }

  private static void writeTexts(Iterable<String> texts, int count, StoredOutput out)
      throws IOException {
    out.integer(count);
    for (String text : texts) {
      out.text(text);
    }
  }

  private static void writeBody(Body body, StoredOutput out) throws IOException {
    List<Port.BoundaryPort> boundaries = new ArrayList<>();
    List<Port.SourcePort> sources = new ArrayList<>();
    for (Port port : body.inputs) {
      if (port instanceof Port.BoundaryPort boundary) {
        boundaries.add(boundary);
      } else {
        sources.add((Port.SourcePort) port);
      }
    }
    out.integer(boundaries.size());
    for (Port.BoundaryPort port : boundaries) {
      out.text(port.name());
      out.code(Arrays.asList(KINDS).indexOf(port.kind()));
      out.real(port.area());
    }
    out.integer(sources.size());
    for (Port.SourcePort port : sources) {
      out.text(port.name());
      out.real(port.volume());
    }
    out.integer(body.groups.count());
    for (int group = 0; group < body.groups.count(); group++) {
      writeIntegers(body.groups.members(group), out);
    }
    body.write(out);
  }

  private static void writeProbe(Probe probe, StoredOutput out) throws IOException {
    if (probe instanceof Probe.Mean mean) {
      writeProbe(0, probe, mean.block(), out);
    } else if (probe instanceof Probe.Maximum maximum) {
      writeProbe(1, probe, maximum.block(), out);
    } else if (probe instanceof Probe.Minimum minimum) {
      writeProbe(2, probe, minimum.block(), out);
    } else if (probe instanceof Probe.At at) {
      out.code(3);
      out.text(probe.name());
      out.reals(new double[] {at.point().x(), at.point().y(), at.point().z()});
    } else if (probe instanceof Probe.SurfaceMean surface) {
      writeProbe(4, probe, surface.boundary(), out);
    } else if (probe instanceof Probe.HeatFlow flow) {
      writeProbe(5, probe, flow.boundary(), out);
    } else {
      // only a body that melts has liquid fractions, and there are no models of these
      throw new IllegalStateException("there is no stored form of " + probe);
    }
  }

  private static void writeProbe(int code, Probe probe, String of, StoredOutput out)
      throws IOException {
    out.code(code);
    out.text(probe.name());
    out.text(of);
  }

  static ReducedModel read(DataInput from) throws IOException {
    StoredInput in = new StoredInput(from);
    try {
      return new ReducedModel(read(in), null);
    } catch (InvalidInputException refused) {
      throw in.wrong(refused.field(), refused.problem());
    } catch (IllegalStateException withoutModes) {
      throw in.wrong("conductances", String.valueOf(withoutModes.getMessage()));
    }
  }

  private static ReducedModel.Content read(StoredInput in) throws IOException {
    if (in.large("magic number") != MAGIC) {
      throw in.wrong("magic number", "this is no stored model");
    }
    int version = in.integer("version");
    if (version != VERSION) {
      throw in.wrong("version", version + " is unknown; " + VERSION + " is read here");
    }
    List<Port.BoundaryPort> boundaries = readBoundaries(in);
    List<Port> inputs = readInputs(boundaries, in);
    Body body = readBody(new InputGroups(inputs, readGroups(inputs.size(), in)), in);
    OutputPlan plan = readPlan(in);
    long iterations = in.large("iterations");
    List<String> varying = readTexts("blocks that vary", 0, in);
    if (!body.solidBlocks.containsAll(varying)) {
      throw in.wrong("blocks that vary", varying + " are not all solid blocks");
    }
    ReducedNetwork network = readNetwork(inputs, boundaries.size(), body, varying.size(), in);
    List<ReducedModel.Spanned> spanned = readSpanned(boundaries.size(), varying.size(), in);
    ReducedModel.Rows rows = readOutputRows(plan, body, varying.size(), in);
    in.checksum();
    return new ReducedModel.Content(plan, body, varying, network, rows, spanned, iterations);
  }

  private static ReducedNetwork readNetwork(
      List<Port> inputs, int boundaries, Body body, int varying, StoredInput in)
      throws IOException {
    int size = body.basisSize();
    int count = in.count("groups of conductances", 1, MOST_TERMS);
    List<ReducedNetwork.Term> terms = new ArrayList<>();
    for (int t = 0; t < count; t++) {
      int port = in.count("boundary of a group", 0, boundaries) - 1;
      int first = in.count("block of a group", 0, varying) - 1;
      int second = in.count("block of a group", 0, varying) - 1;
      double ofFirst = in.notNegative("share of a block");
      double ofSecond = in.notNegative("share of a block");
      if (port < 0 && !(ofFirst + ofSecond <= 1 + SHARE_ROUND_OFF)) {
        throw in.wrong("share of a block", "two blocks have more than the whole resistance");
      }
      double area = port < 0 ? 0 : in.notNegative("area of a group");
      double[] areas = port < 0 ? null : in.reals("areas of a group", size);
      double[] matrix = in.reals("conductances of a group", size * (size + 1) / 2);
      terms.add(
          new ReducedNetwork.Term(port, first, second, ofFirst, ofSecond, area, areas, matrix));
    }
    double[][] ofSource = readRows("sources", inputs.size() - boundaries, size, in);
    return new ReducedNetwork(inputs, size, terms, ofSource);
  }

  private static ReducedModel.Rows readOutputRows(
      OutputPlan plan, Body body, int varying, StoredInput in) throws IOException {
    int[] firstCandidate = readCandidates(plan, in);
    int count = firstCandidate[firstCandidate.length - 1];
    List<double[]> factors = new ArrayList<>();
    List<Projection.Rows> outputs = new ArrayList<>();
    int read = in.count("readings of outputs", 1, MOST_CONFIGURATIONS);
    for (int c = 0; c < read; c++) {
      factors.add(readFactors(varying, in));
      outputs.add(
          new Projection.Rows(
              count,
              readRows("outputs", body.basisSize(), count, in),
              readRows("outputs", body.inputs.size(), count, in)));
    }
    int[][] coarser = new int[in.count("coarser models", 0, MOST_COARSER)][];
    for (int model = 0; model < coarser.length; model++) {
      coarser[model] = readAscending("vectors of a coarser model", body.basisSize(), in);
    }
    return new ReducedModel.Rows(new InterpolatedRows(factors, outputs), firstCandidate, coarser);
  }

  private static List<ReducedModel.Spanned> readSpanned(int boundaries, int varying, StoredInput in)
      throws IOException {
    int count = in.count("configurations", 1, MOST_CONFIGURATIONS);
    List<ReducedModel.Spanned> spanned = new ArrayList<>();
    for (int c = 0; c < count; c++) {
      double[] films = in.reals("surface coefficient", boundaries);
      double[] factors = readFactors(varying, in);
      if (!Arrays.stream(films).allMatch(film -> film >= 0)) {
        throw in.wrong("surface coefficient", Arrays.toString(films) + " must not be negative");
      }
      spanned.add(new ReducedModel.Spanned(films, factors));
    }
    return spanned;
  }

  private static double[] readFactors(int varying, StoredInput in) throws IOException {
    double[] factors = in.reals("factor", varying);
    if (!Arrays.stream(factors).allMatch(factor -> factor > 0)) {
      throw in.wrong("factor", Arrays.toString(factors) + " must be above 0");
    }
    return factors;
  }

  private static List<Port.BoundaryPort> readBoundaries(StoredInput in) throws IOException {
    int count = in.count("boundary ports", 0, MOST_PORTS);
    List<Port.BoundaryPort> ports = new ArrayList<>();
    for (int p = 0; p < count; p++) {
      String name = in.text("name of a boundary port");
      BoundaryKind kind = KINDS[in.code("kind of boundary", KINDS.length - 1)];
      ports.add(new Port.BoundaryPort(name, kind, in.notNegative("area of a boundary")));
    }
    return List.copyOf(ports);
  }

  private static List<Port> readInputs(List<Port.BoundaryPort> boundaries, StoredInput in)
      throws IOException {
    List<Port> inputs = new ArrayList<>(boundaries);
    int count = in.count("source ports", 0, MOST_PORTS);
    for (int s = 0; s < count; s++) {
      String name = in.text("name of a source port");
      inputs.add(new Port.SourcePort(name, in.notNegative("volume of a source")));
    }
    return List.copyOf(inputs);
  }

  private static int[][] readGroups(int inputs, StoredInput in) throws IOException {
    int[][] groups = new int[in.count("groups of inputs", 0, inputs)][];
    boolean[] grouped = new boolean[inputs];
    int total = 0;
    for (int group = 0; group < groups.length; group++) {
      groups[group] = readAscending("inputs of a group", inputs, in);
      total += groups[group].length;
      for (int input : groups[group]) {
        if (grouped[input]) {
          throw in.wrong("inputs of a group", "an input is in two of them");
        }
        grouped[input] = true;
      }
    }
    if (total < inputs) {
      throw in.wrong("inputs of a group", "an input is in none of them");
    }
    return groups;
  }

  /** A list of positions, at least one. */
  private static int[] readAscending(String field, int below, StoredInput in) throws IOException {
    int[] values = new int[in.count(field, 1, below)];
    for (int i = 0; i < values.length; i++) {
      values[i] = in.count(field, i == 0 ? 0 : values[i - 1] + 1, below - 1);
    }
    return values;
  }

  private static Body readBody(InputGroups groups, StoredInput in) throws IOException {
    double capacity = in.notNegative("heat capacity");
    List<String> blocks = readTexts("solid blocks", 1, in);
    int vectors = in.count("basis vectors", 1, MOST_VECTORS);
    double[] uniform = in.reals("uniform field", vectors);
    double[][] stored = new double[vectors][];
    for (int j = 0; j < vectors; j++) {
      stored[j] = in.reals("heat content", blocks.size());
    }
    Map<String, double[]> apart = new TreeMap<>();
    int count = in.count("blocks that start apart", 0, blocks.size());
    for (int a = 0; a < count; a++) {
      String name = in.text("block that starts apart");
      if (!blocks.contains(name) || apart.containsKey(name)) {
        throw in.wrong(
            "block that starts apart", "'" + name + "' is not a solid block or occurs twice");
      }
      apart.put(name, in.reals("state of a block that starts apart", vectors));
    }
    return new Body(groups, capacity, blocks, uniform, stored, apart);
  }

  private static List<String> readTexts(String field, int least, StoredInput in)
      throws IOException {
    int count = in.count(field, least, MOST_BLOCKS);
    Set<String> texts = new LinkedHashSet<>();
    for (int t = 0; t < count; t++) {
      if (!texts.add(in.text(field))) {
        throw in.wrong(field, "a name occurs twice");
      }
    }
    return List.copyOf(texts);
  }

  private static OutputPlan readPlan(StoredInput in) throws IOException {
    int count = in.count("outputs", 0, MOST_OUTPUTS);
    List<Probe> probes = new ArrayList<>();
    for (int p = 0; p < count; p++) {
      int code = in.code("kind of output", 5);
      String name = in.text("name of an output");
      probes.add(
          switch (code) {
            case 0 -> new Probe.Mean(name, in.text("block of an output"));
            case 1 -> new Probe.Maximum(name, in.text("block of an output"));
            case 2 -> new Probe.Minimum(name, in.text("block of an output"));
            case 3 -> readPoint(name, in);
            case 4 -> new Probe.SurfaceMean(name, in.text("boundary of an output"));
            default -> new Probe.HeatFlow(name, in.text("boundary of an output"));
          });
    }
    return new OutputPlan(probes);
  }

  private static Probe readPoint(String name, StoredInput in) throws IOException {
    double[] point = in.reals("point of an output", 3);
    return new Probe.At(name, new Point(point[0], point[1], point[2]));
  }

  private static int[] readCandidates(OutputPlan plan, StoredInput in) throws IOException {
    int[] first = new int[plan.blocks.size() + 1];
    first[0] = plan.linear.size();
    for (int block = 0; block + 1 < first.length; block++) {
      first[block + 1] = first[block] + in.count("nodes of extremes", 1, MOST_NODES);
      if (first[block + 1] > MOST_ROWS) {
        throw in.wrong("nodes of extremes", "there are more than " + MOST_ROWS + " rows");
      }
    }
    return first;
  }

  private static double[][] readRows(String field, int count, int length, StoredInput in)
      throws IOException {
    double[][] rows = new double[count][];
    for (int r = 0; r < count; r++) {
      rows[r] = in.reals(field, length);
    }
    return rows;
  }
}
