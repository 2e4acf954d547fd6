package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ListenerGuardTest {
  @Test
  void whatAListenerThrowsIsKeptAndEndsTheWork() {
    for (Throwable own : List.of(new IllegalStateException("own"), new AssertionError("own"))) {
      List<Double> told = new ArrayList<>();
      ListenerGuard guard =
          new ListenerGuard(
              (done, total) -> {
                told.add(done);
                if (done < 2) {
                  return ProgressListener.Signal.CONTINUE;
                }
                if (own instanceof Error error) {
                  throw error;
                }
                throw (RuntimeException) own;
              });
      assertEquals(ProgressListener.Signal.CONTINUE, guard.progress(1, 3));
      guard.passOn();
      assertSame(own, assertThrows(own.getClass(), () -> guard.progress(2, 3)));
      assertEquals(ProgressListener.Signal.STOP, guard.progress(3, 3));
      assertEquals(List.of(1.0, 2.0), told);
      assertSame(own, assertThrows(own.getClass(), guard::passOn));
    }
  }

  @Test
  void aNullIsNamed() {
    assertEquals(
        "listener: must not be null",
        assertThrows(InvalidInputException.class, () -> new ListenerGuard(null)).getMessage());
    ListenerGuard silent = new ListenerGuard((done, total) -> null);
    assertEquals(
        "signal of a listener: must not be null",
        assertThrows(InvalidInputException.class, () -> silent.progress(1, 1)).getMessage());
  }
}
