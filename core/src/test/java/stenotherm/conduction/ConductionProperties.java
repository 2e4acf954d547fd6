package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.RandomLayouts;
import stenotherm.grid.RectilinearGrid;

/**
 * What conduction must keep, whatever the blocks, films, resistances and sources: heat is neither
 * made nor lost, no point is warmer than what warms it, and a mirrored body has the mirrored field.
 */
class ConductionProperties {
  /** Lowest and highest temperature that drives a body or that it starts from [K]. */
  private static final double COLDEST = 250;

  private static final double WARMEST = 330;

  /** What a random body may be given. */
  enum Kind {
    /** Constant films and held surfaces only. */
    CONSTANT,
    /** Films and held surfaces that ramp and jump. */
    JUMPING,
    /** Those, and fluxes and sources that jump. */
    HEATED
  }

  private static MeshControl mesh(Layout layout) {
    double largest = 0;
    for (Axis axis : Axis.values()) {
      largest = Math.max(largest, layout.domain().size(axis));
    }
    return new MeshControl(largest / 7, largest / 14, 2);
  }

  private static double temperature(Random random) {
    return COLDEST + (WARMEST - COLDEST) * random.nextDouble();
  }

  /** Constant, or a ramp with two jumps within an hour. */
  private static TimeFunction function(Random random, boolean constant, double low, double high) {
    double[] values = random.doubles(5, low, high).toArray();
    if (constant) {
      return TimeFunction.constant(values[0]);
    }
    double first = 300 + 1200 * random.nextDouble();
    return TimeFunction.table(new double[] {0, first, first, 2400, 2400}, values);
  }

  private static Boundary boundary(Random random, Kind kind, boolean fixesLevel) {
    boolean constant = kind == Kind.CONSTANT;
    int choice = random.nextInt(fixesLevel ? 2 : 4);
    if (choice == 0) {
      // from a thick layer of cloth to boiling water
      double strength = Math.pow(10, 3 * random.nextDouble());
      return new Boundary.Convection(
          function(random, constant, 0.5 * strength, strength),
          function(random, constant, COLDEST, WARMEST));
    }
    if (choice == 1) {
      return new Boundary.PrescribedTemperature(function(random, constant, COLDEST, WARMEST));
    }
    if (choice == 2 && kind == Kind.HEATED) {
      return new Boundary.PrescribedFlux(function(random, false, -50, 50));
    }
    return new Boundary.Adiabatic();
  }

  private static boolean touchesSolid(RectilinearGrid grid, Face face) {
    int wanted = face.isMax() ? grid.count(face.axis()) - 1 : 0;
    for (int cell = 0; cell < grid.cellCount(); cell++) {
      if (grid.position(face.axis(), cell) == wanted
          && grid.layout().blocks().get(grid.blockOf(cell)) instanceof Block.Solid) {
        return true;
      }
    }
    return false;
  }

  /**
   * A body with random boundaries, thin resistances and, if heated, sources; at least one boundary
   * fixes the level.
   */
  static ConductionProblem problem(Layout layout, long seed, Kind kind, boolean mirrored) {
    Random random = new Random(seed);
    RectilinearGrid grid = RectilinearGrid.of(layout, mesh(layout));
    ConductionProblem.Builder builder = ConductionProblem.builder(layout, mesh(layout));
    boolean fixed = false;
    for (Face face : Face.values()) {
      Face used = mirrored && face.axis() == Axis.X ? face.opposite() : face;
      Boundary boundary = boundary(random, kind, false);
      Boundary needed = boundary(random, kind, true);
      if (touchesSolid(grid, used)) {
        builder.boundary(used, fixed ? boundary : needed);
        fixed = true;
      }
    }
    for (Block block : layout.blocks()) {
      boolean left = grid.cellsOf(layout.indexOf(block.name())).length > 0;
      double resistance = random.nextInt(3) == 0 ? Math.pow(10, -4 + 4 * random.nextDouble()) : 0;
      TimeFunction power = function(random, false, -5, 20);
      boolean heated = random.nextInt(3) == 0;
      double initial = temperature(random);
      if (block instanceof Block.Solid) {
        builder.initial(block.name(), initial);
      }
      if (block instanceof Block.Environment) {
        builder.boundary(block.name(), boundary(random, kind, true));
      } else {
        builder.thinResistance(ThinResistance.around(Set.of(block.name()), resistance));
        if (left && heated && kind == Kind.HEATED) {
          builder.source(block.name(), power);
        }
      }
    }
    return builder.initial(290).build();
  }

  /** Temperatures of all solid cells [K]; NaN in environments. */
  private static double[] cells(TemperatureField field, RectilinearGrid grid) {
    double[] all = new double[grid.cellCount()];
    int layer = grid.stride(Axis.Z);
    for (int k = 0; k < grid.count(Axis.Z); k++) {
      double middle = (grid.line(Axis.Z, k) + grid.line(Axis.Z, k + 1)) / 2;
      System.arraycopy(field.section(Axis.Z, middle).values(), 0, all, k * layer, layer);
    }
    return all;
  }

