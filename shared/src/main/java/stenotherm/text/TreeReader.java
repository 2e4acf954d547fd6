package stenotherm.text;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * Turns the parser's tokens into a tree. Only the raw text of a scalar is taken from the parser,
 * never its guess of a type.
 */
final class TreeReader {
  private static final YAMLFactory FACTORY = factory();

  /** More than a person mends at once. */
  private static final int MOST_FAULTS = 100;

  private static final String TOO_LONG = "is longer than " + Document.MAXIMUM_TEXT + " characters";

  /** A number and a comma, after which no blank stands. */
  private static final Pattern BEFORE_COMMA = Pattern.compile("([+\\-−]?[0-9]+),$");

  private final SourceText source;
  private final UnaryOperator<String> examples;
  private final Faults faults = new Faults();
  private int kept;

  /** Reads a text; the examples of values by key path, empty if unknown, go into messages. */
  TreeReader(SourceText source, UnaryOperator<String> examples) {
    this.source = source;
    this.examples = examples;
  }

  private static YAMLFactory factory() {
    // The size is limited before the parser sees the text; the parser's own limits have messages of
    // their own.
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    StreamReadConstraints constraints =
        StreamReadConstraints.builder()
            .maxNameLength(Document.MAXIMUM_BYTES)
            .maxStringLength(Document.MAXIMUM_BYTES)
            .build();
    return YAMLFactory.builder()
        // Makes a missing value recognisable; the builder, unlike the constructor, starts without
        // it.
        .enable(YAMLParser.Feature.EMPTY_STRING_AS_NULL)
        .loaderOptions(options)
        .streamReadConstraints(constraints)
        .build();
  }

  Node read() {
    try (YAMLParser parser = FACTORY.createParser(source.text())) {
      if (parser.nextToken() == null) {
        throw new TextFormatException(source.at(1, 1), "", "is empty");
      }
      Node root = readValue(parser, "", 0);
      if (parser.nextToken() != null) {
        throw new TextFormatException(
            positionOf(parser), "", "starts a second document, a file must hold one");
      }
      faults.throwIfAny();
      return root;
    } catch (TextFormatException fault) {
      faults.add(fault);
      throw faults.all().orElse(fault);
    } catch (JsonProcessingException fault) {
      TextFormatException translated = SyntaxFaults.translate(source, fault);
      faults.add(translated);
      throw faults.all().orElse(translated);
    } catch (IOException fault) {
      throw new UncheckedIOException("reading a text from memory", fault);
    }
  }

  /** Keeps a fault that does not hinder reading on; after many of them it ends. */
  private void keep(TextFormatException fault) {
    if (++kept == MOST_FAULTS) {
      throw fault;
    }
    faults.add(fault);
  }

  /** Reads the value whose first token is the parser's current one. */
  private Node readValue(YAMLParser parser, String path, int depth) throws IOException {
    TextPosition position = positionOf(parser);
    noReference(parser, position, path);
    JsonToken token = parser.currentToken();
    if ((token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY)
        && depth == Document.MAXIMUM_DEPTH) {
      throw new TextFormatException(
          position, path, "is nested deeper than " + Document.MAXIMUM_DEPTH + " levels");
    }
    if (token == JsonToken.START_OBJECT) {
      return readMapping(parser, position, path, depth);
    }
    if (token == JsonToken.START_ARRAY) {
      return readSequence(parser, position, path, depth);
    }
    if (token == JsonToken.VALUE_NULL) {
      keep(new TextFormatException(position, path, path.isEmpty() ? "is empty" : noValue(path)));
      return new ScalarNode(position, path, "");
    }
    String text = parser.getText();
    if (text.length() > Document.MAXIMUM_TEXT) {
      keep(new TextFormatException(position, path, TOO_LONG));
    }
    return new ScalarNode(position, path, text);
  }

  /** A key and its value without the blank between them. */
  private static final Pattern JOINED = Pattern.compile("([a-z/-]+):(\\S.*)", Pattern.DOTALL);

  private String noValue(String path) {
    String key = path.substring(path.lastIndexOf('.') + 1);
    if (!key.isEmpty() && Character.isDigit(key.charAt(0))) {
      return "is taken for a key, because inside { } a comma ends a value; write its key before it,"
          + " leave the comma before it out or put the whole value in quotes";
    }
    Matcher joined = JOINED.matcher(key);
    if (joined.matches()) {
      return "has no blank after ':', write "
          + joined.group(1)
          + ": "
          + Messages.plain(joined.group(2));
    }
    String example = examples.apply(path);
    return "has no value, write one"
        + (example.isEmpty()
            ? " or remove the line; inside { } a comma ends a value, so that a text with one goes in"
                + " quotes"
            : ", for example " + key + ": " + example + ", or remove the line");
  }

