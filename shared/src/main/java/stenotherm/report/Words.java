package stenotherm.report;

import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Times;
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
  /** What one journey in twenty exceeds. */
  static final double ONE_IN_TWENTY = 0.05;

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

  /** Quantiles of a margin, for example {@code 2.5 (1.1 to 4.0)}. */
  String margin(Judged row, Side side) {
    DoubleUnaryOperator quantile =
        side == Side.COLD ? row.odds()::coldMargin : row.odds()::hotMargin;
    return figures.degrees(quantile.applyAsDouble(0.5))
        + " ("
        + figures.degrees(quantile.applyAsDouble(ONE_IN_TWENTY))
        + " to "
        + figures.degrees(quantile.applyAsDouble(1 - ONE_IN_TWENTY))
        + ")";
  }

  /** Error of the computed temperature. */
  String error(Judged row) {
    // rounded up: an error estimate must not round to nothing
    return figures.degrees(Math.ceil(10 * row.assessment().error().total()) / 10);
  }

  /** The same as a sentence has it, with its unit. */
  String errorWithUnit(Judged row) {
    return error(row) + " " + figures.differenceUnit();
  }

  /** A share in a hundred; never none or all, which no number of runs could tell. */
  static String inHundred(double share) {
    if (share < 0.005) {
      return "fewer than 1";
    }
    return share >= 0.995 ? "more than 99" : Long.toString(Math.round(100 * share));
  }

  /** The same for a column. */
  static String percent(double share) {
    if (share < 0.005) {
      return "<1";
    }
    return share >= 0.995 ? ">99" : Long.toString(Math.round(100 * share));
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
