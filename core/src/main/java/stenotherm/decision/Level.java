package stenotherm.decision;

/**
 * A verdict in a few words: from the margin at the worse end of the range, less the estimated
 * errors of the grid and of the reduction to a few modes.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Level {
  /** The alarm band is left: negative margin. */
  OUTSIDE("do not send it like this"),
  /** The alarm band holds, with less than {@link #TIGHT_BELOW} left. */
  TIGHT("too tight to rely on"),
  /** The alarm band holds with at least {@link #TIGHT_BELOW} left. */
  INSIDE("inside the alarm band on these assumptions");

  /**
   * Margins below this are tight [K]: what a worse spot in the parcel or an hour outdoors can take;
   * assumed.
   */
  public static final double TIGHT_BELOW = 2;

  private final String words;

  Level(String words) {
    this.words = words;
  }

  /**
   * Returns the words that reports use.
   *
   * @return the level in words
   */
  public String words() {
    return words;
  }

  static Level of(double margin) {
    if (margin < 0) {
      return OUTSIDE;
    }
    return margin < TIGHT_BELOW ? TIGHT : INSIDE;
  }
}
