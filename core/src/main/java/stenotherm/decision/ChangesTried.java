package stenotherm.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.study.JourneyStudy;
import stenotherm.study.Odds;
import stenotherm.study.OddsByCause;
import stenotherm.study.StudySettings;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;

/**
 * Changes that were tried on a shipment, to find the one that helps most.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param before odds of the shipment as it is
 * @param margin its {@link TriedChange#margin} [K]
 * @param changes the changes: several at once, if they were judged, then the most promising first
 */
public record ChangesTried(OddsByCause before, double margin, List<TriedChange> changes) {
  /** Changes judged by odds one by one; the others are left after three rough journeys. */
  private static final int FINALISTS = 2;

  /** Where in so many that fail a place in reach burns, all is tried with more room before it. */
  private static final double BURNT = 0.25;

  /** Where so many are too hot, the warmer that a change brought is taped over in part. */
  private static final double TOO_HOT = 0.5;

  /** Where so many of the journeys that fail are short of air, a way for air is judged anyhow. */
  private static final double SHORT_OF_AIR = 0.25;

  /** Where so many are, ways for air alone are, unless lids must be opened first. */
  private static final double AIR_ALONE = 0.75;

  /** What a second change must gain in the odds to be worth its trouble [-]: assumed. */
  private static final double ANOTHER = 0.03;

  /** More of another harm than so many times what is gained is no help: assumed. */
  private static final double SWAPPED = 2;

  /** Harm of fewer journeys than this is not worth a change of its own. */
  private static final double RARE = 0.01;

  /** Parts of the work that are done when models are made. */
  private static final double LOOKING = 0.2;

  /** The same when changes are ranked. */
  private static final double LOOKED = 0.25;

  /** The same when the most promising are judged one by one. */
  private static final double JUDGED = 0.75;

  /** Points of each replicate. */
  private static final int FEW_POINTS = 8;

  /**
   * A change and what came of it.
   *
   * @param remedy the change
   * @param margin what is left of the tighter margin [K]: towards the cold on a cold journey,
   *     towards the heat on a hot one, both computed roughly; negative if an animal leaves what it
   *     tolerates
   * @param odds odds until the planned opening; empty if they were not found, as others looked
   *     better
   */
  public record TriedChange(Remedy remedy, double margin, Optional<OddsByCause> odds) {
    /** Checks the parts. */
    public TriedChange {
      Checks.given("remedy", remedy);
      Checks.given("odds", odds);
    }

    /**
     * Returns the odds that every animal stays within what it tolerates.
     *
     * @return the odds until the planned opening; empty if they were not found
     */
    public Optional<Odds> within() {
      return odds.map(OddsByCause::within);
    }

    private double surely() {
      return within().map(Odds::low).orElse(Double.NEGATIVE_INFINITY);
    }

    /**
     * By which changes are compared: two at once must gain something, a way for air costs little.
     */
    private double worth() {
      long efforts =
          remedy.parts().stream().filter(each -> each.subject() != Remedy.Subject.AIR).count();
      return surely() - ANOTHER * (efforts - 1);
    }

    /** Whether it does little but put one harm in the place of another. */
    private boolean swaps(OddsByCause before) {
      return odds.filter(
              after ->
                  Stream.<Function<OddsByCause, Odds>>of(
                          OddsByCause::notTooCold,
                          OddsByCause::notTooHot,
                          OddsByCause::enoughAir,
                          OddsByCause::notBurnt)
                      .anyMatch(
                          spared ->
                              spared.apply(before).within() - spared.apply(after).within()
                                  > SWAPPED * (after.within().within() - before.within().within())))
          .isPresent();
    }
  }

  /** A change, the shipment that it makes and the model that looks at it. */
  private record Candidate(
      TriedChange change, Remedy.Shipment changed, ParcelModel rough, RoughOdds.Look look) {
    boolean letsAirIn() {
      return change.remedy().parts().stream()
          .anyMatch(part -> part.subject() == Remedy.Subject.AIR);
    }

    /** Whatever comes into the box passes the lids. */
    boolean opensLids() {
      return change.remedy().parts().stream().anyMatch(part -> part instanceof Remedy.HolesInLids);
    }
  }

  /** Copies the list. */
  public ChangesTried {
    Checks.given("before", before);
    changes = List.copyOf(changes);
  }

  /**
   * Returns the change that helps most.
   *
   * @return the change with the best odds, several at once if each gains three points more, but
   *     none that does another harm twice as often as it gains; empty if of none the lower end of
   *     the interval lies above the odds of the shipment as it is: what lies within the doubt of
   *     few journeys is not worth a keeper's trouble
   */
  public Optional<TriedChange> best() {
    return changes.stream()
        .filter(each -> each.worth() > before.within().within())
        .filter(each -> !each.swaps(before))
        .max(Comparator.comparingDouble(TriedChange::worth));
  }

