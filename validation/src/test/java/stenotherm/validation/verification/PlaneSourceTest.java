package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.InnerSurface;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * Heat released on the plane between two layers, each so thick that nothing arrives at its far end.
 *
 * <p>A half space takes 2 q sqrt(t) ierfc(x / (2 sqrt(a t))) / e from a constant flux q, with the
 * diffusivity a and the effusivity e = sqrt(k rho c) (Carslaw and Jaeger, Conduction of Heat in
 * Solids, 2nd edition, section 2.9). Both surfaces are equally warm at all times if each half space
 * takes a part of the flux as its effusivity: T = 2 q sqrt(t) ierfc(x / (2 sqrt(a t))) / (e_1 +
 * e_2) on either side.
 */
class PlaneSourceTest {
  private static final Material FOAM = Material.of("foam", 0.04, 40, 1400);
  private static final Material STONE = Material.of("stone", 1.4, 2300, 880);
  private static final double START = 290;
  private static final double POWER = 80;
  private static final double END = 3600;
  private static final double FOAM_DEPTH = 0.4;
  private static final double STONE_DEPTH = 0.5;

  private static double effusivity(Material material) {
    return Math.sqrt(material.conductivity() * material.volumetricHeatCapacity());
  }

  private static double rise(Material material, double distance) {
    double eta = distance / (2 * Math.sqrt(material.diffusivity() * END));
    double ierfc = Math.exp(-eta * eta) / Math.sqrt(Math.PI) - eta * Erf.erfc(eta);
    return 2 * POWER * Math.sqrt(END) * ierfc / (effusivity(FOAM) + effusivity(STONE));
  }

  /** Errors on the surface, in the foam and in the stone [K]. */
  private static double[] errors(double cell, int steps) {
    ConductionProblem problem =
        ConductionProblem.builder(
                Slab.layout(
                    List.of(
                        new Slab.Layer("foam", FOAM, FOAM_DEPTH),
                        new Slab.Layer("stone", STONE, STONE_DEPTH))),
                MeshControl.uniform(cell))
            .source(
                "wet", InnerSurface.of("foam", Face.X_MAX, "stone"), TimeFunction.constant(POWER))
            .initial(START)
            .build();
    double inFoam = 0.03;
    double inStone = 0.04;
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            List.of(
                new Probe.At("surface", Slab.at(FOAM_DEPTH)),
                new Probe.At("foam", Slab.at(FOAM_DEPTH - inFoam)),
                new Probe.At("stone", Slab.at(FOAM_DEPTH + inStone))),
            new double[] {END},
            IntegratorSettings.fixed(Scheme.TR_BDF2, END / steps));
    assertEquals(POWER * END, solution.ledger().sources().getOrDefault("wet", 0.0), 1e-6);
    return new double[] {
      Math.abs(solution.last("surface") - START - rise(STONE, 0)),
      Math.abs(solution.last("foam") - START - rise(FOAM, inFoam)),
      Math.abs(solution.last("stone") - START - rise(STONE, inStone))
    };
  }

  /** Steps are so short that what they leave does not show. */
  @Test
  void halvingTheCellsQuartersTheError() {
    double[] cells = {90, 180, 360};
    double[][] errors = new double[3][cells.length];
    for (int grid = 0; grid < cells.length; grid++) {
      double[] of = errors((FOAM_DEPTH + STONE_DEPTH) / cells[grid], 2000);
      for (int place = 0; place < of.length; place++) {
        errors[place][grid] = of[place];
      }
    }
    for (double[] each : errors) {
      Orders.check(2, 0.1, cells, each);
      // a fortieth of the library's target of 0.02 K
      assertEquals(0, each[2], 5e-4);
    }
  }
}
