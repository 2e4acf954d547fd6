package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.base.Provenance;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Box;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.WallLayer;
import stenotherm.warmer.Warmers;
import stenotherm.weather.DayExtremes;
import stenotherm.weather.RecordedWeather;

/** Good files give exact values in SI. */
class ScenarioReaderTest {
  /** Clocks of winter ahead of the sun, at 74.0 and 122.3 degrees west [h]. */
  private static final double NEW_YORK = -5 + 74.0 / 15;

  private static final double SEATTLE = -8 + 122.3 / 15;

  private static final double HOUR = 3600;

  private static Scenario good() {
    return ScenarioReader.read("s.yaml", ScenarioFiles.GOOD);
  }

  private static Parcel first(String old, String other) {
    return ScenarioReader.read("s.yaml", ScenarioFiles.with(old, other)).packings().get(0);
  }

  @Test
  void titleHoldAndOrderOfPackings() {
    Scenario scenario = good();
    assertEquals("A gecko goes west", scenario.title());
    assertEquals(12 * HOUR, scenario.longestHold());
    assertEquals(
        List.of("carton", "plain"), scenario.packings().stream().map(Parcel::name).toList());
  }

  @Test
  void legsOfTheJourney() {
    Journey journey = good().journey();
    assertEquals(LocalDateTime.of(2013, 12, 12, 18, 0), journey.sealing());
    assertEquals(294.15, journey.startTemperature(), 1e-9);
    assertEquals(
        List.of("van", "aircraft hold", "doorstep"),
        journey.legs().stream().map(Leg::name).toList());
    assertEquals(2 * HOUR, journey.start(1));
    assertEquals(8.5 * HOUR, journey.start(2));
    assertEquals(14.5 * HOUR, journey.duration());
    assertEquals(ZoneOffset.ofHours(-5), journey.legs().get(0).place().utcOffset());
    assertEquals("Seattle", journey.legs().get(1).place().name());
    assertEquals(
        List.of(new AmbientSpread(0, 1), AmbientSpread.ofItsOwn(3), new AmbientSpread(0, 1.5)),
        journey.legs().stream().map(leg -> leg.surroundings().spread()).toList());
    assertEquals(Provenance.READ, journey.legs().get(0).source().provenance());
    assertEquals(Provenance.ASSUMED, journey.legs().get(1).source().provenance());
    // 02:30 in New York is 23:30 the day before in Seattle.
    assertEquals(LocalDateTime.of(2013, 12, 12, 23, 30), journey.localClock(8.5 * HOUR));
  }

  @Test
  void windAndStillAir() {
    List<Leg> legs = good().journey().legs();
    assertEquals(FaceFilms.indoors(), legs.get(0).surroundings().films());
    assertEquals(new AirMovement.Moving(1), legs.get(2).surroundings().films().movement());
    assertEquals(FaceFilms.indoors().underside(), legs.get(2).surroundings().films().underside());
  }

  @Test
  void outdoorsAtTheOriginFollowsItsClock() {
    TimeFunction ambient = good().journey().legs().get(0).surroundings().ambient();
    DailyExtremes course = (DailyExtremes) ambient;
    // Days from the 11th on; midnight before the sealing at 18:00 is 18 h back, one day more for
    // it.
    assertEquals(-42 * HOUR, course.covered().low());
    assertEquals(day("New York", 11).low(), course.days().get(0).low());
    assertEquals(day("New York", 12).high(), ambient.at((-3.5 + NEW_YORK) * HOUR), 1e-9);
    assertEquals(day("New York", 13).low(), ambient.at((11 + NEW_YORK) * HOUR), 1e-9);
  }

  @Test
  void outdoorsAtTheDestinationFollowsItsOwnClock() {
    TimeFunction ambient = good().journey().legs().get(2).surroundings().ambient();
    // Midnight in Seattle that begins the 13th is 03:00 in New York, 9 h after sealing.
    assertEquals(day("Seattle", 13).low(), ambient.at((9 + 5 + SEATTLE) * HOUR), 1e-9);
    assertEquals(day("Seattle", 13).high(), ambient.at((9 + 14 + SEATTLE) * HOUR), 1e-9);
    assertEquals(day("Seattle", 13).high(), ambient.at((9 + 15 + SEATTLE) * HOUR), 1e-9);
    DailyExtremes course = (DailyExtremes) ambient;
    // The leg starts on the 12th at 23:30, so the record starts on the 11th.
    assertEquals((9 - 48) * HOUR, course.covered().low());
    assertTrue(course.covered().high() >= (14.5 + 12) * HOUR);
  }

