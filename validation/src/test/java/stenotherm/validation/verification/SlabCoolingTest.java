package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.validation.studies.Exact.CoolingShape.SLAB;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * A slab with a film after a step of the ambient: eigenfunction series. The published table that
 * the series is checked against first holds for Bi = 1.
 */
class SlabCoolingTest {
  private static final double LENGTH = 0.1;
  private static final Material MATERIAL = Material.of("slab", 0.5, 1000, 1000);
  private static final double UNIT_FOURIER = LENGTH * LENGTH / MATERIAL.diffusivity();
  private static final double AMBIENT = 293.15;
  private static final double STEP = 10;

  private static ConductionProblem problem(double cell) {
    return problem(new MeshControl(cell, cell, 1.05));
  }

  private static ConductionProblem problem(MeshControl mesh) {
    return ConductionProblem.builder(
            Slab.layout(List.of(new Slab.Layer("slab", MATERIAL, LENGTH))), mesh)
        .boundary(Face.X_MAX, Boundary.Convection.of(MATERIAL.conductivity() / LENGTH, AMBIENT))
        .initial(AMBIENT + STEP)
        .build();
  }

  private static TransientSolution solve(ConductionProblem problem, IntegratorSettings settings) {
    return TransientSolver.solve(
        problem,
        List.of(
            new Probe.At("centre", Slab.at(0)),
            new Probe.At("surface", Slab.at(LENGTH)),
            new Probe.At("quarter", Slab.at(0.25 * LENGTH))),
        new double[] {0.1 * UNIT_FOURIER, 0.5 * UNIT_FOURIER, UNIT_FOURIER},
        settings);
  }

  @Test
  void seriesGivesKnownValues() {
    assertEquals(0.99310825, SLAB.cooling(1, 0.1, 0), 1e-8);
    assertEquals(0.72357724, SLAB.cooling(1, 0.1, 1), 1e-8);
    assertEquals(0.77252638, SLAB.cooling(1, 0.5, 0), 1e-8);
    assertEquals(0.50452193, SLAB.cooling(1, 0.5, 1), 1e-8);
    assertEquals(0.5338594, SLAB.cooling(1, 1, 0), 1e-7);
    assertEquals(0.34817685, SLAB.cooling(1, 1, 1), 1e-8);
  }

  @Test
  void historyFollowsSeries() {
    TransientSolution solution = solve(problem(LENGTH / 40), IntegratorSettings.adaptive(1e-4));
    assertTrue(solution.outcome().isCompleted());
    assertTrue(solution.ledger().closes());
    double worst = 0;
    for (int index = 0; index < 3; index++) {
      double fourier = solution.times()[index] / UNIT_FOURIER;
      worst = Math.max(worst, error(solution, "centre", index, fourier, 0));
      worst = Math.max(worst, error(solution, "surface", index, fourier, 1));
      worst = Math.max(worst, error(solution, "quarter", index, fourier, 0.25));
    }
    // 40 cells leave about (1/40)^2 of the 10 K step times a factor below 1: a quarter of the
    // target of 0.02 K
    assertEquals(0, worst, 0.005);
  }

  private static double error(
      TransientSolution solution, String probe, int index, double fourier, double position) {
    double exact = AMBIENT + STEP * SLAB.cooling(1, fourier, position);
    return Math.abs(solution.history(probe)[index] - exact);
  }

  @Test
  void errorFallsWithTheSquareOfTheCellWidth() {
    int[] wanted = {10, 20, 40, 80};
    String[] probes = {"centre", "surface"};
    for (int p = 0; p < 2; p++) {
      double[] cells = new double[wanted.length];
      double[] errors = new double[wanted.length];
      for (int grid = 0; grid < wanted.length; grid++) {
        // time error far below the space error of the finest grid
        ConductionProblem problem = problem(LENGTH / wanted[grid]);
        cells[grid] = problem.network().grid().cellCount();
        TransientSolution solution = solve(problem, IntegratorSettings.adaptive(3e-8));
        errors[grid] =
            Math.abs(solution.history(probes[p])[1] - AMBIENT - STEP * SLAB.cooling(1, 0.5, p));
      }
      // a second-order scheme; the last pairs are close to the limit of small cells
      Orders.check(2, 0.1, cells, errors);
    }
  }

  /** Graded grids that are scaled everywhere converge as uniform ones do. */
  @Test
  void errorFallsWithTheSquareOfTheScale() {
    double[] parts = {1, 2, 4, 8};
    double[] errors = new double[parts.length];
    for (int grid = 0; grid < parts.length; grid++) {
      MeshControl mesh = MeshControl.graded(LENGTH / 5, LENGTH / 20).scaled(1 / parts[grid]);
      TransientSolution solution = solve(problem(mesh), IntegratorSettings.adaptive(3e-8));
      errors[grid] = error(solution, "surface", 1, 0.5, 1);
    }
    // the number of cells is whole, so that the scale is met only to a part of a cell
    Orders.check(2, 0.2, parts, errors);
  }
}
