package stenotherm.scenario;

import java.lang.ref.Reference;
import java.util.function.Supplier;

/** Memory that a result keeps. */
final class HeldMemory {
  private HeldMemory() {}

  /** Memory in use with the result of an action, less that without [byte]. */
  static long after(Supplier<?> action) {
    action.get();
    long before = used();
    Object result = action.get();
    long after = used();
    Reference.reachabilityFence(result);
    return after - before;
  }

  private static long used() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
