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
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/**
 * A brick that cools through films on all faces: the product of three slabs (Carslaw and Jaeger,
 * section 5.6).
 */
class BrickTest {
  private static final double[] HALF = {0.10, 0.08, 0.05};
  private static final Material MATERIAL = Material.of("brick", 0.5, 2000, 1000);
  private static final double FILM = 10;

  private static double exact(double time, double x, double y, double z) {
    double[] part = {x, y, z};
    double product = 1;
    for (int axis = 0; axis < 3; axis++) {
      double half = HALF[axis];
      double fourier = MATERIAL.diffusivity() * time / (half * half);
      product *= SLAB.cooling(FILM * half / MATERIAL.conductivity(), fourier, part[axis]);
    }
    return product;
  }

  @Test
  void productGivesKnownValues() {
    assertEquals(0.95866589, exact(1800, 0, 0, 0), 1e-8);
    assertEquals(0.18094345, exact(3600, 1, 1, 1), 1e-8);
    assertEquals(0.37682669, exact(7200, 0.5, 0.5, 0.5), 1e-8);
  }

  @Test
  void eighthOfBrickFollowsProduct() {
    double ambient = 283.15;
    double step = 10;
    Layout layout =
        new Layout(
            List.of(new Block.Solid("brick", Box.ofSize(HALF[0], HALF[1], HALF[2]), MATERIAL)));
    Boundary film = Boundary.Convection.of(FILM, ambient);
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.uniform(0.0025))
            .boundary(Face.X_MAX, film)
            .boundary(Face.Y_MAX, film)
            .boundary(Face.Z_MAX, film)
            .initial(ambient + step)
            .build();
    double[][] parts = {
      {0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 1}, {0.5, 0.5, 0.5}, {1, 1, 0}
    };
    List<Probe> probes =
        java.util.stream.IntStream.range(0, parts.length)
            .mapToObj(
                p ->
                    (Probe)
                        new Probe.At(
                            "p" + p,
                            new Point(
                                parts[p][0] * HALF[0],
                                parts[p][1] * HALF[1],
                                parts[p][2] * HALF[2])))
            .toList();
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            probes,
            new double[] {1800, 3600, 7200, 14400},
            IntegratorSettings.adaptive(1e-3));
    assertTrue(solution.ledger().closes());
    double worst = 0;
    for (int time = 0; time < 4; time++) {
      for (int p = 0; p < parts.length; p++) {
        double exact =
            ambient + step * exact(solution.times()[time], parts[p][0], parts[p][1], parts[p][2]);
        worst = Math.max(worst, Math.abs(solution.history("p" + p)[time] - exact));
      }
    }
    // the library's target for interior points; a convex corner without contrast is smooth enough
    // for it
    assertEquals(0, worst, 0.02);
  }
}
