package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Conductivities;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.conduction.ThinResistance;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.TemperatureCorrection;

/**
 * Manufactured solutions: a temperature is chosen, and the sources that it needs follow from the
 * heat equation. Every cell is a block of its own, so that conductivity, heat capacity and source
 * differ from cell to cell as smooth functions of place do. Sources and boundaries vary in time.
 */
class ManufacturedSolutionTest {
  /** Abscissae and weights of Gauss's rule with three points on 0 to 1: exact to degree five. */
  private static final double[] GAUSS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  /** Solves each stage to 1e-11 K. */
  private static IntegratorSettings steps(double step) {
    return new IntegratorSettings(Scheme.TR_BDF2, 1e-9, step, true, Conductivities.FROZEN);
  }

  private static Material material(double conductivity, double volumetricCapacity) {
    return Material.of("cell", conductivity, volumetricCapacity / 1000, 1000);
  }

  /** Largest error over the centres of all cells at the end of a run [K]. */
  private static double worst(
      ConductionProblem problem, IntegratorSettings settings, double end, Field exact) {
    TransientSolution solution =
        TransientSolver.solve(problem, List.of(), new double[] {end}, settings);
    assertTrue(solution.outcome().isCompleted(), () -> solution.outcome().toString());
    assertTrue(solution.ledger().closes());
    RectilinearGrid grid = problem.network().grid();
    double[] field = Body.cells(solution.field(), grid);
    double worst = 0;
    for (int cell = 0; cell < field.length; cell++) {
      double x = centre(grid, Axis.X, cell);
      double y = centre(grid, Axis.Y, cell);
      worst = Math.max(worst, Math.abs(field[cell] - exact.at(x, y, end)));
    }
    return worst;
  }

  private static double centre(RectilinearGrid grid, Axis axis, int cell) {
    int position = grid.position(axis, cell);
    return (grid.line(axis, position) + grid.line(axis, position + 1)) / 2;
  }

  /** A temperature of place and time [K]. */
  private interface Field {
    double at(double x, double y, double time);
  }

  /** A function of time and its derivative. */
  private record Course(DoubleUnaryOperator value, DoubleUnaryOperator rate) {}

  /**
   * Layers in contact: T = f(t) + g(t) psi(x), where psi rises by 1 / k in a layer and jumps at a
   * thin resistance, so that the flux is -g(t) everywhere. All that the cells store comes from
   * sources. Cells are exact in space whatever f and g, and in time where both are parabolas: the
   * stages of the scheme are exact for those.
   */
  private static final class Layers {
    private static final double WIDTH = 0.01;
    private static final double ROW = 0.025;
    private static final int CELLS = 12;
    private static final double[] CONDUCTIVITY = {0.04, 0.6, 2};
    private static final double[] CAPACITY = {4e4, 4e6, 9e5, 2e6, 3e5};
    private static final double RESISTANCE = 0.3;
    private static final double FILM = 7;
    private final Course f;
    private final Course g;

    Layers(Course f, Course g) {
      this.f = f;
      this.g = g;
    }

    private static double conductivity(int cell) {
      return CONDUCTIVITY[cell / 4];
    }

    private static double psi(double x) {
      double psi = x > 4 * WIDTH ? RESISTANCE : 0;
      for (int cell = 0; cell < CELLS; cell++) {
        double within = Math.max(0, Math.min(WIDTH, x - cell * WIDTH));
        psi += within / conductivity(cell);
      }
      return psi;
    }

    double at(double x, double time) {
      return f.value().applyAsDouble(time) + g.value().applyAsDouble(time) * psi(x);
    }

    ConductionProblem problem() {
      double length = CELLS * WIDTH;
      List<Block> blocks = new ArrayList<>();
      for (int row = 0; row < 2; row++) {
        for (int cell = 0; cell < CELLS; cell++) {
          // the first block fills the domain
          Point min = new Point(cell * WIDTH, row * ROW, 0);
          Point max =
              blocks.isEmpty()
                  ? new Point(length, 2 * ROW, 1)
                  : new Point((cell + 1) * WIDTH, (row + 1) * ROW, 1);
          double capacity = CAPACITY[(3 * row + 2 * cell) % CAPACITY.length];
          blocks.add(
              new Block.Solid(
                  row + "/" + cell, new Box(min, max), material(conductivity(cell), capacity)));
        }
      }
      ConductionProblem.Builder builder =
          ConductionProblem.builder(new Layout(blocks), MeshControl.uniform(1))
              .boundary(
                  Face.X_MIN,
                  new Boundary.Convection(
                      TimeFunction.constant(FILM),
                      time -> at(0, time) - g.value().applyAsDouble(time) / FILM))
              .boundary(Face.X_MAX, new Boundary.PrescribedTemperature(time -> at(length, time)));
      for (int row = 0; row < 2; row++) {
        builder.thinResistance(ThinResistance.between(row + "/3", row + "/4", RESISTANCE));
        for (int cell = 0; cell < CELLS; cell++) {
          double middle = (cell + 0.5) * WIDTH;
          double capacity = CAPACITY[(3 * row + 2 * cell) % CAPACITY.length] * WIDTH * ROW;
          builder.initial(row + "/" + cell, at(middle, 0));
          builder.source(
              row + "/" + cell,
              time ->
                  capacity
                      * (f.rate().applyAsDouble(time)
                          + g.rate().applyAsDouble(time) * psi(middle)));
        }
      }
      ConductionProblem problem = builder.initial(300).build();
      assertEquals(2 * CELLS, problem.network().grid().cellCount());
      return problem;
    }
  }

