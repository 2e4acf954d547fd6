package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.base.Face;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.SteadySolution;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;
import stenotherm.parcel.Dimensions;

/**
 * Shape factors of a cubical shell of inner edge a and wall t, both faces held, as a multiple of t;
 * an eighth is solved. And the corner of two walls, whose excess is known exactly.
 */
final class HollowBox implements Study {
  /** What the corner of two walls passes beyond the two walls up to their inner edge. */
  static final double EXACT_EDGE = 1 - 2 / Math.PI * Math.log(2);

  private static final double HANDBOOK_EDGE = 0.54;
  private static final double HANDBOOK_VERTEX = 0.15;

  /** Ratios a / t with S / t as another finite-volume program of the same authors gave it. */
  private static final double[][] OTHER_PROGRAM = {
    {1, 13.458}, {2, 38.252}, {4, 123.67}, {10, 667.9}
  };

  private static final String HANDBOOK =
      "Langmuir, Adams and Meikle 1913, in ASHRAE Handbook - Fundamentals 2021, ch. 4, Table 3:"
          + " walls A / t, edges 0.54, corners 0.15 (read)";

  /** Fine at the edges, where the flux is singular; for walls of unit thickness. */
  private static final MeshControl MESH = new MeshControl(0.1, 0.005, 1.2);

  /** Estimated error aimed at: edges and corners are singular in three dimensions. */
  private static final double CONVERGED = 3e-3;

  private final Kind kind;

  /** Compared with an exact edge, with the handbook's sum, or with another program. */
  HollowBox(Kind kind) {
    this.kind = kind;
  }

  @Override
  public Heading heading() {
    return switch (kind) {
      case VERIFICATION ->
          new Heading(
              "wall-corner",
              "Corner of two equal walls, both faces held",
              "conformal mapping: excess 1 - 2 ln 2 / pi",
              kind);
      case BENCHMARK ->
          new Heading(
              "hollow-box", "Shape factor of a cubical shell against the handbook", HANDBOOK, kind);
      case MEASURED, PRACTICE, UNSTATED ->
          throw new IllegalStateException("no factors: " + kind.word());
      case REGRESSION ->
          new Heading(
              "hollow-box-other-program",
              "Shape factor of a cubical shell against another program",
              "finite volumes of another program of the same authors, up to 1 million cells,"
                  + " extrapolated",
              kind);
    };
  }

  static double handbook(double ratio) {
    return sum(ratio, HANDBOOK_EDGE, HANDBOOK_VERTEX);
  }

  private static double sum(double ratio, double edge, double vertex) {
    return 6 * ratio * ratio + 12 * edge * ratio + 8 * vertex;
  }

  /** Shape factor over the wall's thickness. */
  static Ladder shell(double ratio, double finest) {
    return Ladder.steady(
        Ladder.three(finest),
        width -> {
          double outer = ratio / 2 + 1;
          return solve(
              Box.ofSize(outer, outer, outer),
              Box.ofSize(ratio / 2, ratio / 2, ratio / 2),
              List.of(Face.X_MAX, Face.Y_MAX, Face.Z_MAX),
              width,
              8);
        });
  }

