package stenotherm.validation.studies;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.parcel.Parcel;
import stenotherm.warmer.Warmers;

/** Cells at the edges of a warmer, steady, on the finest grid of a verdict. */
class WarmerEdgesTest {
  private static final List<Double> STEADY = List.of(Double.POSITIVE_INFINITY);
  private static final double[] FINEST = {2};

  @Test
  void placedCellsLeaveAboutHalfOfTheErrorOfAWarmer() {
    Parcel parcel = WarmerEdges.square(Warmers.FORTY_HOUR);
    double[] finer = {1, 0.5};
    double truth =
        WarmerEdges.limit(WarmerEdges.onGrids(parcel, WarmerEdges.PLACED, finer, STEADY), 0, 0);
    WarmerEdges.OnGrid equal =
        WarmerEdges.onGrids(parcel, WarmerEdges.EQUAL, FINEST, STEADY).get(0);
    WarmerEdges.OnGrid placed =
        WarmerEdges.onGrids(parcel, WarmerEdges.PLACED, FINEST, STEADY).get(0);
    assertTrue(placed.cells() <= 1.25 * equal.cells());
    double before = equal.rows().get(0)[0] - truth;
    double after = placed.rows().get(0)[0] - truth;
    assertTrue(before > 2, "equal cells: " + before);
    assertTrue(after > 0 && after < 0.6 * before, "placed cells: " + after);
  }
}
