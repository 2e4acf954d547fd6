package stenotherm.validation.studies;

import static stenotherm.base.Temperatures.fromCelsius;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Sunshine;
import stenotherm.animal.Animals;
import stenotherm.animal.Exposure;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Mass;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.journey.Leg;
import stenotherm.journey.Outdoors;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.WarmerClass;

/**
 * A foam-lined carton with one gecko in a plastic cup, on which facts of the trade are tried. All
 * its numbers are invented; they are those of a usual small parcel.
 */
final class Carton {
  /** Hottest and coldest that an animal is planned for: the gecko's alarm band [°C]. */
  static final Range BAND = new Range(10, 32);

  static final double CUP_HEIGHT = 0.06;
  static final double FILL_UNDER_CUP = 0.02;

  private static final String CUP = "cup";
  private static final double START = fromCelsius(22);
  private static final LocalDateTime SEALED = LocalDateTime.of(2026, 1, 14, 15, 0);

  /** From a low to the high of its day [K]. */
  private static final double DAILY_RANGE = 8;

  private Carton() {}

  /** Coldest and hottest part of the animal [°C] with what the run cost. */
  record Extremes(double coldest, double hottest, int cells, long steps) {}

  /** Board around foam. */
  static Walls walls(double foam) {
    return Walls.uniform(
        List.of(
            new WallLayer(Materials.CORRUGATED_BOARD, 0.004),
            new WallLayer(Materials.EPS_20, foam)));
  }

  /** A carton with a cup in the middle of its floor, some fill below it. */
  static Parcel packed(Dimensions inside, double foam, List<PlacedWarmer> warmers) {
    Walls walls = walls(foam);
    Container cup =
        new Container(
            CUP,
            new Vessel.BoxCup(
                new Dimensions(0.11, 0.08, CUP_HEIGHT),
                new WallLayer(Materials.POLYPROPYLENE, 5e-4)),
            new Position(0, 0, FILL_UNDER_CUP),
            Bedding.dampTowel(0.004),
            Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(45)));
    return new Parcel(
        "carton", walls.around(inside), walls, Materials.SHREDDED_PAPER, List.of(cup), warmers);
  }

  /** A warmer taped under the lid, opened half an hour before the carton is sealed. */
  static PlacedWarmer underLid(WarmerClass warmer) {
    return new PlacedWarmer("warmer", warmer, Face.Z_MAX, Mounting.taped(), -Times.fromHours(0.5));
  }

  /** A warmer over the cup with some fill between them. */
  static PlacedWarmer overCup(WarmerClass warmer, double gap) {
    Position bottom = new Position(0, 0, FILL_UNDER_CUP + CUP_HEIGHT + gap);
    return new PlacedWarmer(
        "warmer", warmer, new Placement.InCavity(bottom, Axis.Z), -Times.fromHours(0.5));
  }

  /** Sealed at 15:00, flown overnight, left on a porch in the morning. */
  static Journey overnight(double lowAtOrigin, double lowAtDestination) {
    return JourneyTemplates.OVERNIGHT_BY_AIR.journey(
        new JourneyTemplate.Start(SEALED, START),
        outdoors("origin", lowAtOrigin),
        outdoors("destination", lowAtDestination),
        0);
  }

  private static Outdoors outdoors(String name, double low) {
    Range day = new Range(fromCelsius(low), fromCelsius(low + DAILY_RANGE));
    // time zero is 15:00 of the first of three equal days
    DailyExtremes air =
        new DailyExtremes(
            -Times.fromHours(15), Collections.nCopies(3, day), DiurnalShape.SOLAR_TIME);
    return new Outdoors(new Place(name, ZoneOffset.UTC), air, 0, Sunshine.NONE);
  }

  /** Half a day in a room. */
  static Journey room(double celsius) {
    Surroundings room =
        Surroundings.of(Ambient.constant(fromCelsius(celsius)), 0, FaceFilms.indoors());
    Leg wait =
        new Leg(
            "wait",
            new Place("room", ZoneOffset.UTC),
            Times.fromHours(12),
            room,
            Source.assumed("invented"));
    return new Journey(SEALED, START, List.of(wait));
  }

  /** Runs a carton through a journey, on cells so many times as wide as the standard's. */
  static TransitResult run(Parcel parcel, Journey journey, double width) {
    TransitSettings settings =
        new TransitSettings(
            TransitSettings.standard().mesh().scaled(width),
            Times.fromHours(0.5),
            IntegratorSettings.standard());
    return Transit.run(parcel, journey, Variation.NOMINAL, settings);
  }

  /** Sends a carton likewise. */
  static Extremes send(Parcel parcel, Journey journey, double width) {
    TransitResult result = run(parcel, journey, width);
    Exposure exposure = result.exposure(CUP, journey.duration());
    return new Extremes(
        Temperatures.toCelsius(exposure.coldest().temperature()),
        Temperatures.toCelsius(exposure.hottest().temperature()),
        result.cells(),
        result.work().steps());
  }
}
