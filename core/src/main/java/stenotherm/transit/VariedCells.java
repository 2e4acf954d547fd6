package stenotherm.transit;

import stenotherm.conduction.HeatNetwork;

/**
 * The cells of a packing with walls and fill as a variation has them. Materials follow their own
 * laws; air that convects is given its conductivity.
 */
final class VariedCells {
  private final ParcelBody body;
  private final HeatNetwork network;

  /**
   * Starts from the materials of a course.
   *
   * @param nominal network of the nominal packing, whose grid is kept
   */
  VariedCells(Course course, HeatNetwork nominal) {
    this.body = course.body();
    this.network =
        course.varied().equals(body.parcel())
            ? nominal
            : nominal.withMaterialsOf(course.varied().layout());
  }

  HeatNetwork network() {
    return network;
  }

  /** The network with the conductivity of air that coefficients give. */
  HeatNetwork at(Coefficients coefficients) {
    return body.withAir(network, coefficients.conductivities());
  }
}
