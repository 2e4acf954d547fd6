package stenotherm.validation.cases;

import java.util.List;
import stenotherm.conduction.Probe;

/** How accurate outputs must be before they are compared with anything, in SI units. */
final class Targets {
  /** Means and interior points [K]. */
  static final double SMOOTH = 0.02;

  /** Extremes, and points on edges and vertices, where the field may be singular [K]. */
  static final double SINGULAR = 0.1;

  /** Heat flows, as a part of the largest that the output has at the times of its references. */
  static final double HEAT_FLOW = 1e-3;

  private final CaseFile file;
  private final CaseGeometry geometry;

  Targets(CaseFile file) {
    this.file = file;
    this.geometry = new CaseGeometry(file.body());
  }

  /**
   * The target of a reference value.
   *
   * @param index which one
   * @param values what was computed for all of them
   */
  double of(int index, List<Double> values) {
    Reference reference = file.references().get(index);
    Probe probe = file.probe(reference.probe());
    if (probe.isHeatFlow()) {
      double largest = 0;
      for (int other = 0; other < values.size(); other++) {
        if (file.references().get(other).probe().equals(reference.probe())) {
          largest = Math.max(largest, Math.abs(values.get(other)));
        }
      }
      return HEAT_FLOW * largest;
    }
    if (probe instanceof Probe.Mean) {
      return SMOOTH;
    }
    return probe instanceof Probe.At at && !geometry.isCorner(at.point()) ? SMOOTH : SINGULAR;
  }
}
