package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import stenotherm.base.Face;
import stenotherm.base.Radiation;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.validation.studies.Check.Expected;

/** A worked example of a textbook, solved by the library as the book states it. */
final class Textbook implements Study {
  private static final String ASHRAE = "ASHRAE Handbook - Fundamentals 2021, ch. 4, ";
  private static final String INCROPERA = "Incropera and DeWitt, ";

  private final Heading heading;
  private final Supplier<Findings> solution;

  private Textbook(String id, String title, String source, Kind kind, Supplier<Findings> solution) {
    this.heading = new Heading(id, title, source, kind);
    this.solution = solution;
  }

  private static Textbook printed(
      String id, String title, String source, Supplier<Findings> solution) {
    return new Textbook(id, title, source, Kind.BENCHMARK, solution);
  }

  static List<Study> all() {
    return List.of(
        printed(
            "incropera-suit",
            "Insulated suit: heat through skin, aerogel and air or water",
            INCROPERA + "7th edition, example 3.1 (from memory, recomputed)",
            Textbook::suit),
        printed(
            "ashrae-pipe",
            "Insulated pipe with convection and radiation outside",
            ASHRAE + "example 1 (read)",
            Textbook::pipe),
        printed(
            "ashrae-copper-ball",
            "Time for a copper ball of 1 mm to cool by 0.5 K",
            ASHRAE + "example 4 (read)",
            Textbook::copperBall),
        printed(
            "ashrae-apple",
            "Time for an apple's centre to reach 1 °C",
            ASHRAE + "example 5 (read)",
            Textbook::apple),
        printed(
            "incropera-water-main",
            "Depth to which soil freezes in 60 days",
            INCROPERA + "example of the water main (from memory, recomputed)",
            Textbook::waterMain),
        printed(
            "holman-furnace",
            "Heat loss of a cubical furnace",
            "Holman, Heat Transfer, example 3-2 (read)",
            Textbook::furnace),
        new Textbook(
            "incropera-critical-radius",
            "Resistance of insulation around a tube",
            INCROPERA + "example 3.5; ln(r / r_i) / (2 pi k) + 1 / (2 pi r h)",
            Kind.VERIFICATION,
            Textbook::criticalRadius),
        new Textbook(
            "ashrae-can",
            "Cooling of a can: product of cylinder and slab",
            ASHRAE + "example 6, whose printed result is wrong; product of two series",
            Kind.VERIFICATION,
            Textbook::can),
        new Textbook(
            "holman-aluminium-plate",
            "Plate after 60 s in a film, where the book reads charts",
            "Holman, Heat Transfer; series of the slab",
            Kind.VERIFICATION,
            Textbook::aluminium));
  }

  @Override
  public Heading heading() {
    return heading;
  }

  @Override
  public Findings run(Depth depth) {
    return solution.get();
  }

  private static Check check(Ladder ladder, int output, String quantity, Expected expected) {
    return new Check(quantity, ladder.output(output, expected.tolerance()), expected);
  }

  private static SteadySolution steady(ConductionProblem problem) {
    return SteadySolver.solve(problem);
  }

  private static Ladder.Grid grid(ConductionProblem problem, Double... values) {
    return new Ladder.Grid(List.of(values), problem.network().grid().cellCount(), 0);
  }

  private static Material solid(double conductivity) {
    return Material.of("solid", conductivity, 1000, 1000);
  }

  private static double celsius(double kelvin) {
    return Temperatures.toCelsius(kelvin);
  }

  private static double kelvin(double celsius) {
    return Temperatures.fromCelsius(celsius);
  }

