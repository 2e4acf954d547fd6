package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Animals;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.ProgressListener;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.parcel.Container;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
import stenotherm.study.Share;
import stenotherm.study.StudyResult;
import stenotherm.study.StudySettings;
import stenotherm.transit.Factor;
import stenotherm.transit.JourneyMeans;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.Warmers;

class AssessorTest {
  private static final double HOUR = Times.HOUR;
  private static final Place EAST = new Place("east", ZoneOffset.ofHours(-5));
  private static final Place WEST = new Place("west", ZoneOffset.ofHours(-8));
  private static final AssessmentSettings SETTINGS =
      new AssessmentSettings(
          new TransitSettings(Packings.COARSE, HOUR, IntegratorSettings.standard()),
          12 * HOUR,
          new StudySettings(16, 8, 1, 2));

  private static Leg leg(String name, Place place, double hours, TimeFunction ambient) {
    return new Leg(
        name, place, hours * HOUR, ambient, 1, FaceFilms.indoors(), Source.assumed("made up"));
  }

  private static Journey journey(double start, Leg... legs) {
    return new Journey(LocalDateTime.of(2026, 1, 31, 20, 0), start, List.of(legs));
  }

  private static Journey night(double start, double hours, double ambient) {
    return journey(start, leg("night", EAST, hours, Ambient.constant(ambient)));
  }

  private static Assessment assess(Parcel parcel, Journey journey) {
    return Assessor.assess(parcel, journey, SETTINGS, ProgressListener.NONE);
  }

  private static void assertSober(Verdict verdict) {
    Pattern word = Pattern.compile("\\bsafe\\b", Pattern.CASE_INSENSITIVE);
    List<String> all = new ArrayList<>(verdict.cautions());
    for (Level level : Level.values()) {
      all.add(level.words());
    }
    for (String text : all) {
      assertFalse(word.matcher(text).find(), text);
    }
    assertEquals(Verdict.DEFER, verdict.cautions().get(verdict.cautions().size() - 1));
    assertTrue(verdict.cautions().containsAll(Animals.CORN_SNAKE.cautions()));
  }

  private static Sensitivity.Change change(Assessment assessment, Factor factor, Side side) {
    for (Sensitivity sensitivity : assessment.sensitivities()) {
      if (sensitivity.factor() == factor) {
        return side == Side.COLD ? sensitivity.cold() : sensitivity.hot();
      }
    }
    throw new AssertionError(factor);
  }

  private static final Assessment MILD = assess(Packings.plain(), night(295.15, 48, 295.15));

  /** The opening lies between two stored hours. */
  private static final Assessment DEEP_COLD = assess(Packings.plain(), night(295.15, 2.5, 258.15));

  /** Well until the opening, too cold some hours later. */
  private static final Assessment COOLING = assess(Packings.plain(), night(295.15, 1, 280.15));

  private static final Assessment HOT = assess(Packings.plain(), night(295.15, 30, 304.15));

  private static final Assessment WARMED =
      assess(
          Packings.warmed(
              List.of(Packings.pad(Packings.steady(0.2), Face.Z_MAX, Mounting.taped()))),
          night(295.15, 10, 295.15));

  private static void assertOrdered(Assessment assessment) {
    for (Side side : Side.values()) {
      double stress = assessment.stress(side).kelvin();
      Margin nominal = assessment.nominalMargin(side);
      // the nominal one without the correction by the grids
      assertTrue(stress <= nominal.kelvin() + assessment.error().total(), stress + " " + nominal);
      assertTrue(nominal.time() <= assessment.plannedEnd());
    }
    StudyResult odds = assessment.odds();
    assertEquals(odds.within(), assessment.verdict().within());
    assertEquals(Level.of(odds.within()), assessment.verdict().level());
    assertTrue(odds.within().within() <= odds.notTooCold().within());
    assertTrue(odds.within().within() <= odds.notTooHot().within());
    for (int hours = 1; hours <= odds.longestDelay(); hours++) {
      assertTrue(odds.withinUntil(hours).within() <= odds.withinUntil(hours - 1).within());
    }
    assertEquals(12, odds.longestDelay());
    assertEquals(128, odds.journeys());
    assertTrue(assessment.error().total() > 0);
  }

