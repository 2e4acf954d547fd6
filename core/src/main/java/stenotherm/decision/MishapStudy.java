package stenotherm.decision;

import java.util.ArrayList;
import java.util.Arrays;
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
import java.util.stream.Stream;
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
 * counted for all, see {@link Outlook}. Odds of mishaps are found on the same journeys. Of each
 * kind the two that are worst alone, and all that users add, meet in pairs. Pairs are run once with
 * all else as stated; the {@value #PAIRS_WITH_ODDS} that look worst get odds, too.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param planned the shipment as planned
 * @param singles mishaps one by one, the worst first
 * @param pairs mishaps in pairs, the worst first: those with odds before the others
 * @param leftOut why mishaps were left out, a sentence each
 */
public record MishapStudy(
    Harm planned, List<Harm> singles, List<Harm> pairs, List<String> leftOut) {
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
   * @param listener told how much is done; may stop
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
    Case plan = new Case(List.of(), new Remedy.Shipment(parcel, journey));
    return new Work(plan, settings, listener).run(mishaps, first);
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
    private static final double PAIR_MODELS = 0.35;
    private static final double NOMINAL = 0.45;
    private static final double MODELS = 0.65;
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
      this.workers = new WatchedWorkers(settings.study().threads(), listener);
    }

    MishapStudy run(List<Mishap> mishaps, Consumer<List<Harm>> first) {
      List<String> leftOut = new ArrayList<>();
      List<Case> singles = new ArrayList<>();
      for (Mishap each : mishaps) {
        try {
          Remedy.Shipment after = each.applyTo(plan.parcel(), plan.journey());
          if (after.equals(plan.shipment())) {
            leftOut.add(each.words() + ": changes nothing here");
          } else {
            singles.add(new Case(List.of(each), after));
          }
        } catch (InvalidInputException impossible) {
          leftOut.add(each.words() + ": " + impossible.getMessage());
        }
      }
      Outlook planned =
          Outlook.of(
              plan.parcel(),
              List.of(plan.journey()),
              settings,
              (done, total) -> listener.progress(PLAN * done / total, 1));
      List<Journey> spanning = spanning(singles);
      List<Case> alone = new ArrayList<>(List.of(plan));
      alone.addAll(singles);
      prepare(alone, spanning, PLAN, SINGLE_MODELS);
      CoarseOutlook.Missed missed =
          CoarseOutlook.Missed.by(planned, plan.journey(), outlookOf(plan));
      List<Harm> ofSingles = nominal(singles, missed, SINGLE_MODELS, LOOKED);
      first.accept(ofSingles.stream().sorted(WORST_FIRST).toList());
      List<Case> pairs = pairs(worstOfKinds(singles, ofSingles));
      prepare(pairs, spanning, LOOKED, PAIR_MODELS);
      List<Harm> ofPairs = nominal(pairs, missed, PAIR_MODELS, NOMINAL);
      List<Case> all = new ArrayList<>(singles);
      all.addAll(pairs);
      Harm[] nominal = Stream.concat(ofSingles.stream(), ofPairs.stream()).toArray(Harm[]::new);
      List<Integer> worst = new ArrayList<>();
      for (int index = singles.size(); index < all.size(); index++) {
        worst.add(index);
      }
      worst.sort(Comparator.comparing(index -> nominal[index], WORST_FIRST));
      List<Integer> judged = new ArrayList<>();
      for (int index = 0; index < singles.size(); index++) {
        judged.add(index);
      }
      judged.addAll(worst.subList(0, Math.min(PAIRS_WITH_ODDS, worst.size())));
      Map<Parcel, List<Journey>> toJudge = journeysOf(judged.stream().map(all::get).toList());
      Map<Parcel, CoarseOutlook.Odd> odds = new ConcurrentHashMap<>();
      List<Parcel> ready = List.copyOf(toJudge.keySet());
      workers.each(
          ready.size(),
          NOMINAL,
          MODELS,
          index -> {
            Parcel parcel = ready.get(index);
            List<Journey> there = Objects.requireNonNull(toJudge.get(parcel));
            odds.put(
                parcel, Objects.requireNonNull(outlooks.get(parcel)).odd(spanning, there, missed));
          });
      StudySettings own = settings.study();
      StudySettings many = new StudySettings(own.replicates(), POINTS, own.seed(), 1);
      workers.each(
          judged.size(),
          MODELS,
          1,
          place -> {
            int index = judged.get(place);
            Case each = all.get(index);
            Odds within =
                Objects.requireNonNull(odds.get(each.parcel()))
                    .odds(
                        each.journey(),
                        each.mishaps().size() > 1 ? many.withPoints(PAIR_POINTS) : many,
                        (done, total) -> workers.signal())
                    .within();
            nominal[index] = harm(each, nominal[index].nominal(), Optional.of(within));
          });
      Harm asPlanned =
          harm(
              plan,
              planned.study(plan.journey()).fate(Variation.NOMINAL),
              Optional.of(
                  planned
                      .odds(
                          plan.journey(),
                          many.withPoints(PLAN_POINTS),
                          (done, total) -> workers.signal())
                      .within()));
      List<Harm> one = new ArrayList<>(Arrays.asList(nominal).subList(0, singles.size()));
      List<Harm> two = new ArrayList<>(Arrays.asList(nominal).subList(singles.size(), all.size()));
      one.sort(WORST_FIRST);
      two.sort(WORST_FIRST);
      return new MishapStudy(asPlanned, one, two, leftOut);
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

    /** Of each kind the two that are worst alone and differ; all that users add. */
    private static List<Case> worstOfKinds(List<Case> singles, List<Harm> harms) {
      List<Case> chosen = new ArrayList<>();
      Set<Fate> seen = new HashSet<>();
      for (Mishap.Concern kind : Mishap.Concern.values()) {
        IntStream.range(0, singles.size())
            .boxed()
            .filter(index -> singles.get(index).mishaps().get(0).kind() == kind)
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
