package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.base.Face;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.material.Material;

/**
 * Slab, cylinder and sphere that cool beyond a film, in their own coordinates, and the cylinder
 * stepped on the rectilinear grid.
 */
final class CoolingBodies implements Study {
  private static final double RADIUS = 0.05;
  private static final Material BODY = Material.of("body", 0.5, 1000, 1000);
  private static final double AMBIENT = 293.15;
  private static final double STEP = 10;
  private static final double CONVERGED = 0.02 / STEP;
  private static final String SERIES = "Carslaw and Jaeger 1959, sections 3.11, 7.7, 9.4: series";
  private static final String STEP_OF_TEN =
      "the accuracy aimed at for points, 0.02 K, of a step of 10 K";

  /** Fourier numbers from which a slab, a cylinder and a sphere follow their first term. */
  private static final double[] LATE = {1, 0.6, 0.5};

  /** Late temperatures are small parts of the step: their ratio wants fine steps [K]. */
  private static final double FINE_STEPS = 5e-7;

  private final Part part;

  CoolingBodies(Part part) {
    this.part = part;
  }

  /** What is compared. */
  enum Part {
    /** Temperatures against the full series. */
    SERIES(
        "cooling-bodies",
        "Slab, cylinder and sphere in their own coordinates against the full series"),
    /** Root and coefficient of the first term, found from late temperatures. */
    FIRST_TERM("first-term", "First root and coefficient, found from two late temperatures"),
    /** The cylinder stepped on the rectilinear grid. */
    STEPPED("stepped-cylinder", "Round cylinder on the rectilinear grid against the series");

    private final String id;
    private final String title;

    Part(String id, String title) {
      this.id = id;
      this.title = title;
    }
  }

  @Override
  public Heading heading() {
    return new Heading(part.id, part.title, SERIES, Kind.VERIFICATION);
  }

  @Override
  public Findings run(Depth depth) {
    return switch (part) {
      case SERIES -> series(depth);
      case FIRST_TERM -> firstTerm(depth);
      case STEPPED -> stepped(depth);
    };
  }

  private static double film(double biot) {
    return biot * BODY.conductivity() / RADIUS;
  }

  private static double time(double fourier) {
    return fourier * RADIUS * RADIUS / BODY.diffusivity();
  }

  private static ConductionProblem problem(Exact.CoolingShape body, double biot, double width) {
    Bodies.Layer all = new Bodies.Layer(BODY, RADIUS);
    Layout layout =
        switch (body) {
          case SLAB -> Bodies.slab(all);
          case CYLINDER -> Bodies.tube(0, all);
          case SPHERE -> Bodies.ball(all);
        };
    return ConductionProblem.builder(layout, MeshControl.uniform(width))
        .boundary(Face.X_MAX, Boundary.Convection.of(film(biot), AMBIENT))
        .initial(AMBIENT + STEP)
        .build();
  }

  /** Centre and surface at each Fourier number, as parts of the step. */
  private static Ladder cool(Exact.CoolingShape body, double biot, double... fourier) {
    List<Probe> probes =
        List.of(new Probe.At("centre", Bodies.at(0)), new Probe.At("surface", Bodies.at(RADIUS)));
    return Ladder.over(
        Ladder.three(RADIUS / 40),
        1e-4,
        (width, tolerance) ->
            parts(Bodies.history(problem(body, biot, width), probes, times(fourier), tolerance)));
  }

  private static double[] times(double... fourier) {
    return java.util.Arrays.stream(fourier).map(CoolingBodies::time).toArray();
  }

  /** Temperatures as parts of the step. */
  private static Ladder.Grid parts(Ladder.Grid grid) {
    List<Double> parts = grid.values().stream().map(value -> (value - AMBIENT) / STEP).toList();
    return new Ladder.Grid(parts, grid.cells(), grid.steps());
  }

  private static String name(Exact.CoolingShape body, double biot) {
    return body.name().toLowerCase(Locale.ROOT) + ", Bi = " + biot;
  }

  private static Findings series(Depth depth) {
    double[] biots = depth == Depth.FAST ? new double[] {1} : new double[] {0.1, 1, 10};
    double[] fourier = {0.1, 0.5, 1};
    List<Check> checks = new ArrayList<>();
    List<Ladder> ladders = new ArrayList<>();
    for (Exact.CoolingShape body : Exact.CoolingShape.values()) {
      for (double biot : biots) {
        Ladder ladder = cool(body, biot, fourier);
        ladders.add(ladder);
        for (int row = 0; row < fourier.length; row++) {
          for (int where = 0; where < 2; where++) {
            checks.add(
                new Check(
                    name(body, biot)
                        + ", Fo = "
                        + fourier[row]
                        + (where == 0 ? ", centre" : ", surface"),
                    ladder.output(2 * row + where, CONVERGED),
                    new Check.Expected(
                        body.cooling(biot, fourier[row], where),
                        CONVERGED,
                        "of the step",
                        SERIES,
                        STEP_OF_TEN)));
          }
        }
      }
    }
    return new Findings(checks, Ladder.together(ladders), List.of());
  }

