package stenotherm.picture;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Range;

/** Round values along an axis. */
final class Ticks {
  private static final List<Double> HOURS =
      List.of(0.25, 0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 12.0, 24.0, 48.0, 96.0, 168.0);

  private Ticks() {}

  /** Multiples of 1, 2 or 5 times a power of ten, at most some of them. */
  static List<Double> decimal(Range range, double most) {
    double rough = (range.high() - range.low()) / Math.max(1, most);
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= rough * (1 - 1e-9)) {
        return multiples(range, factor * power);
      }
    }
    return multiples(range, 10 * power);
  }

  /** Hours that divide a day evenly, at most some of them. */
  static List<Double> hours(Range range, double most) {
    double rough = (range.high() - range.low()) / Math.max(1, most);
    for (double step : HOURS) {
      if (step >= rough) {
        return multiples(range, step);
      }
    }
    return decimal(range, most);
  }

  private static List<Double> multiples(Range range, double step) {
    List<Double> ticks = new ArrayList<>();
    long first = (long) Math.ceil(range.low() / step - 1e-9);
    long last = (long) Math.floor(range.high() / step + 1e-9);
    for (long i = first; i <= last; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }
}
