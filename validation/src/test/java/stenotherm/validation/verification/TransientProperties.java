package stenotherm.validation.verification;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import stenotherm.base.Range;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.IntegratorSettings.Conductivities;
import stenotherm.conduction.IntegratorSettings.Scheme;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;
import stenotherm.validation.verification.Body.Drive;
import stenotherm.validation.verification.Body.Part;
import stenotherm.validation.verification.Body.Scale;

/** What transients of all bodies have in common. */
class TransientProperties {
  /** Solves each stage to 1e-10 K. */
  private static final double TIGHT = 1e-8;

  private static IntegratorSettings fixed(double step) {
    return new IntegratorSettings(Scheme.TR_BDF2, TIGHT, step, true, Conductivities.FROZEN);
  }

  private static TransientSolution run(
      ConductionProblem problem, IntegratorSettings settings, double... times) {
    TransientSolution solution = TransientSolver.solve(problem, List.of(), times, settings);
    assertTrue(solution.outcome().isCompleted(), () -> solution.outcome().toString());
    return solution;
  }

  private static double[] cells(TransientSolution solution, ConductionProblem problem) {
    return Body.cells(solution.field(), problem.network().grid());
  }

  private static double[] endOf(Body body, IntegratorSettings settings, double time) {
    ConductionProblem problem = body.problem();
    return cells(run(problem, settings, time), problem);
  }

  private static double largest(double[] field) {
    double largest = 1;
    for (double temperature : field) {
      largest = Double.isNaN(temperature) ? largest : Math.max(largest, Math.abs(temperature));
    }
    return largest;
  }

  /** With a block that melts, and whatever else conducts, films, jumps and heats. */
  @Property(seed = "3201", tries = 30)
  void ledgerClosesWhereABlockMelts(
      @ForAll(supplier = RandomBodies.class) Body random,
      @ForAll @IntRange(max = 4) int which,
      @ForAll @DoubleRange(min = 255, max = 325) double meltsAt,
      @ForAll @DoubleRange(min = 0, max = 10) double width) {
    int index = which % random.parts().size();
    Part part = random.parts().get(index);
    Melting melting = new Melting(new Range(meltsAt, meltsAt + width), 2e5, 0.3, 2000);
    Material pack = Material.of("pack", 0.5, 900, 1500).withBehaviour(new Behaviour.Melts(melting));
    Body body =
        random.withPart(
            index,
            p ->
                new Part(
                    p.name(),
                    p.extent(),
                    pack,
                    p.resistance(),
                    p.power(),
                    // not within the melting range, where the liquid fraction would be open
                    part.start() > meltsAt + width / 2 ? meltsAt + width + 1 : meltsAt - 1));
    HeatLedger ledger =
        run(body.problem(), IntegratorSettings.adaptive(0.05), body.jump(), 3 * body.jump())
            .ledger();
    assertTrue(ledger.closes(), () -> ledger.residual() + " of " + ledger.scale());
  }

  /**
   * Second-order steps may overshoot what surrounds a body and what it starts from; by a part of
   * the step tolerance.
   */
  @Property(seed = "3202", tries = 40)
  void overshootIsBoundByTheStepTolerance(@ForAll(supplier = RandomBodies.class) Body random) {
    Body body = random.unheated();
    ConductionProblem problem = body.problem();
    for (double tolerance : new double[] {0.1, 0.005}) {
      for (double part : new double[] {0.01, 0.3, 1.01, 2.5}) {
        double[] field =
            cells(
                run(problem, IntegratorSettings.adaptive(tolerance), part * body.jump()), problem);
        for (double temperature : field) {
          if (!Double.isNaN(temperature)) {
            assertTrue(
                temperature >= RandomBodies.COLDEST - tolerance
                    && temperature <= RandomBodies.WARMEST + tolerance,
                () -> temperature + " K at a step tolerance of " + tolerance + " K");
          }
        }
      }
    }
  }

