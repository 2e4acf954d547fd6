package stenotherm.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.apache.spark.scheduler.SparkListener;
import org.apache.spark.scheduler.SparkListenerTaskStart;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.base.ProgressListener;
import stenotherm.decision.Departure;
import stenotherm.decision.Outlook;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;

class FleetRunTest {
  private static final int LANES = 6;
  private static final int ROWS = LANES * 8 * 2;

  @TempDir private static Path folder;

  private static SparkSession spark;
  private static LaneTable table;
  private static Map<String, ReadyPackings> ready;

  /** Of a run that nothing disturbed. */
  private static List<Row> expected;

  @BeforeAll
  static void judge() throws IOException {
    Samples.putScenario(folder);
    Files.writeString(folder.resolve("lanes.csv"), Samples.lanes(LANES));
    table = Samples.read(folder, Samples.lanes(LANES));
    ready = FleetRun.ready(table, Samples.COARSE, line -> {});
    spark = Fleet.session();
    FleetRun run = run("expected", 2, LANES);
    FleetCount counted = run.run(table);
    assertEquals(LANES, counted.done());
    assertEquals(0, counted.skipped());
    assertEquals(ROWS, counted.rows());
    assertEquals(LANES * 8, counted.days());
    assertEquals(16 * ROWS, counted.journeys());
    assertEquals(0, counted.failedAttempts());
    expected = sorted(run);
    assertEquals(ROWS, expected.size());
  }

  @AfterAll
  static void stop() {
    spark.stop();
  }

  private static FleetRun run(String out, int partitions, int atATime) {
    return new FleetRun(
        spark,
        new FleetSettings(folder.resolve(out).toString(), 1, partitions, atATime),
        ready,
        line -> {});
  }

  private static List<Row> sorted(FleetRun run) {
    List<Row> rows = new ArrayList<>(run.odds().collectAsList());
    rows.sort(Comparator.comparing(Row::toString));
    return rows;
  }

  /** Every number with all its bits: rows are equal if their doubles are. */
  @Test
  void theBitsAreTheSameForAnyPartitions() throws IOException {
    for (int partitions : List.of(1, 7)) {
      FleetRun run = run("partitions" + partitions, partitions, 4);
      assertEquals(ROWS, run.run(table).rows());
      assertEquals(expected, sorted(run));
    }
  }

  /** Made ready and judged without storing anything, on two threads. */
  @Test
  void theBitsAreThoseOfTheLibraryAlone() {
    Lane lane = table.lanes().get(1);
    ReadyPackings.Packings packings = ready.get("box.yaml").packings();
    List<Journey> days = lane.journeys(packings.scenario(), Samples.EIGHT_DAYS);
    List<Journey> span = ReadyPackings.span(packings.scenario());
    Parcel warm = packings.scenario().packings().get(1);
    Outlook outlook = ReadyPackings.outlook(packings.scenario(), warm, span, Samples.COARSE);
    List<Departure> alone =
        Departure.all(outlook, days, JudgeDays.many(1, 2), ProgressListener.NONE);
    List<Row> rows =
        expected.stream()
            .filter(row -> row.get(0).equals(lane.name()) && row.get(2).equals(warm.name()))
            .sorted(Comparator.comparing(row -> row.getLocalDate(1)))
            .toList();
    assertEquals(alone.size(), rows.size());
    for (int day = 0; day < rows.size(); day++) {
      Departure here = alone.get(day);
      Row row = rows.get(day);
      assertEquals(here.journey().sealing().toLocalDate(), row.getLocalDate(1));
      assertEquals(here.odds().within().within(), row.<Double>getAs("within"));
      assertEquals(here.odds().within().low(), row.<Double>getAs("within_low"));
      assertEquals(here.odds().notTooCold().high(), row.<Double>getAs("not_too_cold_high"));
      assertEquals(here.odds().level().words(), row.getAs("verdict"));
    }
    assertTrue(
        rows.stream().map(row -> row.<Double>getAs("within")).distinct().count() > 2,
        "days differ, else nothing is compared");
  }

