package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** Slabs, rods and balls along x, the size of one in the other directions. */
final class Bodies {
  static final double TURN = 2 * Math.PI;

  private Bodies() {}

  /** A layer by material and thickness [m]. */
  record Layer(Material material, double thickness) {}

  /** Blocks named 0, 1, ... one after the other along x; y and z are one, or a full turn. */
  private static List<Block> blocks(double start, double turn, List<Layer> layers) {
    double end = start + layers.stream().mapToDouble(Layer::thickness).sum();
    List<Block> blocks = new ArrayList<>();
    double low = start;
    for (Layer layer : layers) {
      // the first block fills the domain, the later ones override it
      Box box = new Box(new Point(low, 0, 0), new Point(end, turn, 1));
      blocks.add(new Block.Solid(Integer.toString(blocks.size()), box, layer.material()));
      low += layer.thickness();
    }
    return blocks;
  }

  /** A slab of one square metre. */
  static Layout slab(Layer... layers) {
    return new Layout(blocks(0, 1, List.of(layers)));
  }

  /** A tube of one metre, or a rod if it starts at radius 0. */
  static Layout tube(double innerRadius, Layer... layers) {
    return Layout.cylindrical(blocks(innerRadius, TURN, List.of(layers)));
  }

  static Layout ball(Layer... layers) {
    return Layout.spherical(blocks(0, 1, List.of(layers)));
  }

  static Point at(double x) {
    return new Point(x, 0.5, 0.5);
  }

  /** Heat flow into the body through a boundary [W]. */
  static double heatInto(SteadySolution solution, String boundary) {
    return Objects.requireNonNull(solution.heatFlows().get(boundary), boundary);
  }

  /** Values of probes at times, row by row, with what the run cost. */
  static Ladder.Grid history(
      ConductionProblem problem, List<Probe> probes, double[] times, double stepTolerance) {
    TransientSolution solution =
        TransientSolver.solve(problem, probes, times, IntegratorSettings.adaptive(stepTolerance));
    if (!solution.outcome().isCompleted()) {
      throw new IllegalStateException(solution.outcome().toString());
    }
    List<Double> values = new ArrayList<>();
    for (int row = 0; row < times.length; row++) {
      for (Probe probe : probes) {
        values.add(solution.history(probe.name())[row]);
      }
    }
    return new Ladder.Grid(values, problem.network().grid().cellCount(), solution.work().steps());
  }
}
