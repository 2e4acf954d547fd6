package stenotherm.text;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Turns the parser's messages, which take several lines and grammatical terms, into one line in a
 * user's words. A message is recognised by fixed parts of its text; any other becomes a general
 * sentence.
 */
final class SyntaxFaults {
  private static final Pattern CANNOT_START =
      Pattern.compile("found character '(.+?)' that cannot start.*");
  private static final Pattern LIST = Pattern.compile(".*\\[[^\\[\\]]*]\\s*");
  private static final String GENERAL =
      "is not YAML at this place, look at the indentation, the quotes and the brackets here and"
          + " on the line before";

  private SyntaxFaults() {}

  static TextFormatException translate(SourceText source, JsonProcessingException fault) {
    if (fault.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      TextPosition found = positionOf(source, marked.getProblemMark());
      TextPosition begun =
          marked.getContextMark() == null ? found : positionOf(source, marked.getContextMark());
      String problem = marked.getProblem() == null ? "" : marked.getProblem();
      return translate(source, new SyntaxFault(problem, begun, found), fault);
    }
    JsonLocation location = fault.getLocation();
    TextPosition position =
        location == null || location.getLineNr() < 1 || location.getColumnNr() < 1
            ? source.at(1, 1)
            : source.at(location.getLineNr(), location.getColumnNr());
    String problem =
        fault.getOriginalMessage().startsWith("Expected a field name")
            ? "has a list or mapping as a key, a key must be a single text"
            : GENERAL;
    return new TextFormatException(position, "", problem, fault);
  }

  /**
   * What the parser says, where the part that it was reading began, and where it could not go on.
   */
  private record SyntaxFault(String problem, TextPosition begun, TextPosition found) {
    boolean starts(String words) {
      return problem.startsWith(words);
    }
  }

  private static TextPosition positionOf(SourceText source, Mark mark) {
    return source.at(mark.getLine() + 1, mark.getColumn() + 1);
  }

  private static TextFormatException translate(
      SourceText source, SyntaxFault fault, JsonProcessingException cause) {
    if (fault.starts("could not find expected ':'")) {
      return new TextFormatException(
          fault.begun(), "", "is not 'key: value', a ':' with a blank after it is missing", cause);
    }
    if (fault.starts("found unexpected end of stream")
        || fault.starts("found unexpected document separator")) {
      return new TextFormatException(
          fault.begun(), "", "opens quotes that are never closed", cause);
    }
    return new TextFormatException(fault.found(), "", inOurWords(source, fault), cause);
  }

  private static String inOurWords(SourceText source, SyntaxFault fault) {
    Matcher cannotStart = CANNOT_START.matcher(fault.problem());
    if (cannotStart.matches()) {
      return cannotStart.group(1).startsWith("\\t")
          ? "has a tab where a value must start, use spaces"
          : "a text cannot start with " + cannotStart.group(1) + ", put it in quotes";
    }
    if (fault.starts("mapping values are not allowed")) {
      return "has a ':' that starts no key here, indent keys of one level alike, write a blank after"
          + " the '-' of each item and the ':' of each key, and put a text that contains ': ' in quotes";
    }
    if (fault.starts("expected ',' or ']'")) {
      return "the list opened with '[' on line "
          + fault.begun().line()
          + " must go on with ',' or end with ']'";
    }
    if (fault.starts("expected ',' or '}'")) {
      return "the mapping opened with '{' on line "
          + fault.begun().line()
          + " must go on with ',' or end with '}'";
    }
    if (fault.starts("found unknown escape character")) {
      return "has an unknown escape after a backslash, put the text in single quotes";
    }
    if (fault.starts("expected '<document start>'")) {
      return "does not belong to the document above, indent keys of one level alike";
    }
    if (fault.starts("sequence entries are not allowed")) {
      return "has a '- ' where no list can start, begin the list on a line of its own";
    }
    if (fault.starts("expected <block end>")) {
      return textAfterValue(source, fault);
    }
    return GENERAL;
  }

  private static String textAfterValue(SourceText source, SyntaxFault fault) {
    String before = source.before(fault.found());
    if (LIST.matcher(before).matches() && fault.problem().contains("<scalar>")) {
      return "has text after a list, write the unit in each item ([28 °F, 45 °F]) or a range as"
          + " 28 to 45 °F";
    }
    if (before.isBlank()) {
      return "is indented unlike the lines above, indent keys of one level alike";
    }
    return "has text after a value that ended, put the whole text in quotes";
  }
}
