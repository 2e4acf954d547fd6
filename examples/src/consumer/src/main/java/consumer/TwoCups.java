package consumer;

import static stenotherm.base.Length.millimetres;
import static stenotherm.base.Mass.grams;
import static stenotherm.base.Temperature.celsius;

import java.time.Duration;
import java.time.LocalDateTime;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyBuilder;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.ParcelBuilder;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.warmer.Warmers;

/** A parcel with two cups and a warmer, on a journey of five legs. */
public final class TwoCups {
  private TwoCups() {}

  public static void main(String[] args) {
    TransitResult result = Transit.run(parcel(), journey()).requireCompleted();
    System.out.println(result);
  }

  static Parcel parcel() {
    return box().warmer("warmer", Warmers.FORTY_HOUR, Face.Z_MAX, Duration.ofMinutes(-30)).build();
  }

  static ParcelBuilder box() {
    var plastic = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
    var vessel = new Vessel.BoxCup(new Dimensions(0.11, 0.11, 0.06), plastic);
    var gecko = Occupant.of(Animals.LEOPARD_GECKO, grams(45));
    var towel = Bedding.dampTowel(0.004);
    return ParcelBuilder.box("box", millimetres(340), millimetres(220), millimetres(220))
        .layer(Materials.EPS_20, millimetres(30))
        .fill(Materials.SHREDDED_PAPER)
        .with(new Container("left", vessel, new Position(-0.07, 0, 0.03), towel, gecko))
        .with(new Container("right", vessel, new Position(0.07, 0, 0.03), towel, gecko));
  }

  static Journey journey() {
    return JourneyBuilder.sealed(LocalDateTime.of(2026, 1, 15, 17, 0), celsius(22))
        .leg("van", Duration.ofHours(2), celsius(8))
        .leg("depot", Duration.ofHours(5), celsius(14))
        .leg("aircraft", Duration.ofHours(4), celsius(6))
        .leg("dock", Duration.ofHours(5), celsius(0))
        .leg("doorstep", Duration.ofHours(2), celsius(3))
        .build();
  }
}
