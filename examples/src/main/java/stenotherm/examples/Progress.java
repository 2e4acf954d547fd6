package stenotherm.examples;

import java.io.PrintWriter;
import stenotherm.base.MessageText;
import stenotherm.report.Comparison;

/**
 * Shows how far a computation is: one line that counts up for somebody who watches, a few lines for
 * a file. An interrupt of the computing thread stops the computation.
 *
 * <p>Thread-safe.
 */
final class Progress implements Comparison.Watcher {
  /** Percent between two lines. */
  private static final int LINE_EVERY = 25;

  private final PrintWriter out;
  private final boolean watched = isWatched();
  private int shown = -1;
  private int nextLine = LINE_EVERY;

  Progress(PrintWriter out) {
    this.out = out;
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
      out.print("\rcomputing: " + percent + " %");
    } else if (percent >= nextLine) {
      out.println("computing: " + percent + " %");
      nextLine = percent - percent % LINE_EVERY + LINE_EVERY;
    }
    out.flush();
  }

  @Override
  public synchronized void soFar(String sentence) {
    out.println((watched ? "\r" : "") + MessageText.of(sentence, Integer.MAX_VALUE));
    out.flush();
  }

  /** Ends the line that counts up. */
  synchronized void end() {
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
