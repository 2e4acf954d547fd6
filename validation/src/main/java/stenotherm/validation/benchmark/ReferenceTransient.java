package stenotherm.validation.benchmark;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import stenotherm.base.Face;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.ThinResistance;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Material;

/**
 * A parcel on a journey of 48 h: a carton of 4 mm board with 19 mm EPS, filled; in it a cup with a
 * towel and an animal; under the lid a warmer with a contact resistance and a falling power. The
 * ambient follows hourly values that jump between five legs, the films are one of three sets. The
 * materials are round values, not data.
 *
 * <p>Internal. Immutable, thus thread-safe.
 */
public final class ReferenceTransient {
  /** Name of the output that is a heat flow. */
  static final String LID_FLOW = "lid heat flow";

  /** The full mesh has at least this number of cells, see {@link #fullMesh()}. */
  static final int FEWEST_CELLS = 60_000;

  private static final double BOARD = 0.004;
  private static final double WALL = BOARD + 0.019;
  private static final double LENGTH = 0.305;
  private static final double WIDTH = 0.229;
  private static final double HEIGHT = 0.152;
  private static final double CUP_WALL = 0.002;
  private static final double WARMER_CONTACT = 0.02;
  static final double START_CELSIUS = 21;
  static final double HOURS = 48;
  static final double STORED_EVERY = 15 * Times.MINUTE;

  /** Surface coefficients of the lid, the four sides and the base [W/(m2 K)]. */
  private record FilmSet(double lid, double sides, double base) {
    double of(Face face) {
      return switch (face) {
        case Z_MAX -> lid;
        case Z_MIN -> base;
        default -> sides;
      };
    }
  }

  private static final FilmSet ROOM = new FilmSet(9.5, 8.5, 7);
  private static final FilmSet VEHICLE = new FilmSet(12, 12, 9);
  private static final FilmSet WIND = new FilmSet(20, 20, 12);

  /** A leg [h from the start of the journey], its mean ambient [Celsius] and its films. */
  private record Stretch(int from, int to, double mean, FilmSet films) {}

  private static final List<Stretch> LEGS =
      List.of(
          new Stretch(0, 2, -2, WIND),
          new Stretch(2, 10, 8, VEHICLE),
          new Stretch(10, 13, 15, ROOM),
          new Stretch(13, 24, 5, VEHICLE),
          new Stretch(24, 48, 0, ROOM));

  /** Half the daily swing of the ambient [K]. */
  private static final double SWING = 4;

  private static final double[] POWER_HOURS = {0, 2, 20, 40, 60};
  private static final double[] POWER_WATTS = {0, 2.2, 1.9, 1.2, 0};

  private final ConductionProblem problem;

