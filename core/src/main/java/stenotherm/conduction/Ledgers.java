package stenotherm.conduction;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.grid.Block;
import stenotherm.grid.RectilinearGrid;

/** Draws up the ledger of an integrator's run. */
final class Ledgers {
  /** The rise of the whole body that the scale of a ledger counts [K]. */
  private static final double SCALE_RISE = 1e-3;

  private Ledgers() {}

  static HeatLedger of(HeatOperator operator, TimeIntegrator integrator, BodyState initial) {
    HeatNetwork network = operator.network();
    Map<String, Double> boundaries = new LinkedHashMap<>();
    for (int p = 0; p < network.patches().list().size(); p++) {
      boundaries.put(network.patches().list().get(p).port().name(), integrator.boundaryHeat[p]);
    }
    Map<String, Double> sources = new LinkedHashMap<>();
    for (int s = 0; s < network.sources().list().size(); s++) {
      sources.put(network.sources().list().get(s).port().name(), integrator.sourceHeat[s]);
    }
    Map<String, Double> storedIn = storedIn(operator, integrator, initial);
    double scale = integrator.heatMoved + network.totalCapacity() * SCALE_RISE;
    return new HeatLedger(boundaries, sources, storedIn, scale);
  }

  private static Map<String, Double> storedIn(
      HeatOperator operator, TimeIntegrator integrator, BodyState initial) {
    double[] temperature = integrator.temperature();
    double[] start = initial.temperature();
    int pad = operator.system.pad;
    RectilinearGrid grid = operator.network().grid();
    List<Block> blocks = grid.layout().blocks();
    double[] sums = new double[blocks.size()];
    for (int cell = 0; cell < operator.system.cells; cell++) {
      int i = cell + pad;
      sums[grid.blockOf(cell)] += operator.capacity[i] * (temperature[i] - start[i]);
    }
    MeltingCells melting = operator.melting;
    for (int m = 0; m < melting.count(); m++) {
      int i = melting.at[m];
      double sensible = operator.capacity[i] * (temperature[i] - start[i]);
      double rise = integrator.enthalpy()[m] - initial.enthalpy()[m];
      sums[grid.blockOf(melting.cell[m])] += rise - sensible;
    }
    Map<String, Double> stored = new LinkedHashMap<>();
    for (int block = 0; block < sums.length; block++) {
      if (blocks.get(block).isSolid()) {
        stored.put(blocks.get(block).name(), sums[block]);
      }
    }
    return stored;
  }
}
