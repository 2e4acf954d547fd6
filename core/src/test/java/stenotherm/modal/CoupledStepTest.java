package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.CoupledStep;
import stenotherm.conduction.CoupledStep.Settings;
import stenotherm.conduction.FullEngine;
import stenotherm.conduction.HeatEngine;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.InputLaw;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

class CoupledStepTest {
  private static final double START = 290;
  private static final double FILM = 10;
  private static final double[] FILMS = {FILM};

  /** A cube of 0.1 m that conducts so well as to be of one temperature, with a film on a face. */
  private static HeatNetwork lump() {
    Box box = new Box(new Point(0, 0, 0), new Point(0.1, 0.1, 0.1));
    Material material = Material.of("any", 1e8, 1000, 4000);
    return HeatNetwork.builder(
            new Layout(List.of(new Block.Solid("lump", box, material))), MeshControl.uniform(0.1))
        .boundary(Face.X_MIN, BoundaryKind.CONVECTION)
        .source("lump")
        .build();
  }

  private static final List<Probe> MEAN = List.of(new Probe.Mean("mean", "lump"));
  private static final double CAPACITY = 4000;
  private static final double CONDUCTANCE = 0.01 * FILM;
  private static final double AMBIENT = 250;
  private static final double POWER = 2;

  /** W/K: as warm as the start it gives 2 W, and less when warmer. */
  private static final double SLOPE = -0.08;

  private static final InputLaw LINEAR =
      (time, outputs, inputs) -> {
        inputs[0] = AMBIENT;
        inputs[1] = POWER + SLOPE * (outputs[0] - START);
      };

  /** C dT/dt = G (T_a - T) + P + s (T - T_0): one exponential. */
  private static double exact(double time) {
    double rate = (CONDUCTANCE - SLOPE) / CAPACITY;
    double steady = (CONDUCTANCE * AMBIENT + POWER - SLOPE * START) / (CONDUCTANCE - SLOPE);
    return steady + (START - steady) * Math.exp(-rate * time);
  }

  private static HeatEngine modal() {
    return ReducedModel.builder(lump(), MEAN)
        .spanning(FILMS, new double[0])
        .build()
        .engine(InitialState.uniform(START));
  }

  private static HeatEngine full() {
    // well below the errors of the coupling
    HeatEngine engine = new FullEngine(lump(), MEAN, START, IntegratorSettings.adaptive(1e-7));
    engine.useCoefficients(FILMS);
    return engine;
  }

  private static final double END = 40_000;

  /** Error at the end of the run, and at half of it. */
  private static double error(HeatEngine engine, int steps, Settings settings) {
    CoupledStep coupled = new CoupledStep(engine, LINEAR, settings);
    double[] values = new double[1];
    double worst = 0;
    for (int step = 1; step <= steps; step++) {
      coupled.advance(END / steps);
      if (step == steps / 2 || step == steps) {
        coupled.outputs(values);
        worst = Math.max(worst, Math.abs(values[0] - exact(engine.time())));
      }
    }
    assertTrue(engine.ledger().closes());
    return worst;
  }

  @Test
  void isOfSecondOrderWhetherSettledOrNot() {
    Settings tight = new Settings(1e-9, 1e-12, 100);
    Settings twoPasses = new Settings(1e-9, 1e-12, 2);
    for (Settings settings : List.of(tight, twoPasses)) {
      double coarse = error(modal(), 16, settings);
      double middle = error(modal(), 32, settings);
      double fine = error(modal(), 64, settings);
      assertTrue(fine > 1e-6 && coarse < 0.1, () -> coarse + " to " + fine + " K");
      assertEquals(4, coarse / middle, 0.6);
      assertEquals(4, middle / fine, 0.3);
    }
    assertEquals(4, error(full(), 16, tight) / error(full(), 32, tight), 0.6);
  }

  @Test
  void saysWhenItDidNotSettle() {
    CoupledStep hasty = new CoupledStep(modal(), LINEAR, new Settings(1e-9, 1e-12, 2));
    assertFalse(hasty.advance(2500));
    assertEquals(1, hasty.unsettled());
    assertEquals(2, hasty.passes());
    CoupledStep patient = new CoupledStep(modal(), LINEAR, Settings.standard());
    assertTrue(patient.advance(2500));
    assertEquals(0, patient.unsettled());
    double[] outputs = new double[1];
    double[] inputs = new double[2];
    patient.outputs(outputs);
    patient.inputs(inputs);
    assertEquals(POWER + SLOPE * (outputs[0] - START), inputs[1], 1e-4 * POWER);
    assertThrows(InvalidInputException.class, () -> new Settings(1e-3, 1e-4, 1));
    assertThrows(InvalidInputException.class, () -> new Settings(1e-3, 1, 5));
  }