  /**
   * Sets the journey up on a mesh.
   *
   * @param mesh how fine the grid is
   */
  public ReferenceTransient(MeshControl mesh) {
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout(), mesh)
            .initial(Temperatures.fromCelsius(START_CELSIUS))
            .source("warmer", power());
    thinResistances().forEach(builder::thinResistance);
    TimeFunction ambient = ambient();
    for (Face face : Face.values()) {
      builder.boundary(face, new Boundary.Convection(film(face), ambient));
    }
    problem = builder.build();
  }

  /**
   * The mesh of the timed run, of more than 60,000 cells.
   *
   * @return the control
   */
  public static MeshControl fullMesh() {
    return new MeshControl(0.022, 0.0055, 1.25);
  }

  /**
   * The outputs: mean, lowest and highest temperature of the animal, mean and highest of the
   * warmer, the mean of the board, the mean over the lid's surface, and the heat flow through it.
   *
   * @return the probes
   */
  public static List<Probe> probes() {
    return List.of(
        new Probe.Mean("animal mean", "animal"),
        new Probe.Minimum("animal lowest", "animal"),
        new Probe.Maximum("animal highest", "animal"),
        new Probe.Mean("warmer mean", "warmer"),
        new Probe.Maximum("warmer highest", "warmer"),
        new Probe.Mean("board mean", "board"),
        new Probe.SurfaceMean("lid surface", Face.Z_MAX.label()),
        new Probe.HeatFlow(LID_FLOW, Face.Z_MAX.label()));
  }

  /**
   * The number of cells.
   *
   * @return solid cells, which are all
   */
  public int cells() {
    return problem.network().solidCellCount();
  }

  /**
   * Runs the journey.
   *
   * @param settings how to step
   * @return the history, one row every 15 min
   */
  public TransientSolution run(IntegratorSettings settings) {
    return TransientSolver.solve(problem, probes(), storedTimes(), settings);
  }

  RectilinearGrid grid() {
    return problem.network().grid();
  }

  /** Runs the journey, stored at other times [s]. */
  TransientSolution run(IntegratorSettings settings, List<Probe> outputs, double[] times) {
    return TransientSolver.solve(problem, outputs, times, settings);
  }

  private static double[] storedTimes() {
    int intervals = (int) Math.round(Times.fromHours(HOURS) / STORED_EVERY);
    return IntStream.rangeClosed(0, intervals).mapToDouble(row -> row * STORED_EVERY).toArray();
  }

  static Layout layout() {
    double floor = WALL;
    double ceiling = HEIGHT - WALL;
    return new Layout(
        List.of(
            solid("board", Box.ofSize(LENGTH, WIDTH, HEIGHT), 0.06, 135, 1340),
            solid("insulation", inset(BOARD), 0.036, 20, 1450),
            solid("fill", inset(WALL), 0.055, 35, 1340),
            solid("cup", box(0.1, 0.07, floor, 0.18, 0.15, floor + 0.05), 0.1, 1.2, 1007),
            solid("towel", box(0.1, 0.07, floor, 0.18, 0.15, floor + 0.005), 0.12, 240, 3478),
            solid(
                "animal",
                box(0.11, 0.09, floor + 0.005, 0.17, 0.12, floor + 0.023),
                0.5,
                1000,
                3400),
            solid(
                "warmer",
                box(0.09, 0.07, ceiling - 0.012, 0.215, 0.155, ceiling),
                0.45,
                1300,
                1360)));
  }

  private static Block solid(
      String name, Box box, double conductivity, double density, double specificHeat) {
    return new Block.Solid(name, box, Material.of(name, conductivity, density, specificHeat));
  }

  private static Box inset(double depth) {
    return box(depth, depth, depth, LENGTH - depth, WIDTH - depth, HEIGHT - depth);
  }

  private static Box box(double x0, double y0, double z0, double x1, double y1, double z1) {
    return new Box(new Point(x0, y0, z0), new Point(x1, y1, z1));
  }

  /** Hourly values, two at the hour in which one leg follows another. */
  static TimeFunction ambient() {
    double[] hours =
        LEGS.stream()
            .flatMapToDouble(leg -> IntStream.rangeClosed(leg.from(), leg.to()).asDoubleStream())
            .toArray();
    double[] values =
        LEGS.stream()
            .flatMapToDouble(
                leg ->
                    IntStream.rangeClosed(leg.from(), leg.to())
                        .mapToDouble(hour -> ambient(leg, hour)))
            .toArray();
    return hourly(hours, values);
  }

  private static double ambient(Stretch leg, int hour) {
    return Temperatures.fromCelsius(leg.mean() + SWING * Math.sin(2 * Math.PI * hour / 24));
  }

  static TimeFunction film(Face face) {
    double[] hours = new double[2 * LEGS.size()];
    double[] values = new double[hours.length];
    for (int index = 0; index < LEGS.size(); index++) {
      Stretch leg = LEGS.get(index);
      hours[2 * index] = leg.from();
      hours[2 * index + 1] = leg.to();
      values[2 * index] = leg.films().of(face);
      values[2 * index + 1] = leg.films().of(face);
    }
    return hourly(hours, values);
  }

  static TimeFunction power() {
    return hourly(POWER_HOURS, POWER_WATTS);
  }

  static List<ThinResistance> thinResistances() {
    return List.of(
        ThinResistance.around(Set.of("cup", "towel", "animal"), CUP_WALL),
        ThinResistance.between("warmer", "insulation", WARMER_CONTACT));
  }

  private static TimeFunction hourly(double[] hours, double[] values) {
    double[] seconds = new double[hours.length];
    for (int row = 0; row < hours.length; row++) {
      seconds[row] = Times.fromHours(hours[row]);
    }
    return TimeFunction.table(seconds, values);
  }
}
