package stenotherm.fleet;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.apache.spark.SparkConf;
import org.apache.spark.SparkException;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.text.CsvTable;
import stenotherm.text.TextFormatException;
import stenotherm.transit.TransitSettings;

/**
 * The program: how does every packing fare on every lane, on every recorded day?
 *
 * <p>Experimental. Not thread-safe: one object belongs to one thread.
 */
@Command(
    name = "fleet",
    mixinStandardHelpOptions = true,
    version = "Stenotherm 0.1.0-SNAPSHOT",
    showDefaultValues = false,
    description = {
      "Judges every packing on every lane on every recorded day, on Apache Spark.",
      "What is whole is kept: a program that was stopped goes on where it was, if it is started"
          + " again with the same words.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done; all lanes are whole",
      "2:the command line is wrong",
      "3:the lanes or a scenario are wrong or cannot be read; nothing was computed",
      "5:the computation failed; lanes that are whole stay"
    })
public final class Fleet implements Callable<Integer> {
  private static final int BAD_LANES = 3;
  private static final int FAILED = 5;
  private static final int MOST = 1_000_000;
  private static final String PARQUET = ".parquet";

  @Spec private @Nullable CommandSpec spec;

  @Parameters(
      paramLabel = "LANES",
      description = {
        "Table of lanes with the columns lane, scenario, origin, destination: with commas, or"
            + " Parquet if its name ends in .parquet.",
        "Both ends as from and to of a scenario name them, for example New York, UTC-5."
      })
  private String lanes = "";

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder of the results: new, or with earlier ones, which are completed.")
  private String out = "";

  @Option(
      names = "--scenarios",
      paramLabel = "DIR",
      description = "Where the scenario files lie. Default: beside the table of lanes.")
  private @Nullable Path scenarios;

  @Option(
      names = "--first",
      paramLabel = "DATE",
      description = "First day of sealing. Default: the first on record.")
  private LocalDate first = LocalDate.MIN;

  @Option(
      names = "--last",
      paramLabel = "DATE",
      description = "Last day of sealing. Default: the last on record.")
  private LocalDate last = LocalDate.MAX;

  @Option(
      names = "--points",
      paramLabel = "N",
      description = {
        "Journeys of each day and packing, in sixteens: a power of two.",
        "Default: ${DEFAULT-VALUE}, which tells months, not single days; 16 for these."
      })
  private int points = 1;

  @Option(
      names = "--partitions",
      paramLabel = "N",
      description = "Tasks that lanes are divided into; results are the same. Default: by cores.")
  private int partitions;

  @Option(
      names = "--lanes-at-a-time",
      paramLabel = "N",
      description = {
        "Lanes that are judged and written together; what is under way is lost if the program is"
            + " stopped.",
        "Default: ${DEFAULT-VALUE}."
      })
  private int lanesAtATime = 16;

  @Option(
      names = "--mesh-scale",
      paramLabel = "FACTOR",
      hidden = true,
      description = "Cell widths times this, for quick tries (2) and convergence studies (0.7).")
  private double meshScale = 1;

  @Option(
      names = "--measure",
      description = "Judges all once more on threads of the library alone, and compares.")
  private boolean measure;

  private Fleet() {}

  /**
   * Runs the program. Returns if all went well, ends the Java machine with a documented exit code
   * if not.
   *
   * @param args the command line, see {@code --help}
   */
  public static void main(String[] args) {
    PrintWriter console = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = run(console, err, args);
    if (code != 0) {
      System.exit(code);
    }
  }