  /** Where 80 of 100 divide two levels, and 50 of 100 a gamble from what is out. */
  @Test
  void moreJourneysAreRunWhereTheLevelHangsOnThem() {
    assertTrue(Assessor.isSettled(new Odds(0.87, 0.83, 0.9)));
    assertTrue(Assessor.isSettled(new Odds(0.74, 0.7, 0.78)));
    assertFalse(Assessor.isSettled(new Odds(0.83, 0.795, 0.86)));
    assertTrue(Assessor.isSettled(new Odds(0.81, 0.77, 0.85)), "twice as many would not do");
    assertTrue(Assessor.isClearlyOut(new Odds(0.4, 0.3, 0.49)));
    assertFalse(Assessor.isClearlyOut(new Odds(0.4, 0.3, 0.51)));
  }

  @Test
  void aMildRoomHolds() {
    Verdict verdict = MILD.verdict();
    assertEquals(Level.HOLDS, verdict.level());
    assertEquals(1, MILD.odds().withinUntil(12).within());
    // all is at 22 °C at sealing; alarm from 10 °C to 32 °C
    assertEquals(12, MILD.nominalMargin(Side.COLD).kelvin(), 0.3);
    // 24 g of snake give 10 mW, which the damp towel does not take up altogether
    double own = 10 - MILD.nominalMargin(Side.HOT).kelvin();
    assertTrue(own > 0.05 && own < 0.5, own + " K");
    // an animal that gives twice as much in a cup that hardly dries
    double stress = MILD.stress(Side.HOT).kelvin();
    assertTrue(stress > 9 - 6 * own && stress < 9 - own, stress + " K");
    // a range of metabolism and evaporation around these, and 1 K of the room's air
    assertEquals(12, MILD.odds().coldMargin(0.5), 0.4);
    assertEquals(10 - own, MILD.odds().hotMargin(0.5), 0.4);
    assertEquals(0, MILD.odds().outside(0.5), 40);
    assertEquals(48 * HOUR, MILD.plannedEnd());
    assertEquals(60 * HOUR, MILD.nominal().journey().duration());
    // of the rise that the animal's own heat makes
    assertTrue(MILD.error().grid() < own, MILD.error().grid() + " K");
    assertSober(verdict);
    assertOrdered(MILD);
    // no warmer, no sun, no pile
    assertEquals(9, MILD.sensitivities().size());
    Sensitivity.Change onCold = change(MILD, Factor.AMBIENT, Side.COLD);
    // of 1 K; less evaporates from a colder animal and its towel
    assertTrue(onCold.atLow() < -0.7 && onCold.atHigh() > -1e-2, onCold + "");
    Sensitivity.Change onHot = change(MILD, Factor.AMBIENT, Side.HOT);
    assertTrue(onHot.atHigh() < -0.8 && onHot.atLow() > -1e-2);
  }

  @Test
  void deepColdIsNotSentInto() {
    Verdict verdict = DEEP_COLD.verdict();
    assertEquals(Level.DO_NOT, verdict.level());
    assertEquals(Side.COLD, verdict.side());
    assertTrue(DEEP_COLD.odds().notTooCold().within() < 0.5);
    assertEquals(1, DEEP_COLD.odds().notTooHot().within());
    // the opening, between two stored hours, is the coldest moment
    assertEquals(2.5 * HOUR, verdict.tightest());
    Margin nominal = DEEP_COLD.nominalMargin(Side.COLD);
    assertEquals(2.5 * HOUR, nominal.time());
    assertEquals(nominal.temperature() - 283.15, nominal.kelvin(), 1e-9);
    assertTrue(nominal.kelvin() < 0);
    assertSober(verdict);
    assertOrdered(DEEP_COLD);
    Sensitivity.Change ambient = change(DEEP_COLD, Factor.AMBIENT, Side.COLD);
    assertEquals(-0.8, ambient.atLow(), 0.3);
    assertEquals(0.8, ambient.atHigh(), 0.3);
    Sensitivity.Change film = change(DEEP_COLD, Factor.SURFACE_FILM, Side.COLD);
    assertTrue(film.atHigh() < 0 && film.atLow() > 0);
    Sensitivity.Change wall = change(DEEP_COLD, Factor.WALL_CONDUCTIVITY, Side.COLD);
    assertTrue(wall.atHigh() < 0 && wall.atLow() > 0);
    Sensitivity.Change seams = change(DEEP_COLD, Factor.SEAMS, Side.COLD);
    assertTrue(seams.atHigh() < 0 && seams.atLow() > 0);
  }

