package stenotherm.scenario;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import stenotherm.base.MessageText;
import stenotherm.text.TextFormatException;

/**
 * Reads many damaged scenarios and tells what they came to. To run it: test classes of this module
 * on the class path, the number of scenarios and the seed as arguments.
 */
final class ScenarioFuzz {
  /** Most memory that reading one scenario may allocate, garbage included [byte]. */
  static final long MOST_BYTES = 64_000_000;

  /** What fitting the iron of one rated warmer may allocate beside it [byte]. */
  private static final long BYTES_OF_A_FIT = 300_000_000;

  private static final Pattern MESSAGE = Pattern.compile("s\\.yaml:[1-9]\\d*:[1-9]\\d*: \\S.*");

  /** What a message must never show: types, packages, printed objects, words of the parser. */
  private static final Pattern INNARDS =
      Pattern.compile(
          "(?i)exception|stenotherm\\.|java\\.|yaml\\.snake|\\bnull pointer|@[0-9a-f]{6}"
              + "|while (?:scanning|parsing)|block mapping|document start|<scalar>|flow sequence");

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private ScenarioFuzz() {}

  /**
   * What one scenario came to.
   *
   * @param isRead whether it was read whole
   * @param messages messages of its refusal
   * @param bytes what reading it allocated
   * @param complaint what is wrong with the reader; empty if nothing is
   */
  record Result(boolean isRead, List<String> messages, long bytes, String complaint) {}

  static Result read(String text) {
    long before = THREADS.getCurrentThreadAllocatedBytes();
    boolean isRead = false;
    List<String> messages = List.of();
    String complaint = "";
    try {
      ScenarioReader.read("s.yaml", text);
      isRead = true;
    } catch (TextFormatException fault) {
      messages = fault.faults().stream().map(Throwable::getMessage).toList();
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError other) {
      complaint = "stack trace: " + other;
    }
    long bytes = THREADS.getCurrentThreadAllocatedBytes() - before;
    for (String message : messages) {
      if (!MESSAGE.matcher(message).matches() || INNARDS.matcher(message).find()) {
        complaint = "words: " + message;
      }
      if (message.length() > MessageText.LONGEST) {
        complaint = "length: " + message;
      }
    }
    long fits = text.split("rating:", -1).length - 1;
    if (bytes > MOST_BYTES + fits * BYTES_OF_A_FIT) {
      complaint = "memory: " + bytes + " bytes";
    }
    return new Result(isRead, messages, bytes, complaint);
  }

  /** Damaged scenarios: the same for the same seed and number. */
  static List<String> mutants(long seed, int number) {
    List<String> originals = ScenarioFiles.allForDamage();
    Mutations mutations = new Mutations(seed);
    return IntStream.range(0, number)
        .mapToObj(each -> mutations.of(originals.get(each % originals.size())))
        .toList();
  }

  /** Reads damaged scenarios, the number and the seed given as arguments. */
  public static void main(String[] args) {
    int number = Integer.parseInt(args[0]);
    long seed = Long.parseLong(args[1]);
    List<Result> results = mutants(seed, number).parallelStream().map(ScenarioFuzz::read).toList();
    List<String> complaints = new ArrayList<>();
    results.stream()
        .map(Result::complaint)
        .filter(each -> !each.isEmpty())
        .forEach(complaints::add);
    int longest =
        results.stream()
            .flatMap(result -> result.messages().stream())
            .mapToInt(String::length)
            .max()
            .orElse(0);
    System.out.printf(
        Locale.ROOT,
        "%d scenarios, seed %d: %d read, %d refused with %d messages, longest %d characters, most"
            + " memory of one reading %.1f MB, %d complaints%n",
        number,
        seed,
        results.stream().filter(Result::isRead).count(),
        results.stream().filter(result -> !result.messages().isEmpty()).count(),
        results.stream().mapToLong(result -> result.messages().size()).sum(),
        longest,
        results.stream().mapToLong(Result::bytes).max().orElse(0) / 1e6,
        complaints.size());
    complaints.stream().limit(20).forEach(System.out::println);
  }
}
