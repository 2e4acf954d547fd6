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
   * Of {@code EPS 20 3/4 in} the 20 is the density; else a whole number belongs to the fraction, as
   * in {@code EPS 1 1/2 in}: no foam is as light as that.
   */
  private static final Pattern FRACTION =
      Pattern.compile(
          "((?i:EPS)\\s+(?:[89]|[1-9][0-9])(?:\\.[0-9]+)?|.*?\\S)\\s+"
              + "((?:[0-9]+(?:\\s+|\\s*-\\s*))?[0-9]+\\s*/\\s*[0-9]+\\s*[^\\s0-9.,]\\S*)",
          Pattern.DOTALL);

  /** A number of things of some mass each, {@code 2 x 4 g}. */
  private static final Pattern COUNTED =
      Pattern.compile(
          "(.*?\\S)\\s*,?\\s+([0-9]+\\s*[x×X]\\s*\\.?[0-9][0-9.]*\\s*[^\\s0-9.,]\\S*)",
          Pattern.DOTALL);

  /** The quantity first, {@code 3/4 in foam}. */
  private static final Pattern QUANTITY_FIRST =
      Pattern.compile(
          "((?:[0-9]+(?:\\s+|-))?[0-9]+\\s*/\\s*[0-9]+\\s*[a-z\"]+|[0-9]*\\.?[0-9]+\\s*[a-z\"]+)"
              + "\\s+(\\p{L}.*)",
          Pattern.DOTALL);

  /** A word that adds nothing to a thickness. */
  private static final Pattern THICK = Pattern.compile("(?i)\\s+thick$");

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[0-9],[0-9]");

  /** Splits a text. */
  static NamedQuantity of(ScalarNode node, String what, String example) {
    String text = node.writtenOut();
    text = text.length() <= LONGEST ? THICK.matcher(text).replaceFirst("") : text;
    if (text.length() <= LONGEST) {
      Matcher counted = COUNTED.matcher(text);
      if (counted.matches()) {
        return new NamedQuantity(node.piece(counted.group(1)), node.piece(counted.group(2)));
      }
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
    Matcher first = text.length() <= LONGEST ? QUANTITY_FIRST.matcher(text) : null;
    if (first != null && first.matches()) {
      return new NamedQuantity(node.piece(first.group(2)), node.piece(first.group(1)));
    }
    if (DECIMAL_COMMA.matcher(text).find()) {
      throw node.fail("has a comma in a number, write a point as the decimal mark, as in 0.75 in");
    }
    throw node.fail("must be " + what + " with its unit, write for example " + example);
  }
}
