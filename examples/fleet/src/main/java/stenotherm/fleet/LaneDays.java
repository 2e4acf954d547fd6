package stenotherm.fleet;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.decision.Departure;
import stenotherm.decision.Outlook;
import stenotherm.journey.Journey;
import stenotherm.study.StudySettings;
import stenotherm.text.TextFormatException;

/**
 * Some days of a lane: what one task judges.
 *
 * @param lane the lane
 * @param first the first day of sealing
 * @param last the last day
 * @param madeOf fingerprint of all that the odds depend on
 */
record LaneDays(Lane lane, LocalDate first, LocalDate last, String madeOf) implements Serializable {
  /**
   * Judges every packing on every day. The points of what is uncertain are the same for all days
   * and packings, so that nothing depends on what is judged before or where.
   *
   * @param ready the packings of the lane's scenario
   * @param many how many journeys of each day; the threads share the days
   * @return a row for each packing and day
   * @throws IllegalStateException if a day cannot be judged; the message names it
   */
  List<OddsRow> judge(ReadyPackings.Packings ready, StudySettings many) {
    List<Journey> journeys =
        lane.journeys(ready.scenario(), day -> !day.isBefore(first) && !day.isAfter(last));
    List<OddsRow> rows = new ArrayList<>();
    for (Outlook outlook : ready.outlooks()) {
      for (Departure departure : departures(outlook, journeys, many)) {
        rows.add(new OddsRow(lane, outlook.parcel().name(), many.journeys(), departure, madeOf));
      }
    }
    return rows;
  }

  private List<Departure> departures(Outlook outlook, List<Journey> journeys, StudySettings many) {
    try {
      return Departure.all(outlook, journeys, many, ProgressListener.NONE);
    } catch (InvalidInputException | TextFormatException | IllegalStateException problem) {
      throw new IllegalStateException(
          "lane '"
              + lane.name()
              + "', packing '"
              + outlook.parcel().name()
              + "', from "
              + first
              + " to "
              + last
              + ": "
              + problem.getMessage(),
          problem);
    }
  }
}
