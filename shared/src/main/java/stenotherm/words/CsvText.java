package stenotherm.words;

/**
 * Texts as fields of a CSV file, for programs and for spreadsheets.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class CsvText {
  private CsvText() {}

  /**
   * Returns a text as a field. A spreadsheet takes a field that begins with =, +, -, @ or a control
   * character for a formula, which may run a program: an apostrophe before it says that it is a
   * text.
   *
   * @param text any text
   * @return the field, in quotes where it needs them
   */
  public static String field(String text) {
    String shown = text.isEmpty() || !startsFormula(text.charAt(0)) ? text : "'" + text;
    boolean plain = shown.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? shown : '"' + shown.replace("\"", "\"\"") + '"';
  }

  private static boolean startsFormula(char first) {
    return "=+-@".indexOf(first) >= 0 || Character.isISOControl(first) || isWideSign(first);
  }

  /** The same signs in full width, which some spreadsheets take for them. */
  private static boolean isWideSign(char first) {
    return "\uFF1D\uFF0B\uFF0D\uFF20".indexOf(first) >= 0;
  }
}
