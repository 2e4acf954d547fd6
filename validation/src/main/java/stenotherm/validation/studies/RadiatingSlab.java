package stenotherm.validation.studies;

import java.util.List;
import stenotherm.base.Face;
import stenotherm.base.Radiation;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * A slab held at 1000 K on one side that radiates on the other. The library has linear films only:
 * the film's coefficient is updated from the surface's temperature until the two agree.
 */
final class RadiatingSlab implements Study {
  private static final double LENGTH = 0.1;
  private static final double CONDUCTIVITY = 55.6;
  private static final double EMISSIVITY = 0.98;
  private static final double HELD = 1000;
  private static final double AROUND = 300;

  private static final String WORK =
      "NAFEMS, The Standard NAFEMS Benchmarks, rev. 3, 1990, test T2 (quoted by other programs)";

  private final Kind kind;

  /** Compared with the printed target (validation) or with the root of the balance. */
  RadiatingSlab(Kind kind) {
    this.kind = kind;
  }

  @Override
  public Heading heading() {
    boolean printed = kind == Kind.BENCHMARK;
    return new Heading(
        printed ? "nafems-t2" : "radiating-slab",
        "Steady slab that radiates, its film iterated",
        printed ? WORK : "conducted heat equals radiated heat: root of one equation",
        kind);
  }

  private static double radiated(double surface) {
    return EMISSIVITY * Radiation.STEFAN_BOLTZMANN * (Math.pow(surface, 4) - Math.pow(AROUND, 4));
  }

  /** Surface temperature [K] and heat flux [W/m2]. */
  private static Ladder.Grid solve(double width) {
    Material steel = Material.of("steel", CONDUCTIVITY, 7850, 460);
    double surface = HELD;
    double before;
    SteadySolution solution;
    ConductionProblem problem;
    do {
      before = surface;
      double coefficient = radiated(surface) / (surface - AROUND);
      problem =
          ConductionProblem.builder(
                  Bodies.slab(new Bodies.Layer(steel, LENGTH)), MeshControl.uniform(width))
              .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(HELD))
              .boundary(Face.X_MAX, Boundary.Convection.of(coefficient, AROUND))
              .build();
      solution = SteadySolver.solve(problem);
      surface = solution.field().at(Bodies.at(LENGTH));
    } while (Math.abs(surface - before) > 1e-9);
    return new Ladder.Grid(
        List.of(surface, Bodies.heatInto(solution, "xMin")),
        problem.network().grid().cellCount(),
        0);
  }

  @Override
  public Findings run(Depth depth) {
    Ladder ladder = Ladder.steady(Ladder.three(0.005), RadiatingSlab::solve);
    if (kind == Kind.BENCHMARK) {
      var printed =
          new Check.Expected(
              927.0, 0.05, "K", WORK, "the target is printed to 0.1 K; half of its last digit");
      return new Findings(
          List.of(new Check("temperature of the surface", ladder.output(0, 0.02), printed)),
          ladder.runs(),
          List.of());
    }
    double exact = Exact.root(AROUND, HELD, t -> radiated(t) - CONDUCTIVITY * (HELD - t) / LENGTH);
    String why =
        "the field is linear, which the scheme holds exactly: what is left is the tolerance of"
            + " the linear solver";
    return new Findings(
        List.of(
            new Check(
                "temperature of the surface",
                ladder.output(0, 0.02),
                new Check.Expected(exact, 1e-5, "K", heading().source(), why)),
            new Check(
                "heat flux",
                ladder.output(1, 40),
                new Check.Expected(radiated(exact), 0.01, "W/m2", heading().source(), why))),
        ladder.runs(),
        List.of());
  }
}
