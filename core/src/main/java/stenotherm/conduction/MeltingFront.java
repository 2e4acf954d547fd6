package stenotherm.conduction;

import java.util.Arrays;

/**
 * Liquid fractions of a steady state, found in turn with its temperatures. A fraction moves towards
 * the one that the temperature implies, by a step that shrinks each time the direction reverses: in
 * the cell of a front the temperature depends on the fraction so strongly that full steps would
 * oscillate.
 */
final class MeltingFront {
  /** How close the temperature of a cell comes to that of its fraction [K]. */
  static final double CLOSE = 1e-4;

  private static final double TURN = 0.5;
  private static final double GROWTH = 1.3;

  private final MeltingCells melting;
  private final double[] fraction;
  private final double[] reach;
  private final double[] last;

  MeltingFront(MeltingCells melting) {
    this.melting = melting;
    this.fraction = new double[melting.count()];
    this.reach = new double[melting.count()];
    this.last = new double[melting.count()];
    Arrays.fill(reach, 1);
  }

  /** Liquid fractions of the melting cells now; not to be changed. */
  double[] fraction() {
    return fraction;
  }

  /**
   * Moves the fractions towards temperatures, padded.
   *
   * @return the largest difference of a temperature to one that its fraction allows before it moved
   *     [K]
   */
  double follow(double[] temperature) {
    double largest = 0;
    for (int m = 0; m < fraction.length; m++) {
      double now = temperature[melting.at[m]];
      double wanted = melting.liquidFraction(m, melting.enthalpy(m, now));
      double wish = wanted - fraction[m];
      if (wish != 0) {
        double allowed = melting.temperature(m, melting.enthalpyAtFraction(m, fraction[m]));
        largest = Math.max(largest, Math.abs(now - allowed));
      }
      reach[m] = wish * last[m] < 0 ? TURN * reach[m] : Math.min(1, GROWTH * reach[m]);
      last[m] = wish;
      fraction[m] += Math.max(-reach[m], Math.min(reach[m], wish));
    }
    return largest;
  }
}
