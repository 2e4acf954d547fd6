package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Situations;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.ProgressListener;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.Box;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.study.Odds;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;
import stenotherm.warmer.Warmers;

class MishapTest {
  private static final double HOUR = Times.HOUR;
  private static final Place HERE = new Place("here", ZoneOffset.UTC);
  private static final Source MADE_UP = Source.assumed("made up");
  private static final AssessmentSettings SETTINGS =
      new AssessmentSettings(
          new TransitSettings(Packings.FEW_CELLS, HOUR, IntegratorSettings.standard()),
          12 * HOUR,
          new StudySettings(16, 8, 1, 2));

  private static final PlacedWarmer PAD =
      Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped());
  private static final Parcel WARMED = Packings.warmed(List.of(PAD));

  /** Sealed at 10:00; the van is 3 K warmer than a day between -3 °C and 9 °C. */
  private static final TimeFunction OUTDOORS =
      TimeFunction.table(
          new double[] {-10 * HOUR, 5 * HOUR, 60 * HOUR}, new double[] {270, 282, 276});

  private static final Range TIMES = new Range(-5 * HOUR, 59 * HOUR);

  private static Leg leg(
      String name, double hours, TimeFunction air, AmbientSpread spread, Source source) {
    return new Leg(
        name,
        HERE,
        hours * HOUR,
        new Surroundings(
            air,
            spread,
            FaceFilms.indoors(),
            Stowage.ALONE,
            Orientation.LID_UP,
            0,
            Sunshine.NONE,
            List.of()),
        source);
  }

  private static Leg van(double offset) {
    return leg(
        "van",
        3,
        Ambient.following(OUTDOORS, TIMES, offset, HOUR),
        new AmbientSpread(1, 3),
        Situations.VAN.source());
  }

  private static Leg depot() {
    return leg("depot", 10, Ambient.constant(283), AmbientSpread.ofItsOwn(2), MADE_UP);
  }

  private static Leg porch(double kelvin) {
    return leg(
        "porch",
        8,
        kelvin == 0
            ? OUTDOORS
            : TimeFunction.table(
                new double[] {-10 * HOUR, 5 * HOUR, 60 * HOUR},
                new double[] {270 + kelvin, 282 + kelvin, 276 + kelvin}),
        new AmbientSpread(1, 3),
        MADE_UP);
  }

  private static Journey journey(Leg... legs) {
    return new Journey(LocalDateTime.of(2026, 1, 31, 10, 0), 295, List.of(legs));
  }

  private static final Journey JOURNEY = journey(van(3), depot(), porch(0));

  private static final FirstLook PLAN = new Assessor(WARMED, JOURNEY, SETTINGS).firstLook();

  /** What a mishap leaves and what was changed by hand fare the same to the last bits. */
  private static void assertSame(Mishap mishap, Parcel parcel, Journey journey) {
    Remedy.Shipment after = mishap.applyTo(WARMED, JOURNEY);
    FirstLook there = new Assessor(after.parcel(), after.journey(), SETTINGS).firstLook();
    FirstLook byHand = new Assessor(parcel, journey, SETTINGS).firstLook();
    String words = mishap.words(new SiUnits());
    assertEquals(byHand.coldest(), there.coldest(), 1e-9, words);
    assertEquals(byHand.hottest(), there.hottest(), 1e-9, words);
    assertEquals(byHand.fate().outside(), there.fate().outside(), 1e-5, words);
    assertTrue(
        Math.abs(PLAN.coldest() - there.coldest()) + Math.abs(PLAN.hottest() - there.hottest())
            > 1e-3,
        () -> words + " changes nothing");
  }

  @Test
  void journeysThatGoWrongAreAsChangedByHand() {
    assertSame(
        new Mishap.Late(1, "depot", Times.DAY),
        WARMED,
        journey(
            van(3),
            new Leg("depot", HERE, 10 * HOUR, Times.DAY, depot().surroundings(), MADE_UP),
            porch(0)));
    assertSame(new Mishap.MissedForecast(-5), WARMED, journey(van(-2), depot(), porch(-5)));
    assertSame(new Mishap.UnheatedVehicle(), WARMED, journey(van(0), depot(), porch(0)));
    Leg[] lying =
        JOURNEY.legs().stream()
            .map(each -> each.in(each.surroundings().lying(Orientation.LID_DOWN)))
            .toArray(Leg[]::new);
    assertSame(new Mishap.Lying(Orientation.LID_DOWN), WARMED, journey(lying));
  }

  /** On the road at midday: 12:00 to 13:00 is the end of the van, the porch comes by night. */
  @Test
  void theSunComesAsNearToMiddayAsTheWeatherReaches() {
    Leg van = van(3);
    Surroundings sunny =
        new Surroundings(
            van.surroundings().ambient(),
            van.surroundings().spread(),
            Situations.RAMP.films(),
            Stowage.ALONE,
            Orientation.LID_UP,
            0,
            new Sunshine(
                Map.of(Face.Z_MAX, TimeFunction.constant(800)), SolarAbsorptance.KRAFT_BOARD, 0),
            List.of());
    assertSame(
        new Mishap.SunOnLid(),
        WARMED,
        journey(
            van.lasting(HOUR), new Leg("sun", HERE, 2 * HOUR, sunny, MADE_UP), depot(), porch(0)));
    Journey night =
        new Journey(LocalDateTime.of(2026, 1, 31, 22, 0), 295, List.of(van(3), depot()));
    Mishap sun = new Mishap.SunOnLid();
    assertThrows(InvalidInputException.class, () -> sun.applyTo(WARMED, night));
  }

  @Test
  void parcelsThatGoWrongAreAsChangedByHand() {
    Placement onCup =
        new Placement.InCavity(
            new Position(
                0,
                0,
                WARMED.room(WARMED.containers().get(0)).max().z() - WARMED.cavity().min().z()),
            Axis.Z);
    assertSame(
        new Mishap.LooseWarmer(),
        WARMED.withWarmers(List.of(new PlacedWarmer("pad", Warmers.FORTY_HOUR, onCup, 0))),
        JOURNEY);
    assertSame(
        new Mishap.DeadWarmer(),
        WARMED.withWarmers(
            List.of(new PlacedWarmer("pad", Warmers.FORTY_HOUR, PAD.placement(), 400 * HOUR))),
        JOURNEY);
    assertSame(
        new Mishap.CoveredFilm(),
        WARMED.withWarmers(
            List.of(
                new PlacedWarmer(
                    "pad", Warmers.FORTY_HOUR, PAD.placement(), 0, FilmCover.TAPED_OVER))),
        JOURNEY);
    assertSame(new Mishap.NoFill(), WARMED.withFilling(Filling.none()), JOURNEY);
    assertSame(
        new Mishap.BlockedOpenings(), WARMED.withOpenings(new Openings(0, List.of())), JOURNEY);
  }

  @Test
  void aPackMayBeForgottenLooseOrHalfFrozen() {
    PackClass gel =
        new PackClass(
            "gel pack",
            Materials.GEL_PACK,
            new Dimensions(0.06, 0.05, 0.01),
            0.03,
            0,
            Source.assumed("made up"));
    Placement lid = Placement.onFace(Face.Z_MAX, Mounting.taped());
    PackStart frozen = new PackStart.AtTemperature(255);
    Parcel plain = WARMED.withoutWarmers();
    Parcel chilled = plain.withPacks(List.of(new PlacedPack("pack", gel, lid, frozen)));
    assertSame(new Mishap.ForgottenPack(), chilled, plain);
    assertSame(
        new Mishap.HalfFrozenPack(),
        chilled,
        plain.withPacks(
            List.of(new PlacedPack("pack", gel, lid, new PackStart.PartlyMelted(0.5)))));
    Parcel loose = new Mishap.LoosePack().applyTo(chilled, JOURNEY).parcel();
    Box lying = loose.packs().get(0).placement().box(gel.size(), loose.cavity());
    Box cup = loose.room(loose.containers().get(0));
    assertEquals(cup.max().z(), lying.min().z(), 1e-12);
    assertEquals(cup.centre().x(), lying.centre().x(), 1e-12);
    Parcel thawed =
        plain.withPacks(
            List.of(new PlacedPack("pack", gel, lid, new PackStart.AtTemperature(277))));
    assertSame(new Mishap.HalfFrozenPack(), thawed, thawed);
    assertSame(new Mishap.LoosePack(), plain, plain);
    assertFalse(new Mishap.LoosePack().excludes(new Mishap.LooseWarmer()));
  }

  private static void assertSame(Mishap mishap, Parcel before, Parcel after) {
    Remedy.Shipment changed = mishap.applyTo(before, JOURNEY);
    assertEquals(after, changed.parcel());
    assertEquals(JOURNEY, changed.journey());
  }

  @Test
  void aLegAloneMayBeColderAndTheSunMayShineInOneLeg() {
    assertSame(
        new Mishap.OtherAir(1, "depot", -8),
        WARMED,
        journey(
            van(3),
            leg("depot", 10, Ambient.constant(275), AmbientSpread.ofItsOwn(2), MADE_UP),
            porch(0)));
    Remedy.Shipment sunny = new Mishap.SunOnLid(HOUR, OptionalInt.of(1)).applyTo(WARMED, JOURNEY);
    assertEquals(
        List.of("van", "sun on the lid", "depot", "porch"),
        sunny.journey().legs().stream().map(Leg::name).toList());
    // which leg a mishap chooses is told on a journey alone
    assertEquals(
        "two hours of sun on the lid in 'van'",
        new Mishap.SunOnLid().words(new SiUnits(), JOURNEY));
    Mishap late = new Mishap.SunOnLid(HOUR, OptionalInt.of(2));
    assertThrows(InvalidInputException.class, () -> late.applyTo(WARMED, JOURNEY));
  }

  @Test
  void whatHappensTogetherIsOneAfterTheOther() {
    Mishap both =
        Mishap.Own.together("both", List.of(new Mishap.NoFill(), new Mishap.MissedForecast(-5)));
    Remedy.Shipment after = both.applyTo(WARMED, JOURNEY);
    assertEquals(WARMED.withFilling(Filling.none()), after.parcel());
    assertEquals(new Mishap.MissedForecast(-5).applyTo(WARMED, JOURNEY).journey(), after.journey());
    assertThrows(InvalidInputException.class, () -> Mishap.Own.together("none", List.of()));
  }

  @Test
  void whatIsOfOneKindDoesNotHappenTogether() {
    Mishap dead = new Mishap.DeadWarmer();
    assertTrue(dead.excludes(new Mishap.LooseWarmer()));
    assertTrue(dead.excludes(dead));
    assertFalse(dead.excludes(new Mishap.NoFill()));
    Mishap own = new Mishap.Own("one", (parcel, journey) -> new Remedy.Shipment(parcel, journey));
    Mishap other = new Mishap.Own("two", (parcel, journey) -> new Remedy.Shipment(parcel, journey));
    assertFalse(own.excludes(other));
    assertTrue(own.excludes(own));
    Mishap sunny = Mishap.Own.together("sunny", List.of(new Mishap.SunOnLid()));
    assertTrue(sunny.excludes(new Mishap.Lying(Orientation.LID_DOWN)));
    assertTrue(new Mishap.Lying(Orientation.LID_DOWN).excludes(sunny));
    assertFalse(sunny.excludes(own));
    assertFalse(sunny.excludes(new Mishap.NoFill()));
  }

  /** The model is made ready upright; lying otherwise it must be as near as if made for that. */
  @Test
  void otherFacesUpNeedNoModelOfTheirOwn() {
    CoarseOutlook upright = new CoarseOutlook(WARMED, List.of(JOURNEY), SETTINGS);
    for (Orientation each : Orientation.values()) {
      Journey lying = new Mishap.Lying(each).applyTo(WARMED, JOURNEY).journey();
      CoarseOutlook own = new CoarseOutlook(WARMED, List.of(lying), SETTINGS);
      assertEquals(
          own.fate(lying, CoarseOutlook.Missed.UNKNOWN).cold().margin(),
          upright.fate(lying, CoarseOutlook.Missed.UNKNOWN).cold().margin(),
          0.05,
          each.words());
    }
  }

  @Test
  void theWorstComesFirstAndAUsersOwnIsCounted() {
    Mishap frost =
        new Mishap.Own(
            "left in the frost",
            (parcel, journey) ->
                new Remedy.Shipment(
                    parcel,
                    new Journey(
                        journey.sealing(),
                        journey.startTemperature(),
                        journey.legs().stream()
                            .map(leg -> leg.in(leg.surroundings().warmer(-25)))
                            .toList())));
    List<Mishap> mishaps =
        List.of(
            new Mishap.MissedForecast(5),
            new Mishap.MissedForecast(-5),
            frost,
            new Mishap.DeadWarmer(),
            new Mishap.NoFill(),
            new Mishap.Lying(Orientation.LID_DOWN),
            new Mishap.Late(9, "none", HOUR));
    List<Harm> early = new ArrayList<>();
    MishapStudy study =
        MishapStudy.of(WARMED, JOURNEY, mishaps, SETTINGS, early::addAll, ProgressListener.NONE);
    assertEquals(6, early.size());
    assertEquals(6, study.singles().size());
    assertEquals(1, study.leftOut().size(), study.leftOut().toString());
    assertEquals("left in the frost", study.singles().get(0).words(new SiUnits()));
    assertEquals(Harm.Danger.COLD, study.singles().get(0).danger());
    assertTrue(study.singles().get(0).isBreached());
    List<Double> odds =
        study.singles().stream()
            .map(Harm::within)
            .map(Optional::orElseThrow)
            .map(Odds::within)
            .toList();
    assertEquals(odds.stream().sorted().toList(), odds);
    List<Harm> broken = study.singles().stream().filter(Harm::isBroken).toList();
    assertEquals(
        List.of("left in the frost", "the warmer dead", "5 K colder than forecast"),
        broken.stream().map(each -> each.words(new SiUnits())).toList());
    assertEquals(
        List.of(
            "5 K warmer than forecast and no fill",
            "5 K warmer than forecast and upside down",
            "upside down and no fill"),
        study.pairs().stream().map(each -> each.words(new SiUnits())).sorted().toList(),
        "only what is withstood alone meets in pairs");
    // the nominal run of a pair is that of the same change made by hand
    Harm pair =
        study.pairs().stream()
            .filter(
                each -> each.words(new SiUnits()).equals("5 K warmer than forecast and no fill"))
            .findFirst()
            .orElseThrow();
    FirstLook byHand =
        new Assessor(
                WARMED.withFilling(Filling.none()), journey(van(8), depot(), porch(5)), SETTINGS)
            .firstLook();
    assertEquals(byHand.fate().cold().margin(), pair.nominal().cold().margin(), 0.3);
  }

  /** The sun divides a leg: what is uncertain of the other journeys has fewer offsets. */
  @Test
  void journeysOfOnePackingMayDifferInTheNumberOfLegs() {
    Journey sunny = new Mishap.SunOnLid().applyTo(WARMED, JOURNEY).journey();
    List<Journey> both = List.of(sunny, JOURNEY);
    CoarseOutlook.Odd odd =
        new CoarseOutlook(WARMED, both, SETTINGS).odd(both, both, CoarseOutlook.Missed.UNKNOWN);
    StudySettings few = new StudySettings(16, 1, 1, 1);
    for (Journey each : both) {
      assertDoesNotThrow(() -> odd.odds(each, few, ProgressListener.NONE));
    }
  }

  @Test
  void aStopIsHonoured() {
    List<Mishap> one = List.of(new Mishap.MissedForecast(-5));
    assertThrows(
        CancellationException.class,
        () ->
            MishapStudy.of(
                WARMED,
                JOURNEY,
                one,
                SETTINGS,
                none -> {},
                (done, total) ->
                    done > 0.2 ? ProgressListener.Signal.STOP : ProgressListener.Signal.CONTINUE));
  }
}
