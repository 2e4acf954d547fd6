package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.ProgressListener;
import stenotherm.base.Times;
import stenotherm.decision.Assessment;
import stenotherm.decision.ChangesTried;
import stenotherm.decision.FirstLook;
import stenotherm.decision.Level;
import stenotherm.decision.NumericalError;
import stenotherm.decision.Remedy;
import stenotherm.decision.Side;
import stenotherm.decision.Stress;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Vent;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
import stenotherm.study.OddsByCause;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.study.Uncertainties;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.Warmers;
import stenotherm.words.Figures;

/** Sentences about verdicts that are made up, on a journey through two time zones. */
class VerdictWordsTest {
  private static final Scenario SCENARIO =
      ScenarioReader.read(
          "test.yaml",
          """
          format: 1
          title: test
          animal: leopard gecko, 40 g
          containers: [110 x 80 x 60 mm]
          hold: 24 h
          journey:
            sealed: 2026-01-31 20:00
            from: Here, UTC-5
            to: There, UTC-8
            legs:
              - {name: cold truck, at: origin, for: 5 h, ambient: 14 °C, orientation: right up}
              - {name: hot depot, at: destination, for: 13 h, ambient: 20 °C}
          packings:
            - {name: bare foam, box: 350 x 250 x 150 mm, foam: EPS 20 13 mm, fill: shredded paper}
            - {name: warm foam, box: 350 x 250 x 150 mm, foam: EPS 20 13 mm, \
          fill: shredded paper, warmer: 40 hour warmer on lid}
            - {name: big foam, box: 360 x 260 x 160 mm, foam: EPS 20 13 mm, fill: shredded paper}
            - {name: close, box: 360 x 260 x 200 mm, foam: EPS 20 13 mm, fill: none, \
          warmer: 40 hour warmer on container 1}
            - {name: tight, box: 360 x 260 x 200 mm, foam: foil-faced PIR 25 mm, \
          fill: shredded paper, seams: taped, warmer: 40 hour warmer on container 1, \
          film: half taped over}
            - {name: iced, box: 360 x 260 x 200 mm, foam: EPS 20 13 mm, fill: shredded paper, \
          packs: [{pack: gel pack on lid, size: 150 x 100 x 20 mm, start: -5 °C}]}
          """);

  private static final TransitSettings SETTINGS = TransitSettings.standard().meshScaled(6);
  private static final Parcel BARE = SCENARIO.packings().get(0);
  private static final Parcel WARM = SCENARIO.packings().get(1);
  private static final Parcel BIG = SCENARIO.packings().get(2);
  private static final Ran RAN = Ran.of(BARE);

  /** A packing's nominal runs, and odds of few journeys. */
  private record Ran(TransitResult held, TransitResult planned, Stress stress, StudyResult odds) {
    static Ran of(Parcel parcel) {
      Journey held = SCENARIO.journey().held(SCENARIO.longestHold());
      ParcelModel model = ParcelModel.of(parcel, held, SETTINGS);
      Uncertainties uncertain = Uncertainties.of(parcel, held, Uncertainties.Ranges.stated(0.1));
      CondensedModel condensed = CondensedModel.of(model, held, uncertain.spread(8, 1));
      double[][] none = new double[1][condensed.times().length];
      JourneyStudy study =
          JourneyStudy.of(parcel, condensed, SCENARIO.journey().duration(), uncertain, none, none);
      StudyResult odds = study.run(new StudySettings(16, 8, 1, 2), ProgressListener.NONE);
      return new Ran(
          model.run(held, Variation.NOMINAL),
          model.run(SCENARIO.journey(), Variation.NOMINAL),
          new Stress(Side.COLD, Variation.NOMINAL, study, parcel),
          odds);
    }
  }

  private static Odds odds(double within) {
    return new Odds(within, Math.max(0, within - 0.04), Math.min(1, within + 0.02));
  }

  private static Assessment assessment(Level level, Odds within, Side side) {
    return assessment(new Verdict(level, within, side, 0, List.of(Verdict.DEFER)));
  }

  private static Assessment assessment(Verdict verdict) {
    NumericalError error = new NumericalError(0.1, true, 0, 0, 0);
    return new Assessment(
        RAN.held(),
        RAN.held(),
        RAN.stress(),
        RAN.stress(),
        SCENARIO.journey().duration(),
        List.of(),
        error,
        RAN.odds(),
        RAN.odds(),
        verdict);
  }

  private static Judged judged(Parcel parcel, Level level, double within) {
    return new Judged(
        parcel, false, assessment(level, odds(within), Side.COLD), RAN.planned(), List.of());
  }

  private static ComparisonReport report(Judged... rows) {
    return new ComparisonReport(SCENARIO, List.of(rows), Optional.empty());
  }

  private static String headline(Figures figures, Level level, double within) {
    return new VerdictWords(new Words(figures, true)).headline(report(judged(BARE, level, within)));
  }