  /**
   * Runs the program within another one.
   *
   * @param out where answers go
   * @param err where progress and complaints go
   * @param args the command line
   * @return the exit code
   */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    return new CommandLine(new Fleet())
        .setOut(out)
        .setErr(err)
        .setExpandAtFiles(false)
        .execute(args);
  }

  @Override
  public Integer call() {
    checkOptions();
    try {
      LaneTable table = lanes.endsWith(PARQUET) ? null : read(fromText());
      SparkSession spark = session();
      try {
        return judge(spark, table == null ? read(fromParquet(spark)) : table);
      } finally {
        spark.stop();
      }
    } catch (TextFormatException | InvalidInputException wrong) {
      return complain(BAD_LANES, String.valueOf(wrong.getMessage()));
    }
  }

  private void checkOptions() {
    require(!first.isAfter(last), "--first", first, "not after --last, " + last);
    require(
        points >= 1 && points <= 1 << 12 && Integer.bitCount(points) == 1,
        "--points",
        points,
        "a power of two within 1 to 4096");
    require(partitions >= 0 && partitions <= MOST, "--partitions", partitions, "1 to " + MOST);
    require(
        lanesAtATime >= 1 && lanesAtATime <= MOST,
        "--lanes-at-a-time",
        lanesAtATime,
        "1 to " + MOST);
    require(meshScale >= 0.5 && meshScale <= 4, "--mesh-scale", meshScale, "within 0.5 to 4");
  }

  private void require(boolean good, String option, Object value, String allowed) {
    if (!good) {
      throw new ParameterException(commandLine(), option + ": " + value + " must be " + allowed);
    }
  }

  private CommandLine commandLine() {
    if (spec == null) {
      throw new IllegalStateException("runs through its command line only");
    }
    return spec.commandLine();
  }

  private int complain(int code, String message) {
    message.lines().map(MessageText::of).forEach(commandLine().getErr()::println);
    return code;
  }

  private CsvTable fromText() {
    try {
      return CsvTable.read(Path.of(lanes));
    } catch (IOException problem) {
      throw new InvalidInputException(
          "lanes",
          "cannot be read: "
              + problem.getMessage()
              + " ("
              + problem.getClass().getSimpleName()
              + ")");
    }
  }

  /** Columns that are no texts are refused as texts that are none. */
  private CsvTable fromParquet(SparkSession spark) {
    List<String> columns;
    List<Row> rows;
    try {
      columns = Arrays.asList(spark.read().parquet(lanes).columns());
      rows = spark.read().parquet(lanes).collectAsList();
    } catch (RuntimeException problem) {
      throw new InvalidInputException("lanes", "cannot be read: " + problem.getMessage());
    }
    List<List<String>> texts =
        rows.stream()
            .map(
                row ->
                    columns.stream()
                        .map(column -> row.<@Nullable Object>getAs(column))
                        .map(value -> value == null ? "" : String.valueOf(value))
                        .toList())
            .toList();
    return CsvTable.of(lanes, columns, texts);
  }

  private LaneTable read(CsvTable table) {
    Path beside = Path.of(lanes).getParent();
    Path folder = scenarios != null ? scenarios : beside != null ? beside : Path.of("");
    return LaneTable.read(table, folder, this::isWanted);
  }

  private boolean isWanted(LocalDate day) {
    return !day.isBefore(first) && !day.isAfter(last);
  }

  private TransitSettings transit() {
    return TransitSettings.standard()
        .meshScaled(meshScale)
        .withThreads(Runtime.getRuntime().availableProcessors());
  }

  /** On this machine unless spark-submit says otherwise. */
  static SparkSession session() {
    SparkConf conf = new SparkConf();
    conf.setIfMissing("spark.master", "local[*]");
    if (conf.get("spark.master").startsWith("local[")) {
      conf.setIfMissing("spark.ui.enabled", "false");
      conf.setIfMissing("spark.driver.bindAddress", "127.0.0.1");
      conf.setIfMissing("spark.driver.host", "127.0.0.1");
    }
    conf.setIfMissing("spark.log.level", "WARN");
    return SparkSession.builder()
        .appName("stenotherm-fleet")
        .config(conf)
        .config("spark.sql.datetime.java8API.enabled", "true")
        // lanes are texts, whatever they look like
        .config("spark.sql.sources.partitionColumnTypeInference.enabled", "false")
        .getOrCreate();
  }

  private int judge(SparkSession spark, LaneTable table) {
    PrintWriter err = commandLine().getErr();
    FleetSettings settings = new FleetSettings(out, points, partitions, lanesAtATime);
    try {
      FleetRun run =
          new FleetRun(
              spark, settings, FleetRun.ready(table, transit(), err::println), err::println);
      Overhead overhead = measure ? new Overhead(run, settings, table) : null;
      FleetCount counted = run.run(table);
      tell(counted, run.cautions(), settings);
      if (overhead != null) {
        commandLine().getOut().println(overhead.measure(counted));
      }
      return 0;
    } catch (IOException problem) {
      return complain(FAILED, out + " cannot be written: " + problem.getMessage());
    } catch (RuntimeException problem) {
      return complain(FAILED, reason(problem));
    }
  }

  private void tell(FleetCount counted, List<String> cautions, FleetSettings settings) {
    PrintWriter to = commandLine().getOut();
    to.printf(
        Locale.ROOT,
        "%d lanes: %d were whole before, %d were judged now in %.1f s: %d days, %d rows, %d"
            + " journeys; %d attempts of tasks failed.%n",
        counted.lanes(),
        counted.skipped(),
        counted.done(),
        counted.seconds(),
        counted.days(),
        counted.rows(),
        counted.journeys(),
        counted.failedAttempts());
    to.println("The odds are in " + settings.table() + ", one row for each lane, day and packing.");
    to.println("Cautions:");
    cautions.forEach(caution -> to.println("- " + caution));
    to.flush();
  }

  /** What went wrong in a task, as it said itself. */
  private static String reason(Throwable problem) {
    Throwable known = problem;
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof SparkException && cause.getCause() == null) {
        return String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
      }
      known = cause;
      if (cause instanceof IllegalStateException
          && String.valueOf(cause.getMessage()).startsWith("lane")) {
        break;
      }
    }
    return known.getClass().getSimpleName() + ": " + known.getMessage();
  }
}
