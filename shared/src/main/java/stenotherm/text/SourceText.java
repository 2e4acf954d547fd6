package stenotherm.text;

import java.nio.charset.StandardCharsets;

/**
 * The text of a document by Unicode characters, which is how the parser and people count columns.
 */
final class SourceText {
  private static final int BYTE_ORDER_MARK = 0xFEFF;

  private final String fileName;
  private final String text;
  private final int[] characters;

  SourceText(String fileName, String text) {
    this.fileName = fileName;
    this.text = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    this.characters = this.text.codePoints().toArray();
  }

  String text() {
    return text;
  }

  /** Returns the character at an offset, or 0 at the end. */
  int characterAt(int offset) {
    return offset < characters.length ? characters[offset] : 0;
  }

  TextPosition at(int line, int column) {
    return new TextPosition(fileName, line, column);
  }

  TextPosition end() {
    return positionOf(characters.length);
  }

  /** Returns what stands before a place on the same line. */
  String before(TextPosition place) {
    int offset = 0;
    for (int line = 1; line < place.line() && offset < characters.length; offset++) {
      if (characters[offset] == '\n') {
        line++;
      }
    }
    int length = Math.min(place.column() - 1, characters.length - offset);
    return new String(characters, offset, length);
  }

  /**
   * Refuses faults for which the parser's own message is unhelpful or names no place.
   *
   * @throws TextFormatException if the text is too large, has characters that text does not have,
   *     or tabs in its indentation
   */
  void check() {
    if (characters.length > Document.MAXIMUM_BYTES
        || text.getBytes(StandardCharsets.UTF_8).length > Document.MAXIMUM_BYTES) {
      throw Document.tooLarge(fileName);
    }
    boolean indentation = true;
    for (int offset = 0; offset < characters.length; offset++) {
      int character = characters[offset];
      if (!isText(character)) {
        throw new TextFormatException(
            positionOf(offset),
            "",
            String.format("has a character that is not text (U+%04X), remove it", character));
      }
      if (character == '\t' && indentation) {
        throw new TextFormatException(
            positionOf(offset), "", "has a tab in its indentation, use spaces");
      }
      indentation = character == '\n' || character == '\r' || (indentation && character == ' ');
    }
  }

  private TextPosition positionOf(int offset) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < offset; i++) {
      if (characters[i] == '\n') {
        line++;
        column = 1;
      } else {
        column++;
      }
    }
    return at(line, column);
  }

  /**
   * The printable characters of YAML 1.1 (section 5.1), less the line breaks that only typesetters
   * use.
   */
  private static boolean isText(int character) {
    return character == '\t'
        || character == '\n'
        || character == '\r'
        || (character >= 0x20 && character <= 0x7E)
        || (character >= 0xA0
            && character <= 0xFFFD
            && (character < 0xD800 || character > 0xDFFF)
            && character != 0x2028
            && character != 0x2029
            && character != BYTE_ORDER_MARK)
        || character >= 0x10000;
  }
}
