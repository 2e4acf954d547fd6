package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static stenotherm.conduction.Bodies.assertRefused;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.grid.MeshControl;

class PortIndexTest {
  /** Named in another order than that of the ports. */
  private static final HeatNetwork NETWORK =
      HeatNetwork.builder(Bodies.wall(), MeshControl.uniform(0.01))
          .source("foam")
          .source("lamp", Set.of("board"))
          .boundary(Face.Y_MAX, BoundaryKind.CONVECTION)
          .boundary(Face.X_MAX, BoundaryKind.TEMPERATURE)
          .boundary(Face.X_MIN, BoundaryKind.CONVECTION)
          .build();

  private static final PortIndex INDEX = PortIndex.of(NETWORK.inputs());

  @Test
  void positionsAreThoseOfThePorts() {
    List<Port> ports = NETWORK.inputs();
    assertEquals(5, ports.size());
    for (int position = 0; position < ports.size(); position++) {
      assertEquals(position, INDEX.input(ports.get(position).name()));
    }
    assertEquals(NETWORK.boundaryIndex("yMax"), INDEX.film("yMax"));
    assertEquals(NETWORK.boundaryPorts().size() + NETWORK.sourceIndex("lamp"), INDEX.input("lamp"));
  }

  @Test
  void arraysAreFilledByName() {
    Map<String, Double> values =
        Map.of("lamp", 5.0, "xMin", 300.0, "foam", -1.0, "yMax", 301.0, "xMax", 302.0);
    double[] inputs = INDEX.inputs(values);
    assertEquals(5, inputs.length);
    values.forEach((name, value) -> assertEquals(value, inputs[INDEX.input(name)], name));
    double[] films = INDEX.films(Map.of("yMax", 7.0, "xMin", 9.0));
    assertArrayEquals(new double[] {9, 0, 7}, films);
  }

  /** What a body does when it is driven by name is what it does when it is driven by position. */
  @Test
  void anEngineTakesTheArrays() {
    List<Probe> probes = List.of(new Probe.Mean("foam", "foam"), new Probe.Mean("board", "board"));
    FullEngine engine = new FullEngine(NETWORK, probes, 290, IntegratorSettings.standard());
    engine.useCoefficients(INDEX.films(Map.of("xMin", 8.0, "yMax", 0.0)));
    double[] inputs =
        INDEX.inputs(Map.of("xMin", 290.0, "xMax", 290.0, "yMax", 290.0, "foam", 0.0, "lamp", 0.0));
    inputs[INDEX.input("lamp")] = 3;
    engine.advance(600, inputs, inputs);
    double[] values = new double[2];
    engine.read(values);
    assertEquals(0, engine.output("foam"));
    assertEquals(1, engine.output("board"));
    assertEquals(engine.field().mean("board"), values[engine.output("board")], 1e-12);
    assertEquals(1800, engine.ledger().sources().get("lamp"), 1e-6);
    assertEquals(0, engine.ledger().sources().get("foam"));
    assertRefused(
        "output: there is no \"bord\". Did you mean \"board\"?", () -> engine.output("bord"));
  }

  @Test
  void whatIsNotThereIsRefused() {
    assertRefused("input: there is no \"lmp\". Did you mean \"lamp\"?", () -> INDEX.input("lmp"));
    assertRefused(
        "input: there is no \"window\". Known: xMin, xMax, yMax, foam, lamp.",
        () -> INDEX.input("window"));
    assertRefused("film: there is no \"window\". Known: xMin, yMax.", () -> INDEX.film("window"));
    assertRefused("film: 'lamp' has none; its input is in W", () -> INDEX.film("lamp"));
    assertRefused(
        "film: 'xMax' has none; its input is in K",
        () -> INDEX.films(Map.of("xMin", 1.0, "xMax", 1.0, "yMax", 1.0)));
  }

  @Test
  void nothingIsLeftOut() {
    assertRefused(
        "film 'xMin': has no value [W/(m2 K)]; given are only yMax",
        () -> INDEX.films(Map.of("yMax", 1.0)));
    Map<String, Double> values =
        new HashMap<>(Map.of("xMin", 300.0, "xMax", 300.0, "yMax", 300.0, "lamp", 1.0));
    assertRefused(
        "input 'foam': has no value [W]; given are only lamp, xMax, xMin, yMax",
        () -> INDEX.inputs(values));
    values.put("foam", Double.NaN);
    assertRefused("input 'foam': NaN W is not a finite number", () -> INDEX.inputs(values));
    assertRefused(
        "film 'yMax': -1 W/(m2 K) must be a finite number, 0 or above",
        () -> INDEX.films(Map.of("xMin", 1.0, "yMax", -1.0)));
  }
}
