package stenotherm.decision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.stream.IntStream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudySettings;
import stenotherm.study.Trace;
import stenotherm.study.Uncertainties;

/**
 * Where a packing holds: its odds over the overnight lows at both ends of a journey.
 *
 * <p>The same points of what is uncertain are run at each node of a grid over the lows. In between,
 * the temperatures of each of these journeys are interpolated, moment by moment, and judged: so
 * odds at any lows cost no run. {@link #error} tells by how much that misses runs in between.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class OddsMap {
  /** Lows in between at which runs are held against what is interpolated. */
  private static final int CHECKED = 4;

  /** First pieces of a straight way, on each of which a level is crossed once at most. */
  private static final int PIECES = 24;

  /** Halvings of a piece: of 42 K to two thousandths of a kelvin. */
  private static final int HALVINGS = 10;

  /** Typical journeys of a first look. */
  private static final int TYPICAL = 9;

  /** So many journeys take as long as making the packing ready: measured, roughly. */
  private static final double READY = 2000;

  private static final Range GRIDS = new Range(2, 33);

  private final Extent extent;
  private final Parcel parcel;
  private final StudySettings many;
  private final JourneyStudy judge;
  private final double opening;
  private final List<String> cautions;

  /** The journeys at each of the lows that were run, in the order of the grid. */
  private final List<List<Trace>> nodes;

  private final double error;

  /** Is told how much is done, on any thread but on one at a time, and may stop it. */
  public interface Listener extends ProgressListener {
    /**
     * Told within seconds how typical journeys go, computed roughly.
     *
     * @param lows their lows, the same at both ends, ascending [K]; none if the ranges at both ends
     *     share none
     * @param looks how each goes
     */
    default void firstLooks(List<Double> lows, List<FirstLook> looks) {}
  }

  /**
   * What a map is to span.
   *
   * @param origin lows where the parcel is sent from [K]
   * @param destination lows where it is sent to [K]
   * @param side lows run at each end, evenly spread, 2 to 33; odds at others are interpolated
   */
  public record Extent(Range origin, Range destination, int side) {
    /**
     * Checks the numbers.
     *
     * @throws InvalidInputException if a range has no length, or the side is out of its range
     */
    public Extent {
      requireLength("lows at the origin", origin);
      requireLength("lows at the destination", destination);
      Checks.within("lows run at each end", side, GRIDS, "", "5 suit most maps.");
    }

    private static void requireLength(String field, Range range) {
      Checks.temperature(field, Checks.given(field, range).low());
      Checks.temperature(field, range.high());
      if (!(range.low() < range.high())) {
        throw new InvalidInputException(
            field, "from " + range.low() + " to " + range.high() + " K must span a range");
      }
    }

    /** Some lows that span the map evenly. */
    private List<Lows> grid(int many) {
      List<Lows> all = new ArrayList<>();
      for (int i = 0; i < many; i++) {
        for (int j = 0; j < many; j++) {
          all.add(new Lows(at(origin, i, many), at(destination, j, many)));
        }
      }
      return all;
    }

    /** Lows that both ends may have, spread evenly, ascending [K]; none if they share no range. */
    private List<Double> equalLows(int many) {
      double low = Math.max(origin.low(), destination.low());
      double high = Math.min(origin.high(), destination.high());
      return low < high
          ? IntStream.range(0, many).mapToObj(n -> at(new Range(low, high), n, many)).toList()
          : List.of();
    }

    private static double at(Range range, int number, int many) {
      double share = number / (many - 1.0);
      // both ends as they were given
      return (1 - share) * range.low() + share * range.high();
    }
  }

  private OddsMap(Work work, List<List<Trace>> nodes, double error) {
    this.extent = work.extent;
    this.parcel = work.packing.parcel();
    this.many = work.many;
    this.judge = work.judge;
    this.opening = work.usual.duration();
    this.cautions = List.copyOf(work.packing.nominal(work.usual).cautions());
    this.nodes = nodes;
    this.error = error;
  }

  /**
   * Makes a map.
   *
   * @param parcel the packing
   * @param extent the lows
   * @param journeys makes the journey with certain lows; all alike but for their weather, and what
   *     is uncertain the same in all
   * @param settings mesh, time steps and solver, number of journeys and threads; journeys end at
   *     their opening
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return the map
   * @throws InvalidInputException if no container holds an animal, or journeys are not alike
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static OddsMap of(
      Parcel parcel,
      Extent extent,
      Function<Lows, Journey> journeys,
      AssessmentSettings settings,
      Listener listener) {
    Checks.given("extent", extent);
    Checks.given("journeys", journeys);
    Checks.given("settings", settings);
    Checks.given("listener", listener);
    Checks.given("parcel", parcel);
    Work work = new Work(parcel, extent, journeys, settings, listener);
    List<Lows> all = extent.grid(extent.side());
    double nodesDone = work.ready + (1 - work.ready) * all.size() / (all.size() + CHECKED);
    OddsMap unchecked = new OddsMap(work, work.runs(all, work.ready, nodesDone), 0);
    List<Lows> between =
        extent.grid(2 * extent.side() - 1).stream()
            .filter(lows -> !all.contains(lows))
            .sorted(Comparator.comparingDouble(unchecked::worth).reversed())
            .limit(CHECKED)
            .toList();
    List<List<Trace>> direct = work.runs(between, nodesDone, 1);
    double largest = 0;
    for (int n = 0; n < between.size(); n++) {
      double interpolated = unchecked.share(unchecked.between(between.get(n)));
      largest = Math.max(largest, Math.abs(unchecked.share(direct.get(n)) - interpolated));
    }
    return new OddsMap(work, unchecked.nodes, largest);
  }

  /** A packing made ready, and its runs. */
  private static final class Work {
    private final Extent extent;
    private final Function<Lows, Journey> journeys;
    private final StudySettings many;
    private final WatchedWorkers workers;
    private final Journey usual;
    private final Outlook packing;
    private final JourneyStudy judge;

    /** Part of the work that makes the packing ready. */
    private final double ready;

    Work(
        Parcel parcel,
        Extent extent,
        Function<Lows, Journey> journeys,
        AssessmentSettings settings,
        Listener listener) {
      this.extent = extent;
      this.journeys = journeys;
      this.many = settings.study();
      this.workers = new WatchedWorkers(many.workers(), listener);
      List<Lows> middleAndCorners = new ArrayList<>();
      middleAndCorners.add(extent.grid(3).get(4));
      middleAndCorners.addAll(extent.grid(2));
      List<Journey> span = middleAndCorners.stream().map(journeys).toList();
      this.usual = span.get(0);
      // all that will be run: the nodes, and what lies in the middle between them
      requireAlike(parcel, extent.grid(2 * extent.side() - 1).stream().map(journeys).toList());
      Assessor assessor = new Assessor(parcel, span, settings);
      List<Double> lows = extent.equalLows(TYPICAL);
      listener.firstLooks(
          lows,
          lows.stream().map(each -> assessor.firstLook(journeys.apply(Lows.equal(each)))).toList());
      double runs = extent.side() * extent.side() + CHECKED;
      this.ready = READY / (READY + runs * many.journeys());
      this.packing = assessor.outlook((part, of) -> listener.progress(ready * part / of, 1));
      this.judge = packing.study(usual);
    }

    /** Runs all journeys with some lows; the threads share the lows. */
    List<List<Trace>> runs(List<Lows> all, double from, double to) {
      StudySettings alone = new StudySettings(many.replicates(), many.points(), many.seed(), 1);
      List<List<Trace>> traces = new ArrayList<>(Collections.nCopies(all.size(), List.<Trace>of()));
      workers.each(
          all.size(),
          from,
          to,
          index -> traces.set(index, packing.study(journeys.apply(all.get(index))).traces(alone)));
      return List.copyOf(traces);
    }

    /** Before anything is run: which takes minutes. */
    private void requireAlike(Parcel parcel, List<Journey> all) {
      List<String> uncertain = uncertain(parcel, usual);
      for (Journey each : all) {
        if (each.duration() != usual.duration()) {
          throw new InvalidInputException(
              "journeys of a map",
              "must all last as long, not "
                  + usual.duration()
                  + " s and "
                  + each.duration()
                  + " s");
        }
        if (!uncertain(parcel, each).equals(uncertain)) {
          throw new InvalidInputException(
              "journeys of a map",
              "must have the same uncertain quantities, not "
                  + uncertain
                  + " and "
                  + uncertain(parcel, each));
        }
      }
    }

    private static List<String> uncertain(Parcel parcel, Journey journey) {
      return Uncertainties.of(parcel, journey, Uncertainties.Ranges.stated(0)).words();
    }
  }

  /** Interpolates each journey between the nodes around some lows. */
  private List<Trace> between(Lows lows) {
    double across = place(extent.origin(), lows.origin());
    double up = place(extent.destination(), lows.destination());
    double right = across - cell(across);
    double above = up - cell(up);
    double[] weights = {
      (1 - right) * (1 - above), (1 - right) * above, right * (1 - above), right * above
    };
    int[] corners = corners(lows);
    return IntStream.range(0, many.journeys())
        .mapToObj(
            journey ->
                Trace.mean(
                    IntStream.of(corners).mapToObj(at -> nodes.get(at).get(journey)).toList(),
                    weights))
        .toList();
  }

  /** The nodes around some lows: below and above on the left, then on the right. */
  private int[] corners(Lows lows) {
    int side = extent.side();
    int first =
        cell(place(extent.origin(), lows.origin())) * side
            + cell(place(extent.destination(), lows.destination()));
    return new int[] {first, first + 1, first + side, first + side + 1};
  }

  private int cell(double place) {
    return Math.min((int) place, extent.side() - 2);
  }

  /** Where a low lies among those that were run, from 0 on. */
  private double place(Range range, double low) {
    return (extent.side() - 1) * (low - range.low()) / (range.high() - range.low());
  }

  private JourneyOdds count(List<Trace> traces) {
    List<Fate> fates = traces.stream().map(judge::fate).toList();
    return JourneyOdds.count(fates, many, opening);
  }

  private double share(List<Trace> traces) {
    return count(traces).within().within();
  }

  /**
   * How much runs at some lows would tell: more where the odds are uncertain, and where they differ
   * between the nodes around.
   */
  private double worth(Lows lows) {
    double here = share(between(lows));
    double least = 1;
    double most = 0;
    for (int corner : corners(lows)) {
      double there = share(nodes.get(corner));
      least = Math.min(least, there);
      most = Math.max(most, there);
    }
    return here * (1 - here) * (most - least);
  }

  /**
   * Finds the odds at some lows.
   *
   * @param lows the lows, within the map
   * @return the odds, interpolated
   * @throws InvalidInputException if they lie outside the map
   */
  public JourneyOdds odds(Lows lows) {
    String hint = "The map ends there.";
    Checks.within("low at the origin", lows.origin(), extent.origin(), "K", hint);
    Checks.within("low at the destination", lows.destination(), extent.destination(), "K", hint);
    return count(between(lows));
  }

  /**
   * Finds where, on a straight way over the map, a level is reached: each end of a stretch by
   * bisection, to less than a thousandth of a twenty-fourth of the way. Stretches and gaps shorter
   * than a twenty-fourth may be missed.
   *
   * @param least the level
   * @param from where the way begins
   * @param to where it ends
   * @return the stretches at that level or better, as shares of the way, 0 to 1
   * @throws InvalidInputException if an end lies outside the map
   */
  public List<Range> stretches(Level least, Lows from, Lows to) {
    DoublePredicate reached = share -> odds(from.towards(to, share)).level().compareTo(least) <= 0;
    List<Range> stretches = new ArrayList<>();
    boolean inside = reached.test(0);
    double start = 0;
    for (int piece = 1; piece <= PIECES; piece++) {
      double end = (double) piece / PIECES;
      if (reached.test(end) != inside) {
        double edge = change(reached, (piece - 1.0) / PIECES, end);
        if (inside) {
          stretches.add(new Range(start, edge));
        }
        start = edge;
        inside = !inside;
      }
    }
    if (inside) {
      stretches.add(new Range(start, 1));
    }
    return stretches;
  }

  /** Where something that differs at two places changes between them. */
  private static double change(DoublePredicate test, double from, double to) {
    double before = from;
    double after = to;
    boolean atStart = test.test(from);
    for (int n = 0; n < HALVINGS; n++) {
      double middle = (before + after) / 2;
      if (test.test(middle) == atStart) {
        before = middle;
      } else {
        after = middle;
      }
    }
    return (before + after) / 2;
  }

  /**
   * Finds from where on, on a straight way over both maps, another packing is better, to its end.
   *
   * @param other the map of the other packing
   * @param from where the way begins
   * @param to where it ends
   * @return share of the way [-], 0 to 1; empty if this one is better, or both are alike, at the
   *     end
   * @throws InvalidInputException if an end lies outside a map
   */
  public OptionalDouble overtaken(OddsMap other, Lows from, Lows to) {
    DoublePredicate better =
        share -> {
          Lows lows = from.towards(to, share);
          return other.odds(lows).within().within() > odds(lows).within().within();
        };
    DoublePredicate worse =
        share -> {
          Lows lows = from.towards(to, share);
          return other.odds(lows).within().within() < odds(lows).within().within();
        };
    int first = PIECES + 1;
    for (int piece = PIECES; piece >= 0 && !worse.test((double) piece / PIECES); piece--) {
      first = better.test((double) piece / PIECES) ? piece : first;
    }
    if (first > PIECES) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        first == 0 ? 0 : change(better, (first - 1.0) / PIECES, (double) first / PIECES));
  }

  /**
   * Returns by how much odds between the lows that were run may be off, as runs in between tell
   * where the odds change most.
   *
   * @return the largest difference of a share of journeys [-]
   */
  public double error() {
    return error;
  }

  /**
   * Returns how many journeys the odds at any lows rest on.
   *
   * @return the number
   */
  public int journeys() {
    return many.journeys();
  }

  /**
   * Returns the packing.
   *
   * @return the packing
   */
  public Parcel parcel() {
    return parcel;
  }

  /**
   * Returns the cautions of a typical journey in the middle of the map.
   *
   * @return sentences
   */
  public List<String> cautions() {
    return cautions;
  }
}
