package stenotherm.fleet;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * What a run of the program has done.
 *
 * @param lanes lanes that were asked for
 * @param skipped those of them that were whole before
 * @param done those that were judged
 * @param rows rows of the lanes that were judged: a packing on a day each
 * @param days days of those lanes
 * @param journeys journeys of those rows
 * @param failedAttempts attempts of tasks that failed or were lost, whose work was done again
 * @param shuffled what went from task to task [bytes]
 * @param seconds time that judging and writing took [s]
 */
record FleetCount(
    int lanes,
    int skipped,
    int done,
    long rows,
    long days,
    long journeys,
    long failedAttempts,
    long shuffled,
    double seconds) {
  /** Before any lane is judged. */
  static FleetCount before(int lanes, int skipped) {
    return new FleetCount(lanes, skipped, 0, 0, 0, 0, 0, 0, 0);
  }

  /** The same with lanes that were judged since. */
  FleetCount with(List<FleetRun.Work> lanes, int journeysOfARow, TaskCounts tasks, double after) {
    long more = lanes.stream().mapToLong(FleetRun.Work::rows).sum();
    long moreDays = lanes.stream().mapToLong(work -> work.days().size()).sum();
    return new FleetCount(
        this.lanes,
        skipped,
        done + lanes.size(),
        rows + more,
        days + moreDays,
        journeys + more * journeysOfARow,
        tasks.failed(),
        tasks.shuffled(),
        after);
  }

  /** As JSON, with what must be said beside the odds. */
  String json(List<String> cautions) {
    ObjectNode json = new ObjectMapper().createObjectNode();
    json.put("lanes", lanes)
        .put("lanesSkipped", skipped)
        .put("lanesDone", done)
        .put("rows", rows)
        .put("days", days)
        .put("journeys", journeys)
        .put("failedAttempts", failedAttempts)
        .put("shuffledBytes", shuffled)
        .put("seconds", seconds);
    cautions.forEach(json.putArray("cautions")::add);
    return json.toPrettyString() + "\n";
  }
}
