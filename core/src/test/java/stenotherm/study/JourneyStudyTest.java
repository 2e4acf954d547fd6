package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Animals;
import stenotherm.animal.Limit;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeBudget;
import stenotherm.base.Times;
import stenotherm.base.Workers;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.parcel.Container;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Position;
import stenotherm.transit.CondensedModel;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

class JourneyStudyTest {
  private static final double HOUR = Times.HOUR;
  private static final double OPENING = 4 * HOUR;
  private static final StudySettings SETTINGS = new StudySettings(16, 8, 9, 2);

  /** Cooling down to the lower end of the alarm band about the planned opening. */
  private static final Journey HELD =
      new Journey(
              LocalDateTime.of(2026, 1, 5, 18, 0),
              295,
              List.of(
                  new Leg(
                      "porch",
                      new Place("home", ZoneOffset.UTC),
                      OPENING,
                      Ambient.constant(281),
                      4,
                      FaceFilms.indoors(),
                      Source.assumed("made up"))))
          .held(3 * HOUR);

  private static final Parcel PARCEL =
      Packings.parcel(
          List.of(
              Packings.cup("middle", new Position(0.01, 0, 0.06)),
              Packings.cup("corner", new Position(-0.07, -0.05, 0))),
          List.of());

  private static final ParcelModel MODEL =
      ParcelModel.of(
          PARCEL,
          HELD,
          new TransitSettings(Packings.FEW_CELLS, HOUR / 2, IntegratorSettings.standard()));

  private static final Uncertainties UNCERTAIN =
      Uncertainties.of(PARCEL, HELD, Uncertainties.Ranges.stated(0.1));

  private static final CondensedModel CONDENSED =
      CondensedModel.of(MODEL, HELD, UNCERTAIN.spread(12, 1));

  /** A correction that differs from animal to animal and from time to time. */
  private static final double[][] CORRECTION = correction();

  /** No place in reach is hotter than the animals. */
  private static final double[][] NONE = new double[2][CONDENSED.times().length];

  private static final JourneyStudy STUDY =
      JourneyStudy.of(PARCEL, CONDENSED, OPENING, UNCERTAIN, CORRECTION, NONE);

  private static final StudyResult RESULT = STUDY.run(SETTINGS, ProgressListener.NONE);

  private static double[][] correction() {
    double[][] correction = new double[2][CONDENSED.times().length];
    Arrays.fill(correction[0], -0.3);
    for (int row = 0; row < correction[1].length; row++) {
      correction[1][row] = 0.02 * row;
    }
    return correction;
  }

  private static void assertSameBits(StudyResult one, StudyResult other) {
    assertEquals(one.notTooCold(), other.notTooCold());
    assertEquals(one.notTooHot(), other.notTooHot());
    assertEquals(one.longestDelay(), other.longestDelay());
    for (int hours = 0; hours <= one.longestDelay(); hours++) {
      assertEquals(one.withinUntil(hours), other.withinUntil(hours));
    }
    for (double share : new double[] {0.05, 0.5, 0.95}) {
      assertEquals(one.coldMargin(share), other.coldMargin(share));
      assertEquals(one.hotMargin(share), other.hotMargin(share));
      assertEquals(one.outside(share), other.outside(share));
      for (String cup : one.cups()) {
        assertArrayEquals(one.temperatures(cup, share), other.temperatures(cup, share), 0);
      }
    }
    assertEquals(one.shares(true), other.shares(true));
    assertEquals(one.shares(false), other.shares(false));
  }

  @Test
  void resultsHaveTheSameBitsForAnyNumberOfThreads() {
    for (int threads : new int[] {1, 3}) {
      StudySettings settings = new StudySettings(16, 8, 9, threads);
      assertSameBits(RESULT, STUDY.run(settings, ProgressListener.NONE));
    }
    StudyResult another = STUDY.run(new StudySettings(16, 8, 10, 1), ProgressListener.NONE);
    assertFalse(another.coldMargin(0.5) == RESULT.coldMargin(0.5), "the seed is of effect");
    ExecutorService pool = Executors.newFixedThreadPool(2);
    try {
      StudySettings onThese = SETTINGS.with(new Workers(3, pool));
      assertSameBits(RESULT, STUDY.run(onThese, ProgressListener.NONE));
    } finally {
      pool.shutdownNow();
    }
  }