  /** Root and coefficient from the centre at two late times, where only the first term is left. */
  private static Ladder firstTerms(Exact.CoolingShape body, double biot) {
    // where the second term is 1e-4 of the first
    double early = LATE[body.ordinal()];
    double late = early + 0.5;
    double[] times = times(early, late);
    return Ladder.over(
        Ladder.three(RADIUS / 40),
        FINE_STEPS,
        (width, tolerance) -> {
          Ladder.Grid grid =
              parts(
                  Bodies.history(
                      problem(body, biot, width),
                      List.of(new Probe.At("centre", Bodies.at(0))),
                      times,
                      tolerance));
          double first = grid.values().get(0);
          double square = Math.log(first / grid.values().get(1)) / (late - early);
          return new Ladder.Grid(
              List.of(Math.sqrt(square), first * Math.exp(square * early)),
              grid.cells(),
              grid.steps());
        });
  }

  private static Findings firstTerm(Depth depth) {
    double[] biots = depth == Depth.FAST ? new double[] {1} : new double[] {0.1, 0.5, 1, 2, 5};
    List<Check> checks = new ArrayList<>();
    List<Ladder> ladders = new ArrayList<>();
    for (Exact.CoolingShape body : Exact.CoolingShape.values()) {
      for (double biot : biots) {
        Ladder ladder = firstTerms(body, biot);
        ladders.add(ladder);
        double root = body.root(biot, 0);
        firstTerm(checks, name(body, biot), ladder, root, body.weight(root));
      }
    }
    return new Findings(checks, Ladder.together(ladders), List.of());
  }

  private static void firstTerm(
      List<Check> checks, String name, Ladder ladder, double root, double coefficient) {
    String why = "0.1 % of a rate; what the second term adds is less than 1e-4";
    checks.add(
        new Check(
            name + ", first root",
            ladder.output(0, 1e-3 * root),
            new Check.Expected(root, 1e-3 * root, "-", SERIES, why)));
    checks.add(
        new Check(
            name + ", first coefficient",
            ladder.output(1, 1e-3 * coefficient),
            new Check.Expected(coefficient, 1e-3 * coefficient, "-", SERIES, why)));
  }

  private static Findings stepped(Depth depth) {
    double[] biots = depth == Depth.FAST ? new double[] {1} : new double[] {0.1, 1, 10};
    double[] fourier = {0.2, 0.5};
    double finest = RADIUS / (depth == Depth.FAST ? 16 : 32);
    // not centred in its room, so that nothing rests on symmetry
    Block room =
        new Block.Environment(
            "room", new Box(new Point(-0.09, -0.085, 0), new Point(0.1, 0.11, 1)));
    Box box = new Box(new Point(-RADIUS, -RADIUS, 0), new Point(RADIUS, RADIUS, 1));
    Layout layout = new Layout(List.of(room, new Block.Solid("rod", box, BODY, Shape.CYLINDER_Z)));
    List<Probe> probes =
        List.of(
            new Probe.At("centre", new Point(0, 0, 0.5)), new Probe.SurfaceMean("surface", "room"));
    List<Check> checks = new ArrayList<>();
    List<Ladder> ladders = new ArrayList<>();
    for (double biot : biots) {
      Ladder ladder =
          Ladder.over(
              Ladder.three(finest),
              1e-3,
              (width, tolerance) ->
                  parts(
                      Bodies.history(
                          ConductionProblem.builder(layout, MeshControl.uniform(width))
                              .boundary("room", Boundary.Convection.of(film(biot), AMBIENT))
                              .initial(AMBIENT + STEP)
                              .build(),
                          probes,
                          times(fourier),
                          tolerance)));
      ladders.add(ladder);
      for (int row = 0; row < fourier.length; row++) {
        for (int where = 0; where < 2; where++) {
          checks.add(
              new Check(
                  "Bi = "
                      + biot
                      + ", Fo = "
                      + fourier[row]
                      + (where == 0 ? ", axis" : ", mean of the surface"),
                  ladder.output(2 * row + where, CONVERGED),
                  new Check.Expected(
                      Exact.CoolingShape.CYLINDER.cooling(biot, fourier[row], where),
                      CONVERGED,
                      "of the step",
                      SERIES,
                      STEP_OF_TEN)));
        }
      }
    }
    return new Findings(checks, Ladder.together(ladders), List.of());
  }
}
