package stenotherm.scenario;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.text.ScalarNode;

/**
 * A name with a quantity after it: {@code EPS 20, 19 mm} or, where a comma would split the line,
 * {@code EPS 20 19 mm}.
 *
 * @param name the name
 * @param quantity the quantity, yet to be read
 */
record NamedQuantity(ScalarNode name, ScalarNode quantity) {
  /** Longer than any such text; keeps the patterns from searching through pages. */
  private static final int LONGEST = 200;

  private static final Pattern COMMA =
      Pattern.compile("(.*?\\S)\\s*,\\s+([+\\-−]?\\.?[0-9].*)", Pattern.DOTALL);
  private static final Pattern BLANK =
      Pattern.compile("(.*\\S)\\s+([+\\-−]?\\.?[0-9][0-9.eE]*\\s*[^\\s0-9.,]\\S*)", Pattern.DOTALL);

  /**
   * Of {@code EPS 20 3/4 in} the 20 is the density; else a whole number belongs to the fraction.
   */
  private static final Pattern FRACTION =
      Pattern.compile(
          "((?i:EPS)\\s+[0-9.]+|.*?\\S)\\s+"
              + "((?:[0-9]+(?:\\s+|\\s*-\\s*))?[0-9]+\\s*/\\s*[0-9]+\\s*[^\\s0-9.,]\\S*)",
          Pattern.DOTALL);

  /** Splits a text. */
  static NamedQuantity of(ScalarNode node, String what, String example) {
    String text = node.text();
    if (text.length() <= LONGEST) {
      Matcher comma = COMMA.matcher(text);
      if (comma.matches()) {
        return new NamedQuantity(node.piece(comma.group(1)), node.piece(comma.group(2)));
      }
      Matcher fraction = FRACTION.matcher(text);
      if (fraction.matches()) {
        return new NamedQuantity(node.piece(fraction.group(1)), node.piece(fraction.group(2)));
      }
      Matcher blank = BLANK.matcher(text);
      if (blank.matches()) {
        return new NamedQuantity(node.piece(blank.group(1)), node.piece(blank.group(2)));
      }
    }
    throw node.fail("must be " + what + " with its unit, write for example " + example);
  }
}
