package stenotherm.decision;

import java.util.List;
import java.util.Optional;
import stenotherm.study.StudyResult;
import stenotherm.transit.TransitResult;

/**
 * A packing on a journey, judged.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param nominal the run with everything nominal, continued after the planned opening
 * @param warmest the run with the strongest warmers in the warmest air, the rest nominal: how hot
 *     warmers get
 * @param coldStress every quantity at the end that is worse for the cold side, all at once
 * @param hotStress the same for the hot side
 * @param plannedEnd the planned opening, since sealing [s]
 * @param sensitivities what each quantity does on its own
 * @param error error of the computed temperature of an animal; the odds count it
 * @param odds how many journeys went
 * @param wider how they went until the planned opening with all ranges half as wide again
 * @param verdict the verdict
 */
public record Assessment(
    TransitResult nominal,
    TransitResult warmest,
    Stress coldStress,
    Stress hotStress,
    double plannedEnd,
    List<Sensitivity> sensitivities,
    NumericalError error,
    StudyResult odds,
    StudyResult wider,
    Verdict verdict) {
  /** Copies the list. */
  public Assessment {
    sensitivities = List.copyOf(sensitivities);
  }

  /**
   * Returns the nominal margin on a side until the planned opening.
   *
   * @param side the side
   * @return the smallest margin over all cups
   */
  public Margin nominalMargin(Side side) {
    return Margin.smallest(nominal, side, plannedEnd);
  }

  /**
   * Returns how much of the variance of the margin that decides comes from each uncertain quantity:
   * what to know better first.
   *
   * @return the shares on the {@linkplain Verdict#side side of the verdict}, largest total first;
   *     empty where {@link StudyResult#shares} is
   */
  public Optional<StudyResult.Apportioned> shares() {
    return odds.shares(verdict.side() == Side.COLD);
  }

  /**
   * Returns what every quantity at its worse end does to a side.
   *
   * @param side the side
   * @return the worse ends and the margin that they leave
   */
  public Stress stress(Side side) {
    return side == Side.COLD ? coldStress : hotStress;
  }
}
