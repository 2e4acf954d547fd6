package stenotherm.conduction;

import java.util.LinkedHashMap;
import java.util.Map;

/** Draws up the ledger of an integrator's run. */
final class Ledgers {
  /** The rise of the whole body that the scale of a ledger counts [K]. */
  private static final double SCALE_RISE = 1e-3;

  private Ledgers() {}

  static HeatLedger of(HeatOperator operator, TimeIntegrator integrator, BodyState initial) {
    HeatNetwork network = operator.network();
    Map<String, Double> boundaries = new LinkedHashMap<>();
    for (int p = 0; p < network.patches().size(); p++) {
      boundaries.put(network.patches().get(p).port().name(), integrator.boundaryHeat[p]);
    }
    Map<String, Double> sources = new LinkedHashMap<>();
    for (int s = 0; s < network.sources().size(); s++) {
      sources.put(network.sources().get(s).port().name(), integrator.sourceHeat[s]);
    }
    double stored = 0;
    double[] temperature = integrator.temperature();
    double[] start = initial.temperature();
    for (int i = 0; i < temperature.length; i++) {
      stored += operator.capacity[i] * (temperature[i] - start[i]);
    }
    MeltingCells melting = operator.melting;
    for (int m = 0; m < melting.count(); m++) {
      int i = melting.at[m];
      stored -= operator.capacity[i] * (temperature[i] - start[i]);
      stored += integrator.enthalpy()[m] - initial.enthalpy()[m];
    }
    double scale = integrator.heatMoved + network.totalCapacity() * SCALE_RISE;
    return new HeatLedger(boundaries, sources, stored, scale);
  }
}
