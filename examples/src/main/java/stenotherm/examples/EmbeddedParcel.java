package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Animals;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.base.Source;
import stenotherm.base.Times;
import stenotherm.decision.Verdict;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * A parcel built in code and left in a cold room: how cold does the gecko in it get in eight hours?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class EmbeddedParcel {
  private EmbeddedParcel() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    var gecko = new Occupant(Animals.LEOPARD_GECKO, Animals.LEOPARD_GECKO.body(0.045));
    var lid = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
    var towel = Bedding.dampTowel(0.004);
    var vessel = new Vessel.BoxCup(new Dimensions(0.11, 0.11, 0.06), lid);
    var cup = new Container("cup", vessel, new Position(0, 0, 0.03), towel, gecko);
    var foam = Walls.uniform(List.of(new WallLayer(Materials.EPS_20, 0.019)));
    var box = Box.ofSize(0.24, 0.20, 0.17);
    var parcel = new Parcel("box", box, foam, Materials.SHREDDED_PAPER, List.of(cup), List.of());
    var room = new Place("cold room", ZoneOffset.UTC);
    var air = Ambient.constant(fromCelsius(12));
    var wait =
        new Leg(
            "wait",
            room,
            Times.fromHours(8),
            air,
            0,
            FaceFilms.indoors(),
            Source.assumed("a cellar"));
    var journey = new Journey(LocalDateTime.of(2026, 1, 15, 20, 0), fromCelsius(22), List.of(wait));
    TransitResult result =
        Transit.run(parcel, journey, Variation.NOMINAL, TransitSettings.standard());
    Exposure exposure = result.exposure("cup");
    System.out.printf(
        Locale.ROOT,
        "Coldest: %.1f °C after %.1f h, %+.1f K to the cold end of the alarm band.%n",
        Math.rint(2 * toCelsius(exposure.coldest().temperature())) / 2,
        Times.toHours(exposure.coldest().time()),
        exposure.coldMargin(Limit.ALARM));
    System.out.println(Verdict.DEFER);
  }
}
