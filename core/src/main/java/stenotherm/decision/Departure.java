package stenotherm.decision;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import stenotherm.base.Checks;
import stenotherm.base.ProgressListener;
import stenotherm.base.Workers;
import stenotherm.journey.Journey;
import stenotherm.study.Fate;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;

/**
 * How a packing fares if it is sent on one day of several.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param journey the journey of that day
 * @param within odds that every animal stays within what it tolerates until opening
 * @param notTooCold odds that none gets too cold
 * @param notTooHot odds that none gets too hot
 * @param enoughAir odds that all have enough air
 * @param notBurnt odds that no place in reach is too hot to touch
 */
public record Departure(
    Journey journey,
    Odds within,
    Odds notTooCold,
    Odds notTooHot,
    Odds enoughAir,
    Odds notBurnt) {
  /**
   * Finds the odds of each of several journeys, on the same points of what is uncertain.
   *
   * @param packing the packing, made ready for journeys like these
   * @param journeys the journeys
   * @param many how many runs of each; the threads share the journeys
   * @param listener told how many journeys are done, on any of the threads but on one at a time; may
   *     stop
   * @return the odds, in the order of the journeys
   * @throws stenotherm.base.InvalidInputException if a journey meets what the packing was not made
   *     ready for
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static List<Departure> all(
      Outlook packing, List<Journey> journeys, StudySettings many, ProgressListener listener) {
    StudySettings alone =
        new StudySettings(many.replicates(), many.points(), many.seed(), 1);
    Departure[] found = new Departure[journeys.size()];
    AtomicInteger done = new AtomicInteger();
    AtomicBoolean stopped = new AtomicBoolean();
    Thread caller = Thread.currentThread();
    new Workers(many.threads())
        .run(
            found.length,
            (worker, index) -> {
              if (stopped.get() || caller.isInterrupted()) {
                throw new CancellationException("stopped between journeys");
              }
              Journey journey = journeys.get(index);
              found[index] = of(journey, packing.study(journey).fates(alone), alone);
              // counted where it is told, lest a later count is told first
              synchronized (listener) {
                if (listener.progress(done.incrementAndGet(), found.length)
                    == ProgressListener.Signal.STOP) {
                  stopped.set(true);
                }
              }
            });
    Checks.notInterrupted("between journeys");
    return List.of(found);
  }

  private static Departure of(Journey journey, List<Fate> fates, StudySettings many) {
    double opening = journey.duration();
    return new Departure(
        journey,
        odds(fates, many, fate -> fate.breach() > opening),
        odds(fates, many, fate -> fate.cold().breach() > opening),
        odds(fates, many, fate -> fate.hot().breach() > opening),
        odds(fates, many, fate -> fate.airless() > opening),
        odds(fates, many, fate -> fate.burnt() > opening));
  }

  private static Odds odds(List<Fate> fates, StudySettings many, Predicate<Fate> good) {
    int[] hits = new int[many.replicates()];
    for (int run = 0; run < fates.size(); run++) {
      if (good.test(fates.get(run))) {
        hits[run / many.points()]++;
      }
    }
    return Odds.of(hits, many.points());
  }

  /**
   * Returns the level that the odds reach.
   *
   * @return the level
   */
  public Level level() {
    return Level.of(within);
  }
}
