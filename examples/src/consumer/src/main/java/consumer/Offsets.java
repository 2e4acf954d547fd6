package consumer;

import static stenotherm.base.Temperatures.toCelsius;

import java.util.Arrays;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import stenotherm.journey.Journey;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/** One packing, ready for many journeys: 200 of them from 10 K colder to 10 K warmer, on two threads. */
public final class Offsets {
  private Offsets() {}

  public static void main(String[] args) throws Exception {
    var journey = TwoCups.journey();
    var model = ParcelModel.of(TwoCups.parcel(), journey, TransitSettings.standard());
    var threads = Executors.newFixedThreadPool(2);
    try {
      var runs =
          IntStream.range(0, 200)
              .mapToObj(number -> Variation.NOMINAL.withOffset(number / 199.0 * 20 - 10))
              .map(offset -> threads.submit(() -> coldest(model, journey, offset)))
              .toList();
      double previous = 0;
      for (Future<Double> run : runs) {
        if (run.get() <= previous) {
          throw new IllegalStateException("warmer air, colder animal");
        }
        previous = run.get();
      }
      System.out.printf(
          "coldest from %.1f °C to %.1f °C%n", toCelsius(runs.get(0).get()), toCelsius(previous));
    } finally {
      threads.shutdownNow();
    }
  }

  private static double coldest(
      ParcelModel model, Journey journey, Variation offset) {
    return Arrays.stream(model.run(journey, offset).coldest("left")).min().orElseThrow();
  }
}
