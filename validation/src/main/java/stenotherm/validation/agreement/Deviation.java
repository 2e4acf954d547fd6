package stenotherm.validation.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stenotherm.base.InvalidInputException;
import stenotherm.parcel.Container;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.transit.TransitResult;

/**
 * How far one output of a reduced run is from that of the full solver, over the stored times.
 *
 * @param output the output, for example "cup coldest"
 * @param isExtreme whether it is an extreme over a body rather than its mean
 * @param largest the largest difference in magnitude [K]
 * @param time when it occurs [s]
 * @param estimate what the reduced run takes it for [K]
 */
record Deviation(String output, boolean isExtreme, double largest, double time, double estimate) {
  /** What part of what is allowed it is. */
  double part() {
    return largest / (isExtreme ? ModelAgreement.EXTREME_LIMIT : ModelAgreement.MEAN_LIMIT);
  }

  /** The deviations of animals and warmers. */
  static List<Deviation> of(TransitResult reduced, TransitResult full) {
    if (!reduced.outcome().isCompleted() || !full.outcome().isCompleted()) {
      throw new InvalidInputException(
          "run", "did not complete: " + reduced.outcome() + ", " + full.outcome());
    }
    Map<String, Double> estimates =
        reduced
            .reduction()
            .orElseThrow(() -> new InvalidInputException("run", "was not reduced"))
            .errors();
    double[] times = reduced.times();
    List<Deviation> all = new ArrayList<>();
    for (Container cup : reduced.parcel().occupied()) {
      String name = cup.name();
      all.add(of(name + " mean", false, times, reduced.mean(name), full.mean(name), estimates));
      all.add(
          of(name + " coldest", true, times, reduced.coldest(name), full.coldest(name), estimates));
      all.add(
          of(name + " hottest", true, times, reduced.hottest(name), full.hottest(name), estimates));
    }
    for (PlacedWarmer warmer : reduced.parcel().warmers()) {
      String name = warmer.name();
      all.add(of(name + " mean", false, times, reduced.mean(name), full.mean(name), estimates));
      all.add(
          of(name + " hottest", true, times, reduced.hottest(name), full.hottest(name), estimates));
    }
    return List.copyOf(all);
  }

  private static Deviation of(
      String output,
      boolean isExtreme,
      double[] times,
      double[] values,
      double[] exact,
      Map<String, Double> estimates) {
    double largest = 0;
    double time = 0;
    for (int row = 0; row < times.length; row++) {
      double off = Math.abs(values[row] - exact[row]);
      // in this order NaN comes last, so that it counts as the worst
      if (Double.compare(off, largest) > 0) {
        largest = off;
        time = times[row];
      }
    }
    Double estimate = estimates.get(output);
    if (estimate == null) {
      throw new InvalidInputException("output", "there is no error estimate of '" + output + "'");
    }
    return new Deviation(output, isExtreme, largest, time, estimate);
  }
}
