package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * Heat that enters a strip through a held part of its end, the rest of which is adiabatic. By the
 * conformal map w = sin(z) the constriction adds 2/(pi k) ln(1/sin(pi c/2)) to the resistance of a
 * strip of unit depth, c the held part of the width counted from one side (derived; tests of the
 * map: no resistance for c = 1, the logarithm of a slit in a half plane for small c).
 */
class ConstrictionTest {
  private static final double CONDUCTIVITY = 0.7;
  private static final double DEPTH = 0.5;

  /** What the far end does not feel is below exp(-2 pi L/b), 7e-9 for three widths. */
  private static final Box STRIP = Box.ofSize(1, DEPTH, 3);

  private static double resistance(double part, double cell) {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("strip", STRIP, Material.of("strip", CONDUCTIVITY, 1000, 1000))));
    var contact = FacePatch.part("contact", Face.Z_MIN, STRIP, new Range(0, part), new Range(0, 1));
    double heat =
        SteadySolver.solve(
                ConductionProblem.builder(layout, MeshControl.uniform(cell))
                    .boundary(contact, Boundary.PrescribedTemperature.of(300))
                    .boundary(Face.Z_MAX, Boundary.PrescribedTemperature.of(290))
                    .build())
            .heatFlows()
            .get("contact");
    return 10 / heat;
  }

  /**
   * The flux is singular at the edge of the contact, so that heat converges with the first power of
   * the cell; what two grids extrapolate to is good to a thousandth.
   */
  @Test
  void aHeldPartOfAnEndConstrictsTheHeat() {
    for (double part : new double[] {0.25, 0.5, 0.75}) {
      double plain = 3 / (CONDUCTIVITY * DEPTH);
      double exact =
          plain + 2 / (Math.PI * CONDUCTIVITY * DEPTH) * Math.log(1 / Math.sin(Math.PI * part / 2));
      double coarse = resistance(part, 1 / 40.0);
      double fine = resistance(part, 1 / 80.0);
      assertEquals(1, fine / exact, 0.004, "part " + part);
      assertEquals(1, (2 * fine - coarse) / exact, 2e-4, "part " + part);
      assertEquals(0.5, (fine - exact) / (coarse - exact), 0.05, "order at part " + part);
    }
  }
}