  @Test
  void parabolasInTimeAndLayersInSpaceAreReproduced() {
    Layers layers =
        new Layers(
            new Course(t -> 300 + 2e-3 * t - 3e-7 * t * t, t -> 2e-3 - 6e-7 * t),
            new Course(t -> 5 - 1e-3 * t + 4e-7 * t * t, t -> -1e-3 + 8e-7 * t));
    // round-off of 300 K, and the solver's 1e-11 K a stage
    assertEquals(
        0, worst(layers.problem(), steps(700), 7000, (x, y, time) -> layers.at(x, time)), 1e-9);
  }

  @Test
  void stepsAreOfSecondOrderWhereCellsAreExact() {
    double omega = 2 * Math.PI / 5000;
    Layers layers =
        new Layers(
            new Course(t -> 300 + 8 * Math.sin(omega * t), t -> 8 * omega * Math.cos(omega * t)),
            new Course(
                t -> 5 + 3 * Math.cos(1.7 * omega * t),
                t -> -5.1 * omega * Math.sin(1.7 * omega * t)));
    double[] steps = {20, 40, 80, 160};
    double[] errors = new double[steps.length];
    for (int run = 0; run < steps.length; run++) {
      errors[run] =
          worst(
              layers.problem(), steps(6000 / steps[run]), 6000, (x, y, time) -> layers.at(x, time));
    }
    Orders.check(2, 0.1, steps, errors);
  }

  /**
   * In a plane: T = 290 + p(t) S(x, y), S = sin(pi x / 2 a) (1 + cos(pi y / b) / 2), with k and
   * heat capacity smooth functions of both. Held at x = 0, where T does not depend on y; insulated
   * elsewhere. p is a parabola, so that steps add no error.
   */
  private static final class Plane {
    private static final double A = 0.1;
    private static final double B = 0.07;
    private static final double END = 8000;
    private final int cells;

    Plane(int cells) {
      this.cells = cells;
    }

    private static double p(double time) {
      double s = time / END;
      return 10 + 6 * s - 9 * s * s;
    }

    private static double rate(double time) {
      return (6 - 18 * time / END) / END;
    }

    private static double shape(double x, double y) {
      return Math.sin(Math.PI * x / (2 * A)) * (1 + Math.cos(Math.PI * y / B) / 2);
    }

    private static double conductivity(double x, double y) {
      return 0.5 * Math.exp(1.2 * x / A - 0.7 * y / B);
    }

    private static double capacity(double x, double y) {
      return 1e6 * (1 + 0.6 * Math.sin(2 * x / A) + 0.3 * y / B);
    }

    /** div(k grad S) [W/(m3 K)]. */
    private static double divergence(double x, double y) {
      double along = Math.PI / (2 * A);
      double across = Math.PI / B;
      double rows = 1 + Math.cos(across * y) / 2;
      double alongSlope = along * Math.cos(along * x) * rows;
      double acrossSlope = -across * Math.sin(along * x) * Math.sin(across * y) / 2;
      double curvature =
          -along * along * Math.sin(along * x) * rows
              - across * across * Math.sin(along * x) * Math.cos(across * y) / 2;
      return conductivity(x, y) * (curvature + 1.2 / A * alongSlope - 0.7 / B * acrossSlope);
    }

