package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.Situations;
import stenotherm.ambient.SolAir;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.ambient.Underside;
import stenotherm.animal.Animals;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Lengths;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.decision.Mishap;
import stenotherm.decision.Remedy;
import stenotherm.grid.Box;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.journey.Leg;
import stenotherm.journey.Outdoors;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Absorbent;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Joints;
import stenotherm.parcel.LidHoles;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.VacuumPanel;
import stenotherm.parcel.Vent;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.VesselSizes;
import stenotherm.parcel.WallLayer;
import stenotherm.sun.FaceIrradiance;
import stenotherm.sun.OpticalDepths;
import stenotherm.sun.Sky;
import stenotherm.sun.SunSite;
import stenotherm.text.TextFormatException;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.Warmers;
import stenotherm.words.Units;

/** What the keys of the whole parcel and the whole journey give, in SI. */
class WholeScenarioTest {
  private static final double HOUR = 3600;

  private static Scenario read(String text) {
    return ScenarioReader.read("s.yaml", text);
  }

  private static Parcel packing(int number) {
    return read(ScenarioFiles.PARCEL).packings().get(number);
  }

  private static Leg leg(int number) {
    return read(ScenarioFiles.JOURNEY).journey().legs().get(number);
  }

  private static Leg firstLeg(String old, String other) {
    return read(ScenarioFiles.with(ScenarioFiles.JOURNEY, old, other)).journey().legs().get(0);
  }

  private static double kelvin(double celsius) {
    return celsius + 273.15;
  }

  /** As foam and cups are sold where inches and ounces are used. */
  @Test
  void readsFractionsOfInchesAndCupsByTheirOunces() {
    for (String foam :
        List.of("EPS 20 1 1/2 in", "EPS 20 1-1/2 in", "EPS 20 3/2 in", "EPS20 1 1/2\"")) {
      assertEquals(Lengths.fromInches(1.5), foam(foam).thickness(), 1e-15, foam);
      assertEquals(Materials.EPS_20, foam(foam).material(), foam);
    }
    assertEquals(Lengths.fromInches(0.75), foam("EPS 20 3/4 in").thickness(), 1e-15);
    // no foam has 1 kg/m3
    assertEquals(Lengths.fromInches(1.5), foam("EPS 1 1/2 in").thickness(), 1e-15);
    assertEquals(Lengths.fromInches(0.75), foam("EPS 15.5 3/4 in").thickness(), 1e-15);
    assertEquals(new WallLayer(Materials.XPS, Lengths.fromInches(1.5)), foam("XPS 1 1/2 in"));
    // bought by its thickness, of a density that nobody told
    assertEquals(new WallLayer(Materials.EPS, 0.020), foam("EPS 20 mm"));
    assertEquals(new WallLayer(Materials.EPS, 0.019), foam("EPS 19 mm"));

    for (String cup : List.of("8 fl oz", "8 oz", "8oz cup", "8 fl oz deli cup", "8 OZ Deli Cup")) {
      assertEquals(
          VesselSizes.named("8 fl oz").vessel(),
          read(ScenarioFiles.SHORT.replace("8 fl oz cup", cup))
              .packings()
              .get(0)
              .containers()
              .get(0)
              .vessel(),
          cup);
    }
  }

  private static WallLayer foam(String text) {
    List<WallLayer> lid =
        read(ScenarioFiles.SHORT.replace("EPS 20 0.75 in", text))
            .packings()
            .get(0)
            .walls()
            .layers()
            .getOrDefault(Face.Z_MAX, List.of());
    return lid.get(lid.size() - 1);
  }

  private static Parcel inCarton(String text) {
    return read(ScenarioFiles.SHORT.replace("8 x 8 x 7 in carton", text)).packings().get(0);
  }

  @Test
  void cartonsOfAnySizeAreNamedByTheirInside() {
    // board of 4 mm on each side
    for (String cube : List.of("7 in cube carton", "7 x 7 x 7 in carton", "17.78 cm Cube Carton")) {
      Box outer = inCarton(cube).outer();
      for (Axis axis : Axis.values()) {
        assertEquals(0.1778 + 0.008, outer.size(axis), 1e-12, cube);
      }
    }
    Box flat = inCarton("305 x 229 x 151 mm carton").outer();
    assertEquals(0.313, flat.size(Axis.X), 1e-12);
    assertEquals(0.237, flat.size(Axis.Y), 1e-12);
    assertEquals(0.159, flat.size(Axis.Z), 1e-12);
    assertTrue(
        read(ScenarioFiles.SHORT.replace("8 x 8 x 7 in carton", "9 in cube carton"))
            .assumptions()
            .contains(
                "Box 9 in cube carton, named by its inner size: "
                    + BoxSizes.all().get(0).source().text()
                    + "."));
  }