  /** The sentence, the table and the picture take one moment from one place. */
  @Test
  void theSentenceTellsOddsAndTheMomentThatMatters() {
    Assessment hot = assessment(Level.LIKELY, odds(0.9), Side.HOT);
    // the journeys of this mild run all go well; nobody is too hot
    assertEquals(1, RAN.odds().notTooHot().within());
    StudyResult odds = RAN.odds();
    Extreme hottest = Extreme.of(hot, Side.HOT);
    assertTrue(Times.toHours(hottest.time()) < 1, "hottest when it leaves a warm room");
    assertEquals("21 °C", Figures.METRIC.temperature(hottest.typical()));
    assertEquals("21 °C", Figures.METRIC.temperature(hottest.seldom()));
    String told = new VerdictWords(new Words(Figures.METRIC, true)).sentence(hot);
    assertEquals(
        "Goes well in 90 of 100 journeys that arrive on time (86 to 92, as only"
            + " so many journeys were computed; "
            + Words.percent(odds.within().within())
            + " if all that is uncertain varied 1.5 times as much); too cold in "
            + Words.inHundred(1 - odds.notTooCold().within())
            + ", too hot in fewer than 1. It is hottest about 20:00 on 31 January during 'cold"
            + " truck' (on its side, right face up): "
            + "21 °C on a typical journey, no more on 19 of 20. It is coldest about ",
        told.substring(0, told.lastIndexOf("01:00")));
    assertTrue(odds.notTooCold().within() < 0.95, "so often that a reader asks when");
    double median = odds.typicallyOutside().orElseThrow();
    assertTrue(median > 0 && median <= odds.outside(1), "median " + median);
    double beyond = odds.typicallyBeyond(true).orElseThrow();
    assertTrue(beyond > 0 && beyond < -odds.coldMargin(0.001), "beyond " + beyond);
    assertTrue(odds.typicallyBeyond(false).isEmpty(), "never too hot");
    assertTrue(
        told.endsWith(
            "or less on one journey of twenty. On a journey that is too cold for it, it is typically"
                + " too cold for "
                + Words.hours(median)
                + " h in all, at worst by "
                + Figures.METRIC.difference(beyond)
                + "."),
        told);
  }

  /** 81 of 100 is no gamble by itself: what makes it one stands beside it. */
  @Test
  void theLowerEndIsToldWhereItLowersTheVerdict() {
    Odds lowered = new Odds(0.81, 0.797, 0.84);
    assertEquals("81 (79 to 84, of which the lower end decides)", Words.deciding(lowered));
    assertEquals("81 (79 to 84)", Words.decidingInColumn(lowered));
    assertEquals("87", Words.deciding(new Odds(0.87, 0.83, 0.9)));
    assertEquals("96", Words.decidingInColumn(new Odds(0.96, 0.955, 0.97)));
    assertEquals("80 (79 to 84)", Words.decidingInColumn(new Odds(0.796, 0.791, 0.84)));

    Verdict verdict = new Verdict(Level.GAMBLE, lowered, Side.COLD, 0, List.of(Verdict.DEFER));
    Judged row = new Judged(BARE, false, assessment(verdict), RAN.planned(), List.of());
    String headline = new VerdictWords(new Words(Figures.METRIC, true)).headline(report(row));
    assertTrue(
        headline.contains("81 (79 to 84, of which the lower end decides) go well"), headline);
    String table = new Tables(new Words(SCENARIO), List.of(row)).overview().caption();
    assertTrue(table.endsWith(Words.BRACKETS), table);
    assertFalse(
        new Tables(new Words(SCENARIO), List.of(judged(BARE, Level.LIKELY, 0.9)))
            .overview()
            .caption()
            .contains("brackets"));
  }

  /** No program takes an invented date for one of the file. */
  @Test
  void withoutADateDaysCountFromSealing() {
    Journey journey = SCENARIO.journey();
    double time = Times.fromHours(6);
    assertEquals("2026-01-31T23:00:00", DataFiles.clock(journey, time, new Words(SCENARIO)));
    assertEquals(
        "day 1 23:00:00", DataFiles.clock(journey, time, new Words(Figures.METRIC, false)));
    assertEquals(
        "day 2 02:00:00",
        DataFiles.clock(journey, Times.fromHours(9), new Words(Figures.METRIC, false)));
  }

  @Test
  void theExtremeIsTheEndOfTheMiddleCurve() {
    Assessment cold = assessment(Level.LIKELY, odds(0.9), Side.COLD);
    Extreme coldest = Extreme.of(cold, Side.COLD);
    double[] times = RAN.odds().times();
    double[] middle = RAN.odds().temperatures("container 1", 0.5);
    double least = Double.POSITIVE_INFINITY;
    for (int row = 0; row < times.length && times[row] <= cold.plannedEnd(); row++) {
      least = Math.min(least, middle[row]);
      if (times[row] == coldest.time()) {
        assertEquals(middle[row], coldest.typical());
        assertEquals(RAN.odds().temperatures("container 1", 0.05)[row], coldest.seldom());
      }
    }
    assertEquals(least, coldest.typical());
    assertTrue(coldest.seldom() < coldest.typical());
  }

  /** Where few are worst when most are, no other moment is told. */
  @Test
  void theMomentOfTheFewIsToldWhereItIsAnother() {
    Assessment cold = assessment(Level.LIKELY, odds(0.9), Side.COLD);
    double[] times = RAN.odds().times();
    double[] few = RAN.odds().temperatures("container 1", 0.05);
    double least = Double.POSITIVE_INFINITY;
    for (int row = 0; row < times.length && times[row] <= cold.plannedEnd(); row++) {
      least = Math.min(least, few[row]);
    }
    double usual = Extreme.of(cold, Side.COLD).seldom();
    Optional<Extreme> other = Extreme.ofTheFew(cold, Side.COLD);
    assertEquals(usual - least >= 1, other.isPresent());
    double hot = Extreme.of(cold, Side.HOT).seldom();
    Extreme later = Extreme.ofTheFew(cold, Side.HOT).orElseThrow();
    assertTrue(later.seldom() >= hot + 1 && later.typical() <= 294.2, later.toString());
  }

