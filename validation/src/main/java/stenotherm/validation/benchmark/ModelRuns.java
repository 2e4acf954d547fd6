package stenotherm.validation.benchmark;

import static stenotherm.base.Temperatures.fromCelsius;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.journey.Outdoors;
import stenotherm.journey.Place;
import stenotherm.parcel.Parcel;
import stenotherm.transit.ModelScope;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/**
 * Runs of the parcel of {@link ReferenceJourney} that are timed and told.
 *
 * <p>Internal. Immutable, thus thread-safe.
 */
public enum ModelRuns {
  /** The journey that the model was built for: its coefficients are at hand. */
  REFERENCE("reference journey", reference(), 0),
  /** The same in warmer air, for which a run finds coefficients of its own. */
  WARMER("the same, 6 K warmer", reference(), 6),
  /** Overnight by air, from a cold place to a mild one. */
  OVERNIGHT("overnight by air", overnight(), 0);

  /** How many runs {@link #offsets} makes. */
  static final int OFFSETS = 200;

  private static final double LARGEST_OFFSET = 10;

  private final String title;
  private final Journey journey;
  private final Variation variation;

  ModelRuns(String title, Journey journey, double offset) {
    this.title = title;
    this.journey = journey;
    this.variation = offset == 0 ? Variation.NOMINAL : Variation.NOMINAL.withOffset(offset);
  }

  private static Journey reference() {
    return ReferenceJourney.scenario().journey();
  }

  private static Journey overnight() {
    Place place = new Place("somewhere", ZoneOffset.UTC);
    var start = new JourneyTemplate.Start(LocalDateTime.of(2026, 3, 2, 17, 0), fromCelsius(21));
    return JourneyTemplates.OVERNIGHT_BY_AIR.journey(
        start, outdoors(place, -4), outdoors(place, 8), 0);
  }

  private static Outdoors outdoors(Place place, double celsius) {
    return new Outdoors(place, Ambient.constant(fromCelsius(celsius)), 2, Sunshine.NONE);
  }

  /** The words of reports. */
  String title() {
    return title;
  }

  /**
   * Builds the model for the journey, with more than 60,000 cells. Only the air differs from run to
   * run, so the nominal scope is the one to take.
   */
  ParcelModel model(int threads) {
    return model(threads, ModelScope.NOMINAL);
  }

  private ParcelModel model(int threads, ModelScope scope) {
    Parcel parcel = ReferenceJourney.scenario().packings().get(0);
    TransitSettings settings =
        new TransitSettings(
            ReferenceJourney.fullMesh(), Times.HOUR / 4, IntegratorSettings.standard());
    return ParcelModel.of(parcel, List.of(journey), settings.withThreads(threads), scope);
  }

  /** Runs with modes. */
  TransitResult on(ParcelModel model) {
    return model.run(journey, variation);
  }

  /** Runs cell by cell, under the same coefficients. */
  TransitResult everyCell(ParcelModel model) {
    return model.runEveryCell(journey, variation);
  }

  /**
   * Builds a model of means, which is what odds and maps read, and runs the reference journey at
   * {@value #OFFSETS} ambient offsets, half of them colder.
   *
   * @param threads number of threads
   * @return the coldest mean temperature of the animal in each [K]
   */
  static double[] offsets(int threads) {
    ParcelModel model = REFERENCE.model(threads, ModelScope.NOMINAL_MEANS);
    ExecutorService service = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Double>> runs =
          IntStream.range(0, OFFSETS)
              .mapToObj(number -> service.submit(() -> coldestAt(model, offset(number))))
              .toList();
      double[] coldest = new double[OFFSETS];
      for (int number = 0; number < OFFSETS; number++) {
        coldest[number] = runs.get(number).get();
      }
      return coldest;
    } catch (ExecutionException failure) {
      throw new IllegalStateException(failure);
    } catch (InterruptedException interrupt) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupt);
    } finally {
      service.shutdownNow();
    }
  }

  private static double offset(int number) {
    return LARGEST_OFFSET * (2.0 * number / (OFFSETS - 1) - 1);
  }

  /**
   * Tells what reading means alone leaves out.
   *
   * @param coldest what {@link #offsets} returned
   * @return largest difference to the model that reads whole results, over ten of the offsets [K]
   */
  static double errorOfOffsets(double[] coldest) {
    ParcelModel whole = REFERENCE.model(1);
    double largest = 0;
    for (int number = 0; number < OFFSETS; number += OFFSETS / 10) {
      largest = Math.max(largest, Math.abs(coldest[number] - coldestAt(whole, offset(number))));
    }
    return largest;
  }

  private static double coldestAt(ParcelModel model, double offset) {
    double[][] means = model.means(REFERENCE.journey, Variation.NOMINAL.withOffset(offset));
    return Arrays.stream(means[0]).min().orElseThrow();
  }
}