  @Test
  void theShortForm() {
    Scenario scenario = read(ScenarioFiles.SHORT);
    assertEquals(Units.US, scenario.units());
    assertEquals(Units.METRIC, read(ScenarioFiles.GOOD).units());
    Parcel parcel = scenario.packings().get(0);
    assertEquals(BoxSizes.named("8 x 8 x 7 in carton").outer(parcel.walls()), parcel.outer());
    assertEquals(
        new WallLayer(Materials.EPS_20, Lengths.fromInches(0.75)),
        parcel.walls().layers().getOrDefault(Face.X_MAX, List.of()).get(1));
    Container cup = parcel.containers().get(0);
    assertEquals("cup", cup.name());
    assertEquals(VesselSizes.named("8 fl oz").vessel(), cup.vessel());
    assertEquals(Animals.named("mourning gecko"), cup.occupant().orElseThrow().animal());
  }

  @Test
  void aJourneyByNameIsTheTemplateUnderTheWeatherGiven() {
    Journey journey = read(ScenarioFiles.SHORT).journey();
    JourneyTemplate template = JourneyTemplates.OVERNIGHT_BY_AIR;
    LocalDateTime sealing = LocalDateTime.of(2026, 1, 15, 15, 0);
    Range day = new Range(-20 / 9.0 + 273.15, 65 / 9.0 + 273.15);
    // From midnight of the day before, three days to the day after the 24 h of the hold.
    TimeFunction weather =
        new DailyExtremes(-39 * HOUR, List.of(day, day, day, day, day), DiurnalShape.SOLAR_TIME);
    Journey expected =
        template.journey(
            new JourneyTemplate.Start(sealing, kelvin(21)),
            new Outdoors(new Place("origin", ZoneOffset.UTC), weather, 3, Sunshine.NONE),
            new Outdoors(new Place("destination", ZoneOffset.UTC), weather, 3, Sunshine.NONE),
            24 * HOUR);
    assertEquals(expected.sealing(), journey.sealing());
    assertEquals(expected.startTemperature(), journey.startTemperature());
    assertEquals(expected.legs().size(), journey.legs().size());
    for (int number = 0; number < expected.legs().size(); number++) {
      Leg one = expected.legs().get(number);
      Leg other = journey.legs().get(number);
      assertEquals(one.name(), other.name());
      assertEquals(one.duration(), other.duration());
      assertEquals(one.surroundings().spread(), other.surroundings().spread());
      assertEquals(one.surroundings().films(), other.surroundings().films());
      assertEquals(one.surroundings().stowage(), other.surroundings().stowage());
      assertEquals(one.surroundings().altitude(), other.surroundings().altitude());
      double time = expected.start(number) + one.duration() / 2;
      assertEquals(
          one.surroundings().ambient().at(time), other.surroundings().ambient().at(time), 1e-9);
    }
  }

  @Test
  void aDelayBelongsToItsLeg() {
    Journey journey = read(ScenarioFiles.PARCEL).journey();
    Leg late =
        journey.legs().stream()
            .filter(leg -> leg.name().equals("depot on the way"))
            .findFirst()
            .orElseThrow();
    assertEquals(12 * HOUR, late.delay());
    assertEquals(
        12 * HOUR, journey.legs().stream().mapToDouble(Leg::delay).sum(), "and to no other");
  }