  /** Five hours on, the clock goes back by three: 22:00 to 01:00 come twice. */
  @Test
  void aClockThatRepeatsAnHourSaysWhose() {
    Journey journey = SCENARIO.journey();
    Words words = new Words(SCENARIO);
    assertEquals("31 Jan 21:30", words.moment(journey, Times.fromHours(1.5)));
    assertEquals("31 Jan 22:30 (Here time)", words.moment(journey, Times.fromHours(2.5)));
    assertEquals("1 Feb 01:00 (Here time)", words.moment(journey, Times.fromHours(5)));
    assertEquals("31 Jan 23:00 (There time)", words.moment(journey, Times.fromHours(6)));
    assertEquals("1 Feb 02:00", words.moment(journey, Times.fromHours(9)));
    assertEquals("", Words.clockChange(journey, 0));
    assertEquals("clock 3 h back", Words.clockChange(journey, 1));
  }

  @Test
  void hasTheReadersUnitsAlone() {
    for (Figures figures : List.of(Figures.METRIC, Figures.US)) {
      boolean us = figures.equals(Figures.US);
      Judged row = judged(BARE, Level.HOLDS, 0.99);
      String all =
          new VerdictWords(new Words(figures, true)).sentence(row.assessment())
              + new VerdictWords(new Words(figures, true)).headline(report(row));
      assertEquals(us, all.contains("between 59 °F and 91 °F"), all);
      assertEquals(!us, all.contains("between 15 °C and 33 °C"), all);
      assertFalse(all.contains(us ? "°C" : "°F"), all);
      assertFalse(all.matches(".*\\d K\\b.*"), all);
    }
  }

  @Test
  void theHeadlineSaysWhatToDoAtEachLevel() {
    String late =
        " go well: the leopard gecko stays between 15 °C and 33 °C, with air to breathe; of those"
            + " opened a day late, "
            + Words.inHundred(RAN.odds().withinUntil(24).within())
            + ". It is coldest about ";
    String well = " Of 100 such journeys that arrive on time, ";
    String holds = headline(Figures.METRIC, Level.HOLDS, 0.99);
    assertTrue(holds.startsWith("Take 'bare foam'." + well + "99" + late), holds);
    String likely = headline(Figures.METRIC, Level.LIKELY, 0.87);
    assertTrue(likely.startsWith("Take 'bare foam'." + well + "87" + late), likely);
    String gamble = headline(Figures.METRIC, Level.GAMBLE, 0.61);
    assertTrue(
        gamble.startsWith(
            "Better wait, or change something: the best of these, 'bare foam', is a gamble."
                + well
                + "61"
                + late),
        gamble);
    String not = headline(Figures.METRIC, Level.DO_NOT, 0.002);
    assertTrue(
        not.startsWith(
            "Do not send it like this. The best of these is 'bare foam'."
                + well
                + "fewer than 1"
                + late.replaceFirst(" go ", " goes ")),
        not);
  }

  @Test
  void nothingPermits() {
    List<String> all = new ArrayList<>();
    for (Level level : Level.values()) {
      for (Figures figures : List.of(Figures.METRIC, Figures.US)) {
        Judged row = judged(BARE, level, 0.9);
        VerdictWords words = new VerdictWords(new Words(figures, true));
        all.add(words.headline(report(row)));
        all.add(words.sentence(row.assessment()));
        all.add(words.summary(row));
        all.add(words.costliest(row).orElse(""));
      }
    }
    for (String text : all) {
      assertFalse(text.toLowerCase(Locale.ROOT).contains("safe"), text);
    }
  }

  @Test
  void cautionsSpareReadersTheFiguresOfPhysics() {
    Parcel loose = BARE.withFilling(new Filling.Loose(Materials.LOOSE_NEWSPAPER));
    String caution = loose.convectionWarnings(Orientation.LID_UP, 50, 290).get(0);
    assertTrue(caution.contains("50.0 K over") && caution.contains("Rayleigh"), caution);
    assertEquals(
        "The loosely crumpled newspaper is warmer below than above: air will seep through it in"
            + " circles and carry more heat than computed.",
        Cautions.plain(caution, Figures.METRIC));
    String kept = "Kept at 30 °C (or -2.5 °C), 12 K above.";
    assertEquals("Kept at 30 °C (or -2.5 °C), 12 C° above.", Cautions.plain(kept, Figures.METRIC));
    assertEquals("Kept at 86 °F (or 28 °F), 21.6 F° above.", Cautions.plain(kept, Figures.US));
  }

