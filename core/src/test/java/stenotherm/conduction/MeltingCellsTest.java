package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.conduction.Bodies.assertRefused;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.grid.Block;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;

class MeltingCellsTest {
  private static Material melting(double width) {
    return Material.of("wax", 0.2, 900, 2000)
        .withBehaviour(
            new Behaviour.Melts(new Melting(new Range(300, 300 + width), 2e5, 0.15, 2200)));
  }

  /** 30 mm of foam and 10 mm of wax. */
  private static ConductionProblem.Builder problem(Material wax) {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("foam", Bodies.slice(0, 0.04), Bodies.FOAM),
                new Block.Solid("wax", Bodies.slice(0.03, 0.04), wax)));
    return ConductionProblem.builder(layout, MeshControl.uniform(0.005))
        .boundary(Face.X_MIN, Boundary.Convection.of(8, 310));
  }

  private static MeltingCells cells(double width) {
    return new MeltingCells(problem(melting(width)).build().network(), 0);
  }

  @Test
  void enthalpyAndTemperatureFollowFromEachOther() {
    for (double width : new double[] {0, 4}) {
      HeatNetwork network = problem(melting(width)).build().network();
      MeltingCells cells = new MeltingCells(network, 0);
      double mass = network.cells().capacity(cells.cell[0]) / 2000;
      double solid = 2000 * mass;
      double latent = 2e5 * mass;
      for (double temperature = 290; temperature < 310; temperature += 0.7) {
        double enthalpy = cells.enthalpy(0, temperature);
        assertEquals(temperature, cells.temperature(0, enthalpy), 1e-9);
      }
      assertEquals(solid * 290, cells.enthalpy(0, 290), 1e-6);
      // outside the range the narrow spread of a melting point changes nothing
      assertEquals(solid * 300 + latent + 1.1 * solid * 5, cells.enthalpy(0, 305 + width), 1e-6);
      assertEquals(0, cells.liquidFraction(0, cells.enthalpy(0, 299)));
      assertEquals(1, cells.liquidFraction(0, cells.enthalpy(0, 305)));
      assertEquals(0.25, cells.liquidFraction(0, cells.enthalpyAtFraction(0, 0.25)), 1e-12);
    }
    MeltingCells wide = cells(4);
    assertEquals(301, wide.temperature(0, wide.enthalpyAtFraction(0, 0.25)), 1e-9);
  }

  @Test
  void startIsChecked() {
    assertRefused(
        "initial temperature of wax: 300.0 K is where it melts; say instead how much of it is"
            + " liquid",
        () -> problem(melting(0)).initial(300).build());
    assertRefused(
        "initial liquid fraction of foam: is given, but its material does not melt",
        () ->
            problem(melting(0))
                .initial(InitialState.uniform(290).partlyMelted("foam", 0.5))
                .build());
    assertRefused(
        "initial state of wax: gives both a temperature and a liquid fraction; the one follows from"
            + " the other",
        () ->
            problem(melting(0))
                .initial(InitialState.uniform(290).with("wax", 280).partlyMelted("wax", 0.5))
                .build());
    assertRefused(
        "initial temperature: is given for [wax] only; the other blocks need one as well",
        () -> problem(melting(0)).initial("wax", 290).build());
    assertRefused(
        "initial state: is given as a whole and by temperatures; give one of them",
        () -> problem(melting(0)).initial(290).initial(InitialState.uniform(290)).build());
    HeatNetwork network = problem(melting(0)).build().network();
    assertRefused(
        "block 'foam': does not melt; it has no liquid fraction",
        () ->
            new FullEngine(
                network,
                List.of(new Probe.LiquidFraction("liquid", "foam")),
                290,
                IntegratorSettings.standard()));
  }

  @Test
  void engineStartsFromAState() {
    FullEngine engine =
        new FullEngine(
            problem(melting(4)).build().network(),
            List.of(
                new Probe.LiquidFraction("liquid", "wax"),
                new Probe.Mean("wax", "wax"),
                new Probe.Mean("foam", "foam")),
            InitialState.uniform(290).partlyMelted("wax", 0.25),
            IntegratorSettings.standard());
    double[] values = new double[3];
    engine.read(values);
    assertEquals(0.25, values[0], 1e-12);
    assertEquals(301, values[1], 1e-9);
    assertEquals(290, values[2], 1e-9);
  }

  @Test
  void conductivitiesAreReplaced() {
    HeatNetwork network = problem(Bodies.BOARD).build().network();
    HeatNetwork changed = network.withConductivities(Map.of("foam", 0.05));
    HeatNetwork back = changed.withConductivities(Map.of("foam", 0.036));
    double[] inputs = {310};
    double[] means = new double[3];
    double[] value = new double[1];
    for (int run = 0; run < means.length; run++) {
      FullEngine engine =
          new FullEngine(
              network, List.of(new Probe.Mean("wax", "wax")), 290, IntegratorSettings.standard());
      engine.useCoefficients(new double[] {8});
      engine.advance(3600, inputs, inputs);
      engine.use(List.of(network, back, changed).get(run));
      engine.advance(3600, inputs, inputs);
      assertTrue(engine.ledger().closes());
      engine.read(value);
      means[run] = value[0];
    }
    assertEquals(means[0], means[1]);
    assertTrue(means[2] > means[0] + 0.1);
    assertRefused(
        "conductivity of block 'foam': -1 W/(m K) must be a finite number above 0",
        () -> network.withConductivities(Map.of("foam", -1.0)));
    assertRefused(
        "conductivity of block 'wax': follows from how much of it is liquid; change its material"
            + " instead",
        () -> problem(melting(0)).build().network().withConductivities(Map.of("wax", 1.0)));
  }

  @Test
  void anotherBodyIsRefused() {
    HeatNetwork network = problem(melting(0)).build().network();
    FullEngine engine = new FullEngine(network, List.of(), 290, IntegratorSettings.standard());
    assertRefused(
        "other network: stores heat differently in block 'wax'; only conductivities and thin"
            + " resistances may change during a run",
        () -> engine.use(problem(melting(1)).build().network()));
    assertRefused(
        "other network: has the ports [xMin [K], xMax [K]] instead of [xMin [K]]",
        () ->
            engine.use(
                problem(melting(0))
                    .boundary(Face.X_MAX, Boundary.Convection.of(1, 300))
                    .build()
                    .network()));
  }
}