  @Test
  void containersOfEveryKind() {
    List<Container> two = packing(0).containers();
    assertEquals(new Dimensions(0.11, 0.08, 0.06), two.get(0).vessel().inner());
    assertEquals(new WallLayer(Materials.PET, 0.0005), two.get(0).vessel().wall());
    assertEquals(List.of(Bedding.dampTowel(0.003)), two.get(0).bedding());
    assertEquals(0.040, two.get(0).occupant().orElseThrow().body().mass(), 1e-12);
    assertEquals(VesselSizes.named("4 fl oz").vessel(), two.get(1).vessel());
    assertEquals(List.of(), two.get(1).bedding());

    List<Container> three = packing(1).containers();
    WallLayer cloth = new WallLayer(Materials.COTTON_CLOTH, 0.0005);
    assertEquals(new Vessel.Bag(new Dimensions(0.12, 0.09, 0.05), cloth), three.get(0).vessel());
    assertEquals(new Bedding("dry coir", Materials.COIR, 0.005, 0), three.get(0).bedding().get(0));
    assertEquals(Bedding.dampMoss(0.010), three.get(0).bedding().get(1));
    WallLayer plastic = new WallLayer(Materials.POLYSTYRENE, 0.0012);
    assertEquals(new Vessel.Vial(0.04, 0.1, Axis.X, plastic), three.get(1).vessel());
    assertEquals(Optional.empty(), three.get(1).occupant());
    assertEquals(List.of(), three.get(1).bedding());
    WallLayer cup = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
    assertEquals(new Vessel.RoundCup(0.095, 0.06, cup), three.get(2).vessel());
    Absorbent towel = new Absorbent(Materials.DRY_PAPER_TOWEL, Materials.PAPER);
    assertEquals(
        List.of(Bedding.moist("dry paper towel", towel, 0.004, 2.5)), three.get(2).bedding());
    assertEquals("container 3", three.get(2).name());
  }

  @Test
  void holesInLidsAreThoseStatedOrUsual() {
    assertEquals(new LidHoles(12, 0.003), ((Vessel.BoxCup) vessel(3)).lid());
    assertEquals(LidHoles.USUAL, ((Vessel.BoxCup) vessel(2)).lid());
    for (String none : List.of("none", "No", "0")) {
      assertEquals(LidHoles.NONE, lid("holes: " + none), none);
    }
    for (String many :
        List.of("10 x 2 mm on lid", "10 x 2 mm in the lid", "10 X 2 mm in its lid")) {
      assertEquals(new LidHoles(10, 0.002), lid("holes: " + many), many);
    }
  }

  private static LidHoles lid(String holes) {
    String file = ScenarioFiles.with(ScenarioFiles.PARCEL, "holes: 12 x 3 mm", holes);
    return ((Vessel.BoxCup) read(file).packings().get(3).containers().get(0).vessel()).lid();
  }

  private static Vessel vessel(int packing) {
    return packing(packing).containers().get(0).vessel();
  }

  @Test
  void containersStandSideBySideOrOnEachOther() {
    List<Container> row = packing(0).containers();
    double right = 2 * radius(row.get(1));
    // The row of 110 mm, the gap of 20 mm and the round cup has its middle in the middle.
    double length = 0.11 + 0.02 + right;
    assertEquals(-length / 2 + 0.055, row.get(0).position().alongX(), 1e-12);
    assertEquals(length / 2 - right / 2, row.get(1).position().alongX(), 1e-12);
    assertEquals(0, row.get(1).position().alongY());

    List<Container> stack = packing(1).containers();
    assertEquals(new Position(-0.05, -0.01, 0), stack.get(0).position());
    assertEquals(new Position(-0.05, -0.01, 0.05), stack.get(1).position());
    assertEquals(new Position(0.07, 0.07, 0), stack.get(2).position());
  }

  private static double radius(Container container) {
    return container.vessel().inner().length() / 2;
  }

  @Test
  void wallsOfPanels() {
    Parcel panels = packing(0);
    Map<Face, List<WallLayer>> layers = panels.walls().layers();
    WallLayer board = new WallLayer(Materials.CORRUGATED_BOARD, 0.004);
    assertEquals(List.of(board, new WallLayer(Materials.PIR, 0.025)), layers.get(Face.Z_MAX));
    assertEquals(List.of(board, new WallLayer(Materials.EPS_25, 0.03)), layers.get(Face.Z_MIN));
    assertEquals(List.of(board, new WallLayer(Materials.XPS, 0.025)), layers.get(Face.X_MIN));
    assertEquals(List.of(board, new WallLayer(Materials.XPS, 0.03)), layers.get(Face.Y_MIN));
    assertEquals(
        List.of(board, new WallLayer(Materials.VACUUM_PANEL, 0.02)), layers.get(Face.Y_MAX));
    assertEquals(new Joints(List.of(Axis.Y, Axis.X, Axis.Z), 1, 0.001), panels.walls().joints());
    assertEquals(
        new Joints(List.of(Axis.Z, Axis.Y, Axis.X), 1, 0.0005), packing(1).walls().joints());
    assertEquals(Joints.NONE, packing(2).walls().joints());

    String sides = "  left: XPS 25 mm\n";
    Parcel other =
        read(ScenarioFiles.with(ScenarioFiles.PARCEL, "  " + sides, "")).packings().get(0);
    assertEquals(
        List.of(
            board,
            new WallLayer(Materials.XPS, 0.01),
            VacuumPanel.METALLISED_FILM.layer(0.26, 0.2, 0.01)),
        other.walls().layers().get(Face.X_MIN));
  }