  /** With equal steps the state is linear in everything that drives it. */
  @Property(seed = "3203", tries = 40)
  void causesAddUp(@ForAll(supplier = RandomBodies.class) Body body) {
    Body idle = body.inSurroundingsAt(290);
    IntegratorSettings settings = fixed(body.jump() / 4);
    double end = 3 * body.jump();
    double[] none = endOf(idle.withParts(p -> p.withPower(Drive.constant(0))), settings, end);
    double[] heated = endOf(idle, settings, end);
    double[] surrounded = endOf(body.withParts(p -> p.withPower(Drive.constant(0))), settings, end);
    double[] both = endOf(body, settings, end);
    double tolerance = 1e-6 + 1e-9 * (largest(heated) + largest(surrounded));
    for (int cell = 0; cell < both.length; cell++) {
      assertEquals(heated[cell] + surrounded[cell] - none[cell], both[cell], tolerance);
    }
  }

  @Property(seed = "3204", tries = 40)
  void similarBodiesHaveTheSameTemperaturesAtTheSameFourierNumber(
      @ForAll(supplier = RandomBodies.class) Body body,
      @ForAll @DoubleRange(min = 0.1, max = 10) double length,
      @ForAll @DoubleRange(min = 0.1, max = 10) double conductivity,
      @ForAll @DoubleRange(min = 0.1, max = 10) double capacity) {
    Body similar = body.scaled(new Scale(length, conductivity, capacity));
    double[] one = endOf(body, fixed(body.jump() / 4), 3 * body.jump());
    double[] other = endOf(similar, fixed(similar.jump() / 4), 3 * similar.jump());
    assertArrayEquals(one, other, 1e-6 + 1e-9 * largest(one));
  }

  /** What begins later after a time of rest happens later, and otherwise the same. */
  @Property(seed = "3205", tries = 40)
  void laterCausesHaveTheSameEffectsLater(
      @ForAll(supplier = RandomBodies.class) Body random,
      @ForAll @DoubleRange(min = 100, max = 1e5) double later) {
    double rest = 290;
    Body body = random.withParts(part -> part.withStart(rest));
    ConductionProblem now = body.problem(body.mesh(Body.PARTS), 0, rest);
    ConductionProblem then = body.problem(body.mesh(Body.PARTS), later, rest);
    double end = 3 * body.jump();
    double[] field = cells(run(now, fixed(body.jump() / 4), end), now);
    double[] shifted = cells(run(then, fixed(body.jump() / 4), later + end), then);
    assertArrayEquals(field, shifted, 1e-6 + 1e-9 * largest(field));
  }

  private static long[] bits(Body body) {
    List<Probe> probes = new ArrayList<>();
    for (int part : body.visible()) {
      String name = body.parts().get(part).name();
      probes.add(new Probe.Mean("mean of " + name, name));
      probes.add(new Probe.Maximum("maximum of " + name, name));
    }
    ConductionProblem problem = body.problem();
    double end = 3 * body.jump();
    TransientSolution solution =
        TransientSolver.solve(
            problem, probes, new double[] {end / 5, end}, IntegratorSettings.adaptive(0.05));
    List<Double> all = new ArrayList<>();
    for (Probe probe : probes) {
      for (double value : solution.history(probe.name())) {
        all.add(value);
      }
    }
    for (double value : cells(solution, problem)) {
      all.add(value);
    }
    all.add(solution.ledger().residual());
    return all.stream().mapToLong(Double::doubleToLongBits).toArray();
  }

  /** The same bits, alone or beside other runs in other threads, of the same problem and others. */
  @Property(seed = "3206", tries = 6)
  void threadsChangeNoBit(
      @ForAll(supplier = RandomBodies.class) Body one,
      @ForAll(supplier = RandomBodies.class) Body other)
      throws Exception {
    long[] first = bits(one);
    long[] second = bits(other);
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      List<Callable<long[]>> runs =
          List.of(() -> bits(one), () -> bits(other), () -> bits(other), () -> bits(other));
      List<Future<long[]>> results = threads.invokeAll(runs);
      assertArrayEquals(first, results.get(0).get());
      for (Future<long[]> result : results.subList(1, results.size())) {
        assertArrayEquals(second, result.get());
      }
    } finally {
      threads.shutdownNow();
    }
  }
}
