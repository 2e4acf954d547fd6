package stenotherm.fleet;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.spark.sql.Row;
import stenotherm.study.StudySettings;

/**
 * Sets a run beside the same work on threads of the library alone. Not thread-safe: one object
 * belongs to one thread.
 */
final class Overhead {
  private final FleetRun run;
  private final LaneTable table;
  private final StudySettings many;
  private final Clock beforeRun;

  /** Time and time of all processors [s]. */
  private record Clock(double time, double processors) {
    static Clock now() {
      OperatingSystemMXBean system =
          ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
      return new Clock(System.nanoTime() / 1e9, system.getProcessCpuTime() / 1e9);
    }

    Clock since(Clock start) {
      return new Clock(time - start.time, processors - start.processors);
    }
  }

  /** Judges the first lane, so that Java has compiled the code for both, and starts the clock. */
  Overhead(FleetRun run, FleetSettings settings, LaneTable table) {
    this.run = run;
    this.table = table;
    this.many = JudgeDays.many(settings.points(), Runtime.getRuntime().availableProcessors());
    judge(table.lanes().get(0));
    this.beforeRun = Clock.now();
  }

  private List<OddsRow> judge(Lane lane) {
    FleetRun.Work work = run.work(table, lane);
    List<LocalDate> days = work.days();
    return new LaneDays(lane, days.get(0), days.get(days.size() - 1), work.madeOf())
        .judge(run.ready(lane).packings(), many);
  }

  /**
   * Judges all lanes once more, when the run has ended.
   *
   * @param counted what the run did
   * @return a sentence with both times and how many rows differ
   */
  String measure(FleetCount counted) {
    Clock ofRun = Clock.now().since(beforeRun);
    Map<String, Row> written = new HashMap<>();
    run.odds().collectAsList().forEach(row -> written.put(key(row), row));
    Clock start = Clock.now();
    long different = 0;
    long rows = 0;
    for (Lane lane : table.lanes()) {
      for (OddsRow odds : judge(lane)) {
        Row row = odds.row();
        rows++;
        different += row.equals(written.get(key(row))) ? 0 : 1;
      }
    }
    Clock alone = Clock.now().since(start);
    return String.format(
        Locale.ROOT,
        "%d journeys: %.1f s (%.1f s of processors), and %.1f s (%.1f s) on %d threads of the"
            + " library alone: %+.0f %% (%+.0f %%); %d of %d rows differ.",
        counted.journeys(),
        ofRun.time(),
        ofRun.processors(),
        alone.time(),
        alone.processors(),
        many.workers().threads(),
        100 * (ofRun.time() / alone.time() - 1),
        100 * (ofRun.processors() / alone.processors() - 1),
        different,
        rows);
  }

  private static String key(Row row) {
    return row.get(0) + "\n" + row.get(1) + "\n" + row.get(2);
  }
}