  @Test
  void eastOfTheOriginMidnightComesEarlier() {
    Scenario scenario =
        ScenarioReader.read(
            "s.yaml",
            ScenarioFiles.with(
                "from: New York, UTC-5\n  to: Seattle, UTC-8",
                "from: Seattle, UTC-8\n  to: New York, UTC-5"));
    TimeFunction ambient = scenario.journey().legs().get(2).surroundings().ambient();
    // The 13th begins in New York at 21:00 of the 12th in Seattle, 3 h after sealing at 18:00.
    assertEquals(day("New York", 13).low(), ambient.at((3 + 5 + NEW_YORK) * HOUR), 1e-9);
  }

  @Test
  void sealingIsOnTheClockOfTheFirstLeg() {
    Journey journey =
        ScenarioReader.read("s.yaml", ScenarioFiles.with("at: origin", "at: destination"))
            .journey();
    assertEquals(LocalDateTime.of(2013, 12, 12, 15, 0), journey.sealing());
    assertEquals(
        day("Seattle", 12).high(),
        journey.legs().get(0).surroundings().ambient().at(0),
        1e-9,
        "15:00 there");
  }

  @Test
  void constantAndDailyTemperatures() {
    assertEquals(285.15, good().journey().legs().get(1).surroundings().ambient().at(1e5), 1e-9);
    TimeFunction daily =
        ScenarioReader.read(
                "s.yaml", ScenarioFiles.with("ambient: outdoors", "ambient: 28 to 46.4 °F"))
            .journey()
            .legs()
            .get(0)
            .surroundings()
            .ambient();
    assertEquals(281.15, daily.at((-3.5 + NEW_YORK) * HOUR), 1e-9);
    assertEquals(273.15 - 20 / 9.0, daily.at((11 + NEW_YORK) * HOUR), 1e-9);
  }

  @Test
  void wallsAndCavity() {
    Parcel carton = good().packings().get(0);
    assertEquals(
        List.of(
            new WallLayer(Materials.CORRUGATED_BOARD, 0.004),
            new WallLayer(Materials.EPS_20, 0.019)),
        carton.walls().layers().get(Face.X_MIN));
    Box cavity = carton.cavity();
    assertEquals(0.203 - 0.046, cavity.max().x() - cavity.min().x(), 1e-12);
    assertEquals(0.180 - 0.046, cavity.max().y() - cavity.min().y(), 1e-12);
    assertEquals(0.150 - 0.046, cavity.max().z() - cavity.min().z(), 1e-12);
    assertEquals(new Filling.Loose(Materials.SHREDDED_PAPER), carton.filling());
    Parcel plain = good().packings().get(1);
    assertEquals(0.004, plain.walls().thickness(Face.Z_MAX), 1e-12);
    assertEquals(new Filling.Loose(Materials.CRUMPLED_NEWSPAPER), plain.filling());
    assertTrue(plain.warmers().isEmpty());
  }

  @Test
  void cupAndAnimal() {
    Container cup = good().packings().get(0).containers().get(0);
    assertEquals(new Dimensions(0.110, 0.080, 0.060), cup.vessel().inner());
    assertEquals(Position.MIDDLE_OF_FLOOR, cup.position());
    assertEquals(new WallLayer(Materials.POLYPROPYLENE, 0.0005), cup.vessel().wall());
    assertEquals(List.of(Bedding.dampTowel(0.004)), cup.bedding());
    assertEquals(Animals.LEOPARD_GECKO, cup.occupant().orElseThrow().animal());
    assertEquals(0.040, cup.occupant().orElseThrow().body().mass(), 1e-12);
  }

  @Test
  void cupWrittenOutAndCupOfItsOwn() {
    String text =
        "{size: 4 in x 80 mm x 6 cm, wall: PET 0.3 mm, towel: 2 mm, position: [5 mm, -4 mm, 1 mm]}";
    Container shared = first("110 x 80 x 60 mm", text).containers().get(0);
    assertEquals(new Dimensions(0.1016, 0.080, 0.060), shared.vessel().inner());
    assertEquals(new WallLayer(Materials.PET, 0.0003), shared.vessel().wall());
    assertEquals(0.002, shared.bedding().get(0).thickness());
    assertEquals(new Position(0.005, -0.004, 0.001), shared.position());
    Container own =
        first("fill: shredded paper", "fill: shredded paper\n    cup: 90 x 60 x 50 mm")
            .containers()
            .get(0);
    assertEquals(0.09, own.vessel().inner().length());
  }

