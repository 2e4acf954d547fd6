package stenotherm.base;

import org.jspecify.annotations.Nullable;

/**
 * A listener as the work that it watches calls it: one call at a time, on whichever thread. What it
 * throws is its own and no failure of the work: it is kept, so that the work can tell it from one
 * and pass it on as it was.
 *
 * <p>Experimental. Thread-safe.
 */
public final class ListenerGuard implements ProgressListener {
  private final ProgressListener listener;
  private @Nullable Throwable thrown;

  /**
   * Guards a listener.
   *
   * @param listener the listener
   * @throws InvalidInputException if it is null
   */
  public ListenerGuard(ProgressListener listener) {
    this.listener = Checks.given("listener", listener);
  }

  /** Tells the listener; one that has thrown is told nothing more and stops the work. */
  @Override
  public synchronized Signal progress(double done, double total) {
    if (thrown != null) {
      return Signal.STOP;
    }
    try {
      return Checks.given("signal of a listener", listener.progress(done, total));
    } catch (RuntimeException | Error own) {
      thrown = own;
      throw own;
    }
  }

  /** Throws what the listener threw, if it did: where the work catches what may come from it. */
  public synchronized void passOn() {
    if (thrown instanceof RuntimeException exception) {
      throw exception;
    }
    if (thrown instanceof Error error) {
      throw error;
    }
  }
}
