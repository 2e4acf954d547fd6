package stenotherm.validation.odds;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import stenotherm.base.ProgressListener;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Assessor;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitSettings;

/**
 * Holds odds as verdicts find them, on decision grids with a condensed model and a correction,
 * against direct runs of the full grid's model on the same points, every quantity varied.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class OddsAgreement {
  /** 19 replicates of 16 points: 304 journeys. */
  private static final StudySettings JOURNEYS = new StudySettings(19, 16, 8, 2);

  private static final double HOLD = 6 * 3600;

  /** What the margin that one journey in twenty leaves may be off [K]. */
  private static final double MARGIN = 0.15;

  /** What odds may be off [-]. */
  private static final double ODDS = 0.03;

  /** A packing on a journey. */
  private record Trial(String name, Parcel parcel, Journey journey) {}

  private OddsAgreement() {}

  /**
   * Compares six packings on their journeys and prints a line for each.
   *
   * @param out where to
   * @param seeds how many times other points are taken
   * @return whether all agree
   */
  public static boolean print(PrintStream out, int seeds) {
    boolean all = true;
    out.println("Odds on decision grids against direct runs of the full grid, 304 journeys each.");
    out.println(
        "journey                              odds            too cold        too hot       "
            + "  5 % cold margin K   5 % hot margin K     CPU s");
    for (Trial trial : trials()) {
      for (int seed = 0; seed < seeds; seed++) {
        all &= compare(trial, seed, out);
      }
    }
    out.println(all ? "PASSED" : "FAILED");
    return all;
  }

  private static boolean compare(Trial trial, long seed, PrintStream out) {
    StudySettings settings =
        new StudySettings(
            JOURNEYS.replicates(), JOURNEYS.points(), seed, JOURNEYS.workers().threads());
    double start = processorSeconds();
    JourneyStudy quick =
        new Assessor(
                trial.parcel,
                trial.journey,
                new AssessmentSettings(TransitSettings.standard(), HOLD))
            .study(ProgressListener.NONE);
    StudyResult found = quick.run(settings, ProgressListener.NONE);
    double middle = processorSeconds();
    Journey held = trial.journey.held(HOLD);
    ParcelModel full =
        ParcelModel.of(trial.parcel, held, TransitSettings.standard().withThreads(2));
    Uncertainties uncertainties =
        Uncertainties.of(trial.parcel, held, Uncertainties.Ranges.stated(0));
    StudyResult direct =
        JourneyStudy.direct(full, held, trial.journey.duration(), uncertainties)
            .run(settings, ProgressListener.NONE);
    double end = processorSeconds();
    double odds = Math.abs(found.within().within() - direct.within().within());
    double cold = Math.abs(found.coldMargin(0.05) - direct.coldMargin(0.05));
    double hot = Math.abs(found.hotMargin(0.05) - direct.hotMargin(0.05));
    boolean agrees = odds <= ODDS && cold <= MARGIN && hot <= MARGIN;
    out.printf(
        Locale.ROOT,
        "%-36s %.3f / %.3f   %.3f / %.3f   %.3f / %.3f   %6.2f / %6.2f   %6.2f / %6.2f   %4.1f"
            + " / %.1f %s%n",
        trial.name,
        found.within().within(),
        direct.within().within(),
        1 - found.notTooCold().within(),
        1 - direct.notTooCold().within(),
        1 - found.notTooHot().within(),
        1 - direct.notTooHot().within(),
        found.coldMargin(0.05),
        direct.coldMargin(0.05),
        found.hotMargin(0.05),
        direct.hotMargin(0.05),
        middle - start,
        end - middle,
        agrees ? "" : "<- apart");
    return agrees;
  }

  static double processorSeconds() {
    return ((com.sun.management.OperatingSystemMXBean)
                java.lang.management.ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        * 1e-9;
  }

  private static List<Trial> trials() {
    return List.of(
        trial("overnight by air, 30 to 45 °F", UsualPackings.CUBE, true),
        trial("overnight by air, 40 to 55 °F", UsualPackings.FLAT, true),
        trial("overnight by air, 50 to 65 °F", UsualPackings.CUBE, false),
        trial("overnight by air, 60 to 70 °F", UsualPackings.THICK, true),
        trial("two days by road, 45 to 60 °F", UsualPackings.THICK, true),
        trial("held for pickup, 65 to 78 °F", UsualPackings.FLAT, false));
  }

  private static Trial trial(String journey, String packing, boolean warmer) {
    Scenario scenario =
        ScenarioReader.read(
            journey, UsualPackings.scenario("leopard gecko, 40 g", journey, packing));
    Parcel parcel = scenario.packings().get(0);
    return new Trial(
        journey + (warmer ? ", warmer" : ", none"),
        warmer ? parcel : parcel.withoutWarmers(),
        scenario.journey());
  }
}