  @Test
  void bandsWithoutASourceAreCalledSo() {
    assertEquals(
        Optional.of(
            "15 °C to 32 °C for the house gecko is assumed: no published source was found."),
        Cautions.basis(Animals.HOUSE_GECKO, Figures.METRIC));
    assertEquals(
        Optional.of(
            "61 °F to 82 °F for the crested gecko is common practice: no published source was"
                + " found."),
        Cautions.basis(Animals.named("crested gecko"), Figures.US));
    assertEquals(Optional.empty(), Cautions.basis(Animals.LEOPARD_GECKO, Figures.METRIC));
  }

  /** Of two animals the one that is meant; a date only where the file has none. */
  @Test
  void cautionsSayWhoseAndWhen() {
    String text =
        """
        format: 1
        title: two
        containers:
          - {size: 16 oz deli cup, animal: 'Chilean rose tarantula, 20 g'}
          - {size: 16 oz deli cup, animal: 'giant African snail, 60 g'}
        journey: two days by road, 3 to 12 °C
        packings:
          - {name: box, box: 300 x 200 x 160 mm, foam: foam 19 mm, fill: shredded paper}
        """;
    Scenario two = ScenarioReader.read("two.yaml", text);
    Parcel parcel = two.packings().get(0);
    List<String> snails = Animals.named("giant African snail").cautions();
    String forbidden = snails.get(snails.size() - 1);
    assertEquals("giant African snail: ", Cautions.whose(parcel, forbidden));
    assertEquals("", Cautions.whose(parcel, snails.get(0)), "both have it");
    assertEquals(
        Optional.of(
            "The file gives no date: the hours are those of a parcel sealed on day 1 at 15:00."),
        Cautions.undated(two));
    Words words = new Words(two);
    assertEquals("day 1, 15:00", words.moment(two.journey(), 0));
    assertEquals("day 3, 01:30", words.dayAndClock(two.journey(), Times.fromHours(34.5)));
    assertEquals("01:30 on day 3", words.clockOnDay(two.journey(), Times.fromHours(34.5)));
    assertEquals(Optional.empty(), Cautions.undated(SCENARIO));
  }

  @Test
  void noNumberOfJourneysTellsNoneOrAll() {
    for (double few : new double[] {0, 0.0049}) {
      assertEquals("fewer than 1", Words.inHundred(few));
      assertEquals("<1", Words.percent(few));
    }
    for (double all : new double[] {1, 0.995}) {
      assertEquals("more than 99", Words.inHundred(all));
      assertEquals(">99", Words.percent(all));
    }
    assertEquals("1", Words.inHundred(0.005));
    assertEquals("99", Words.percent(0.9949));
    assertEquals("50", Words.inHundred(0.496));
  }

  @Test
  void aWarmerTellsWhatItTouches() {
    assertEquals("lid, shredded paper", Tables.touched(WARM));
    assertEquals("container 1, air", Tables.touched(SCENARIO.packings().get(3)));
  }

  /** As late as four of five journeys surely bear, hour by hour. */
  @Test
  void theDelayGoesByTheOdds() {
    Judged row = judged(BARE, Level.LIKELY, 0.9);
    int most = row.delay().orElse(-1);
    for (int hours = 0; hours <= RAN.odds().longestDelay(); hours++) {
      assertEquals(hours <= most, RAN.odds().withinUntil(hours).low() >= 0.8, hours + " h");
    }
  }

  /** Nothing that was run is beyond the worst case, at any moment. */
  @Test
  void theWorstCaseIsWorse() {
    Judged row = judged(BARE, Level.LIKELY, 0.9);
    Container cup = BARE.occupied().get(0);
    double[] coldest = row.worst(cup, Side.COLD);
    double[] hottest = row.worst(cup, Side.HOT);
    double[] low = RAN.odds().temperatures(cup.name(), 0.05);
    double[] high = RAN.odds().temperatures(cup.name(), 0.95);
    double[] against = row.assessment().stress(Side.COLD).temperatures(cup.name());
    for (int at = 0; at < low.length; at++) {
      assertTrue(coldest[at] <= Math.min(low[at], against[at]), at + ": " + coldest[at]);
      assertTrue(hottest[at] >= high[at], at + ": " + hottest[at]);
    }
  }

  /**
   * Better odds first, to a hundredth of their lower ends; then no warmer; then the smaller box.
   */
  @Test
  void theBestRowIsTheOneToTake() {
    Judged bare = judged(BARE, Level.LIKELY, 0.9);
    Judged warm = judged(WARM, Level.LIKELY, 0.902);
    Judged big = judged(BIG, Level.LIKELY, 0.9);
    assertSame(bare, Judged.best(List.of(warm, big, bare)));
    assertSame(big, Judged.best(List.of(warm, big)));
    Judged better = judged(WARM, Level.LIKELY, 0.93);
    assertSame(better, Judged.best(List.of(bare, better, big)));
    Judged same = judged(BARE, Level.LIKELY, 0.9);
    assertSame(same, Judged.best(List.of(same, bare)), "the first of equals");
  }

  /** Of what nobody should send the one that comes closest, though it has a warmer. */
  @Test
  void ofBadRowsTheLeastBadIsTheBest() {
    Judged bare = judged(BARE, Level.DO_NOT, 0);
    Assessment cold = bare.assessment();
    StudyResult odds = Ran.of(WARM).odds();
    assertTrue(odds.coldMargin(0.5) > cold.odds().coldMargin(0.5));
    Assessment warmed =
        new Assessment(
            cold.nominal(),
            cold.warmest(),
            cold.coldStress(),
            cold.hotStress(),
            cold.plannedEnd(),
            cold.sensitivities(),
            cold.error(),
            odds,
            odds,
            cold.verdict());
    Judged warm = new Judged(WARM, false, warmed, RAN.planned(), List.of());
    assertSame(warm, Judged.best(List.of(bare, warm)));
  }

