package stenotherm.validation.studies;

import static stenotherm.base.Temperatures.fromCelsius;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stenotherm.animal.Animals;
import stenotherm.base.Face;
import stenotherm.base.Mass;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.conduction.ThinResistance;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.GridBudget;
import stenotherm.grid.MeshControl;
import stenotherm.material.Materials;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.transit.TransitSettings;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * What the grid does to the temperatures of a box with a warmer on its lid: errors against number
 * of cells, steady and on the way there, on equal cells and on the mesh that parcels get by
 * default.
 *
 * <p>Internal. Stateless, thus thread-safe.
 */
public final class WarmerEdges {
  /** About equal cells, as parcels had before cells were placed at the edges of warmers. */
  static final MeshControl EQUAL = MeshControl.uniform(0.008);

  /** What parcels get. */
  static final MeshControl PLACED = TransitSettings.standard().mesh();

  /** Widths of the three grids of a verdict, then as the settings ask for. */
  private static final List<Double> WIDTHS = List.of(4.0, 2 * Math.sqrt(2), 2.0, 1.0);

  /** Of those, where the finest grid of a verdict is. */
  private static final int FINEST = 2;

  /** Widths of two grids from which the truth is extrapolated, the second half as wide. */
  private static final double[] OF_TRUTH = {0.8, 0.4};

  /**
   * Order of means where heat leaves a good conductor at edges of 90°: the field outside goes with
   * the distance from the edge to the power 2/3, and what the cells there miss with twice that
   * power (theory of elliptic problems in domains with corners; from memory).
   */
  private static final double EDGE_ORDER = 4.0 / 3;

  private static final double STEADY = Double.POSITIVE_INFINITY;
  private static final List<Double> TIMES = List.of(Times.fromHours(1), Times.fromHours(4), STEADY);

  private static final double STEP_TOLERANCE = 2e-3;
  private static final double MOST_CELLS_RATIO = 1.25;
  private static final double LARGEST_ERROR_RATIO = 0.8;
  private static final double WORSE = 0.01;
  private static final double SAFETY = 1.25;
  private static final int WARMER_MEAN = 0;
  private static final int WARMER_HOTTEST = 1;
  private static final int ANIMAL_MEAN = 2;

  private static final List<String> QUANTITIES =
      List.of("warmer mean", "warmer hottest", "animal mean", "coldest", "hottest");

  private static final String WARMER = "warmer";

  private WarmerEdges() {}

  /**
   * Temperatures on one grid.
   *
   * @param cells number of cells
   * @param rows the quantities [K] at each time
   */
  record OnGrid(int cells, List<double[]> rows) {}

  /**
   * Prints the tables.
   *
   * @param out where to
   * @return whether on the finest grid of a verdict the mesh that parcels get takes at most a
   *     quarter more cells than equal ones and leaves at most four fifths of their error in the
   *     mean of the warmer, whether the error that verdicts state of a warmer covers those of its
   *     mean and its hottest part, and whether the mean of the animal as verdicts correct it is not
   *     worse by more than 0.01 K
   */
  public static boolean print(PrintStream out) {
    boolean better = true;
    for (Parcel parcel : List.of(square(Warmers.FORTY_HOUR), round(Warmers.TWENTY_HOUR))) {
      better &= print(parcel, out);
    }
    return better;
  }