  static void assertWithinBounds(TemperatureField field, RectilinearGrid grid) {
    for (double temperature : cells(field, grid)) {
      if (!Double.isNaN(temperature)) {
        // the linear solver's tolerance is below a micro-kelvin
        assertTrue(
            temperature > COLDEST - 1e-6 && temperature < WARMEST + 1e-6, () -> temperature + " K");
      }
    }
  }

  @Property(seed = "2101", tries = 150)
  void ledgerClosesAcrossJumps(
      @ForAll(supplier = RandomLayouts.class) Layout layout, @ForAll long seed) {
    ConductionProblem problem = problem(layout, seed, Kind.HEATED, false);
    TransientSolution solution =
        TransientSolver.solve(
            problem, List.of(), new double[] {1000, 3600}, IntegratorSettings.adaptive(0.05));
    assertTrue(solution.outcome().isCompleted(), () -> solution.outcome().toString());
    HeatLedger ledger = solution.ledger();
    assertTrue(ledger.closes(), () -> ledger.residual() + " of " + ledger.scale());
  }

  @Property(seed = "2102", tries = 150)
  void ledgerOfBackwardEulerCloses(
      @ForAll(supplier = RandomLayouts.class) Layout layout, @ForAll long seed) {
    ConductionProblem problem = problem(layout, seed, Kind.HEATED, false);
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(),
            new double[] {3600},
            IntegratorSettings.fixed(IntegratorSettings.Scheme.BACKWARD_EULER, 400));
    HeatLedger ledger = solution.ledger();
    assertTrue(ledger.closes(), () -> ledger.residual() + " of " + ledger.scale());
  }

  @Property(seed = "2103", tries = 200)
  void steadyHeatBalances(
      @ForAll(supplier = RandomLayouts.class) Layout layout, @ForAll long seed) {
    SteadySolution solution = SteadySolver.solve(problem(layout, seed, Kind.HEATED, false));
    double moved = 0;
    for (double flow : solution.heatFlows().values()) {
      moved += Math.abs(flow);
    }
    // as the ledger of a transient: a millionth of what passes
    assertEquals(0, solution.imbalance(), 1e-6 * (moved + 1e-3));
  }

  @Property(seed = "2104", tries = 200)
  void steadyTemperaturesStayBetweenAmbients(
      @ForAll(supplier = RandomLayouts.class) Layout layout, @ForAll long seed) {
    ConductionProblem problem = problem(layout, seed, Kind.CONSTANT, false);
    assertWithinBounds(SteadySolver.solve(problem).field(), problem.network().grid());
  }

  @Property(seed = "2105", tries = 60)
  void backwardEulerStaysBetweenAmbientsAndStart(
      @ForAll(supplier = RandomLayouts.class) Layout layout, @ForAll long seed) {
    ConductionProblem problem = problem(layout, seed, Kind.JUMPING, false);
    for (double end : new double[] {150, 600, 2400, 3600}) {
      // every step ends at the same times in the longer runs
      TransientSolution solution =
          TransientSolver.solve(
              problem,
              List.of(),
              new double[] {end},
              IntegratorSettings.fixed(IntegratorSettings.Scheme.BACKWARD_EULER, 150));
      assertWithinBounds(solution.field(), problem.network().grid());
    }
  }

  @Property(seed = "2106", tries = 100)
  void mirroredBodyHasTheMirroredField(
      @ForAll(supplier = RandomLayouts.class) Layout layout, @ForAll long seed) {
    assertMirrored(layout, seed);
  }

  static void assertMirrored(Layout layout, long seed) {
    ConductionProblem one = problem(layout, seed, Kind.HEATED, false);
    ConductionProblem other = problem(mirror(layout), seed, Kind.HEATED, true);
    RectilinearGrid grid = one.network().grid();
    double[] field = cells(SteadySolver.solve(one).field(), grid);
    double[] mirrored = cells(SteadySolver.solve(other).field(), other.network().grid());
    assertEquals(field.length, mirrored.length);
    int nx = grid.count(Axis.X);
    double span = 1;
    for (double temperature : field) {
      span = Double.isNaN(temperature) ? span : Math.max(span, Math.abs(temperature));
    }
    for (int cell = 0; cell < field.length; cell++) {
      int image = cell - cell % nx + nx - 1 - cell % nx;
      // two solutions of one system: twice the linear solver's tolerance, and round-off of the
      // largest value
      assertEquals(field[cell], mirrored[image], 1e-6 + 1e-9 * span);
    }
  }

  private static Layout mirror(Layout layout) {
    double end = layout.domain().max().x();
    List<Block> blocks = new ArrayList<>();
    for (Block block : layout.blocks()) {
      Point min = block.box().min();
      Point max = block.box().max();
      Box box =
          new Box(
              new Point(end - max.x(), min.y(), min.z()),
              new Point(end - min.x(), max.y(), max.z()));
      if (block instanceof Block.Solid solid) {
        blocks.add(new Block.Solid(block.name(), box, solid.material(), solid.shape()));
      } else {
        blocks.add(new Block.Environment(block.name(), box));
      }
    }
    return new Layout(blocks);
  }
}
