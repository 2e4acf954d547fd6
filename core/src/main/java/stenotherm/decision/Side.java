package stenotherm.decision;

/**
 * The two ways in which temperature harms.
 *
 * <p>Thread-safe.
 */
public enum Side {
  /** Too cold. */
  COLD("cold side"),
  /** Too hot. */
  HOT("hot side");

  private final String words;

  Side(String words) {
    this.words = words;
  }

  /**
   * Returns the words that sentences use.
   *
   * @return "cold side" or "hot side"
   */
  public String words() {
    return words;
  }
}