  private static boolean print(Parcel parcel, PrintStream out) {
    List<OnGrid> finest = onGrids(parcel, PLACED, OF_TRUTH, TIMES);
    List<OnGrid> equal = onGrids(parcel, EQUAL, array(WIDTHS), TIMES);
    List<OnGrid> placed = onGrids(parcel, PLACED, array(WIDTHS), TIMES);
    boolean better = placed.get(FINEST).cells() <= MOST_CELLS_RATIO * equal.get(FINEST).cells();
    for (int time = 0; time < TIMES.size(); time++) {
      double[] truth = new double[QUANTITIES.size()];
      for (int quantity = 0; quantity < truth.length; quantity++) {
        truth[quantity] = limit(finest, time, quantity);
      }
      line(out, "");
      line(
          out,
          "%s, %s: errors [K] against %s",
          parcel.name(),
          TIMES.get(time) == STEADY ? "steady" : "%.0f h".formatted(TIMES.get(time) / 3600),
          shown(truth, -fromCelsius(0)) + " °C");
      line(out, "%-14s%6s%9s %s", "mesh", "width", "cells", String.join("  ", QUANTITIES));
      print("equal", equal, time, truth, out);
      line(out, "%-29s%s", "corrected as in verdicts", errors(corrected(equal, time), truth));
      print("placed", placed, time, truth, out);
      double[] corrected = corrected(placed, time);
      line(out, "%-29s%s", "corrected as in verdicts", errors(corrected, truth));
      double[] stated = stated(placed, time);
      line(out, "%-29s%s", "error as stated of a warmer", errors(stated, new double[truth.length]));
      double before = error(equal.get(FINEST).rows().get(time), truth, WARMER_MEAN);
      double after = error(placed.get(FINEST).rows().get(time), truth, WARMER_MEAN);
      double hottest = error(placed.get(FINEST).rows().get(time), truth, WARMER_HOTTEST);
      better &= after <= LARGEST_ERROR_RATIO * before;
      better &= Math.max(after, hottest) <= stated[WARMER_MEAN];
      better &=
          error(corrected, truth, ANIMAL_MEAN)
              <= error(corrected(equal, time), truth, ANIMAL_MEAN) + WORSE;
    }
    return better;
  }

  private static double error(double[] values, double[] truth, int quantity) {
    return Math.abs(values[quantity] - truth[quantity]);
  }

  /** The finest grid of a verdict and the one before it, extrapolated with second order. */
  private static double[] corrected(List<OnGrid> grids, int time) {
    double[] medium = grids.get(FINEST - 1).rows().get(time);
    double[] values = grids.get(FINEST).rows().get(time).clone();
    for (int quantity = 0; quantity < values.length; quantity++) {
      // the widths are a root of two apart
      values[quantity] += values[quantity] - medium[quantity];
    }
    return values;
  }

  /** From what cells half as wide have changed, as verdicts state it of the mean of a warmer. */
  private static double[] stated(List<OnGrid> grids, int time) {
    double[] coarse = grids.get(0).rows().get(time);
    double[] values = grids.get(FINEST).rows().get(time).clone();
    for (int quantity = 0; quantity < values.length; quantity++) {
      values[quantity] = SAFETY * Math.abs(values[quantity] - coarse[quantity]);
    }
    return values;
  }

  private static void print(
      String mesh, List<OnGrid> grids, int time, double[] truth, PrintStream out) {
    for (int grid = 0; grid < grids.size(); grid++) {
      OnGrid on = grids.get(grid);
      line(
          out,
          "%-14s%6.2f%9d%s",
          mesh,
          WIDTHS.get(grid),
          on.cells(),
          errors(on.rows().get(time), truth));
    }
  }

  private static String errors(double[] values, double[] truth) {
    return IntStream.range(0, truth.length)
        .mapToObj(
            quantity -> String.format(Locale.ROOT, "%12.3f", values[quantity] - truth[quantity]))
        .collect(Collectors.joining());
  }

  private static String shown(double[] values, double shift) {
    return Arrays.stream(values)
        .mapToObj(value -> String.format(Locale.ROOT, "%.2f", value + shift))
        .collect(Collectors.joining(", "));
  }

  private static void line(PrintStream out, String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
  }

  /** What a quantity at a time tends to by two grids, the second half as wide. */
  static double limit(List<OnGrid> grids, int time, int quantity) {
    double wide = grids.get(0).rows().get(time)[quantity];
    double narrow = grids.get(1).rows().get(time)[quantity];
    return narrow + (narrow - wide) / (Math.pow(2, EDGE_ORDER) - 1);
  }