  /** A typical journey may burn nobody where many others do. */
  @Test
  void burnsOfManyJourneysAreACaution() {
    Words words = new Words(Figures.US, true);
    assertEquals(
        Optional.of(
            "On 38 of 100 journeys a place in reach of an animal gets above 104 °F, which counts as"
                + " harm (assumed): keep the warmer farther from it, with more fill between."),
        Cautions.burns(odds(0.62), true, words));
    String bare = Cautions.burns(odds(0.62), false, words).orElseThrow();
    assertTrue(bare.endsWith("(assumed): that is the heat of the air or the sun outside."), bare);
    assertEquals(Optional.empty(), Cautions.burns(odds(0.97), true, words));
  }

  @Test
  void whatCausesMostIsNamedWhereSomethingGoesWrong() {
    VerdictWords words = new VerdictWords(new Words(Figures.METRIC, true));
    assertTrue(words.costliest(judged(BARE, Level.HOLDS, 0.996)).isEmpty());
    String most = RAN.odds().shares(true).orElseThrow().shares().get(0).of();
    String sentence = words.costliest(judged(BARE, Level.GAMBLE, 0.6)).orElseThrow();
    assertTrue(sentence.startsWith("What makes journeys differ most: " + most + " ("), sentence);
  }

  @Test
  void theSummaryHasLevelAndOdds() throws IOException {
    List<Judged> rows = List.of(judged(BARE, Level.GAMBLE, 0.6), judged(BIG, Level.DO_NOT, 0.3));
    ComparisonReport report = new ComparisonReport(SCENARIO, rows, Optional.empty());
    JsonNode root = new ObjectMapper().readTree(DataFiles.summary(report));
    assertEquals(7, root.get("format").asInt());
    assertTrue(root.get("dated").asBoolean());
    assertEquals(
        new VerdictWords(new Words(Figures.METRIC, true)).headline(report),
        root.get("headline").asText());
    JsonNode first = root.get("packings").get(0);
    assertEquals("GAMBLE", first.get("level").asText());
    assertEquals("a gamble", first.get("level_words").asText());
    assertEquals(0.6, first.get("odds").get("within").asDouble());
    assertEquals(0.6 - 0.04, first.get("odds").get("low").asDouble());
    assertEquals(0.6 + 0.02, first.get("odds").get("high").asDouble());
    assertEquals(
        "do not send it like this", root.get("packings").get(1).get("level_words").asText());
    assertEquals(128, first.get("journeys").asInt());
    assertEquals(25, first.get("odds_by_hours_late").size());
    assertEquals(
        RAN.odds().withinUntil(24).within(),
        first.get("odds_by_hours_late").get(24).get("within").asDouble());
    assertEquals(RAN.odds().coldMargin(0.05), first.get("cold_margin").get("q05_K").asDouble());
    assertEquals(0.1, first.get("error_K").get("total").asDouble());
  }

  @Test
  void whatIsAlikeWithoutWarmersIsJudgedOnce() {
    Parcel hot = WARM.withWarmers(List.of(WARM.warmers().get(0).with(Warmers.TEN_HOUR)));
    List<Packed> packed = Comparison.packed(List.of(WARM, hot.named("hot"), BIG));
    assertEquals(
        List.of("warm foam, with warmer", "warm foam, no warmer", "hot, with warmer", "big foam"),
        packed.stream().map(Packed::label).toList());
    assertEquals(
        List.of("warm foam, with warmer", "bare foam"),
        Comparison.packed(List.of(WARM, BARE)).stream().map(Packed::label).toList());
  }

  /** What air and water take with them is part of the balance. */
  @Test
  void allHeatIsAccountedFor() {
    HeatBalance balance = HeatBalance.of(judged(BARE, Level.HOLDS, 0.98));
    double taken = balance.takers().stream().mapToDouble(HeatBalance.HeatShare::heat).sum();
    assertEquals(balance.given(), taken, 1e-6 * taken);
    List<String> names =
        Stream.concat(balance.givers().stream(), balance.takers().stream())
            .map(HeatBalance.HeatShare::name)
            .toList();
    assertTrue(names.stream().anyMatch(name -> name.contains("with air that")), names.toString());
    assertTrue(names.stream().noneMatch(name -> name.contains("container 1")), names.toString());
  }

  @Test
  void oneGoesWellAndTwoGoWell() {
    assertEquals(" goes well", Words.goWell(0));
    assertEquals(" goes well", Words.goWell(0.0149));
    assertEquals(" go well", Words.goWell(0.0151));
    assertEquals(" go well", Words.goWell(1));
    assertEquals("1 day", Departures.days(1));
    assertEquals("2 days", Departures.days(2));
  }

  private static Optional<Improvement> tried(List<Judged> rows, Remedy best, double within) {
    return Optional.of(Improvement.of(rows.get(0), tried(best, within)));
  }

