package stenotherm.text;

import java.util.Collection;
import stenotherm.base.Suggestions;

/** Words that several messages share, so that a user reads the same phrase for the same fault. */
final class Messages {
  /** Longest piece of a user's text that a message repeats. */
  private static final int LONGEST_QUOTE = 40;

  /** Most alternatives that a message lists; a longer list hides the answer. */
  private static final int LONGEST_LIST = 20;

  private Messages() {}

  /** Returns a user's text in single quotes, on one line and shortened. */
  static String quote(String text) {
    return "'" + plain(text) + "'";
  }

  /** Returns a user's text on one line and shortened. */
  static String plain(String text) {
    String line = text.strip().replaceAll("[\\p{Cntrl}\\s]+", " ");
    if (line.codePointCount(0, line.length()) > LONGEST_QUOTE) {
      line = line.substring(0, line.offsetByCodePoints(0, LONGEST_QUOTE - 1)) + "…";
    }
    return line;
  }

  /** Lists what is allowed after a phrase, or returns nothing if that would be too long a list. */
  static String allowed(String phrase, Collection<String> names) {
    return names.isEmpty() || names.size() > LONGEST_LIST ? "" : phrase + String.join(", ", names);
  }

  /**
   * Returns {@code ". Did you mean 'x'?"} if one of the names is close to what was given, else
   * nothing.
   */
  static String didYouMean(String given, Collection<String> names) {
    return Suggestions.closest(given, names)
        .map(name -> ". Did you mean '" + name + "'?")
        .orElse("");
  }
}
