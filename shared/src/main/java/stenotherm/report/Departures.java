package stenotherm.report;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.Workers;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Departure;
import stenotherm.decision.Outlook;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.DailyTable;
import stenotherm.scenario.OtherWeather;
import stenotherm.scenario.Scenario;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;
import stenotherm.weather.DayExtremes;
import stenotherm.words.Figures;

/**
 * Sends a packing on each of several days, with and without its warmers.
 *
 * <p>Experimental. The methods may be called by many threads at a time.
 */
public final class Departures {
  /**
   * How much more a forecast is off for each day that it looks further ahead, as a central 90 %
   * [K]: assumed. From memory, errors of daily highs and lows grow from about 2 K to about 4 K
   * (root mean square) within a week.
   */
  public static final double ERROR_PER_DAY = 0.6;

  /** Replicates of a study, the fewest that tell an interval. */
  private static final int REPLICATES = 16;

  private static final int FEW_POINTS = 1;

  /** As many journeys of each day as a comparison runs, lest its level be another. */
  private static final int POINTS = StudySettings.standard(AssessmentSettings.SEED, 1).points();

  /** So many journeys take as long as making a packing ready: measured, roughly. */
  private static final double READY = 2000;

  /** So many journeys take as long as what a day needs beside its journeys: likewise. */
  private static final double OF_DAY = 30;

  /** One recorded day of so many is sent first. */
  private static final int EARLY = 7;

  private final Scenario scenario;
  private final List<Packed> packings;
  private final TransitSettings settings;
  private final int threads;
  private final Comparison.Watcher watcher;
  private final Thread caller = Thread.currentThread();
  private final double duration;

  /** Cautions of the runs that span the days. */
  private final Set<String> ofRuns = new LinkedHashSet<>();

  private Departures(
      Scenario scenario,
      Parcel packing,
      TransitSettings settings,
      int threads,
      Comparison.Watcher watcher) {
    this.scenario = scenario;
    this.packings = new ArrayList<>();
    packings.add(new Packed(packing, false));
    if (!packing.warmers().isEmpty()) {
      packings.add(new Packed(packing.withoutWarmers(), true));
    }
    this.settings = settings;
    this.threads = threads;
    this.watcher = watcher;
    this.duration = scenario.journey().duration();
  }

