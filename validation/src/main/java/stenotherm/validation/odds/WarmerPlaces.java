package stenotherm.validation.odds;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import stenotherm.animal.Limit;
import stenotherm.base.Axis;
import stenotherm.base.End;
import stenotherm.base.Lengths;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
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

/**
 * How near to the cup a warmer may lie: common practice, no source, says that one on the cup does
 * harm and that two inches between them suffice. A disagreement is a finding, told with the number
 * that decides; nothing is fitted.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class WarmerPlaces {
  /** High enough for two inches between cup and warmer. */
  private static final String BOX =
      "{name: high, box: 9 x 9 x 8 in carton, foam: EPS 20 3/4 in, fill: shredded paper, warmer: 40"
          + " hour warmer on lid}";

  private static final List<String> WEATHERS = List.of("30 to 45", "50 to 65");

  /** Between cup and warmer [in]. */
  private static final double[] GAPS = {0, 0.5, 1, 2};

  private static final StudySettings JOURNEYS = new StudySettings(16, 8, 4, 2);
  private static final int LEARNING = 12;
  private static final double HOLD = 3600;
  private static final double ERROR = 0.2;

  private WarmerPlaces() {}

  /**
   * What comes of a warmer in a place.
   *
   * @param words the place
   * @param result how many journeys went
   * @param hottest hottest part of the animal, all nominal [K]
   * @param strongest the same with the strongest warmer in the warmest air [K]
   * @param warmer mean temperature of the warmer at its hottest, all nominal [K]
   */
  private record Found(
      String words, StudyResult result, double hottest, double strongest, double warmer) {}

  /**
   * Prints odds and temperatures for each place, animal and weather, and what practice says.
   *
   * @param out where to
   */
  public static void print(PrintStream out) {
    out.println(
        "A 40 hour warmer above a cup in a 9 x 9 x 8 in carton with 3/4 in foam, overnight by air, "
            + JOURNEYS.journeys()
            + " journeys each; common practice, no source. Hottest part of the animal and warmer in"
            + " the nominal journey; strongest: with the strongest warmer in the warmest air.");
    for (String animal : UsualPackings.ANIMALS) {
      for (String weather : WEATHERS) {
        print(animal, weather, out);
      }
    }
  }

  private static void print(String animal, String weather, PrintStream out) {
    Scenario scenario =
        ScenarioReader.read(
            "warmer above a cup",
            UsualPackings.scenario(animal, "overnight by air, " + weather + " °F", BOX));
    Parcel lid = scenario.packings().get(0);
    Range alarm =
        lid.occupied()
            .get(0)
            .occupant()
            .orElseThrow()
            .animal()
            .tolerance()
            .band(Limit.ALARM)
            .range();
    out.printf(
        Locale.ROOT,
        "%n%s, %s °F, alarm band %.0f to %.0f °C%n%-16s%8s%10s%9s%12s%14s%11s%n",
        animal,
        weather,
        Temperatures.toCelsius(alarm.low()),
        Temperatures.toCelsius(alarm.high()),
        "warmer",
        "within",
        "too cold",
        "too hot",
        "hottest °C",
        "strongest °C",
        "warmer °C");
    List<Found> above = new ArrayList<>();
    for (double gap : GAPS) {
      String words = gap == 0 ? "on the cup" : String.format(Locale.ROOT, "%.1f in above", gap);
      above.add(found(words, raised(lid, Lengths.fromInches(gap)), scenario.journey()));
    }
    Found under = found("under the lid", lid, scenario.journey());
    above.forEach(each -> print(each, out));
    print(under, out);
    Found on = above.get(0);
    Found inches = above.get(GAPS.length - 1);
    Odds hotOn = on.result.notTooHot();
    Odds hotUnder = under.result.notTooHot();
    tell(
        "on the cup it does harm",
        hotOn.high() < hotUnder.low(),
        String.format(
            Locale.ROOT,
            "not too hot in %.0f %% (%.0f to %.0f) on the cup, %.0f %% (%.0f to %.0f) under the lid",
            100 * hotOn.within(),
            100 * hotOn.low(),
            100 * hotOn.high(),
            100 * hotUnder.within(),
            100 * hotUnder.low(),
            100 * hotUnder.high()),
        out);
    Odds there = inches.result.notTooHot();
    tell(
        "two inches suffice",
        there.high() >= hotUnder.low() && inches.hottest <= alarm.high(),
        String.format(
            Locale.ROOT,
            "not too hot in %.0f %% (%.0f to %.0f), hottest part %.1f °C",
            100 * there.within(),
            100 * there.low(),
            100 * there.high(),
            Temperatures.toCelsius(inches.hottest)),
        out);
  }

  private static void tell(String practice, boolean agrees, String number, PrintStream out) {
    out.printf(
        Locale.ROOT, "%s: %s; %s%n", practice, agrees ? "agrees" : "FINDING, differs", number);
  }

  private static void print(Found found, PrintStream out) {
    out.printf(
        Locale.ROOT,
        "%-16s%8.0f%10.0f%9.0f%12.1f%14.1f%11.1f%n",
        found.words,
        100 * found.result.within().within(),
        100 * (1 - found.result.notTooCold().within()),
        100 * (1 - found.result.notTooHot().within()),
        Temperatures.toCelsius(found.hottest),
        Temperatures.toCelsius(found.strongest),
        Temperatures.toCelsius(found.warmer));
  }

  /** The warmer lying flat in the fill above the cup. */
  private static Parcel raised(Parcel parcel, double gap) {
    Container cup = parcel.occupied().get(0);
    Position stands = cup.position();
    double height = stands.aboveFloor() + cup.vessel().inner().height() + gap;
    Position above = new Position(stands.alongX(), stands.alongY(), height);
    return parcel.withWarmers(
        parcel.warmers().stream()
            .map(
                each ->
                    new PlacedWarmer(
                        each.name(),
                        each.warmer(),
                        new Placement.InCavity(above, Axis.Z),
                        each.opened()))
            .toList());
  }

  private static Found found(String words, Parcel parcel, Journey journey) {
    Journey held = journey.held(HOLD);
    // decisions are made on such a grid; its correction is left out: it is below 0.2 K
    ParcelModel model =
        ParcelModel.of(
            parcel,
            held,
            TransitSettings.standard().meshScaled(2).withThreads(JOURNEYS.workers().threads()));
    Uncertainties uncertain = Uncertainties.of(parcel, held, Ranges.stated(ERROR));
    CondensedModel condensed =
        CondensedModel.of(model, held, uncertain.spread(LEARNING, JOURNEYS.seed()));
    TransitResult nominal = model.run(held, Variation.NOMINAL).requireCompleted();
    StudyResult result =
        JourneyStudy.of(
                parcel,
                condensed,
                journey.duration(),
                uncertain,
                new double[1][condensed.times().length],
                JourneyStudy.hotter(nominal))
            .run(JOURNEYS, ProgressListener.NONE);
    TransitResult strongest =
        model
            .run(
                journey,
                Variation.NOMINAL
                    .with(Factor.WARMER_STRENGTH, End.HIGH)
                    .with(Factor.RATING_BENCH, End.HIGH)
                    .with(Factor.AMBIENT, End.HIGH))
            .requireCompleted();
    String cup = parcel.occupied().get(0).name();
    return new Found(
        words,
        result,
        largest(nominal.hottest(cup)),
        largest(strongest.hottest(cup)),
        largest(nominal.mean(parcel.warmers().get(0).name())));
  }

  private static double largest(double[] values) {
    return Arrays.stream(values).max().orElseThrow();
  }
}
