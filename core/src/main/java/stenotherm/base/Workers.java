package stenotherm.base;

import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Threads that share tasks and end before the call returns. Any thread may take any task: a task
 * must depend neither on its thread nor on other tasks of the same call.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class Workers {
  /** A task. */
  public interface Task {
    /**
     * Does the task.
     *
     * @param worker number of the thread, to find working space of its own
     * @param index number of the task
     */
    void run(int worker, int index);
  }

  private final int threads;

  /**
   * Starts no thread yet.
   *
   * @param threads number of threads, the calling one included
   * @throws InvalidInputException if it is not positive
   */
  public Workers(int threads) {
    this.threads = checked(threads);
  }

  /**
   * Checks a number of threads.
   *
   * @param threads the number, the calling one included
   * @return the number
   * @throws InvalidInputException if it is not positive
   */
  public static int checked(int threads) {
    if (threads < 1) {
      throw new InvalidInputException("threads", threads + " must be at least 1");
    }
    return threads;
  }

  /**
   * Returns the number of threads.
   *
   * @return the number, the calling one included
   */
  public int threads() {
    return threads;
  }

  /**
   * Does all tasks. If some fail, the failure of the first in order is thrown. An interrupt of the
   * calling thread is passed on when all are done; tasks that take long look for it.
   *
   * @param tasks number of tasks
   * @param task what is done for each
   */
  public void run(int tasks, Task task) {
    AtomicInteger next = new AtomicInteger();
    @Nullable Throwable[] failures = new Throwable[tasks];
    Thread[] others =
        new Thread[Math.min(threads, tasks) - 1 > 0 ? Math.min(threads, tasks) - 1 : 0];
    for (int t = 0; t < others.length; t++) {
      int worker = t + 1;
      others[t] = new Thread(() -> work(worker, next, task, failures));
      others[t].start();
    }
    work(0, next, task, failures);
    boolean interrupted = false;
    for (Thread other : others) {
      while (other.isAlive()) {
        try {
          other.join();
        } catch (InterruptedException e) {
          // the tasks are short and their results must be complete; the interrupt is passed on
          // afterwards
          interrupted = true;
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    for (Throwable failure : failures) {
      if (failure instanceof RuntimeException exception) {
        throw exception;
      }
      if (failure instanceof Error error) {
        throw error;
      }
    }
  }

  private static void work(
      int worker, AtomicInteger next, Task task, @Nullable Throwable[] failures) {
    for (int index = next.getAndIncrement();
        index < failures.length;
        index = next.getAndIncrement()) {
      try {
        task.run(worker, index);
      } catch (RuntimeException | Error failure) {
        failures[index] = failure;
      }
    }
  }
}
