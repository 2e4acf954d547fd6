package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
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
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Animals;
import stenotherm.animal.Limit;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.ProgressListener;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.parcel.Container;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.transit.Factor;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

class AssessorTest {
  private static final double HOUR = Times.HOUR;
  private static final Place EAST = new Place("east", ZoneOffset.ofHours(-5));
  private static final Place WEST = new Place("west", ZoneOffset.ofHours(-8));
  private static final AssessmentSettings SETTINGS =
      new AssessmentSettings(
          new TransitSettings(MeshControl.graded(0.04, 0.02), HOUR, IntegratorSettings.standard()),
          12 * HOUR);

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

  private static void assertOrdered(Assessment assessment) {
    for (Side side : Side.values()) {
      double worst = assessment.worstMargin(side).kelvin();
      double nominal = assessment.nominalMargin(side).kelvin();
      double best = assessment.bestMargin(side).kelvin();
      assertTrue(worst <= nominal && nominal <= best, worst + " " + nominal + " " + best);
      assertEquals(side, assessment.worstMargin(side).side());
    }
    double[] cold = assessment.coldEnd().coldest("cup");
    double[] middle = assessment.nominal().coldest("cup");
    double[] hot = assessment.hotEnd().coldest("cup");
    int last = middle.length - 1;
    assertTrue(cold[last] <= middle[last] && middle[last] <= hot[last]);
  }

  private static Sensitivity.Change change(Assessment assessment, Factor factor, Side side) {
    for (Sensitivity sensitivity : assessment.sensitivities()) {
      if (sensitivity.factor() == factor) {
        return side == Side.COLD ? sensitivity.cold() : sensitivity.hot();
      }
    }
    throw new AssertionError(factor);
  }

  private static double breach(TransitResult result) {
    return result
        .exposure("cup", result.journey().duration())
        .outside(Limit.ALARM)
        .firstBreach()
        .orElseThrow();
  }

  @Test
  void aMildRoomIsInside() {
    Assessment assessment = assess(Packings.plain(), night(295.15, 48, 295.15));
    Verdict verdict = assessment.verdict();
    assertEquals(Level.INSIDE, verdict.level());
    // all is at 22 °C; the ambient may lie off by 1 K; alarm from 10 °C to 32 °C
    assertEquals(Side.HOT, verdict.tightest().side());
    assertEquals(9, verdict.tightest().kelvin(), 0.05);
    assertEquals(10, verdict.nominal(), 0.01);
    assertEquals(10, verdict.best(), 0.05);
    assertEquals(new DelayMargin.AtLeast(12 * HOUR), assessment.delay());
    assertFalse(verdict.cautions().contains(WarmerClass.AIR_CAUTION));
    assertEquals(48 * HOUR, assessment.plannedEnd());
    assertEquals(60 * HOUR, assessment.nominal().journey().duration());
    assertEquals(0, assessment.coldGrid().error(), 1e-3);
    assertSober(verdict);
    assertOrdered(assessment);
    // no warmer and no sun
    assertEquals(4, assessment.sensitivities().size());
    Sensitivity.Change onCold = change(assessment, Factor.AMBIENT, Side.COLD);
    assertTrue(onCold.atLow() < -0.8 && Math.abs(onCold.atHigh()) < 1e-3);
    Sensitivity.Change onHot = change(assessment, Factor.AMBIENT, Side.HOT);
    assertTrue(onHot.atHigh() < -0.8 && Math.abs(onHot.atLow()) < 1e-3);
  }

  /** The breach of a parcel in deep cold comes within the hour, before the opening. */
  @Test
  void deepColdIsOutside() {
    Assessment assessment = assess(Packings.plain(), night(295.15, 2.5, 258.15));
    Verdict verdict = assessment.verdict();
    assertEquals(Level.OUTSIDE, verdict.level());
    assertEquals(Side.COLD, verdict.tightest().side());
    DelayMargin.AlreadyOutside outside =
        assertInstanceOf(DelayMargin.AlreadyOutside.class, assessment.delay());
    assertEquals(2.5 * HOUR - breach(assessment.coldEnd()), outside.time(), 1e-6);
    // about 700 J/K behind 0.5 W/K make a time constant of 0.4 h, the cup's own comes on top; 12 K
    // of 38 K are lost within 0.4 of their sum
    double hours = Times.toHours(2.5 * HOUR - outside.time());
    assertTrue(hours > 0.15 && hours < 2, hours + " h");
    assertTrue(breach(assessment.nominal()) > breach(assessment.coldEnd()));
    // the opening, between two stored values, is the coldest moment
    assertEquals(2.5 * HOUR, verdict.tightest().time(), 1e-6);
    double temperature = verdict.tightest().temperature();
    assertEquals(temperature - 283.15, verdict.tightest().kelvin(), 1e-9);
    assertTrue(temperature > 257.15 && temperature < 280);
    assertTrue(verdict.tightest().kelvin() < verdict.nominal());
    assertTrue(verdict.nominal() < verdict.best());
    assertSober(verdict);
    assertOrdered(assessment);
    Sensitivity.Change ambient = change(assessment, Factor.AMBIENT, Side.COLD);
    assertEquals(-0.8, ambient.atLow(), 0.25);
    assertEquals(0.8, ambient.atHigh(), 0.25);
    Sensitivity.Change film = change(assessment, Factor.SURFACE_FILM, Side.COLD);
    assertTrue(film.atHigh() < 0 && film.atLow() > 0);
    Sensitivity.Change wall = change(assessment, Factor.WALL_CONDUCTIVITY, Side.COLD);
    assertTrue(wall.atHigh() < 0 && wall.atLow() > 0);
  }

