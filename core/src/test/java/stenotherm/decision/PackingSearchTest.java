package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.ProgressListener;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.study.StudySettings;
import stenotherm.transit.TransitSettings;
import stenotherm.warmer.Warmers;

class PackingSearchTest {
  private static final AssessmentSettings SETTINGS =
      new AssessmentSettings(
          new TransitSettings(Packings.FEW_CELLS, Times.HOUR, IntegratorSettings.standard()),
          Times.HOUR,
          new StudySettings(16, 8, 1, 2));

  private static final Parcel WARMED =
      Packings.warmed(List.of(Packings.pad(Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped())));

  private static Journey coldRoom(double ambient) {
    return new Journey(
        LocalDateTime.of(2026, 1, 5, 18, 0),
        298,
        List.of(
            new Leg(
                "room",
                new Place("home", ZoneOffset.UTC),
                20 * Times.HOUR,
                Ambient.constant(ambient),
                2,
                FaceFilms.indoors(),
                Source.assumed("made up"))));
  }

  /** The warmer does not fit into the smallest box, and without it none holds. */
  private static SearchSpace space() {
    return new SearchSpace(
        List.of(
            BoxSizes.named("8 x 6 x 4 in carton"),
            BoxSizes.named("8 x 8 x 8 in carton"),
            BoxSizes.named("12 x 9 x 6 in carton")),
        List.of(Lengths.fromInches(0.5)),
        List.of(WARMED.filling()),
        List.of(Optional.empty(), Optional.of(Warmers.FORTY_HOUR)),
        List.of(1),
        List.of(),
        100);
  }

  /** The same winner as if every candidate were judged. */
  @Test
  void theSmallestThatReachesTheWantedOddsIsFound() {
    Journey cold = coldRoom(281);
    // the larger of the two boxes with a warmer has surer odds
    double wanted = 0.5;
    Optional<PackingChoice> winner = Optional.empty();
    double smallest = Double.POSITIVE_INFINITY;
    int unfit = 0;
    int failing = 0;
    for (PackingChoice each : space().choices()) {
      Remedy.Shipment packed;
      try {
        packed = each.applyTo(WARMED, cold);
      } catch (InvalidInputException doesNotFit) {
        unfit++;
        continue;
      }
      Verdict judged =
          new Assessor(packed.parcel(), packed.journey(), SETTINGS)
              .assess(ProgressListener.NONE)
              .verdict();
      boolean reaches = judged.within().low() >= wanted;
      failing += reaches ? 0 : 1;
      if (reaches && packed.parcel().outerVolume() < smallest - 1e-9) {
        smallest = packed.parcel().outerVolume();
        winner = Optional.of(each);
      }
    }
    List<PackingSearch.Found> early = new ArrayList<>();
    PackingSearch search =
        PackingSearch.of(
            WARMED, cold, space(), wanted, SETTINGS, 2, early::addAll, ProgressListener.NONE);
    int some = failing;
    assertTrue(winner.isPresent() && failing > 1, () -> some + " fail, which tells nothing");
    PackingSearch.Found best = search.best().orElseThrow();
    assertEquals(best, search.checked().get(0), "what reaches the odds stands first");
    for (PackingSearch.Found each : search.checked().subList(1, search.checked().size())) {
      assertTrue(
          each.odds().orElseThrow().within() >= best.odds().orElseThrow().within() / 2,
          "what is far behind is not worth a check");
    }
    assertEquals(winner.orElseThrow().box(), best.choice().box());
    assertEquals(smallest, best.volume(), 1e-12);
    assertEquals(unfit, search.unfit());
    assertEquals(space().choices().size() - unfit, search.candidates().size());
    assertTrue(!early.isEmpty());
    List<Harm> tried = best.harms();
    assertTrue(
        tried.stream().anyMatch(each -> each.words(new SiUnits()).equals("the warmer dead")));
    Harm dead = tried.get(0);
    Parcel packed = dead.mishaps().get(0).applyTo(best.shipment().parcel(), cold).parcel();
    FirstLook byHand = new Assessor(packed, List.of(cold), SETTINGS).firstLook();
    assertEquals(byHand.fate().cold().margin(), dead.nominal().cold().margin(), 1e-6);
    List<PackingSearch.Found> tradeOff = search.tradeOff();
    for (int index = 1; index < tradeOff.size(); index++) {
      assertTrue(tradeOff.get(index - 1).volume() <= tradeOff.get(index).volume());
    }
    assertTrue(
        search.tradeOff().stream()
            .noneMatch(each -> search.candidates().stream().anyMatch(each::isBeatenBy)));
    PackingSearch twice = new PackingSearch(List.of(best, best), List.of(best), wanted, 0);
    assertEquals(List.of(best), twice.tradeOff(), "what is alike in all three stands once");
    PackingSearch.Found changed =
        new PackingSearch.Found(
            best.choice().with(new Remedy.StartAt(300)),
            best.shipment(),
            best.margin() + 1,
            best.score() + 1,
            best.odds(),
            best.checked(),
            best.harms());
    PackingSearch both =
        new PackingSearch(List.of(changed, best), List.of(changed, best), wanted, 0);
    assertEquals(List.of(best), both.tradeOff(), "nobody need do what does not help");
    assertEquals(best, both.best(Level.DO_NOT).orElseThrow());
  }

