package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What would take longer than somebody wants to wait is refused before the bulk of the work. */
class AtMostTest {
  private static final String OUTDOORS =
      Small.SCENARIO
              .replaceAll("ambient: 1[24] °C, spread: 3 K", "ambient: outdoors")
              .replace("from: Here, UTC-5", "from: New York, UTC-5\n  lows/highs: 5 to 12 °C")
              .replace("to: There, UTC-6", "to: Seattle, UTC-8")
          + """
          forecast:
            - {date: 2026-12-01, origin: 0 to 10 °C, destination: 5 to 15 °C}
            - {date: 2026-12-02, origin: 0 to 10 °C, destination: 5 to 15 °C}
          """;

  @TempDir private Path folder;

  private Said run(Object... args) throws IOException {
    Path file = Files.writeString(folder.resolve("s.yaml"), OUTDOORS);
    List<Object> all = new ArrayList<>(List.of(args));
    all.addAll(1, List.of(file, "--mesh-scale", 2, "--out", folder.resolve("report")));
    return Said.to(all.toArray());
  }

  /** The first twentieth of any of them takes a Java machine longer than 5 ms. */
  @ParameterizedTest
  @CsvSource({
    "compare, Fewer packings",
    "map, Fewer --nodes",
    "rank, Fewer days",
    "replay, Fewer --months",
    "break, Fewer mishaps",
    "search --candidates=2, Fewer --candidates"
  })
  void whatTakesLongerIsRefused(String command, String hint) throws IOException {
    Said said = run((Object[]) (command + " --at-most=0.1s").split(" "));
    assertEquals(ConsoleCommand.BAD_SCENARIO, said.code(), said.err());
    String last = said.err().lines().reduce((one, next) -> next).orElseThrow();
    assertTrue(last.contains("s.yaml: time: "), last);
    assertTrue(last.contains("; allowed are 0.1 s. " + hint), last);
    assertFalse(said.err().contains("computing: 50 %"), said.err());
    assertFalse(Files.exists(folder.resolve("report")));
  }

  @ParameterizedTest
  @CsvSource({"10", "0min", "soon", "-1 h"})
  void aTimeHasItsUnit(String time) throws IOException {
    Said said = run("compare", "--at-most=" + time);
    assertEquals(ConsoleCommand.BAD_COMMAND_LINE, said.code(), said.err());
    assertTrue(said.err().contains("--at-most: " + time + " must be a time above 0"), said.err());
  }

  @Test
  void enoughTimeChangesNothing() throws IOException {
    Said said = run("rank", "--packing", "bare foam", "--at-most", "24h");
    assertEquals(0, said.code(), said.err());
    assertTrue(said.out().contains("1 December"), said.out());
  }
}