  /**
   * Tells whether one of them is enough.
   *
   * @return whether with the best the packing likely holds
   */
  public boolean isEnough() {
    return best()
        .flatMap(TriedChange::within)
        .filter(within -> Level.of(within).compareTo(Level.LIKELY) <= 0)
        .isPresent();
  }

  /**
   * Tries changes. Each goes through a typical journey and through a cold and a hot one, such as
   * one in twenty is, on the coarsest grid of a judgement, to some tenths of a kelvin. By how far
   * they are from failing there changes are ranked. The most promising one and the next about
   * something else are judged by odds, on a quarter of the usual number of journeys unless their
   * number decides whether it likely holds; what that grid misses of the packing as it is counts as
   * error. Where air is short, a way for air is one of the two; where a place in reach burns, all
   * is tried in a box with more room before the warmer. Where neither likely holds, the one that is
   * better in temperature is judged again, mended for what else it fails of; if it fails of nothing
   * else, those two of all are judged that promise most if what each does to the margins adds up. A
   * box that becomes too hot rather than too cold is not given its first warmer, one that becomes
   * too cold is given nothing chilled.
   *
   * @param planned the nominal run of the packing as it is until the planned opening
   * @param now how it was judged
   * @param settings mesh, time steps and solver, how many journeys
   * @param listener told what part of the work is done, of 1, on the calling thread or one that
   *     shares the work, one call at a time; may stop
   * @return all that fit
   * @throws CancellationException if the listener or an interrupt stopped it
   * @throws IllegalStateException if a run failed
   */
  public static ChangesTried on(
      TransitResult planned,
      Assessment now,
      AssessmentSettings settings,
      ProgressListener listener) {
    Checks.given("judgement", now);
    Checks.given("settings", settings);
    Parcel parcel = Checks.given("planned run", planned).parcel();
    Journey journey = planned.journey();
    WatchedWorkers workers = new WatchedWorkers(settings.study().workers(), listener);
    AssessmentSettings one = settings.withThreads(1);
    List<Remedy> remedies = new ArrayList<>();
    List<Remedy.Shipment> shipments = new ArrayList<>();
    OddsByCause odds = now.odds().byCause();
    for (Remedy each : worthTrying(parcel, journey, odds)) {
      Stream.of(each, inLargerBox(each))
          .flatMap(way -> made(way, parcel, journey).map(to -> Map.entry(way, to)).stream())
          .findFirst()
          .ifPresent(
              fitting -> {
                remedies.add(fitting.getKey());
                shipments.add(fitting.getValue());
              });
    }
    // the packing as it is takes longest and comes first, lest it is left to one thread at the end;
    // changes of the journey alone need no model of their own
    List<Remedy.Shipment> packed =
        shipments.stream().filter(each -> !each.parcel().equals(parcel)).toList();
    ParcelModel[] made = new ParcelModel[1 + packed.size()];
    workers.each(
        made.length,
        0,
        LOOKING,
        task ->
            made[task] =
                task == 0
                    ? CoarseOutlook.model(parcel, List.of(journey), one, ModelScope.NOMINAL_MEANS)
                    : rough(packed.get(task - 1), one));
    ParcelModel unchanged = made[0];
    // what is not among those packed otherwise has the first model
    List<ParcelModel> models =
        shipments.stream().map(each -> made[1 + packed.indexOf(each)]).toList();
    TwoJourneys two = TwoJourneys.of(unchanged, journey, now.odds());
    RoughOdds.Look before = two.look(unchanged, journey);
    Candidate[] looked = new Candidate[remedies.size()];
    workers.each(
        looked.length,
        LOOKING,
        LOOKED,
        number -> {
          Remedy.Shipment changed = shipments.get(number);
          ParcelModel model = models.get(number);
          RoughOdds.Look look = two.look(model, changed.journey());
          TriedChange change =
              new TriedChange(remedies.get(number), look.seldom().tighter(), Optional.empty());
          looked[number] = new Candidate(change, changed, model, look);
        });
    RoughOdds rough = RoughOdds.of(before, now.odds());
    List<Candidate> candidates = new ArrayList<>(List.of(looked));
    candidates.sort(Comparator.comparingDouble(each -> -rough.score(each.look())));
    // margins tell nothing of what ways for air are for
    double airless = odds.partShortOfAir();
    if (airless > AIR_ALONE) {
      candidates.sort(
          Comparator.<Candidate, Boolean>comparing(each -> !each.opensLids())
              .thenComparing(each -> !each.letsAirIn()));
    } else if (airless > SHORT_OF_AIR) {
      candidates.stream()
          .filter(Candidate::letsAirIn)
          .min(Comparator.comparing(each -> !each.opensLids()))
          .ifPresent(
              air -> {
                candidates.remove(air);
                candidates.add(0, air);
              });
    }
    CoarseOutlook.Missed missed = CoarseOutlook.Missed.by(planned, now.error().total(), unchanged);
    FewJourneys few = new FewJourneys(missed, two, workers);
    List<TriedChange> changes =
        new ArrayList<>(candidates.stream().map(Candidate::change).toList());
    boolean airAlone = airless > AIR_ALONE && candidates.stream().noneMatch(Candidate::opensLids);
    boolean alike = airAlone || roomBeforeBurns(parcel, odds).isPresent();
    List<Integer> finalists = finalists(changes, alike);
    OddsByCause[] judged = new OddsByCause[finalists.size()];
    workers.each(
        judged.length,
        LOOKED,
        JUDGED,
        number -> {
          Candidate finalist = candidates.get(finalists.get(number));
          judged[number] =
              few.odds(finalist.rough(), finalist.changed().journey(), one, FEW_POINTS);
        });
    for (int number = 0; number < judged.length; number++) {
      int place = finalists.get(number);
      TriedChange change = changes.get(place);
      changes.set(
          place, new TriedChange(change.remedy(), change.margin(), Optional.of(judged[number])));
    }
    List<TriedChange> best = finalists.stream().map(changes::get).toList();
    Optional<Remedy> pair = mostPromisingPair(candidates, before, rough);
    Optional<Remedy> first =
        together(odds.within(), best, pair, change -> change.applyTo(parcel, journey).parcel());
    // alone, so that each has all threads
    workers.each(
        1,
        JUDGED,
        1,
        only ->
            first
                .flatMap(change -> few.judged(change, parcel, journey, settings))
                .ifPresent(
                    change -> {
                      changes.add(0, change);
                      further(odds.within(), change, pair)
                          .flatMap(more -> few.judged(more, parcel, journey, settings))
                          .ifPresent(more -> changes.add(0, more));
                    }));
    return new ChangesTried(odds, before.seldom().tighter(), changes);
  }