  @Test
  void boxesByInnerAndOuterSizeAndByName() {
    Parcel inner = packing(0);
    assertEquals(0.26, inner.cavity().size(Axis.X), 1e-12);
    assertEquals(0.2, inner.cavity().size(Axis.Z), 1e-12);
    assertEquals(12 * Lengths.INCH, packing(1).outer().size(Axis.Y), 1e-12);
    assertEquals(0.203, packing(2).outer().size(Axis.X), 1e-12);
    // A carton of 10 inches inside, 4 mm of board around it.
    assertEquals(10 * Lengths.INCH + 0.008, packing(3).outer().size(Axis.X), 1e-12);
    assertEquals(Filling.none(), packing(1).filling());
  }

  @Test
  void warmersAnywhere() {
    List<PlacedWarmer> warmers = packing(0).warmers();
    assertEquals(
        new PlacedWarmer(
            "upper",
            Warmers.FORTY_HOUR,
            new Placement.OnFace(Face.Z_MAX, 0.01, -0.005, Mounting.standingOff(0.005)),
            0),
        warmers.get(0));
    assertEquals(
        new PlacedWarmer(
            "warmer 2",
            Warmers.TWENTY_HOUR,
            new Placement.InCavity(new Position(0, 0.07, 0.09), Axis.Y),
            -1800),
        warmers.get(1));
    assertEquals(
        new PlacedWarmer("warmer 3", Warmers.TEN_HOUR, Face.Y_MIN, Mounting.taped(), -1800),
        warmers.get(2));
    assertEquals(
        new Placement.OnFace(Face.Y_MAX, 0.08, 0.04, new Mounting(0, 0.03)),
        warmers.get(3).placement());
    PlacedWarmer onVial = packing(1).warmers().get(0);
    assertEquals(
        new Placement.InCavity(new Position(-0.05, -0.01, 0.09), Axis.Z), onVial.placement());
    assertEquals(-HOUR, onVial.opened());
    assertEquals(
        new Placement.OnFace(Face.Z_MAX, 0, 0, Mounting.standingOff(0.002)),
        packing(2).warmers().get(0).placement());
  }

  @Test
  void packsWithTheirStart() {
    List<PlacedPack> packs = packing(0).packs();
    PlacedPack cold = packs.get(0);
    assertEquals("cold", cold.name());
    assertEquals(Materials.GEL_PACK, cold.pack().contents());
    assertEquals(0.024, cold.pack().mass(), 1e-12);
    assertEquals(0.01, cold.pack().wrap());
    assertEquals(new PackStart.AtTemperature(kelvin(-18)), cold.start());
    assertEquals(
        new Placement.OnFace(Face.Z_MIN, 0.1, 0.08, new Mounting(0, 0.01)), cold.placement());
    PlacedPack melting = packs.get(1);
    assertEquals(new PackStart.PartlyMelted(0.25), melting.start());
    assertEquals(0.1 * 0.05 * 0.02 * Materials.OCTADECANE.density(), melting.pack().mass(), 1e-6);
    assertEquals(Placement.onFace(Face.X_MIN, Mounting.standingOff(0.002)), melting.placement());
    assertEquals(
        new Placement.InCavity(new Position(-0.09, -0.06, 0.1), Axis.X), packs.get(2).placement());
  }