  private static ChangesTried tried(Remedy best, double within) {
    return new ChangesTried(
        ofCold(odds(0.6)),
        -1,
        List.of(
            new ChangesTried.TriedChange(best, 1.5, Optional.of(ofCold(odds(within)))),
            new ChangesTried.TriedChange(new Remedy.NoWarmer(), -2, Optional.empty())));
  }

  /** Where all that fail fail of the cold. */
  private static OddsByCause ofCold(Odds within) {
    Odds never = odds(1);
    return new OddsByCause(within, within, never, never, never);
  }

  private static final String ELSEWHERE =
      " Or wait for other weather: write map before the file's name, and the same program tells with"
          + " which lows this does better; write search, and it looks through hundreds of other"
          + " boxes, foams and warmers. Each takes minutes.";

  /** Where nothing likely holds, the headline tells what was tried; else nothing was. */
  @Test
  void theHeadlineSaysWhatHelpsMost() {
    VerdictWords words = new VerdictWords(new Words(Figures.US, true));
    List<Judged> gamble = List.of(judged(BARE, Level.GAMBLE, 0.6));
    ComparisonReport better =
        new ComparisonReport(SCENARIO, gamble, tried(gamble, new Remedy.StartAt(299.15), 0.9));
    String helped = words.headline(better);
    assertTrue(
        helped.contains(
            "'bare foam', is a gamble. What helps most of 2 changes tried on it: everything at 79"
                + " °F when packed; 90 of 100 go well (likely holds). As it is, of 100 such"
                + " journeys that arrive on time, 60 go well: the"),
        helped);
    String page = new String(HtmlReport.of(better, false), StandardCharsets.UTF_8);
    assertTrue(page.contains("What would help?"), page);
    StringWriter console = new StringWriter();
    better.print(new PrintWriter(console, true));
    assertTrue(
        console.toString().matches("(?s).*everything at 26 °C when packed +90 .86 to 92. +10 .*"),
        console.toString());
    assertFalse(console.toString().contains("leave the warmer out"), "it looks worse");
    ComparisonReport little =
        new ComparisonReport(
            SCENARIO, gamble, tried(gamble, new Remedy.WarmerOffWall(0.0254), 0.7));
    String still = words.headline(little);
    assertTrue(
        still.contains(
            "the warmer held 1 in off its wall; even then only 70 of 100 go well (a gamble, too cold in 30)."
                + " As it is"),
        still);
    assertTrue(still.endsWith(ELSEWHERE), still);
    assertFalse(helped.contains(ELSEWHERE), helped);
    ComparisonReport nothing =
        new ComparisonReport(SCENARIO, gamble, tried(gamble, new Remedy.StartAt(299.15), 0.6));
    String none = words.headline(nothing);
    assertTrue(
        none.endsWith(" None of the 2 changes that were tried clearly helps." + ELSEWHERE), none);
    Odds few = new Odds(0.01, 0.005, 0.02);
    ChangesTried only =
        new ChangesTried(
            ofCold(odds(0)),
            -1,
            List.of(
                new ChangesTried.TriedChange(
                    new Remedy.StartAt(299.15), 1.5, Optional.of(ofCold(few)))));
    List<Judged> bad = List.of(judged(BARE, Level.DO_NOT, 0));
    String single =
        words.headline(
            new ComparisonReport(SCENARIO, bad, Optional.of(Improvement.of(bad.get(0), only))));
    assertTrue(
        single.contains(
            "What helps, the one change tried on it: everything at 79 °F when packed; even then"
                + " only 1 of 100 goes well (do not send it like this, too cold in 99)."
                + " As it is, of 100 such journeys that arrive on time, fewer than 1 goes well: "),
        single);
    String holds = words.headline(report(judged(BARE, Level.HOLDS, 0.98)));
    assertFalse(holds.contains("change"), holds);
  }

  /** Where the best has no warmer and is too cold, the warmed one may be too warm: a larger box. */
  @Test
  void changesAreTriedOnTheWarmedOneBesideACoolOne() {
    Judged cool = judged(BARE, Level.GAMBLE, 0.64);
    Judged hot =
        new Judged(
            WARM, false, assessment(Level.DO_NOT, odds(0.52), Side.HOT), RAN.planned(), List.of());
    Judged cold = judged(WARM, Level.DO_NOT, 0.5);
    assertEquals(Optional.of(hot), Improvement.warmedBeside(cool, List.of(cool, cold, hot)));
    assertEquals(Optional.empty(), Improvement.warmedBeside(cool, List.of(cool, cold)));
    assertEquals(Optional.empty(), Improvement.warmedBeside(hot, List.of(cool, hot)));
    Improvement ofCool = Improvement.of(cool, tried(new Remedy.StartAt(299.15), 0.7));
    // the lower end, 0.71, is above 0.66 but not above 0.72
    Improvement ofHot = Improvement.of(hot, tried(new Remedy.LargerBox(), 0.75));
    Improvement better = ofCool.or(ofHot);
    assertEquals(hot, better.row());
    assertEquals(4, better.count());
    assertEquals(
        cool,
        Improvement.of(cool, tried(new Remedy.StartAt(299.15), 0.76)).or(ofHot).row(),
        "it does not lead as far");
    String headline =
        new VerdictWords(new Words(Figures.US, true))
            .headline(new ComparisonReport(SCENARIO, List.of(cool, hot), Optional.of(better)));
    assertTrue(
        headline.contains(
            "What helps most of 4 changes tried on it and on 'warm foam, with warmer', made on the"
                + " latter: a box 2 in longer and wider and 1 in higher, filled as before; even then"
                + " only 75 of 100 go well (a gamble"),
        headline);
  }

