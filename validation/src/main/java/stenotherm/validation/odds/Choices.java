package stenotherm.validation.odds;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import stenotherm.ambient.Stowage;
import stenotherm.animal.Animal;
import stenotherm.animal.Tolerance;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.study.Uncertainties.Ranges;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * What each choice of how odds are found does to them, alone: two usual boxes overnight by air in
 * mild to harsh weather, with and without a warmer. None is picked for its odds.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class Choices {
  private static final List<String> WEATHERS =
      List.of(
          "18 to 32",
          "30 to 45",
          "40 to 55",
          "50 to 65",
          "60 to 70",
          "65 to 78",
          "72 to 85",
          "78 to 95");

  private static final List<String> BOXES = List.of("7 x 7 x 6", "12 x 9 x 6");

  private static final StudySettings JOURNEYS = new StudySettings(16, 8, 4, 2);
  private static final int LEARNING = 12;
  private static final double HOLD = 3600;

  /** Numerical error, as a central 90 %: decisions state about as much [K]. */
  private static final double ERROR = 0.2;

  /** The shortest averaging time, less than the time between stored temperatures [s]. */
  private static final double NO_AVERAGING = 60;

  /** The widest reading of ranges: as their central 70 %; 68 % would take 1.65. */
  private static final double WIDEST = 1.6;

  private Choices() {}

  /** One choice that is made otherwise. */
  private enum Choice {
    AS_IT_IS("as it is"),
    NO_MEAN("no mean"),
    PARTS("parts"),
    WIDE("70 %"),
    ALONE("alone"),
    INDEPENDENT("corr. 0"),
    TOGETHER("corr. 1");

    private final String title;

    Choice(String title) {
      this.title = title;
    }

    double within(Trial trial) {
      return switch (this) {
        case AS_IT_IS -> trial.with(Ranges.stated(ERROR)).within().within();
        case NO_MEAN ->
            trial
                .of(atOnce(trial.parcel), trial.journey, 0, Ranges.stated(ERROR))
                .within()
                .within();
        case PARTS -> {
          StudyResult cold = trial.beside(trial.coldest);
          StudyResult hot = trial.beside(trial.hottest);
          // those that only the hottest part makes too hot fail as well; nearly none of them is
          // too cold or short of air
          double moreTooHot = cold.notTooHot().within() - hot.notTooHot().within();
          yield Math.max(0, cold.within().within() - moreTooHot);
        }
        case WIDE ->
            trial.with(new Ranges(Uncertainties.CORRELATION, WIDEST, ERROR)).within().within();
        case ALONE ->
            trial.of(trial.parcel, alone(trial.journey), 0, Ranges.stated(ERROR)).within().within();
        case INDEPENDENT -> trial.with(new Ranges(0, 1, ERROR)).within().within();
        case TOGETHER -> trial.with(new Ranges(1, 1, ERROR)).within().within();
      };
    }
  }

  /**
   * A packing on a journey.
   *
   * @param name what is shipped where
   * @param parcel the packing
   * @param journey until the planned opening
   * @param model for runs of the journey
   * @param coldest by how much the coldest part of the animal is warmer than its mean, at the time
   *     of the nominal run at which it is coldest: below 0 [K]
   * @param hottest by how much its hottest part is warmer, at the time at which it is hottest [K]
   * @param hotter by how much the hottest place that it can reach is warmer, in the nominal run [K]
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  private record Trial(
      String name,
      Parcel parcel,
      Journey journey,
      CondensedModel model,
      double coldest,
      double hottest,
      double[][] hotter) {
    static Trial of(
        String weather, String name, Parcel parcel, Journey journey, ParcelModel model) {
      Journey held = journey.held(HOLD);
      Uncertainties stated = Uncertainties.of(parcel, held, Ranges.stated(ERROR));
      TransitResult nominal = model.run(held, Variation.NOMINAL).requireCompleted();
      String cup = parcel.occupied().get(0).name();
      double[] means = nominal.mean(cup);
      double[] coldest = nominal.coldest(cup);
      double[] hottest = nominal.hottest(cup);
      int cold = 0;
      int hot = 0;
      for (int row = 0; row < means.length; row++) {
        cold = coldest[row] < coldest[cold] ? row : cold;
        hot = hottest[row] > hottest[hot] ? row : hot;
      }
      return new Trial(
          weather + " °F, " + name,
          parcel,
          journey,
          CondensedModel.of(model, held, stated.spread(LEARNING, JOURNEYS.seed())),
          coldest[cold] - means[cold],
          hottest[hot] - means[hot],
          JourneyStudy.hotter(nominal));
    }

    StudyResult with(Ranges ranges) {
      return of(parcel, journey, 0, ranges);
    }

    /** A temperature that lies beside the mean by a shift [K]. */
    StudyResult beside(double shift) {
      return of(parcel, journey, shift, Ranges.stated(ERROR));
    }

    /**
     * Other animals or surroundings, and a temperature that lies beside the mean by a shift [K].
     */
    StudyResult of(Parcel other, Journey otherwise, double shift, Ranges ranges) {
      double[][] beside = new double[1][model.times().length];
      Arrays.fill(beside[0], shift);
      Journey held = otherwise.held(HOLD);
      return JourneyStudy.of(
              other,
              model.on(held),
              otherwise.duration(),
              Uncertainties.of(other, held, ranges),
              beside,
              hotter)
          .run(JOURNEYS, ProgressListener.NONE);
    }
  }

  /** The animals judged by each moment. */
  private static Parcel atOnce(Parcel parcel) {
    List<Container> others =
        parcel.containers().stream()
            .map(
                cup ->
                    new Container(
                        cup.name(),
                        cup.vessel(),
                        cup.position(),
                        cup.bedding(),
                        cup.occupant().map(one -> new Occupant(atOnce(one.animal()), one.body()))))
            .toList();
    return new Parcel(
        parcel.name(),
        parcel.outer(),
        parcel.walls(),
        parcel.filling(),
        others,
        parcel.warmers(),
        parcel.packs());
  }

  private static Animal atOnce(Animal animal) {
    Tolerance with = animal.tolerance();
    Tolerance without =
        new Tolerance(with.comfortable(), with.alarm(), with.critical(), NO_AVERAGING);
    return new Animal(
        animal.name(),
        animal.species(),
        without,
        animal.tissue(),
        animal.restingShape(),
        animal.cautions(),
        animal.companions());
  }

  private static Journey alone(Journey journey) {
    return new Journey(
        journey.sealing(),
        journey.startTemperature(),
        journey.legs().stream()
            .map(leg -> leg.in(leg.surroundings().stowed(Stowage.ALONE)))
            .toList());
  }

  /**
   * Prints the odds of each packing in each weather, a column for each choice.
   *
   * @param out where to
   */
  public static void print(PrintStream out) {
    out.println(
        "Odds in % that a leopard gecko stays within its band, overnight by air, "
            + JOURNEYS.journeys()
            + " journeys each; in each column one choice is another. No mean: each stored moment"
            + " counts instead of a running mean. Parts: the coldest and the hottest part of the"
            + " animal count, from its mean by as much as in the nominal run. 70 %: assumed ranges"
            + " hold 70 % of all cases instead of 90 %, 1.6 times as wide. Alone: the parcel never"
            + " lies among others. Corr.: correlation of the legs' own errors, else "
            + Uncertainties.CORRELATION
            + ".");
    out.printf(Locale.ROOT, "%n%-34s", "");
    for (Choice choice : Choice.values()) {
      out.printf(Locale.ROOT, "%9s", choice.title);
    }
    out.println("  parts K");
    double[] sums = new double[Choice.values().length];
    int trials = 0;
    for (boolean warmer : new boolean[] {true, false}) {
      for (String box : BOXES) {
        List<Scenario> scenarios = WEATHERS.stream().map(at -> scenario(box, at)).toList();
        Parcel given = scenarios.get(0).packings().get(0);
        Parcel parcel = warmer ? given : given.withoutWarmers();
        // decisions are made on such a grid; its correction is left out: it is below 0.2 K
        ParcelModel model =
            ParcelModel.of(
                parcel,
                List.of(
                    scenarios.get(3).journey().held(HOLD),
                    scenarios.get(0).journey().held(HOLD),
                    scenarios.get(WEATHERS.size() - 1).journey().held(HOLD)),
                TransitSettings.standard().meshScaled(2).withThreads(JOURNEYS.workers().threads()));
        for (int weather = 0; weather < WEATHERS.size(); weather++) {
          Trial trial =
              Trial.of(
                  WEATHERS.get(weather),
                  box + (warmer ? ", warmer" : ", none"),
                  parcel,
                  scenarios.get(weather).journey(),
                  model);
          print(trial, sums, out);
          trials++;
        }
      }
    }
    out.printf(Locale.ROOT, "%-34s", "mean");
    for (double sum : sums) {
      out.printf(Locale.ROOT, "%9.1f", 100 * sum / trials);
    }
    out.println();
  }

  private static void print(Trial trial, double[] sums, PrintStream out) {
    out.printf(Locale.ROOT, "%-34s", trial.name);
    for (Choice choice : Choice.values()) {
      double within = choice.within(trial);
      sums[choice.ordinal()] += within;
      out.printf(Locale.ROOT, "%9.0f", 100 * within);
    }
    out.printf(Locale.ROOT, "  %+.1f %+.1f%n", trial.coldest, trial.hottest);
  }

  /** A usual box, its warmer on the lid, in a weather. */
  static Scenario scenario(String box, String weather) {
    return ScenarioReader.read(
        "usual box",
        UsualPackings.scenario(
            "leopard gecko, 40 g",
            "overnight by air, " + weather + " °F",
            "{name: box, box: "
                + box
                + " in carton, foam: EPS 20 3/4 in, fill: shredded paper, warmer: 40 hour warmer on"
                + " lid}"));
  }
}