  /**
   * Ranks the days of a forecast. Its first day is taken for the day on which it was made.
   *
   * @param scenario the scenario
   * @param packing one of its packings
   * @param forecast lows and highs at both ends
   * @param errorPerDay how much more the forecast is off for each day further ahead [K]
   * @param settings how finely
   * @param threads how many days at a time; results are the same for any
   * @param watcher told how far the work is
   * @return the days, best first
   * @throws InvalidInputException if the forecast is too short for the journey
   * @throws CancellationException if the watcher or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static RankedDays rank(
      Scenario scenario,
      Parcel packing,
      DailyTable forecast,
      double errorPerDay,
      TransitSettings settings,
      int threads,
      Comparison.Watcher watcher) {
    Departures work = new Departures(scenario, packing, settings, threads, watcher);
    List<OtherWeather> days = new ArrayList<>();
    List<LocalDate> left = new ArrayList<>();
    for (LocalDate day = forecast.first(); !day.isAfter(forecast.last()); day = day.plusDays(1)) {
      if (day.plusDays(work.daysOnTheWay()).isAfter(forecast.last())) {
        left.add(day);
      } else {
        double ahead = day.toEpochDay() - forecast.first().toEpochDay();
        double spread = OtherWeather.FORECAST_SPREAD + errorPerDay * ahead;
        double later = spread + errorPerDay * work.daysOnTheWay();
        days.add(
            new OtherWeather(
                day,
                new OtherWeather.EndWeather(forecast.first(), forecast.origin(), spread),
                new OtherWeather.EndWeather(forecast.first(), forecast.destination(), later)));
      }
    }
    if (days.isEmpty()) {
      throw new InvalidInputException(
          "forecast",
          "has "
              + days(forecast.origin().size())
              + ", too few: the journey ends "
              + days(work.daysOnTheWay())
              + " after it begins");
    }
    List<Journey> journeys = work.journeys(days);
    double all = READY + days.size() * (ofDay(FEW_POINTS) + ofDay(POINTS));
    double fewDone = (READY + days.size() * ofDay(FEW_POINTS)) / all;
    List<Outlook> ready = work.ready(journeys, READY / all);
    List<List<Departure>> few = work.of(ready, journeys, FEW_POINTS, READY / all, fewDone);
    boolean isHopeless =
        few.stream()
            .flatMap(List::stream)
            .allMatch(departure -> departure.odds().within().within() == 0);
    watcher.soFar(
        "Roughly: "
            + (isHopeless
                ? "on none of these days does a single one of "
                    + REPLICATES * FEW_POINTS
                    + " journeys go well."
                : RankedDays.best(few, work.packings, new Figures(scenario.units()))));
    List<List<Departure>> rows = work.of(ready, journeys, POINTS, fewDone, 1);
    List<RankedDays.Day> ranked = new ArrayList<>();
    for (int day = 0; day < days.size(); day++) {
      LocalDate sealed = days.get(day).sealed();
      int number = Math.toIntExact(sealed.toEpochDay() - forecast.first().toEpochDay());
      ranked.add(
          new RankedDays.Day(
              forecast.origin().get(number),
              forecast.destination().get(number + work.daysOnTheWay()),
              days.get(day).origin().spread(),
              rows.get(day)));
    }
    ranked.sort(Comparator.comparingDouble(day -> -day.best().odds().within().low()));
    return new RankedDays(scenario, work.packings, ranked, left, errorPerDay, work.cautions());
  }

  /**
   * Sends a packing on every day of a record that falls in certain months.
   *
   * @param scenario the scenario
   * @param packing one of its packings
   * @param origin recorded days where it is sent from
   * @param destination recorded days where it is sent to
   * @param months the months
   * @param settings how finely
   * @param threads how many days at a time; results are the same for any
   * @param watcher told how far the work is
   * @return what came of it, by month
   * @throws InvalidInputException if the records have no common days, or too few
   * @throws CancellationException if the watcher or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static ReplayedDays replay(
      Scenario scenario,
      Parcel packing,
      List<DayExtremes> origin,
      List<DayExtremes> destination,
      Set<Month> months,
      TransitSettings settings,
      int threads,
      Comparison.Watcher watcher) {
    Departures work = new Departures(scenario, packing, settings, threads, watcher);
    List<Journey> journeys =
        scenario.plan().onRecordedDays(origin, destination, day -> months.contains(day.getMonth()));
    if (journeys.isEmpty()) {
      throw new InvalidInputException(
          "recorded days",
          "the records of both ends share none of these months, or too few for the journey: "
              + span(origin)
              + " and "
              + span(destination));
    }
    List<List<Departure>> rows = work.fewFirst(journeys);
    return new ReplayedDays(scenario, work.packings, rows, work.cautions());
  }

  /** A number of days. */
  static String days(int number) {
    return number + (number == 1 ? " day" : " days");
  }

  /** From when to when a record goes. */
  private static String span(List<DayExtremes> days) {
    return days.get(0).date() + " to " + days.get(days.size() - 1).date();
  }

  /** Calendar days from sealing to opening. */
  private int daysOnTheWay() {
    LocalDate sealed = scenario.journey().sealing().toLocalDate();
    LocalDate opened = scenario.journey().sealing().plusSeconds((long) duration).toLocalDate();
    return Math.toIntExact(opened.toEpochDay() - sealed.toEpochDay());
  }

  private List<Journey> journeys(List<OtherWeather> days) {
    return days.stream().map(scenario.plan()::in).toList();
  }

  /** What a day takes, in journeys. */
  private static double ofDay(int points) {
    return OF_DAY + REPLICATES * points;
  }

