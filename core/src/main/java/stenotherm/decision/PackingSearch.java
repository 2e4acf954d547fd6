package stenotherm.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Variation;

/**
 * The smallest packing that keeps animals within what they tolerate at odds that are wanted.
 *
 * <p>Candidates that fit together go through a typical, a cold and a hot journey on the coarsest
 * grid; how far they are from failing there is their score. Where more fit than may be tried, every
 * so many of them are taken, in the order of their volume, for half of the tries; a quarter is left
 * for what differs in one thing from the {@value #CHANGED} that look best. Odds on 64 common
 * journeys are then found of {@value #WITH_ODDS}: layer by layer of those that no smaller one beats
 * in its score. While none reaches the wanted odds, those of all that differs in one thing from the
 * best are found, {@value #CLIMBS} times: so what helps together is joined. The {@value #CHECKED}
 * best, the smaller ones that reach the wanted odds first, get odds on the usual grids, and meet
 * the usual mishaps one by one; but none with less than half the odds of the best.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param candidates all that were tried, the smallest first
 * @param checked those checked on the usual grids, the best first: by whether they reach the wanted
 *     odds, then by volume; of those that do not, by odds
 * @param wanted the odds that were wanted [-]
 * @param unfit how many candidates do not fit together
 */
public record PackingSearch(List<Found> candidates, List<Found> checked, double wanted, int unfit) {
  static final int CHANGED = 4;

  static final int CLIMBS = 2;
  static final int WITH_ODDS = 24;
  static final int CHECKED = 6;

  /** Where none reaches the wanted odds, fewer are worth a check. */
  private static final int FEWER = 4;

  private static final Comparator<Found> SMALLEST_AND_PLAINEST =
      Comparator.comparingDouble(Found::volume)
          .thenComparingInt(each -> each.choice().changes().size());

  private static final int POINTS = 4;
  private static final int CHECK_POINTS = 16;

  /**
   * A candidate.
   *
   * @param choice what it is
   * @param shipment the packing and its journey
   * @param margin what is left as stated, on the coarsest grid [K]
   * @param score how many standard deviations it is from failing, roughly [-]; negative infinity if
   *     air fails as stated
   * @param odds odds on the coarsest grid; empty if they were not found
   * @param checked odds on the usual grids; empty if it was not checked
   * @param harms what the usual mishaps do to it one by one with all else as stated, on the
   *     coarsest grid, the worst first; empty if it was not checked
   */
  public record Found(
      PackingChoice choice,
      Remedy.Shipment shipment,
      double margin,
      double score,
      Optional<Odds> odds,
      Optional<Odds> checked,
      List<Harm> harms) {
    /** Copies the list. */
    public Found {
      Checks.given("choice", choice);
      Checks.given("shipment", shipment);
      Checks.given("odds", odds);
      Checks.given("checked", checked);
      harms = List.copyOf(harms);
    }

    /** What nothing is known of yet. */
    private static Found of(PackingChoice choice, Remedy.Shipment shipment) {
      return new Found(
          choice, shipment, Double.NaN, Double.NaN, Optional.empty(), Optional.empty(), List.of());
    }

    private Found looked(double left, double scored) {
      return new Found(choice, shipment, left, scored, odds, checked, harms);
    }

    private Found judged(Odds coarse) {
      return new Found(choice, shipment, margin, score, Optional.of(coarse), checked, harms);
    }

    private Found checked(Odds usual, List<Harm> tried) {
      return new Found(choice, shipment, margin, score, odds, Optional.of(usual), tried);
    }

    /**
     * Returns the best odds known.
     *
     * @return those on the usual grids, else those on the coarsest
     */
    public Optional<Odds> within() {
      return checked.or(() -> odds);
    }

    /**
     * Returns the outer volume.
     *
     * @return the volume [m3]
     */
    public double volume() {
      return shipment.parcel().outerVolume();
    }

    private double share() {
      return within().map(Odds::within).orElse(0.0);
    }

    private boolean isLike(Found other) {
      return other.volume() == volume()
          && other.shipment.parcel().mass() == shipment.parcel().mass()
          && other.share() == share();
    }

    /**
     * Tells whether another one is as small, light and good, without more changes, and better in
     * something.
     */
    boolean isBeatenBy(Found other) {
      double mine = share();
      double its = other.share();
      double mass = shipment.parcel().mass();
      double otherMass = other.shipment.parcel().mass();
      return other.volume() <= volume()
          && otherMass <= mass
          && its >= mine
          && other.choice.changes().size() <= choice.changes().size()
          && (other.volume() < volume() || otherMass < mass || its > mine);
    }
  }

