package stenotherm.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes scenario files wrong in the ways in which people and programs make them wrong. */
final class Mutations {
  private static final Pattern KEY = Pattern.compile("(?<=^|[\\s{,\\-])[A-Za-z-]+(?=:\\s)");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");
  private static final Pattern UNIT =
      Pattern.compile("(?<=[0-9] )(?:mm|in|cm|g|oz|h|min|d|°C|°F|K|F°|m/s|mph|m2K/W|%)");
  private static final Pattern VALUE = Pattern.compile("(?<=: )[^\\n{},\\[\\]]+");
  private static final Pattern WORD = Pattern.compile("[A-Za-z]{2,}");

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-1",
          "1e308",
          "1e-320",
          "NaN",
          "inf",
          "12,5",
          "1_000",
          "0x10",
          "010",
          "1:30",
          "½",
          "٣",
          "1/2",
          ".5",
          "7.",
          "−4",
          "99999999999",
          "1e",
          "");
  private static final List<String> UNITS =
      List.of(
          "mm", "in", "ft", "m", "g", "kg", "lb", "oz", "h", "min", "d", "s", "°C", "°F", "K", "C°",
          "F°", "m/s", "mph", "%", "W", "", "MM", "µm", "º", "fl oz");
  private static final List<String> VALUES =
      List.of(
          "~",
          "null",
          "true",
          "no",
          "0",
          "[]",
          "{}",
          "[1, 2]",
          "{a: b}",
          "''",
          "\"\"",
          "none",
          "outdoors",
          "yes",
          "lid",
          "12",
          "2014-13-40 25:61",
          "&a x",
          "*a",
          "!!int 3",
          "|",
          ">",
          "- ",
          "\u0000",
          "\uFEFF",
          "\u202E",
          "\uD83E\uDD8E",
          "é",
          "x".repeat(300),
          "a: b",
          "# gone",
          "1 x 1 x 1 mm",
          "1e9 x 1e9 x 1e9 m",
          "UTC+18",
          "EPS 20, 19 mm",
          "24 h",
          "21 °C");

  private final Random random;

  Mutations(long seed) {
    this.random = new Random(seed);
  }

  /** Changes a text in one place, seldom in two or three. */
  String of(String text) {
    String changed = text;
    for (int times = Math.max(1, random.nextInt(6) - 2); times > 0; times--) {
      changed = once(changed);
    }
    return changed;
  }

  private String once(String text) {
    return switch (random.nextInt(15)) {
      case 0 -> dropLine(text);
      case 1 -> repeatLine(text);
      case 2 -> replaceOne(KEY, text, misspelt(text, KEY));
      case 3 -> replaceOne(KEY, text, oneOf(KEY, text));
      case 4 -> replaceOne(NUMBER, text, pick(NUMBERS));
      case 5 -> replaceOne(NUMBER, text, Integer.toString(random.nextInt(1000)));
      case 6 -> replaceOne(UNIT, text, pick(UNITS));
      case 7 -> replaceOne(VALUE, text, Matcher.quoteReplacement(pick(VALUES)));
      case 8 -> replaceOne(VALUE, text, Matcher.quoteReplacement(oneOf(VALUE, text)));
      case 9 -> replaceOne(NUMBER, text, "-$0");
      case 10 -> text.substring(0, random.nextInt(text.length() + 1));
      case 11 -> indent(text);
      case 12 -> swapLines(text);
      case 13 -> replaceOne(WORD, text, misspelt(text, WORD));
      default -> character(text);
    };
  }

  private String pick(List<String> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private String replaceOne(Pattern pattern, String text, String replacement) {
    List<MatchResult> places = pattern.matcher(text).results().toList();
    if (places.isEmpty()) {
      return text;
    }
    MatchResult place = places.get(random.nextInt(places.size()));
    String found = place.group();
    String with = Pattern.compile(".*", Pattern.DOTALL).matcher(found).replaceFirst(replacement);
    return text.substring(0, place.start()) + with + text.substring(place.end());
  }

  private String oneOf(Pattern pattern, String text) {
    List<String> all = pattern.matcher(text).results().map(MatchResult::group).toList();
    return all.isEmpty() ? "" : pick(all);
  }

  private String misspelt(String text, Pattern pattern) {
    String word = oneOf(pattern, text);
    if (word.length() < 2) {
      return word;
    }
    int at = random.nextInt(word.length() - 1);
    return word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
  }

  private static List<String> lines(String text) {
    return new ArrayList<>(List.of(text.split("\n", -1)));
  }

  private String dropLine(String text) {
    List<String> lines = lines(text);
    lines.remove(random.nextInt(lines.size()));
    return String.join("\n", lines);
  }

  private String repeatLine(String text) {
    List<String> lines = lines(text);
    lines.add(random.nextInt(lines.size() + 1), lines.get(random.nextInt(lines.size())));
    return String.join("\n", lines);
  }

  private String swapLines(String text) {
    List<String> lines = lines(text);
    String line = lines.remove(random.nextInt(lines.size()));
    lines.add(random.nextInt(lines.size() + 1), line);
    return String.join("\n", lines);
  }

  private String indent(String text) {
    List<String> lines = lines(text);
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    lines.set(at, random.nextBoolean() ? "  " + line : line.replaceFirst("^ {1,2}", ""));
    return String.join("\n", lines);
  }

  private String character(String text) {
    int at = random.nextInt(text.length() + 1);
    String signs = ":,-{}[]\"'#&*!|>%@`\t\n °\u00A0\u2028;=~\\x9";
    char sign = signs.charAt(random.nextInt(signs.length()));
    int after = Math.min(text.length(), at + random.nextInt(2));
    return text.substring(0, at) + sign + text.substring(after);
  }
}