  @Test
  void legsByDurationByClockAndByDate() {
    Journey journey = read(ScenarioFiles.JOURNEY).journey();
    assertEquals(LocalDateTime.of(2014, 7, 10, 15, 0), journey.sealing());
    assertEquals(45 * 60, journey.legs().get(0).duration());
    // From 15:45 to 18:30.
    assertEquals(2.75 * HOUR, journey.legs().get(1).duration());
    assertEquals(HOUR, journey.legs().get(2).delay());
    // Planned without the delays that are added to the whole journey: from 19:30 + 6 h on the
    // clock of the pass to 06:00 of the next day.
    assertEquals(4.5 * HOUR, journey.legs().get(3).duration());
    assertEquals(1800, journey.legs().get(3).delay());
    assertEquals(ZoneOffset.ofHours(-6), journey.legs().get(3).place().utcOffset());
    assertEquals(2 * HOUR, journey.legs().get(5).delay());
  }

  @Test
  void sunNeedsAPlaceAndAHeading() {
    Sunshine sun = leg(0).surroundings().sunshine();
    assertEquals(SolarAbsorptance.WHITE_PAINT, sun.absorptance());
    assertEquals(0.7 * SolAir.CLEAR_SKY_LOSS, sun.skyLoss(), 1e-9);
    Map<Face, TimeFunction> expected =
        FaceIrradiance.of(
            new SunSite(47.6, -122.3, ZoneOffset.ofHours(-7)),
            new Sky(OpticalDepths.HAZY_SUMMER, 0.3, Sky.COMMON_GROUND),
            180,
            LocalDateTime.of(2014, 7, 10, 15, 0),
            // the leg of 45 min, 3 h of delays and 6 h of hold
            new Range(0, 9.75 * HOUR));
    for (Face face : Face.values()) {
      double given = sun.irradiance().getOrDefault(face, TimeFunction.constant(0)).at(600);
      assertEquals(
          expected.getOrDefault(face, TimeFunction.constant(0)).at(600), given, 1e-6, face.label());
    }
    // The apron is open to the sun, the valley's porch is said to be shaded.
    assertFalse(leg(1).surroundings().sunshine().isNone());
    assertTrue(leg(5).surroundings().sunshine().isNone());
    assertEquals(new AirMovement.Moving(2), leg(0).surroundings().films().movement());
    assertEquals(Situations.RAMP.films().movement(), leg(1).surroundings().films().movement());
  }

  @Test
  void withoutCoordinatesTheSunIsLeftOutAndThatIsTold() {
    List<String> told = read(ScenarioFiles.SHORT).assumptions();
    assertTrue(
        told.contains(
            "The sun is left out at origin, because the file gives no latitude and longitude"
                + " there; the sky, taken as clear, is not."));
  }

  /** A lid loses heat to a clear night sky whether or not anyone asks for the sun. */
  @Test
  void skyCoolsWithoutSun() {
    String porch =
        ScenarioFiles.SHORT.replace(
            "journey: overnight by air, 28 to 45 °F",
            "journey: {sealed: 2026-01-10 20:00, from: {name: here, utc: UTC-5}, to: {name: there,"
                + " utc: UTC-5}, legs: [{name: night, at: origin, for: 8 h, ambient: -3 °C, SKY}]}");
    Sunshine open = sunshine(porch.replace("SKY", "sky: yes"));
    assertTrue(open.irradiance().isEmpty());
    assertEquals(SolAir.CLEAR_SKY_LOSS, open.skyLoss(), 1e-9);
    assertTrue(sunshine(porch.replace("SKY", "sky: no")).isNone());
    assertTrue(sunshine(porch.replace(", SKY", "")).isNone());
    assertThrows(
        TextFormatException.class,
        () -> read(porch.replace("SKY", "sun: yes, sky: no").replace("utc: UTC-5}, to", NEAR)));
  }

  private static final String NEAR = "utc: UTC-5, latitude: 40 °, longitude: -75 °}, to";

  private static Sunshine sunshine(String text) {
    return read(text).journey().legs().get(0).surroundings().sunshine();
  }

