package stenotherm.decision;

import java.util.List;
import stenotherm.study.Fate;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;

/**
 * How many of the journeys with certain overnight lows go well, and what goes wrong in the others.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param within odds that every animal stays within what it tolerates until opening
 * @param tooCold share of journeys in which one gets too cold [-]
 * @param tooHot share in which one gets too hot [-]
 * @param shortOfAir share in which one lacks air [-]
 * @param burnt share in which a place in reach is too hot to touch [-]
 */
public record LowsOdds(
    Odds within, double tooCold, double tooHot, double shortOfAir, double burnt) {
  /** Counts fates, replicate by replicate. */
  static LowsOdds count(List<Fate> fates, StudySettings many, double opening) {
    int[] within = new int[many.replicates()];
    int cold = 0;
    int hot = 0;
    int airless = 0;
    int burnt = 0;
    for (int number = 0; number < fates.size(); number++) {
      Fate fate = fates.get(number);
      within[number / many.points()] += fate.breach() > opening ? 1 : 0;
      cold += fate.cold().breach() > opening ? 0 : 1;
      hot += fate.hot().breach() > opening ? 0 : 1;
      airless += fate.airless() > opening ? 0 : 1;
      burnt += fate.burnt() > opening ? 0 : 1;
    }
    double all = fates.size();
    return new LowsOdds(
        Odds.of(within, many.points()), cold / all, hot / all, airless / all, burnt / all);
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