  @Test
  void killedAndStartedAgainItLosesNothingAndWritesNothingTwice() throws Exception {
    Path out = folder.resolve("killed");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(System.getProperty("fleet.java.options").split(" ")));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Fleet.class.getName()));
    command.addAll(List.of(folder.resolve("lanes.csv").toString(), "--out", out.toString()));
    command.addAll(List.of("--first", Samples.FIRST.toString(), "--last", Samples.LAST.toString()));
    command.addAll(List.of("--lanes-at-a-time", "1", "--mesh-scale", "" + Samples.MESH_SCALE));
    Path said = folder.resolve("killed.log");
    Process program =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      for (int waited = 0; folders(out) < 2; waited++) {
        assertTrue(program.isAlive() && waited < 3000, () -> text(said));
        TimeUnit.MILLISECONDS.sleep(100);
      }
    } finally {
      program.destroyForcibly();
    }
    assertNotEquals(0, program.waitFor(), "it was killed, not done");
    int whole = folders(out);
    assertTrue(whole < LANES, "all was done before: nothing is tried");

    FleetRun again = run("killed", 2, 2);
    FleetCount counted = again.run(table);
    assertEquals(whole, counted.skipped());
    assertEquals(LANES - whole, counted.done());
    assertEquals(expected, sorted(again));

    List<String> before = files(out);
    FleetCount once = run("killed", 2, 2).run(table);
    assertEquals(LANES, once.skipped());
    assertEquals(0, once.done());
    assertEquals(before, files(out), "what is whole is not touched");
  }

  private static int folders(Path out) throws IOException {
    Path odds = out.resolve("odds");
    if (!Files.isDirectory(odds)) {
      return 0;
    }
    try (Stream<Path> found = Files.list(odds)) {
      return (int)
          found.filter(path -> String.valueOf(path.getFileName()).startsWith("lane=")).count();
    }
  }

  /** Names and times of all files of the table. */
  private static List<String> files(Path out) throws IOException {
    List<String> files = new ArrayList<>();
    try (Stream<Path> found = Files.walk(out.resolve("odds"))) {
      for (Path file : found.filter(Files::isRegularFile).sorted().toList()) {
        if (file.toString().endsWith(".parquet")) {
          files.add(file + " " + Files.getLastModifiedTime(file));
        }
      }
    }
    return files;
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException problem) {
      return problem.toString();
    }
  }

  /** A part of a lane, a lane of another scenario, a row too many: each is mended, no other. */
  @Test
  void whatIsNotWholeIsReplaced() throws IOException {
    FleetRun run = run("mended", 2, LANES);
    run.run(table);
    String odds = folder.resolve("mended").resolve("odds").toString();
    spark
        .createDataFrame(expected.subList(0, 5), OddsRow.SCHEMA)
        .write()
        .mode("append")
        .partitionBy(OddsRow.LANE)
        .parquet(odds);
    assertEquals(ROWS + 5, run.odds().count());
    int torn = (int) expected.subList(0, 5).stream().map(row -> row.get(0)).distinct().count();
    FleetCount counted = run.run(table);
    assertEquals(torn, counted.done());
    assertEquals(expected, sorted(run));

    // another question to the same folder
    FleetSettings finer = new FleetSettings(folder.resolve("mended").toString(), 2, 2, LANES);
    FleetCount all = new FleetRun(spark, finer, ready, line -> {}).run(table);
    assertEquals(0, all.skipped());
    assertEquals(32 * ROWS, all.journeys());
    assertEquals(ROWS, run.odds().count());
  }

  /** Tasks that are lost are done again, and counted. */
  @Test
  void lostTasksAreDoneAgain() throws IOException {
    AtomicInteger killed = new AtomicInteger();
    SparkListener killer =
        new SparkListener() {
          @Override
          public void onTaskStart(SparkListenerTaskStart start) {
            if (killed.getAndIncrement() < 3) {
              spark.sparkContext().killTaskAttempt(start.taskInfo().taskId(), true, "a test");
            }
          }
        };
    FleetRun run = run("lost", 7, LANES);
    spark.sparkContext().addSparkListener(killer);
    FleetCount counted;
    try {
      counted = run.run(table);
    } finally {
      spark.sparkContext().removeSparkListener(killer);
    }
    assertTrue(counted.failedAttempts() > 0, counted::toString);
    assertEquals(ROWS, counted.rows());
    assertEquals(expected, sorted(run));
    JsonNode json =
        new ObjectMapper().readTree(folder.resolve("lost").resolve("counters.json").toFile());
    assertEquals(counted.journeys(), json.get("journeys").asLong());
    assertEquals(counted.failedAttempts(), json.get("failedAttempts").asLong());
    assertTrue(json.get("cautions").toString().contains("not a permission"), json::toString);
    assertFalse(json.toString().matches("(?is).*\\bsafe\\b.*"), json::toString);
  }
}
