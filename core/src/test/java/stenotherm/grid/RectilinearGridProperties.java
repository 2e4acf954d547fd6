package stenotherm.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import stenotherm.base.Axis;
import stenotherm.base.Face;

/** What every grid must keep, whatever the blocks. */
class RectilinearGridProperties {
  /** Relative round-off of coordinates that are sums of cell widths. */
  private static final double ROUND_OFF = 1e-9;

  private static MeshControl mesh(Layout layout, double fineness, double growth) {
    double largest = layout.domain().size(Axis.X) / 5;
    return new MeshControl(largest, largest * fineness, growth);
  }

  @Property(seed = "1101", tries = 300)
  void everyBlockFaceLiesOnALine(
      @ForAll(supplier = RandomLayouts.class) Layout layout,
      @ForAll @DoubleRange(min = 0.1, max = 1) double fineness) {
    RectilinearGrid grid = RectilinearGrid.of(layout, mesh(layout, fineness, 1.4));
    for (Block block : layout.blocks()) {
      for (Face face : Face.values()) {
        double wanted = block.box().at(face);
        double nearest = Double.POSITIVE_INFINITY;
        for (double line : grid.lines(face.axis())) {
          nearest = Math.min(nearest, Math.abs(line - wanted));
        }
        assertEquals(0, nearest, ROUND_OFF * layout.domain().size(face.axis()));
      }
    }
  }

  @Property(seed = "1102", tries = 300)
  void neighboursDifferByTheGrowthAtMost(
      @ForAll(supplier = RandomLayouts.class) Layout layout,
      @ForAll @DoubleRange(min = 0.1, max = 1) double fineness,
      @ForAll @DoubleRange(min = 1.05, max = 2) double growth) {
    MeshControl control = mesh(layout, fineness, growth);
    RectilinearGrid grid = RectilinearGrid.of(layout, control);
    for (Axis axis : Axis.values()) {
      int last = grid.count(axis) - 1;
      for (int position = 0; position <= last; position++) {
        double width = grid.width(axis, position);
        assertTrue(width > 0);
        assertTrue(width <= control.largestCell() * (1 + ROUND_OFF));
        if (position < last) {
          double ratio = grid.width(axis, position + 1) / width;
          assertTrue(Math.max(ratio, 1 / ratio) <= growth * (1 + 1e-6), () -> "ratio " + ratio);
        }
      }
      double limit = control.firstCell() * (1 + ROUND_OFF);
      assertTrue(grid.width(axis, 0) <= limit);
      assertTrue(grid.width(axis, last) <= limit);
    }
  }

  @Property(seed = "1103", tries = 300)
  void cellsBelongToTheLastBlockAroundThem(@ForAll(supplier = RandomLayouts.class) Layout layout) {
    RectilinearGrid grid = RectilinearGrid.of(layout, mesh(layout, 0.5, 1.5));
    double volume = 0;
    int listed = 0;
    for (int block = 0; block < layout.blocks().size(); block++) {
      for (int cell : grid.cellsOf(block)) {
        volume += grid.volume(cell);
        listed++;
        Point centre =
            new Point(
                centre(grid, Axis.X, cell), centre(grid, Axis.Y, cell), centre(grid, Axis.Z, cell));
        int expected = 0;
        for (int later = 0; later < layout.blocks().size(); later++) {
          expected = layout.blocks().get(later).box().contains(centre) ? later : expected;
        }
        assertEquals(expected, block);
        assertEquals(block, grid.blockOf(cell));
      }
    }
    assertEquals(grid.cellCount(), listed);
    assertEquals(layout.domain().volume(), volume, ROUND_OFF * layout.domain().volume());
  }

  private static double centre(RectilinearGrid grid, Axis axis, int cell) {
    int position = grid.position(axis, cell);
    return (grid.line(axis, position) + grid.line(axis, position + 1)) / 2;
  }
}
