package stenotherm.examples;

import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import stenotherm.base.MessageText;
import stenotherm.report.Comparison;

/**
 * Shows how far a computation is: one line that counts up for somebody who watches, a few lines for
 * a file, and in either a sign of life after ten seconds without news. An interrupt of the
 * computing thread stops the computation.
 *
 * <p>Thread-safe. Its signs of life have a thread of their own until {@link #end}: a run of a
 * parcel in which something melts takes up to minutes, and core, which has no clock, says nothing
 * in them.
 */
final class Progress implements Comparison.Watcher {
  /** Percent between two lines. */
  private static final int LINE_EVERY = 25;

  private static final int DONE = 100;
  private static final int BLANKS = 20;

  /** Letters of a sign of life, hours included. */
  private static final int WIDEST = 40;

  /** How often to look at the clock [ms]. */
  private static final int SECOND = 1000;

  /** Longest time without a word [ns], less the second between two looks at the clock. */
  private static final long QUIET = TimeUnit.SECONDS.toNanos(9);

  private final PrintWriter out;
  private final LongSupplier clock;
  private final long began;
  private final Timer beats = new Timer("signs of life", true);
  private final boolean watched = isWatched();
  private int shown = -1;
  private int nextLine = LINE_EVERY;
  private long said;
  private boolean ended;

  Progress(PrintWriter out) {
    this(out, System::nanoTime);
    beats.schedule(
        new TimerTask() {
          @Override
          public void run() {
            beat();
          }
        },
        SECOND,
        SECOND);
  }

  /** Without signs of life but those that {@link #beat} is called for. */
  Progress(PrintWriter out, LongSupplier clock) {
    this.out = out;
    this.clock = clock;
    began = clock.getAsLong();
    said = began;
  }

  @Override
  public synchronized Signal progress(double done, double total) {
    int percent = (int) (100 * done / total + 1e-9);
    if (percent > shown) {
      show(percent);
    }
    return Thread.currentThread().isInterrupted() ? Signal.STOP : Signal.CONTINUE;
  }

  private void show(int percent) {
    shown = percent;
    if (watched) {
      // blanks cover what a sign of life wrote
      say("\rcomputing: " + percent + " %" + " ".repeat(BLANKS));
    } else if (percent >= nextLine) {
      say("computing: " + percent + " %" + System.lineSeparator());
      nextLine = percent - percent % LINE_EVERY + LINE_EVERY;
    }
  }

  private void say(String text) {
    out.print(text);
    out.flush();
    said = clock.getAsLong();
  }

  /** Says how long it has been if nothing was said for long. */
  synchronized void beat() {
    long now = clock.getAsLong();
    if (now - said >= QUIET && shown < DONE && !ended) {
      String life =
          "computing: "
              + Math.max(0, shown)
              + " %, "
              + TimeUnit.NANOSECONDS.toSeconds(now - began)
              + " s so far";
      say(watched ? "\r" + life : life + System.lineSeparator());
    }
  }

  @Override
  public synchronized void soFar(String sentence) {
    String text = MessageText.of(sentence, Integer.MAX_VALUE);
    // blanks cover what a sign of life wrote
    String blanks = " ".repeat(watched ? Math.max(0, WIDEST - text.length()) : 0);
    say((watched ? "\r" : "") + text + blanks + System.lineSeparator());
  }

  /** Ends the line that counts up. */
  synchronized void end() {
    ended = true;
    beats.cancel();
    if (watched) {
      out.println();
    }
  }

  /** Tells whether somebody watches the console; from Java 22 on there may be one without. */
  @SuppressWarnings("SystemConsoleNull") // isTerminal is asked for where there is one
  private static boolean isWatched() {
    java.io.Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return Boolean.TRUE.equals(java.io.Console.class.getMethod("isTerminal").invoke(console));
    } catch (ReflectiveOperationException before22) {
      return true;
    }
  }
}
