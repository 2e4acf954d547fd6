package stenotherm.conduction;

import stenotherm.base.Face;

/**
 * The cell faces under one boundary.
 *
 * @param port the boundary's port
 * @param cell index of the solid cell behind each face
 * @param face which face of that cell
 * @param area area of each face [m2]
 * @param thin thin resistance of unit area at each face [m2 K/W]
 * @param resistance resistance of unit area from the cell's centre to the film or the held surface
 *     [m2 K/W]: half the cell and the thin resistance
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record Patch(
    Port.BoundaryPort port,
    int[] cell,
    Face[] face,
    double[] area,
    double[] thin,
    double[] resistance) {
  /**
   * Conductance from a cell's centre to the port under a surface coefficient [W/K]; 0 for a flux.
   */
  double conductance(int index, double coefficient) {
    return switch (port.kind()) {
      case CONVECTION -> coefficient == 0 ? 0 : area[index] / (resistance[index] + 1 / coefficient);
      case TEMPERATURE -> area[index] / resistance[index];
      case FLUX, ADIABATIC -> 0;
    };
  }
}
