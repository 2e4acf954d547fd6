package stenotherm.report;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.FirstLook;
import stenotherm.decision.Lows;
import stenotherm.decision.OddsMap;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.JourneyPlan;
import stenotherm.scenario.OtherWeather;
import stenotherm.scenario.Scenario;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;
import stenotherm.words.Figures;

/**
 * Where a packing holds: the map of its odds over the overnight lows at both ends, with and without
 * its warmers.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param scenario where packing and journey come from
 * @param question what was asked
 * @param map the odds of the packing as the scenario has it
 * @param stripped the odds without its warmers; empty if it has none
 */
public record MapReport(
    Scenario scenario, Question question, OddsMap map, Optional<OddsMap> stripped)
    implements Answer {
  /** The page; it works offline and without scripts. */
  public static final String PAGE = "map.html";

  /** Answer, lines and odds in SI units, as JSON. */
  public static final String SUMMARY = "map.json";

  /** The odds in SI units, as CSV. */
  public static final String ODDS = "map.csv";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, SUMMARY, ODDS);

  /** 16 scramblings of 8 points each: 128 journeys at all lows. */
  private static final int REPLICATES = 16;

  private static final int POINTS = 8;

  /**
   * By how much days are warmer than nights.
   *
   * @param origin where the parcel is sent from [K], above 0
   * @param destination where it is sent to [K], above 0
   */
  public record DailyRanges(double origin, double destination) {
    /**
     * Checks the numbers.
     *
     * @throws InvalidInputException if one is not above 0
     */
    public DailyRanges {
      Checks.positive("daily range at the origin", origin, "K");
      Checks.positive("daily range at the destination", destination, "K");
    }

    /**
     * Says it.
     *
     * @param figures writes the differences
     * @return such as "18 F° warmer", or one for each end
     */
    public String words(Figures figures) {
      String from = figures.difference(origin);
      String to = figures.difference(destination);
      return from.equals(to)
          ? from + " warmer"
          : from + " warmer at the origin and " + to + " at the destination";
    }
  }

  /**
   * What is asked.
   *
   * @param packing the packing, with its warmers
   * @param lows lows at either end [K]
   * @param dailyRanges by how much days are warmer than nights
   * @param nodes lows that are run at each end; in between odds are interpolated
   */
  public record Question(Parcel packing, Range lows, DailyRanges dailyRanges, int nodes) {
    /** Checks that the daily ranges are given. */
    public Question {
      Checks.given("daily ranges", dailyRanges);
    }
  }

  /**
   * Makes both maps.
   *
   * @param scenario where packing and journey come from
   * @param question what is asked
   * @param settings how finely
   * @param threads work done at a time
   * @param watcher told how far the work is
   * @return what came out
   * @throws InvalidInputException if the journey does not depend on the weather, something melts in
   *     the packing, or a number is out of its range
   * @throws java.util.concurrent.CancellationException if the calling thread was interrupted, or
   *     the watcher stopped it
   * @throws IllegalStateException if a run failed
   */
  public static MapReport run(
      Scenario scenario,
      Question question,
      TransitSettings settings,
      int threads,
      Comparison.Watcher watcher) {
    StudySettings many = new StudySettings(REPLICATES, POINTS, AssessmentSettings.SEED, threads);
    AssessmentSettings how =
        new AssessmentSettings(settings.withThreads(threads), scenario.longestHold(), many);
    OddsMap.Extent extent = new OddsMap.Extent(question.lows(), question.lows(), question.nodes());
    Function<Lows, Journey> journeys = lows -> journey(scenario, question, lows);
    Packed packed = new Packed(question.packing(), false);
    boolean warmed = !question.packing().warmers().isEmpty();
    MapWords words = new MapWords(new Figures(scenario.units()));
    int parts = warmed ? 2 : 1;
    OddsMap map =
        OddsMap.of(
            packed.parcel(), extent, journeys, how, listener(packed, words, watcher, 0, parts));
    Packed bare = new Packed(question.packing().withoutWarmers(), true);
    Optional<OddsMap> stripped =
        warmed
            ? Optional.of(
                OddsMap.of(
                    bare.parcel(), extent, journeys, how, listener(bare, words, watcher, 1, parts)))
            : Optional.empty();
    return new MapReport(scenario, question, map, stripped);
  }

  /**
   * Reads the answer of a map made earlier.
   *
   * @param file the file {@link #SUMMARY} of that map
   * @param scenario the scenario that it must be of
   * @param packing the packing that it must be of
   * @return the answer in a sentence, with the daily range that it holds for
   * @throws IOException if the file cannot be read
   * @throws InvalidInputException if it is no map, or one of something else
   */
  public static String answerIn(Path file, Scenario scenario, Parcel packing) throws IOException {
    return MapData.answerIn(file, scenario, packing.name());
  }

  /** The journey of the scenario with these lows, its days warmer by the daily ranges. */
  private static Journey journey(Scenario scenario, Question question, Lows lows) {
    return scenario
        .plan()
        .in(
            new OtherWeather(
                scenario.journey().sealing().toLocalDate(),
                end(lows.origin(), question.dailyRanges().origin()),
                end(lows.destination(), question.dailyRanges().destination())));
  }

  private static OtherWeather.EndWeather end(double low, double dailyRange) {
    return OtherWeather.EndWeather.daily(
        new Range(low, low + dailyRange), OtherWeather.FORECAST_SPREAD);
  }

  private static OddsMap.Listener listener(
      Packed packed, MapWords words, Comparison.Watcher watcher, int part, int parts) {
    return new OddsMap.Listener() {
      @Override
      public Signal progress(double done, double total) {
        return watcher.progress(part + done / total, parts);
      }

      @Override
      public void firstLooks(List<Double> lows, List<FirstLook> looks) {
        watcher.soFar(words.firstLook(packed, lows, looks));
      }
    };
  }

  /** Tells whether a low at either end alone changes the air of a leg. */
  boolean matters(boolean atOrigin) {
    double low = question.lows().low();
    double high = question.lows().high();
    Journey usual = journey(scenario, question, Lows.equal(low));
    Journey other =
        journey(scenario, question, atOrigin ? new Lows(high, low) : new Lows(low, high));
    for (int leg = 0; leg < usual.legs().size(); leg++) {
      double middle = (usual.start(leg) + usual.start(leg + 1)) / 2;
      double change =
          other.legs().get(leg).surroundings().ambient().at(middle)
              - usual.legs().get(leg).surroundings().ambient().at(middle);
      if (Math.abs(change) > 0.01) {
        return true;
      }
    }
    return false;
  }

  /** The lows of the file, if it states one for each end, all days alike, and the map has them. */
  Optional<Lows> ownLows() {
    List<JourneyPlan.StatedWeather> ends = scenario.plan().weather();
    boolean areStated =
        ends.size() == 2
            && ends.stream().allMatch(end -> end.days().stream().distinct().count() == 1);
    if (!areStated) {
      return Optional.empty();
    }
    Lows own = new Lows(ends.get(0).days().get(0).low(), ends.get(1).days().get(0).low());
    Range covered = question.lows();
    return covered.contains(own.origin()) && covered.contains(own.destination())
        ? Optional.of(own)
        : Optional.empty();
  }

  /** The packing with what belongs to it, and without its warmers where it was run so, too. */
  Map<Packed, OddsMap> maps() {
    Map<Packed, OddsMap> all = new LinkedHashMap<>();
    all.put(new Packed(map.parcel(), false), map);
    stripped.ifPresent(each -> all.put(new Packed(each.parcel(), true), each));
    return all;
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    MapPage page = new MapPage(this);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, page.html(pictures));
    files.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    files.put(ODDS, MapData.odds(this));
    return files;
  }

  @Override
  public String json() {
    return MapData.summary(this);
  }

  @Override
  public void print(PrintWriter out) {
    new MapPage(this).print(out);
  }
}