  /** Power that is switched by the clock: each step starts after the jump and ends before. */
  @Test
  void followsJumpsOfTheLaw() {
    InputLaw switched =
        new InputLaw() {
          @Override
          public void at(double time, double[] outputs, double[] inputs) {
            inputs[0] = START;
            inputs[1] = time < 1000 ? 5 : 0;
          }

          @Override
          public void before(double time, double[] outputs, double[] inputs) {
            inputs[0] = START;
            inputs[1] = time <= 1000 ? 5 : 0;
          }
        };
    HeatEngine engine = modal();
    CoupledStep coupled = new CoupledStep(engine, switched, Settings.standard());
    for (int step = 0; step < 4; step++) {
      assertTrue(coupled.advance(500));
    }
    assertEquals(5000, engine.ledger().sources().get("lump"), 1e-9);
    assertEquals(4, coupled.passes());
  }

  /** Heat that runs out: what is left is taken over once a step, however often it is tried. */
  private static final class RunningOut implements InputLaw {
    private double left = 20_000;
    private double last;
    private double since;

    private double power(double[] outputs) {
      return left / 5000 * Math.exp((outputs[0] - START) / 40);
    }

    @Override
    public void at(double time, double[] outputs, double[] inputs) {
      inputs[0] = AMBIENT;
      inputs[1] = power(outputs);
    }

    @Override
    public void settled(double time, double[] outputs) {
      double now = power(outputs);
      left -= (time - since) * (last + now) / 2;
      last = now;
      since = time;
    }
  }

  @Test
  void memoryOfALawIsTakenOverOnceAStep() {
    HeatEngine engine = modal();
    RunningOut law = new RunningOut();
    law.last = law.power(new double[] {START});
    CoupledStep coupled = new CoupledStep(engine, law, Settings.standard());
    for (int step = 0; step < 200; step++) {
      assertTrue(coupled.advance(100));
    }
    assertTrue(coupled.passes() > 200);
    double given = engine.ledger().sources().get("lump");
    // a step's power is that of what was left at its start, so the heat given is of first order
    assertEquals(20_000 - law.left, given, 0.02 * given);
    assertTrue(law.left > 0 && law.left < 2000);
  }

  /** A warmer that gives less when warm and an animal that burns more when warm. */
  private static void ofParcel(double time, double[] outputs, double[] inputs) {
    for (int face = 0; face < 6; face++) {
      inputs[face] = 280 + 8 * Math.sin(time / 7000);
    }
    inputs[6] = 2 * Math.exp(-(outputs[1] - 310) / 30);
    inputs[7] = 0.05 * Math.exp((outputs[0] - 298) / 12);
  }

  private static double[] run(HeatEngine engine, double step) {
    CoupledStep coupled = new CoupledStep(engine, CoupledStepTest::ofParcel, Settings.standard());
    while (engine.time() < 21_600) {
      assertTrue(coupled.advance(step));
    }
    double[] values = new double[RandomBody.PROBES.size()];
    coupled.outputs(values);
    assertTrue(engine.ledger().closes());
    return values;
  }

  @Test
  void agreesWithSmallStepsOfTheFullEngine() {
    RandomBody body = new RandomBody(5, 4);
    double[] films = body.films();
    HeatEngine full =
        new FullEngine(body.network, RandomBody.PROBES, START, IntegratorSettings.adaptive(1e-3));
    full.useCoefficients(films);
    double[] expected = run(full, 150);
    double[] values = run(body.model(films).engine(InitialState.uniform(START)), 900);
    for (int output = 0; output < 5; output++) {
      // the power of the first quarter of an hour is far from linear
      assertEquals(expected[output], values[output], 0.01, RandomBody.PROBES.get(output).name());
    }
  }

  @Test
  void makesNoObjects() {
    RandomBody body = new RandomBody(4, 4);
    ModalEngine engine = body.model(body.films()).engine(InitialState.uniform(START));
    CoupledStep coupled = new CoupledStep(engine, CoupledStepTest::ofParcel, Settings.standard());
    var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = 0;
    for (int step = 0; step < 200; step++) {
      if (step == 100) {
        before = threads.getCurrentThreadAllocatedBytes();
      }
      coupled.advance(900);
    }
    // what the measurement itself takes
    assertTrue(threads.getCurrentThreadAllocatedBytes() - before < 1000);
  }
}
