package consumer;

import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.util.List;
import stenotherm.base.Face;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Materials;

/** A tray of water with a heater of 8 W on a block of foam, switched on below 28 °C and off above 30 °C, for eight hours. */
public final class Thermostat {
  private Thermostat() {}

  public static void main(String[] args) {
    var foam = new Block.Solid("foam", Box.ofSize(0.2, 0.2, 0.06), Materials.EPS_20);
    var tray =
        new Block.Solid("tray", Box.ofSize(0.2, 0.2, 0.01).plus(new Point(0, 0, 0.05)), Materials.WATER);
    var network =
        HeatNetwork.builder(new Layout(List.of(foam, tray)), MeshControl.uniform(0.01))
            .boundary(Face.Z_MAX, BoundaryKind.CONVECTION)
            .source("tray")
            .build();
    var engine =
        new FullEngine(
            network,
            List.of(new Probe.Mean("tray", "tray")),
            fromCelsius(10),
            IntegratorSettings.standard());
    engine.useCoefficients(new double[] {8});
    double[] trayNow = new double[1];
    double power = 8;
    int switches = 0;
    while (engine.time() < 8 * 3600) {
      engine.read(trayNow);
      double before = power;
      power = trayNow[0] < fromCelsius(28) ? 8 : trayNow[0] > fromCelsius(30) ? 0 : power;
      switches += power == before ? 0 : 1;
      double[] inputs = {fromCelsius(10), power};
      engine.advance(60, inputs, inputs);
    }
    engine.read(trayNow);
    System.out.printf("tray at %.1f °C after %d switches%n", toCelsius(trayNow[0]), switches);
    if (switches < 2) {
      throw new IllegalStateException("the heater was not controlled");
    }
  }
}
