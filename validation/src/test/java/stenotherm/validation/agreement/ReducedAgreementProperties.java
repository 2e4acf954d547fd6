package stenotherm.validation.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.lifecycle.AfterContainer;
import stenotherm.base.Range;

/**
 * Reduced models against stepping every cell, whatever the parcel and the journey, with nothing
 * varied. The step tolerance leaves the full solver within 0.5 mK, found by steps at a tenth of it.
 */
class ReducedAgreementProperties {
  private static final double STEP_TOLERANCE = 1e-4;

  /** Four times what the full solver may be off. */
  private static final double RESOLVED = 2e-3;

  /** Fewer than those of the command: both have the same grid. */
  private static final Range CELLS = new Range(3000, 6000);

  /** Of all tries, to find the median of the estimates' ratios. */
  private static final List<Deviation> ALL = new ArrayList<>();

  @Provide
  Arbitrary<Trial> trials() {
    return Combinators.combine(
            numbers(Trial.PARCEL_NUMBERS),
            numbers(Trial.JOURNEY_NUMBERS),
            numbers(Trial.VARIATION_NUMBERS))
        .as((parcel, journey, variation) -> Trial.of(parcel, journey, variation, 20))
        .filter(trial -> trial.fits(CELLS));
  }

  private static Arbitrary<List<Integer>> numbers(int count) {
    return Arbitraries.integers()
        .between(0, Draws.LEVELS - 1)
        .withDistribution(RandomDistribution.uniform())
        .withoutEdgeCases()
        .list()
        .ofSize(count);
  }

  @Property(seed = "20261101", tries = 3)
  void agreesWithTheFullSolver(@ForAll("trials") Trial trial) {
    ModelAgreement agreement = trial.nominalAgreement(CELLS, STEP_TOLERANCE);
    // with uncertain quantities elsewhere the command modal-agreement still finds more than that
    for (Deviation each : agreement.ofNominal()) {
      assertTrue(each.part() <= 1, each::toString);
    }
    assertTrue(
        Ratios.of(agreement.ofNominal(), RESOLVED).least() >= ModelAgreement.LEAST_RATIO,
        () -> agreement.ofNominal().toString());
    assertTrue(agreement.nominal().ledger().closes());
    ALL.addAll(agreement.ofNominal());
  }

  @AfterContainer
  static void estimatesAreNotFarTooLarge() {
    double median = Ratios.of(ALL, RESOLVED).median();
    assertTrue(median <= ModelAgreement.MEDIAN_RATIO, () -> "median " + median);
  }
}
