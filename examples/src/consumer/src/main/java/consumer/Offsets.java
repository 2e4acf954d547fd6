package consumer;

import static stenotherm.base.Temperatures.toCelsius;

import java.util.List;
import stenotherm.base.Workers;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/** One packing, ready for many journeys: 200 of them from 10 K colder to 10 K warmer, on two threads. */
public final class Offsets {
  private Offsets() {}

  public static void main(String[] args) {
    var parcel = TwoCups.parcel();
    var journey = TwoCups.journey();
    var model = ParcelModel.of(parcel, List.of(journey), TransitSettings.standard(), ModelScope.NOMINAL);
    double[] coldest = new double[200];
    new Workers(2).run(200, (worker, number) -> {
      var offset = Variation.NOMINAL.withOffset(number / 10.0 - 10);
      coldest[number] = model.run(journey, offset).exposure("left").coldest().temperature();
    });
    for (int number = 1; number < coldest.length; number++) {
      if (coldest[number] <= coldest[number - 1]) {
        throw new IllegalStateException("warmer air, colder animal");
      }
    }
    System.out.printf(
        "coldest from %.1f °C to %.1f °C%n", toCelsius(coldest[0]), toCelsius(coldest[199]));
  }
}