  /** Computes a parcel on meshes of some widths, relative to one. */
  static List<OnGrid> onGrids(
      Parcel parcel, MeshControl mesh, double[] widths, List<Double> times) {
    List<OnGrid> grids = new ArrayList<>();
    for (double width : widths) {
      grids.add(
          onGrid(
              parcel, mesh.scaled(width).within(new GridBudget(4_000_000, Long.MAX_VALUE)), times));
    }
    return grids;
  }

  private static OnGrid onGrid(Parcel parcel, MeshControl mesh, List<Double> times) {
    ConductionProblem problem = problem(parcel, mesh);
    List<Probe> probes = probes(parcel);
    double[] stored =
        times.stream().filter(time -> time != STEADY).mapToDouble(Double::doubleValue).toArray();
    List<double[]> rows = new ArrayList<>();
    if (stored.length > 0) {
      TransientSolution history =
          TransientSolver.solve(
              problem, probes, stored, IntegratorSettings.adaptive(STEP_TOLERANCE));
      for (int row = 0; row < stored.length; row++) {
        int at = row;
        rows.add(probes.stream().mapToDouble(each -> history.history(each.name())[at]).toArray());
      }
    }
    if (times.contains(STEADY)) {
      SteadySolution steady = SteadySolver.solve(problem);
      rows.add(probes.stream().mapToDouble(steady::value).toArray());
    }
    return new OnGrid(problem.network().grid().cellCount(), rows);
  }

  /** All at 22 °C, then in air of 5 °C with 2 W from the warmer. */
  private static ConductionProblem problem(Parcel parcel, MeshControl mesh) {
    var problem =
        ConductionProblem.builder(parcel.layout(), mesh)
            .source(WARMER, TimeFunction.constant(2))
            .initial(fromCelsius(22));
    for (Face face : Face.values()) {
      problem.boundary(face, Boundary.Convection.of(8, fromCelsius(5)));
    }
    Set<String> contents =
        parcel.layout().blocks().stream()
            .map(Block::name)
            .filter(name -> name.startsWith("cup"))
            .collect(Collectors.toSet());
    // the wall of the cup, and the tape that holds the warmer
    problem.thinResistance(ThinResistance.around(contents, 0.002));
    return problem.thinResistance(ThinResistance.between(WARMER, "wall 2", 0.02)).build();
  }

  private static List<Probe> probes(Parcel parcel) {
    String animal = parcel.occupied().get(0).animalBlock();
    return List.of(
        new Probe.Mean(QUANTITIES.get(0), WARMER),
        new Probe.Maximum(QUANTITIES.get(1), WARMER),
        new Probe.Mean(QUANTITIES.get(2), animal),
        new Probe.Minimum(QUANTITIES.get(3), animal),
        new Probe.Maximum(QUANTITIES.get(4), animal));
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** A square cup in a box of 20 x 17 x 15 cm inside. */
  static Parcel square(WarmerClass warmer) {
    return parcel(
        "square cup under a " + warmer.name(),
        new Dimensions(0.20, 0.17, 0.15),
        new Vessel.BoxCup(
            new Dimensions(0.11, 0.08, 0.06), new WallLayer(Materials.POLYPROPYLENE, 5e-4)),
        warmer);
  }

  /** A round cup in a box of 17 x 15 x 13 cm inside. */
  static Parcel round(WarmerClass warmer) {
    return parcel(
        "round cup under a " + warmer.name(),
        new Dimensions(0.17, 0.15, 0.13),
        new Vessel.RoundCup(0.1, 0.06, new WallLayer(Materials.POLYPROPYLENE, 5e-4)),
        warmer);
  }

  private static Parcel parcel(String name, Dimensions inside, Vessel vessel, WarmerClass warmer) {
    Walls walls = Carton.walls(0.02);
    Container cup =
        new Container(
            "cup",
            vessel,
            new Position(0, 0, 0.02),
            Bedding.dampTowel(0.004),
            Occupant.of(Animals.LEOPARD_GECKO, Mass.grams(45)));
    return new Parcel(
        name,
        walls.around(inside),
        walls,
        Materials.SHREDDED_PAPER,
        List.of(cup),
        List.of(new PlacedWarmer(WARMER, warmer, Face.Z_MAX, Mounting.taped(), 0)));
  }
}
