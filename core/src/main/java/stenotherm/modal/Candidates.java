package stenotherm.modal;

import java.util.stream.IntStream;

/** The points of a block among which its extremes are looked for. */
final class Candidates {
  /** Rows of the outputs of a projection. */
  final int[] rows;

  private Candidates(int[] rows) {
    this.rows = rows;
  }

  static Candidates of(Projection projection, int from, int to) {
    return new Candidates(IntStream.range(from, to).toArray());
  }
}
