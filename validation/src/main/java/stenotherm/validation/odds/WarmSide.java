package stenotherm.validation.odds;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.scenario.Scenario;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.study.Uncertainties.Ranges;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.Factor;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;

/**
 * Why a usual box with a warmer fails in mild weather: too hot, short of air or burns, which
 * uncertain quantity decides, and what single numbers change. None is picked for its odds.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class WarmSide {
  private static final List<String> WEATHERS =
      List.of("30 to 45", "40 to 55", "50 to 65", "60 to 70", "65 to 78");

  private static final StudySettings JOURNEYS = new StudySettings(16, 16, 4, 2);
  private static final int LEARNING = 12;
  private static final double HOLD = 3600;
  private static final double ERROR = 0.2;
  private static final double AVERAGING = 3600;

  private WarmSide() {}

  /** A 40 hour pouch. */
  private enum Pouch {
    IRON("iron, film free"),
    EDGES_TAPED("iron, edges taped"),
    HALF_TAPED("iron, half taped"),
    CURVE("made-up curve of at most 2.1 W");

    private final String words;

    Pouch(String words) {
      this.words = words;
    }

    Parcel in(Parcel parcel) {
      return parcel.withWarmers(parcel.warmers().stream().map(this::like).toList());
    }

    private PlacedWarmer like(PlacedWarmer each) {
      FilmCover cover =
          switch (this) {
            case IRON, CURVE -> each.cover();
            case EDGES_TAPED -> FilmCover.EDGES_TAPED;
            case HALF_TAPED -> FilmCover.HALF_TAPED;
          };
      WarmerClass warmer = this == CURVE ? curve(each.warmer()) : each.warmer();
      return new PlacedWarmer(each.name(), warmer, each.placement(), each.opened(), cover);
    }

    /** The watts that stood for a 40 hour pouch before it was made of iron. */
    private static WarmerClass curve(WarmerClass iron) {
      double[] hours = {0, 1, 3, 6, 20, 30, 40, 48, 60};
      double[] watts = {0, 1.6, 2.1, 2.1, 1.8, 1.5, 1.1, 0.6, 0};
      return new WarmerClass(
          "curve",
          iron.size(),
          iron.mass(),
          new PrescribedPower(
              TimeFunction.table(Arrays.stream(hours).map(Times::fromHours).toArray(), watts)),
          new Range(0.75, 1.25),
          Source.assumed("made up"));
    }
  }

  /**
   * Prints the tables.
   *
   * @param out where to
   */
  public static void print(PrintStream out) {
    out.println(
        "What fails of a leopard gecko with a 40 hour warmer on the lid, overnight by air, "
            + JOURNEYS.journeys()
            + " journeys each, in %: too cold, too hot, short of air, burnt; then the nominal case:"
            + " most watts, warmest hourly mean of the animal, hottest place in its reach, least"
            + " oxygen as at sea level; then what the margin at the hot end varies by.");
    for (String box : List.of("7 x 7 x 6", "12 x 9 x 6")) {
      for (Pouch pouch : Pouch.values()) {
        print(box, pouch, out);
      }
    }
  }

  private static void print(String box, Pouch pouch, PrintStream out) {
    List<Scenario> scenarios = WEATHERS.stream().map(at -> Choices.scenario(box, at)).toList();
    Parcel parcel = pouch.in(scenarios.get(0).packings().get(0));
    List<Journey> held = scenarios.stream().map(scenario -> scenario.journey().held(HOLD)).toList();
    // decisions are made on such a grid; its correction is left out: it is below 0.2 K
    ParcelModel model =
        ParcelModel.of(
            parcel,
            held,
            TransitSettings.standard().meshScaled(2).withThreads(JOURNEYS.workers().threads()));
    out.printf(
        Locale.ROOT,
        "%n%s, %s%n%-10s%7s%6s%6s%6s%7s%7s%8s%8s%7s  %s%n",
        box,
        pouch.words,
        "low, high",
        "within",
        "cold",
        "hot",
        "air",
        "burnt",
        "W",
        "animal",
        "place",
        "O2 %",
        "hot margin varies by");
    for (int at = 0; at < WEATHERS.size(); at++) {
      row(
          WEATHERS.get(at),
          parcel,
          model,
          held.get(at),
          scenarios.get(at).journey().duration(),
          out);
    }
    if (pouch == Pouch.IRON) {
      effects(model, held.get(2), out);
    }
  }

  private static void row(
      String weather,
      Parcel parcel,
      ParcelModel model,
      Journey held,
      double opening,
      PrintStream out) {
    Uncertainties uncertain = Uncertainties.of(parcel, held, Ranges.stated(ERROR));
    TransitResult nominal = model.run(held, Variation.NOMINAL).requireCompleted();
    CondensedModel condensed =
        CondensedModel.of(model, held, uncertain.spread(LEARNING, JOURNEYS.seed()));
    StudyResult result =
        JourneyStudy.of(
                parcel,
                condensed,
                opening,
                uncertain,
                new double[1][condensed.times().length],
                JourneyStudy.hotter(nominal))
            .run(JOURNEYS, ProgressListener.NONE);
    String cup = parcel.occupied().get(0).name();
    out.printf(
        Locale.ROOT,
        "%-10s%7.0f%6.0f%6.0f%6.0f%7.0f%7.2f%8.1f%8.1f%7.1f  %s%n",
        weather,
        100 * result.within().within(),
        100 * (1 - result.notTooCold().within()),
        100 * (1 - result.notTooHot().within()),
        100 * (1 - result.enoughAir().within()),
        100 * (1 - result.notBurnt().within()),
        most(nominal.power(parcel.warmers().get(0).name())),
        Temperatures.toCelsius(warmest(nominal)),
        Temperatures.toCelsius(most(nominal.hottestPlace(cup))),
        100 * Arrays.stream(nominal.oxygenAtSeaLevel(cup)).min().orElseThrow(),
        shares(result));
  }

  private static String shares(StudyResult result) {
    List<String> words = new ArrayList<>();
    for (Share share :
        result.shares(false).map(StudyResult.Apportioned::shares).orElse(List.of())) {
      if (words.size() < 3) {
        words.add(String.format(Locale.ROOT, "%s %.0f %%", share.of(), 100 * share.firstOrder()));
      }
    }
    return String.join(", ", words);
  }

  /** What each single quantity does to the warmest hourly mean of the animal. */
  private static void effects(ParcelModel model, Journey held, PrintStream out) {
    double nominal = warmest(model.run(held, Variation.NOMINAL));
    Map<String, Double> ends = new LinkedHashMap<>();
    for (Factor factor : Factor.values()) {
      if (factor.matters(model.parcel(), held)) {
        for (int end = -1; end <= 1; end += 2) {
          double there = warmest(model.run(held, Variation.NOMINAL.with(factor, end)));
          ends.put(factor.words() + (end < 0 ? " low" : " high"), there - nominal);
        }
      }
    }
    out.println(
        "At " + WEATHERS.get(2) + " °F each quantity alone moves that warmest mean by [K]:");
    ends.forEach((words, kelvin) -> out.printf(Locale.ROOT, "  %-48s%+6.2f%n", words, kelvin));
  }

  private static double warmest(TransitResult result) {
    String cup = result.parcel().occupied().get(0).name();
    return most(JourneyStudy.runningMeans(result.times(), result.mean(cup), AVERAGING));
  }

  private static double most(double[] values) {
    return Arrays.stream(values).max().orElseThrow();
  }
}
