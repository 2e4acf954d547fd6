package stenotherm.validation.benchmark;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.function.Supplier;

/** Takes the time of something, more than once, and keeps the least. */
final class Stopwatch {
  private Stopwatch() {}

  /**
   * What something took, the least of several times each.
   *
   * @param result its result, of the last time
   * @param processor processor time of all threads, the collector's and the compiler's included [s]
   * @param thread processor time of the thread that called [s]
   * @param wall wall-clock time [s]
   * @param <T> type of the result
   */
  record Taken<T>(T result, double processor, double thread, double wall) {}

  /** Takes the least of some times. */
  static <T> Taken<T> least(int times, Supplier<T> work) {
    Taken<T> least = once(work);
    for (int time = 1; time < times; time++) {
      Taken<T> next = once(work);
      least =
          new Taken<>(
              next.result(),
              Math.min(least.processor(), next.processor()),
              Math.min(least.thread(), next.thread()),
              Math.min(least.wall(), next.wall()));
    }
    return least;
  }

  private static <T> Taken<T> once(Supplier<T> work) {
    double processor = processorSeconds();
    double thread = threadSeconds();
    long wall = System.nanoTime();
    T result = work.get();
    return new Taken<>(
        result,
        processorSeconds() - processor,
        threadSeconds() - thread,
        (System.nanoTime() - wall) * 1e-9);
  }

  /** Processor time of the thread that calls [s]. */
  static double threadSeconds() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() * 1e-9;
  }

  private static double processorSeconds() {
    return ManagementFactory.getOperatingSystemMXBean() instanceof OperatingSystemMXBean system
        ? system.getProcessCpuTime() * 1e-9
        : Double.NaN;
  }
}
