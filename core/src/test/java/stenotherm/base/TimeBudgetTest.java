package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Work of a hundred parts, on a clock that it sets itself. */
class TimeBudgetTest {
  private static final int PARTS = 100;

  private final AtomicLong clock = new AtomicLong(-5_000_000_000L);
  private int done;

  /** Parts of some seconds each, later ones of others. */
  private Function<ProgressListener, String> work(double seconds, double later) {
    return listener -> {
      while (done < PARTS) {
        clock.addAndGet(Math.round(1e9 * (done < PARTS / 2 ? seconds : later)));
        done++;
        if (listener.progress(done, PARTS) == ProgressListener.Signal.STOP) {
          throw new CancellationException("stopped");
        }
      }
      return "made";
    };
  }

  private String refusal(double allowed, double seconds, double later) {
    TimeBudget budget = new TimeBudget(allowed, clock::get);
    return assertThrows(
            InvalidInputException.class,
            () -> budget.within("Ask less.", ProgressListener.NONE, work(seconds, later)))
        .getMessage();
  }

  @Test
  void whatFitsIsDone() {
    TimeBudget budget = new TimeBudget(100, clock::get);
    assertEquals("made", budget.within("Ask less.", ProgressListener.NONE, work(1, 1)));
    assertEquals(PARTS, done);
  }

  @Test
  void whatWouldTakeLongerEndsAfterATwentieth() {
    assertEquals(
        "time: would be about 15 min, as the first 5 % tell; allowed are 14 min. Ask less.",
        refusal(840, 9, 9));
    assertEquals(PARTS / 20, done);
  }

  @Test
  void timesAreToldInUnitsThatSuitThem() {
    assertTrue(refusal(7200, 90, 90).contains("about 2.5 h,"));
    done = 0;
    assertTrue(refusal(0.25, 1, 1).contains("allowed are 0.3 s."));
  }

  /** Nine more parts of ten seconds each fill the time. */
  @Test
  void whatWasLetThroughIsStoppedWhenTheTimeIsOver() {
    assertEquals(
        "time: is over with 56 % of the work done; allowed are 105 s. Ask less.",
        refusal(105, 1, 10));
    assertEquals(56, done);
  }

  @Test
  void aPartOfAResultIsNotTakenForAll() {
    TimeBudget budget = new TimeBudget(10, clock::get);
    Function<ProgressListener, Integer> partial =
        listener -> {
          try {
            work(1, 1).apply(listener);
          } catch (CancellationException stopped) {
            return done;
          }
          return PARTS;
        };
    assertThrows(
        InvalidInputException.class,
        () -> budget.within("Ask less.", ProgressListener.NONE, partial));
  }

  @Test
  void aListenerMayStillStop() {
    TimeBudget budget = new TimeBudget(1000, clock::get);
    ProgressListener impatient =
        (part, of) -> part < 30 ? ProgressListener.Signal.CONTINUE : ProgressListener.Signal.STOP;
    assertThrows(
        CancellationException.class, () -> budget.within("Ask less.", impatient, work(1, 1)));
    assertEquals(30, done);
  }

  @Test
  void noTimeIsRefused() {
    assertThrows(InvalidInputException.class, () -> new TimeBudget(0, clock::get));
    assertThrows(InvalidInputException.class, () -> new TimeBudget(Double.NaN, clock::get));
  }
}
