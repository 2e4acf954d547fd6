package stenotherm.validation.cases;

import java.util.Locale;

/** Numbers as people read them. */
final class Digits {
  private Digits() {}

  /** Three significant digits, for errors. */
  static String of(double value) {
    return significant(value, 3);
  }

  /** Seven significant digits, for values. */
  static String value(double value) {
    return significant(value, 7);
  }

  private static String significant(double value, int digits) {
    if (Double.isNaN(value)) {
      return "?";
    }
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    if (size < 1e-4 || size >= 1e7) {
      return String.format(Locale.ROOT, "%." + (digits - 1) + "e", value);
    }
    int decimals = Math.max(0, digits - 1 - (int) Math.floor(Math.log10(size)));
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.indexOf('.') < 0 ? text : text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