  /** What is enough has the bits of a study of so many journeys; what is not, those of all. */
  @Test
  void theFirstJourneysMayTellEnough() {
    List<Odds> asked = new ArrayList<>();
    StudyResult enough =
        STUDY.run(
            SETTINGS,
            List.of(new JourneyStudy.InterimLook(2, odds -> asked.add(odds))),
            ProgressListener.NONE);
    StudyResult few = STUDY.run(SETTINGS.withPoints(2), ProgressListener.NONE);
    assertEquals(32, enough.journeys());
    assertEquals(List.of(few.within()), asked);
    assertSameBits(few, enough);
    StudyResult all =
        STUDY.run(
            SETTINGS,
            List.of(new JourneyStudy.InterimLook(2, odds -> false)),
            ProgressListener.NONE);
    assertEquals(SETTINGS.journeys(), all.journeys());
    assertSameBits(RESULT, all);
    assertSameBits(
        RESULT,
        STUDY.run(
            SETTINGS,
            List.of(new JourneyStudy.InterimLook(8, odds -> true)),
            ProgressListener.NONE));
    List<JourneyStudy.InterimLook> two =
        List.of(
            new JourneyStudy.InterimLook(2, odds -> false),
            new JourneyStudy.InterimLook(4, odds -> true));
    assertSameBits(
        STUDY.run(SETTINGS.withPoints(4), ProgressListener.NONE),
        STUDY.run(SETTINGS, two, ProgressListener.NONE));
  }

  /** Runs one by one, held against limits by their definition. */
  @Test
  void oddsAreCounts() {
    Range alarm = Animals.CORN_SNAKE.tolerance().band(Limit.ALARM).range();
    double[] times = CONDENSED.times();
    int journeys = SETTINGS.journeys();
    int[] within = new int[4];
    int tooCold = 0;
    int tooHot = 0;
    List<Double> margins = new ArrayList<>();
    for (int replicate = 0; replicate < 16; replicate++) {
      SobolPoints points = new SobolPoints(UNCERTAIN.count(), 9, replicate);
      double[] point = new double[UNCERTAIN.count()];
      for (int index = 0; index < 8; index++) {
        points.point(index, point);
        Draft draft = UNCERTAIN.at(point);
        double[][] all = CONDENSED.run(draft.variation()).temperatures();
        double margin = Double.POSITIVE_INFINITY;
        double first = Double.POSITIVE_INFINITY;
        boolean hot = false;
        for (int animal = 0; animal < 2; animal++) {
          double[] values = all[animal];
          for (int row = 0; row < times.length; row++) {
            values[row] += CORRECTION[animal][row] + draft.shift();
          }
          for (int row = 0; row < times.length; row++) {
            // half an hour between times: the mean of an hour over three of them
            double mean =
                row == 0
                    ? values[0]
                    : row == 1
                        ? (values[0] + values[1]) / 2
                        : (values[row - 2] + 2 * values[row - 1] + values[row]) / 4;
            hot |= mean > alarm.high() && times[row] <= OPENING;
            if (mean < alarm.low()) {
              first = Math.min(first, times[row]);
            }
            margin = times[row] <= OPENING ? Math.min(margin, mean - alarm.low()) : margin;
          }
        }
        margins.add(margin);
        tooCold += first <= OPENING ? 1 : 0;
        tooHot += hot ? 1 : 0;
        for (int hours = 0; hours < 4; hours++) {
          within[hours] += first > OPENING + hours * HOUR ? 1 : 0;
        }
      }
    }
    assertEquals(0, tooHot);
    assertTrue(tooCold > journeys / 20 && within[3] > 0, tooCold + " " + Arrays.toString(within));
    assertEquals(1 - tooCold / (double) journeys, RESULT.notTooCold().within(), 1e-12);
    assertEquals(1, RESULT.notTooHot().within());
    assertEquals(3, RESULT.longestDelay());
    for (int hours = 0; hours < 4; hours++) {
      assertEquals(within[hours] / (double) journeys, RESULT.withinUntil(hours).within(), 1e-12);
    }
    assertTrue(within[3] < within[0], "a delay costs");
    double[] sorted = margins.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    for (double share : new double[] {0.25, 0.5, 0.75}) {
      int rank = (int) Math.ceil(share * journeys) - 1;
      assertEquals(sorted[rank], RESULT.coldMargin(share), 0.011);
    }
  }

