package stenotherm.fleet;

import java.util.concurrent.atomic.AtomicLong;
import org.apache.spark.executor.TaskMetrics;
import org.apache.spark.scheduler.SparkListener;
import org.apache.spark.scheduler.SparkListenerTaskEnd;
import org.jspecify.annotations.Nullable;

/** Counts what tasks say when they end. Thread-safe. */
final class TaskCounts extends SparkListener {
  private final AtomicLong failed = new AtomicLong();
  private final AtomicLong shuffled = new AtomicLong();

  @Override
  public void onTaskEnd(SparkListenerTaskEnd end) {
    if (!end.taskInfo().successful()) {
      failed.incrementAndGet();
    }
    // a lost task has none
    @Nullable TaskMetrics metrics = end.taskMetrics();
    if (metrics != null) {
      shuffled.addAndGet(metrics.shuffleWriteMetrics().bytesWritten());
    }
  }

  /** Attempts that came to nothing. */
  long failed() {
    return failed.get();
  }

  /** What went from task to task [bytes]. */
  long shuffled() {
    return shuffled.get();
  }
}
