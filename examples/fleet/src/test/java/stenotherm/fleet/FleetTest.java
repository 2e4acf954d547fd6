package stenotherm.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program from its command line to its last line. */
class FleetTest {
  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Fleet.run(new PrintWriter(out), new PrintWriter(err, true), args);
  }

  @Test
  void lanesComeFromParquetToo() throws IOException {
    String one = Samples.SCENARIO.substring(0, Samples.SCENARIO.indexOf("  - {name: warm"));
    Files.writeString(folder.resolve("box.yaml"), one);
    Path lanes = folder.resolve("lanes.parquet");
    SparkSession spark = Fleet.session();
    spark
        .read()
        .option("header", true)
        .csv(spark.createDataset(Samples.lines(Samples.lanes(2)), Encoders.STRING()))
        .write()
        .parquet(lanes.toString());
    spark.stop();
    String[] args = {
      lanes.toString(),
      "--out",
      folder.resolve("out").toString(),
      "--first",
      "2014-10-28",
      "--last",
      "2014-10-29",
      "--mesh-scale",
      "4",
      "--measure"
    };
    assertEquals(0, run(args), err::toString);
    String said = out.toString();
    assertTrue(said.contains("2 lanes: 0 were whole before, 2 were judged now in "), said);
    assertTrue(said.contains(": 4 days, 4 rows, 64 journeys; 0 attempts"), said);
    assertTrue(said.contains("- A calculation on stated assumptions, not a permission"), said);
    assertTrue(said.contains("; 0 of 4 rows differ."), said);
    assertFalse(said.matches("(?is).*\\bsafe\\b.*"), said);

    SparkSession bad = Fleet.session();
    bad.read()
        .option("header", true)
        .csv(
            bad.createDataset(
                List.of("lane,scenario,origin,destination", "a,box.yaml,Seatle,Seattle"),
                Encoders.STRING()))
        .write()
        .mode("overwrite")
        .parquet(lanes.toString());
    bad.stop();
    assertEquals(3, run(args), err::toString);
    assertTrue(err.toString().contains("lanes.parquet:2:3: origin"), err::toString);
  }
}