  /** The same journeys by the whole model, run by run. */
  @Test
  void theWholeModelHasTheSameOdds() {
    double[][] none = new double[2][CONDENSED.times().length];
    StudySettings few = SETTINGS.withPoints(2);
    StudyResult condensed =
        JourneyStudy.of(PARCEL, CONDENSED, OPENING, UNCERTAIN, none, none)
            .run(few, ProgressListener.NONE);
    StudyResult direct =
        JourneyStudy.direct(MODEL, HELD, OPENING, UNCERTAIN).run(few, ProgressListener.NONE);
    assertEquals(32, direct.journeys());
    double error = 0.02 + 2 * CONDENSED.error();
    for (double share : new double[] {0.05, 0.5, 0.95}) {
      assertEquals(direct.coldMargin(share), condensed.coldMargin(share), error);
      assertEquals(direct.hotMargin(share), condensed.hotMargin(share), error);
    }
    assertEquals(direct.within().within(), condensed.within().within(), 1 / 32.0);
    assertArrayEquals(
        direct.temperatures("corner", 0.5), condensed.temperatures("corner", 0.5), 0.1 + error);
  }

  @Test
  void aNominalRunIsJudgedWithItsCorrection() {
    double[][] correction = new double[2][CONDENSED.times().length];
    for (double[] row : correction) {
      Arrays.fill(row, 0.7);
    }
    JourneyStudy warmer = JourneyStudy.of(PARCEL, CONDENSED, OPENING, UNCERTAIN, correction, NONE);
    // a study never changes
    correction[1][8] = -9;
    Fate whole =
        JourneyStudy.fate(
            MODEL.parcel(),
            MODEL.storedTimes(HELD),
            MODEL.journeyMeans(HELD, Variation.NOMINAL),
            OPENING);
    assertEquals(whole.cold().margin() + 0.7, warmer.fate(Variation.NOMINAL).cold().margin(), 0.02);
  }

  @Test
  void aListenerIsToldOfEveryJourneyAndStopsThem() {
    List<Double> seen = new ArrayList<>();
    STUDY.run(
        SETTINGS,
        (done, total) -> {
          assertEquals(128, total);
          seen.add(done);
          return ProgressListener.Signal.CONTINUE;
        });
    assertEquals(128, seen.size());
    assertEquals(128, seen.stream().distinct().count());
    List<Double> few = new ArrayList<>();
    CancellationException stop =
        assertThrows(
            CancellationException.class,
            () ->
                STUDY.run(
                    SETTINGS,
                    (done, total) -> {
                      few.add(done);
                      return done >= 5
                          ? ProgressListener.Signal.STOP
                          : ProgressListener.Signal.CONTINUE;
                    }));
    assertTrue(few.size() < 10, "no thread goes on: " + few);
    assertTrue(stop.getMessage().matches("stopped by the listener after [5-9] of 128 journeys"));
    IllegalStateException own = new IllegalStateException("own");
    assertSame(
        own,
        assertThrows(
            IllegalStateException.class,
            () ->
                STUDY.run(
                    SETTINGS,
                    (done, total) -> {
                      assertFalse(done > 5, "told nothing after it has thrown");
                      if (done == 5) {
                        throw own;
                      }
                      return ProgressListener.Signal.CONTINUE;
                    })));
  }

  @Test
  void aStopAfterTheLastJourneyIsAStop() {
    assertThrows(
        CancellationException.class,
        () ->
            STUDY.run(
                SETTINGS,
                (done, total) ->
                    done == total
                        ? ProgressListener.Signal.STOP
                        : ProgressListener.Signal.CONTINUE));
  }

  @Test
  void anInterruptStopsIt() {
    for (int threads : new int[] {1, 3}) {
      Thread.currentThread().interrupt();
      CancellationException stop =
          assertThrows(
              CancellationException.class,
              () -> STUDY.run(new StudySettings(16, 8, 9, threads), ProgressListener.NONE));
      assertTrue(Thread.interrupted(), "the interrupt must stay visible");
      assertEquals("interrupted after 0 of 128 journeys", stop.getMessage());
    }
  }

