package stenotherm.validation.cases;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import stenotherm.base.MessageText;
import stenotherm.text.Document;
import stenotherm.validation.cases.CaseResult.Status;

/**
 * Runs many damaged cases, small and cheap ones, and tells what they came to. To run it: test
 * classes of this module on the class path, the number of cases and the seed as arguments.
 */
final class CaseFuzz {
  /** So small that no case takes long. */
  private static final Limits LIMITS = new Limits(1_500, 1L << 28, 1);

  private static final List<String> ORIGINALS =
      List.of(
          TinyCases.STEADY,
          TinyCases.TRANSIENT,
          TinyCases.STEADY
              .replace("yMax: {kind: adiabatic}", "yMax: {kind: flux, value: 5}")
              .replace("{name: cold, point: [1, 0.5, 0.5]}", "{name: cold, max: wall}")
              .replace(
                  "  - {name: wall, conductivity: 1}\n",
                  """
                    - {name: wall, conductivity: 1}
                    - {name: room, x: [0.6, 1], y: [0, 0.5], z: [0, 1],
                       environment: {coefficient: 8, ambient: 290}}
                    - {name: bar, conductivity: 50, x: [0.2, 0.4], y: [0, 1], z: [0, 1], power: 3}
                  """)
              .replace("heatOut: xMax", "heatOut: room"),
          TinyCases.TRANSIENT
                  .replace(
                      "ambient: {mean: 290, amplitude: 5, period: 600, phase: 0.5}",
                      "ambient: [[0, 280], [100, 300], [100, 290]]")
                  .replace("until: 600", "until: 600, timeTolerance: 0.05")
              + "mesh: {largestCell: 0.02, firstCell: 0.01, growth: 1.3}\n");

