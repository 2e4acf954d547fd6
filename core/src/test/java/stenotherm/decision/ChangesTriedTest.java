package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Situations;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.ProgressListener;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.LidHoles;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Walls;
import stenotherm.study.Odds;
import stenotherm.study.OddsByCause;
import stenotherm.study.StudySettings;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.Warmers;

class ChangesTriedTest {
  private static final double HOUR = Times.HOUR;
  private static final Place HOME = new Place("home", ZoneOffset.UTC);
  private static final AssessmentSettings SETTINGS =
      new AssessmentSettings(
          new TransitSettings(Packings.COARSE, HOUR, IntegratorSettings.standard()),
          HOUR,
          new StudySettings(16, 8, 1, 2));

  private static final UnitWords UNITS = new SiUnits();

  private static final Parcel WARMED =
      Packings.warmed(List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));

  private static final Odds HALF = new Odds(0.5, 0.45, 0.55);

  private static Leg leg(String name, double hours, double ambient, AmbientSpread spread) {
    return leg(name, hours, ambient, spread, FaceFilms.indoors());
  }

  private static Leg leg(
      String name, double hours, double ambient, AmbientSpread spread, FaceFilms films) {
    return leg(name, hours, ambient, spread, films, Stowage.ALONE);
  }

  private static Leg leg(
      String name,
      double hours,
      double ambient,
      AmbientSpread spread,
      FaceFilms films,
      Stowage stowage) {
    return new Leg(
        name,
        HOME,
        hours * HOUR,
        new Surroundings(
            Ambient.constant(ambient),
            spread,
            films,
            stowage,
            Orientation.LID_UP,
            0,
            Sunshine.NONE,
            List.of()),
        Source.assumed("made up"));
  }

  private static Journey journey(double start, Leg... legs) {
    return new Journey(LocalDateTime.of(2026, 1, 5, 18, 0), start, List.of(legs));
  }

  private static Journey coldRoom(double hours, double ambient) {
    return journey(298, leg("room", hours, ambient, AmbientSpread.ofItsOwn(1)));
  }

  @Test
  void whatIsTriedFitsTheShipment() {
    Journey indoors = coldRoom(10, 285);
    Set<String> words = new HashSet<>();
    for (Remedy change : Remedy.toTry(WARMED, indoors)) {
      assertTrue(words.add(change.words(UNITS)), change.words(UNITS));
    }
    assertTrue(words.contains("leave the warmer out"));
    assertTrue(words.contains("the warmer taped to the front"));
    assertTrue(words.contains("the warmer held 0.01 m off its wall"));
    assertTrue(words.stream().anyMatch(each -> each.contains(" more of foam on all sides")));
    assertFalse(words.contains("the warmer taped to the lid"), "it is there already");
    assertFalse(words.contains("the warmer taped to the floor"), "a cup may come to lie on it");
    assertTrue(words.stream().noneMatch(each -> each.contains("taken in")), "no last wait outside");
    List<Remedy> bare = Remedy.toTry(Packings.plain(), indoors);
    assertTrue(bare.stream().noneMatch(each -> each instanceof Remedy.NoWarmer));
    assertTrue(bare.contains(new Remedy.OtherWarmer(Warmers.FORTY_HOUR)));
    Journey porch =
        journey(
            298,
            leg("van", 2, 285, AmbientSpread.ofItsOwn(1)),
            leg("porch", 3, 275, new AmbientSpread(1, 3), Situations.PORCH_IN_SHADE.films()));
    assertTrue(Remedy.toTry(WARMED, porch).contains(new Remedy.HandedOver("porch")));
    Journey van =
        journey(
            298,
            leg("depot", 2, 285, AmbientSpread.ofItsOwn(1)),
            leg("van", 3, 275, new AmbientSpread(1, 3)));
    assertTrue(
        Remedy.toTry(WARMED, van).stream().noneMatch(each -> each instanceof Remedy.HandedOver));
  }

  @Test
  void whatTakesHeatIsNotTriedWhereColdAloneHarms() {
    Odds never = new Odds(1, 0.99, 1);
    Odds often = new Odds(0.6, 0.55, 0.65);
    Odds seldom = new Odds(0.9, 0.85, 0.95);
    Remedy thinner = new Remedy.ThinnerFoam();
    Remedy without = new Remedy.NoWarmer();
    Journey room = coldRoom(10, 285);
    List<Remedy> cold = tried(room, new OddsByCause(often, often, never, seldom, never));
    assertFalse(cold.contains(thinner) || cold.contains(without), cold.toString());
    assertTrue(cold.contains(new Remedy.ThickerFoam()));
    List<Remedy> both = tried(room, new OddsByCause(often, often, seldom, never, never));
    assertTrue(both.contains(thinner) && both.contains(without), both.toString());
    List<Remedy> airless = tried(room, new OddsByCause(often, seldom, never, often, never));
    assertTrue(airless.contains(thinner) && airless.contains(without), airless.toString());
  }

  private static List<Remedy> tried(Journey journey, OddsByCause odds) {
    return ChangesTried.worthTrying(WARMED, journey, odds);
  }

  /** The trade holds parcels at a depot for those who fetch them: common practice, no source. */
  @Test
  void whatGoesThroughTheWeatherAfterADepotMayBeFetchedThere() {
    AmbientSpread outdoors = new AmbientSpread(1, 3);
    Leg depot = leg("depot", 2, 285, outdoors, Situations.DEPOT.films(), Stowage.AMONG_OTHERS);
    Leg van = leg("van", 3, 275, outdoors);
    Leg porch = leg("porch", 3, 275, outdoors, Situations.PORCH_IN_SHADE.films());
    Journey brought = journey(298, depot, van, porch);
    Remedy.Fetched fetched = new Remedy.Fetched("depot", List.of("van", "porch"));
    assertTrue(Remedy.toTry(WARMED, brought).contains(fetched));
    Journey held = fetched.applyTo(WARMED, brought).journey();
    assertEquals(List.of(depot), held.legs());
    assertEquals(298, held.startTemperature());
    assertTrue(fetched.words(UNITS).contains("after 'depot', without 'van' and 'porch'"));
    for (Journey other :
        List.of(
            journey(298, van, porch),
            journey(298, van, depot),
            journey(298, depot, porch),
            journey(298, depot, leg("room", 3, 290, AmbientSpread.ofItsOwn(1))))) {
      assertTrue(
          Remedy.toTry(WARMED, other).stream().noneMatch(each -> each instanceof Remedy.Fetched),
          other.legs()::toString);
    }
  }

  @Test
  void eachChangeChangesWhatItSays() {
    Journey journey =
        journey(
            298,
            leg("van", 2, 285, AmbientSpread.ofItsOwn(1)),
            leg("porch", 3, 275, new AmbientSpread(1, 3)));
    Parcel thicker = new Remedy.ThickerFoam().applyTo(WARMED, journey).parcel();
    assertEquals(0.004 + 0.020 + 0.01905, thicker.walls().thickness(Face.X_MIN), 1e-12);
    Parcel thinner = new Remedy.ThinnerFoam().applyTo(WARMED, journey).parcel();
    assertEquals(0.004 + 0.010, thinner.walls().thickness(Face.X_MIN), 1e-12);
    for (Axis axis : Axis.values()) {
      assertEquals(WARMED.cavity().size(axis), thicker.cavity().size(axis), 1e-12);
      assertEquals(WARMED.cavity().size(axis), thinner.cavity().size(axis), 1e-12);
    }
    Parcel board =
        new Parcel(
            "board",
            Packings.OUTER,
            Walls.uniform(List.of(Packings.WALLS.layers().get(Face.Z_MAX).get(0))),
            WARMED.filling(),
            WARMED.containers(),
            List.of(),
            List.of());
    assertEquals(
        0.004 + 0.01905,
        new Remedy.ThickerFoam().applyTo(board, journey).parcel().walls().thickness(Face.X_MIN),
        1e-12);
    assertTrue(new Remedy.NoWarmer().applyTo(WARMED, journey).parcel().warmers().isEmpty());
    assertEquals(
        Warmers.FORTY_HOUR,
        new Remedy.OtherWarmer(Warmers.FORTY_HOUR)
            .applyTo(Packings.plain(), journey)
            .parcel()
            .warmers()
            .get(0)
            .warmer());
    assertEquals(
        Face.X_MIN,
        new Remedy.WarmerOn(Face.X_MIN)
            .applyTo(WARMED, journey)
            .parcel()
            .warmers()
            .get(0)
            .placement()
            .onWall()
            .orElseThrow()
            .face());
    assertTrue(
        new Remedy.WarmerOffWall(0.01)
            .applyTo(WARMED, journey)
            .parcel()
            .warmers()
            .get(0)
            .placement()
            .onWall()
            .isEmpty());
    assertEquals(
        300, new Remedy.StartAt(300).applyTo(WARMED, journey).journey().startTemperature());
    Journey shorter = new Remedy.HandedOver("porch").applyTo(WARMED, journey).journey();
    assertEquals(2 * HOUR, shorter.duration());
    assertEquals(journey.sealing(), shorter.sealing());
  }

  private static ChangesTried.TriedChange looked(Remedy remedy, double margin) {
    return new ChangesTried.TriedChange(remedy, margin, Optional.empty());
  }

  @Test
  void theSecondThatIsJudgedIsAboutSomethingElse() {
    ChangesTried.TriedChange left = looked(new Remedy.WarmerOn(Face.X_MIN), 1.51);
    ChangesTried.TriedChange right = looked(new Remedy.WarmerOn(Face.X_MAX), 1.5);
    ChangesTried.TriedChange warm = looked(new Remedy.StartAt(300), 1.4);
    assertEquals(List.of(0, 2), ChangesTried.finalists(List.of(left, right, warm), false));
    assertEquals(List.of(0, 1), ChangesTried.finalists(List.of(left, right, warm), true));
    assertEquals(List.of(0, 1), ChangesTried.finalists(List.of(left, right), false));
    assertEquals(List.of(0), ChangesTried.finalists(List.of(left), false));
    assertEquals(List.of(), ChangesTried.finalists(List.of(), false));
  }

  /** Two levels are told of few journeys only where it is not between them whether to send. */
  @Test
  void moreJourneysAreRunWhereTheyDecideWhetherItLikelyHolds() {
    assertFalse(ChangesTried.isEnough(new Odds(0.84, 0.76, 0.91)));
    assertFalse(ChangesTried.isEnough(new Odds(0.96, 0.9, 0.99)));
    assertTrue(ChangesTried.isEnough(new Odds(0.9, 0.83, 0.95)));
    assertTrue(ChangesTried.isEnough(new Odds(0.78, 0.7, 0.86)));
    assertTrue(ChangesTried.isEnough(new Odds(0.55, 0.46, 0.64)));
  }

  private static ChangesTried.TriedChange judged(Remedy remedy, double low) {
    return new ChangesTried.TriedChange(
        remedy, -1, Optional.of(ofCold(new Odds(low + 0.05, low, low + 0.1))));
  }

  /** Where all that fail fail of the cold. */
  private static OddsByCause ofCold(Odds within) {
    Odds never = new Odds(1, 0.99, 1);
    return new OddsByCause(within, within, never, never, never);
  }

  /** Two changes go together where neither is enough and they are about different things. */
  @Test
  void whatIsAboutDifferentThingsIsTriedTogether() {
    Remedy foam = new Remedy.ThickerFoam();
    Remedy spacer = new Remedy.WarmerOffWall(0.01);
    Remedy.Both both = new Remedy.Both(foam, spacer);
    assertEquals(Optional.of(both), together(judged(foam, 0.6), judged(spacer, 0.5)));
    assertEquals(
        Optional.empty(), together(judged(foam, 0.6), judged(spacer, Level.LIKELY.least())));
    assertEquals(Optional.empty(), together(judged(foam, 0.6)));
    assertEquals(
        Optional.empty(), ChangesTried.both(spacer, new Remedy.WarmerOn(Face.X_MIN)), "one face");
    // what both bring is done once
    Remedy room = new Remedy.MoreRoom(Axis.Z, 0.0254);
    assertEquals(
        Optional.of(new Remedy.Both(new Remedy.Both(room, foam), spacer)),
        ChangesTried.both(new Remedy.Both(room, foam), new Remedy.Both(room, spacer)));
    // what is enough but lies within the doubt of the packing as it is would not be told
    double enough = Level.LIKELY.least();
    assertEquals(
        Optional.of(both),
        ChangesTried.together(
            new Odds(enough + 0.01, enough - 0.03, enough + 0.05),
            List.of(judged(foam, enough), judged(spacer, 0.5)),
            Optional.of(both),
            change -> change.applyTo(WARMED, coldRoom(10, 285)).parcel()));
    Parcel changed = both.applyTo(WARMED, coldRoom(10, 285)).parcel();
    assertEquals(0.004 + 0.020 + 0.01905, changed.walls().thickness(Face.X_MIN), 1e-12);
    assertTrue(changed.warmers().get(0).placement().onWall().isEmpty());
    assertEquals(
        foam.words(UNITS) + "; and " + spacer.words(UNITS), both.words(UNITS), "one after another");
  }

  private static Optional<Remedy> together(ChangesTried.TriedChange... judged) {
    Journey journey = coldRoom(10, 285);
    Optional<Remedy> pair =
        judged.length < 2
            ? Optional.empty()
            : ChangesTried.both(judged[0].remedy(), judged[1].remedy());
    return ChangesTried.together(
        HALF, List.of(judged), pair, change -> change.applyTo(WARMED, journey).parcel());
  }

  /** Eight of a hundred become thirty, but two of three are cooked: no help. */
  @Test
  void whatPutsOneHarmInThePlaceOfAnotherIsNoHelp() {
    OddsByCause before = ofCold(new Odds(0.08, 0.05, 0.12));
    Odds never = new Odds(1, 0.99, 1);
    Odds some = new Odds(0.3, 0.25, 0.35);
    Odds cooked = new Odds(0.34, 0.3, 0.4);
    Remedy warmer = new Remedy.OtherWarmer(Warmers.all().get(0));
    ChangesTried.TriedChange swapped =
        new ChangesTried.TriedChange(
            warmer, -1, Optional.of(new OddsByCause(some, never, cooked, never, never)));
    assertEquals(Optional.empty(), new ChangesTried(before, -1, List.of(swapped)).best());
    ChangesTried.TriedChange warmed =
        new ChangesTried.TriedChange(warmer, -1, Optional.of(ofCold(some)));
    assertEquals(
        Optional.of(warmed), new ChangesTried(before, -1, List.of(swapped, warmed)).best());
  }

  /** What keeps the cold out may keep air out, and heat in where an animal can touch it. */
  @Test
  void theBetterOneInTemperatureIsMendedForWhatElseItFailsOf() {
    Odds never = new Odds(1, 0.99, 1);
    Odds half = new Odds(0.5, 0.45, 0.55);
    Remedy foam = new Remedy.ThickerFoam();
    ChangesTried.TriedChange cold = judged(new Remedy.WarmerOffWall(0.01), 0.6);
    ChangesTried.TriedChange airless =
        new ChangesTried.TriedChange(
            foam, -1, Optional.of(new OddsByCause(half, never, never, half, never)));
    Remedy way = Remedy.waysForAir(WARMED).get(0);
    assertEquals(new Remedy.MoreAir(), way);
    assertEquals(
        Optional.of(new Remedy.Both(foam, new Remedy.MoreAir(2))),
        together(cold, airless),
        "as many as let the same pass through twice the foam");
    ChangesTried.TriedChange vented =
        new ChangesTried.TriedChange(
            new Remedy.Both(foam, way),
            -1,
            Optional.of(new OddsByCause(half, never, never, half, never)));
    assertEquals(
        List.of(cold.remedy(), foam, way),
        together(cold, vented).orElseThrow().parts(),
        "it has that way already");
    ChangesTried.TriedChange burns =
        new ChangesTried.TriedChange(
            foam, -1, Optional.of(new OddsByCause(half, never, never, half, half)));
    Remedy mended =
        ChangesTried.together(HALF, List.of(cold, burns), Optional.empty(), change -> tight())
            .orElseThrow();
    assertEquals(3, mended.parts().size(), mended.toString());
    assertInstanceOf(Remedy.MoreRoom.class, mended.parts().get(1));
    assertEquals(new Remedy.MoreAir(2), mended.parts().get(2));
  }

  /** A warmer 36 mm above a cup. */
  private static Parcel tight() {
    return Packings.parcel(
        List.of(Packings.cup("cup", new Position(0, 0, 0.05))),
        List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));
  }

  /** Two inches are common practice, no source. */
  @Test
  void aBoxGetsHigherUntilTwoInchesLieBetweenWarmerAndCup() {
    Parcel parcel = tight();
    double gap =
        parcel.layout().block(parcel.warmers().get(0).name()).box().at(Face.Z_MIN)
            - parcel.layout().block(parcel.occupied().get(0).airBlock()).box().at(Face.Z_MAX);
    assertEquals(0.036, gap, 1e-3, "too near");
    Remedy.MoreRoom step = Remedy.MoreRoom.before(parcel, false).orElseThrow();
    assertEquals(0.0127, step.more(), 1e-12);
    assertEquals(Optional.empty(), Remedy.MoreRoom.before(WARMED, true), "far enough");
    Remedy.MoreRoom all = Remedy.MoreRoom.before(parcel, true).orElseThrow();
    Parcel higher = all.applyTo(parcel, coldRoom(10, 285)).parcel();
    assertEquals(parcel.outer().size(Axis.Z) + all.more(), higher.outer().size(Axis.Z), 1e-12);
    assertEquals(parcel.outer().size(Axis.X), higher.outer().size(Axis.X), 1e-12);
    double after =
        higher.layout().block(parcel.warmers().get(0).name()).box().at(Face.Z_MIN)
            - higher.layout().block(parcel.occupied().get(0).airBlock()).box().at(Face.Z_MAX);
    assertEquals(gap + all.more(), after, 1e-9);
    assertTrue(after > 0.0507 && after < 0.0508 + 0.0127, "enough: " + after);
    assertEquals(Optional.empty(), Remedy.MoreRoom.before(higher, true));
    assertEquals(Optional.empty(), Remedy.MoreRoom.before(parcel.withoutWarmers(), true));
  }

  /** A longer box grows at both ends, so that half of it comes to lie before a warmer on a side. */
  @Test
  void aBoxGetsLongerForAWarmerOnASide() {
    Parcel parcel =
        Packings.parcel(
            List.of(Packings.cup("cup", new Position(-0.04, 0, 0))),
            List.of(Packings.pad(Packings.steady(1), Face.X_MIN, Mounting.taped())));
    double gap = besideTheCup(parcel);
    assertTrue(gap > 0.01 && gap < 0.05, "too near: " + gap);
    Remedy.MoreRoom all = Remedy.MoreRoom.before(parcel, true).orElseThrow();
    assertEquals(Axis.X, all.along());
    assertTrue(all.words(UNITS).contains(" longer inside"), all.words(UNITS));
    Parcel longer = all.applyTo(parcel, coldRoom(10, 285)).parcel();
    assertEquals(gap + all.more() / 2, besideTheCup(longer), 1e-9);
    assertTrue(besideTheCup(longer) > 0.0507, "enough");
    assertEquals(Optional.empty(), Remedy.MoreRoom.before(longer, true));
    assertEquals(0.0254, Remedy.MoreRoom.before(parcel, false).orElseThrow().more(), 1e-12);
    Remedy.MoreRoom step = new Remedy.MoreRoom(Axis.Z, 0.0127);
    assertEquals(new Remedy.MoreRoom(Axis.Z, 0.0254), step.with(step));
    assertEquals(all, step.with(all), "the larger one");
  }

  private static double besideTheCup(Parcel parcel) {
    return parcel.room(parcel.occupied().get(0)).at(Face.X_MIN)
        - parcel.layout().block(parcel.warmers().get(0).name()).box().at(Face.X_MAX);
  }

  /** Frozen gel kills by cold what it is to save from heat; a warmer beside it is no answer. */
  @Test
  void aFrozenPackIsThawedOrLeftOutRatherThanWarmed() {
    PackClass gel =
        new PackClass(
            "gel",
            Materials.GEL_PACK,
            new Dimensions(0.06, 0.04, 0.01),
            0.022,
            0,
            Source.assumed("made up"));
    PlacedPack frozen =
        new PlacedPack(
            "pack",
            gel,
            Placement.onFace(Face.Z_MAX, Mounting.taped()),
            new PackStart.AtTemperature(255));
    Parcel chilled = Packings.plain().withPacks(List.of(frozen));
    Journey journey = coldRoom(10, 285);
    List<Remedy> tried = Remedy.toTry(chilled, journey);
    assertTrue(tried.contains(new Remedy.FromRefrigerator()));
    assertTrue(tried.contains(new Remedy.NoPack()));
    assertFalse(tried.contains(new Remedy.ChilledPack()));
    assertFalse(tried.contains(new Remedy.PackOnLid()), "it is there");
    Parcel thawed = new Remedy.FromRefrigerator().applyTo(chilled, journey).parcel();
    assertEquals(new PackStart.AtTemperature(278.15), thawed.packs().get(0).start());
    assertFalse(Remedy.toTry(thawed, journey).contains(new Remedy.FromRefrigerator()));
    assertEquals(List.of(), new Remedy.NoPack().applyTo(chilled, journey).parcel().packs());
    PlacedPack loose =
        new PlacedPack(
            "pack",
            gel,
            new Placement.InCavity(new Position(0.08, 0.06, 0.1), Axis.Z),
            frozen.start());
    Parcel lying = Packings.plain().withPacks(List.of(loose));
    assertTrue(Remedy.toTry(lying, journey).contains(new Remedy.PackOnLid()));
    assertEquals(List.of(frozen), new Remedy.PackOnLid().applyTo(lying, journey).parcel().packs());
    ChangesTried.TriedChange fridge = looked(new Remedy.FromRefrigerator(), 1);
    ChangesTried.TriedChange none = looked(new Remedy.NoPack(), 0.9);
    ChangesTried.TriedChange warm = looked(new Remedy.StartAt(300), 0.8);
    assertEquals(List.of(0, 1), ChangesTried.finalists(List.of(fridge, none, warm), false));
  }

  @Test
  void aSecondChangeMustBeWorthItsTrouble() {
    OddsByCause before = ofCold(new Odds(0.5, 0.45, 0.55));
    Remedy foam = new Remedy.ThickerFoam();
    Remedy both = new Remedy.Both(foam, new Remedy.WarmerOffWall(0.01));
    assertEquals(
        foam,
        new ChangesTried(before, -1, List.of(judged(both, 0.62), judged(foam, 0.6)))
            .best()
            .orElseThrow()
            .remedy());
    assertEquals(
        both,
        new ChangesTried(before, -1, List.of(judged(both, 0.64), judged(foam, 0.6)))
            .best()
            .orElseThrow()
            .remedy());
    assertEquals(
        Optional.empty(), new ChangesTried(before, -1, List.of(judged(both, 0.46))).best());
  }

  /** Tape stays where it is, whatever else is changed. */
  @Test
  void aFilmIsTapedOnceAndStaysTaped() {
    PlacedWarmer free = Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped());
    Journey indoors = coldRoom(10, 285);
    assertTrue(
        Remedy.toTry(Packings.warmed(List.of(free)), indoors).contains(new Remedy.HalfTaped()));
    Parcel taped = new Remedy.HalfTaped().applyTo(Packings.warmed(List.of(free)), indoors).parcel();
    assertEquals(FilmCover.HALF_TAPED, taped.warmers().get(0).cover());
    assertFalse(Remedy.toTry(taped, indoors).contains(new Remedy.HalfTaped()));
    for (Remedy each :
        List.of(
            new Remedy.OtherWarmer(Warmers.TWENTY_HOUR),
            new Remedy.WarmerOn(Face.X_MIN),
            new Remedy.WarmerOffWall(0.01))) {
      assertEquals(
          FilmCover.HALF_TAPED,
          each.applyTo(taped, indoors).parcel().warmers().get(0).cover(),
          each.words(UNITS));
    }
    assertFalse(Remedy.toTry(WARMED, indoors).contains(new Remedy.HalfTaped()), "a steady heater");
  }

  /** Holes in the box are of no use under a lid without any. */
  @Test
  void lidsAreOpenedFirst() {
    Container cup = Packings.plain().containers().get(0);
    Parcel tight = Packings.plain().withContainers(List.of(cup.with(LidHoles.NONE)));
    Remedy holes = new Remedy.HolesInLids();
    assertEquals(holes, Remedy.waysForAir(tight).get(0));
    assertFalse(Remedy.waysForAir(Packings.plain()).contains(holes));
    Parcel opened = holes.applyTo(tight, coldRoom(10, 285)).parcel();
    assertEquals(cup.vessel().holes(), opened.containers().get(0).vessel().holes());
  }

  @Test
  void aWarmerIsOpenedEarlierOnce() {
    PlacedWarmer late = Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped());
    Journey indoors = coldRoom(10, 285);
    Remedy earlier = new Remedy.OpenedEarlier();
    assertTrue(Remedy.toTry(Packings.warmed(List.of(late)), indoors).contains(earlier));
    Parcel opened = earlier.applyTo(Packings.warmed(List.of(late)), indoors).parcel();
    assertEquals(-0.75 * HOUR, opened.warmers().get(0).opened());
    assertTrue(opened.warmers().get(0).burnsBeforeSealing());
    assertFalse(Remedy.toTry(opened, indoors).contains(earlier));
    assertFalse(Remedy.toTry(WARMED, indoors).contains(earlier), "a steady heater");
  }

  /** A cup as wide as the room: a warmer on the front would lie on it. */
  @Test
  void aWarmerIsNotPutWhereItMayBurn() {
    Parcel narrow =
        Packings.parcel(
            List.of(
                Packings.cup("cup", new Dimensions(0.10, 0.15, 0.06), Position.MIDDLE_OF_FLOOR)),
            WARMED.warmers());
    Remedy front = new Remedy.WarmerOn(Face.Y_MIN);
    InvalidInputException refusal =
        assertThrows(InvalidInputException.class, () -> front.applyTo(narrow, coldRoom(10, 285)));
    assertTrue(refusal.getMessage().contains("of 'cup'"), refusal.getMessage());
  }

  /**
   * At 6 °C a corn snake is too cold without heat; what helps is a warmer, and it must be found.
   */
  @Test
  void whatHelpsIsFoundAndJudgedByOdds() {
    Journey cold = coldRoom(20, 279.15);
    Assessor assessor = new Assessor(Packings.plain(), cold, SETTINGS);
    TransitResult planned = assessor.untilOpening(listener());
    Assessment now = assessor.assess(listener());
    assertTrue(now.verdict().within().within() < 0.1, now.verdict().toString());
    ChangesTried tried = ChangesTried.on(planned, now, SETTINGS, ProgressListener.NONE);
    ChangesTried.TriedChange found = tried.best().orElseThrow();
    assertInstanceOf(Remedy.OtherWarmer.class, found.remedy());
    assertTrue(
        tried.changes().stream().noneMatch(each -> each.remedy() instanceof Remedy.ChilledPack),
        "against the cold");
    Odds within = found.within().orElseThrow();
    assertTrue(within.low() > 0.5, found.toString());
    assertTrue(tried.changes().size() >= 5, tried.toString());
    assertTrue(tried.margin() < 0 && tried.margin() < found.margin(), tried.toString());
    assertEquals(
        2, tried.changes().stream().filter(each -> each.within().isPresent()).count(), "by odds");
    assertTrue(tried.changes().get(0).within().isPresent(), "the most promising comes first");
    Remedy.Shipment changed = found.remedy().applyTo(Packings.plain(), cold);
    assertEquals(
        Assessor.assess(changed.parcel(), changed.journey(), SETTINGS, listener())
            .verdict()
            .within()
            .within(),
        within.within(),
        0.03,
        "the odds of a verdict on finer grids");
  }

  /**
   * Between a hot van and a cold hold no warmer helps, whatever it does to a typical journey: more
   * foam makes journeys differ less.
   */
  @Test
  void whereHeatAndColdMayHarmMoreFoamIsFound() {
    Journey both =
        journey(
            298,
            leg("van", 2, 295, AmbientSpread.ofItsOwn(12)),
            leg("hold", 3, 293, AmbientSpread.ofItsOwn(16)));
    Assessor assessor = new Assessor(Packings.plain(), both, SETTINGS);
    TransitResult planned = assessor.untilOpening(listener());
    Assessment now = assessor.assess(listener());
    assertTrue(now.odds().notTooCold().within() < 0.9, now.odds().notTooCold().toString());
    assertTrue(now.odds().notTooHot().within() < 0.99, now.odds().notTooHot().toString());
    ChangesTried.TriedChange found =
        ChangesTried.on(planned, now, SETTINGS, ProgressListener.NONE).best().orElseThrow();
    assertTrue(found.remedy().parts().contains(new Remedy.ThickerFoam()), found.toString());
    assertTrue(
        found.within().orElseThrow().low() > now.verdict().within().within(), found.toString());
  }

  /**
   * By hand: half a litre holds 2.1 kJ/K, which a box that loses 0.5 to 1 W/K gives off in half an
   * hour to an hour more. Of the difference to a room a fifth is left after three hours, that is an
   * e-fold in 1.9 h; with 0.5 h more a quarter is.
   */
  @Test
  void waterAsWarmAsTheRoomSlowsWhatALightBoxFollows() {
    Remedy ballast = new Remedy.Ballast();
    Journey cold = coldRoom(3, 283);
    Parcel light = Packings.plain();
    Parcel heavy = ballast.applyTo(light, cold).parcel();
    assertEquals(Face.Z_MAX, heavy.packs().get(0).placement().onWall().orElseThrow().face());
    assertEquals(0.5, heavy.packs().get(0).pack().mass(), 0.02);
    double start = cold.startTemperature();
    double left = (last(heavy, cold) - 283) / (start - 283);
    double before = (last(light, cold) - 283) / (start - 283);
    assertTrue(left > before + 0.05, before + " became " + left);
    // under a lid that has a warmer it has no room
    Parcel warmed = ballast.applyTo(WARMED, cold).parcel();
    assertEquals(Face.Y_MAX, warmed.packs().get(0).placement().onWall().orElseThrow().face());
    assertFalse(Remedy.toTry(heavy, cold).contains(ballast), "there is one already");
  }

  private static double last(Parcel parcel, Journey journey) {
    double[] mean =
        ParcelModel.of(parcel, journey, SETTINGS.transit())
            .run(journey, Variation.NOMINAL)
            .mean("cup");
    return mean[mean.length - 1];
  }

  @Test
  void aLargerBoxHasMoreRoomAroundTheSame() {
    Remedy larger = new Remedy.LargerBox();
    Journey journey = coldRoom(10, 285);
    assertTrue(Remedy.toTry(WARMED, journey).contains(larger), "a warmer in it warms less");
    assertFalse(Remedy.toTry(Packings.plain(), journey).contains(larger), "without one it is idle");
    Parcel box = larger.applyTo(WARMED, journey).parcel();
    assertEquals(0.0508, box.cavity().size(Axis.X) - WARMED.cavity().size(Axis.X), 1e-12);
    assertEquals(0.0508, box.cavity().size(Axis.Y) - WARMED.cavity().size(Axis.Y), 1e-12);
    assertEquals(0.0254, box.cavity().size(Axis.Z) - WARMED.cavity().size(Axis.Z), 1e-12);
    assertEquals(WARMED.walls(), box.walls());
    assertEquals(WARMED.containers(), box.containers());
    assertEquals(WARMED.warmers(), box.warmers());
  }

  @Test
  void waterThatHasNoRoomIsTriedInALargerBox() {
    Remedy water = new Remedy.Ballast();
    Journey cold = coldRoom(10, 285);
    Parcel low =
        Packings.warmed(List.of(Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped())));
    Remedy larger = ChangesTried.inLargerBox(water);
    assertEquals(new Remedy.Both(new Remedy.LargerBox(), water), larger);
    assertEquals(1, larger.applyTo(low, cold).parcel().packs().size());
    Remedy foam = new Remedy.ThickerFoam();
    assertEquals(foam, ChangesTried.inLargerBox(foam), "it makes its own room");
  }

  /** Across from the first one; where it is too hot rather than too cold, none. */
  @Test
  void aSecondWarmerIsTriedAgainstTheColdAlone() {
    Journey cold = coldRoom(10, 285);
    Parcel one =
        Packings.warmed(List.of(Packings.pad(Warmers.FORTY_HOUR, Face.X_MAX, Mounting.taped())));
    Remedy second = new Remedy.SecondWarmer(Face.X_MIN);
    Odds never = new Odds(1, 0.99, 1);
    Odds often = new Odds(0.6, 0.55, 0.65);
    OddsByCause tooCold = new OddsByCause(often, often, never, never, never);
    OddsByCause tooHot = new OddsByCause(often, never, often, never, never);
    assertTrue(ChangesTried.worthTrying(one, cold, tooCold).contains(second));
    assertFalse(ChangesTried.worthTrying(one, cold, tooHot).contains(second));
    Parcel two = second.applyTo(one, cold).parcel();
    assertEquals(2, two.warmers().size());
    assertEquals(two.warmers().get(0).warmer(), two.warmers().get(1).warmer());
    assertEquals(Face.X_MIN, two.warmers().get(1).placement().onWall().orElseThrow().face());
    assertEquals("a second warmer of the same kind, taped to the left", second.words(UNITS));
  }

  @Test
  void moreOfAPackIsTriedAgainstHeatAlone() {
    Journey room = coldRoom(6, 307);
    Parcel one = new Remedy.ChilledPack().applyTo(Packings.plain(), room).parcel();
    PackClass thin = one.packs().get(0).pack();
    PackClass thick = new Remedy.TwicePack().applyTo(one, room).parcel().packs().get(0).pack();
    assertEquals(2 * thin.mass(), thick.mass(), 1e-12);
    assertEquals(2 * thin.size().volume(), thick.size().volume(), 1e-12);
    assertEquals(thin.size().length(), thick.size().length());
    Odds never = new Odds(1, 0.99, 1);
    Odds often = new Odds(0.6, 0.55, 0.65);
    OddsByCause hot = new OddsByCause(often, never, often, never, never);
    OddsByCause cold = new OddsByCause(often, often, never, never, never);
    assertTrue(ChangesTried.worthTrying(one, room, hot).contains(new Remedy.TwicePack()));
    assertFalse(ChangesTried.worthTrying(one, room, cold).contains(new Remedy.TwicePack()));
  }

  /** In a hot room something cold helps; it is offered to no box that has a warmer, or a pack. */
  @Test
  void somethingChilledIsTriedAgainstHeatAlone() {
    Remedy chilled = new Remedy.ChilledPack();
    Journey hot = coldRoom(6, 307);
    Parcel cooled = chilled.applyTo(Packings.plain(), hot).parcel();
    assertEquals(1, cooled.packs().size());
    assertFalse(cooled.packs().get(0).pack().melts(), "odds would take minutes");
    assertFalse(Remedy.toTry(cooled, hot).contains(chilled), "there is one already");
    InvalidInputException refusal =
        assertThrows(InvalidInputException.class, () -> chilled.applyTo(WARMED, hot));
    assertTrue(refusal.getMessage().contains("leave the warmer out"), refusal.getMessage());
    Assessor assessor = new Assessor(Packings.plain(), hot, SETTINGS);
    TransitResult planned = assessor.untilOpening(listener());
    Assessment now = assessor.assess(listener());
    assertTrue(now.odds().notTooHot().within() < 0.2, now.odds().notTooHot().toString());
    ChangesTried tried = ChangesTried.on(planned, now, SETTINGS, ProgressListener.NONE);
    assertEquals(
        new Remedy.Both(chilled, new Remedy.ThickerFoam()),
        tried.best().orElseThrow().remedy(),
        "more foam keeps the cold in");
    ChangesTried.TriedChange found = tried.changes().get(1);
    assertEquals(chilled, found.remedy(), tried.toString());
    assertTrue(
        tried.best().orElseThrow().within().orElseThrow().low()
            > found.within().orElseThrow().high(),
        tried.toString());
    // by hand: 0.26 kg x 4190 J/(kg K) x 20 K = 22 kJ in 6 h is 1 W, which a box of 0.3 to 0.6 W/K
    // answers with 1.5 to 3.5 K
    assertTrue(found.margin() - tried.margin() > 1.5, tried.toString());
    assertTrue(found.margin() - tried.margin() < 3.5, tried.toString());
  }

  @Test
  void nothingIsFoundWhereNothingHelpsAndAnInterruptIsHonoured() {
    Assessor assessor = new Assessor(Packings.plain(), coldRoom(10, 296), SETTINGS);
    TransitResult planned = assessor.untilOpening(listener());
    Assessment now = assessor.assess(listener());
    assertEquals(1, now.verdict().within().within());
    assertTrue(ChangesTried.on(planned, now, SETTINGS, ProgressListener.NONE).best().isEmpty());
    Thread.currentThread().interrupt();
    assertThrows(
        CancellationException.class,
        () -> ChangesTried.on(planned, now, SETTINGS, ProgressListener.NONE));
    assertTrue(Thread.interrupted());
  }

  /** The first look is the nominal run, to what the coarsest grid leaves. */
  @Test
  void theFirstLookIsNearTheVerdict() {
    Journey cool = coldRoom(20, 284.15);
    Assessor assessor = new Assessor(WARMED, cool, SETTINGS);
    FirstLook look = assessor.firstLook();
    Assessment later = assessor.assess(listener());
    double cold = later.nominalMargin(Side.COLD).kelvin();
    double hot = later.nominalMargin(Side.HOT).kelvin();
    assertEquals(cold, look.fate().cold().margin(), 0.3);
    assertEquals(hot, look.fate().hot().margin(), 0.3);
    assertEquals(Math.min(look.fate().cold().margin(), look.fate().hot().margin()), look.least());
    assertEquals(look.least() >= 0, look.isWithin());
    assertEquals(later.nominalMargin(Side.COLD).temperature(), look.coldest(), 0.3);
    assertEquals(later.nominalMargin(Side.HOT).temperature(), look.hottest(), 0.3);
  }

  private static ProgressListener listener() {
    return ProgressListener.NONE;
  }
}
