package stenotherm.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;

/**
 * A YAML or JSON document, read strictly into a tree whose values know their place.
 *
 * <p>Beyond what YAML itself refuses, a document is refused if a key is given twice or has no
 * value, if it has anchors, aliases, tags, merge keys or tabs in its indentation, if it is empty or
 * more than one document, or if it is larger or nested deeper than any file that a person writes.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Document {
  /** Largest size of a document [byte]. */
  public static final int MAXIMUM_BYTES = 1_000_000;

  /** Longest single text [char]. */
  public static final int MAXIMUM_TEXT = 4000;

  /** Deepest nesting of lists and mappings. */
  public static final int MAXIMUM_DEPTH = 20;

  private final Node root;

  private Document(Node root) {
    this.root = root;
  }

  /**
   * Reads a document from text.
   *
   * @param fileName the name that messages show
   * @param text the document
   * @return the document
   * @throws TextFormatException if the document is refused
   */
  public static Document parse(String fileName, String text) {
    return parse(fileName, text, path -> "");
  }

  /**
   * Reads a document from text, with examples for the message that a key has no value.
   *
   * @param fileName the name that messages show
   * @param text the document
   * @param examples gives for a key path a value as the file could have it, empty if it knows none
   * @return the document
   * @throws TextFormatException if the document is refused
   */
  public static Document parse(String fileName, String text, UnaryOperator<String> examples) {
    SourceText source = new SourceText(fileName, text);
    source.check();
    return new Document(new TreeReader(source, examples).read());
  }

  /**
   * Reads a document from bytes in UTF-8, with or without a byte order mark.
   *
   * @param fileName the name that messages show
   * @param bytes the document
   * @return the document
   * @throws TextFormatException if the document is refused or not in UTF-8
   */
  public static Document parse(String fileName, byte[] bytes) {
    return parse(fileName, bytes, path -> "");
  }

  private static Document parse(String fileName, byte[] bytes, UnaryOperator<String> examples) {
    return parse(fileName, decoded(fileName, bytes), examples);
  }

  /** The text of bytes in UTF-8; refuses others, and too many. */
  static String decoded(String fileName, byte[] bytes) {
    if (bytes.length > MAXIMUM_BYTES) {
      throw tooLarge(fileName);
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer input = ByteBuffer.wrap(bytes);
    CharBuffer output = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(input, output, true);
    String text = output.flip().toString();
    if (result.isError()) {
      // What was decoded so far ends where the fault begins.
      throw new TextFormatException(
          new SourceText(fileName, text).end(), "", "is not UTF-8 text, save the file as UTF-8");
    }
    return text;
  }

  /**
   * Reads a document from a file in UTF-8, with or without a byte order mark.
   *
   * @param path the file; messages show it as given
   * @return the document
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the document is refused or not in UTF-8
   */
  public static Document read(Path path) throws IOException {
    return read(path, key -> "");
  }

  /**
   * Reads a document from a file in UTF-8, with examples for the message that a key has no value.
   *
   * @param path the file; messages show it as given
   * @param examples gives for a key path a value as the file could have it, empty if it knows none
   * @return the document
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the document is refused or not in UTF-8
   */
  public static Document read(Path path, UnaryOperator<String> examples) throws IOException {
    try (InputStream stream = Files.newInputStream(path)) {
      // One byte more than allowed is enough to see that the file is too large.
      return parse(path.toString(), stream.readNBytes(MAXIMUM_BYTES + 1), examples);
    }
  }

  static TextFormatException tooLarge(String fileName) {
    return new TextFormatException(
        new TextPosition(fileName, 1, 1), "", "is larger than " + MAXIMUM_BYTES + " bytes");
  }

  /**
   * Returns the top value of the document.
   *
   * @return the top value
   */
  public Node root() {
    return root;
  }
}