  @Test
  void itRefusesWhatCannotBeJudged() {
    assertThrows(
        InvalidInputException.class,
        () -> JourneyStudy.of(PARCEL, CONDENSED, OPENING, UNCERTAIN, new double[2][3], NONE));
    assertThrows(
        InvalidInputException.class,
        () -> JourneyStudy.of(PARCEL, CONDENSED, OPENING, UNCERTAIN, CORRECTION, new double[2][3]));
    double[][] ragged = {CORRECTION[0], new double[3]};
    assertThrows(
        InvalidInputException.class,
        () -> JourneyStudy.of(PARCEL, CONDENSED, OPENING, UNCERTAIN, ragged, NONE));
    assertThrows(
        InvalidInputException.class,
        () ->
            JourneyStudy.of(
                PARCEL,
                CONDENSED,
                OPENING,
                UNCERTAIN,
                new double[0][CONDENSED.times().length],
                NONE));
    Container cup = PARCEL.containers().get(0);
    Parcel empty =
        Packings.parcel(
            List.of(Container.empty(cup.name(), cup.vessel(), cup.position())), List.of());
    assertThrows(
        InvalidInputException.class,
        () -> JourneyStudy.of(empty, CONDENSED, OPENING, UNCERTAIN, CORRECTION, NONE));
    assertThrows(InvalidInputException.class, () -> RESULT.withinUntil(4));
    assertThrows(InvalidInputException.class, () -> RESULT.withinUntil(-1));
    assertThrows(InvalidInputException.class, () -> RESULT.coldMargin(1.1));
    assertThrows(InvalidInputException.class, () -> RESULT.temperatures("pot", 0.5));
  }

  @Test
  void settingsAreChecked() {
    assertEquals(512, StudySettings.standard(1, 2).journeys());
    for (int[] bad :
        new int[][] {
          {15, 8, 1}, {1025, 8, 1}, {16, 0, 1}, {16, 12, 1}, {16, 131_072, 1}, {16, 8, 0}
        }) {
      assertThrows(InvalidInputException.class, () -> new StudySettings(bad[0], bad[1], 1, bad[2]));
    }
  }

  /** Reports ask for them row by row. */
  @Test
  void sharesAreFittedOnce() {
    assertTrue(RESULT.shares(true).isPresent());
    assertSame(RESULT.shares(true), RESULT.shares(true));
    assertSame(RESULT.shares(false), RESULT.shares(false));
  }

  @Test
  void bandsAreOrderedAndTheTightestMomentIsTheirs() {
    double[] low = RESULT.temperatures("corner", 0.05);
    double[] middle = RESULT.temperatures("corner", 0.5);
    double[] high = RESULT.temperatures("corner", 0.95);
    for (int row = 0; row < low.length; row++) {
      assertTrue(low[row] <= middle[row] && middle[row] <= high[row]);
    }
    assertEquals(List.of("middle", "corner"), RESULT.cups());
    // it cools until the opening and starts warmest
    assertEquals(OPENING, RESULT.tightest(true));
    assertEquals(0, RESULT.tightest(false), HOUR);
  }

  /** Each of 128 journeys takes a second of the clock. */
  @Test
  void aStudyIsRefusedByTheTimeOfItsFirstJourneys() {
    AtomicLong clock = new AtomicLong();
    AtomicInteger run = new AtomicInteger();
    ProgressListener second =
        (done, total) -> {
          run.incrementAndGet();
          clock.addAndGet(1_000_000_000);
          return ProgressListener.Signal.CONTINUE;
        };
    StudyResult fits =
        new TimeBudget(128, clock::get)
            .within("Fewer journeys.", second, listener -> STUDY.run(SETTINGS, listener));
    assertSameBits(RESULT, fits);
    run.set(0);
    TimeBudget tight = new TimeBudget(127, clock::get);
    String message =
        assertThrows(
                InvalidInputException.class,
                () ->
                    tight.within(
                        "Fewer journeys.", second, listener -> STUDY.run(SETTINGS, listener)))
            .getMessage();
    assertTrue(message.contains("would be about 3 min, as the first 5 % tell"), message);
    assertTrue(run.get() < 12, run + " of 128 journeys");
  }
}
