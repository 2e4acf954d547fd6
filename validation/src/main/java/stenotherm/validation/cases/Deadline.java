package stenotherm.validation.cases;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * Interrupts the thread that made it when its time is over, so that whatever honours an interrupt
 * keeps a limit of time, too. Closing it takes its own interrupt back. One thread uses it.
 */
final class Deadline implements AutoCloseable {
  private final Thread worker = Thread.currentThread();
  private final long start = System.nanoTime();
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "deadline of a case");
            thread.setDaemon(true);
            return thread;
          });
  private boolean passed;
  private boolean closed;

  /**
   * Starts the clock.
   *
   * @param seconds time until the interrupt [s]
   */
  Deadline(double seconds) {
    // a future that is looked at by nobody: passing cannot fail
    var unused = clock.schedule(this::pass, Math.round(1e9 * seconds), TimeUnit.NANOSECONDS);
  }

  private synchronized void pass() {
    if (!closed) {
      passed = true;
      worker.interrupt();
    }
  }

  /** Time since the start [s]. */
  double elapsed() {
    return (System.nanoTime() - start) * 1e-9;
  }

  synchronized boolean hasPassed() {
    return passed;
  }

  /**
   * Tells an interrupt of this deadline from one of somebody who wants everything to stop.
   *
   * @throws CancellationException the one given, if the time is not over
   */
  void requirePassed(CancellationException interrupt) {
    if (!hasPassed()) {
      throw interrupt;
    }
  }

  @Override
  public synchronized void close() {
    closed = true;
    clock.shutdownNow();
    if (passed) {
      Thread.interrupted();
    }
  }
}
