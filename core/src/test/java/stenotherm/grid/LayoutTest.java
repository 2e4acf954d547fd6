package stenotherm.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Material;

/** Layouts, blocks, boxes, points and mesh controls check themselves. */
class LayoutTest {
  private static final Material FOAM = Material.of("foam", 0.036, 20, 1450);

  private static void assertRefused(String message, Executable executable) {
    assertEquals(message, assertThrows(InvalidInputException.class, executable).getMessage());
  }

  private static Block solid(String name, double x0, double x1) {
    return new Block.Solid(name, new Box(new Point(x0, 0, 0), new Point(x1, 1, 1)), FOAM);
  }

  @Test
  void layoutNeedsABlock() {
    assertRefused("blocks: must not be empty", () -> new Layout(List.of()));
  }

  @Test
  void namesAreUnique() {
    assertRefused(
        "block name: 'a' occurs twice; every block needs a name of its own",
        () -> new Layout(List.of(solid("a", 0, 1), solid("a", 0, 1))));
    assertRefused("block name: must not be blank", () -> solid(" ", 0, 1));
    assertRefused(
        "environment name: must not be blank",
        () -> new Block.Environment("", Box.ofSize(1, 1, 1)));
  }

  @Test
  void blocksStayInTheDomain() {
    assertRefused(
        "block 'b': sticks out of 'a' at xMax by 12.50 mm",
        () -> new Layout(List.of(solid("a", 0, 1), solid("b", 0.5, 1.0125))));
    assertRefused(
        "block 'b': sticks out of 'a' at xMin by 500.00 mm",
        () -> new Layout(List.of(solid("a", 0, 1), solid("b", -0.5, 1))));
    // round-off is no sticking out
    assertEquals(1, new Layout(List.of(solid("a", 0, 0.3), solid("b", 0, 0.1 + 0.2))).indexOf("b"));
  }

  @Test
  void firstBlockFillsItsBox() {
    Block round = new Block.Solid("a", Box.ofSize(1, 1, 1), FOAM, Shape.CYLINDER_Z);
    assertRefused(
        "block 'a': is the first and must fill its box; put a box around the CYLINDER_Z",
        () -> new Layout(List.of(round)));
  }

  @Test
  void radiiAreNotNegativeAndBlocksAreWhole() {
    Block rod = new Block.Solid("rod", Box.ofSize(1, 2 * Math.PI, 1), FOAM);
    Block wedge = new Block.Solid("wedge", Box.ofSize(1, 1, 1), FOAM);
    assertEquals(Coordinates.CYLINDRICAL, Layout.cylindrical(List.of(rod)).coordinates());
    assertRefused(
        "inner radius: -1 m must be a finite number, 0 or above",
        () -> Layout.cylindrical(List.of(solid("a", -1, 1))));
    assertRefused(
        "block 'wedge': ends along y, but nothing may vary along a whole turn; half a turn, 0 to pi, does"
            + " for what is symmetric about a plane",
        () -> Layout.cylindrical(List.of(rod, wedge)));
    Block round = new Block.Solid("round", Box.ofSize(1, 1, 1), FOAM, Shape.CYLINDER_X);
    assertRefused(
        "block 'round': is a CYLINDER_X; where x is a radius every block has the shape BOX",
        () -> Layout.cylindrical(List.of(wedge, round)));
    assertRefused(
        "block 'low': ends along z, which measures nothing in a sphere",
        () ->
            Layout.spherical(List.of(wedge, new Block.Solid("low", Box.ofSize(1, 1, 0.5), FOAM))));
    assertThrows(
        InvalidInputException.class,
        () -> Layout.cylindrical(List.of(new Block.Solid("a", Box.ofSize(1, 7, 1), FOAM))));
  }

  @Test
  void unknownBlockIsNamed() {
    Layout layout = new Layout(List.of(solid("a", 0, 1), solid("b", 0, 1)));
    assertRefused("block: there is no \"c\". Known: a, b.", () -> layout.indexOf("c"));
    assertEquals(Box.ofSize(1, 1, 1), layout.domain());
  }

