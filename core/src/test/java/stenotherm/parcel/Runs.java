package stenotherm.parcel;

import java.util.Arrays;
import java.util.List;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.grid.MeshControl;

/** Runs parcels in air of one temperature under one film. */
final class Runs {
  static final double FILM = 8;

  private Runs() {}

  static HeatEngine engine(Parcel parcel, HeatNetwork network, List<Probe> probes, double start) {
    HeatEngine engine =
        new FullEngine(
            network, probes, parcel.initialState(start), IntegratorSettings.adaptive(0.02));
    double[] films = new double[network.boundaryPorts().size()];
    Arrays.fill(films, FILM);
    engine.useCoefficients(films);
    return engine;
  }

  static void advance(HeatEngine engine, HeatNetwork network, double time, double... inputs) {
    double[] all = new double[network.boundaryPorts().size() + network.sourcePorts().size()];
    Arrays.fill(all, 0, network.boundaryPorts().size(), inputs[0]);
    System.arraycopy(inputs, 1, all, network.boundaryPorts().size(), network.sourcePorts().size());
    engine.advance(time, all, all);
  }

  static double[] read(HeatEngine engine) {
    double[] values = new double[engine.outputs().size()];
    engine.read(values);
    return values;
  }

  /** Mean temperature of a block after a time, in air of a temperature; no warmers. */
  static double mean(Parcel parcel, String block, MeshControl mesh, double[] startAirTime) {
    HeatNetwork network = parcel.network(mesh);
    HeatEngine engine =
        engine(parcel, network, List.of(new Probe.Mean("mean", block)), startAirTime[0]);
    advance(engine, network, startAirTime[2], startAirTime[1]);
    return read(engine)[0];
  }
}
