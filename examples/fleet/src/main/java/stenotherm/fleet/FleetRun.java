package stenotherm.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.countDistinct;
import static org.apache.spark.sql.functions.max;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import stenotherm.decision.AssessmentSettings;
import stenotherm.transit.TransitSettings;

/**
 * Judges lanes and writes their odds, some lanes at a time. A lane is written whole or not at all:
 * its folder is put in its place when all its days are judged. A lane that is whole, and made of
 * what is asked for now, is not judged again; any other is replaced.
 */
final class FleetRun {
  /** Tasks for each task that may run at a time: the last ones end soon after each other. */
  private static final int TASKS_EACH = 16;

  /** Bytes of a fingerprint that tell two of them apart. */
  private static final int FINGERPRINT = 12;

  private final SparkSession spark;
  private final FleetSettings settings;
  private final Consumer<String> progress;

  /** The packings by the names of their scenario files. */
  private final Map<String, ReadyPackings> ready;

  FleetRun(
      SparkSession spark,
      FleetSettings settings,
      Map<String, ReadyPackings> ready,
      Consumer<String> progress) {
    this.spark = spark;
    this.settings = settings;
    this.ready = ready;
    this.progress = progress;
  }

  /** Makes the packings of all scenarios ready, by the names of their files. */
  static Map<String, ReadyPackings> ready(
      LaneTable table, TransitSettings transit, Consumer<String> progress) {
    Map<String, ReadyPackings> ready = new HashMap<>();
    for (String file : table.scenarios().keySet().stream().sorted().toList()) {
      String text = Objects.requireNonNull(table.scenarios().get(file));
      ReadyPackings packings = ReadyPackings.of(file, text, transit);
      ready.put(file, packings);
      progress.accept(
          "made ready: the packings of " + file + ", " + packings.size() / 1000 + " kB");
    }
    return ready;
  }

  /** What must be said beside the odds, each once. */
  List<String> cautions() {
    Set<String> all = new LinkedHashSet<>();
    ready.keySet().stream()
        .sorted()
        .forEach(file -> all.addAll(Objects.requireNonNull(ready.get(file)).cautions()));
    return List.copyOf(all);
  }

  /**
   * Judges the lanes that are not whole yet.
   *
   * @throws IOException if the results cannot be written
   * @throws IllegalStateException if a day cannot be judged, or a lane is not whole when it was
   *     written
   */
  FleetCount run(LaneTable table) throws IOException {
    List<Work> all = table.lanes().stream().map(lane -> work(table, lane)).toList();
    Set<String> whole = whole(all);
    List<Work> left = all.stream().filter(work -> !whole.contains(work.lane().name())).toList();
    JavaSparkContext context = JavaSparkContext.fromSparkContext(spark.sparkContext());
    TaskCounts tasks = new TaskCounts();
    spark.sparkContext().addSparkListener(tasks);
    Broadcast<Map<String, ReadyPackings>> models = context.broadcast(ready);
    long start = System.nanoTime();
    FleetCount counted = FleetCount.before(table.lanes().size(), whole.size());
    write(counted);
    for (int from = 0; from < left.size(); from += settings.lanesAtATime()) {
      List<Work> some = left.subList(from, Math.min(left.size(), from + settings.lanesAtATime()));
      judge(context, models, some);
      requireWhole(some);
      counted = counted.with(some, many(), tasks, (System.nanoTime() - start) / 1e9);
      write(counted);
      progress.accept(
          "lanes: " + (whole.size() + counted.done()) + " of " + counted.lanes() + " are whole");
    }
    models.destroy();
    spark.sparkContext().removeSparkListener(tasks);
    return counted;
  }

  /** Journeys of each day and packing. */
  private int many() {
    return JudgeDays.many(settings.points(), 1).journeys();
  }

  /**
   * A lane to be judged.
   *
   * @param days its days of sealing
   * @param packings how many packings it has
   */
  record Work(Lane lane, List<LocalDate> days, int packings, String madeOf) {
    /** The rows that the lane has when it is whole. */
    long rows() {
      return (long) days.size() * packings;
    }

    /** Its days month by month: pieces of some seconds. */
    List<LaneDays> pieces() {
      List<LaneDays> pieces = new ArrayList<>();
      LocalDate first = days.get(0);
      LocalDate last = days.get(days.size() - 1);
      while (!first.isAfter(last)) {
        LocalDate end = first.withDayOfMonth(first.lengthOfMonth());
        pieces.add(new LaneDays(lane, first, end.isAfter(last) ? last : end, madeOf));
        first = end.plusDays(1);
      }
      return pieces;
    }
  }

