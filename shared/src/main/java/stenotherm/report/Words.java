package stenotherm.report;

import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Times;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Side;
import stenotherm.journey.Journey;
import stenotherm.words.Figures;

/**
 * Numbers of a comparison as people read them: in their units, rounded to what they are worth.
 *
 * @param figures writes numbers in the reader's units
 */
record Words(Figures figures) {
  String temperature(double kelvin) {
    return figures.temperature(kelvin);
  }

  String difference(double kelvin) {
    return figures.difference(kelvin);
  }

  static String hours(double seconds) {
    return Figures.tenth(Times.toHours(seconds));
  }

  static String clock(Journey journey, double time) {
    return Figures.clock(journey.localClock(time));
  }

  static String dayAndClock(Journey journey, double time) {
    return Figures.dayAndClock(journey.localClock(time));
  }

  /** The clock of a moment that was stored: at a change of legs that of the one that ends. */
  static String moment(Journey journey, double time) {
    return Figures.dayAndClock(journey.localClock(time, journey.legUntil(time)));
  }

  /** For example {@code 2.5 (1.1 to 4.0)}. */
  String margin(MarginSpread margin) {
    return figures.degrees(margin.nominal().kelvin())
        + " ("
        + figures.degrees(margin.worst().kelvin())
        + " to "
        + figures.degrees(margin.best().kelvin())
        + ")";
  }

  /** Numerical error, of the grid and of the reduced model together. */
  String error(Judged row) {
    return errorFigure(row) + remark(row);
  }

  /** The same as a sentence has it, with its unit. */
  String errorWithUnit(Judged row) {
    return errorFigure(row) + " " + figures.differenceUnit() + remark(row);
  }

  private String errorFigure(Judged row) {
    double error = Math.max(row.assessment().error(Side.COLD), row.assessment().error(Side.HOT));
    // rounded up: an error estimate must not round to nothing
    return figures.degrees(Math.ceil(10 * error) / 10);
  }

  private static String remark(Judged row) {
    DiscretisationEstimate cold = row.assessment().coldGrid();
    DiscretisationEstimate hot = row.assessment().hotGrid();
    boolean regular = !Double.isNaN(cold.order()) && !Double.isNaN(hot.order());
    return regular ? "" : ", not converged";
  }

  static String delay(DelayMargin delay) {
    String time = hours(delay.time()) + " h";
    if (delay.isAlreadyOutside()) {
      return "none, outside " + time + " before opening";
    }
    return delay.isAtLeast() ? "at least " + time : time;
  }

  /** The boundary of a face or of a part of one, in words; the upright faces together. */
  static String sides(String boundary) {
    for (Face face : Face.values()) {
      if (boundary.equals(face.label()) || boundary.endsWith(" of " + face.label())) {
        return face.axis() == Axis.Z ? face.words() : "four sides";
      }
    }
    return boundary;
  }
}