  /** Judges by odds, mostly on a quarter of the usual number of journeys. */
  private record FewJourneys(CoarseOutlook.Missed missed, TwoJourneys two, WatchedWorkers workers) {
    OddsByCause odds(ParcelModel rough, Journey journey, AssessmentSettings settings, int points) {
      StudySettings usual = settings.study();
      return CoarseOutlook.odd(rough, journey, settings, missed)
          .odds(
              journey,
              usual,
              List.of(
                  new JourneyStudy.InterimLook(points, ChangesTried::isEnough),
                  new JourneyStudy.InterimLook(2 * points, Assessor::isSettled)),
              (done, total) -> workers.signal())
          .byCause();
    }

    /** A change and its odds; empty if it does not fit. */
    Optional<TriedChange> judged(
        Remedy change, Parcel parcel, Journey journey, AssessmentSettings settings) {
      return made(change, parcel, journey).map(changed -> judged(change, changed, settings));
    }

    private TriedChange judged(
        Remedy change, Remedy.Shipment changed, AssessmentSettings settings) {
      ParcelModel rough = rough(changed, settings);
      return new TriedChange(
          change,
          two.look(rough, changed.journey()).seldom().tighter(),
          Optional.of(odds(rough, changed.journey(), settings, 2 * FEW_POINTS)));
    }
  }

  private static ParcelModel rough(Remedy.Shipment changed, AssessmentSettings settings) {
    return CoarseOutlook.model(
        changed.parcel(), List.of(changed.journey()), settings, ModelScope.ROUGH_MEANS);
  }

  /**
   * What may be enough where neither of two changes is: the one that is best in temperature, mended
   * for what else it fails of; where that is little, a pair.
   *
   * @param before odds of the packing as it is, beyond which a change must surely lead
   * @param judged two changes with odds
   * @param pair two of all changes that promise more together than any alone
   * @param changed makes the packing that a change leads to
   */
  static Optional<Remedy> together(
      Odds before,
      List<TriedChange> judged,
      Optional<Remedy> pair,
      Function<Remedy, Parcel> changed) {
    boolean isEnough = judged.stream().anyMatch(each -> isEnough(before, each));
    if (isEnough || judged.size() < FINALISTS) {
      return Optional.empty();
    }
    TriedChange best =
        judged.stream().min(Comparator.comparingDouble(ChangesTried::outside)).orElseThrow();
    Remedy mended = mended(best, changed);
    return mended != best.remedy() ? Optional.of(mended) : pair;
  }

