package stenotherm.base;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Threads that share tasks: the calling one, and others that an executor gives or that end before
 * the call returns. Any thread may take any task: a task must depend neither on its thread nor on
 * other tasks of the same call. The calling thread does all that no other comes to do, so that an
 * executor whose threads are all busy, or which refuses, makes a call slower, never stuck.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param threads most threads at a time, the calling one included
 * @param executor what gives the others
 */
public record Workers(int threads, Executor executor) {
  /** A thread for each command, which ends with it. */
  private enum OwnThreads implements Executor {
    ONLY;

    @Override
    public void execute(Runnable command) {
      new Thread(command).start();
    }
  }

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

  /**
   * Checks the number.
   *
   * @throws InvalidInputException if there is no thread
   */
  public Workers {
    if (threads < 1) {
      throw new InvalidInputException("threads", threads + " must be at least 1");
    }
    Checks.given("executor", executor);
  }

  /**
   * Threads of their own; none is started yet.
   *
   * @param threads most threads at a time, the calling one included
   * @throws InvalidInputException if it is not positive
   */
  public Workers(int threads) {
    this(threads, OwnThreads.ONLY);
  }

  /**
   * Does all tasks. If some fail, the failure of the first in order is thrown. An interrupt of the
   * calling thread is passed on when all are done; tasks that take long look for it.
   *
   * @param tasks number of tasks, 0 or above
   * @param task what is done for each
   * @throws InvalidInputException if the number is below 0
   */
  public void run(int tasks, Task task) {
    if (tasks < 0) {
      throw new InvalidInputException("tasks", tasks + " must be 0 or above");
    }
    Checks.given("task", task);
    Call call = new Call(tasks, task);
    try {
      for (int worker = 1; worker < Math.min(threads, tasks); worker++) {
        int number = worker;
        executor.execute(() -> call.join(number));
      }
    } catch (RejectedExecutionException refused) {
      // those that came do the work with the calling thread
    }
    call.work(0);
    call.end();
  }

  /**
   * Makes something of each index, as {@link #run} does tasks.
   *
   * @param <T> what is made
   * @param count number of indices, 0 or above
   * @param task what is made of each
   * @return what was made, by index
   * @throws InvalidInputException if the number is below 0
   */
  public <T> List<T> map(int count, IntFunction<T> task) {
    List<T> made = new ArrayList<>(Collections.nCopies(Math.max(0, count), null));
    run(count, (worker, index) -> made.set(index, task.apply(index)));
    return made;
  }

  /** Tasks under way. */
  private static final class Call {
    private final Task task;
    private final AtomicInteger next = new AtomicInteger();
    private final @Nullable Throwable[] failures;
    private int others;
    private boolean over;

    Call(int tasks, Task task) {
      this.task = task;
      this.failures = new Throwable[tasks];
    }

    /** Works on another thread, unless it comes too late. */
    void join(int worker) {
      synchronized (this) {
        if (over) {
          return;
        }
        others++;
      }
      work(worker);
      synchronized (this) {
        others--;
        notifyAll();
      }
    }

    void work(int worker) {
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

    /** Waits for tasks that others have begun, and passes on what went wrong. */
    void end() {
      boolean interrupted = false;
      synchronized (this) {
        over = true;
        while (others > 0) {
          try {
            wait();
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
  }
}