  /** The packings, ready for some journeys; so much of all is done then. */
  private List<Outlook> ready(List<Journey> journeys, double done) {
    List<Journey> span = Outlook.span(journeys);
    // all threads for each: the last packing is not left with one
    AssessmentSettings how =
        new AssessmentSettings(settings.withThreads(threads), scenario.longestHold());
    Outlook[] ready = new Outlook[packings.size()];
    double[] parts = new double[ready.length];
    new Workers(threads)
        .run(
            ready.length,
            (worker, index) ->
                ready[index] =
                    Outlook.of(
                        packings.get(index).parcel(),
                        span,
                        how,
                        (part, of) -> {
                          // one at a time, lest an earlier sum is told later
                          synchronized (parts) {
                            parts[index] = done * part / of / ready.length;
                            return report(Arrays.stream(parts).sum());
                          }
                        }));
    for (Outlook outlook : ready) {
      span.forEach(journey -> ofRuns.addAll(outlook.nominal(journey).cautions()));
    }
    return List.of(ready);
  }

  /** Days by days, packings by packings: some that are spread evenly first, for an early answer. */
  private List<List<Departure>> fewFirst(List<Journey> journeys) {
    double all = READY + journeys.size() * ofDay(FEW_POINTS);
    List<Outlook> ready = ready(journeys, READY / all);
    List<Journey> early = new ArrayList<>();
    List<Journey> late = new ArrayList<>();
    for (int day = 0; day < journeys.size(); day++) {
      (day % EARLY == 0 ? early : late).add(journeys.get(day));
    }
    double after = (READY + early.size() * ofDay(FEW_POINTS)) / all;
    List<List<Departure>> first = of(ready, early, FEW_POINTS, READY / all, after);
    watcher.soFar(
        "Roughly, by every "
            + EARLY
            + "th day: "
            + new ReplayedDays(scenario, packings, first, List.of()).headline());
    List<List<Departure>> others = of(ready, late, FEW_POINTS, after, 1);
    List<List<Departure>> rows = new ArrayList<>();
    for (int day = 0; day < journeys.size(); day++) {
      rows.add(day % EARLY == 0 ? first.get(day / EARLY) : others.get(day - day / EARLY - 1));
    }
    return rows;
  }

  /** Days by days, packings by packings. */
  private List<List<Departure>> of(
      List<Outlook> ready, List<Journey> journeys, int points, double from, double to) {
    StudySettings many = new StudySettings(REPLICATES, points, AssessmentSettings.SEED, threads);
    List<List<Departure>> rows = new ArrayList<>();
    journeys.forEach(journey -> rows.add(new ArrayList<>()));
    for (int packing = 0; packing < ready.size(); packing++) {
      double start = from + (to - from) * packing / ready.size();
      double share = (to - from) / ready.size();
      ProgressListener listener = (done, total) -> report(start + share * done / total);
      List<Departure> found =
          points == FEW_POINTS
              ? Departure.roughly(ready.get(packing), journeys, many, listener)
              : Departure.all(ready.get(packing), journeys, many, listener);
      for (int day = 0; day < found.size(); day++) {
        rows.get(day).add(found.get(day));
      }
    }
    return rows;
  }

  private ProgressListener.Signal report(double share) {
    return caller.isInterrupted() ? ProgressListener.Signal.STOP : watcher.progress(share, 1);
  }

  private List<String> cautions() {
    return Cautions.of(scenario, packings.get(0).parcel(), List.copyOf(ofRuns));
  }

  /** Which packing fares best on a day: that without a warmer where it is no worse. */
  static int best(List<Departure> day) {
    int best = 0;
    for (int packing = 1; packing < day.size(); packing++) {
      Odds here = day.get(packing).odds().within();
      Odds there = day.get(best).odds().within();
      // a few journeys leave lower ends of 0 to many days
      boolean noWorse =
          here.low() > there.low()
              || (here.low() == there.low() && here.within() >= there.within());
      best = noWorse ? packing : best;
    }
    return best;
  }

  /** How a packing of a question about one of them is called in a sentence. */
  static String named(Packed packed) {
    return packed.stripped()
        ? "without its warmer"
        : packed.parcel().warmers().isEmpty() ? "as it is packed" : "with its warmer";
  }
}