  private static Findings suit() {
    String source = INCROPERA + "7th edition, example 3.1";
    Ladder ladder =
        Ladder.steady(
            Ladder.three(2e-4),
            width -> {
              List<Double> heat = new ArrayList<>();
              int cells = 0;
              double[][] ways = {{0.0044, 7.9}, {0.0061, 200}};
              for (double[] way : ways) {
                ConductionProblem problem =
                    ConductionProblem.builder(
                            Bodies.slab(
                                new Bodies.Layer(solid(0.3), 0.003),
                                new Bodies.Layer(solid(0.014), way[0])),
                            MeshControl.uniform(width))
                        .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(kelvin(35)))
                        .boundary(Face.X_MAX, Boundary.Convection.of(way[1], kelvin(10)))
                        .build();
                heat.add(1.8 * Bodies.heatInto(steady(problem), "xMin"));
                cells = problem.network().grid().cellCount();
              }
              return new Ladder.Grid(heat, cells, 0);
            });
    String why = "the book's thickness is rounded to 0.1 mm: half of that is 1.1 % of the aerogel";
    return new Findings(
        List.of(
            check(
                ladder,
                0,
                "heat in air with 4.4 mm of aerogel",
                new Expected(100, 1.0, "W", source, why)),
            check(
                ladder,
                1,
                "heat in water with 6.1 mm of aerogel",
                new Expected(100, 1.0, "W", source, why))),
        ladder.runs(),
        List.of());
  }

  private static Findings pipe() {
    String source = ASHRAE + "example 1";
    Ladder ladder =
        Ladder.steady(
            Ladder.three(0.002),
            width -> {
              double surface = kelvin(20);
              double before;
              SteadySolution solution;
              ConductionProblem problem;
              do {
                before = surface;
                double around = kelvin(25);
                double radiative =
                    0.85
                        * Radiation.STEFAN_BOLTZMANN
                        * (surface + around)
                        * (surface * surface + around * around);
                problem =
                    ConductionProblem.builder(
                            Bodies.tube(
                                0.05,
                                new Bodies.Layer(solid(400), 0.01),
                                new Bodies.Layer(solid(0.20), 0.05)),
                            MeshControl.uniform(width))
                        .boundary(Face.X_MIN, Boundary.Convection.of(1000, kelvin(5)))
                        .boundary(Face.X_MAX, Boundary.Convection.of(10 + radiative, around))
                        .build();
                solution = steady(problem);
                surface = solution.field().surfaceMean("xMax");
              } while (Math.abs(surface - before) > 1e-7);
              return grid(
                  problem,
                  Bodies.heatInto(solution, "xMax"),
                  celsius(solution.field().at(Bodies.at(0.06))),
                  celsius(surface));
            });
    String half = "half of the last printed digit, and as much again for the book's rounded parts";
    return new Findings(
        List.of(
            check(ladder, 0, "heat gain", new Expected(34.4, 0.1, "W/m", source, half)),
            check(
                ladder,
                1,
                "between pipe and insulation",
                new Expected(5.1, 0.05, "°C", source, "half of the last printed digit")),
            check(
                ladder,
                2,
                "surface of the insulation",
                new Expected(21.7, 0.05, "°C", source, "half of the last printed digit"))),
        ladder.runs(),
        List.of());
  }

  /** Time at which a probe reaches a temperature on its way down, between stored times. */
  private static double timeOf(double[] times, List<Double> values, double temperature) {
    int row = 1;
    while (values.get(row) > temperature) {
      row++;
    }
    double above = values.get(row - 1);
    double below = values.get(row);
    return times[row - 1] + (times[row] - times[row - 1]) * (above - temperature) / (above - below);
  }

  private static double[] every(double interval, int count) {
    double[] times = new double[count];
    for (int row = 0; row < count; row++) {
      times[row] = row * interval;
    }
    return times;
  }

  private static Findings copperBall() {
    double radius = 0.0005;
    double[] times = every(0.1, 100);
    Ladder ladder =
        Ladder.over(
            Ladder.three(radius / 8),
            1e-5,
            (width, tolerance) -> {
              Ladder.Grid grid =
                  Bodies.history(
                      ConductionProblem.builder(
                              Bodies.ball(
                                  new Bodies.Layer(Material.of("copper", 400, 8933, 385), radius)),
                              MeshControl.uniform(width))
                          .boundary(Face.X_MAX, Boundary.Convection.of(60, kelvin(20)))
                          .initial(kelvin(21))
                          .build(),
                      List.of(new Probe.Mean("ball", "0")),
                      times,
                      tolerance);
              return new Ladder.Grid(
                  List.of(timeOf(times, grid.values(), kelvin(20.5))), grid.cells(), grid.steps());
            });
    return new Findings(
        List.of(
            check(
                ladder,
                0,
                "time to cool from 21 °C to 20.5 °C in 20 °C",
                new Expected(
                    6.6, 0.05, "s", ASHRAE + "example 4", "half of the last printed digit"))),
        ladder.runs(),
        List.of());
  }

  private static Findings apple() {
    double radius = 0.03;
    double[] times = every(120, 100);
    Ladder ladder =
        Ladder.over(
            Ladder.three(radius / 40),
            1e-3,
            (width, tolerance) -> {
              Ladder.Grid grid =
                  Bodies.history(
                      ConductionProblem.builder(
                              Bodies.ball(
                                  new Bodies.Layer(Material.of("apple", 0.42, 830, 3600), radius)),
                              MeshControl.uniform(width))
                          .boundary(Face.X_MAX, Boundary.Convection.of(14, kelvin(0)))
                          .initial(kelvin(30))
                          .build(),
                      List.of(new Probe.At("centre", Bodies.at(0))),
                      times,
                      tolerance);
              double time = timeOf(times, grid.values(), kelvin(1));
              return new Ladder.Grid(List.of(Times.toHours(time)), grid.cells(), grid.steps());
            });
    return new Findings(
        List.of(
            check(
                ladder,
                0,
                "time until the centre is at 1 °C",
                new Expected(
                    2.62,
                    0.01,
                    "h",
                    ASHRAE + "example 5",
                    "the book takes the first term with rounded coefficients; its exact result is"
                        + " 2.6258 h"))),
        ladder.runs(),
        List.of());
  }

  private static Findings waterMain() {
    double k = 0.52;
    double alpha = 0.138e-6;
    Material soil = Material.of("soil", k, 2050, k / (alpha * 2050));
    double time = 60 * Times.DAY;
    double near = 0.66;
    double far = 0.70;
    Ladder ladder =
        Ladder.over(
            Ladder.three(0.01),
            1e-3,
            (width, tolerance) -> {
              Ladder.Grid grid =
                  Bodies.history(
                      ConductionProblem.builder(
                              Bodies.slab(new Bodies.Layer(soil, 5)), MeshControl.uniform(width))
                          .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(kelvin(-15)))
                          .initial(kelvin(20))
                          .build(),
                      List.of(
                          new Probe.At("near", Bodies.at(near)),
                          new Probe.At("far", Bodies.at(far))),
                      new double[] {time},
                      tolerance);
              double below = celsius(grid.values().get(0));
              double above = celsius(grid.values().get(1));
              return new Ladder.Grid(
                  List.of(near + (far - near) * -below / (above - below)),
                  grid.cells(),
                  grid.steps());
            });
    return new Findings(
        List.of(
            check(
                ladder,
                0,
                "depth at 0 °C after 60 days",
                new Expected(
                    0.68,
                    0.005,
                    "m",
                    INCROPERA + "example of the water main",
                    "half of the last printed digit; the exact depth is 0.677 m"))),
        ladder.runs(),
        List.of());
  }

  private static Findings furnace() {
    // inside 0.5 m, wall 0.1 m: a / t = 5
    Ladder ladder = HollowBox.shell(5, 1);
    double scale = 1.04 * 450 * 0.1;
    double computed = ladder.finest(0) * scale;
    Check.Computed factor = ladder.output(0, 1e-3 * ladder.finest(0));
    List<Double> heat = factor.values().stream().map(value -> value * scale).toList();
    return new Findings(
        List.of(
            new Check(
                "heat loss",
                new Check.Computed(heat, factor.widths(), 0, 1e-3 * computed),
                new Expected(
                    8592.48,
                    0.01 * 8592.48,
                    "W",
                    "Holman, example 3-2",
                    "the book adds up shape factors 0.54 and 0.15, which are 0.4 % below the exact"
                        + " shell here"))),
        ladder.runs(),
        List.of(
            new Findings.Exhibit.Paragraph(
                String.format(
                    Locale.ROOT,
                    "Computed %.0f W; the book's sum is %.2f %% lower.",
                    computed,
                    100 * (1 - 8592.48 / computed)))));
  }

  private static Findings criticalRadius() {
    double[] radii = {0.006, 0.0075, 0.011, 0.015, 0.020, 0.050};
    double k = 0.055;
    double h = 5;
    double inner = 0.005;
    Ladder ladder =
        Ladder.steady(
            Ladder.three(0.0005),
            width -> {
              List<Double> resistances = new ArrayList<>();
              int cells = 0;
              for (double radius : radii) {
                ConductionProblem problem =
                    ConductionProblem.builder(
                            Bodies.tube(inner, new Bodies.Layer(solid(k), radius - inner)),
                            MeshControl.uniform(width))
                        .boundary(Face.X_MIN, Boundary.PrescribedTemperature.of(301))
                        .boundary(Face.X_MAX, Boundary.Convection.of(h, 300))
                        .build();
                resistances.add(1 / Bodies.heatInto(steady(problem), "xMin"));
                cells = Math.max(cells, problem.network().grid().cellCount());
              }
              return new Ladder.Grid(resistances, cells, 0);
            });
    List<Check> checks = new ArrayList<>();
    for (int index = 0; index < radii.length; index++) {
      double radius = radii[index];
      double exact = Math.log(radius / inner) / (Bodies.TURN * k) + 1 / (Bodies.TURN * radius * h);
      checks.add(
          check(
              ladder,
              index,
              String.format(Locale.ROOT, "resistance with insulation to %.1f mm", 1000 * radius),
              new Expected(
                  exact,
                  1e-6,
                  "m K/W",
                  "ln(r / r_i) / (2 pi k) + 1 / (2 pi r h)",
                  "radial grids hold the field exactly; what is left is the linear solver's"
                      + " tolerance")));
    }
    return new Findings(
        checks,
        ladder.runs(),
        List.of(
            new Findings.Exhibit.Paragraph(
                "The least resistance is at the critical radius k / h = 11 mm, as the book has"
                    + " it.")));
  }

  private static Findings can() {
    double radius = 0.035;
    double half = 0.0625;
    Material water = Material.of("water", 0.5894, 999.1, 4184);
    double h = 20;
    // the middle plane is a symmetry plane
    Layout layout =
        Layout.cylindrical(
            List.of(
                new Block.Solid(
                    "water",
                    new Box(new Point(0, 0, 0), new Point(radius, Bodies.TURN, half)),
                    water)));
    Ladder ladder =
        Ladder.over(
            Ladder.three(radius / 28),
            2e-3,
            (width, tolerance) -> {
              Ladder.Grid grid =
                  Bodies.history(
                      ConductionProblem.builder(layout, MeshControl.uniform(width))
                          .boundary(Face.X_MAX, Boundary.Convection.of(h, kelvin(0)))
                          .boundary(Face.Z_MAX, Boundary.Convection.of(h, kelvin(0)))
                          .initial(kelvin(30))
                          .build(),
                      List.of(new Probe.At("centre", new Point(0, 0.5, 0))),
                      new double[] {3600},
                      tolerance);
              return new Ladder.Grid(
                  List.of(celsius(grid.values().get(0))), grid.cells(), grid.steps());
            });
    double k = water.conductivity();
    double square = water.diffusivity() * 3600;
    double cylinder =
        Exact.CoolingShape.CYLINDER.cooling(h * radius / k, square / (radius * radius), 0);
    double slab = Exact.CoolingShape.SLAB.cooling(h * half / k, square / (half * half), 0);
    return new Findings(
        List.of(
            check(
                ladder,
                0,
                "centre after 1 h",
                new Expected(
                    30 * cylinder * slab,
                    0.02,
                    "°C",
                    "product of the series of cylinder and slab",
                    "accuracy aimed at for points"))),
        ladder.runs(),
        List.of(
            new Findings.Exhibit.Paragraph(
                String.format(
                    Locale.ROOT,
                    "The book prints 16.7 °C, with 0.572 for the cylinder and 0.9705 for the slab;"
                        + " the series give %.4f and %.4f. Its value for the cylinder was read"
                        + " between two curves of a chart, so the printed result is no"
                        + " reference.",
                    cylinder,
                    slab))));
  }

  private static Findings aluminium() {
    double half = 0.025;
    Material plate = Material.of("aluminium", 215, 2700, 900);
    Ladder ladder =
        Ladder.over(
            Ladder.three(half / 40),
            1e-3,
            (width, tolerance) -> {
              Ladder.Grid grid =
                  Bodies.history(
                      ConductionProblem.builder(
                              Bodies.slab(new Bodies.Layer(plate, half)),
                              MeshControl.uniform(width))
                          .boundary(Face.X_MAX, Boundary.Convection.of(525, kelvin(70)))
                          .initial(kelvin(200))
                          .build(),
                      List.of(new Probe.At("depth", Bodies.at(0.0125))),
                      new double[] {60},
                      tolerance);
              return new Ladder.Grid(
                  List.of(celsius(grid.values().get(0))), grid.cells(), grid.steps());
            });
    double exact =
        70
            + 130
                * Exact.CoolingShape.SLAB.cooling(
                    525 * half / 215, plate.diffusivity() * 60 / (half * half), 0.5);
    return new Findings(
        List.of(
            check(
                ladder,
                0,
                "12.5 mm deep after 60 s",
                new Expected(
                    exact, 0.02, "°C", "series of the slab", "accuracy aimed at for points"))),
        ladder.runs(),
        List.of(
            new Findings.Exhibit.Paragraph(
                "The book reads 147.7 °C off charts, 0.7 K lower; with the diffusivity that it"
                    + " prints beside the data, 8.4e-5 m2/s, the series gives 150.4 °C: the three"
                    + " contradict each other.")));
  }
}
