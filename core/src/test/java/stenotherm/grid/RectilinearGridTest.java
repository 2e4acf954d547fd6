package stenotherm.grid;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.InvalidInputException;
import stenotherm.material.Material;

class RectilinearGridTest {
  private static final Material FOAM = Material.of("foam", 0.036, 20, 1450);
  private static final Material BOARD = Material.of("board", 0.05, 170, 1400);
  private static final Material STEEL = Material.of("steel", 50, 7800, 450);

  private static Box box(double x0, double x1) {
    return new Box(new Point(x0, 0, 0), new Point(x1, 1, 1));
  }

  @Test
  void laterBlocksOverrideEarlierOnes() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("a", box(0, 3), FOAM),
                new Block.Solid("b", box(1, 3), STEEL),
                new Block.Environment("c", box(2, 3))));
    RectilinearGrid grid =
        RectilinearGrid.of(layout, MeshControl.uniform(10), Set.of(Axis.Y, Axis.Z));
    assertEquals(3, grid.cellCount());
    assertArrayEquals(new double[] {0, 1, 2, 3}, grid.lines(Axis.X), 1e-12);
    assertArrayEquals(new int[] {0}, grid.cellsOf(0));
    assertArrayEquals(new int[] {1}, grid.cellsOf(1));
    assertArrayEquals(new int[] {2}, grid.cellsOf(2));
    assertEquals(layout, grid.layout());
  }

  @Test
  void coveredBlockKeepsNoCells() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("a", box(0, 3), FOAM),
                new Block.Solid("hidden", box(1, 2), STEEL),
                new Block.Solid("cover", box(0.5, 2.5), FOAM)));
    RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.uniform(0.5));
    assertEquals(0, grid.cellsOf(1).length);
    assertTrue(grid.cellsOf(2).length > 0);
  }

  @Test
  void indexRunsFastestAlongX() {
    Layout layout = new Layout(List.of(new Block.Solid("a", Box.ofSize(2, 3, 4), FOAM)));
    RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.uniform(0.9));
    int nx = grid.count(Axis.X);
    int ny = grid.count(Axis.Y);
    int nz = grid.count(Axis.Z);
    assertEquals(nx * ny * nz, grid.cellCount());
    assertEquals(1, grid.stride(Axis.X));
    assertEquals(nx, grid.stride(Axis.Y));
    assertEquals(nx * ny, grid.stride(Axis.Z));
    int cell = grid.cell(1, 2, 3);
    assertEquals(1 + nx * (2 + ny * 3), cell);
    assertEquals(1, grid.position(Axis.X, cell));
    assertEquals(2, grid.position(Axis.Y, cell));
    assertEquals(3, grid.position(Axis.Z, cell));
  }

  @Test
  void onlyStrongContrastsAreGraded() {
    MeshControl control = MeshControl.graded(0.1, 0.001);
    Layout weak =
        new Layout(
            List.of(new Block.Solid("a", box(0, 2), FOAM), new Block.Solid("b", box(1, 2), BOARD)));
    Layout strong =
        new Layout(
            List.of(new Block.Solid("a", box(0, 2), FOAM), new Block.Solid("b", box(1, 2), STEEL)));
    assertTrue(widthLeftOfOne(RectilinearGrid.of(weak, control)) > 0.05);
    assertTrue(widthLeftOfOne(RectilinearGrid.of(strong, control)) <= 0.001 * (1 + 1e-9));
  }

  @Test
  void fineEdgesGetSmallCellsOnBothSides() {
    MeshControl control = new MeshControl(0.2, 0.2, 1.7).withEdgeCell(0.01);
    Block.Solid plain = new Block.Solid("b", box(1, 2), BOARD);
    Block.Solid foam = new Block.Solid("a", box(0, 3), FOAM);
    RectilinearGrid coarse = RectilinearGrid.of(new Layout(List.of(foam, plain)), control);
    RectilinearGrid fine =
        RectilinearGrid.of(new Layout(List.of(foam, plain.withFineEdges())), control);
    assertTrue(widthLeftOfOne(coarse) > 0.1);
    for (double plane : new double[] {1, 2}) {
      int[] beside = fine.positionsAt(Axis.X, plane);
      for (int position : beside) {
        assertTrue(fine.width(Axis.X, position) <= 0.01 * (1 + 1e-9));
        assertTrue(fine.width(Axis.X, position) > 0.005);
      }
      assertEquals(2, beside.length);
    }
    for (int position = 1; position < fine.count(Axis.X); position++) {
      double ratio = fine.width(Axis.X, position) / fine.width(Axis.X, position - 1);
      assertTrue(Math.max(ratio, 1 / ratio) <= 1.7 * (1 + 1e-9));
    }
  }

  private static double widthLeftOfOne(RectilinearGrid grid) {
    return grid.width(Axis.X, grid.positionsAt(Axis.X, 1)[0]);
  }

  @Test
  void facesApartByRoundOffShareALine() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("a", box(0, 1), FOAM),
                new Block.Solid("b", box(0, 0.1 + 0.2), STEEL),
                new Block.Solid("c", box(0.3, 1), BOARD)));
    RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.uniform(1));
    for (int position = 0; position < grid.count(Axis.X); position++) {
      assertTrue(grid.width(Axis.X, position) > 0.01);
    }
    assertEquals(0, grid.cellsOf(0).length);
  }

  @Test
  void findsOneCellOrTheTwoBesideALine() {
    Layout layout = new Layout(List.of(new Block.Solid("a", Box.ofSize(3, 1, 1), FOAM)));
    RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.uniform(1));
    double line = grid.line(Axis.X, 1);
    assertArrayEquals(new int[] {0, 1}, grid.positionsAt(Axis.X, line));
    assertArrayEquals(new int[] {0}, grid.positionsAt(Axis.X, 0));
    assertArrayEquals(new int[] {0}, grid.positionsAt(Axis.X, line / 2));
    assertArrayEquals(new int[] {grid.count(Axis.X) - 1}, grid.positionsAt(Axis.X, 3));
    InvalidInputException thrown =
        assertThrows(InvalidInputException.class, () -> grid.positionsAt(Axis.X, 3.5));
    assertEquals("point: X = 3.5 m lies outside the domain, 0 m to 3 m", thrown.getMessage());
  }

  @Test
  void refusesOneCellWhereABlockEnds() {
    Layout layout =
        new Layout(
            List.of(new Block.Solid("a", box(0, 2), FOAM), new Block.Solid("b", box(1, 2), STEEL)));
    InvalidInputException thrown =
        assertThrows(
            InvalidInputException.class,
            () -> RectilinearGrid.of(layout, MeshControl.uniform(1), Set.of(Axis.X)));
    assertEquals(
        "mesh: one cell along X, but blocks end inside the domain along it", thrown.getMessage());
  }

  @Test
  void refusesTooManyCells() {
    Layout layout = new Layout(List.of(new Block.Solid("a", Box.ofSize(1, 1, 1), FOAM)));
    InvalidInputException thrown =
        assertThrows(
            InvalidInputException.class,
            () -> RectilinearGrid.of(layout, MeshControl.uniform(1e-4)));
    assertTrue(
        thrown
            .getMessage()
            .startsWith(
                "grid: 1.00003e+12 cells would take about 500013 GB and 47223.4 h; allowed"),
        thrown.getMessage());
  }

  @Test
  void refusesTooManyLinesOfOneAxis() {
    Layout layout = new Layout(List.of(new Block.Solid("a", Box.ofSize(1, 1, 1), FOAM)));
    for (double cell : new double[] {1e-9, 1e-12}) {
      InvalidInputException thrown =
          assertThrows(
              InvalidInputException.class,
              () -> RectilinearGrid.of(layout, MeshControl.uniform(cell), Set.of(Axis.Y, Axis.Z)));
      assertTrue(thrown.getMessage().contains(" allowed are 2000000 cells"), thrown.getMessage());
    }
  }

  @Test
  void refusalBlamesTheLongestOrTheThinnest() {
    GridBudget small = new GridBudget(10_000, Long.MAX_VALUE);
    Layout lump = new Layout(List.of(new Block.Solid("a", Box.ofSize(1, 2.8, 1), FOAM)));
    InvalidInputException large =
        assertThrows(
            InvalidInputException.class,
            () -> RectilinearGrid.of(lump, MeshControl.uniform(0.05).within(small)));
    assertTrue(
        large.getMessage().endsWith("Most lie along y, 56: all is 2800 mm long."),
        large.getMessage());
    Layout sheet =
        new Layout(
            List.of(
                new Block.Solid("a", Box.ofSize(1, 1, 1), FOAM),
                new Block.Solid(
                    "film", new Box(new Point(0, 0, 0.5), new Point(1, 1, 0.50001)), STEEL)));
    InvalidInputException thin =
        assertThrows(
            InvalidInputException.class,
            () -> RectilinearGrid.of(sheet, MeshControl.uniform(0.05).within(small)));
    assertTrue(
        thin.getMessage().endsWith(": a layer at z = 500 mm is only 0.01 mm thick."),
        thin.getMessage());
  }

  @Test
  void sizeIsKnownBeforeTheGrid() {
    Layout layout =
        new Layout(
            List.of(new Block.Solid("a", box(0, 3), FOAM), new Block.Solid("b", box(1, 3), STEEL)));
    MeshControl mesh = MeshControl.graded(0.1, 0.01);
    RectilinearGrid grid = RectilinearGrid.of(layout, mesh);
    GridSize size = RectilinearGrid.size(layout, mesh);
    assertEquals(grid.cellCount(), size.cells());
    assertEquals(grid.count(Axis.X), size.along(Axis.X));
    // no lines are placed for a grid of this size
    assertTrue(RectilinearGrid.size(layout, MeshControl.uniform(1e-9)).cells() > 2.9e27);
  }

  @Test
  void memoryIsPartOfTheBudget() {
    Layout layout = new Layout(List.of(new Block.Solid("a", Box.ofSize(1, 1, 1), FOAM)));
    GridSize size = RectilinearGrid.size(layout, MeshControl.uniform(0.1));
    GridBudget budget = new GridBudget(1331, 1_000_000);
    budget.require(size);
    InvalidInputException thrown =
        assertThrows(InvalidInputException.class, () -> budget.requireReducible(size));
    assertTrue(thrown.getMessage().contains("about 10 MB"), thrown.getMessage());
    assertTrue(thrown.getMessage().contains("allowed are 1331 cells and 1 MB"));
  }

  @Test
  void anInterruptStopsTheMaking() {
    Layout layout =
        new Layout(
            List.of(new Block.Solid("a", box(0, 3), FOAM), new Block.Solid("b", box(1, 3), STEEL)));
    Thread.currentThread().interrupt();
    try {
      assertThrows(
          CancellationException.class, () -> RectilinearGrid.of(layout, MeshControl.uniform(0.1)));
    } finally {
      assertTrue(Thread.interrupted());
    }
  }

  @Test
  void linesAreACopy() {
    Layout layout = new Layout(List.of(new Block.Solid("a", Box.ofSize(1, 1, 1), FOAM)));
    RectilinearGrid grid = RectilinearGrid.of(layout, MeshControl.uniform(0.5));
    grid.lines(Axis.X)[0] = 7;
    assertEquals(0, grid.line(Axis.X, 0));
  }
}