  @Test
  void changesAreTriedOnWhatLooksBestAndCountWithTheTries() {
    Journey cold = coldRoom(281);
    SearchSpace plain = space();
    SearchSpace space =
        new SearchSpace(
            plain.boxes().subList(1, 2),
            plain.foams(),
            plain.fillings(),
            plain.warmers().subList(1, 2),
            plain.counts(),
            List.of(
                new Remedy.OtherFill(Filling.none()),
                new Remedy.StartAt(300),
                new Remedy.WarmerOn(Face.X_MIN)),
            3);
    PackingSearch search =
        PackingSearch.of(WARMED, cold, space, 0.9, SETTINGS, 1, none -> {}, ProgressListener.NONE);
    assertEquals(3, search.candidates().size(), "one as it is and two of the changes");
    assertEquals(1, search.checked().size());
    assertTrue(
        search.candidates().stream()
            .anyMatch(each -> each.shipment().parcel().filling().fill().isEmpty()));
  }

  @Test
  void whatLiesBesideAChoiceDiffersInOneThing() {
    SearchSpace plain = space();
    SearchSpace space =
        new SearchSpace(
            plain.boxes(),
            List.of(0.01, 0.02, 0.03),
            plain.fillings(),
            List.of(
                Optional.empty(),
                Optional.of(Warmers.FORTY_HOUR),
                Optional.of(Warmers.all().get(0))),
            List.of(1, 2),
            List.of(),
            100);
    PackingChoice choice =
        new PackingChoice(
            plain.boxes().get(0),
            0.02,
            plain.fillings().get(0),
            Optional.of(Warmers.FORTY_HOUR),
            1,
            List.of(new Remedy.StartAt(300)));
    List<PackingChoice> beside = space.beside(choice);
    // of its size there is one larger; foam both ways; no warmer, another one, and two of it
    assertEquals(1 + 2 + 3, beside.size(), beside.toString());
    assertEquals(
        1, beside.stream().filter(each -> each.box().equals(plain.boxes().get(1))).count());
    assertTrue(beside.stream().allMatch(each -> each.changes().equals(choice.changes())));
    assertTrue(beside.contains(choice.heatedBy(Optional.of(Warmers.FORTY_HOUR), 2)));
  }

  /** Under a lid two would lie side by side, far from the cup in a high box. */
  @Test
  void aSecondWarmerIsOnASide() {
    PackingChoice two =
        new PackingChoice(
            BoxSizes.named("12 x 12 x 12 in carton"),
            Lengths.fromInches(1),
            WARMED.filling(),
            Optional.of(Warmers.FORTY_HOUR),
            2,
            List.of());
    Parcel packed = two.applyTo(WARMED, coldRoom(281)).parcel();
    assertEquals(
        List.of(Face.Z_MAX, Face.X_MIN),
        packed.warmers().stream()
            .map(each -> each.placement().onWall().orElseThrow().face())
            .toList());
    Remedy third = Remedy.SecondWarmer.beside(packed).orElseThrow();
    assertThrows(InvalidInputException.class, () -> third.applyTo(packed, coldRoom(281)));
  }

  @Test
  void whatCannotBeSearchedIsRefused() {
    Journey cold = coldRoom(281);
    SearchSpace plain = space();
    SearchSpace tooSmall =
        new SearchSpace(
            List.of(BoxSize.carton("tiny", new Dimensions(0.06, 0.06, 0.06))),
            plain.foams(),
            plain.fillings(),
            plain.warmers(),
            plain.counts(),
            List.of(),
            9);
    assertThrows(
        InvalidInputException.class,
        () ->
            PackingSearch.of(
                WARMED, cold, tooSmall, 0.9, SETTINGS, none -> {}, ProgressListener.NONE));
    assertThrows(
        InvalidInputException.class,
        () ->
            PackingSearch.of(WARMED, cold, plain, 1, SETTINGS, none -> {}, ProgressListener.NONE));
  }
}
