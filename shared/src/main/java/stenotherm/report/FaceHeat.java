package stenotherm.report;

import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.transit.TransitResult;

/** The heat through a face of a parcel, nominal run. */
final class FaceHeat {
  private FaceHeat() {}

  /** Mean from sealing to the planned opening, positive into the parcel [W]. */
  static double mean(Judged row, Face face) {
    TransitResult nominal = row.assessment().nominal();
    double[] times = nominal.times();
    double[] heat = nominal.heatFlow(face);
    return mean(times, heat, row.assessment().plannedEnd());
  }

  /** Mean of a broken line from its start to an end that may lie between two of its points. */
  static double mean(double[] times, double[] values, double end) {
    return TimeFunction.table(times, values).mean(times[0], end);
  }
}
