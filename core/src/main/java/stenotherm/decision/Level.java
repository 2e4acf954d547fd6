package stenotherm.decision;

import stenotherm.study.Odds;

/**
 * A verdict in a few words: by the lower end of the interval of the odds that every animal stays
 * within what it tolerates until the planned opening.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Level {
  /** 19 of 20 journeys or more. */
  HOLDS("holds", 0.95),
  /** 4 of 5 or more. */
  LIKELY("likely holds", 0.8),
  /** Every other one or more. */
  GAMBLE("a gamble", 0.5),
  /** Fewer. */
  DO_NOT("do not send it like this", 0);

  private final String words;
  private final double least;

  Level(String words, double least) {
    this.words = words;
    this.least = least;
  }

  /**
   * Returns the words that reports use.
   *
   * @return the level in words
   */
  public String words() {
    return words;
  }

  /**
   * Returns the odds from which on it applies.
   *
   * @return share of journeys [-]
   */
  public double least() {
    return least;
  }

  /**
   * Finds the level of some odds.
   *
   * @param odds the odds; the lower end of their interval counts
   * @return the level
   */
  public static Level of(Odds odds) {
    return of(odds.low());
  }

  /** The level that a share of journeys reaches. */
  static Level of(double share) {
    for (Level level : values()) {
      if (share >= level.least) {
        return level;
      }
    }
    return DO_NOT;
  }
}
