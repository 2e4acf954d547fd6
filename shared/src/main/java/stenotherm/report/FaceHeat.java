package stenotherm.report;

import stenotherm.base.Face;
import stenotherm.transit.TransitResult;

/** The heat through a face of a parcel, nominal run. */
final class FaceHeat {
  private FaceHeat() {}

  /** Mean from sealing to the planned opening, positive into the parcel [W]. */
  static double mean(Judged row, Face face) {
    TransitResult nominal = row.assessment().nominal();
    double[] times = nominal.times();
    double[] heat = nominal.heatFlow(face);
    double end = row.assessment().plannedEnd() + 1e-6;
    double sum = 0;
    int last = 0;
    for (int i = 1; i < times.length && times[i] <= end; i++) {
      sum += (heat[i - 1] + heat[i]) / 2 * (times[i] - times[i - 1]);
      last = i;
    }
    return sum / times[last];
  }

  /** At the tightest moment, positive into the parcel [W]. */
  static double atTightest(Judged row, Face face) {
    TransitResult nominal = row.assessment().nominal();
    double[] times = nominal.times();
    int nearest = 0;
    for (int i = 1; i < times.length; i++) {
      if (Math.abs(times[i] - row.tightest().time())
          < Math.abs(times[nearest] - row.tightest().time())) {
        nearest = i;
      }
    }
    return nominal.heatFlow(face)[nearest];
  }
}