  /** Fresh air at 2,400 m has no more oxygen than 15.7 % would give at sea level. */
  @Test
  void oxygenIsHeldAgainstFreshAirOfThatHeight() {
    Scenario high =
        ScenarioReader.read(
            "high.yaml",
            """
            format: 1
            title: test
            animal: leopard gecko, 40 g
            containers: [110 x 80 x 60 mm]
            journey:
              sealed: 2026-01-31 20:00
              from: Here, UTC-5
              to: There, UTC-8
              legs:
                - {name: road, at: origin, for: 1 h, ambient: 14 °C}
                - {name: hold, at: destination, for: 5 h, ambient: 14 °C, altitude: 2400 m}
            packings:
              - {name: bare foam, box: 350 x 250 x 150 mm, foam: EPS 20 13 mm, fill: shredded paper}
            """);
    TransitResult nominal =
        ParcelModel.of(high.packings().get(0), high.journey(), SETTINGS)
            .run(high.journey(), Variation.NOMINAL);
    Assessment assessment =
        new Assessment(
            nominal,
            nominal,
            RAN.stress(),
            RAN.stress(),
            high.journey().duration(),
            List.of(),
            new NumericalError(0.1, true, 0, 0, 0),
            RAN.odds(),
            RAN.odds(),
            new Verdict(Level.HOLDS, odds(1), Side.COLD, 0, List.of(Verdict.DEFER)));
    Judged row = new Judged(high.packings().get(0), false, assessment, nominal, List.of());
    // ISO 2533, standard atmosphere, table 5: 75 626 Pa at 2,400 m
    assertEquals(
        75_626.0 / 101_325, new Climate(row).thinness(new Climate(row).leastOxygen()), 1e-3);
    String air = new ClimateWords(new Words(Figures.METRIC, true)).air(row);
    assertTrue(air.contains("; fresh air has 21 %, in the thin air of that hour 15.7 %)"), air);
  }

  /** No air comes into a tight box: it is told first, in the details, the cautions and the data. */
  @Test
  void aTightBoxIsShortOfAir() throws IOException {
    Parcel tight = SCENARIO.packings().get(4);
    Ran ran = Ran.of(tight);
    Odds none = odds(0);
    Assessment assessment =
        new Assessment(
            ran.held(),
            ran.held(),
            ran.stress(),
            ran.stress(),
            SCENARIO.journey().duration(),
            List.of(),
            new NumericalError(0.1, true, 0, 0, 0),
            ran.odds(),
            ran.odds(),
            new Verdict(Level.DO_NOT, none, Side.COLD, 0, List.of(Verdict.DEFER)));
    Judged row = new Judged(tight, false, assessment, ran.planned(), List.of());
    ClimateWords words = new ClimateWords(new Words(Figures.METRIC, true));
    Climate climate = new Climate(row);
    double least = climate.leastOxygen().value();
    assertEquals(
        Arrays.stream(ran.planned().oxygen("container 1")).min().orElseThrow(), least, 2e-3);
    assertTrue(least < 0.1, "oxygen " + least);
    String lowest = ClimateWords.percent(least) + " oxygen";
    String headline = new VerdictWords(new Words(Figures.METRIC, true)).headline(report(row));
    assertTrue(headline.contains(" It is short of air in more than 99 of 100: about "), headline);
    assertTrue(headline.contains(lowest + " (fresh air has 21 %), as the warmer uses"), headline);
    String air = words.air(row);
    assertTrue(air.contains("falls to " + lowest), air);
    Climate.WarmerCourse course = climate.warmers().get(0);
    assertEquals(Optional.of(IronPowder.LimitedBy.OXYGEN), course.mostly());
    assertTrue(course.useful() < SCENARIO.journey().duration() / 2, course.toString());
    String warmers = words.warmers(row).orElseThrow();
    assertTrue(warmers.contains("is the air around it, which has little oxygen left."), warmers);
    String cautions = String.join("\n", Cautions.of(report(row)));
    for (String part :
        List.of(
            "Its foam lets no air through, its seams are taped, ",
            "Its air has as little as " + lowest,
            "The warmer takes its air through 50 % of its film only (half taped over).",
            "The warmer touches 'container 1'",
            "The warmer lacks air most of the time")) {
      assertTrue(cautions.contains(part), part + " in " + cautions);
    }
    JsonNode packing =
        new ObjectMapper().readTree(DataFiles.summary(report(row))).get("packings").get(0);
    assertEquals(0, packing.get("odds_enough_air").get("within").asDouble());
    assertEquals(
        least, packing.get("air_until_opening").get("least_oxygen").get("fraction").asDouble());
    assertEquals("OXYGEN", packing.get("warmers").get(0).get("mostly_limited_by").asText());
    String[] lines =
        new String(DataFiles.history(report(row)), StandardCharsets.UTF_8).split("\n", -1);
    assertEquals(
        "oxygen_mole_fraction,carbon_dioxide_mole_fraction,relative_humidity,warmers_power_W,"
            + "warmers_conversion",
        String.join(",", Arrays.copyOfRange(lines[0].split(",", -1), 14, 19)));
    String[] second = lines[2].split(",", -1);
    assertEquals(ran.held().power("warmer")[1], Double.parseDouble(second[17]));
    assertEquals(ran.held().oxygen("container 1")[1], Double.parseDouble(second[14]));
  }

