package stenotherm.validation.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stenotherm.base.InvalidInputException;
import stenotherm.transit.TransitOutput;
import stenotherm.transit.TransitResult;

/**
 * How far one output of a reduced run is from that of the full solver, over the stored times.
 *
 * @param output the output, for example "cup coldest"
 * @param isExtreme whether it is an extreme over a body rather than its mean
 * @param largest the largest difference in magnitude [K]
 * @param time when it occurs [s]
 * @param estimate what the model takes it for, over runs that span what is uncertain [K]
 */
record Deviation(String output, boolean isExtreme, double largest, double time, double estimate) {
  /** What part of what is allowed it is. */
  double part() {
    return largest / (isExtreme ? ModelAgreement.EXTREME_LIMIT : ModelAgreement.MEAN_LIMIT);
  }

  /** The deviations of animals, warmers and packs. */
  static List<Deviation> of(TransitResult reduced, TransitResult full) {
    if (!reduced.outcome().isCompleted() || !full.outcome().isCompleted()) {
      throw new InvalidInputException(
          "run", "did not complete: " + reduced.outcome() + ", " + full.outcome());
    }
    Map<TransitOutput, Double> estimates =
        reduced
            .reduction()
            .orElseThrow(() -> new InvalidInputException("run", "was not reduced"))
            .errors();
    double[] times = reduced.times();
    List<Deviation> all = new ArrayList<>();
    estimates.forEach(
        (output, estimate) -> {
          String of = output.of();
          switch (output.quantity()) {
            case MEAN -> all.add(of(output, times, reduced.mean(of), full.mean(of), estimate));
            case COLDEST ->
                all.add(of(output, times, reduced.coldest(of), full.coldest(of), estimate));
            case HOTTEST ->
                all.add(of(output, times, reduced.hottest(of), full.hottest(of), estimate));
            // heat flows and temperatures of faces decide nothing
            default -> {}
          }
        });
    return List.copyOf(all);
  }

  private static Deviation of(
      TransitOutput output, double[] times, double[] values, double[] exact, double estimate) {
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
    boolean isExtreme = output.quantity() != TransitOutput.OutputQuantity.MEAN;
    return new Deviation(output.words(), isExtreme, largest, time, estimate);
  }
}
