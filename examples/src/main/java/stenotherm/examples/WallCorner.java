package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;
import static stenotherm.base.Temperatures.toCelsius;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import stenotherm.base.Face;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/**
 * No parcel at all: how much colder than the plain wall is the inner corner of a house, and how
 * much heat does the corner add?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class WallCorner {
  private static final double THICKNESS = 0.2;
  private static final double CONDUCTIVITY = 0.5;
  private static final double INSIDE_FILM = 7.7;
  private static final double OUTSIDE_FILM = 25;
  private static final double INSIDE = fromCelsius(20);
  private static final double OUTSIDE = fromCelsius(-10);

  /** Length of each wall's inner side; beyond it the wall is as good as plain. */
  private static final double LENGTH = 1.0;

  /** A slice of the corner; all heights are alike. */
  private static final double HEIGHT = 0.01;

  private WallCorner() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    double end = THICKNESS + LENGTH;
    Material masonry = Material.of("masonry", CONDUCTIVITY, 1400, 1000);
    Point corner = new Point(THICKNESS, THICKNESS, 0);
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("wall", Box.ofSize(end, end, HEIGHT), masonry),
                new Block.Environment("room", new Box(corner, new Point(end, end, HEIGHT)))));
    Boundary outdoors = Boundary.Convection.of(OUTSIDE_FILM, OUTSIDE);
    // the two cut ends, floor and ceiling of the slice stay adiabatic
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.graded(0.02, 0.0025))
            .boundary("room", Boundary.Convection.of(INSIDE_FILM, INSIDE))
            .boundary(Face.X_MIN, outdoors)
            .boundary(Face.Y_MIN, outdoors)
            .build();
    SteadySolution solution = SteadySolver.solve(problem);
    double heat = Objects.requireNonNull(solution.heatFlows().get("room")) / HEIGHT;

    double plainFlux =
        (INSIDE - OUTSIDE) / (1 / INSIDE_FILM + THICKNESS / CONDUCTIVITY + 1 / OUTSIDE_FILM);
    double plainSurface = INSIDE - plainFlux / INSIDE_FILM;
    double cornerSurface = solution.field().at(corner);
    double plainHeat = plainFlux * 2 * LENGTH;
    print("inner surface of the plain wall  %7.2f °C", toCelsius(plainSurface));
    print("inner corner                     %7.2f °C", toCelsius(cornerSurface));
    print("difference                       %7.2f K", cornerSurface - plainSurface);
    print("heat from the room, plain wall   %7.2f W per metre of height", plainHeat);
    print("heat from the room, with corner  %7.2f W per metre of height", heat);
    print("added by the corner              %7.2f W per metre of height", heat - plainHeat);
  }

  private static void print(String format, double value) {
    System.out.println(String.format(Locale.ROOT, format, value));
  }
}