  /** What a froglet gives off, walls that are colder take: in a frost, or beside a warmer. */
  @Test
  void anAmphibianThatDriesOutIsWorthACaution() {
    String text =
        """
        format: 1
        title: froglets
        animal: dyeing poison frog, %s
        cup: {size: 8 fl oz cup, bedding: %s}
        journey: {lows/highs: -9 to -4 °C, legs: [{name: dock, at: origin, for: 24 h, ambient: outdoors}]}
        packings:
          - {name: foam, box: 240 x 200 x 160 mm, foam: EPS 20 19 mm, fill: none, warmer: %s}
        """;
    String dry = climateCautions(text.formatted("0.1 g", "none", "none"));
    assertTrue(dry.contains("frog gives off "), dry);
    assertTrue(dry.contains(" of its mass as water: amphibians"), dry);
    assertTrue(dry.contains("Its bedding is dry: "), dry);
    String damp = climateCautions(text.formatted("0.3 g", "damp sphagnum 10 mm", "40 h on lid"));
    assertTrue(damp.contains("from its wet bedding is not counted."), damp);
    assertEquals("", climateCautions(text.formatted("5 g", "none", "none")));
  }

  private static String climateCautions(String text) {
    Scenario scenario = ScenarioReader.read("frog.yaml", text);
    Parcel parcel = scenario.packings().get(0);
    TransitResult run = Transit.run(parcel, scenario.journey(), Variation.NOMINAL, SETTINGS);
    Assessment assessment =
        new Assessment(
            run,
            run,
            RAN.stress(),
            RAN.stress(),
            scenario.journey().duration(),
            List.of(),
            new NumericalError(0.1, true, 0, 0, 0),
            RAN.odds(),
            RAN.odds(),
            new Verdict(Level.DO_NOT, odds(0), Side.COLD, 0, List.of(Verdict.DEFER)));
    Judged row = new Judged(parcel, false, assessment, run, List.of());
    return String.join("\n", new ClimateWords(new Words(scenario)).cautions(row));
  }

  /** Open seams, holes, or walls that breathe: such a box is not tight. */
  @Test
  void onlyABoxWithoutAnyWayForAirIsTight() {
    Parcel tight = SCENARIO.packings().get(4);
    assertTrue(ClimateWords.isTight(tight));
    assertFalse(ClimateWords.isTight(tight.withOpenings(Openings.usual())));
    List<Vent> lid = List.of(new Vent(Face.Z_MAX, 9, 0.006));
    assertTrue(ClimateWords.isTight(tight.withOpenings(new Openings(0, lid))), "no draught");
    for (int each = 1; each <= 2; each++) {
      List<Vent> both =
          List.of(new Vent(Face.Z_MAX, each, 0.006), new Vent(Face.Z_MIN, each, 0.006));
      assertEquals(each == 1, ClimateWords.isTight(tight.withOpenings(new Openings(0, both))));
    }
    assertFalse(ClimateWords.isTight(BARE.withOpenings(new Openings(0, List.of()))));
  }

  /** Where cold decides, the first line tells of cold. */
  @Test
  void otherReasonsStayOutOfTheFirstLine() {
    Judged row = judged(BARE, Level.LIKELY, 0.9);
    assertEquals(Optional.empty(), new ClimateWords(new Words(Figures.METRIC, true)).reason(row));
    assertEquals(List.of(), new ClimateWords(new Words(Figures.METRIC, true)).cautions(row));
    assertEquals(
        Optional.empty(),
        new ClimateWords(new Words(Figures.METRIC, true)).warmers(row),
        "has none");
  }

  @Test
  void theFirstLookNamesTheBest() {
    List<Packed> packings = List.of(new Packed(BARE, false), new Packed(WARM, false));
    FirstLook outside = look(280, 290, -3);
    FirstLook inside = look(290.15, 300.15, 2);
    String first =
        new VerdictWords(new Words(Figures.METRIC, true))
            .firstLook(packings, List.of(outside, inside));
    assertEquals(
        "First look, one typical journey computed roughly: best is 'warm foam, with warmer':"
            + " the animal has 17 °C to 27 °C. How often all goes well follows.",
        first);
    String none =
        new VerdictWords(new Words(Figures.METRIC, true))
            .firstLook(packings, List.of(outside, look(270, 290, -9)));
    assertTrue(
        none.contains(
            "the animal leaves its temperatures with each packing, least with 'bare foam': it has 7 °C"),
        none);
    String single =
        new VerdictWords(new Words(Figures.METRIC, true))
            .firstLook(packings.subList(0, 1), List.of(outside));
    assertTrue(single.contains("roughly: the animal leaves its temperatures: it has 7 °C"), single);
  }

  private static FirstLook look(double coldest, double hottest, double margin) {
    double never = Double.POSITIVE_INFINITY;
    Fate.Approach cold = new Fate.Approach(margin, never);
    return new FirstLook(
        coldest, hottest, new Fate(cold, new Fate.Approach(5, never), 0, never, never));
  }
}
