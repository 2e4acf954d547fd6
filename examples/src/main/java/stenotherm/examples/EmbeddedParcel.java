package stenotherm.examples;

import static stenotherm.base.Length.millimetres;
import static stenotherm.base.Mass.grams;
import static stenotherm.base.Temperature.celsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Locale;
import stenotherm.animal.Animals;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.base.Times;
import stenotherm.decision.Verdict;
import stenotherm.journey.JourneyBuilder;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.ParcelBuilder;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;

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
    var gecko = Occupant.of(Animals.LEOPARD_GECKO, grams(45));
    var plastic = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
    var vessel = new Vessel.BoxCup(new Dimensions(0.11, 0.11, 0.06), plastic);
    var towel = Bedding.dampTowel(0.004);
    var cup = new Container("cup", vessel, new Position(0, 0, 0.03), towel, gecko);
    var parcel =
        ParcelBuilder.box("box", millimetres(240), millimetres(200), millimetres(170))
            .layer(Materials.EPS_20, millimetres(19))
            .fill(Materials.SHREDDED_PAPER)
            .with(cup)
            .build();
    var journey =
        JourneyBuilder.sealed(LocalDateTime.of(2026, 1, 15, 20, 0), celsius(22))
            .leg("wait in a cellar", Duration.ofHours(8), celsius(12))
            .build();
    TransitResult result = Transit.run(parcel, journey);
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
