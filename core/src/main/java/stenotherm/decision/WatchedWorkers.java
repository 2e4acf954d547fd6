package stenotherm.decision;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import stenotherm.base.ListenerGuard;
import stenotherm.base.ProgressListener;
import stenotherm.base.Workers;

/**
 * Threads that share the tasks of one piece of work, which a listener watches and may stop, and an
 * interrupt of the thread that made this.
 */
final class WatchedWorkers {
  private final Workers workers;
  private final ListenerGuard listener;
  private final Thread caller = Thread.currentThread();
  private final AtomicBoolean stopped = new AtomicBoolean();

  /** Part of the whole work that was told last, 0 to 1. */
  private volatile double share;

  WatchedWorkers(Workers workers, ProgressListener listener) {
    this.workers = workers;
    this.listener = new ListenerGuard(listener);
  }

  /**
   * Does some tasks. The listener is told on any of the threads, but on one at a time; what it
   * throws is thrown here.
   *
   * @param from part of the whole work that is done before them, 0 to 1
   * @param to part that is done after them
   * @throws CancellationException if the work was stopped
   */
  void each(int tasks, double from, double to, IntConsumer work) {
    AtomicInteger done = new AtomicInteger();
    try {
      workers.run(
          tasks,
          (worker, index) -> {
            requireGoing();
            work.accept(index);
            // counted where it is told, lest a later count is told first
            synchronized (listener) {
              tell(from + (to - from) * done.incrementAndGet() / tasks);
            }
          });
    } catch (CancellationException within) {
      listener.passOn();
      // whoever stopped this stopped what is within
      requireGoing();
      throw within;
    }
    requireGoing();
  }

  private void tell(double part) {
    share = part;
    if (listener.progress(part, 1) == ProgressListener.Signal.STOP) {
      stopped.set(true);
    }
  }

  private void requireGoing() {
    if (signal() == ProgressListener.Signal.STOP) {
      throw new CancellationException(
          (stopped.get() ? "stopped by the listener" : "interrupted")
              + " with "
              + Math.round(100 * share)
              + " % done");
    }
  }

  /** Whether to go on, for what takes long within a task. */
  ProgressListener.Signal signal() {
    return stopped.get() || caller.isInterrupted()
        ? ProgressListener.Signal.STOP
        : ProgressListener.Signal.CONTINUE;
  }
}
