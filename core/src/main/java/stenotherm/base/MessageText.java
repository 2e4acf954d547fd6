package stenotherm.base;

import java.util.Locale;

/**
 * Makes texts fit for a message that a terminal shows: no control characters, no halves of
 * surrogate pairs, no signs that turn the direction of writing, and not too long.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class MessageText {
  /** Longest message [char]. */
  public static final int LONGEST = 360;

  private MessageText() {}

  /**
   * Returns a message as it may be shown.
   *
   * @param text the message
   * @return the message, what does not print written as in {@code \}{@code u001B}, at most {@value
   *     #LONGEST} characters; an ellipsis stands for what is left out
   */
  public static String of(String text) {
    return of(text, LONGEST);
  }

  /**
   * Returns a piece of a message, such as a name that a user gave.
   *
   * @param text the piece
   * @param longest its longest length, at least 1 [char]
   * @return the piece as it may be shown
   */
  public static String of(String text, int longest) {
    StringBuilder shown = new StringBuilder();
    int offset = 0;
    while (offset < text.length()) {
      int character = text.codePointAt(offset);
      String next =
          isPrintable(character)
              ? Character.toString(character)
              : String.format(Locale.ROOT, "\\u%04X", character);
      boolean isLast = offset + Character.charCount(character) == text.length();
      if (shown.length() + next.length() + (isLast ? 0 : 1) > longest) {
        return shown.append('…').toString();
      }
      shown.append(next);
      offset += Character.charCount(character);
    }
    return shown.toString();
  }

  private static boolean isPrintable(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }
}
