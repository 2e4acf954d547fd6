package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.junit.jupiter.api.Test;
import stenotherm.grid.Block;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;

class StructuredSystemTest {
  /** A dense factorisation tells the answer, also after a few cells of the diagonal changed. */
  @Test
  void solvesLikeADenseFactorisation() {
    Layout halves =
        new Layout(
            List.of(
                new Block.Solid("foam", Bodies.slice(0, 1), Bodies.FOAM),
                new Block.Solid("water", Bodies.slice(0.5, 1), Bodies.WATER)));
    HeatNetwork network = HeatNetwork.builder(halves, MeshControl.uniform(0.15)).build();
    StructuredSystem system = new StructuredSystem(network);
    Random random = new Random(5);
    double[] addition = system.vector();
    double[] b = system.vector();
    double sum = 0;
    for (int i = system.pad; i < system.pad + system.cells; i++) {
      addition[i] = 1e-4 * random.nextDouble();
      sum += addition[i];
      b[i] = random.nextGaussian();
    }
    system.factor(addition);
    assertSolves(system, b);
    int[] at = {system.pad, system.pad + 1, system.pad + 7, system.pad + system.cells - 1};
    for (int i : at) {
      addition[i] += 1;
    }
    system.refactor(at, addition, sum + at.length);
    assertSolves(system, b);
  }

  private static void assertSolves(StructuredSystem system, double[] b) {
    DMatrixRMaj matrix = new DMatrixRMaj(system.cells, system.cells);
    double[] unit = system.vector();
    double[] column = system.vector();
    for (int j = 0; j < system.cells; j++) {
      unit[system.pad + j] = 1;
      system.multiply(unit, column);
      unit[system.pad + j] = 0;
      for (int i = 0; i < system.cells; i++) {
        matrix.set(i, j, column[system.pad + i]);
      }
    }
    double[] right = Arrays.copyOfRange(b, system.pad, system.pad + system.cells);
    DMatrixRMaj solution = new DMatrixRMaj(system.cells, 1);
    assertTrue(CommonOps_DDRM.solve(matrix, new DMatrixRMaj(right), solution));
    double[] expected = solution.getData();
    double[] x = system.vector();
    system.solve(b, x, 1e-12);
    double largest = Arrays.stream(expected).map(Math::abs).max().orElseThrow();
    double[] actual = Arrays.copyOfRange(x, system.pad, system.pad + system.cells);
    // the tolerance is one of the energy norm, in which the stiffest cell weighs some 1e4 of
    // another
    assertArrayEquals(expected, actual, 1e-8 * largest);
  }
}
