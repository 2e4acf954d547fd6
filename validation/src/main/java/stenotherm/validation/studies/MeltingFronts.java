package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.Erf;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Probe;
import stenotherm.grid.MeshControl;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;

/** Melting and freezing fronts against the solutions of Stefan and Neumann. */
final class MeltingFronts implements Study {
  private static final String SIMILARITY =
      "Carslaw and Jaeger 1959, sections 11.2 and 11.3: similarity solution";

  private static final String STEPPING =
      "the front steps from cell to cell: its place swings by a part of a cell";

  private static final double MELTS_AT = 273.15;
  private static final double LATENT = 333_600;
  private static final double HOUR = 3600;

  private static final List<Probe> LIQUID = List.of(new Probe.LiquidFraction("liquid", "0"));

  @Override
  public Heading heading() {
    return new Heading(
        "melting-fronts",
        "Melting and freezing fronts, one and two phases",
        SIMILARITY,
        Kind.VERIFICATION);
  }

  /** Conductivity [W/(m K)] and specific heat [J/(kg K)] of a phase. */
  private record Conduction(double conductivity, double specificHeat) {
    double diffusivity(double density) {
      return conductivity / (density * specificHeat);
    }
  }

  /**
   * A slab under a surface held at one temperature.
   *
   * @param pack what melts
   * @param length thickness [m]
   * @param surface temperature of the surface [K]
   * @param start state at time zero
   */
  private record Front(Material pack, double length, double surface, InitialState start) {
    /** Outputs after a time, on a grid and at a step tolerance. */
    Ladder.Grid grid(List<Probe> probes, double time, double width, double tolerance) {
      return Bodies.history(
          ConductionProblem.builder(
                  Bodies.slab(new Bodies.Layer(pack, length)), MeshControl.uniform(width))
              .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(surface))
              .initial(start)
              .build(),
          probes,
          new double[] {time},
          tolerance);
    }
  }

  private static Material pack(double density, Conduction solid, Conduction liquid) {
    Melting melting =
        new Melting(
            new Range(MELTS_AT, MELTS_AT), LATENT, liquid.conductivity(), liquid.specificHeat());
    return Material.of("pack", solid.conductivity(), density, solid.specificHeat())
        .withBehaviour(new Behaviour.Melts(melting));
  }

  @Override
  public Findings run(Depth depth) {
    List<Check> checks = new ArrayList<>();
    List<Ladder> ladders = new ArrayList<>();
    double[] numbers = depth == Depth.FAST ? new double[] {0.1} : new double[] {0.05, 0.1, 0.3, 1};
    for (double number : numbers) {
      ladders.add(onePhase(number, depth, checks));
    }
    ladders.add(iceGrows(depth, checks));
    ladders.add(twoPhases(depth, checks));
    return new Findings(checks, Ladder.together(ladders), List.of());
  }

  private static double cells(Depth depth) {
    return depth == Depth.FAST ? 80 : 160;
  }

  /** Melting of solid at its melting temperature: the front's coefficient. */
  private static Ladder onePhase(double number, Depth depth, List<Check> checks) {
    double length = 0.05;
    double density = 950;
    Conduction liquid = new Conduction(0.57, 4200);
    double step = number * LATENT / liquid.specificHeat();
    double alpha = liquid.diffusivity(density);
    double exact = Exact.stefan(number);
    double time = Math.pow(length / 2 / (2 * exact), 2) / alpha;
    Material pack = pack(density, new Conduction(2.2, 2100), liquid);
    Front front =
        new Front(
            pack, length, MELTS_AT + step, InitialState.uniform(MELTS_AT).partlyMelted("0", 0));
    Ladder ladder =
        Ladder.over(
            Ladder.three(length / cells(depth)),
            1e-3,
            (width, tolerance) -> {
              Ladder.Grid grid = front.grid(LIQUID, time, width, tolerance);
              double reached = grid.values().get(0) * length;
              return new Ladder.Grid(
                  List.of(reached / (2 * Math.sqrt(alpha * time))), grid.cells(), grid.steps());
            });
    checks.add(
        new Check(
            "coefficient of the front, Stefan number " + number,
            ladder.output(0, 0.003 * exact),
            new Check.Expected(
                exact, 0.003 * exact, "-", SIMILARITY, "0.3 % of the front's way; " + STEPPING)));
    return ladder;
  }

  /** Water at 0 °C under a surface at -10 °C. */
  private static Ladder iceGrows(Depth depth, List<Check> checks) {
    double length = 0.05;
    double density = 917;
    Conduction ice = new Conduction(2.22, 2100);
    Material water = pack(density, ice, new Conduction(0.58, 4200));
    Front front =
        new Front(
            water, length, MELTS_AT - 10, InitialState.uniform(MELTS_AT).partlyMelted("0", 1));
    Ladder ladder =
        Ladder.over(
            Ladder.three(length / cells(depth)),
            2e-4,
            (width, tolerance) -> {
              Ladder.Grid grid = front.grid(LIQUID, HOUR, width, tolerance);
              double frozen = (1 - grid.values().get(0)) * length * 1000;
              return new Ladder.Grid(List.of(frozen), grid.cells(), grid.steps());
            });
    double number = ice.specificHeat() * 10 / LATENT;
    double exact = 1000 * 2 * Exact.stefan(number) * Math.sqrt(ice.diffusivity(density) * HOUR);
    checks.add(
        new Check(
            "ice on water at 0 °C after 1 h at -10 °C",
            ladder.output(0, 0.05),
            new Check.Expected(
                exact,
                0.005 * exact,
                "mm",
                SIMILARITY,
                "a third of a cell of the finest grid; " + STEPPING)));
    return ladder;
  }

  /** Water at +10 °C under a surface at -10 °C: both phases conduct. */
  private static Ladder twoPhases(Depth depth, List<Check> checks) {
    double length = 0.2;
    double density = 1000;
    Conduction ice = new Conduction(2.22, 2100);
    Conduction water = new Conduction(0.58, 4200);
    Material pack = pack(density, ice, water);
    double[] depths = {0.005, 0.040};
    List<Probe> probes =
        List.of(
            new Probe.LiquidFraction("liquid", "0"),
            new Probe.At("ice", Bodies.at(depths[0])),
            new Probe.At("water", Bodies.at(depths[1])));
    Front front = new Front(pack, length, MELTS_AT - 10, InitialState.uniform(MELTS_AT + 10));
    Ladder ladder =
        Ladder.over(
            Ladder.three(length / (4 * cells(depth))),
            1e-3,
            (width, tolerance) -> {
              Ladder.Grid grid = front.grid(probes, HOUR, width, tolerance);
              List<Double> values = grid.values();
              return new Ladder.Grid(
                  List.of((1 - values.get(0)) * length * 1000, values.get(1), values.get(2)),
                  grid.cells(),
                  grid.steps());
            });
    double alphaIce = ice.diffusivity(density);
    double alphaWater = water.diffusivity(density);
    double lambda =
        Exact.neumann(
            new Exact.Phase(ice.conductivity(), alphaIce, 10),
            new Exact.Phase(water.conductivity(), alphaWater, 10),
            density * LATENT);
    double depthOfFront = 2000 * lambda * Math.sqrt(alphaIce * HOUR);
    double inIce =
        MELTS_AT
            - 10
            + 10 * Erf.erf(depths[0] / (2 * Math.sqrt(alphaIce * HOUR))) / Erf.erf(lambda);
    double inWater =
        MELTS_AT
            + 10
            - 10
                * Erf.erfc(depths[1] / (2 * Math.sqrt(alphaWater * HOUR)))
                / Erf.erfc(lambda * Math.sqrt(alphaIce / alphaWater));
    checks.add(
        new Check(
            "ice on water at 10 °C after 1 h at -10 °C",
            ladder.output(0, 0.1),
            new Check.Expected(
                depthOfFront,
                0.01 * depthOfFront,
                "mm",
                SIMILARITY,
                "less than a cell; " + STEPPING)));
    checks.add(
        new Check(
            "5 mm deep in the ice",
            ladder.output(1, 0.1),
            new Check.Expected(
                inIce,
                0.1,
                "K",
                SIMILARITY,
                "a fifth of the difference across a cell; " + STEPPING)));
    checks.add(
        new Check(
            "40 mm deep in the water",
            ladder.output(2, 0.1),
            new Check.Expected(inWater, 0.02, "K", SIMILARITY, "accuracy aimed at for points")));
    return ladder;
  }
}