  /** What may be enough where a mended change is not: that, and the most promising pair. */
  private static Optional<Remedy> further(Odds before, TriedChange mended, Optional<Remedy> pair) {
    return isEnough(before, mended)
        ? Optional.empty()
        : pair.flatMap(changes -> both(mended.remedy(), changes));
  }

  private static boolean isEnough(Odds before, TriedChange change) {
    return change.worth() >= Math.max(Level.LIKELY.least(), Math.nextUp(before.within()));
  }

  /**
   * The two about different things that look best together, if what each does to the margins adds
   * up; empty if one alone looks as good.
   */
  private static Optional<Remedy> mostPromisingPair(
      List<Candidate> candidates, RoughOdds.Look before, RoughOdds rough) {
    // where all are tried with more room, that counts once
    RoughOdds.Look common =
        candidates.stream()
            .filter(each -> each.change().remedy() instanceof Remedy.MoreRoom)
            .map(Candidate::look)
            .findFirst()
            .orElse(before);
    Optional<Remedy> best = Optional.empty();
    double most = candidates.stream().mapToDouble(each -> rough.score(each.look())).max().orElse(0);
    for (int second = 1; second < candidates.size(); second++) {
      for (int first = 0; first < second; first++) {
        Candidate one = candidates.get(first);
        Candidate other = candidates.get(second);
        double score = rough.score(one.look().plus(other.look()).minus(common));
        Optional<Remedy> pair = both(one.change().remedy(), other.change().remedy());
        if (score > most && pair.isPresent()) {
          most = score;
          best = pair;
        }
      }
    }
    return best;
  }

  /** Two changes one after the other, what both have once; empty where they are about the same. */
  static Optional<Remedy> both(Remedy one, Remedy other) {
    List<Remedy> parts = one.parts();
    List<Remedy> more = other.parts().stream().filter(part -> !parts.contains(part)).toList();
    boolean alike =
        more.isEmpty()
            || parts.stream()
                .anyMatch(
                    there -> more.stream().anyMatch(part -> part.subject() == there.subject()));
    return alike
        ? Optional.empty()
        : Stream.concat(parts.stream(), more.stream()).reduce(Remedy.Both::new);
  }

  /** On how many journeys an animal gets too cold, and on how many too hot, of 1 each. */
  private static double outside(TriedChange change) {
    OddsByCause odds = change.odds().orElseThrow();
    return 2 - odds.notTooCold().within() - odds.notTooHot().within();
  }

  /** With less heat where that is too much, more room before what burns, air where it is short. */
  private static Remedy mended(TriedChange change, Function<Remedy, Parcel> changed) {
    OddsByCause odds = change.odds().orElseThrow();
    Parcel parcel = changed.apply(change.remedy());
    List<Remedy> parts = new ArrayList<>(change.remedy().parts());
    boolean isNewlyWarmed = parts.stream().anyMatch(part -> part instanceof Remedy.OtherWarmer);
    if (odds.partTooHot() > TOO_HOT && isNewlyWarmed && Remedy.HalfTaped.fits(parcel)) {
      parts.add(new Remedy.HalfTaped());
    }
    roomBeforeBurns(parcel, odds).ifPresent(parts::add);
    Remedy way = Remedy.waysForAir(parcel).get(0);
    if (odds.partShortOfAir() > SHORT_OF_AIR && !parts.contains(way)) {
      // through walls twice as thick a hole lets half as much pass
      boolean isThicker = parts.stream().anyMatch(part -> part instanceof Remedy.ThickerFoam);
      parts.add(isThicker && way.equals(new Remedy.MoreAir()) ? new Remedy.MoreAir(2) : way);
    }
    return parts.equals(change.remedy().parts()) ? change.remedy() : oneAfterAnother(parts);
  }

  /** Changes, one after the other; more room twice is that once. */
  private static Remedy oneAfterAnother(List<Remedy> parts) {
    List<Remedy> all = new ArrayList<>();
    for (Remedy part : parts) {
      OptionalInt room =
          IntStream.range(0, all.size())
              .filter(at -> all.get(at) instanceof Remedy.MoreRoom)
              .findFirst();
      if (part instanceof Remedy.MoreRoom more && room.isPresent()) {
        Remedy.MoreRoom before = (Remedy.MoreRoom) all.get(room.getAsInt());
        all.set(room.getAsInt(), before.with(more));
      } else {
        all.add(part);
      }
    }
    return all.stream().reduce(Remedy.Both::new).orElseThrow();
  }

