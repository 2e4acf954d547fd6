package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** A run that takes long says at least every ten seconds that it goes on. */
class ProgressTest {
  private final AtomicLong now = new AtomicLong();
  private final StringWriter text = new StringWriter();
  private final Progress progress = new Progress(new PrintWriter(text), now::get);

  private void after(long seconds) {
    for (long second = 0; second < seconds; second++) {
      now.addAndGet(TimeUnit.SECONDS.toNanos(1));
      progress.beat();
    }
  }

  private List<String> lines() {
    return text.toString().lines().toList();
  }

  @Test
  void silenceIsBrokenEveryTenSeconds() {
    after(8);
    assertEquals(List.of(), lines());
    after(1);
    progress.progress(0.12, 1);
    after(26);
    assertEquals(
        List.of(
            "computing: 0 %, 9 s so far",
            "computing: 12 %, 18 s so far", "computing: 12 %, 27 s so far"),
        lines());
    progress.end();
  }

  /** News count: what was said just now needs no sign of life. */
  @Test
  void newsAndTheEndNeedNoSignOfLife() {
    after(8);
    progress.progress(0.25, 1);
    after(8);
    progress.soFar("Roughly, well.");
    after(8);
    progress.progress(1, 1);
    after(60);
    assertEquals(List.of("computing: 25 %", "Roughly, well.", "computing: 100 %"), lines());
    progress.end();
  }
}
