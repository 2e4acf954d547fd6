package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Situations;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.animal.AnimalBody;
import stenotherm.animal.Animals;
import stenotherm.animal.Exposure;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Length;
import stenotherm.base.Mass;
import stenotherm.base.Source;
import stenotherm.base.Temperature;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyBuilder;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.ParcelBuilder;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vent;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.warmer.Warmers;

/** What a program that embeds the library writes and reads. */
class EmbeddingTest {
  private static final LocalDateTime EVENING = LocalDateTime.of(2026, 1, 15, 20, 0);

  private static final Container CUP =
      new Container(
          "cup",
          new Vessel.BoxCup(
              new Dimensions(0.11, 0.11, 0.06), new WallLayer(Materials.POLYPROPYLENE, 0.0005)),
          new Position(0, 0, 0.03),
          Bedding.dampTowel(0.004),
          Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(45)));

  private static final Parcel PARCEL =
      ParcelBuilder.box("box", Length.inches(10), Length.inches(8), Length.millimetres(170))
          .layer(Materials.CORRUGATED_BOARD, Length.millimetres(4))
          .layer(Materials.EPS_20, Length.millimetres(19))
          .fill(Materials.SHREDDED_PAPER)
          .with(CUP)
          .warmer("warmer", Warmers.FORTY_HOUR, Face.Z_MAX, Duration.ofMinutes(-30))
          .build();

  private static final Journey JOURNEY =
      JourneyBuilder.sealed(EVENING, Temperature.celsius(22))
          .leg("dock", Duration.ofHours(3), Temperature.fahrenheit(41))
          .leg("van", Duration.ofMinutes(90), Temperature.celsius(12))
          .build();

  @Test
  void aBuilderPacksWhatTheConstructorsPack() {
    Parcel byHand =
        new Parcel(
            "box",
            Box.ofSize(0.254, 0.2032, 0.17),
            Walls.uniform(
                List.of(
                    new WallLayer(Materials.CORRUGATED_BOARD, 0.004),
                    new WallLayer(Materials.EPS_20, 0.019))),
            Materials.SHREDDED_PAPER,
            List.of(CUP),
            List.of(
                new PlacedWarmer(
                    "warmer", Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), -1800)));
    assertEquals(byHand.walls(), PARCEL.walls());
    assertEquals(byHand.cavity().toString(), PARCEL.cavity().toString());
    assertEquals(byHand.warmers(), PARCEL.warmers());
    assertEquals(byHand.filling(), PARCEL.filling());
    assertEquals(byHand.openings(), PARCEL.openings());
    assertEquals(byHand.mass(), PARCEL.mass(), 1e-12);
  }

  @Test
  void aWarmersFilmAndHolesHaveShortForms() {
    Openings loose = new Openings(Openings.LOOSE_GAP, List.of());
    ParcelBuilder builder =
        ParcelBuilder.box("box", Length.inches(10), Length.inches(8), Length.millimetres(170))
            .layer(Materials.EPS_20, Length.millimetres(19))
            .with(CUP)
            .warmer("warmer", Warmers.FORTY_HOUR, Face.Z_MAX, Duration.ZERO, FilmCover.EDGES_TAPED);
    Parcel closed = builder.build();
    PlacedWarmer byHand =
        new PlacedWarmer("warmer", Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), 0);
    assertEquals(List.of(byHand.covered(FilmCover.EDGES_TAPED)), closed.warmers());
    assertEquals(Openings.usual(), closed.openings());
    List<Vent> vents = List.of(new Vent(Face.Z_MAX, 2, 0.006), new Vent(Face.Z_MIN, 3, 0.004));
    builder.holes(Face.Z_MAX, 2, Length.millimetres(6)).holes(Face.Z_MIN, 3, Length.millimetres(4));
    assertEquals(new Openings(Openings.CLOSED_GAP, vents), builder.build().openings());
    builder.openings(loose).holes(Face.Z_MAX, 2, Length.millimetres(6));
    assertEquals(new Openings(Openings.LOOSE_GAP, vents.subList(0, 1)), builder.build().openings());
    assertThrows(
        InvalidInputException.class, () -> builder.holes(Face.Z_MAX, 0, Length.millimetres(6)));
    // millimetres taken for metres
    assertThrows(InvalidInputException.class, () -> builder.holes(Face.Z_MAX, 2, new Length(6)));
  }

  @Test
  void aLegIsAsUncertainAsItSays() {
    Temperature seven = Temperature.celsius(7);
    Duration hour = Duration.ofHours(1);
    Journey journey =
        JourneyBuilder.sealed(EVENING, Temperature.celsius(22))
            .leg("cellar", hour, seven)
            .leg("shed", hour, seven, 4)
            .leg("hold", hour, Situations.AIRCRAFT_HOLD, seven)
            .leg("hold", hour, Situations.AIRCRAFT_HOLD, seven, 3)
            .leg("ramp", hour, Situations.RAMP, seven)
            .build();
    List<Surroundings> met = journey.legs().stream().map(Leg::surroundings).toList();
    assertEquals(
        List.of(0.0, 4.0, 7.0, 3.0, 4.0), met.stream().map(each -> each.spread().own()).toList());
    assertTrue(met.stream().allMatch(each -> each.spread().outdoors() == 0));
    assertTrue(met.stream().allMatch(each -> each.ambient().at(0) == seven.kelvin()));
    Surroundings byHand =
        Surroundings.of(TimeFunction.constant(seven.kelvin()), 3, Situations.AIRCRAFT_HOLD.films())
            .stowed(Stowage.AMONG_OTHERS)
            .atAltitude(Situations.AIRCRAFT_HOLD.altitude());
    assertEquals(byHand.films(), met.get(3).films());
    assertEquals(byHand.stowage(), met.get(3).stowage());
    assertEquals(byHand.pressure(), met.get(3).pressure());
    assertEquals(Situations.RAMP.films(), met.get(4).films(), "wind");
    assertEquals(Sunshine.NONE, met.get(4).sunshine());
    JourneyBuilder builder = JourneyBuilder.sealed(EVENING, Temperature.celsius(22));
    assertThrows(InvalidInputException.class, () -> builder.leg("shed", hour, seven, -1));
    // a temperature taken for a spread
    assertThrows(
        InvalidInputException.class, () -> builder.leg("hold", hour, Situations.RAMP, seven, 280));
  }

  @Test
  void aBuilderJoinsLegs() {
    assertEquals(4.5 * 3600, JOURNEY.duration());
    assertEquals(295.15, JOURNEY.startTemperature(), 1e-12);
    Leg dock = JOURNEY.legs().get(0);
    assertEquals(278.15, dock.surroundings().ambient().at(600), 1e-9);
    assertEquals("given by the caller", dock.source().work());
    Place home = new Place("home", java.time.ZoneOffset.ofHours(-5));
    Journey other =
        JourneyBuilder.sealed(EVENING, Temperature.celsius(22))
            .at(home)
            .leg("cellar", Duration.ofHours(1), Temperature.celsius(12))
            .build();
    Leg byHand =
        new Leg(
            "cellar",
            home,
            3600,
            Ambient.constant(285.15),
            0,
            FaceFilms.indoors(),
            Source.assumed("given by the caller"));
    assertEquals(
        byHand.surroundings().ambient().at(0), other.legs().get(0).surroundings().ambient().at(0));
    assertEquals(home, other.legs().get(0).place());
  }

  @Test
  void resultsAreReadByName() {
    TransitSettings settings =
        new TransitSettings(Packings.FEW_CELLS, 1800, IntegratorSettings.standard());
    Map<String, Point> places = Map.of("below the lid", new Point(0.127, 0.1016, 0.14));
    ParcelModel model =
        ParcelModel.withPlaces(PARCEL, List.of(JOURNEY), settings, ModelScope.NOMINAL, places);
    var bytes = new DataOutputStream(new ByteArrayOutputStream());
    assertThrows(IllegalStateException.class, () -> model.write(bytes), "no room for places");
    TransitResult result = model.run(JOURNEY, Variation.NOMINAL);
    double[] place = result.at("below the lid");
    double[] air = result.airIn("cup");
    double[] animal = result.mean("cup");
    int last = animal.length - 1;
    // the warmer is on the lid, the animal on the floor of its cup
    assertTrue(place[last] > air[last] && air[last] > animal[last]);
    assertThrows(InvalidInputException.class, () -> result.at("in the moon"));
    assertThrows(InvalidInputException.class, () -> result.airIn("pot"));
    double low = Arrays.stream(result.coldest("cup")).min().orElseThrow() - 273.15;
    String[] lines = result.toString().split("\\R");
    assertEquals("box, 4.5 h: completed", lines[0]);
    assertTrue(
        lines[1].startsWith(String.format(java.util.Locale.ROOT, "cup: %.1f °C to", low)),
        lines[1]);
    assertTrue(lines[1].matches(".* h outside its alarm band, 18.0 % oxygen .*"), lines[1]);
  }

  @Test
  void unitsAreSpelledOut() {
    assertEquals(0.0254, Length.inches(1).metres(), 1e-15);
    assertEquals(0.004, Length.millimetres(4).metres(), 1e-15);
    assertEquals(273.15, Temperature.celsius(0).kelvin(), 1e-12);
    assertEquals(273.15, Temperature.fahrenheit(32).kelvin(), 1e-12);
    assertEquals(0.045, Mass.grams(45).kilograms());
    assertEquals(0.028349523125, Mass.ounces(1).kilograms(), 1e-15);
    assertEquals(0.45359237, Mass.pounds(1).kilograms(), 1e-15);
    assertEquals(
        new Occupant(
            Animals.LEOPARD_GECKO, new AnimalBody(0.045, Animals.LEOPARD_GECKO.restingShape())),
        Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(45)));
    refused(
        "animal mass: 45 kg must lie between 0.1 g and 20 kg. Is it in grams?",
        () -> Occupant.of(Animals.LEOPARD_GECKO, new Mass(45)));
    refused(
        "animal mass: 0.045 g must lie between 0.1 g and 20 kg. Is it in kilograms?",
        () -> Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(0.045)));
    assertThrows(InvalidInputException.class, () -> Mass.grams(0));
    assertThrows(InvalidInputException.class, () -> new Mass(Double.NaN));
    // kelvins taken for degrees, and degrees for kelvins
    assertThrows(InvalidInputException.class, () -> Temperature.celsius(295));
    assertThrows(InvalidInputException.class, () -> new Temperature(22));
    assertThrows(InvalidInputException.class, () -> new Length(Double.NaN));
    refused(
        "duration of leg 'dock': 0 s must lie between 1 min and 30 days",
        () ->
            JourneyBuilder.sealed(EVENING, Temperature.celsius(22))
                .leg("dock", Duration.ZERO, Temperature.celsius(12)));
  }

  @Test
  void anExtentIsNamedAsItIsCalled() {
    refused(
        "width: -200 mm must be above 0",
        () ->
            ParcelBuilder.box(
                "box", Length.millimetres(300), Length.millimetres(-200), Length.inches(6)));
    refused("width: -200 mm must be above 0", () -> new Dimensions(0.3, -0.2, 0.15));
    refused("thickness of the towel: 0 mm must be above 0", () -> Bedding.dampTowel(0));
    refused(
        "thickness of a layer of EPS: -19 mm must be above 0",
        () -> new WallLayer(Materials.EPS, -0.019));
  }

  /** Not all that a record holds, with the sources of each number. */
  @Test
  void textsAreShort() {
    assertEquals(
        "box, 254 x 203.2 x 170 mm: cup, 110 x 110 x 60 mm, leopard gecko of 45 g; warmer, 40 hour"
            + " warmer",
        PARCEL.toString());
    assertEquals(
        "cup, 110 x 110 x 60 mm, empty", PARCEL.withoutAnimals().containers().get(0).toString());
    assertEquals("40 hour warmer, 128 x 82 x 12 mm, 100 g", Warmers.FORTY_HOUR.toString());
    assertEquals(
        "leopard gecko (Eublepharis macularius), alarm band 15 °C to 33 °C",
        Animals.LEOPARD_GECKO.toString());
    assertEquals("EPS 20, 0.0350 W/(m K), 20 kg/m3, 1450 J/(kg K)", Materials.EPS_20.toString());
    Exposure exposure =
        Exposure.of(
            Animals.LEOPARD_GECKO.tolerance(),
            new double[] {0, 3600, 7200},
            new double[] {295.15, 285.05, 290.15},
            new double[] {296.25, 286.15, 291.15});
    assertEquals(
        "11.9 °C after 1.0 h to 23.1 °C after 0.0 h, outside the alarm band for 0.9 h",
        exposure.toString());
  }

  private static void refused(String message, Executable call) {
    assertEquals(message, assertThrows(InvalidInputException.class, call).getMessage());
  }
}