  /** Copies the lists. */
  public PackingSearch {
    candidates = List.copyOf(candidates);
    checked = List.copyOf(checked);
  }

  /**
   * Returns the answer.
   *
   * @return the smallest packing that reaches the wanted odds; empty if none does
   */
  public Optional<Found> best() {
    return checked.stream().filter(each -> reaches(each, wanted)).findFirst();
  }

  /**
   * Returns the answer to smaller wishes.
   *
   * @param level the level that is enough
   * @return the smallest packing that was judged at it or better, with the fewest changes
   */
  public Optional<Found> best(Level level) {
    return checked.stream().filter(each -> reaches(each, level.least())).min(SMALLEST_AND_PLAINEST);
  }

  private static boolean reaches(Found found, double odds) {
    return found.checked().isPresent() && found.within().orElseThrow().low() >= odds;
  }

  /**
   * Returns what to weigh against each other: size, mass and odds.
   *
   * @return of those with odds the ones that no other beats in all three, the smallest first; of
   *     several alike in all three the one with the fewest changes
   */
  public List<Found> tradeOff() {
    List<Found> known =
        candidates.stream()
            .filter(each -> each.within().isPresent())
            .sorted(SMALLEST_AND_PLAINEST)
            .toList();
    List<Found> unbeaten = new ArrayList<>();
    for (Found each : known) {
      if (known.stream().noneMatch(each::isBeatenBy) && unbeaten.stream().noneMatch(each::isLike)) {
        unbeaten.add(each);
      }
    }
    return unbeaten;
  }

  /**
   * Searches.
   *
   * @param parcel the packing whose contents are to be packed
   * @param journey the journey; the ambient of its last leg must cover the longest hold as well
   * @param space what to choose from
   * @param wanted wanted odds that every animal stays within what it tolerates [-], above 0 and
   *     below 1; the lower end of the interval counts
   * @param settings mesh, time steps, solver, seed and threads; the number of journeys does not
   *     count
   * @param first told of the candidates that look best as stated, the smallest first
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return what was found
   * @throws InvalidInputException if nothing fits together, or an ambient does not cover its time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static PackingSearch of(
      Parcel parcel,
      Journey journey,
      SearchSpace space,
      double wanted,
      AssessmentSettings settings,
      Consumer<List<Found>> first,
      ProgressListener listener) {
    return of(parcel, journey, space, wanted, settings, CHECKED, first, listener);
  }

  /** Checks so many of the best on the usual grids. */
  static PackingSearch of(
      Parcel parcel,
      Journey journey,
      SearchSpace space,
      double wanted,
      AssessmentSettings settings,
      int checks,
      Consumer<List<Found>> first,
      ProgressListener listener) {
    Checks.given("who is told first", first);
    Checks.given("settings", settings);
    Checks.given("parcel", parcel);
    if (!(wanted > 0 && wanted < 1)) {
      throw new InvalidInputException("wanted odds", wanted + " must be above 0 and below 1");
    }
    return new Work(parcel, journey, space, wanted, settings, checks, listener).run(first);
  }

  /** One search under way. */
  private static final class Work {
    /** What odds and a check of a candidate take, in looks at one: measured, roughly. */
    private static final double ODDS = 7;

    private static final double CHECK = 20;

    private final Parcel parcel;
    private final Journey journey;
    private final SearchSpace space;
    private final double wanted;
    private final AssessmentSettings settings;
    private final int checks;
    private final WatchedWorkers workers;

    /** What was looked at, or does not fit. */
    private final Set<PackingChoice> known = new HashSet<>();

    private int unfit;

    Work(
        Parcel parcel,
        Journey journey,
        SearchSpace space,
        double wanted,
        AssessmentSettings settings,
        int checks,
        ProgressListener listener) {
      this.parcel = Checks.given("parcel", parcel);
      this.journey = Checks.given("journey", journey);
      this.space = Checks.given("space", space);
      this.wanted = wanted;
      this.settings = settings;
      this.checks = checks;
      this.workers = new WatchedWorkers(settings.study().workers(), listener);
    }

