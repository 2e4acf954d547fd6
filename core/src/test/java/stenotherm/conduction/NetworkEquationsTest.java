package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.conduction.Bodies.FOAM;
import static stenotherm.conduction.Bodies.WATER;
import static stenotherm.conduction.Bodies.assertRefused;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Materials;

/** What the numbers handed out mean, told by a state that the solver found. */
class NetworkEquationsTest {
  private static final double FILM = 7;
  private static final double AMBIENT = 270;
  private static final double HELD = 300;
  private static final double FLUX = 3;
  private static final double POWER = 2;

  private static Block solid(String name, double from, double to) {
    Point min = new Point(from, from, from);
    return new Block.Solid(name, new Box(min, new Point(to, to, to)), FOAM);
  }

  /** A cube with a heated core in a cup, a hole at a corner, and all kinds of boundary. */
  private static ConductionProblem cube() {
    Box hole = new Box(new Point(0, 0, 0), new Point(0.02, 0.02, 0.04));
    Layout layout =
        new Layout(
            List.of(
                solid("foam", 0, 0.1),
                solid("core", 0.04, 0.07),
                new Block.Environment("hole", hole)));
    return ConductionProblem.builder(layout, MeshControl.uniform(0.02))
        .boundary(Face.X_MAX, Boundary.Convection.of(FILM, AMBIENT))
        .boundary(Face.Y_MAX, Boundary.PrescribedTemperature.of(HELD))
        .boundary(Face.Z_MIN, Boundary.PrescribedFlux.of(FLUX))
        .boundary("hole", Boundary.Convection.of(FILM, AMBIENT))
        .thinResistance(ThinResistance.around(Set.of("core"), 0.03))
        .source("core", TimeFunction.constant(POWER))
        .build();
  }

  private static double sum(double[] values) {
    return Arrays.stream(values).sum();
  }

  @Test
  void aSteadyStateSolvesThem() {
    ConductionProblem problem = cube();
    HeatNetwork network = problem.network();
    NetworkEquations equations = NetworkEquations.of(network);
    TemperatureField field = SteadySolver.solve(problem).field();
    double[] temperature = new double[equations.cells()];
    int solid = 0;
    for (int cell = 0; cell < network.grid().cellCount(); cell++) {
      if (network.isSolid(cell)) {
        temperature[solid++] = field.ofCell(cell);
      }
    }
    double[] heat = new double[equations.cells()];
    double[] conductance = equations.conductances();
    int[] first = equations.firstCells();
    int[] second = equations.secondCells();
    for (int pair = 0; pair < conductance.length; pair++) {
      double flow = conductance[pair] * (temperature[first[pair]] - temperature[second[pair]]);
      heat[first[pair]] -= flow;
      heat[second[pair]] += flow;
    }
    double passed = 0;
    for (int p = 0; p < network.boundaryPorts().size(); p++) {
      int[] cells = equations.boundaryCells(p);
      double[] area = equations.boundaryAreas(p);
      double[] resistance = equations.boundaryResistances(p);
      BoundaryKind kind = network.boundaryPorts().get(p).kind();
      for (int face = 0; face < cells.length; face++) {
        double own = temperature[cells[face]];
        double flux =
            switch (kind) {
              case CONVECTION -> (AMBIENT - own) / (resistance[face] + 1 / FILM);
              case TEMPERATURE -> (HELD - own) / resistance[face];
              default -> FLUX;
            };
        heat[cells[face]] += area[face] * flux;
        passed += Math.abs(area[face] * flux);
      }
    }
    int[] heated = equations.sourceCells(0);
    double[] share = equations.sourceShares(0);
    for (int cell = 0; cell < heated.length; cell++) {
      heat[heated[cell]] += POWER * share[cell];
    }
    for (double rest : heat) {
      // the solver's tolerance, far below the heat of one face
      assertEquals(0, rest, 1e-7 * passed);
    }
  }

  @Test
  void capacitiesSharesAndMeansAreThoseOfTheNetwork() {
    ConductionProblem problem = cube();
    HeatNetwork network = problem.network();
    NetworkEquations equations = NetworkEquations.of(network);
    assertEquals(network.solidCellCount(), equations.cells());
    assertEquals(network.totalCapacity(), sum(equations.capacities()), 1e-12);
    assertEquals(1, sum(equations.sourceShares(0)), 1e-14);
    assertEquals(1, sum(equations.blockShares("foam")), 1e-14);
    assertEquals(
        equations.cells(),
        equations.blockCells("foam").length + equations.blockCells("core").length);
    for (int p = 0; p < network.boundaryPorts().size(); p++) {
      assertEquals(network.boundaryPorts().get(p).area(), sum(equations.boundaryAreas(p)), 1e-15);
    }
  }

  @Test
  void whatMeltsHasNone() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("water", Bodies.slice(0, 1), WATER),
                new Block.Solid("ice", Bodies.slice(0, 0.5), Materials.ICE_PACK)));
    HeatNetwork network = HeatNetwork.builder(layout, MeshControl.uniform(0.5)).build();
    assertRefused(
        "network: is not linear, since 'ice' can melt; step every cell instead",
        () -> NetworkEquations.of(network));
  }
}
