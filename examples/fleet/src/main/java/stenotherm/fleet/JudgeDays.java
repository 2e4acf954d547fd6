package stenotherm.fleet;

import java.util.Iterator;
import java.util.Map;
import java.util.Objects;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Row;
import stenotherm.decision.AssessmentSettings;
import stenotherm.study.StudySettings;

/** What a task does with the days that it gets. */
final class JudgeDays implements FlatMapFunction<LaneDays, Row> {
  private static final long serialVersionUID = 1L;

  /** Replicates of a study, the fewest that tell an interval. */
  private static final int REPLICATES = 16;

  /** The packings by the names of their scenario files. */
  private final Broadcast<Map<String, ReadyPackings>> ready;

  private final int points;

  JudgeDays(Broadcast<Map<String, ReadyPackings>> ready, int points) {
    this.ready = ready;
    this.points = points;
  }

  /** How many journeys a day of a packing has. */
  static StudySettings many(int points, int threads) {
    return new StudySettings(REPLICATES, points, AssessmentSettings.SEED, threads);
  }

  @Override
  public Iterator<Row> call(LaneDays days) {
    String scenario = days.lane().scenario();
    ReadyPackings packings = Objects.requireNonNull(ready.value().get(scenario), scenario);
    return days.judge(packings.packings(), many(points, 1)).stream().map(OddsRow::row).iterator();
  }
}