  @Test
  void boxMeasuresItself() {
    Box box = new Box(new Point(1, 2, 3), new Point(2, 4, 7));
    assertEquals(4, box.size(Axis.Z));
    assertEquals(8, box.volume());
    assertEquals(4, box.area(Face.Y_MIN));
    assertEquals(8, box.area(Face.X_MAX));
    assertEquals(7, box.at(Face.Z_MAX));
    assertEquals(2, box.at(Face.Y_MIN));
    assertEquals(new Point(1.5, 3, 5), box.centre());
    assertEquals(new Box(new Point(0, 2, 4), new Point(1, 4, 8)), box.plus(new Point(-1, 0, 1)));
    assertTrue(box.contains(new Point(1, 2, 7)));
    assertFalse(box.contains(new Point(0.99, 2, 7)));
  }

  @Test
  void boxesOverlapByTheirSmallestSharedExtent() {
    Box box = Box.ofSize(1, 1, 1);
    assertEquals(0.25, box.overlap(box.plus(new Point(0.75, 0.5, 0))), 1e-12);
    assertEquals(-1, box.overlap(box.plus(new Point(2, 0, 0))), 1e-12);
    assertEquals(0, box.overlap(box.plus(new Point(1, 0, 0))), 1e-12);
    assertEquals(0.75, box.excess(box.plus(new Point(0.75, 0, 0)), Face.X_MAX), 1e-12);
    assertEquals(-0.75, box.excess(box.plus(new Point(0.75, 0, 0)), Face.X_MIN), 1e-12);
  }

  @Test
  void boxHasAVolume() {
    assertRefused(
        "box: Y runs from 1 m to 1 m; the end must be larger than the start",
        () -> new Box(new Point(0, 1, 0), new Point(1, 1, 1)));
    assertRefused("z: NaN m is not a finite number", () -> new Point(0, 0, Double.NaN));
  }

  @Test
  void meshControlChecksItself() {
    assertRefused(
        "largest cell: 0 m must be a finite number above 0", () -> new MeshControl(0, 0.1, 1.4));
    assertRefused(
        "first cell: NaN m must be a finite number above 0",
        () -> new MeshControl(1, Double.NaN, 1.4));
    assertRefused(
        "first cell: 0.2 m must not be above the largest cell, 0.1 m",
        () -> MeshControl.graded(0.1, 0.2));
    assertRefused(
        "edge cell: 0 m must be a finite number above 0",
        () -> MeshControl.graded(0.2, 0.1).withEdgeCell(0));
    assertRefused(
        "edge cell: 0.2 m must not be above the first cell, 0.1 m",
        () -> MeshControl.graded(0.3, 0.1).withEdgeCell(0.2));
    assertRefused(
        "growth of cells: 20 must lie between 1.0001 and 16. 1.4 is usual.",
        () -> new MeshControl(1, 1, 20));
    assertRefused(
        "mesh scale: -1 must be a finite number above 0", () -> MeshControl.uniform(1).scaled(-1));
  }

  @Test
  void scalingScalesTheTargetWidthEverywhere() {
    assertEquals(new MeshControl(2, 0.2, 1.2 * 1.2), new MeshControl(1, 0.1, 1.2).scaled(2));
    assertEquals(
        new MeshControl(0.5, 0.05, Math.sqrt(1.2)), new MeshControl(1, 0.1, 1.2).scaled(0.5));
    assertEquals(new MeshControl(2, 2, MeshControl.DEFAULT_GROWTH), MeshControl.uniform(2));
    assertEquals(16, new MeshControl(1, 1, 1.7).scaled(6).growth());
    assertEquals(0.1, MeshControl.uniform(2).withEdgeCell(0.2).scaled(0.5).edgeCell());
    MeshControl other = MeshControl.uniform(2).withEdgeCell(0.2).within(GridBudget.standard());
    assertEquals(0.2, other.edgeCell());
  }

  @Test
  void namesOfFacesAreTaken() {
    assertRefused(
        "block name: 'xMin' is the name of a face of the domain",
        () ->
            new Layout(
                List.of(
                    new Block.Solid(
                        "xMin", Box.ofSize(1, 1, 1), Material.of("stone", 1, 2000, 1000)))));
  }
}