  /** Daylight saving: the clock of Seattle shows 5 h of solar time at about 6 h and 9 min. */
  @Test
  void lowsAndHighsFollowTheSunAndNotTheClock() {
    String summer =
        ScenarioFiles.SHORT.replace(
            "journey: overnight by air, 28 to 45 °F",
            "journey: {sealed: 2026-07-10 00:00, lows/highs: 12 to 30 °C, from: {name: PLACE, utc:"
                + " UTC-7}, to: {name: PLACE, utc: UTC-7}, legs: [{name: day, at: origin, for: 24 h, ambient:"
                + " outdoors}]}");
    TimeFunction sunny = outdoors(summer.replace("PLACE", "Seattle"));
    double ahead = -7 + 122.3 / 15;
    assertEquals(kelvin(12), sunny.at((5 + ahead) * HOUR), 1e-6);
    assertEquals(kelvin(30), sunny.at((14.5 + ahead) * HOUR), 1e-6);
    TimeFunction given =
        outdoors(
            summer.replace(
                "name: PLACE, utc: UTC-7}, to",
                "name: here, utc: UTC-7, latitude: 47.6 °, longitude: -122.3 °}, to"));
    assertEquals(sunny.at(8 * HOUR), given.at(8 * HOUR), 1e-9);
    TimeFunction unknown = outdoors(summer.replace("PLACE", "somewhere"));
    assertEquals(kelvin(12), unknown.at(5 * HOUR), 1e-6);
    // what taking the clock for the sun did to a summer morning
    assertTrue(unknown.at(9 * HOUR) - sunny.at(9 * HOUR) > 2);
    assertTrue(
        read(summer.replace("PLACE", "somewhere")).assumptions().stream()
            .anyMatch(told -> told.contains("somewhere, whose longitude is not given")));
  }

  private static TimeFunction outdoors(String text) {
    return read(text).journey().legs().get(0).surroundings().ambient();
  }

  @Test
  void aTemplateThatWaitsLongOrNotAtAllSaysSo() {
    String late =
        ScenarioFiles.SHORT.replace(
            "journey: overnight by air, 28 to 45 °F",
            "journey: {template: overnight by air, lows/highs: 28 to 45 °F, sealed: 2026-03-03"
                + " 01:30}");
    assertTrue(
        read(late)
            .assumptions()
            .contains(
                "Journey overnight by air: 'waiting for collection' begins at 01:30 and would end"
                    + " at 17:00: the parcel is taken to wait 15.5 h for it."));
    assertFalse(
        read(ScenarioFiles.SHORT).assumptions().stream().anyMatch(s -> s.contains("is taken to")));
  }

  @Test
  void airThatFollowsLateAndWarmer() {
    Surroundings road = leg(2).surroundings();
    assertEquals(Orientation.X_MIN_UP, road.orientation());
    assertEquals(Stowage.AMONG_OTHERS, road.stowage());
    assertEquals(Lengths.fromFeet(8000), road.altitude(), 1e-9);
    Range pass = new Range(kelvin(2), kelvin(12));
    TimeFunction outdoors =
        new DailyExtremes(
            -40 * HOUR, List.of(pass, pass, pass, pass, pass), DiurnalShape.SOLAR_TIME);
    double end = (0.75 + 2.75 + 6 + 4.5 + 0.5 + 3 + 4 + 1 + 3 + 6) * HOUR;
    TimeFunction expected = Ambient.following(outdoors, new Range(0, end), 3, 2 * HOUR);
    assertEquals(expected.at(5 * HOUR), road.ambient().at(5 * HOUR), 1e-9);
    // the pass is cold all night
    assertEquals(kelvin(16), leg(3).surroundings().ambient().at(11 * HOUR), 1e-9);
    assertEquals(AmbientSpread.ofItsOwn(4), leg(3).surroundings().spread());
  }

  @Test
  void readingsAtClockTimes() {
    Leg van = leg(4);
    Journey journey = read(ScenarioFiles.JOURNEY).journey();
    // 08:00 at the destination is 05:00 in Seattle, 14 h after sealing.
    double eight = 14 * HOUR;
    assertEquals(
        LocalDateTime.of(2014, 7, 11, 8, 0),
        van.place().clockAt(eight, journey.sealing(), journey.legs().get(0).place()));
    TimeFunction air = van.surroundings().ambient();
    assertEquals(kelvin(22.5), air.at(eight), 1e-9, "half way from 18 °C to 27 °C");
    assertEquals(kelvin(30), air.at(eight + 6 * HOUR), 1e-9);
    assertEquals(kelvin(30), air.at(eight + 8 * HOUR), 1e-9, "the last one stays");
    assertTrue(
        read(ScenarioFiles.JOURNEY)
            .assumptions()
            .contains("Preset, leg: ambient, the last reading holds until the end (assumed)."));
  }

