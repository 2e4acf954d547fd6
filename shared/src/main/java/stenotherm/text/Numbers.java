package stenotherm.text;

import java.text.Normalizer;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers from raw text: decimal digits with a point, and fractions for lengths and masses.
 * What depends on a language or on YAML's guesses (decimal commas, digit groups, octal,
 * hexadecimal, sixty-based numbers) is refused with a hint.
 */
final class Numbers {
  /**
   * A number at the start of a text. The typographic minus is what word processors make of a
   * hyphen.
   */
  private static final Pattern NUMBER =
      Pattern.compile("[+\\-−]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");

  /**
   * A fraction at the start of a text, with or without a whole number before it, {@code 3/4} or
   * {@code 1 1/2} or {@code 1-1/2}: how thicknesses in inches are written.
   */
  static final Pattern FRACTION =
      Pattern.compile("[+\\-−]?(?:[0-9]+(?:\\s+|\\s*-\\s*))?[0-9]+\\s*/\\s*[0-9]+");

  /** A fraction that is a single sign, such as the one of three quarters. */
  private static final Pattern SIGN = Pattern.compile("[¼-¾⅐-⅞]");

  private static final Pattern PART = Pattern.compile("[0-9]+");

  private static final Pattern COMMA = Pattern.compile("[+\\-−]?[0-9]+,[0-9].*", Pattern.DOTALL);
  private static final Pattern UNDERSCORE = Pattern.compile("[+\\-−]?[0-9]+_.*", Pattern.DOTALL);
  private static final Pattern NOT_FINITE =
      Pattern.compile(
          "[+\\-−]?\\.?(?:nan|inf|infinity|∞)\\b.*", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private Numbers() {}

  /** Reads a text that is a number and nothing else. */
  static double read(ScalarNode node, String text) {
    refuseForeignForms(node, text);
    refuseFraction(node, text);
    if (!NUMBER.matcher(text).matches()) {
      throw node.fail(Messages.quote(text) + " is not a number, write digits as in 12 or 2.5");
    }
    return toDouble(node, text);
  }

  /** Reads a text that matches {@link #NUMBER} or {@link #FRACTION}. */
  static double toDouble(ScalarNode node, String number) {
    double value =
        number.contains("/")
            ? fraction(node, number)
            : Double.parseDouble(number.replace('−', '-'));
    if (!Double.isFinite(value)) {
      throw node.fail(Messages.quote(number) + " is too large a number");
    }
    return value;
  }

  private static double fraction(ScalarNode node, String text) {
    List<Double> parts =
        PART.matcher(text).results().map(part -> Double.valueOf(part.group())).toList();
    double denominator = parts.get(parts.size() - 1);
    if (denominator == 0) {
      throw node.fail(Messages.quote(text) + " divides by zero");
    }
    double whole = parts.size() == 3 ? parts.get(0) : 0;
    double value = whole + parts.get(parts.size() - 2) / denominator;
    return text.startsWith("-") || text.startsWith("−") ? -value : value;
  }

  /** Writes out fractions of a single sign: {@code 1¾ in} becomes {@code 1 3/4 in}. */
  static String writtenOut(String text) {
    return SIGN.matcher(text)
        .replaceAll(sign -> " " + Normalizer.normalize(sign.group(), Normalizer.Form.NFKC))
        .replace('⁄', '/')
        .strip();
  }

  /** Refuses a fraction where only decimal numbers are usual. */
  static void refuseFraction(ScalarNode node, String text) {
    if (FRACTION.matcher(text).lookingAt()) {
      throw node.fail(Messages.quote(text) + " is a fraction, write a decimal number as in 0.5");
    }
  }

  /** Refuses what a person would take for a number but whose form is not allowed. */
  static void refuseForeignForms(ScalarNode node, String text) {
    if (NOT_FINITE.matcher(text).matches()) {
      throw node.fail(Messages.quote(text) + " is not a finite number");
    }
    if (COMMA.matcher(text).matches()) {
      throw node.fail(
          Messages.quote(text)
              + " has a comma, write a point as the decimal mark (2.5) and do not group digits"
              + " (1000)");
    }
    if (UNDERSCORE.matcher(text).matches()) {
      throw node.fail(Messages.quote(text) + " has an underscore, do not group digits (1000)");
    }
  }

  /** Finds the number that a text starts with. */
  static Matcher leading(String text) {
    return NUMBER.matcher(text);
  }
}