    PackingSearch run(Consumer<List<Found>> first) {
      List<Found> fitting = fitting(space.choices());
      if (fitting.isEmpty()) {
        throw new InvalidInputException(
            "packing '" + parcel.name() + "'", "fits into none of the boxes to choose from");
      }
      List<Found> few = thinned(fitting, Math.max(1, space.most() / 2));
      int looks = Math.max(few.size(), space.most() * 3 / 4);
      // all in looks at a candidate
      double judging = looks + ODDS * Math.min(looks, WITH_ODDS);
      double climbing = judging + (1 + ODDS) * (space.most() - looks);
      double all = climbing + CHECK * Math.min(looks, checks);
      List<Found> tried = looked(few, 0, few.size() / all);
      first.accept(promising(tried, CHANGED));
      List<PackingChoice> next = beside(promising(tried, CHANGED));
      tried.addAll(
          looked(thinned(fitting(next), looks - few.size()), few.size() / all, looks / all));
      List<Found> judged = judged(promising(tried, WITH_ODDS), looks / all, judging / all);
      double step = (climbing - judging) / CLIMBS;
      for (int climb = 0; climb < CLIMBS; climb++) {
        judged.sort(bestFirst());
        if (!reaches(judged.get(0))) {
          int most = (space.most() - tried.size()) / (CLIMBS - climb);
          double from = judging + climb * step;
          List<Found> beside = thinned(fitting(beside(judged.subList(0, 1))), most);
          List<Found> looked = looked(beside, from / all, (from + beside.size()) / all);
          tried.addAll(looked);
          judged.addAll(judged(looked, (from + beside.size()) / all, (from + step) / all));
        }
      }
      judged.sort(bestFirst());
      double best = judged.stream().mapToDouble(Found::share).max().orElse(0);
      List<Found> worthIt =
          judged.stream()
              .filter(each -> each.share() >= best / 2)
              .limit(reaches(judged.get(0)) ? checks : Math.min(checks, FEWER))
              .toList();
      List<Found> checked = checked(worthIt, climbing / all);
      checked.sort(bestFirst());
      for (List<Found> better : List.of(judged, checked)) {
        for (Found each : better) {
          tried.replaceAll(old -> old.choice().equals(each.choice()) ? each : old);
        }
      }
      tried.sort(SMALLEST_FIRST);
      return new PackingSearch(tried, checked, wanted, unfit);
    }

    private static final Comparator<Found> SMALLEST_FIRST =
        Comparator.comparingDouble(Found::volume)
            .thenComparing(Comparator.comparingDouble(Found::score).reversed());

    /** The smallest that reach the wanted odds, then the others by their odds. */
    private Comparator<Found> bestFirst() {
      return Comparator.<Found, Boolean>comparing(each -> !reaches(each))
          .thenComparing(each -> reaches(each) ? 0 : -each.within().map(Odds::within).orElse(0.0))
          .thenComparing(SMALLEST_AND_PLAINEST)
          .thenComparing(SMALLEST_FIRST);
    }

    /** Few journeys leave a wide interval: before the check, their share counts. */
    private boolean reaches(Found each) {
      return each.within()
          .filter(odds -> (each.checked().isPresent() ? odds.low() : odds.within()) >= wanted)
          .isPresent();
    }

    /** What differs in one thing from some candidates and is not known. */
    private List<PackingChoice> beside(List<Found> best) {
      Set<PackingChoice> choices = new LinkedHashSet<>();
      for (Found each : best) {
        choices.addAll(space.beside(each.choice()));
        space.changes().stream()
            .filter(change -> changes(change, each))
            .forEach(change -> choices.add(each.choice().with(change)));
      }
      choices.removeAll(known);
      return List.copyOf(choices);
    }

    /** Of two changes about the same the second may undo the first. */
    private static boolean changes(Remedy change, Found found) {
      boolean isAlike =
          found.choice().changes().stream().anyMatch(each -> each.subject() == change.subject());
      if (isAlike) {
        return false;
      }
      // a warmer that is not there cannot be put elsewhere
      Remedy.Shipment before = found.shipment();
      try {
        return !change.applyTo(before.parcel(), before.journey()).equals(before);
      } catch (InvalidInputException doesNotFit) {
        return true;
      }
    }

    private List<Found> fitting(List<PackingChoice> choices) {
      List<Found> fitting = new ArrayList<>();
      for (PackingChoice each : choices) {
        fitting(each)
            .ifPresentOrElse(
                fitting::add,
                () -> {
                  known.add(each);
                  unfit++;
                });
      }
      fitting.sort(Comparator.comparingDouble(Found::volume));
      return fitting;
    }

    private Optional<Found> fitting(PackingChoice choice) {
      try {
        return Optional.of(Found.of(choice, choice.applyTo(parcel, journey)));
      } catch (InvalidInputException doesNotFit) {
        return Optional.empty();
      }
    }

