package stenotherm.modal;

import java.util.Arrays;

/**
 * A configuration projected on the basis V: V'GV, V'B, and rows of the heat flows and surface
 * temperatures of the boundaries. Matrices are stored row after row.
 *
 * @param size number of vectors
 * @param inputs number of inputs
 * @param conductance V'GV, symmetric
 * @param drive V'B, one row of inputs for each vector
 * @param flows heat flow into the body through each boundary
 * @param surfaces mean temperature of the surface of each boundary
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record Projection(
    int size, int inputs, double[] conductance, double[] drive, Rows flows, Rows surfaces) {
  /**
   * Rows in the coordinates of the basis, and what the inputs add directly.
   *
   * @param count how many rows
   * @param ofVector a column for each vector
   * @param ofInput a column for each input
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Rows(int count, double[][] ofVector, double[][] ofInput) {
    /** Computes the values of all rows. */
    void values(double[] coordinates, double[] inputs, double[] values) {
      Arrays.fill(values, 0);
      for (int vector = 0; vector < ofVector.length; vector++) {
        Panels.add(ofVector[vector], coordinates[vector], values, 0, count);
      }
      for (int input = 0; input < ofInput.length; input++) {
        Panels.add(ofInput[input], inputs[input], values, 0, count);
      }
    }

    /** Some of the rows. */
    Rows chosen(int[] rows) {
      return new Rows(rows.length, chosen(rows, ofVector), chosen(rows, ofInput));
    }

    private static double[][] chosen(int[] rows, double[][] columns) {
      double[][] chosen = new double[columns.length][rows.length];
      for (int c = 0; c < chosen.length; c++) {
        for (int r = 0; r < rows.length; r++) {
          chosen[c][r] = columns[c][rows[r]];
        }
      }
      return chosen;
    }

    /** Tells whether other rows are the same in every number. */
    boolean isSame(Rows other) {
      return Arrays.deepEquals(ofVector, other.ofVector)
          && Arrays.deepEquals(ofInput, other.ofInput);
    }

    /** Replaces one of the rows by one of others. */
    void replace(int row, Rows other, int rowOfOther) {
      for (int c = 0; c < ofVector.length; c++) {
        ofVector[c][row] = other.ofVector[c][rowOfOther];
      }
      for (int c = 0; c < ofInput.length; c++) {
        ofInput[c][row] = other.ofInput[c][rowOfOther];
      }
    }

    /** A copy that may be changed. */
    Rows copy() {
      return new Rows(count, copy(ofVector), copy(ofInput));
    }

    private static double[][] copy(double[][] columns) {
      double[][] copy = new double[columns.length][];
      for (int c = 0; c < copy.length; c++) {
        copy[c] = columns[c].clone();
      }
      return copy;
    }
  }
}