  private MappingNode readMapping(YAMLParser parser, TextPosition position, String path, int depth)
      throws IOException {
    Map<String, MappingNode.Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String key = parser.currentName();
      String keyPath = MappingNode.pathOf(path, key);
      TextPosition keyPosition = positionOf(parser);
      noReference(parser, keyPosition, path);
      Optional<String> typed = decimalComma(source.before(keyPosition), key);
      if (typed.isPresent() && parser.nextToken() == JsonToken.VALUE_NULL) {
        keep(new TextFormatException(keyPosition, path, typed.get()));
        continue;
      }
      faultOf(key).ifPresent(problem -> keep(new TextFormatException(keyPosition, path, problem)));
      MappingNode.Entry earlier = entries.get(key);
      if (earlier != null) {
        keep(
            new TextFormatException(
                keyPosition,
                keyPath,
                "is given twice, first on line " + earlier.keyPosition().line()));
      }
      if (typed.isEmpty()) {
        parser.nextToken();
      }
      entries.put(key, new MappingNode.Entry(keyPosition, readValue(parser, keyPath, depth + 1)));
    }
    return new MappingNode(position, path, entries);
  }

  /** What to say of a number with a decimal comma, whose digits after it are taken for a key. */
  private static Optional<String> decimalComma(String before, String key) {
    Matcher number = BEFORE_COMMA.matcher(before);
    if (key.isEmpty() || !Character.isDigit(key.charAt(0)) || !number.find()) {
      return Optional.empty();
    }
    return Optional.of(
        Messages.quote(number.group(1) + "," + key)
            + " has a decimal comma, which ends a value inside { }; write a point, as in "
            + Messages.plain(number.group(1) + "." + key));
  }

  private static Optional<String> faultOf(String key) {
    if (key.isBlank()) {
      return Optional.of("has an empty key before ':'");
    }
    if (key.codePoints().anyMatch(Character::isISOControl)) {
      return Optional.of("has a key with a line break or a tab, a key must be plain text");
    }
    if (key.length() > Document.MAXIMUM_TEXT) {
      return Optional.of("has a key that " + TOO_LONG);
    }
    return key.equals("<<")
        ? Optional.of("a merge key (<<) is not allowed here, write the keys out")
        : Optional.empty();
  }

  private SequenceNode readSequence(
      YAMLParser parser, TextPosition position, String path, int depth) throws IOException {
    List<Node> items = new ArrayList<>();
    String hint = "";
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      Node item = readValue(parser, path + "[" + items.size() + "]", depth + 1);
      Optional<String> typed =
          item instanceof ScalarNode scalar && !scalar.isBlank() && !items.isEmpty()
              ? commaInList(scalar)
              : Optional.empty();
      if (typed.isPresent()) {
        hint = typed.get();
        int before = items.size() - 1;
        items.set(before, hinted(items.get(before), hint));
        item = hinted(item, hint);
      }
      items.add(item);
    }
    return new SequenceNode(position, path, items, hint);
  }

  private static Node hinted(Node node, String hint) {
    return node instanceof ScalarNode scalar ? scalar.withHint(hint) : node;
  }

  /**
   * What to add to complaints about a list that may hold a number with a decimal comma. It is no
   * fault by itself: items of a list may be numbers.
   */
  private Optional<String> commaInList(ScalarNode item) {
    if (!Character.isDigit(item.text().charAt(0))) {
      return Optional.empty();
    }
    Matcher number = BEFORE_COMMA.matcher(source.before(item.position()));
    if (!number.find()) {
      return Optional.empty();
    }
    return Optional.of(
        ". Inside [ ] a comma ends an item: if "
            + Messages.quote(number.group(1) + "," + item.text())
            + " is one number, write "
            + Messages.plain(number.group(1) + "." + item.text()));
  }

  /**
   * Looks for anchors, aliases and tags. The parser resolves some of them silently, but a plain
   * text cannot start with their signs, so the first character of a node tells.
   */
  private void noReference(YAMLParser parser, TextPosition position, String path) {
    int first = source.characterAt((int) parser.currentTokenLocation().getCharOffset());
    String what =
        switch (first) {
          case '&' -> "an anchor (&)";
          case '*' -> "an alias (*)";
          case '!' -> "a tag (!)";
          default -> "";
        };
    if (!what.isEmpty()) {
      keep(
          new TextFormatException(
              position,
              path,
              what + " is not allowed here, put a text that starts like this in quotes"));
    }
  }

  private TextPosition positionOf(YAMLParser parser) {
    JsonLocation location = parser.currentTokenLocation();
    return source.at(location.getLineNr(), location.getColumnNr());
  }
}
