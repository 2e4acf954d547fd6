package stenotherm.examples;

import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.TimeBudget;
import stenotherm.report.Comparison;

/**
 * How long a question may take, of commands that take long.
 *
 * <p>Not thread-safe; one object for each run.
 */
final class AtMost {
  private static final Pattern TIME = Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*(s|min|h)\\s*");

  /** What the units are [s]. */
  private static final Map<String, Double> UNITS = Map.of("s", 1.0, "min", 60.0, "h", 3600.0);

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec command;

  private double seconds = Double.POSITIVE_INFINITY;

  @Option(
      names = "--at-most",
      paramLabel = "TIME",
      description = {
        "Refuses what would take longer, such as 10min, 30s or 1h, after about a twentieth of it.",
        "Default: no limit."
      })
  @SuppressWarnings("unused") // picocli calls it
  private void set(String time) {
    Matcher parts = TIME.matcher(time);
    double number = parts.matches() ? Double.parseDouble(parts.group(1)) : 0;
    if (command != null && !(number > 0)) {
      throw new ParameterException(
          command.commandLine(),
          "--at-most: " + time + " must be a time above 0, such as 10min, 30s or 1h");
    }
    seconds = number * UNITS.getOrDefault(parts.group(2), 0.0);
  }

  /**
   * Has a question answered within the time.
   *
   * @param hint what would take less time, as a sentence
   * @param question answers it, and tells the watcher how far the work is
   * @throws InvalidInputException if it would take longer, or did
   */
  <T> T ask(String hint, Comparison.Watcher watcher, Function<Comparison.Watcher, T> question) {
    return seconds == Double.POSITIVE_INFINITY
        ? question.apply(watcher)
        : new TimeBudget(seconds, System::nanoTime)
            .within(hint, watcher, timed -> question.apply(timed(timed, watcher)));
  }

  private static Comparison.Watcher timed(ProgressListener timed, Comparison.Watcher watcher) {
    return new Comparison.Watcher() {
      @Override
      public Signal progress(double done, double total) {
        return timed.progress(done, total);
      }

      @Override
      public void soFar(String sentence) {
        watcher.soFar(sentence);
      }
    };
  }
}
