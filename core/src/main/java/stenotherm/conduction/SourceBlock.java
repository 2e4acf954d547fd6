package stenotherm.conduction;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import stenotherm.base.Face;

/**
 * The cells that a source heats.
 *
 * @param port the source's port
 * @param cell indices of the cells; for a source on a surface the cell before and the cell beyond
 *     each face in turn, so that a cell may occur more than once
 * @param through face of the cell through which the heat comes; null for a source within blocks
 * @param part weight of each entry: its part of the volume or, for both cells at a face, of the
 *     area; not read for a source within blocks
 * @param share part of the power that each entry gets; sums to 1
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record SourceBlock(
    Port.SourcePort port, int[] cell, Face @Nullable [] through, double[] part, double[] share) {
  /** Tells whether another source of the same name heats the same cells from the same sides. */
  boolean heatsLike(SourceBlock other) {
    return Arrays.equals(cell, other.cell) && Arrays.equals(through, other.through);
  }
}
