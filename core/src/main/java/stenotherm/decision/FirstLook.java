package stenotherm.decision;

import stenotherm.study.Fate;

/**
 * One typical journey on a coarse grid, for those who wait for the odds.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param coldest the coldest that an animal is until the planned opening, averaged over its body
 *     and as its tolerance says over time [K]
 * @param hottest the same of the hottest [K]
 * @param fate how the animals fared
 */
public record FirstLook(double coldest, double hottest, Fate fate) {
  /**
   * Tells whether every animal stays within its alarm band until the planned opening.
   *
   * @return whether both margins are at least 0
   */
  public boolean isWithin() {
    return least() >= 0;
  }

  /**
   * Returns what is left to the nearer end of an alarm band at the tightest moment.
   *
   * @return the margin [K]; negative outside
   */
  public double least() {
    return Math.min(fate.cold().margin(), fate.hot().margin());
  }
}