  /** Odds of a later opening count what goes wrong after the planned one. */
  @Test
  void latenessCostsOdds() {
    StudyResult odds = COOLING.odds();
    assertEquals(Level.HOLDS, COOLING.verdict().level());
    assertTrue(odds.withinUntil(12).within() < 0.2, odds.withinUntil(12).toString());
    assertOrdered(COOLING);
  }

  /** Either side alone spoils a journey. */
  @Test
  void heatIsAsBadAsCold() {
    StudyResult odds = HOT.odds();
    assertEquals(Side.HOT, HOT.verdict().side());
    assertEquals(1, odds.notTooCold().within());
    assertEquals(odds.notTooHot(), odds.within());
    assertTrue(odds.within().within() < 0.95);
    assertOrdered(HOT);
  }

  /** The air is computed, so that a packing with a warmer may hold as well. */
  @Test
  void aPackingWithAWarmerMayHold() {
    Verdict verdict = WARMED.verdict();
    assertEquals(1, WARMED.odds().within().within());
    assertTrue(verdict.within().low() > Level.HOLDS.least());
    assertEquals(Level.HOLDS, verdict.level());
    assertEquals(1, WARMED.odds().enoughAir().within());
    assertEquals(1, WARMED.odds().notBurnt().within());
    assertEquals(MILD.sensitivities().size() + 1, WARMED.sensitivities().size());
    assertSober(verdict);
    assertOrdered(WARMED);
  }

  @Test
  void theNumericalErrorIsAmongWhatIsUncertain() {
    NumericalError error = DEEP_COLD.error();
    assertTrue(error.grid() > 0 && error.reduction() > 0 && error.condensation() > 0);
    List<String> uncertain =
        DEEP_COLD.odds().shares(true).orElseThrow().shares().stream().map(Share::of).toList();
    assertTrue(uncertain.contains("numerical error"), uncertain.toString());
  }

  @Test
  void sharesAreThoseOfTheSideThatDecides() {
    assertEquals(Side.COLD, DEEP_COLD.verdict().side());
    assertSame(DEEP_COLD.odds().shares(true), DEEP_COLD.shares());
    assertEquals(Side.HOT, HOT.verdict().side());
    assertSame(HOT.odds().shares(false), HOT.shares());
  }

  @Test
  void threadsAreTheOnlyThingThatOtherThreadsChange() {
    AssessmentSettings usual = AssessmentSettings.standard();
    assertEquals(1, usual.transit().workers().threads());
    assertEquals(1, usual.study().workers().threads());
    assertEquals(
        new AssessmentSettings(
            TransitSettings.standard().withThreads(2),
            Times.DAY,
            StudySettings.standard(AssessmentSettings.SEED, 2)),
        usual.withThreads(2));
    assertEquals(SETTINGS.study(), SETTINGS.withThreads(2).study());
    assertThrows(InvalidInputException.class, () -> usual.withThreads(0));
  }

  @Test
  void widerRangesSpreadMargins() {
    for (Assessment each : List.of(MILD, DEEP_COLD)) {
      double stated = each.odds().coldMargin(0.95) - each.odds().coldMargin(0.05);
      double wider = each.wider().coldMargin(0.95) - each.wider().coldMargin(0.05);
      assertEquals(1.5, wider / stated, 0.2);
    }
    double stated = WARMED.odds().hotMargin(0.95) - WARMED.odds().hotMargin(0.05);
    double wider = WARMED.wider().hotMargin(0.95) - WARMED.wider().hotMargin(0.05);
    assertEquals(1.5, wider / stated, 0.2);
  }

