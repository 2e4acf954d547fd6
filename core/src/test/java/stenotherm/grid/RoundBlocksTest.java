package stenotherm.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Material;

class RoundBlocksTest {
  private static final Material FOAM = Material.of("foam", 0.036, 20, 1450);

  private static Block.Solid solid(String name, Box box, Shape shape) {
    return new Block.Solid(name, box, FOAM, shape);
  }

  private static Box box(double x0, double x1, double z0, double z1) {
    return new Box(new Point(x0, x0, z0), new Point(x1, x1, z1));
  }

  private static double volume(RectilinearGrid grid, int block) {
    double sum = 0;
    for (int cell : grid.cellsOf(block)) {
      sum += grid.volume(cell);
    }
    return sum;
  }

  /** A cup of air with a damp towel on its floor and an animal on the towel, in a box of fill. */
  @Test
  void nestedBlocksKeepTheirTrueVolumes() {
    Layout layout =
        new Layout(
            List.of(
                solid("fill", box(0, 0.2, 0, 0.12), Shape.BOX),
                solid("air", box(0.05, 0.15, 0.02, 0.1), Shape.CYLINDER_Z),
                solid("towel", box(0.05, 0.15, 0.02, 0.026), Shape.CYLINDER_Z),
                solid("animal", box(0.08, 0.12, 0.026, 0.05), Shape.BOX)));
    for (double cell : new double[] {0.017, 0.01, 0.005}) {
      RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.graded(cell, cell / 2));
      double disc = Math.PI * 0.0025;
      double animal = 0.04 * 0.04 * 0.024;
      // 16 lines to a cut cell: 3e-4 of the cylinder at three cells to the radius
      assertEquals(disc * 0.006, volume(grid, 2), 3e-4 * disc * 0.006);
      assertEquals(animal, volume(grid, 3), 1e-12);
      assertEquals(disc * 0.074 - animal, volume(grid, 1), 3e-4 * disc * 0.08);
      assertEquals(0.2 * 0.2 * 0.12 - disc * 0.08, volume(grid, 0), 3e-4 * disc * 0.08);
    }
  }

  /** Two cylinders at right angles have 16 r³ / 3 in common (Archimedes). */
  @Test
  void cylindersAtRightAnglesShareTheKnownVolume() {
    Layout layout =
        new Layout(
            List.of(
                solid("domain", box(-2, 2, -2, 2), Shape.BOX),
                solid("along x", box(-1, 1, -1, 1), Shape.CYLINDER_X),
                solid("along z", box(-1, 1, -1, 1), Shape.CYLINDER_Z)));
    RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.uniform(0.2));
    double left = 2 * Math.PI - 16 / 3.0;
    assertEquals(2 * Math.PI, volume(grid, 2), 1e-3);
    // cells that both cut are sampled, not exact along lines
    assertEquals(left, volume(grid, 1), 5e-3);
    assertEquals(64, volume(grid, 0) + volume(grid, 1) + volume(grid, 2), 1e-9);
  }

  @Test
  void stepsKnowTheirCylinder() {
    Layout layout =
        new Layout(
            List.of(
                solid("fill", box(-2, 2, -2, 2), Shape.BOX),
                solid("rod", box(-1, 1, -1, 1), Shape.CYLINDER_Z)));
    RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.uniform(0.25));
    assertTrue(grid.hasSteps());
    int steps = 0;
    for (int cell : grid.cellsOf(1)) {
      for (Face face : Face.values()) {
        Optional<Axis> axis = grid.axisOfStep(face, cell);
        if (axis.isPresent()) {
          assertEquals(Axis.Z, axis.get());
          assertTrue(face.axis() != Axis.Z);
          assertTrue(grid.surfaceArea(face, cell) <= grid.faceArea(face, cell));
          steps++;
        }
      }
    }
    // each of the 8 rows and 8 columns begins and ends once, in 8 layers
    assertEquals(32 * 8, steps);
    assertTrue(Shape.CYLINDER_Z.isCurvedAcross(Axis.X));
    assertTrue(!Shape.CYLINDER_Z.isCurvedAcross(Axis.Z) && !Shape.BOX.isCurvedAcross(Axis.X));
  }

  @Test
  void shellThinnerThanCellsIsRefused() {
    Layout layout =
        new Layout(
            List.of(
                solid("fill", box(0, 1, 0, 1), Shape.BOX),
                solid("tube", box(0, 1, 0, 1), Shape.CYLINDER_Z),
                solid("core", box(0.001, 0.999, 0, 1), Shape.CYLINDER_Z)));
    String message =
        assertThrows(
                InvalidInputException.class,
                () -> RectilinearGrid.of(layout, MeshControl.uniform(0.1)))
            .getMessage();
    assertTrue(message.startsWith("mesh: too coarse for block 'tube': "), message);
  }
}