  /** Whether more journeys would not change whether it likely holds. */
  static boolean isEnough(Odds few) {
    Level estimate = Level.of(few.within());
    return estimate == Level.of(few) || estimate.compareTo(Level.LIKELY) > 0;
  }

  /** What brings something that a small box has no room for, in a larger one; else itself. */
  static Remedy inLargerBox(Remedy change) {
    return change instanceof Remedy.Ballast || change instanceof Remedy.SecondWarmer
        ? new Remedy.Both(new Remedy.LargerBox(), change)
        : change;
  }

  /** What a change makes of a shipment; empty if it does not fit. */
  private static Optional<Remedy.Shipment> made(Remedy change, Parcel parcel, Journey journey) {
    try {
      return Optional.of(change.applyTo(parcel, journey));
    } catch (InvalidInputException doesNotFit) {
      return Optional.empty();
    }
  }

  /** What may help against what harms. */
  static List<Remedy> worthTrying(Parcel parcel, Journey journey, OddsByCause odds) {
    boolean heats = odds.notTooHot().within() < odds.notTooCold().within();
    List<Remedy> all = new ArrayList<>(Remedy.toTry(parcel, journey));
    // a first warmer works against heat, and against something chilled: that is changed instead
    boolean isChilled =
        parcel.packs().stream()
            .anyMatch(pack -> pack.start().temperatureOf(pack.pack()) < journey.startTemperature());
    all.removeIf(
        each ->
            (heats || isChilled)
                && parcel.warmers().isEmpty()
                && each.parts().stream().anyMatch(part -> part instanceof Remedy.OtherWarmer));
    all.removeIf(
        each -> !heats && (each instanceof Remedy.ChilledPack || each instanceof Remedy.TwicePack));
    all.removeIf(each -> heats && each instanceof Remedy.SecondWarmer);
    if (isColdAlone(odds)) {
      all.removeIf(each -> takesHeat(each, journey));
    }
    if (odds.partShortOfAir() > SHORT_OF_AIR) {
      Remedy.waysForAir(parcel).stream().filter(each -> !all.contains(each)).forEach(all::add);
    }
    roomBeforeBurns(parcel, odds)
        .ifPresent(
            room -> {
              all.replaceAll(
                  each ->
                      each instanceof Remedy.NoWarmer || each instanceof Remedy.LargerBox
                          ? each
                          : new Remedy.Both(room, each));
              all.add(room);
            });
    return all;
  }

  /** Whether next to nothing but cold harms, or want of air, and cold more often. */
  private static boolean isColdAlone(OddsByCause odds) {
    double cold = 1 - odds.notTooCold().within();
    return 1 - odds.notTooHot().within() < RARE
        && 1 - odds.notBurnt().within() < RARE
        && cold > 1 - odds.enoughAir().within();
  }

  /** Whether a change makes a packing colder, whatever else it does. */
  private static boolean takesHeat(Remedy change, Journey journey) {
    return change instanceof Remedy.ThinnerFoam
        || change instanceof Remedy.LargerBox
        || change instanceof Remedy.NoWarmer
        || change instanceof Remedy.HalfTaped
        || (change instanceof Remedy.StartAt start
            && start.temperature() < journey.startTemperature());
  }

  /** More room before a warmer where that burns an animal often: margins tell nothing of it. */
  private static Optional<Remedy.MoreRoom> roomBeforeBurns(Parcel parcel, OddsByCause odds) {
    return odds.partBurnt() > BURNT
        ? Remedy.MoreRoom.before(parcel, odds.notBurnt().within() < 0.5)
        : Optional.empty();
  }

  /**
   * Places of those that are judged by odds: the most promising, and the next about something else,
   * so that both may go together; the next at all where there is no other.
   *
   * @param alike whether the second may be about the same
   */
  static List<Integer> finalists(List<TriedChange> changes, boolean alike) {
    if (changes.size() < FINALISTS) {
      return IntStream.range(0, changes.size()).boxed().toList();
    }
    Remedy.Subject first = changes.get(0).remedy().subject();
    // a frozen pack may go, or be thawed: each puts another end at risk
    boolean anySecond = alike || first == Remedy.Subject.COLD;
    int second =
        IntStream.range(1, changes.size())
            .filter(place -> anySecond || changes.get(place).remedy().subject() != first)
            .findFirst()
            .orElse(1);
    return List.of(0, second);
  }
}
