package stenotherm.fleet;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.spark.sql.Row;
import stenotherm.study.StudySettings;

/** Sets a run beside the same work on threads of the library alone. */
final class Overhead {
  private Overhead() {}

  /**
   * Judges all lanes once more.
   *
   * @param counted what the run did
   * @return a sentence with both times and how many rows differ
   */
  static String measure(FleetRun run, FleetSettings settings, LaneTable table, FleetCount counted) {
    int threads = Runtime.getRuntime().availableProcessors();
    StudySettings many = JudgeDays.many(settings.points(), threads);
    Map<String, Row> written = new HashMap<>();
    run.odds().collectAsList().forEach(row -> written.put(key(row), row));
    long start = System.nanoTime();
    long different = 0;
    long rows = 0;
    for (Lane lane : table.lanes()) {
      FleetRun.Work work = run.work(table, lane);
      List<LocalDate> days = work.days();
      LaneDays all = new LaneDays(lane, days.get(0), days.get(days.size() - 1), work.madeOf());
      for (OddsRow odds : all.judge(run.ready(lane).packings(), many)) {
        Row row = odds.row();
        rows++;
        different += row.equals(written.get(key(row))) ? 0 : 1;
      }
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    return String.format(
        Locale.ROOT,
        "%d journeys: %.1f s here, %.1f s on %d threads of the library alone, which is %+.0f %%;"
            + " %d of %d rows differ.",
        counted.journeys(),
        counted.seconds(),
        seconds,
        threads,
        100 * (counted.seconds() / seconds - 1),
        different,
        rows);
  }

  private static String key(Row row) {
    return row.get(0) + "\n" + row.get(1) + "\n" + row.get(2);
  }
}
