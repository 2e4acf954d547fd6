package stenotherm.transit;

import java.util.LinkedHashMap;
import java.util.Map;
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
    Map<String, Double> ofAir = new LinkedHashMap<>();
    for (int block = 0; block < body.varying().size(); block++) {
      String name = body.varying().get(block);
      if (body.isAir(name)) {
        ofAir.put(name, coefficients.conductivities()[block]);
      }
    }
    return ofAir.isEmpty() ? network : network.withConductivities(ofAir);
  }
}
