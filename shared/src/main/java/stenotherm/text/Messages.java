package stenotherm.text;

import java.util.Collection;
import stenotherm.base.MessageText;
import stenotherm.base.Suggestions;

/** Words that several messages share, so that a user reads the same phrase for the same fault. */
final class Messages {
  /** Longest piece of a user's text that a message repeats. */
  private static final int LONGEST_QUOTE = 40;

  /** Most alternatives that a message lists; a longer list hides the answer. */
  private static final int LONGEST_LIST = 20;

  private static final int LONGEST_LISTING = 160;

  private Messages() {}

  /** Returns a user's text in single quotes, on one line and shortened. */
  static String quote(String text) {
    return "'" + plain(text) + "'";
  }

  /** Returns a user's text on one line and shortened. */
  static String plain(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    return MessageText.of(line, LONGEST_QUOTE);
  }

  /** Lists what is allowed and what was probably meant; a list that is too long is left out. */
  static String allowed(String given, Collection<String> names) {
    String list = String.join(", ", names);
    boolean isShort = names.size() <= LONGEST_LIST && list.length() <= LONGEST_LISTING;
    return (isShort && !names.isEmpty() ? ", allowed are " + list : "") + didYouMean(given, names);
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