  /** The packings of a lane's scenario. */
  ReadyPackings ready(Lane lane) {
    return Objects.requireNonNull(ready.get(lane.scenario()), lane.scenario());
  }

  Work work(LaneTable table, Lane lane) {
    ReadyPackings packings = ready(lane);
    List<LocalDate> days = Objects.requireNonNull(table.days().get(lane.name()));
    return new Work(
        lane, days, packings.packings().outlooks().size(), fingerprint(packings, lane, days));
  }

  /** Of all that the odds of a lane depend on. */
  private String fingerprint(ReadyPackings packings, Lane lane, List<LocalDate> days) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      packings.addTo(digest);
      String rest =
          String.join(
              "\n",
              lane.origin(),
              lane.destination(),
              String.valueOf(settings.points()),
              String.valueOf(AssessmentSettings.SEED),
              days.toString());
      digest.update(rest.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest.digest(), 0, FINGERPRINT);
    } catch (NoSuchAlgorithmException noJava) {
      throw new IllegalStateException("every Java has SHA-256", noJava);
    }
  }

  private void judge(
      JavaSparkContext context, Broadcast<Map<String, ReadyPackings>> models, List<Work> some) {
    List<LaneDays> pieces = some.stream().flatMap(work -> work.pieces().stream()).toList();
    int tasks =
        settings.partitions() > 0
            ? settings.partitions()
            : Math.min(pieces.size(), TASKS_EACH * context.defaultParallelism());
    JavaRDD<Row> rows =
        context.parallelize(pieces, tasks).flatMap(new JudgeDays(models, settings.points()));
    spark
        .createDataFrame(rows, OddsRow.SCHEMA)
        // one file for each lane, the same for any number of tasks
        .repartition(col(OddsRow.LANE))
        .sortWithinPartitions(OddsRow.LANE, OddsRow.DAY, OddsRow.PACKING)
        .write()
        .mode(SaveMode.Overwrite)
        .option("partitionOverwriteMode", "dynamic")
        .partitionBy(OddsRow.LANE)
        .parquet(settings.table());
  }

  private void requireWhole(List<Work> some) throws IOException {
    Set<String> lost = new LinkedHashSet<>();
    some.forEach(work -> lost.add(work.lane().name()));
    lost.removeAll(whole(some));
    if (!lost.isEmpty()) {
      throw new IllegalStateException(
          "lanes "
              + lost
              + " are not whole after they were written to "
              + settings.table()
              + ": does something else write there?");
    }
  }

  /** Names of the lanes that are whole, each row there once and made of what is asked for now. */
  private Set<String> whole(List<Work> works) throws IOException {
    Set<String> whole = new HashSet<>();
    Path folder = new Path(settings.table());
    if (!fileSystem(folder).exists(folder)) {
      return whole;
    }
    Map<String, Row> found = new HashMap<>();
    odds()
        .filter(col(OddsRow.LANE).isin(works.stream().map(work -> work.lane().name()).toArray()))
        .groupBy(OddsRow.LANE)
        .agg(
            count(col(OddsRow.DAY)),
            countDistinct(col(OddsRow.DAY), col(OddsRow.PACKING)),
            countDistinct(col(OddsRow.MADE_OF)),
            max(col(OddsRow.MADE_OF)))
        .collectAsList()
        .forEach(row -> found.put(row.getString(0), row));
    for (Work work : works) {
      Row row = found.get(work.lane().name());
      if (row != null
          && row.getLong(1) == work.rows()
          && row.getLong(2) == work.rows()
          && row.getLong(3) == 1
          && work.madeOf().equals(row.getString(4))) {
        whole.add(work.lane().name());
      }
    }
    return whole;
  }

  /** The table as it is now. */
  Dataset<Row> odds() {
    Column[] columns =
        Arrays.stream(OddsRow.SCHEMA.fieldNames()).map(name -> col(name)).toArray(Column[]::new);
    return spark.read().schema(OddsRow.SCHEMA).parquet(settings.table()).select(columns);
  }

  private void write(FleetCount counted) throws IOException {
    Path file = new Path(settings.out() + "/counters.json");
    try (OutputStream out = fileSystem(file).create(file, true)) {
      out.write(counted.json(cautions()).getBytes(StandardCharsets.UTF_8));
    }
  }

  private FileSystem fileSystem(Path path) throws IOException {
    return path.getFileSystem(spark.sessionState().newHadoopConf());
  }
}
