package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is too large to compute is refused at once. */
class GridBudgetOptionTest {
  @TempDir private Path folder;

  private String refusal(String scenario, Object... more) throws IOException {
    Path file = Files.writeString(folder.resolve("large.yaml"), scenario);
    StringWriter err = new StringWriter();
    Stream<Object> args =
        Stream.concat(
            Stream.of(file, "--out", folder.resolve("report"), "--threads", 1), Stream.of(more));
    // to compute it would take minutes or all memory; a slow machine takes some seconds to refuse
    int code =
        assertTimeoutPreemptively(
            Duration.ofSeconds(60),
            () ->
                Stenotherm.run(
                    new PrintWriter(new StringWriter(), true),
                    new PrintWriter(err, true),
                    args.map(Object::toString).toArray(String[]::new)));
    assertEquals(3, code);
    assertFalse(Files.exists(folder.resolve("report")));
    return err.toString();
  }

  private static String with(String old, String other) {
    assertTrue(Small.SCENARIO.contains(old), old);
    return Small.SCENARIO.replace(old, other);
  }

  @Test
  void aBoxOfOneAndAHalfMetres() throws IOException {
    String message = refusal(with("200 x 170 x 150 mm", "1.5 x 1.5 x 1.5 m"));
    assertTrue(message.contains("large.yaml: packing 'warm, \"foam\"': grid: "), message);
    assertTrue(message.contains(" cells would take about "), message);
    assertTrue(message.contains("all is 1500 mm long."), message);
  }

  @Test
  void foamOfAHundredthOfAMillimetre() throws IOException {
    String message = refusal(with("EPS 20 13 mm", "EPS 20 0.01 mm"), "--most-cells", 100_000);
    assertTrue(message.contains("is only 0.01 mm thick."), message);
  }

  @Test
  void anOptionSetsTheLimit() throws IOException {
    String message = refusal(Small.SCENARIO, "--most-cells", 1000);
    assertTrue(message.contains("allowed are 1000 cells"), message);
  }
}
