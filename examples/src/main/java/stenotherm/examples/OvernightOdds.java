package stenotherm.examples;

import static stenotherm.base.Length.millimetres;
import static stenotherm.base.Mass.grams;
import static stenotherm.base.Temperature.celsius;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Locale;
import stenotherm.ambient.Situations;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.base.ProgressListener;
import stenotherm.decision.Assessment;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Assessor;
import stenotherm.decision.Verdict;
import stenotherm.journey.JourneyBuilder;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.ParcelBuilder;
import stenotherm.parcel.Position;
import stenotherm.parcel.VesselSizes;
import stenotherm.study.Odds;
import stenotherm.study.Share;
import stenotherm.warmer.Warmers;

/**
 * A parcel and a night on the way, built in code: how many of a hundred such journeys go well, and
 * what makes them differ most?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class OvernightOdds {
  private OvernightOdds() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    var gecko = Occupant.of(Animals.LEOPARD_GECKO, grams(40));
    var vessel = VesselSizes.named("16 oz deli cup").vessel();
    var cup =
        new Container("cup", vessel, new Position(0, 0, 0.02), Bedding.dampTowel(0.004), gecko);
    var parcel =
        ParcelBuilder.box("box", millimetres(260), millimetres(230), millimetres(214))
            .layer(Materials.EPS_20, millimetres(40))
            .fill(Materials.SHREDDED_PAPER)
            .with(cup)
            .warmer(
                "warmer",
                Warmers.FORTY_HOUR,
                Face.Z_MAX,
                Duration.ofMinutes(-30),
                FilmCover.EDGES_TAPED)
            .holes(Face.Z_MAX, 2, millimetres(6))
            .holes(Face.Z_MIN, 2, millimetres(6))
            .build();
    var journey =
        JourneyBuilder.sealed(LocalDateTime.of(2026, 1, 15, 16, 0), celsius(21))
            .leg("van", Duration.ofHours(2), Situations.VAN, celsius(8))
            .leg("depot", Duration.ofHours(6), Situations.DEPOT, celsius(7))
            .leg("aircraft", Duration.ofHours(4), Situations.AIRCRAFT_HOLD, celsius(9), 3)
            .leg("porch", Duration.ofHours(4), Situations.PORCH_IN_SHADE, celsius(6))
            .build();
    var settings = AssessmentSettings.standard().withThreads(2);
    Assessment found = Assessor.assess(parcel, journey, settings, ProgressListener.NONE);
    Odds odds = found.verdict().within();
    System.out.printf(
        Locale.ROOT,
        "Verdict: %s. Of 100 such journeys %d go well (%d to %d, as only %d were computed).%n",
        found.verdict().level().words(),
        inHundred(odds.within()),
        inHundred(odds.low()),
        inHundred(odds.high()),
        found.odds().journeys());
    found.shares().map(all -> all.shares().get(0)).ifPresent(OvernightOdds::print);
    System.out.println(Verdict.DEFER);
  }

  private static void print(Share most) {
    System.out.printf(
        Locale.ROOT,
        "What makes journeys differ most: %s (%d %%).%n",
        most.of(),
        inHundred(most.total()));
  }

  /** Rounded down, so that 100 means all. */
  private static long inHundred(double share) {
    return (long) Math.floor(100 * share);
  }
}
