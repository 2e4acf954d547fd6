package stenotherm.words;

import java.util.Locale;

/**
 * The units that a reader thinks in.
 *
 * <p>Experimental. Thread-safe.
 */
public enum Units {
  /** °C, mm, g, L. */
  METRIC,
  /** °F, in, oz, cubic feet. */
  US;

  /**
   * Returns the name used in files.
   *
   * @return {@code "metric"} or {@code "us"}
   */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
