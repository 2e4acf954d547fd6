package stenotherm.decision;

import java.util.List;
import java.util.concurrent.CancellationException;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.study.Fate;
import stenotherm.study.StudySettings;

/**
 * How a packing fares if it is sent on one day of several.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param journey the journey of that day
 * @param odds how it fares
 */
public record Departure(Journey journey, JourneyOdds odds) {
  /**
   * Finds the odds of each of several journeys, on the same points of what is uncertain.
   *
   * @param packing the packing, made ready for journeys like these
   * @param journeys the journeys
   * @param many how many runs of each; the threads share the journeys
   * @param listener told how many journeys are done, on any of the threads but on one at a time;
   *     may stop
   * @return the odds, in the order of the journeys
   * @throws stenotherm.base.InvalidInputException if a journey meets what the packing was not made
   *     ready for
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static List<Departure> all(
      Outlook packing, List<Journey> journeys, StudySettings many, ProgressListener listener) {
    StudySettings alone = new StudySettings(many.replicates(), many.points(), many.seed(), 1);
    Departure[] found = new Departure[journeys.size()];
    new WatchedWorkers(many.workers(), listener)
        .each(
            found.length,
            0,
            1,
            index -> {
              Journey journey = journeys.get(index);
              List<Fate> fates = packing.study(journey).fates(alone);
              found[index] =
                  new Departure(journey, JourneyOdds.count(fates, alone, journey.duration()));
            });
    return List.of(found);
  }
}