  @Test
  void warmer() {
    PlacedWarmer warmer = good().packings().get(0).warmers().get(0);
    assertEquals(Warmers.FORTY_HOUR, warmer.warmer());
    assertEquals(Placement.onFace(Face.Z_MAX, Mounting.taped()), warmer.placement());
    assertEquals(-2700, warmer.opened());
    String opened = "opened: 45 min before sealing";
    assertEquals(0, first(opened, "opened: at sealing").warmers().get(0).opened());
    assertEquals(-1800, first("    " + opened + "\n", "").warmers().get(0).opened());
    assertEquals(
        Placement.onFace(Face.Z_MAX, new Mounting(0, 0.05)),
        first(opened, "contact: 0.05 m2K/W").warmers().get(0).placement());
    assertEquals(
        Placement.onFace(Face.Z_MAX, Mounting.standingOff(0.002)),
        first(opened, "stand-off: 2 mm").warmers().get(0).placement());
  }

  @Test
  void lidFloorAndBoardOfTheirOwn() {
    Parcel parcel =
        first(
            "foam: EPS 20, 19 mm",
            "board: paperboard 2 mm\n    foam: EPS 17.5 0.75 in\n    lid: XPS 10 mm\n    floor: none");
    assertEquals(
        List.of(new WallLayer(Materials.PAPERBOARD, 0.002)),
        parcel.walls().layers().get(Face.Z_MIN));
    assertEquals(0.012, parcel.walls().thickness(Face.Z_MAX), 1e-12);
    assertEquals(0.02105, parcel.walls().thickness(Face.Y_MAX), 1e-12);
    List<WallLayer> sides = parcel.walls().layers().get(Face.Y_MAX);
    assertEquals(17.5, java.util.Objects.requireNonNull(sides).get(1).material().density());
  }

  @Test
  void presetsAreToldWithTheirSources() {
    List<String> assumptions = good().assumptions();
    for (String preset :
        List.of(
            "warmer: contact, 0.02 m2 K/W (taped flat, assumed)",
            "packing: board, corrugated board 4 mm (assumed)",
            "container: wall, polypropylene 0.5 mm (assumed)",
            "container: bedding, damp paper towel 4 mm (assumed)",
            "container: position, in the middle, on the floor (assumed)",
            "leg: wind, still air (rule of ISO 6946, assumed to hold)",
            "leg: spread, 3 K (assumed)",
            "leg: stowed, alone (assumed)",
            "place: spread, 1 K (assumed for recorded weather)")) {
      assertTrue(assumptions.contains("Preset, " + preset + "."), preset);
    }
    for (String source :
        List.of(
            Materials.EPS_20.source().text(),
            Warmers.FORTY_HOUR.source().text(),
            RecordedWeather.bundled().source().text(),
            FaceFilms.BOARD_EMISSIVITY_SOURCE.text(),
            Animals.LEOPARD_GECKO.tolerance().critical().source().text())) {
      assertTrue(assumptions.stream().anyMatch(each -> each.contains(source)), source);
    }
    assertFalse(assumptions.stream().anyMatch(each -> each.startsWith("Preset, scenario: hold")));
    assertTrue(
        ScenarioReader.read("s.yaml", ScenarioFiles.with("hold: 12 h\n", ""))
            .assumptions()
            .contains("Preset, scenario: hold, 24 h (assumed)."));
    assertEquals(assumptions.size(), assumptions.stream().distinct().count());
  }

  @Test
  void fileIsReadLikeText(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("s.yaml");
    Files.write(file, ScenarioFiles.GOOD.getBytes(StandardCharsets.UTF_8));
    Scenario read = ScenarioReader.read(file);
    assertEquals(good().packings(), read.packings());
    assertEquals(good().journey(), read.journey());
    assertEquals(good().assumptions(), read.assumptions());
    assertThrows(
        NoSuchFileException.class, () -> ScenarioReader.read(folder.resolve("missing.yaml")));
  }

  private static DayExtremes day(String place, int dayOfDecember) {
    return RecordedWeather.bundled().day(place, LocalDate.of(2013, 12, dayOfDecember));
  }
}