    /** Every so many of a list. */
    private static List<Found> thinned(List<Found> all, int most) {
      if (all.size() <= most) {
        return all;
      }
      return IntStream.range(0, most)
          .mapToObj(number -> all.get((int) ((long) number * all.size() / most)))
          .toList();
    }

    /** Three journeys each; what is short of air as stated gets holes. */
    private List<Found> looked(List<Found> fitting, double from, double to) {
      Found[] looked = new Found[fitting.size()];
      workers.each(
          looked.length, from, to, index -> looked[index] = vented(looked(fitting.get(index))));
      List<Found> all = new ArrayList<>(Arrays.asList(looked));
      Stream.concat(fitting.stream(), all.stream()).forEach(each -> known.add(each.choice()));
      return all;
    }

    private Found looked(Found each) {
      Parcel packed = each.shipment().parcel();
      Journey until = each.shipment().journey();
      ParcelModel model =
          CoarseOutlook.model(
              packed, List.of(until), settings.withThreads(1), ModelScope.ROUGH_MEANS);
      Fate typical = TwoJourneys.fate(model, until, Variation.NOMINAL);
      RoughOdds.Look look = TwoJourneys.USUAL.look(model, until, typical);
      boolean isAirless = typical.airless() <= until.duration();
      return each.looked(
          look.typical().tighter(),
          isAirless ? Double.NEGATIVE_INFINITY : RoughOdds.OF_NONE.score(look));
    }

    private Found vented(Found looked) {
      List<Remedy> ways = new ArrayList<>(Remedy.waysForAir(looked.shipment().parcel()));
      ways.add(new Remedy.MoreAir(2));
      Found best = looked;
      for (Remedy way : ways) {
        if (best.score() > Double.NEGATIVE_INFINITY || !changes(way, looked)) {
          break;
        }
        best = fitting(looked.choice().with(way)).map(this::looked).orElse(best);
      }
      return best;
    }

    /** Layer by layer of those that no smaller one beats in its score, the smallest first. */
    private static List<Found> promising(List<Found> tried, int most) {
      List<Found> left = new ArrayList<>(tried);
      left.sort(SMALLEST_FIRST);
      List<Found> chosen = new ArrayList<>();
      while (chosen.size() < most && !left.isEmpty()) {
        List<Found> layer = new ArrayList<>();
        double best = Double.NEGATIVE_INFINITY;
        for (Found each : left) {
          if (layer.isEmpty() || each.score() > best) {
            layer.add(each);
            best = each.score();
          }
        }
        left.removeAll(layer);
        layer.sort(Comparator.comparingDouble(Found::score).reversed());
        chosen.addAll(layer.subList(0, Math.min(layer.size(), most - chosen.size())));
      }
      chosen.sort(SMALLEST_FIRST);
      return chosen;
    }

    private List<Found> judged(List<Found> promising, double from, double to) {
      Found[] judged = new Found[promising.size()];
      StudySettings own = settings.study();
      StudySettings few = new StudySettings(own.replicates(), POINTS, own.seed(), 1);
      workers.each(
          judged.length,
          from,
          to,
          index -> {
            Found each = promising.get(index);
            List<Journey> span = List.of(each.shipment().journey());
            Odds odds =
                new CoarseOutlook(each.shipment().parcel(), span, settings)
                    .odd(span, span, CoarseOutlook.Missed.UNKNOWN)
                    .odds(span.get(0), few, (done, total) -> workers.signal())
                    .within();
            judged[index] = each.judged(odds);
          });
      return new ArrayList<>(Arrays.asList(judged));
    }

    private List<Found> checked(List<Found> best, double from) {
      Found[] checked = new Found[best.size()];
      StudySettings own = settings.study();
      StudySettings many = new StudySettings(own.replicates(), CHECK_POINTS, own.seed(), 1);
      AssessmentSettings alone =
          new AssessmentSettings(settings.transit().withThreads(1), settings.longestHold(), many);
      ProgressListener going = (done, total) -> workers.signal();
      workers.each(
          checked.length,
          from,
          1,
          index -> {
            Found each = best.get(index);
            Parcel packed = each.shipment().parcel();
            Journey until = each.shipment().journey();
            Odds usual =
                Outlook.of(packed, List.of(until), alone, going).odds(until, many, going).within();
            List<Mishap> mishaps = Mishap.usual(until, Math.min(Times.DAY, settings.longestHold()));
            checked[index] =
                each.checked(usual, MishapStudy.looks(packed, until, mishaps, alone, going));
          });
      return new ArrayList<>(Arrays.asList(checked));
    }
  }
}
