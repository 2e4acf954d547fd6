package consumer;

import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Animals;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
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
import stenotherm.transit.Transit;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.warmer.Warmers;

/** A parcel with two cups and a warmer, on a journey of five legs. */
public final class TwoCups {
  private TwoCups() {}

  public static void main(String[] args) {
    var result =
        Transit.run(parcel(), journey(), Variation.NOMINAL, TransitSettings.standard()).requireCompleted();
    for (String cup : List.of("left", "right")) {
      var exposure = result.exposure(cup);
      System.out.printf(
          "%s: coldest %.1f °C, %+.1f K to the cold end of the alarm band%n",
          cup, toCelsius(exposure.coldest().temperature()), exposure.coldMargin(Limit.ALARM));
    }
  }

  static Parcel parcel() {
    var foam = Walls.uniform(List.of(new WallLayer(Materials.EPS_20, 0.03)));
    var warmer =
        new PlacedWarmer(
            "warmer", Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), -Times.fromHours(0.5));
    return new Parcel(
        "box",
        Box.ofSize(0.34, 0.22, 0.22),
        foam,
        Materials.SHREDDED_PAPER,
        List.of(cup("left", -0.07), cup("right", 0.07)),
        List.of(warmer));
  }

  private static Container cup(String name, double x) {
    var gecko = new Occupant(Animals.LEOPARD_GECKO, Animals.LEOPARD_GECKO.body(0.045));
    var side = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
    var vessel = new Vessel.BoxCup(new Dimensions(0.11, 0.11, 0.06), side);
    return new Container(name, vessel, new Position(x, 0, 0.03), Bedding.dampTowel(0.004), gecko);
  }

  static Journey journey() {
    var legs =
        List.of(
            leg("van", 2, 8),
            leg("depot", 5, 14),
            leg("aircraft", 4, 6),
            leg("dock", 5, 0),
            leg("doorstep", 2, 3));
    return new Journey(LocalDateTime.of(2026, 1, 15, 17, 0), fromCelsius(22), legs);
  }

  private static Leg leg(String name, double hours, double celsius) {
    return new Leg(
        name,
        new Place(name, ZoneOffset.UTC),
        Times.fromHours(hours),
        Ambient.constant(fromCelsius(celsius)),
        2,
        FaceFilms.indoors(),
        Source.assumed("given by the caller"));
  }
}
