package stenotherm.validation.studies;

import java.util.List;
import java.util.Locale;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.InitialState;
import stenotherm.conduction.Probe;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;
import stenotherm.validation.studies.Check.Expected;

/**
 * The test by which insulated boxes are rated: filled with ice, held at a warm ambient, R = A dT t
 * / (m L) from the ice that melts. Here both faces of a cubical foam shell are at the temperatures
 * that the test assumes; an eighth is solved, with ice that melts.
 */
final class IceMelt implements Study {
  private static final double MELTS_AT = 273.15;
  private static final double DIFFERENCE = 22;
  private static final double LATENT = 333_550;
  private static final double ICE_DENSITY = 917;
  private static final double INNER = 0.25;
  private static final double WALL = 0.03;
  private static final double FOAM = 0.036;

  /** The inner face has the melting temperature: meltwater that is stirred carries heat well. */
  private static final double STIRRED = 200;

  /** What a vertex adds beyond three edges, times the thickness. */
  private static final double VERTEX = 0.106;

  private static final String TEST =
      "definition of the ice-melt test; exact edges 1 - 2 ln 2 / pi, vertices 0.106 t (another"
          + " program, within 0.001 t)";

  @Override
  public Heading heading() {
    return new Heading(
        "ice-melt",
        "Ice-melt test of a foam box: R and the area that it refers to",
        TEST,
        Kind.VERIFICATION);
  }

  /** Melt rate of the whole box [kg/h]. */
  private static Ladder.Grid melt(double width, double stepTolerance) {
    double outer = INNER / 2 + WALL;
    Material ice =
        Material.of("ice", 2.2, ICE_DENSITY, 2100)
            .withBehaviour(
                new Behaviour.Melts(
                    new Melting(new Range(MELTS_AT, MELTS_AT), LATENT, STIRRED, 4200)));
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid(
                    "foam", Box.ofSize(outer, outer, outer), Material.of("foam", FOAM, 20, 1450)),
                new Block.Solid("ice", Box.ofSize(INNER / 2, INNER / 2, INNER / 2), ice)));
    ConductionProblem.Builder builder =
        ConductionProblem.builder(layout, new MeshControl(0.01, 0.0008, 1.4).scaled(width))
            .initial(
                InitialState.uniform(MELTS_AT + DIFFERENCE / 2)
                    .with("foam", MELTS_AT + DIFFERENCE / 2)
                    .partlyMelted("ice", 0));
    for (Face face : List.of(Face.X_MAX, Face.Y_MAX, Face.Z_MAX)) {
      builder.boundary(face, Boundary.PrescribedTemperature.of(MELTS_AT + DIFFERENCE));
    }
    double from = Times.fromHours(2);
    double to = Times.fromHours(6);
    Ladder.Grid grid =
        Bodies.history(
            builder.build(),
            List.of(new Probe.LiquidFraction("liquid", "ice")),
            new double[] {from, to},
            stepTolerance);
    double mass = ICE_DENSITY * INNER * INNER * INNER;
    double melted = mass * (grid.values().get(1) - grid.values().get(0));
    return new Ladder.Grid(List.of(melted / Times.toHours(to - from)), grid.cells(), grid.steps());
  }

  private static double resistance(double area, double kilogramsPerHour) {
    return area * DIFFERENCE * 3600 / (kilogramsPerHour * LATENT);
  }

  @Override
  public Findings run(Depth depth) {
    Ladder ladder = Ladder.over(Ladder.three(depth == Depth.FAST ? 1.5 : 1), 5e-3, IceMelt::melt);
    double shape = 6 * INNER * INNER / WALL + 12 * HollowBox.EXACT_EDGE * INNER + 8 * VERTEX * WALL;
    double exact = FOAM * shape * DIFFERENCE * 3600 / LATENT;
    double outerEdge = INNER + 2 * WALL;
    double middle = INNER + WALL;
    double rate = ladder.finest(0);
    double inside = resistance(6 * INNER * INNER, rate);
    double outside = resistance(6 * outerEdge * outerEdge, rate);
    double flat = WALL / FOAM;
    return new Findings(
        List.of(
            new Check(
                "melt rate",
                ladder.output(0, 3e-3 * exact),
                new Expected(
                    exact,
                    5e-3 * exact,
                    "kg/h",
                    TEST,
                    "0.1 % of a heat flow is not reached: the front among cells of a fifth of the"
                        + " wall leaves some tenths of a percent"))),
        ladder.runs(),
        List.of(
            new Findings.Exhibit.Tabulation(
                List.of("area that R refers to", "R [m2 K/W]", "of thickness / conductivity"),
                List.of(
                    row("inner faces", inside, flat),
                    row("middle of the wall", resistance(6 * middle * middle, rate), flat),
                    row("outer faces", outside, flat))),
            new Findings.Exhibit.Paragraph(
                String.format(
                    Locale.ROOT,
                    "The same box, the same melt rate: R by the outer faces is %.0f %% above R by"
                        + " the inner ones. A measured R without its area says little. No measured"
                        + " R of a box could be read in a public text, so none is compared here.",
                    100 * (outside / inside - 1)))));
  }

  private static List<String> row(String name, double resistance, double flat) {
    return List.of(
        name,
        String.format(Locale.ROOT, "%.4f", resistance),
        String.format(Locale.ROOT, "%.0f %%", 100 * resistance / flat));
  }
}
