package stenotherm.validation.studies;

import java.util.List;
import java.util.Optional;
import stenotherm.conduction.DiscretisationEstimate;

/**
 * A reference value with what was computed for it, in one unit.
 *
 * @param quantity what was computed
 * @param computed what came out
 * @param expected what should have come out
 */
public record Check(String quantity, Computed computed, Expected expected) {
  /**
   * What was computed.
   *
   * @param values the value on each grid, from coarse to fine; a single one if no grid has a part
   *     in it
   * @param widths how wide cells are on each grid, in any unit
   * @param steps estimated error that the time steps leave
   * @param target estimated error at which the value counts as converged
   */
  public record Computed(List<Double> values, List<Double> widths, double steps, double target) {
    /** Copies the lists. */
    public Computed {
      values = List.copyOf(values);
      widths = List.copyOf(widths);
    }

    /** A value that no grid has a part in. */
    static Computed closed(double value) {
      return new Computed(List.of(value), List.of(1.0), 0, 0);
    }

    /**
     * Returns what the three grids tell of the value without their error.
     *
     * @return the estimate; nothing for a closed form
     */
    public Optional<DiscretisationEstimate> estimate() {
      return values.size() < 3
          ? Optional.empty()
          : Optional.of(DiscretisationEstimate.of(array(values), array(widths)));
    }

    private static double[] array(List<Double> numbers) {
      return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Returns the value.
     *
     * @return that of a closed form, or what three grids tell: extrapolated where they order
     */
    public double value() {
      return estimate().map(DiscretisationEstimate::value).orElse(values.get(values.size() - 1));
    }
  }

  /**
   * What should come out.
   *
   * @param value the reference value
   * @param tolerance largest error that passes
   * @param unit the unit of both
   * @param source where the value comes from
   * @param why why the tolerance is what it is
   */
  public record Expected(double value, double tolerance, String unit, String source, String why) {}

  /** Whether the value lies within the tolerance. */
  boolean passes() {
    return Math.abs(computed.value() - expected.value()) <= expected.tolerance();
  }

  /** A check of a closed form. */
  static Check closed(String quantity, double computed, Expected expected) {
    return new Check(quantity, Computed.closed(computed), expected);
  }
}
