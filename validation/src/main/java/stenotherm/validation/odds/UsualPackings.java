package stenotherm.validation.odds;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import stenotherm.base.ProgressListener;
import stenotherm.decision.Level;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * Odds of usual packings, overnight by air, over the lows at both ends with 18 F° between low and
 * high: a map for each packing and animal. Common practice, no source.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class UsualPackings {
  /** A 7 in cube with a warmer on the lid. */
  static final String CUBE =
      "{name: cube, box: 7 x 7 x 7 in carton, foam: EPS 20 3/4 in, fill: shredded paper, warmer: 40"
          + " hour warmer on lid}";

  /** A flat carton with the warmer on the far side panel. */
  static final String FLAT =
      "{name: flat, box: 12 x 9 x 6 in carton, foam: EPS 20 3/4 in, fill: shredded paper, warmer: 40"
          + " hour warmer on right}";

  /** Thicker foam. */
  static final String THICK =
      "{name: thick, box: 9 x 9 x 8 in carton, foam: EPS 20 1 in, fill: shredded paper, warmer: 40"
          + " hour warmer on lid}";

  static final List<String> ANIMALS =
      List.of("leopard gecko, 40 g", "house gecko, 5 g", "green and black poison frog, 4 g");

  /** Assumed, to see what the lower end of a band does. */
  private static final String BEARS_COLD =
      "{name: 'gecko that bears 10 °C for hours', mass: 40 g, comfortable: 18 to 29 °C, alarm: 10"
          + " to 33 °C, critical: 8 to 40 °C}";

  /** Lows [°F] at which both ends are tried. */
  private static final List<Integer> LOWS = List.of(10, 25, 40, 55, 70, 85);

  /** Lows [°F] that both ends have alike, to see bands that are narrower than the map. */
  private static final List<Integer> ALIKE = List.of(30, 35, 40, 45, 50, 55, 60, 65, 70, 75);

  private static final int DAILY_RANGE = 18;
  private static final StudySettings JOURNEYS = new StudySettings(16, 8, 4, 2);
  private static final int LEARNING = 24;
  private static final double HOLD = 3600;

  private UsualPackings() {}

  /** What is tried: a packing, with its warmer in place, elsewhere, or without it. */
  private record Packing(String name, String text, boolean warmer) {}

  private static final List<Packing> PACKINGS =
      List.of(
          new Packing("7 in cube, warmer on the lid", CUBE, true),
          new Packing("12 x 9 x 6 in, warmer on the side", FLAT, true),
          new Packing("9 x 9 x 8 in, 1 in foam, warmer on the lid", THICK, true),
          new Packing("7 in cube, no warmer", CUBE, false));

  /**
   * Prints the odds of each packing with each animal over the lows at both ends.
   *
   * @param out where to
   */
  public static void print(PrintStream out) {
    out.println(
        "Odds in % that an animal stays within its band, overnight by air, "
            + DAILY_RANGE
            + " F° between low and high, "
            + JOURNEYS.journeys()
            + " journeys each; common practice, no source. Columns: low at the origin; rows: low at"
            + " the destination [°F]. Behind the odds the level, H holds, L likely holds, g a"
            + " gamble, - do not, and what goes wrong most often: c too cold, h too hot, a short of"
            + " air, b in reach of what burns.");
    for (String animal : ANIMALS) {
      for (Packing packing : PACKINGS) {
        print(animal, animal, packing, out);
      }
    }
    out.printf(
        Locale.ROOT,
        "%nWhere heat starts to be needed goes by the lower end of the band, 15 °C of the leopard"
            + " gecko; the cube with an animal that is assumed to bear less:%n");
    print("one that bears 10 °C", BEARS_COLD, PACKINGS.get(0), out);
    print("one that bears 10 °C", BEARS_COLD, PACKINGS.get(3), out);
  }

  private static void print(String name, String animal, Packing packing, PrintStream out) {
    Journey middle = journey(animal, packing, 40, 40);
    Parcel given = scenario(animal, packing, 40, 40).packings().get(0);
    Parcel parcel = packing.warmer ? given : given.withoutWarmers();
    // decisions are made on such a grid; its correction is left out: it is below 0.2 K
    ParcelModel model =
        ParcelModel.of(
            parcel,
            List.of(
                middle.held(HOLD),
                journey(animal, packing, LOWS.get(0), LOWS.get(0)).held(HOLD),
                journey(animal, packing, 85, 85).held(HOLD)),
            TransitSettings.standard().meshScaled(2).withThreads(2));
    Uncertainties uncertainties =
        Uncertainties.of(parcel, middle.held(HOLD), Uncertainties.Ranges.stated(0.2));
    CondensedModel condensed =
        CondensedModel.of(
            model, middle.held(HOLD), uncertainties.spread(LEARNING, JOURNEYS.seed()));
    Node at =
        (origin, destination) -> {
          Journey journey = journey(animal, packing, origin, destination);
          Journey held = journey.held(HOLD);
          return JourneyStudy.of(
                  parcel,
                  condensed.on(held),
                  journey.duration(),
                  Uncertainties.of(parcel, held, Uncertainties.Ranges.stated(0.2)),
                  new double[1][condensed.times().length],
                  JourneyStudy.hotter(model.run(held, Variation.NOMINAL).requireCompleted()))
              .run(JOURNEYS, ProgressListener.NONE);
        };
    out.printf(Locale.ROOT, "%n%s, %s%n      ", packing.name, name);
    LOWS.forEach(low -> out.printf(Locale.ROOT, "%6d", low));
    out.println();
    int best = 0;
    for (int destination : LOWS) {
      out.printf(Locale.ROOT, "%5d ", destination);
      for (int origin : LOWS) {
        StudyResult result = at.odds(origin, destination);
        best += Level.of(result.within()).compareTo(Level.LIKELY) <= 0 ? 1 : 0;
        out.printf(Locale.ROOT, "%6s", words(result));
      }
      out.println();
    }
    out.printf(Locale.ROOT, "likely holds or better: %d of %d%n", best, LOWS.size() * LOWS.size());
    out.print("alike ");
    ALIKE.forEach(low -> out.printf(Locale.ROOT, "%6d", low));
    out.printf(Locale.ROOT, "%n      ");
    ALIKE.forEach(low -> out.printf(Locale.ROOT, "%6s", words(at.odds(low, low))));
    out.println();
  }

  /** The odds between two lows. */
  private interface Node {
    StudyResult odds(int origin, int destination);
  }

  /** Odds in percent, level and the most frequent harm. */
  private static String words(StudyResult result) {
    String level =
        switch (Level.of(result.within())) {
          case HOLDS -> "H";
          case LIKELY -> "L";
          case GAMBLE -> "g";
          case DO_NOT -> "-";
        };
    List<Odds> spared =
        List.of(result.enoughAir(), result.notBurnt(), result.notTooCold(), result.notTooHot());
    double least = spared.stream().mapToDouble(Odds::within).min().orElseThrow();
    int worst = 0;
    while (spared.get(worst).within() > least) {
      worst++;
    }
    return Math.round(100 * result.within().within()) + level + "abch".charAt(worst);
  }

  private static Journey journey(String animal, Packing packing, int origin, int destination) {
    return scenario(animal, packing, origin, destination).journey();
  }

  private static Scenario scenario(String animal, Packing packing, int origin, int destination) {
    String journey =
        "\n  template: overnight by air\n  from: {name: here, utc: UTC-5, lows/highs: "
            + range(origin)
            + "}\n  to: {name: there, utc: UTC-5, lows/highs: "
            + range(destination)
            + "}";
    return ScenarioReader.read("usual packing", scenario(animal, journey, packing.text));
  }

  private static String range(int low) {
    return low + " to " + (low + DAILY_RANGE) + " °F";
  }

  /** A scenario of one packing. */
  static String scenario(String animal, String journey, String packing) {
    return "format: 1\ntitle: Usual packing\nunits: us\nanimal: "
        + animal
        + "\ncup: 16 oz deli cup\njourney: "
        + journey
        + "\npackings:\n  - "
        + packing
        + "\n";
  }
}
