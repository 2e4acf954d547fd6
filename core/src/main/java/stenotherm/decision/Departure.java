package stenotherm.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import stenotherm.base.Checks;
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
   * @param listener told after each journey what part of them is done, of 1, on the calling thread
   *     or one that shares the work, one call at a time; may stop
   * @return the odds, in the order of the journeys
   * @throws stenotherm.base.InvalidInputException if a journey meets what the packing was not made
   *     ready for
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static List<Departure> all(
      Outlook packing, List<Journey> journeys, StudySettings many, ProgressListener listener) {
    return all(packing, journeys, many, Checks.given("settings", many).replicates(), listener);
  }

  /**
   * Finds the odds roughly: where none of the first half of the runs of a journey goes well, these
   * stand for all, and the others are not run. For odds p and n runs this lowers what is expected
   * by p (1 - p)^(n/2) / 2, by 0.02 at most if n is 16 or more. The odds of other journeys, and of
   * this one if they are 0, are those of {@link #all}.
   *
   * @param packing the packing, made ready for journeys like these
   * @param journeys the journeys
   * @param many how many runs of each; the threads share the journeys
   * @param listener as of {@link #all}
   * @return the odds, in the order of the journeys
   * @throws stenotherm.base.InvalidInputException as {@link #all}
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static List<Departure> roughly(
      Outlook packing, List<Journey> journeys, StudySettings many, ProgressListener listener) {
    return all(packing, journeys, many, Checks.given("settings", many).replicates() / 2, listener);
  }

  private static List<Departure> all(
      Outlook packing,
      List<Journey> journeys,
      StudySettings many,
      int first,
      ProgressListener listener) {
    Checks.given("packing", packing);
    StudySettings alone = new StudySettings(many.replicates(), many.points(), many.seed(), 1);
    Departure[] found = new Departure[Checks.given("journeys", journeys).size()];
    new WatchedWorkers(many.workers(), listener)
        .each(
            found.length,
            0,
            1,
            index -> {
              Journey journey = journeys.get(index);
              double opening = journey.duration();
              List<Fate> run =
                  packing
                      .study(journey)
                      .fates(
                          alone,
                          first,
                          few -> few.stream().noneMatch(fate -> fate.breach() > opening));
              List<Fate> fates = new ArrayList<>(run);
              while (fates.size() < alone.journeys()) {
                fates.add(run.get(fates.size() % run.size()));
              }
              found[index] = new Departure(journey, JourneyOdds.count(fates, alone, opening));
            });
    return List.of(found);
  }
}
