package stenotherm.decision;

import java.util.List;
import java.util.function.Predicate;
import stenotherm.study.Fate;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;

/**
 * How often a journey goes well, and how often it spares the animals each harm.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param within odds that every animal stays within what it tolerates until opening
 * @param notTooCold odds that none gets too cold
 * @param notTooHot odds that none gets too hot
 * @param enoughAir odds that all have enough air
 * @param notBurnt odds that no place in reach is too hot to touch
 */
public record JourneyOdds(
    Odds within, Odds notTooCold, Odds notTooHot, Odds enoughAir, Odds notBurnt) {
  /** Counts fates, replicate by replicate, until a planned opening [s]. */
  static JourneyOdds count(List<Fate> fates, StudySettings many, double opening) {
    return new JourneyOdds(
        odds(fates, many, fate -> fate.breach() > opening),
        odds(fates, many, fate -> fate.cold().breach() > opening),
        odds(fates, many, fate -> fate.hot().breach() > opening),
        odds(fates, many, fate -> fate.airless() > opening),
        odds(fates, many, fate -> fate.burnt() > opening));
  }

  private static Odds odds(List<Fate> fates, StudySettings many, Predicate<Fate> good) {
    int[] hits = new int[many.replicates()];
    for (int run = 0; run < fates.size(); run++) {
      hits[run / many.points()] += good.test(fates.get(run)) ? 1 : 0;
    }
    return Odds.of(hits, many.points());
  }

  /**
   * Returns the share in which an animal gets too cold.
   *
   * @return share of journeys [-]
   */
  public double tooCold() {
    return 1 - notTooCold.within();
  }

  /**
   * Returns the share in which an animal gets too hot.
   *
   * @return share of journeys [-]
   */
  public double tooHot() {
    return 1 - notTooHot.within();
  }

  /**
   * Returns the share in which an animal lacks air.
   *
   * @return share of journeys [-]
   */
  public double shortOfAir() {
    return 1 - enoughAir.within();
  }

  /**
   * Returns the share in which a place in reach is too hot to touch.
   *
   * @return share of journeys [-]
   */
  public double burnt() {
    return 1 - notBurnt.within();
  }

  /**
   * Returns the level of these odds.
   *
   * @return the level
   */
  public Level level() {
    return Level.of(within);
  }
}
