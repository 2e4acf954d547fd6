package stenotherm.text;

import stenotherm.base.Checks;

/**
 * Writes scalars of a file that people read.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class ScalarText {
  private ScalarText() {}

  /**
   * Writes a scalar so that nothing in it is taken for anything else: in single quotes (YAML 1.2,
   * section 7.3.2).
   *
   * @param text the scalar, on one line
   * @return the scalar in quotes, those within it doubled
   */
  public static String quoted(String text) {
    return "'" + Checks.given("text", text).replace("'", "''") + "'";
  }
}