    ConductionProblem problem() {
      double dx = A / cells;
      double dy = B / cells;
      List<Block> blocks = new ArrayList<>();
      for (int j = 0; j < cells; j++) {
        for (int i = 0; i < cells; i++) {
          Box box =
              blocks.isEmpty()
                  ? Box.ofSize(A, B, 1)
                  : new Box(new Point(i * dx, j * dy, 0), new Point((i + 1) * dx, (j + 1) * dy, 1));
          double x = (i + 0.5) * dx;
          double y = (j + 0.5) * dy;
          blocks.add(
              new Block.Solid(i + "/" + j, box, material(conductivity(x, y), capacity(x, y))));
        }
      }
      ConductionProblem.Builder builder =
          ConductionProblem.builder(new Layout(blocks), MeshControl.uniform(1))
              .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(290));
      for (int j = 0; j < cells; j++) {
        for (int i = 0; i < cells; i++) {
          double stored = 0;
          double conducted = 0;
          for (int m = 0; m < 3; m++) {
            for (int n = 0; n < 3; n++) {
              double x = (i + GAUSS[m]) * dx;
              double y = (j + GAUSS[n]) * dy;
              double area = WEIGHT[m] * WEIGHT[n] * dx * dy;
              stored += area * capacity(x, y) * shape(x, y);
              conducted += area * divergence(x, y);
            }
          }
          double byRate = stored;
          double byValue = conducted;
          String name = i + "/" + j;
          builder.initial(name, 290 + p(0) * shape((i + 0.5) * dx, (j + 0.5) * dy));
          builder.source(name, time -> byRate * rate(time) - byValue * p(time));
        }
      }
      ConductionProblem problem = builder.initial(290).build();
      assertEquals(cells * cells, problem.network().grid().cellCount());
      return problem;
    }
  }

  @Test
  void cellsAreOfSecondOrderWhereConductivityAndCapacityVary() {
    double[] cells = {12, 24, 48};
    double[] errors = new double[cells.length];
    for (int grid = 0; grid < cells.length; grid++) {
      errors[grid] =
          worst(
              new Plane((int) cells[grid]).problem(),
              steps(Plane.END / 8),
              Plane.END,
              (x, y, time) -> 290 + Plane.p(time) * Plane.shape(x, y));
    }
    Orders.check(2, 0.1, cells, errors);
  }

  /**
   * Along a line, conductivities live: k = k0(x) exp(F (T - 290)) and T = 290 + 12 sin(w t + 1)
   * cos(pi x / 3 L), with a film at x = 0 and a flux at x = L that vary in time.
   */
  private static final class Line {
    private static final double L = 0.06;
    private static final double F = 0.02;
    private static final double FILM = 15;
    private static final double OMEGA = 2 * Math.PI / 20_000;
    private static final double END = 12_000;
    private final int cells;

    Line(int cells) {
      this.cells = cells;
    }

    static double at(double x, double time) {
      return 290 + 12 * Math.sin(OMEGA * time + 1) * Math.cos(Math.PI * x / (3 * L));
    }

    private static double slope(double x, double time) {
      double wave = Math.PI / (3 * L);
      return -12 * wave * Math.sin(OMEGA * time + 1) * Math.sin(wave * x);
    }

    private static double stated(double x) {
      return 0.1 * Math.exp(0.9 * x / L);
    }

    private static double capacity(double x) {
      return 5e5 * (1 + 0.5 * Math.cos(3 * x / L));
    }

    private static double conductivity(double x, double time) {
      return stated(x) * Math.exp(F * (at(x, time) - 290));
    }

    /** Source that the heat equation needs [W/m3]. */
    private static double source(double x, double time) {
      double wave = Math.PI / (3 * L);
      double rate = 12 * OMEGA * Math.cos(OMEGA * time + 1) * Math.cos(wave * x);
      double slope = slope(x, time);
      double curvature = -wave * wave * (at(x, time) - 290);
      return capacity(x) * rate
          - conductivity(x, time) * (curvature + slope * (0.9 / L + F * slope));
    }

    ConductionProblem problem() {
      double dx = L / cells;
      List<Slab.Layer> layers = new ArrayList<>();
      for (int cell = 0; cell < cells; cell++) {
        double x = (cell + 0.5) * dx;
        Material of =
            material(stated(x), capacity(x))
                .withBehaviour(
                    new Behaviour.Corrected(
                        new TemperatureCorrection(F, 290, Source.assumed("steep for a test"))));
        layers.add(new Slab.Layer("" + cell, of, dx));
      }
      ConductionProblem.Builder builder =
          ConductionProblem.builder(Slab.layout(layers), MeshControl.uniform(1))
              .boundary(
                  Face.X_MIN,
                  new Boundary.Convection(
                      TimeFunction.constant(FILM),
                      time -> at(0, time) - conductivity(0, time) * slope(0, time) / FILM))
              .boundary(
                  Face.X_MAX,
                  new Boundary.PrescribedFlux(time -> conductivity(L, time) * slope(L, time)));
      for (int cell = 0; cell < cells; cell++) {
        double start = cell * dx;
        builder.initial("" + cell, at(start + dx / 2, 0));
        builder.source(
            "" + cell,
            time -> {
              double sum = 0;
              for (int point = 0; point < 3; point++) {
                sum += WEIGHT[point] * dx * source(start + GAUSS[point] * dx, time);
              }
              return sum;
            });
      }
      ConductionProblem problem = builder.initial(290).build();
      assertEquals(cells, problem.network().grid().cellCount());
      return problem;
    }
  }

  @Test
  void liveConductivitiesAreOfSecondOrderInSpaceAndTimeTogether() {
    double[] cells = {8, 16, 32, 64};
    double[] errors = new double[cells.length];
    for (int grid = 0; grid < cells.length; grid++) {
      errors[grid] =
          worst(
              new Line((int) cells[grid]).problem(),
              steps(Line.END / (2 * cells[grid])).live(),
              Line.END,
              (x, y, time) -> Line.at(x, time));
    }
    Orders.check(2, 0.15, cells, errors);
  }
}
