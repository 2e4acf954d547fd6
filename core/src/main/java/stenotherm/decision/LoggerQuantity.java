package stenotherm.decision;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Range;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.transit.Factor;
import stenotherm.transit.Variation;

/**
 * A quantity of a box that a logger's trace may tell.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param factor which uncertain quantity of a transit it is
 * @param name what it is called, for example "conductivity of the fill"
 * @param unit its unit; empty for a factor
 * @param nominal its usual value [unit], above 0
 * @param stated its stated range, which holds it with 90 % [unit]
 */
public record LoggerQuantity(
    Factor factor, String name, String unit, double nominal, Range stated) {
  /** What can be fitted, in this order. */
  private static final List<Factor> FITTED =
      List.of(
          Factor.FILL_CONDUCTIVITY, Factor.SEAMS, Factor.WARMER_STRENGTH, Factor.WALL_CONDUCTIVITY);

  /** The quantities of a packing, those of its walls only if they are asked for. */
  static List<LoggerQuantity> of(Parcel parcel, boolean walls) {
    List<LoggerQuantity> all = new ArrayList<>();
    for (Factor factor : FITTED) {
      boolean isWanted = walls || factor != Factor.WALL_CONDUCTIVITY;
      if (isWanted && isThere(factor, parcel)) {
        all.add(of(factor, parcel));
      }
    }
    return List.copyOf(all);
  }

  private static boolean isThere(Factor factor, Parcel parcel) {
    return switch (factor) {
      case FILL_CONDUCTIVITY -> parcel.filling() instanceof Filling.Loose && parcel.airVolume() > 0;
      case SEAMS -> parcel.openings().seamGap() > 0;
      case WARMER_STRENGTH -> !parcel.warmers().isEmpty();
      default -> true;
    };
  }

  private static LoggerQuantity of(Factor factor, Parcel parcel) {
    return switch (factor) {
      case FILL_CONDUCTIVITY -> {
        var fill = parcel.filling().fill().orElseThrow();
        yield new LoggerQuantity(
            factor,
            "conductivity of the fill",
            "W/(m K)",
            fill.conductivity(),
            fill.conductivityRange());
      }
      case SEAMS -> {
        double gap = parcel.openings().seamGap();
        yield new LoggerQuantity(
            factor, "gap of the seams", "m", gap, scaled(parcel.openings().gapFactors(), gap));
      }
      case WARMER_STRENGTH ->
          new LoggerQuantity(
              factor,
              "strength of the warmer",
              "",
              parcel.warmers().get(0).warmer().usual(),
              parcel.warmers().get(0).warmer().strength());
      default -> {
        var wall = parcel.walls().insulation().material();
        yield new LoggerQuantity(
            Factor.WALL_CONDUCTIVITY,
            "conductivity of " + wall.name(),
            "W/(m K)",
            wall.conductivity(),
            wall.conductivityRange());
      }
    };
  }

  private static Range scaled(Range factors, double by) {
    return new Range(factors.low() * by, factors.high() * by);
  }

  /**
   * Returns where a value lies in the stated range, as a {@link Variation} has it.
   *
   * @param value the value [unit], above 0
   * @return the position, for example 1 at the high end [-]
   */
  public double position(double value) {
    if (value == nominal) {
      return 0;
    }
    double end = value > nominal ? stated.high() : stated.low();
    return Math.log(value / nominal) / Math.abs(Math.log(end / nominal));
  }

  /**
   * Returns a value on the scale on which temperatures follow it about linearly: its logarithm, of
   * a gap its third power, with which the flow goes.
   *
   * @param value the value [unit]
   * @return the value on the scale, 0 for the usual one [-]
   */
  double scaled(double value) {
    double ratio = value / nominal;
    return factor == Factor.SEAMS ? ratio * ratio * ratio - 1 : Math.log(ratio);
  }

  /** The value at a place on the scale, within what can be computed [unit]. */
  double at(double scaled) {
    double ratio = factor == Factor.SEAMS ? StrictMath.cbrt(1 + scaled) : Math.exp(scaled);
    return Math.min(possible().high(), Math.max(possible().low(), nominal * ratio));
  }

  /**
   * Returns what a fit expects: a central 90 % on either side of the usual value, on the scale. A
   * test is made where the conductivity is in doubt: twice its stated range. Of a gap the upper end
   * counts, for on this scale the range lies to one side.
   */
  double expected() {
    return switch (factor) {
      case SEAMS -> scaled(stated.high());
      case WARMER_STRENGTH -> statedWidth() / 2;
      default -> LoggerFit.WIDENING * statedWidth() / 2;
    };
  }

  /** Width of the stated range on the scale. */
  double statedWidth() {
    return scaled(stated.high()) - scaled(stated.low());
  }

  /** The values that can be computed [unit]. */
  Range possible() {
    double low = nominal * Math.pow(stated.low() / nominal, Variation.MOST);
    double high = nominal * Math.pow(stated.high() / nominal, Variation.MOST);
    return new Range(low, factor == Factor.SEAMS ? Math.min(high, Openings.GAPS.high()) : high);
  }
}
