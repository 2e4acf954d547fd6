package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Face;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.Probe;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/** A ball so well conducting, or so weakly cooled, that it has one temperature. */
final class LumpedLimit implements Study {
  private static final double RADIUS = 0.05;
  private static final Material BODY = Material.of("body", 0.5, 1000, 1000);
  private static final double AMBIENT = 293.15;
  private static final double STEP = 10;

  @Override
  public Heading heading() {
    return new Heading(
        "lumped-limit",
        "Cooling of a ball as the Biot number goes to zero",
        "exp(-t / tau) with tau = density x specific heat x volume / (h x area); the series of"
            + " the sphere",
        Kind.VERIFICATION);
  }

  @Override
  public Findings run(Depth depth) {
    double[] numbers = depth == Depth.FAST ? new double[] {1e-3} : new double[] {0.1, 0.01, 1e-3};
    List<Check> checks = new ArrayList<>();
    List<Ladder> ladders = new ArrayList<>();
    for (double biot : numbers) {
      // one time constant: Fo = 1 / (3 Bi)
      double time = RADIUS * RADIUS / BODY.diffusivity() / (3 * biot);
      ConductionProblemOf ball = width -> cooled(biot, width);
      Ladder ladder =
          Ladder.over(
              Ladder.three(RADIUS / 20),
              1e-4,
              (width, tolerance) ->
                  Bodies.history(
                      ball.on(width),
                      List.of(new Probe.At("centre", Bodies.at(0))),
                      new double[] {time},
                      tolerance));
      ladders.add(ladder);
      double series = AMBIENT + STEP * Exact.CoolingShape.SPHERE.cooling(biot, 1 / (3 * biot), 0);
      String name = "centre after one time constant, Bi = " + biot;
      checks.add(
          new Check(
              name,
              ladder.output(0, 0.02),
              new Check.Expected(
                  series, 0.005, "K", "series of the sphere", "0.05 % of the step of 10 K")));
      if (biot == 1e-3) {
        checks.add(
            new Check(
                name + ", against the lumped body",
                ladder.output(0, 0.02),
                new Check.Expected(
                    AMBIENT + STEP * Math.exp(-1),
                    0.005,
                    "K",
                    "exp(-1) of the step",
                    "at Bi = 0.001 the series itself is 0.0018 K away from the lumped body")));
      }
    }
    return new Findings(checks, Ladder.together(ladders), List.of());
  }

  /** The problem on a grid. */
  private interface ConductionProblemOf {
    ConductionProblem on(double width);
  }

  private static ConductionProblem cooled(double biot, double width) {
    return ConductionProblem.builder(
            Bodies.ball(new Bodies.Layer(BODY, RADIUS)), MeshControl.uniform(width))
        .boundary(Face.X_MAX, Boundary.Convection.of(biot * BODY.conductivity() / RADIUS, AMBIENT))
        .initial(AMBIENT + STEP)
        .build();
  }
}
