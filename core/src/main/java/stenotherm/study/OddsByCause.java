package stenotherm.study;

import stenotherm.base.Checks;

/**
 * How often all goes well, and how often each single harm is spared. A journey may do several.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param within odds that every animal stays within what it tolerates, with air to breathe and
 *     nothing in reach that burns
 * @param notTooCold odds that no animal gets too cold
 * @param notTooHot odds that no animal gets too hot
 * @param enoughAir odds that every animal has enough air
 * @param notBurnt odds that no place that an animal can reach is too hot to touch
 */
public record OddsByCause(
    Odds within, Odds notTooCold, Odds notTooHot, Odds enoughAir, Odds notBurnt) {
  /** Checks that all are given. */
  public OddsByCause {
    Checks.given("odds", within);
    Checks.given("odds of the cold", notTooCold);
    Checks.given("odds of the heat", notTooHot);
    Checks.given("odds of the air", enoughAir);
    Checks.given("odds of burns", notBurnt);
  }

  /**
   * Returns the part of the journeys that fail in which it gets too hot.
   *
   * @return the part [-], 0 to 1; 0 where none fails
   */
  public double partTooHot() {
    return part(notTooHot);
  }

  /**
   * Returns the part of the journeys that fail in which air is short.
   *
   * @return the part [-], 0 to 1; 0 where none fails
   */
  public double partShortOfAir() {
    return part(enoughAir);
  }

  /**
   * Returns the part of the journeys that fail in which a place in reach burns.
   *
   * @return the part [-], 0 to 1; 0 where none fails
   */
  public double partBurnt() {
    return part(notBurnt);
  }

  private double part(Odds spared) {
    double failing = 1 - within.within();
    return failing > 0 ? (1 - spared.within()) / failing : 0;
  }
}
