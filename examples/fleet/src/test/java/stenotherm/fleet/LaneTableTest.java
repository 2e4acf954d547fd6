package stenotherm.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.text.TextFormatException;

class LaneTableTest {
  private static final String GOOD = "a,box.yaml,\"New York, UTC-5\",\"Seattle, UTC-8\"\n";

  @TempDir private Path folder;

  @BeforeEach
  void putScenario() throws IOException {
    Samples.putScenario(folder);
  }

  private String refused(String lanes) {
    return String.valueOf(
        assertThrows(TextFormatException.class, () -> Samples.read(folder, lanes)).getMessage());
  }

  @Test
  void readsLanesWithTheirDays() {
    LaneTable table = Samples.read(folder, Samples.lanes(3));
    assertEquals(List.of("000", "001", "002"), table.lanes().stream().map(Lane::name).toList());
    assertEquals("Seattle, UTC-8", table.lanes().get(1).origin());
    table.days().values().forEach(days -> assertEquals(8, days.size()));
    assertEquals(Samples.FIRST, table.days().get("000").get(0));
  }

  @Test
  void columnsMayStandInAnyOrder() {
    LaneTable table =
        Samples.read(
            folder,
            "destination,lane,origin,scenario\n\"Seattle, UTC-8\",a,\"New York, UTC-5\",box.yaml\n");
    assertEquals(
        new Lane("a", "box.yaml", "New York, UTC-5", "Seattle, UTC-8"), table.lanes().get(0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,box.yaml,\"Seatle, UTC-8\",\"Seattle, UTC-8\" | lanes.csv:2:12: origin: | Did you mean"
            + " \"Seattle\"?",
        "a,box.yaml,\"New York, UTC-5\",Seattle | lanes.csv:2:30: destination: | offset from UTC",
        "a,box.yaml,\"New York, UTC-5\",\"Seattle, UTC+9\" | lanes.csv:2:30: destination | does not"
            + " fit",
        "a,bax.yaml,\"New York, UTC-5\",\"Seattle, UTC-8\" | lanes.csv:2:3: scenario: | Did you mean"
            + " 'box.yaml'?",
        "a/b,box.yaml,\"New York, UTC-5\",\"Seattle, UTC-8\" | lanes.csv:2:1: lane: | folder is named",
        ",box.yaml,\"New York, UTC-5\",\"Seattle, UTC-8\" | lanes.csv:2:1: lane: | must not be empty",
        "a,box.yaml,\"New York, UTC-5\" | lanes.csv:2:1: | has 3 values but there are 4 columns",
      })
  void aBadLaneIsToldByItsPlace(String line, String place, String problem) {
    String message = refused(Samples.HEAD + line + "\n");
    assertTrue(message.startsWith(place), message);
    assertTrue(message.contains(problem), message);
  }

  @Test
  void allFaultsAreToldAtOnce() {
    String message =
        refused(Samples.HEAD + GOOD + GOOD + "b,box.yaml,\"Boston, UTC-5\",\"Seattle, UTC-8\"\n");
    List<String> lines = message.lines().toList();
    assertEquals(2, lines.size(), message);
    assertTrue(lines.get(0).startsWith("lanes.csv:3:1: lane: an earlier lane"), message);
    assertTrue(lines.get(1).contains("Recorded places: New York, Seattle"), message);
  }

  @Test
  void columnsAreNamed() {
    String missing = refused("lane,scenario,origin\na,box.yaml,\"New York, UTC-5\"\n");
    assertTrue(missing.startsWith("lanes.csv:1:1: needs a column 'destination'"), missing);
    String misspelt = refused("lane,scenario,orign,destination\n" + GOOD);
    assertTrue(misspelt.startsWith("lanes.csv:1:15: unknown name 'orign'"), misspelt);
    assertTrue(misspelt.contains("Did you mean 'origin'?"), misspelt);
    String twice = refused("lane,lane,origin,destination\n" + GOOD);
    assertTrue(twice.startsWith("lanes.csv:1:6: is a column twice"), twice);
    assertTrue(refused(Samples.HEAD).contains("at least one lane"));
  }

  @Test
  void aFaultOfAScenarioIsToldInIt() throws IOException {
    Files.writeString(
        folder.resolve("wrong.yaml"), Samples.SCENARIO.replace("for: 4 h", "for: 4 hurs"));
    String message = refused(Samples.HEAD + GOOD.replace("box.yaml", "wrong.yaml"));
    assertTrue(message.startsWith("wrong.yaml:11:"), message);
  }

  /** Before Spark starts. */
  @Test
  void theProgramRefusesBadLanes() throws IOException {
    Path lanes = folder.resolve("lanes.csv");
    Files.writeString(lanes, Samples.HEAD + "a,box.yaml,\"Seatle, UTC-8\",\"Seattle, UTC-8\"\n");
    Path out = folder.resolve("out");
    assertTrue(said(3, lanes.toString(), "--out", out.toString()).contains("lanes.csv:2:12"));
    Files.writeString(lanes, Samples.HEAD + GOOD);
    String none = said(3, lanes.toString(), "--out", out.toString(), "--first", "2016-01-01");
    assertTrue(none.contains("none of the recorded days"), none);
    assertTrue(said(3, folder + "/no.csv", "--out", "x").contains("NoSuchFile"));
    String points = said(2, lanes.toString(), "--out", out.toString(), "--points", "3");
    assertTrue(points.contains("--points: 3 must be a power of two within 1 to 4096"), points);
    assertTrue(said(2, lanes.toString()).contains("--out"));
    assertFalse(Files.exists(out));
    assertTrue(SparkSession.getActiveSession().isEmpty());
    assertTrue(SparkSession.getDefaultSession().isEmpty());
  }

  private static String said(int code, String... args) {
    StringWriter err = new StringWriter();
    PrintWriter out = new PrintWriter(new StringWriter());
    assertEquals(code, Fleet.run(out, new PrintWriter(err, true), args), err::toString);
    return err.toString();
  }
}