  @Test
  void aHoldEndsWhereALongerJourneyBreaches() {
    Assessment early = assess(Packings.plain(), night(295.15, 1, 280.15));
    DelayMargin.Until until = assertInstanceOf(DelayMargin.Until.class, early.delay());
    assertTrue(until.time() > 0.25 * HOUR && until.time() < 12 * HOUR);
    assertTrue(early.verdict().tightest().kelvin() >= 0);
    double breach = HOUR + until.time();
    TransitResult longer =
        Transit.run(
            Packings.plain(),
            night(295.15, 20, 280.15),
            early.coldEnd().variation(),
            SETTINGS.transit());
    // a longer leg has coefficients at the means of other times: some 0.1 K, about two minutes here
    assertEquals(breach, breach(longer), 180);
    Assessment late = assess(Packings.plain(), night(295.15, 20, 280.15));
    assertEquals(
        20 * HOUR - breach(longer),
        assertInstanceOf(DelayMargin.AlreadyOutside.class, late.delay()).time(),
        // models for other runs: some millikelvins
        30);
  }

  /** Two legs in two time zones; the second warms up until the opening. */
  @Test
  void theTightestMomentIsOnTheClockOfItsLeg() {
    Parcel parcel =
        Packings.warmed(
            List.of(new PlacedWarmer("pad", Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), 0)));
    TimeFunction warming =
        Ambient.series(
            new double[] {6 * HOUR, 18 * HOUR, 30 * HOUR}, new double[] {291.15, 303.15, 308.15});
    Journey journey =
        journey(
            295.15,
            leg("drive to the hub", EAST, 6, Ambient.constant(288.15)),
            leg("hot depot", WEST, 12, warming));
    Assessment assessment = assess(parcel, journey);
    Verdict verdict = assessment.verdict();
    assertEquals(Side.HOT, verdict.tightest().side());
    assertTrue(verdict.cautions().contains(WarmerClass.AIR_CAUTION));
    assertEquals(5, assessment.sensitivities().size());
    assertSober(verdict);
    assertOrdered(assessment);
    double time = verdict.tightest().time();
    assertEquals(18 * HOUR, time);
    // 20:00 in the east, 18 hours on, three hours back
    Journey held = assessment.nominal().journey();
    assertEquals(LocalDateTime.of(2026, 2, 1, 11, 0), held.localClock(time, held.legUntil(time)));
    assertEquals(305.15 - verdict.tightest().temperature(), verdict.tightest().kelvin(), 1e-9);
    Variation hot = assessment.hotEnd().variation();
    assertEquals(1, hot.of(Factor.AMBIENT));
    assertEquals(1, hot.of(Factor.WARMER_STRENGTH));
    assertEquals(-1, assessment.coldEnd().variation().of(Factor.AMBIENT));
    assertEquals(-1, assessment.coldEnd().variation().of(Factor.WARMER_STRENGTH));
    assertTrue(change(assessment, Factor.WARMER_STRENGTH, Side.HOT).atHigh() < 0);
  }

  @Test
  void aJourneyShorterThanAnIntervalIsJudged() {
    Assessment assessment = assess(Packings.plain(), night(295.15, 0.5, 275.15));
    assertEquals(0.5 * HOUR, assessment.worstMargin(Side.COLD).time(), 1e-6);
    assertTrue(assessment.worstMargin(Side.COLD).kelvin() > 2);
  }

  @Test
  void aListenerStopsIt() {
    List<Double> seen = new ArrayList<>();
    assertThrows(
        CancellationException.class,
        () ->
            Assessor.assess(
                Packings.plain(),
                night(295.15, 4, 295.15),
                SETTINGS,
                (done, total) -> {
                  assertEquals(15, total);
                  seen.add(done);
                  return done >= 3
                      ? ProgressListener.Signal.STOP
                      : ProgressListener.Signal.CONTINUE;
                }));
    assertEquals(List.of(1.0, 2.0, 3.0), seen);
  }

  @Test
  void anInterruptStopsIt() {
    Thread.currentThread().interrupt();
    assertThrows(
        CancellationException.class, () -> assess(Packings.plain(), night(295.15, 4, 295.15)));
    assertTrue(Thread.interrupted(), "the interrupt must stay visible");
  }

  @Test
  void itReportsEveryRun() {
    List<Double> seen = new ArrayList<>();
    Assessor.assess(
        Packings.plain(),
        night(295.15, 4, 295.15),
        SETTINGS,
        (done, total) -> {
          seen.add(done / total);
          return ProgressListener.Signal.CONTINUE;
        });
    // two runs follow the hold only where it has worse ends of its own
    assertTrue(seen.size() >= 13 && seen.size() <= 15, seen.toString());
    assertEquals(1.0, seen.get(seen.size() - 1));
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

  /** The last values of a leg are its own, though the next begins at the same time. */
  @Test
  void theTightestMomentIsOfTheLegThatEnds() {
    Leg cold = leg("cold truck", EAST, 5, Ambient.constant(268.15));
    Leg side = cold.in(cold.surroundings().lying(Orientation.X_MAX_UP).atAltitude(1500));
    Journey journey = journey(295.15, side, leg("room", WEST, 6, Ambient.constant(295.15)));
    Assessment assessment = assess(Packings.plain(), journey);
    Verdict verdict = assessment.verdict();
    double time = verdict.tightest().time();
    assertEquals(5 * HOUR, time, 0.2 * HOUR);
    assertEquals(0, assessment.nominal().journey().legUntil(time));
    assertTrue(
        verdict.cautions().stream().anyMatch(each -> each.startsWith("In 'cold truck' the parcel")),
        verdict.cautions().toString());
  }

  /** The last leg's margin by search is that of the hold, to the search's step and its grid. */
  @Test
  void everyLegHasItsDelay() {
    Journey journey =
        journey(
            295.15,
            leg("cold van", EAST, 1, Ambient.constant(280.15)),
            leg("room", EAST, 3, Ambient.constant(295.15)));
    Assessor assessor = new Assessor(Packings.plain(), journey, SETTINGS);
    Assessment assessment = assessor.assess(ProgressListener.NONE);
    assertEquals(new DelayMargin.AtLeast(12 * HOUR), assessment.delay());
    assertEquals(assessment.delay(), assessor.delayOf(assessment, 1));
    DelayMargin.Until van =
        assertInstanceOf(DelayMargin.Until.class, assessor.delayOf(assessment, 0));
    Journey alone = night(295.15, 1, 280.15);
    Assessor ofAlone = new Assessor(Packings.plain(), alone, SETTINGS);
    Assessment held = ofAlone.assess(ProgressListener.NONE);
    double hold = assertInstanceOf(DelayMargin.Until.class, held.delay()).time();
    assertEquals(hold, van.time(), 12 * HOUR / 64 + 0.25 * HOUR);
    assertEquals(
        hold,
        assertInstanceOf(DelayMargin.Until.class, ofAlone.delayOf(held, 0)).time(),
        12 * HOUR / 64 + 0.25 * HOUR);
    Assessor deep = new Assessor(Packings.plain(), night(295.15, 4, 258.15), SETTINGS);
    assertInstanceOf(
        DelayMargin.AlreadyOutside.class, deep.delayOf(deep.assess(ProgressListener.NONE), 0));
    Parcel other =
        Packings.parcel(List.of(Packings.cup("other cup", Position.MIDDLE_OF_FLOOR)), List.of());
    Assessor ofOther = new Assessor(other, journey, SETTINGS);
    assertThrows(InvalidInputException.class, () -> ofOther.delayOf(assessment, 0));
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
  void levelsFollowTheMargin() {
    assertEquals(Level.OUTSIDE, Level.of(-1e-9));
    assertEquals(Level.TIGHT, Level.of(0));
    assertEquals(Level.TIGHT, Level.of(1.999));
    assertEquals(Level.INSIDE, Level.of(2));
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
    assertEquals(result.coldest("corner")[4], margin.temperature());
    assertEquals(margin.temperature() - 283.15, margin.kelvin(), 1e-9);
    assertEquals(4 * HOUR, margin.time());
    Margin hot = Margin.smallest(result, Side.HOT, 4 * HOUR);
    assertEquals(10, hot.kelvin(), 1e-3);
    assertEquals(0, hot.time());
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
