package stenotherm.transit;

import java.util.ArrayList;
import java.util.List;
import stenotherm.air.FoamPanel;
import stenotherm.air.Gas;
import stenotherm.air.MoistAir;
import stenotherm.air.Opening;
import stenotherm.air.StackFlow;
import stenotherm.base.Orientation;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;

/**
 * How gases pass the walls of a parcel and the lids of its vessels during a leg.
 *
 * <p>Immutable.
 */
final class AirPaths {
  /** Differences of temperature at which the flow through openings is found [K]. */
  private static final double SMALL = 4;

  private static final double LARGE = 16;

  /** By room, then by gas [m3/s]: the walls, then each lidded vessel. */
  private final double[][] diffusion;

  /** Exchange flow at the small difference [m3/s], and how it grows with the difference. */
  private final double flow;

  private final double exponent;

  private AirPaths(double[][] diffusion, double flow, double exponent) {
    this.diffusion = diffusion;
    this.flow = flow;
    this.exponent = exponent;
  }

  /**
   * What lets gases through the walls.
   *
   * @param orientation how the parcel lies
   * @param variation where gaps and foam lie in their ranges
   */
  static List<StackFlow.OpeningAtHeight> openings(
      Parcel parcel, Orientation orientation, Variation variation) {
    double seams = parcel.openings().gapFactors().at(variation.of(Factor.SEAMS), 1);
    double foam =
        FoamPanel.EXPANDED_POLYSTYRENE_RANGE.at(
            variation.of(Factor.FOAM_DIFFUSIVITY), FoamPanel.EXPANDED_POLYSTYRENE);
    return parcel.openings(orientation, seams, foam);
  }

  /**
   * Finds the ways of the air.
   *
   * @param openings what lets gases through the walls
   * @param pressure pressure of the air [Pa]
   * @param temperature usual temperature in the openings [K]
   */
  static AirPaths of(
      Parcel parcel,
      List<StackFlow.OpeningAtHeight> openings,
      double pressure,
      double temperature) {
    List<double[]> diffusion = new ArrayList<>();
    diffusion.add(
        conductances(
            openings.stream().map(StackFlow.OpeningAtHeight::opening).toList(),
            temperature,
            pressure));
    for (Container container : parcel.containers()) {
      if (!container.vessel().isOpen()) {
        diffusion.add(conductances(container.vessel().holes(), temperature, pressure));
      }
    }
    double small = exchange(openings, temperature, pressure, SMALL);
    double large = exchange(openings, temperature, pressure, LARGE);
    double exponent = small > 0 ? Math.log(large / small) / Math.log(LARGE / SMALL) : 1;
    return new AirPaths(diffusion.toArray(new double[0][]), small, exponent);
  }

  private static double[] conductances(
      List<? extends Opening> openings, double temperature, double pressure) {
    double[] ofGas = new double[Gas.values().length];
    for (Gas gas : Gas.values()) {
      for (Opening each : openings) {
        ofGas[gas.ordinal()] += each.conductance(gas, temperature, pressure);
      }
    }
    return ofGas;
  }

  private static double exchange(
      List<StackFlow.OpeningAtHeight> openings,
      double temperature,
      double pressure,
      double difference) {
    double inside = MoistAir.density(temperature + difference / 2, pressure, 0);
    double outside = MoistAir.density(temperature - difference / 2, pressure, 0);
    return StackFlow.of(openings, temperature, inside, outside).exchange();
  }

  /** Conductance of diffusion between a room and its neighbour [m3/s]. */
  double diffusion(int room, Gas gas) {
    return diffusion[room][gas.ordinal()];
  }

  /**
   * Flow through the walls that comes and goes in equal amounts [m3/s].
   *
   * @param difference temperature inside less that outside [K], of either sign
   */
  double flow(double difference) {
    return flow * Math.pow(Math.abs(difference) / SMALL, exponent);
  }
}
