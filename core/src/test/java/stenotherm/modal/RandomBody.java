package stenotherm.modal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.HeatNetworkBuilder;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.TemperatureField;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** A box of foam with fill, something wet in a cup and a heated block, of random sizes. */
final class RandomBody {
  static final List<Probe> PROBES =
      List.of(
          new Probe.Mean("animal", "animal"),
          new Probe.Mean("warmer", "warmer"),
          new Probe.Minimum("coldest", "animal"),
          new Probe.Maximum("warmest", "animal"),
          new Probe.Maximum("hottest", "warmer"),
          new Probe.SurfaceMean("top", "zMax"),
          new Probe.HeatFlow("in", "zMax"));

  /** Blocks whose conductivity varies. */
  static final List<String> VARYING = List.of("foam", "fill");

  /** Factors of the body as it is. */
  static final double[] GIVEN = {1, 1};

  private final Random random;
  private static final ThinResistance CONTACT = ThinResistance.around(Set.of("animal"), 0.005);

  final Layout layout;
  private final MeshControl mesh;
  final HeatNetwork network;

  RandomBody(long seed, double cellsAcross) {
    this(seed, cellsAcross, 1.5);
  }

  /** One whose cells may differ more from their neighbours, and so be few. */
  RandomBody(long seed, double cellsAcross, double growth) {
    random = new Random(seed);
    double x = between(0.16, 0.34);
    double y = between(0.16, 0.30);
    double z = between(0.14, 0.28);
    double wall = between(0.012, 0.03);
    Material foam = Material.of("foam", between(0.03, 0.04), between(15, 35), 1450);
    Material fill = Material.of("fill", between(0.04, 0.09), between(15, 60), 1350);
    Material wet = Material.of("wet", between(0.2, 0.6), between(300, 1000), 3500);
    Material pouch = Material.of("pouch", between(0.2, 0.5), 1100, 900);
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Solid("foam", box(0, 0, 0, x, y, z), foam));
    blocks.add(new Block.Solid("fill", box(wall, wall, wall, x - wall, y - wall, z - wall), fill));
    double size = between(0.03, 0.05);
    double x0 = between(wall + 0.01, x - wall - size - 0.01);
    double y0 = between(wall + 0.01, y - wall - size - 0.01);
    blocks.add(
        new Block.Solid(
            "animal", box(x0, y0, wall + 0.01, x0 + size, y0 + size, wall + 0.01 + size), wet));
    blocks.add(
        new Block.Solid(
            "warmer",
            box(x / 2 - 0.03, y / 2 - 0.03, z - wall - 0.015, x / 2 + 0.03, y / 2 + 0.03, z - wall),
            pouch));
    layout = new Layout(blocks);
    double cell = x / cellsAcross;
    mesh = new MeshControl(cell, cell / 3, growth);
    HeatNetworkBuilder builder =
        HeatNetwork.builder(layout, mesh).source("warmer").source("animal").thinResistance(CONTACT);
    for (Face face : Face.values()) {
      builder.boundary(face, BoundaryKind.CONVECTION);
    }
    network = builder.build();
  }

  private static Box box(double... c) {
    return new Box(new Point(c[0], c[1], c[2]), new Point(c[3], c[4], c[5]));
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  double[] films() {
    double[] films = new double[6];
    for (int face = 0; face < 6; face++) {
      films[face] = between(4, 20);
    }
    return films;
  }

  /** Ambient of six faces, power of the warmer and the animal. */
  static double[] inputs(Random random) {
    double air = 265 + 45 * random.nextDouble();
    double[] inputs = new double[8];
    for (int face = 0; face < 6; face++) {
      inputs[face] = air + 5 * random.nextDouble();
    }
    inputs[6] = 2 * random.nextDouble();
    inputs[7] = 0.1 * random.nextDouble();
    return inputs;
  }

  /** A builder of a model with an animal that may start apart. */
  ReducedModel.Builder builder() {
    return ReducedModel.builder(network, PROBES).varying(VARYING).startsApart("animal");
  }

  /** A model for the films given and the conductivities of the body. */
  ReducedModel model(double[]... films) {
    ReducedModel.Builder builder = builder();
    for (double[] each : films) {
      builder.spanning(each, GIVEN);
    }
    return builder.build();
  }

  /** The body with factors on the conductivities of the blocks that vary. */
  HeatNetwork withFactors(double[] factors) {
    return network.withFactors(Map.of(VARYING.get(0), factors[0], VARYING.get(1), factors[1]));
  }

  /** Steady outputs by the full solver, which has the whole problem's boundaries. */
  double[] steady(double[] films, double[] inputs) {
    ConductionProblem.Builder builder = ConductionProblem.builder(layout, mesh);
    for (Face face : Face.values()) {
      int f = face.ordinal();
      builder.boundary(face, Boundary.Convection.of(films[f], inputs[f]));
    }
    SteadySolution solution =
        SteadySolver.solve(
            builder
                .source("warmer", TimeFunction.constant(inputs[6]))
                .source("animal", TimeFunction.constant(inputs[7]))
                .thinResistance(CONTACT)
                .build());
    TemperatureField field = solution.field();
    return new double[] {
      field.mean("animal"),
      field.mean("warmer"),
      field.minimum("animal"),
      field.maximum("animal"),
      field.maximum("warmer"),
      field.surfaceMean("zMax"),
      solution.heatFlows().get("zMax")
    };
  }
}