  private static final Pattern NUMBER =
      Pattern.compile("(?<=[\\[ ])-?[0-9]+(?:\\.[0-9]+)?(?=[,\\]} \n])");
  private static final Pattern WORD = Pattern.compile("[A-Za-z]{2,}");
  private static final Pattern VALUE = Pattern.compile("(?<=: )[^\\n{},\\[\\]]+");

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-1",
          "-300",
          "1e308",
          "1e300",
          "1e100",
          "1e15",
          "1e6",
          "1800",
          "1e-3",
          "1e-9",
          "1e-100",
          "4.9e-324",
          "-1e308",
          "-1e15",
          "NaN",
          "inf",
          "12,5",
          "",
          "x",
          "1e999",
          "~",
          "0.1",
          "0.5",
          "2",
          "10",
          "300");
  private static final List<String> VALUES =
      List.of(
          "~",
          "true",
          "[]",
          "{}",
          "[1, 2]",
          "[[0, 1]]",
          "[[0, 1], [5, 2]]",
          "[[-5, 1], [5, 2]]",
          "[[5, 1], [0, 2]]",
          "{mean: 290, amplitude: 1e300, period: 1e-300, phase: 0}",
          "{mean: 290, amplitude: 5, period: 1e-9, phase: 0}",
          "''",
          "\"\\e[31m\"",
          "\"half \\ud83d\"",
          "\"=1+1\"",
          "x".repeat(2000),
          "transient",
          "steady",
          "adiabatic",
          "temperature",
          "convection",
          "wall",
          "plate",
          "xMin",
          "zMax",
          "1",
          "1 %",
          "K",
          "W");

  private final Random random;

  private CaseFuzz(long seed) {
    this.random = new Random(seed);
  }

  /**
   * What a damaged case came to.
   *
   * @param status how it ended
   * @param longest its longest line [char]
   * @param complaint what is wrong with the runner; empty if nothing is
   */
  record Result(Status status, int longest, String complaint) {}

  /** Damaged cases: the same for the same seed and number. */
  static List<String> mutants(long seed, int number) {
    CaseFuzz fuzz = new CaseFuzz(seed);
    return IntStream.range(0, number)
        .mapToObj(each -> fuzz.damaged(ORIGINALS.get(each % ORIGINALS.size())))
        .toList();
  }

  private String damaged(String text) {
    String changed = text;
    for (int times = Math.max(1, random.nextInt(5) - 2); times > 0; times--) {
      changed =
          switch (random.nextInt(8)) {
            case 0, 1, 2 -> replaceOne(NUMBER, changed, pick(NUMBERS));
            case 3 -> replaceOne(VALUE, changed, pick(VALUES));
            case 4 -> replaceOne(VALUE, changed, oneOf(VALUE, changed));
            case 5 -> replaceOne(NUMBER, changed, oneOf(NUMBER, changed));
            case 6 -> replaceOne(WORD, changed, oneOf(WORD, changed));
            default -> withoutLine(changed);
          };
    }
    return changed;
  }

  private String pick(List<String> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private String oneOf(Pattern pattern, String text) {
    List<String> all = pattern.matcher(text).results().map(MatchResult::group).toList();
    return all.isEmpty() ? "" : pick(all);
  }

  private String replaceOne(Pattern pattern, String text, String replacement) {
    List<MatchResult> places = pattern.matcher(text).results().toList();
    if (places.isEmpty()) {
      return text;
    }
    MatchResult place = places.get(random.nextInt(places.size()));
    return text.substring(0, place.start()) + replacement + text.substring(place.end());
  }

  private String withoutLine(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    lines.remove(random.nextInt(lines.size()));
    return String.join("\n", lines) + "\n";
  }

  /** Runs a case and writes its report, as the command does. */
  static Result run(String text) {
    StringWriter console = new StringWriter();
    CaseSource source = new CaseSource("c.yaml", () -> Document.parse("c.yaml", text));
    RunCases command = new RunCases();
    Status status;
    try (PrintWriter out = new PrintWriter(console)) {
      List<CaseResult> results = command.run(List.of(source), LIMITS, out);
      status = results.get(0).status();
      RunCases.summary(results, out);
      ReportFiles.of(results, List.of());
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError other) {
      return new Result(Status.REFUSED, 0, "stack trace: " + LastLine.of(other));
    }
    int longest = console.toString().lines().mapToInt(String::length).max().orElse(0);
    String complaint = "";
    if (console.toString().contains("unforeseen")) {
      complaint = "unforeseen: " + console;
    } else if (longest > MessageText.LONGEST) {
      complaint = "length: " + console;
    } else if (console.toString().chars().anyMatch(c -> c != '\n' && Character.isISOControl(c))) {
      complaint = "control character: " + console;
    }
    return new Result(status, longest, complaint);
  }

  /** A throwable with the innermost places. */
  private static final class LastLine {
    static String of(Throwable end) {
      String places =
          IntStream.range(0, Math.min(4, end.getStackTrace().length))
              .mapToObj(call -> end.getStackTrace()[call].toString())
              .toList()
              .toString();
      return end + Matcher.quoteReplacement(places);
    }
  }

  /** Runs damaged cases, the number and the seed given as arguments. */
  public static void main(String[] args) {
    int number = Integer.parseInt(args[0]);
    long seed = Long.parseLong(args[1]);
    List<String> mutants = mutants(seed, number);
    long start = System.nanoTime();
    int[] ends = new int[Status.values().length];
    int longest = 0;
    int complaints = 0;
    double slowest = 0;
    for (String mutant : mutants) {
      long begin = System.nanoTime();
      Result result = run(mutant);
      slowest = Math.max(slowest, (System.nanoTime() - begin) * 1e-9);
      ends[result.status().ordinal()]++;
      longest = Math.max(longest, result.longest());
      if (!result.complaint().isEmpty() && complaints++ < 20) {
        System.out.println(result.complaint() + "\n" + mutant);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%d cases, seed %d, %.0f s, slowest %.1f s:",
        number,
        seed,
        (System.nanoTime() - start) * 1e-9,
        slowest);
    for (Status status : Status.values()) {
      System.out.print(" " + ends[status.ordinal()] + " " + status.words() + ",");
    }
    System.out.println(" longest line " + longest + " characters, " + complaints + " complaints");
  }
}
