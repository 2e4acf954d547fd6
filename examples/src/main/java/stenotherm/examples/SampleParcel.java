package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.animal.Animals;
import stenotherm.animal.Exposure;
import stenotherm.base.Face;
import stenotherm.base.Mass;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.decision.Verdict;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.picture.HistoryChart;
import stenotherm.picture.Picture;
import stenotherm.report.Cautions;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.Warmers;

/** What the programs about packing have in common. Keeper, gecko, box and clock are invented. */
final class SampleParcel {
  static final String CUP = "cup";
  static final String WARMER = "warmer";
  static final Dimensions CUP_SIZE = new Dimensions(0.11, 0.08, 0.06);

  /** When every parcel is sealed. */
  static final LocalDateTime MORNING = LocalDateTime.of(2026, 6, 21, 8, 0);

  static final ZoneOffset CLOCK = ZoneOffset.ofHours(-4);

  /** Twice as coarse as the standard, so that a program takes seconds. */
  private static final MeshControl MESH = MeshControl.uniform(0.016);

  private SampleParcel() {}

  /** A gecko of 45 g on a damp towel in a plastic cup in the middle of the box. */
  static Container cup(double aboveFloor) {
    return new Container(
        CUP,
        new Vessel.BoxCup(CUP_SIZE, new WallLayer(Materials.POLYPROPYLENE, 0.0005)),
        new Position(0, 0, aboveFloor),
        Bedding.dampTowel(0.004),
        Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(45)));
  }

  /** Board outside, foam inside. */
  static Walls walls(double foam) {
    return walls(Materials.EPS_20, foam);
  }

  static Walls walls(Material foam, double thickness) {
    var board = new WallLayer(Materials.CORRUGATED_BOARD, 0.004);
    return Walls.uniform(List.of(board, new WallLayer(foam, thickness)));
  }

  /** A warmer taped to an inner face, opened half an hour before the box was sealed. */
  static PlacedWarmer warmer(Face face) {
    return new PlacedWarmer(
        WARMER, Warmers.FORTY_HOUR, face, Mounting.taped(), -Times.fromHours(0.5));
  }

  /** A wait in one kind of surroundings, everything at 22 °C when it begins. */
  static Journey wait(Surroundings surroundings, double hours) {
    var leg =
        new Leg(
            "wait",
            new Place("somewhere", CLOCK),
            Times.fromHours(hours),
            surroundings,
            Source.assumed("invented"));
    return new Journey(MORNING, fromCelsius(22), List.of(leg));
  }

  static TransitResult send(Parcel parcel, Journey journey) {
    return send(parcel, journey, MESH);
  }

  private static TransitResult send(Parcel parcel, Journey journey, MeshControl mesh) {
    double interval = journey.duration() / 48;
    var settings = new TransitSettings(mesh, interval, IntegratorSettings.adaptive(0.05));
    return Transit.run(parcel, journey, Variation.NOMINAL, settings);
  }

  static Exposure exposure(TransitResult result) {
    return result.exposure(CUP);
  }

  static double last(double[] values) {
    return values[values.length - 1];
  }

  /** In degrees Celsius, rounded to what it is worth. */
  static double celsius(double kelvin) {
    return Math.rint(2 * toCelsius(kelvin)) / 2;
  }

  static void print(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }

  /** A curve of a result, its values times a factor. */
  static HistoryChart.Line line(String name, TransitResult result, double[] values, double factor) {
    List<HistoryChart.Sample> samples = new ArrayList<>();
    double[] times = result.times();
    for (int at = 0; at < times.length; at++) {
      samples.add(new HistoryChart.Sample(times[at], factor * values[at]));
    }
    return new HistoryChart.Line(name, samples);
  }

  /** Writes a picture to the file that the arguments name, if they do. */
  static void draw(Picture picture, String[] args) {
    for (String file : args) {
      try {
        Files.writeString(Path.of(file), picture.svg(760, 380));
      } catch (IOException failure) {
        throw new UncheckedIOException(failure);
      }
    }
  }

  /** Prints what the grid does to a result and what must be said beside it. */
  static void printCautions(TransitResult result) {
    Exposure usual = exposure(result);
    Exposure coarser = exposure(send(result.parcel(), result.journey(), MESH.scaled(1.5)));
    double moved =
        Math.max(
            Math.abs(usual.coldest().temperature() - coarser.coldest().temperature()),
            Math.abs(usual.hottest().temperature() - coarser.hottest().temperature()));
    print(
        "The animal's temperature changes by %.1f K with cells 1.5 times as wide (tried on one"
            + " case).",
        Math.ceil(10 * moved) / 10);
    result.cautions().forEach(System.out::println);
    if (!result.parcel().warmers().isEmpty()) {
      System.out.println(Cautions.ILLUSTRATIVE);
    }
    System.out.println(Verdict.DEFER);
  }
}