  private static Ladder.Grid solve(
      Box outer, Box inner, List<Face> held, double width, double parts) {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("wall", outer, Material.of("wall", 1, 1000, 1000)),
                new Block.Environment("inside", inner)));
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout, MESH.scaled(width))
            .boundary("inside", Boundary.PrescribedTemperature.of(301));
    held.forEach(face -> builder.boundary(face, Boundary.PrescribedTemperature.of(300)));
    ConductionProblem problem = builder.build();
    SteadySolution solution = SteadySolver.solve(problem);
    return new Ladder.Grid(
        List.of(parts * Bodies.heatInto(solution, "inside")),
        problem.network().grid().cellCount(),
        0);
  }

  /** Conductance of a box whose inner faces are held, from them to the air outside [W/K]. */
  static double conductance(Dimensions inside, Bodies.Layer wall, double film, double width) {
    double x = inside.length() / 2;
    double y = inside.width() / 2;
    double z = inside.height() / 2;
    double thickness = wall.thickness();
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid(
                    "wall",
                    Box.ofSize(x + thickness, y + thickness, z + thickness),
                    wall.material()),
                new Block.Environment("inside", Box.ofSize(x, y, z))));
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout, MESH.scaled(8 * thickness * width))
            .boundary("inside", Boundary.PrescribedTemperature.of(301));
    for (Face face : List.of(Face.X_MAX, Face.Y_MAX, Face.Z_MAX)) {
      builder.boundary(face, Boundary.Convection.of(film, 300));
    }
    return 8 * Bodies.heatInto(SteadySolver.solve(builder.build()), "inside");
  }

  @Override
  public Findings run(Depth depth) {
    return kind == Kind.VERIFICATION ? corner(depth) : shells(depth);
  }

  private Findings corner(Depth depth) {
    double inner = 2;
    Ladder ladder =
        Ladder.steady(
            Ladder.three(depth == Depth.FAST ? 1 : 0.5),
            width ->
                solve(
                    Box.ofSize(inner + 1, inner + 1, 1),
                    Box.ofSize(inner, inner, 1),
                    List.of(Face.X_MAX, Face.Y_MAX),
                    width,
                    1));
    double exact = 2 * inner + EXACT_EDGE;
    return new Findings(
        List.of(
            new Check(
                "heat flow of the corner with walls of twice their thickness, over k dT",
                ladder.output(0, 1e-3 * exact),
                new Check.Expected(
                    exact, 1e-3 * exact, "-", heading().source(), "0.1 % of a heat flow"))),
        ladder.runs(),
        List.of(
            new Findings.Exhibit.Paragraph(
                String.format(
                    Locale.ROOT,
                    "Excess of the edge: computed %.5f, exact %.5f, handbook 0.54 (%.1f %%).",
                    ladder.finest(0) - 2 * inner,
                    EXACT_EDGE,
                    100 * (HANDBOOK_EDGE / EXACT_EDGE - 1)))));
  }

  private Findings shells(Depth depth) {
    List<Check> checks = new ArrayList<>();
    List<Ladder> ladders = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (double[] known : OTHER_PROGRAM) {
      double ratio = known[0];
      if (!isWanted(ratio, depth)) {
        continue;
      }
      double finest = depth == Depth.FAST ? 1 : finest(ratio);
      Ladder ladder = shell(ratio, finest);
      ladders.add(ladder);
      double computed = ladder.finest(0);
      String name = "S / t for a / t = " + ratio;
      if (kind == Kind.REGRESSION) {
        checks.add(
            new Check(
                name,
                ladder.output(0, CONVERGED * computed),
                new Check.Expected(
                    known[1],
                    3.5e-3 * known[1],
                    "-",
                    heading().source(),
                    "0.3 % aimed at, as edges and corners are singular, and 0.05 % that the other"
                        + " program is estimated to leave")));
      } else {
        double sum = handbook(ratio);
        checks.add(
            new Check(
                name,
                ladder.output(0, CONVERGED * computed),
                new Check.Expected(
                    sum,
                    0.02 * sum,
                    "-",
                    HANDBOOK,
                    "coefficients of two digits: 0.54 is 3.4 % below the exact edge, and 0.15"
                        + " makes up for it where edges are short")));
        rows.add(row(ratio, computed, sum, sum(ratio, EXACT_EDGE, 0.106)));
      }
    }
    Findings findings = new Findings(checks, Ladder.together(ladders), List.of());
    return rows.isEmpty()
        ? findings
        : findings.with(
            new Findings.Exhibit.Tabulation(
                List.of(
                    "a / t",
                    "S / t computed",
                    "handbook's sum",
                    "sum too high by",
                    "with exact edges and corners of 0.106",
                    "too high by"),
                rows),
            new Findings.Exhibit.Paragraph(
                "The handbook's range is an inner dimension above a fifth of the wall's"
                    + " thickness; one edition prints 'above five times', which looks like a"
                    + " misprint. Neither tells the accuracy: the sum is good to 2 % from a = t on,"
                    + " where it is compared; at a = 0.4 t, well within the stated range, corners"
                    + " overlap and it is 16 % too high, so nothing is compared there."));
  }

  private boolean isWanted(double ratio, Depth depth) {
    if (depth == Depth.FAST) {
      return ratio == 1;
    }
    return kind == Kind.BENCHMARK || ratio == 1 || ratio == 4;
  }

  /** Relative width of the finest cells that keep the eighth of a box below 1 million. */
  private static double finest(double ratio) {
    if (ratio > 4) {
      return 1.4;
    }
    return ratio > 2 ? 1 : 0.7;
  }

  private static List<String> row(double ratio, double computed, double sum, double better) {
    return List.of(
        String.format(Locale.ROOT, "%.1f", ratio),
        String.format(Locale.ROOT, "%.4f", computed),
        String.format(Locale.ROOT, "%.4f", sum),
        String.format(Locale.ROOT, "%+.2f %%", 100 * (sum / computed - 1)),
        String.format(Locale.ROOT, "%.4f", better),
        String.format(Locale.ROOT, "%+.2f %%", 100 * (better / computed - 1)));
  }
}
