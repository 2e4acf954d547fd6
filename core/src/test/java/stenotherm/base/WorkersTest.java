package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class WorkersTest {
  private static final Duration LONG = Duration.ofSeconds(20);

  /** Two tasks that wait for each other: only two threads end them. */
  private static void meet(Workers workers) {
    CountDownLatch both = new CountDownLatch(2);
    Set<Thread> seen = ConcurrentHashMap.newKeySet();
    workers.run(
        2,
        (worker, index) -> {
          seen.add(Thread.currentThread());
          both.countDown();
          try {
            both.await();
          } catch (InterruptedException e) {
            throw new IllegalStateException(e);
          }
        });
    assertEquals(2, seen.size());
    assertTrue(seen.contains(Thread.currentThread()));
  }

  @Test
  void whatCannotBeDoneIsRefused() {
    Workers one = new Workers(1);
    assertEquals(
        "tasks: -1 must be 0 or above",
        assertThrows(InvalidInputException.class, () -> one.run(-1, (worker, index) -> {}))
            .getMessage());
    assertEquals(
        "task: must not be null",
        assertThrows(InvalidInputException.class, () -> one.run(1, null)).getMessage());
    one.run(0, (worker, index) -> Assertions.fail());
  }

  @Test
  void whatIsMadeHasTheOrderOfItsIndices() {
    Workers two = new Workers(2);
    assertEquals(List.of(0, 10, 20, 30, 40), two.map(5, index -> 10 * index));
    assertEquals(List.of(), two.map(0, index -> index));
    assertEquals(
        "tasks: -1 must be 0 or above",
        assertThrows(InvalidInputException.class, () -> two.map(-1, index -> index)).getMessage());
    assertThrows(
        IllegalStateException.class,
        () ->
            two.map(
                3,
                index -> {
                  throw new IllegalStateException();
                }));
  }

  @Test
  void threadsOfTheCallersExecutorShareTheTasks() {
    ExecutorService pool = Executors.newFixedThreadPool(1);
    try {
      Assertions.assertTimeoutPreemptively(LONG, () -> meet(new Workers(2, pool)));
      Assertions.assertTimeoutPreemptively(LONG, () -> meet(new Workers(2)));
    } finally {
      pool.shutdownNow();
    }
  }

  /**
   * Each task of a pool of one asks that pool again: none may wait for a thread that never comes.
   */
  @Test
  void anExecutorThatIsBusyOrRefusesMakesNothingStuck() {
    ExecutorService pool = Executors.newFixedThreadPool(1);
    AtomicIntegerArray done = new AtomicIntegerArray(16);
    try {
      Workers nested = new Workers(3, pool);
      Assertions.assertTimeoutPreemptively(
          LONG,
          () ->
              nested.run(
                  4,
                  (worker, outer) ->
                      nested.run(4, (inner, index) -> done.incrementAndGet(4 * outer + index))));
    } finally {
      pool.shutdownNow();
    }
    for (int task = 0; task < done.length(); task++) {
      assertEquals(1, done.get(task));
    }
    Workers refused =
        new Workers(
            3,
            command -> {
              throw new RejectedExecutionException("busy");
            });
    AtomicIntegerArray alone = new AtomicIntegerArray(5);
    refused.run(5, (worker, index) -> alone.incrementAndGet(index));
    for (int task = 0; task < alone.length(); task++) {
      assertEquals(1, alone.get(task));
    }
  }

  @Test
  void theFirstFailureInOrderIsThrownAfterAllAreDone() {
    AtomicIntegerArray done = new AtomicIntegerArray(6);
    IllegalStateException second = new IllegalStateException("second");
    IllegalStateException thrown =
        assertThrows(
            IllegalStateException.class,
            () ->
                new Workers(3)
                    .run(
                        6,
                        (worker, index) -> {
                          done.incrementAndGet(index);
                          if (index == 4) {
                            throw new IllegalStateException("fourth");
                          }
                          if (index == 2) {
                            throw second;
                          }
                        }));
    assertSame(second, thrown);
    for (int task = 0; task < done.length(); task++) {
      assertEquals(1, done.get(task));
    }
  }

  @Test
  void thereIsAtLeastOneThread() {
    InvalidInputException refused = assertThrows(InvalidInputException.class, () -> new Workers(0));
    assertTrue(refused.getMessage().contains("at least 1"), refused.getMessage());
  }
}