  @Test
  void daysOfTheirOwnAndDaysForAll() {
    DailyExtremes days = assertInstanceOf(DailyExtremes.class, leg(0).surroundings().ambient());
    // The day before the sealing is like the first one given, those after the last like the last.
    assertEquals(60, (days.days().get(0).low() - 273.15) * 1.8 + 32, 1e-9);
    assertEquals(60, (days.days().get(1).low() - 273.15) * 1.8 + 32, 1e-9);
    assertEquals(kelvin(16), days.days().get(2).low(), 1e-9);
    assertEquals(kelvin(27), days.days().get(3).high(), 1e-9);
    TimeFunction porch = leg(5).surroundings().ambient();
    assertInstanceOf(DailyExtremes.class, porch);
  }

  @Test
  void restingAndTouching() {
    assertEquals(Underside.Resting.onHardFloor(), leg(0).surroundings().films().underside());
    assertEquals(new Underside.Open(), leg(5).surroundings().films().underside());
    assertEquals(new Underside.Resting(0.2), leg(6).surroundings().films().underside());
    List<Contact> contacts = leg(4).surroundings().contacts();
    assertEquals(
        new Contact(
            Face.X_MIN,
            new Range(0, 0.5),
            new Range(0.2, 1),
            new Contact.Neighbour(Ambient.constant(kelvin(30)), 0.1)),
        contacts.get(0));
    assertEquals(Contact.whole(Face.Y_MAX, new Contact.Insulated()), contacts.get(1));
  }

  @Test
  void whatALegLeavesOutComesFromItsSurroundings() {
    Leg hold =
        firstLeg(
            "ambient: outdoors, sun: yes, heading: 180 °, wind: 2 m/s", "ambient: Aircraft Hold");
    Surroundings surroundings = hold.surroundings();
    assertEquals(AmbientSpread.ofItsOwn(Situations.AIRCRAFT_HOLD.spread()), surroundings.spread());
    assertEquals(Stowage.AMONG_OTHERS, surroundings.stowage());
    assertEquals(Situations.AIRCRAFT_HOLD.altitude(), surroundings.altitude(), 0.5);
    assertEquals(Situations.AIRCRAFT_HOLD.source(), hold.source());
    Leg van = firstLeg("ambient: outdoors, sun: yes, heading: 180 °, wind: 2 m/s", "ambient: van");
    assertEquals(new AmbientSpread(Situations.VAN.spread(), 3), van.surroundings().spread());
    assertEquals(Stowage.ALONE, van.surroundings().stowage());
    assertEquals(Times.fromMinutes(45), van.duration());
  }

  @Test
  void aLegsSpreadIsSharedOutBetweenItsAirAndTheWeather() {
    String outdoors = "ambient: outdoors, sun: yes, heading: 180 °, wind: 2 m/s";
    assertEquals(
        new AmbientSpread(0, 3),
        firstLeg(outdoors, "ambient: outdoors, spread: 3 K").surroundings().spread());
    // 4 K of its own and 3 K of the weather
    AmbientSpread van = firstLeg(outdoors, "ambient: van, spread: 3.5 K").surroundings().spread();
    assertEquals(2, van.own(), 1e-12);
    assertEquals(1.5, van.outdoors(), 1e-12);
    assertEquals(
        AmbientSpread.ofItsOwn(2),
        leg(4).surroundings().spread(),
        "readings are not the weather of the place");
    assertEquals(new AmbientSpread(0, 3), leg(5).surroundings().spread(), "a low and high are");
    // the place says 4 K
    assertEquals(
        new AmbientSpread(0, 4),
        read(ScenarioFiles.JOURNEY.replace("ambient: 64 to 86 °F", "ambient: outdoors"))
            .journey()
            .legs()
            .get(5)
            .surroundings()
            .spread());
  }

  @Test
  void aParcelIsStowedAsTheFileSaysElseAsIsUsual() {
    String outdoors = "ambient: outdoors, sun: yes, heading: 180 °, wind: 2 m/s";
    assertEquals(Stowage.ALONE, leg(0).surroundings().stowage());
    assertEquals(Stowage.AMONG_OTHERS, leg(3).surroundings().stowage());
    assertEquals(
        Stowage.AMONG_OTHERS,
        firstLeg(outdoors, "ambient: van, stowed: among others").surroundings().stowage());
    assertEquals(
        Stowage.ALONE,
        firstLeg(outdoors, "ambient: trailer on the road, stowed: alone").surroundings().stowage());
    assertTrue(
        read(ScenarioFiles.SHORT).assumptions().stream()
            .anyMatch(each -> each.contains(Stowage.SOURCE.text())));
    assertFalse(
        read(ScenarioFiles.GOOD).assumptions().stream()
            .anyMatch(each -> each.contains(Stowage.SOURCE.text())),
        "nothing piled");
  }

