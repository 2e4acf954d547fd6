package stenotherm.words;

/**
 * Texts inside HTML and SVG.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Markup {
  private Markup() {}

  /**
   * Escapes a text for the content of an element or for an attribute in double quotes.
   *
   * @param text any text
   * @return the text with character references where needed; a blank stands for what XML 1.0 cannot
   *     hold at all, such as control characters and lone surrogates
   */
  public static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            character -> {
              switch (character) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isText(character) ? character : ' ');
              }
            });
    return escaped.toString();
  }

  private static boolean isText(int character) {
    return character >= 0x20
        && !(character >= 0xD800 && character <= 0xDFFF)
        && character != 0xFFFE
        && character != 0xFFFF;
  }
}
