package stenotherm.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.Fate;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;
import stenotherm.transit.Variation;

/**
 * What would harm a shipment: mishaps one by one and in pairs, the worst first.
 *
 * <p>Each packing that mishaps leave is made ready once, on the coarsest grid, for all journeys
 * that it then goes on. What finer grids would change is found on the shipment as planned and
 * counted for all, see {@link Outlook}. Odds of mishaps are found on the same journeys. Pairs are
 * made of what the shipment withstands alone, see {@link Harm#isBroken}: with a mishap that breaks
 * it alone, any other one beside it tells nothing. Of each kind the two that are worst of those,
 * and all of those that users add, meet in pairs. Pairs are run once with all else as stated; the
 * {@value #PAIRS_WITH_ODDS} that look worst get odds, too.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param planned the shipment as planned
 * @param singles mishaps one by one, the worst first
 * @param pairs mishaps in pairs, the worst first: those with odds before the others
 * @param leftOut mishaps that were left out
 */
public record MishapStudy(
    Harm planned, List<Harm> singles, List<Harm> pairs, List<LeftOut> leftOut) {
  /**
   * A mishap that was left out.
   *
   * @param mishap which
   * @param why why
   */
  public record LeftOut(Mishap mishap, String why) {
    /** Checks the parts. */
    public LeftOut {
      Checks.given("mishap", mishap);
      Checks.given("why", why);
    }
  }

  /** Pairs that get odds. */
  private static final int PAIRS_WITH_ODDS = 10;

  /** Points of each replicate: 64 journeys. */
  private static final int POINTS = 4;

  /** The same for pairs: 32 journeys. */
  private static final int PAIR_POINTS = 2;

  /** The same for the shipment as planned: 128 journeys. */
  private static final int PLAN_POINTS = 8;

  /** The worst first: by odds where there are any, then by what is left as stated. */
  private static final Comparator<Harm> WORST_FIRST =
      Comparator.<Harm>comparingDouble(harm -> harm.within().map(Odds::within).orElse(2.0))
          .thenComparing(harm -> !harm.isBreached())
          .thenComparingDouble(Harm::margin);

  /** Copies the lists. */
  public MishapStudy {
    Checks.given("planned", planned);
    singles = List.copyOf(singles);
    pairs = List.copyOf(pairs);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Lets everything go wrong.
   *
   * @param parcel the packing
   * @param journey the journey; the ambient of its legs must cover the delays, too
   * @param mishaps what may go wrong; what cannot happen or changes nothing is left out and said
   * @param settings mesh, time steps, solver, seed and threads; the number of journeys does not
   *     count
   * @param first told of the mishaps one by one, with all else as stated, before there are odds
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return what would harm it
   * @throws InvalidInputException if no container holds an animal, or an ambient does not cover its
   *     time
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed; the message says why
   */
  public static MishapStudy of(
      Parcel parcel,
      Journey journey,
      List<Mishap> mishaps,
      AssessmentSettings settings,
      Consumer<List<Harm>> first,
      ProgressListener listener) {
    Checks.given("parcel", parcel);
    Checks.given("journey", journey);
    Checks.given("mishaps", mishaps);
    Checks.given("settings", settings);
    Checks.given("who is told first", first);
    Case plan = new Case(List.of(), new Remedy.Shipment(parcel, journey));
    return new Work(plan, settings, listener).run(mishaps, first);
  }

  /**
   * Lets things go wrong one by one with all else as stated, on the coarsest grid and on this
   * thread; what cannot happen or changes nothing is left out.
   *
   * @param listener may stop
   * @return what mishaps do, without odds, the worst first
   */
  static List<Harm> looks(
      Parcel parcel,
      Journey journey,
      List<Mishap> mishaps,
      AssessmentSettings settings,
      ProgressListener listener) {
    Case plan = new Case(List.of(), new Remedy.Shipment(parcel, journey));
    return new Work(plan, settings, listener).looks(mishaps);
  }

  /** Mishaps and what they leave of a shipment. */
  private record Case(List<Mishap> mishaps, Remedy.Shipment shipment) {
    Parcel parcel() {
      return shipment.parcel();
    }

    Journey journey() {
      return shipment.journey();
    }
  }

  /** One study under way. */
  private static final class Work {
    /** Parts of the work, by the time they take: done after each. */
    private static final double PLAN = 0.1;

    private static final double SINGLE_MODELS = 0.2;
    private static final double LOOKED = 0.25;
    private static final double JUDGED = 0.7;
    private static final double PAIR_MODELS = 0.75;
    private static final double NOMINAL = 0.8;
    private static final int WORST_OF_KIND = 2;

    private final Case plan;
    private final AssessmentSettings settings;
    private final ProgressListener listener;
    private final WatchedWorkers workers;
    private final Map<Parcel, CoarseOutlook> outlooks = new ConcurrentHashMap<>();

    Work(Case plan, AssessmentSettings settings, ProgressListener listener) {
      this.plan = plan;
      this.settings = settings;
      this.listener = listener;
      this.workers = new WatchedWorkers(settings.study().workers(), listener);
    }

    MishapStudy run(List<Mishap> mishaps, Consumer<List<Harm>> first) {
      List<LeftOut> leftOut = new ArrayList<>();
      List<Case> singles = singles(mishaps, leftOut);
      Outlook planned =
          Outlook.of(
              plan.parcel(),
              List.of(plan.journey()),
              settings,
              (done, total) -> listener.progress(PLAN * done / total, 1));
      List<Journey> spanning = spanning(singles);
      prepare(withPlan(singles), spanning, PLAN, SINGLE_MODELS);
      CoarseOutlook.Missed missed =
          CoarseOutlook.Missed.by(planned, plan.journey(), outlookOf(plan));
      List<Harm> looks = nominal(singles, missed, SINGLE_MODELS, LOOKED);
      first.accept(looks.stream().sorted(WORST_FIRST).toList());
      List<Harm> one =
          new ArrayList<>(judged(singles, looks, POINTS, spanning, missed, LOOKED, JUDGED));
      List<Case> pairs = pairs(worstOfKinds(singles, one));
      prepare(pairs, spanning, JUDGED, PAIR_MODELS);
      List<Harm> two = new ArrayList<>(nominal(pairs, missed, PAIR_MODELS, NOMINAL));
      List<Integer> worst =
          IntStream.range(0, pairs.size())
              .boxed()
              .sorted(Comparator.comparing(two::get, WORST_FIRST))
              .limit(PAIRS_WITH_ODDS)
              .toList();
      List<Harm> withOdds =
          judged(
              worst.stream().map(pairs::get).toList(),
              worst.stream().map(two::get).toList(),
              PAIR_POINTS,
              spanning,
              missed,
              NOMINAL,
              1);
      for (int place = 0; place < worst.size(); place++) {
        two.set(worst.get(place), withOdds.get(place));
      }
      Harm asPlanned =
          harm(
              plan,
              planned.study(plan.journey()).fate(Variation.NOMINAL),
              Optional.of(
                  planned
                      .odds(plan.journey(), many(PLAN_POINTS), (done, total) -> workers.signal())
                      .within()));
      one.sort(WORST_FIRST);
      two.sort(WORST_FIRST);
      return new MishapStudy(asPlanned, one, two, leftOut);
    }

    List<Harm> looks(List<Mishap> mishaps) {
      List<Case> singles = singles(mishaps, new ArrayList<>());
      prepare(withPlan(singles), spanning(singles), 0, 0.5);
      return nominal(singles, CoarseOutlook.Missed.UNKNOWN, 0.5, 1).stream()
          .sorted(WORST_FIRST)
          .toList();
    }

    /** What can happen and changes something. */
    private List<Case> singles(List<Mishap> mishaps, List<LeftOut> leftOut) {
      List<Case> singles = new ArrayList<>();
      for (Mishap each : mishaps) {
        try {
          Remedy.Shipment after = each.applyTo(plan.parcel(), plan.journey());
          if (after.equals(plan.shipment())) {
            leftOut.add(new LeftOut(each, "changes nothing here"));
          } else {
            singles.add(new Case(List.of(each), after));
          }
        } catch (InvalidInputException impossible) {
          leftOut.add(new LeftOut(each, String.valueOf(impossible.getMessage())));
        }
      }
      return singles;
    }

    private List<Case> withPlan(List<Case> singles) {
      List<Case> all = new ArrayList<>(List.of(plan));
      all.addAll(singles);
      return all;
    }

    private StudySettings many(int points) {
      StudySettings own = settings.study();
      return new StudySettings(own.replicates(), points, own.seed(), 1);
    }

    /** Finds the odds of cases that were run once. */
    private List<Harm> judged(
        List<Case> cases,
        List<Harm> looks,
        int points,
        List<Journey> spanning,
        CoarseOutlook.Missed missed,
        double from,
        double to) {
      Map<Parcel, List<Journey>> journeys = journeysOf(cases);
      List<Parcel> parcels = List.copyOf(journeys.keySet());
      Map<Parcel, CoarseOutlook.Odd> ready = new ConcurrentHashMap<>();
      workers.each(
          parcels.size(),
          from,
          (from + to) / 2,
          index -> {
            Parcel parcel = parcels.get(index);
            List<Journey> there = Objects.requireNonNull(journeys.get(parcel));
            ready.put(
                parcel, Objects.requireNonNull(outlooks.get(parcel)).odd(spanning, there, missed));
          });
      Harm[] harms = new Harm[cases.size()];
      workers.each(
          harms.length,
          (from + to) / 2,
          to,
          index -> {
            Case each = cases.get(index);
            Odds within =
                Objects.requireNonNull(ready.get(each.parcel()))
                    .odds(each.journey(), many(points), (done, total) -> workers.signal())
                    .within();
            harms[index] = harm(each, looks.get(index).nominal(), Optional.of(within));
          });
      return List.of(harms);
    }

    /** Makes the packings of cases ready that are not yet. */
    private void prepare(List<Case> cases, List<Journey> spanning, double from, double to) {
      Map<Parcel, List<Journey>> journeys = journeysOf(cases);
      List<Parcel> parcels =
          journeys.keySet().stream().filter(each -> !outlooks.containsKey(each)).toList();
      workers.each(
          parcels.size(),
          from,
          to,
          index -> {
            Parcel parcel = parcels.get(index);
            // what changes the parcel may meet in pairs whatever changes the journey
            outlooks.put(parcel, new CoarseOutlook(parcel, spanning, settings));
          });
    }

    /** Runs cases once, with all else as stated. */
    private List<Harm> nominal(
        List<Case> cases, CoarseOutlook.Missed missed, double from, double to) {
      Harm[] harms = new Harm[cases.size()];
      workers.each(
          harms.length,
          from,
          to,
          index -> {
            Case each = cases.get(index);
            Fate fate = outlookOf(each).fate(each.journey(), missed);
            harms[index] = harm(each, fate, Optional.empty());
          });
      return List.of(harms);
    }

    private CoarseOutlook outlookOf(Case each) {
      return Objects.requireNonNull(outlooks.get(each.parcel()));
    }

    /**
     * Of each kind the two that are worst alone and differ, and all that users add: of those that
     * do not break the shipment alone.
     */
    private static List<Case> worstOfKinds(List<Case> singles, List<Harm> harms) {
      List<Case> chosen = new ArrayList<>();
      Set<Fate> seen = new HashSet<>();
      for (Mishap.Concern kind : Mishap.Concern.values()) {
        IntStream.range(0, singles.size())
            .boxed()
            .filter(index -> singles.get(index).mishaps().get(0).kind() == kind)
            .filter(index -> !harms.get(index).isBroken())
            .sorted(Comparator.comparing(harms::get, WORST_FIRST))
            .filter(index -> seen.add(harms.get(index).nominal()))
            .limit(kind == Mishap.Concern.OWN ? singles.size() : WORST_OF_KIND)
            .map(singles::get)
            .forEach(chosen::add);
      }
      return chosen;
    }

    private static Harm harm(Case each, Fate fate, Optional<Odds> within) {
      return new Harm(each.mishaps(), fate, each.journey().duration(), within);
    }

    /** All pairs that can happen together, the earlier kind first. */
    private List<Case> pairs(List<Case> singles) {
      List<Case> pairs = new ArrayList<>();
      for (int one = 0; one < singles.size(); one++) {
        for (int other = one + 1; other < singles.size(); other++) {
          List<Mishap> both = new ArrayList<>();
          both.addAll(singles.get(one).mishaps());
          both.addAll(singles.get(other).mishaps());
          if (both.get(0).excludes(both.get(1))) {
            continue;
          }
          both.sort(Comparator.comparing(Mishap::kind));
          try {
            Remedy.Shipment after = plan.shipment();
            for (Mishap each : both) {
              after = each.applyTo(after.parcel(), after.journey());
            }
            pairs.add(new Case(List.copyOf(both), after));
          } catch (InvalidInputException impossible) {
            // each alone can happen, both together cannot
          }
        }
      }
      return pairs;
    }

    /**
     * The journey as planned, and those that meet something new: sun, and where there is sun or sky
     * already, other faces in it. Other hours and other weather bring nothing new, nor do other
     * faces up: each run finds its own coefficients.
     */
    private List<Journey> spanning(List<Case> singles) {
      Set<Journey> span = new LinkedHashSet<>();
      span.add(plan.journey());
      boolean open =
          plan.journey().legs().stream().anyMatch(leg -> !leg.surroundings().sunshine().isNone());
      for (Case each : singles) {
        Mishap.Concern kind = each.mishaps().get(0).kind();
        if (kind == Mishap.Concern.SUN
            || kind == Mishap.Concern.OWN
            || (open && kind == Mishap.Concern.LIE)) {
          span.add(each.journey());
        }
      }
      return List.copyOf(span);
    }

    private static Map<Parcel, List<Journey>> journeysOf(List<Case> cases) {
      Map<Parcel, List<Journey>> journeys = new LinkedHashMap<>();
      for (Case each : cases) {
        List<Journey> there = journeys.computeIfAbsent(each.parcel(), none -> new ArrayList<>());
        if (!there.contains(each.journey())) {
          there.add(each.journey());
        }
      }
      return journeys;
    }
  }
}