  @Test
  void recordedWeatherReachesEveryLegAndItsDelays() {
    Journey journey =
        read(ScenarioFiles.with("wind: 1 m/s", "wind: 1 m/s\n      delay: 3 h")).journey();
    DailyExtremes course =
        assertInstanceOf(DailyExtremes.class, journey.legs().get(2).surroundings().ambient());
    assertTrue(course.covered().high() >= (14.5 + 3 + 12) * HOUR);
  }

  /** Holes and seams are the parcel's; a film may be covered; own warmers burn or give watts. */
  @Test
  void airAndOwnWarmers() {
    Scenario scenario = ScenarioReader.read("s.yaml", ScenarioFiles.OWN_WARMERS);
    Parcel two = scenario.packings().get(0);
    List<Vent> vents = List.of(new Vent(Face.Z_MAX, 1, 0.00635), new Vent(Face.X_MIN, 2, 0.005));
    assertEquals(new Openings(0, vents), two.openings());
    PlacedWarmer printed = two.warmers().get(0);
    assertEquals(FilmCover.HALF_TAPED, printed.cover());
    assertEquals(-1800, printed.opened());
    assertEquals(0.1, printed.warmer().mass(), 1e-12);
    IronPowder iron = assertInstanceOf(IronPowder.class, printed.warmer().heat());
    assertTrue(iron.iron() > 0.03 && iron.iron() < 0.07, iron.toString());
    TimeFunction watts = two.warmers().get(1).prescribedPower();
    assertEquals(2, watts.at(0));
    assertEquals(2, watts.before(29.5 * 3600));
    assertEquals(0, watts.at(29.5 * 3600), "opened half an hour before");
    Parcel one = scenario.packings().get(1);
    assertEquals(
        new Openings(Openings.LOOSE_GAP, List.of(new Vent(Face.Z_MAX, 2, 0.006))), one.openings());
    Parcel bare = scenario.packings().get(2);
    assertEquals(Openings.usual(), bare.openings());
    assertEquals(FilmCover.EDGES_TAPED, bare.warmers().get(0).cover());
    assertTrue(
        scenario.assumptions().contains("Preset, packing: seams, closed (assumed)."),
        scenario.assumptions()::toString);
    assertTrue(
        scenario
            .assumptions()
            .contains("Preset, warmer: opened, 30 min before sealing (assumed)."));
  }

  @Test
  void mishapsAndAForecastAreRead() {
    Scenario scenario = read(ScenarioFiles.MISHAPS);
    assertEquals(
        List.of("a night of frost", "a cold hold", "lost", "left in the sun", "on its head"),
        scenario.mishaps().stream().map(each -> ((Mishap.Own) each).words()).toList());
    Journey planned = scenario.journey();
    Parcel packed = scenario.packings().get(0);
    Remedy.Shipment lost = scenario.mishaps().get(2).applyTo(packed, planned);
    assertEquals(planned.duration() + 34 * 3600, lost.journey().duration(), 1e-6);
    assertTrue(lost.parcel().warmers().get(0).opened() > lost.journey().duration());
    Journey cold = scenario.mishaps().get(1).applyTo(packed, planned).journey();
    double middle = planned.start(1) + 3600;
    assertEquals(
        planned.legs().get(1).surroundings().ambient().at(middle) - 10,
        cold.legs().get(1).surroundings().ambient().at(middle),
        1e-9);
    Journey sunny = scenario.mishaps().get(3).applyTo(packed, planned).journey();
    assertEquals(planned.legs().size() + 1, sunny.legs().size());
    DailyTable forecast = scenario.forecast().orElseThrow();
    assertEquals(LocalDate.of(2026, 1, 15), forecast.first());
    assertEquals(LocalDate.of(2026, 1, 16), forecast.last());
    assertEquals(271.15, forecast.origin().get(1).low(), 1e-9);
    assertEquals(281.15, forecast.destination().get(1).high(), 1e-9);
    assertTrue(read(ScenarioFiles.GOOD).forecast().isEmpty());
  }
}