  /** What gets warmer from sealing on was coldest then, when nothing is uncertain. */
  @Test
  void nothingIsUncertainAtSealing() {
    String cup = WARMED.nominal().parcel().occupied().get(0).name();
    double start = WARMED.nominal().journey().startTemperature();
    for (double share : new double[] {0.05, 0.5, 0.95}) {
      assertEquals(start, WARMED.odds().temperatures(cup, share)[0], 0.1);
    }
  }

  /** Two legs in two time zones; the second warms up until the opening. */
  @Test
  void theTightestMomentIsOnTheClockOfItsLeg() {
    TimeFunction warming =
        Ambient.series(
            new double[] {6 * HOUR, 18 * HOUR, 30 * HOUR}, new double[] {291.15, 303.15, 308.15});
    Journey journey =
        journey(
            295.15,
            leg("drive to the hub", EAST, 6, Ambient.constant(288.15)),
            leg("hot depot", WEST, 12, warming));
    Assessment assessment =
        assess(
            Packings.warmed(
                List.of(
                    new PlacedWarmer("pad", Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), 0))),
            journey);
    Verdict verdict = assessment.verdict();
    assertEquals(Side.HOT, verdict.side());
    assertEquals(18 * HOUR, verdict.tightest());
    assertOrdered(assessment);
    // 20:00 in the east, 18 hours on, three hours back
    Journey held = assessment.nominal().journey();
    assertEquals(
        LocalDateTime.of(2026, 2, 1, 11, 0),
        held.localClock(verdict.tightest(), held.legUntil(verdict.tightest())));
    Variation hot = assessment.stress(Side.HOT).variation();
    assertEquals(1, hot.of(Factor.AMBIENT));
    assertEquals(1, hot.of(Factor.WARMER_STRENGTH));
    assertEquals(-1, assessment.stress(Side.COLD).variation().of(Factor.AMBIENT));
    assertEquals(-1, assessment.stress(Side.COLD).variation().of(Factor.WARMER_STRENGTH));
    assertTrue(change(assessment, Factor.WARMER_STRENGTH, Side.HOT).atHigh() < 0);
  }

  /** What an animal has at the opening is judged, though no whole interval has passed. */
  @Test
  void aJourneyShorterThanAnIntervalIsJudged() {
    Assessment assessment = assess(Packings.plain(), night(295.15, 0.5, 255.15));
    assertEquals(0.5 * HOUR, assessment.nominalMargin(Side.COLD).time());
    assertTrue(assessment.nominalMargin(Side.COLD).kelvin() < 11.9);
    assertEquals(0.5 * HOUR, assessment.verdict().tightest());
  }

  @Test
  void aListenerIsToldOfAllAndStopsIt() {
    List<Double> seen = new ArrayList<>();
    Assessor assessor = new Assessor(Packings.plain(), night(295.15, 4, 295.15), SETTINGS);
    assessor.assess(
        (done, total) -> {
          seen.add(done / total);
          return ProgressListener.Signal.CONTINUE;
        });
    for (int next = 1; next < seen.size(); next++) {
      assertTrue(seen.get(next) > seen.get(next - 1), seen.toString());
    }
    assertEquals(1, seen.get(seen.size() - 1), 1e-12);
    assertTrue(seen.stream().filter(share -> share < 0.5).count() >= 15, "while models are made");
    IllegalStateException own = new IllegalStateException("own");
    for (double from : new double[] {0.5, 0.6}) {
      assertSame(
          own,
          assertThrows(
              IllegalStateException.class,
              () ->
                  assessor.assess(
                      (done, total) -> {
                        if (done >= from) {
                          throw own;
                        }
                        return ProgressListener.Signal.CONTINUE;
                      })));
    }
    for (double from : new double[] {seen.get(0), 0.6, 0.9}) {
      assertThrows(
          CancellationException.class,
          () ->
              assessor.assess(
                  (done, total) ->
                      done / total >= from
                          ? ProgressListener.Signal.STOP
                          : ProgressListener.Signal.CONTINUE));
    }
  }

  /** What it has found so far is not guarded: another thread is told so, and the first goes on. */
  @Test
  void anAssessorBelongsToOneThreadAtATime() throws Exception {
    Assessor assessor = new Assessor(Packings.plain(), night(295.15, 4, 295.15), SETTINGS);
    List<Throwable> refused = new ArrayList<>();
    assessor.assess(
        (done, total) -> {
          if (refused.isEmpty()) {
            Thread other =
                new Thread(
                    () -> refused.add(assertThrows(Exception.class, assessor::firstLook)), "other");
            other.start();
            try {
              other.join();
            } catch (InterruptedException unexpected) {
              throw new IllegalStateException(unexpected);
            }
            // the same thread may
            assertTrue(assessor.firstLook().least() > 0);
          }
          return ProgressListener.Signal.CONTINUE;
        });
    assertEquals(
        "an assessor belongs to one thread at a time, and '"
            + Thread.currentThread().getName()
            + "' uses this one; make one for each thread",
        assertInstanceOf(IllegalStateException.class, refused.get(0)).getMessage());
    Thread later = new Thread(assessor::firstLook);
    later.start();
    later.join();
    assertTrue(assessor.firstLook().least() > 0, "one after the other");
  }

  @Test
  void aListenerThatIsNotThereIsToldBeforeAnythingIsMade() {
    Assessor assessor = new Assessor(Packings.plain(), night(295.15, 4, 295.15), SETTINGS);
    // a model would look for it
    Thread.currentThread().interrupt();
    for (Executable call :
        List.<Executable>of(
            () -> assessor.assess(null),
            () -> assessor.legDelays(null),
            () -> assessor.untilOpening(null),
            () -> assessor.study(null),
            () ->
                Outlook.of(Packings.plain(), List.of(night(295.15, 4, 295.15)), SETTINGS, null))) {
      assertEquals(
          "listener: must not be null",
          assertThrows(InvalidInputException.class, call).getMessage());
    }
    assertTrue(Thread.interrupted());
  }

  /** The last values of a leg are its own, though the next begins at the same time. */
  @Test
  void theTightestMomentIsOfTheLegThatEnds() {
    Leg cold = leg("cold truck", EAST, 5, Ambient.constant(268.15));
    Leg side = cold.in(cold.surroundings().lying(Orientation.X_MAX_UP).atAltitude(1500));
    Journey journey = journey(295.15, side, leg("room", WEST, 6, Ambient.constant(303.15)));
    Verdict verdict = assess(Packings.plain(), journey).verdict();
    // the mean of an hour and what the cup still loses
    assertEquals(5 * HOUR, verdict.tightest(), HOUR);
    assertTrue(
        verdict.cautions().stream().anyMatch(each -> each.startsWith("In 'cold truck' the parcel")),
        verdict.cautions().toString());
  }

  /** How long the delay of a leg may be, by the time a longer run breaches. */
  @Test
  void everyLegHasItsDelay() {
    Journey journey =
        journey(
            295.15,
            leg("cold van", EAST, 1, Ambient.constant(280.15)),
            leg("room", EAST, 3, Ambient.constant(295.15)));
    Assessor assessor = new Assessor(Packings.plain(), journey, SETTINGS);
    List<DelayMargin> delays = assessor.legDelays(ProgressListener.NONE);
    assertEquals(2, delays.size());
    assertFalse(delays.get(0).isAtLeast());
    assertEquals(new DelayMargin(12 * HOUR, true), delays.get(1));
    CancellationException stop =
        assertThrows(
            CancellationException.class,
            () -> assessor.legDelays((done, total) -> ProgressListener.Signal.STOP));
    // the other thread may just have ended its leg
    assertTrue(
        stop.getMessage().matches("stopped by the listener with (50|100) % done"),
        stop.getMessage());
    Assessor alone = new Assessor(Packings.plain(), night(295.15, 1, 280.15), SETTINGS);
    double hold = alone.legDelays(ProgressListener.NONE).get(0).time();
    Journey held = night(295.15, 1, 280.15).held(11 * HOUR);
    ParcelModel model = ParcelModel.of(Packings.plain(), held, SETTINGS.transit().meshScaled(2));
    JourneyMeans means = model.journeyMeans(held, Variation.NOMINAL);
    double breach =
        JourneyStudy.fate(model.parcel(), model.storedTimes(held), means, HOUR).cold().breach();
    // a stored hour and a step of the search
    assertEquals(breach, HOUR + hold, HOUR + 12 * HOUR / 64);
    Assessor deep = new Assessor(Packings.plain(), night(295.15, 4, 258.15), SETTINGS);
    assertEquals(List.of(), deep.legDelays(ProgressListener.NONE));
  }

  /** A warmer is off by what cells half as wide change and a quarter, beside the animal's error. */
  @Test
  void theErrorOfAWarmerIsStated() {
    TransitResult[] grids = new TransitResult[2];
    for (int grid = 0; grid < 2; grid++) {
      grids[grid] =
          Transit.run(
              WARMED.nominal().parcel(),
              WARMED.nominal().journey(),
              Variation.NOMINAL,
              SETTINGS.transit().meshScaled(grid == 0 ? 4 : 2));
    }
    double[] coarse = grids[0].mean("pad");
    double[] fine = grids[1].mean("pad");
    double most = 0;
    for (int time = 0; time < fine.length; time++) {
      most = Math.max(most, Math.abs(coarse[time] - fine[time]));
    }
    assertTrue(most > 0.01, "a difference to be seen: " + most);
    assertEquals(1.25 * most, WARMED.error().warmer(), 0.01);
    assertEquals(0, MILD.error().warmer());
    NumericalError error = new NumericalError(1, 16, 0, true, 2, 4, 8);
    assertEquals(15, error.total());
  }

  @Test
  void theSmallestMarginOfTwoCupsCounts() {
    Parcel parcel =
        Packings.parcel(
            List.of(
                Packings.cup("middle", new Position(0.01, 0, 0.06)),
                Packings.cup("corner", new Position(-0.07, -0.05, 0))),
            List.of());
    TransitResult result =
        Transit.run(parcel, night(295.15, 4, 265.15), Variation.NOMINAL, SETTINGS.transit());
    Margin margin = Margin.smallest(result, Side.COLD, 4 * HOUR);
    assertEquals("corner", margin.cup());
    double[] mean = result.mean("corner");
    // the mean of the last hour, on a line
    assertEquals((mean[3] + mean[4]) / 2, margin.temperature(), 1e-9);
    assertEquals(margin.temperature() - 283.15, margin.kelvin(), 1e-9);
    assertEquals(4 * HOUR, margin.time());
    Margin hot = Margin.smallest(result, Side.HOT, 4 * HOUR);
    assertEquals(10, hot.kelvin(), 1e-3);
    assertEquals(0, hot.time());
  }

  @Test
  void anInterruptStopsIt() {
    Thread.currentThread().interrupt();
    assertThrows(
        CancellationException.class, () -> assess(Packings.plain(), night(295.15, 4, 295.15)));
    assertTrue(Thread.interrupted(), "the interrupt must stay visible");
  }

  @Test
  void aRecordMustCoverTheHold() {
    TimeFunction record =
        Ambient.series(new double[] {0, 10 * HOUR}, new double[] {295.15, 290.15});
    Journey journey = journey(295.15, leg("night", EAST, 4, record));
    String message =
        assertThrows(InvalidInputException.class, () -> assess(Packings.plain(), journey))
            .getMessage();
    assertTrue(message.contains("between 0 s and 36000 s"), message);
    assertThrows(InvalidInputException.class, () -> new AssessmentSettings(SETTINGS.transit(), 0));
    assertEquals(86_400, AssessmentSettings.standard().longestHold());
  }

  @Test
  void onlyAPackingWithAnAnimalIsJudged() {
    Parcel plain = Packings.plain();
    Container cup = plain.containers().get(0);
    Container bare =
        new Container(cup.name(), cup.vessel(), cup.position(), cup.bedding(), Optional.empty());
    Parcel empty = Packings.parcel(List.of(bare), List.of());
    assertThrows(
        InvalidInputException.class, () -> new Assessor(empty, night(295.15, 1, 280.15), SETTINGS));
  }

  @Test
  void theWorseEndIsThatOfTheSmallerMargin() {
    Sensitivity sensitivity =
        new Sensitivity(
            Factor.AMBIENT, new Sensitivity.Change(-1, 1), new Sensitivity.Change(0.5, -0.5));
    assertEquals(End.LOW, sensitivity.worse(Side.COLD));
    assertEquals(End.HIGH, sensitivity.worse(Side.HOT));
  }
}
