package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stenotherm.conduction.Bodies.assertRefused;
import static stenotherm.conduction.Bodies.point;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

class TemperatureFieldTest {
  /**
   * Far below what a reading needs, above the linear solver's tolerance of 1e-9 K on these bodies.
   */
  private static final double ROUND_OFF = 1e-7;

  private static final double SIDE = 0.06;

  private static Point along(Axis axis, double here, double across) {
    return switch (axis) {
      case X -> new Point(here, across, across);
      case Y -> new Point(across, here, across);
      case Z -> new Point(across, across, here);
    };
  }

  /**
   * Three layers along an axis; a block of the same stuff inside the first breaks the other axes
   * into cells.
   */
  @ParameterizedTest
  @EnumSource(Axis.class)
  void linearFieldInLayersIsReproduced(Axis axis) {
    Material[] materials = {Bodies.FOAM, Bodies.WATER, Bodies.BOARD};
    double[] faces = {0, 0.02, 0.035, SIDE};
    Point far = new Point(SIDE, SIDE, SIDE);
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("a", new Box(new Point(0, 0, 0), far), materials[0]),
                new Block.Solid("b", new Box(along(axis, 0.02, 0), far), materials[1]),
                new Block.Solid("c", new Box(along(axis, 0.035, 0), far), materials[2]),
                new Block.Solid(
                    "probe",
                    new Box(along(axis, 0.005, 0.02), along(axis, 0.015, 0.04)),
                    materials[0])));
    ConductionProblem problem =
        ConductionProblem.builder(layout, MeshControl.graded(0.012, 0.004))
            .boundary(Face.of(axis, false), Boundary.Convection.of(8, 310))
            .boundary(Face.of(axis, true), Boundary.PrescribedTemperature.of(280))
            .build();
    for (Axis each : Axis.values()) {
      assertTrue(problem.network().grid().count(each) > 2);
    }
    TemperatureField field = SteadySolver.solve(problem).field();
    double resistance = 1 / 8.0;
    for (int layer = 0; layer < 3; layer++) {
      resistance += (faces[layer + 1] - faces[layer]) / materials[layer].conductivity();
    }
    double flux = 30 / resistance;
    double temperature = 310 - flux / 8;
    assertEquals(temperature, field.surfaceMean(Face.of(axis, false).label()), ROUND_OFF);
    for (int layer = 0; layer < 3; layer++) {
      double gradient = flux / materials[layer].conductivity();
      double thickness = faces[layer + 1] - faces[layer];
      for (double fraction : new double[] {0, 0.13, 0.5, 0.77, 1}) {
        for (double across : new double[] {0, 0.011, 0.02, 0.03, 0.0487, SIDE}) {
          double here = faces[layer] + fraction * thickness;
          assertEquals(
              temperature - gradient * fraction * thickness,
              field.at(along(axis, here, across)),
              ROUND_OFF);
        }
      }
      temperature -= gradient * thickness;
    }
    assertEquals(280, field.minimum("c"), ROUND_OFF);
    assertEquals(310 - flux / 8, field.maximum("a"), ROUND_OFF);
  }

  private static final TemperatureField CORNER = corner();
  private static final double HIGHEST = Math.max(CORNER.maximum("water"), CORNER.maximum("foam"));
  private static final double LOWEST = Math.min(CORNER.minimum("water"), CORNER.minimum("foam"));

  /** A warm block of water in the corner of a foam box: nothing is linear here. */
  private static TemperatureField corner() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("foam", Box.ofSize(0.1, 0.1, 0.1), Bodies.FOAM),
                new Block.Solid("water", Box.ofSize(0.05, 0.06, 0.04), Bodies.WATER)));
    Boundary film = Boundary.Convection.of(6, 280);
    return SteadySolver.solve(
            ConductionProblem.builder(layout, MeshControl.uniform(0.012))
                .boundary(Face.X_MAX, film)
                .boundary(Face.Y_MAX, film)
                .boundary(Face.Z_MAX, film)
                .source("water", TimeFunction.constant(3))
                .build())
        .field();
  }

  @Property(seed = "2301", tries = 300)
  void fieldIsContinuousAcrossMaterialFaces(
      @ForAll @DoubleRange(min = 0, max = 0.06) double y,
      @ForAll @DoubleRange(min = 0, max = 0.04) double z) {
    double step = 1e-9;
    double inside = CORNER.at(new Point(0.05 - step, y, z));
    double outside = CORNER.at(new Point(0.05 + step, y, z));
    // the gradient in the foam is some 1e4 K/m at most
    assertEquals(inside, outside, 1e-4);
  }

  @Property(seed = "2302", tries = 300)
  void extremesHoldEveryPoint(
      @ForAll @DoubleRange(min = 0, max = 0.1) double x,
      @ForAll @DoubleRange(min = 0, max = 0.1) double y,
      @ForAll @DoubleRange(min = 0, max = 0.1) double z) {
    double here = CORNER.at(new Point(x, y, z));
    assertTrue(here <= HIGHEST + ROUND_OFF && here >= LOWEST - ROUND_OFF);
  }

  @Test
  void surfaceFollowsFilm() {
    Layout layout =
        new Layout(List.of(new Block.Solid("foam", Box.ofSize(0.03, 1, 1), Bodies.FOAM)));
    SteadySolution solution =
        SteadySolver.solve(
            ConductionProblem.builder(layout, MeshControl.uniform(0.01))
                .boundary(Face.X_MIN, Boundary.PrescribedFlux.of(20))
                .boundary(Face.X_MAX, Boundary.Convection.of(10, 290))
                .build());
    assertEquals(292, solution.field().at(point(0.03)), ROUND_OFF);
    assertEquals(292 + 20 * 0.03 / 0.036, solution.field().at(point(0)), ROUND_OFF);
    assertEquals(20, solution.heatFlows().get("xMin"), 1e-12);
  }

  @Test
  void readsOnlySolids() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("foam", Bodies.slice(0, 0.1), Bodies.FOAM),
                new Block.Solid("hidden", Bodies.slice(0.08, 0.1), Bodies.WATER),
                new Block.Environment("room", Bodies.slice(0.06, 0.1))));
    TemperatureField field =
        SteadySolver.solve(
                ConductionProblem.builder(layout, MeshControl.uniform(0.02))
                    .boundary("room", Boundary.Convection.of(5, 290))
                    .build())
            .field();
    assertEquals(290, field.mean("foam"), ROUND_OFF);
    assertRefused(
        "block 'room': is an environment and has no temperature of its own",
        () -> field.mean("room"));
    assertRefused(
        "block 'hidden': has no cells left; later blocks override all of it",
        () -> field.maximum("hidden"));
    assertRefused(
        "point: Point[x=0.09, y=0.5, z=0.5] lies inside an environment; nothing solid is there",
        () -> field.at(point(0.09)));
    assertRefused(
        "point: X = 0.2 m lies outside the domain, 0 m to 0.1 m", () -> field.at(point(0.2)));
    // the surface belongs to the solid
    assertEquals(290, field.at(point(0.06)), ROUND_OFF);
    TemperatureField.PlaneSection section = field.section(Axis.Z, 0.5);
    assertEquals(Axis.X, section.across());
    assertEquals(Axis.Y, section.up());
    double[] values = section.values();
    assertEquals(
        (section.acrossLines().length - 1) * (section.upLines().length - 1), values.length);
    assertTrue(Double.isNaN(values[values.length - 1]));
    assertEquals(290, values[0], ROUND_OFF);
    assertArrayEquals(new double[] {0, 1}, section.upLines(), 1e-12);
  }

  @Test
  void aSteadyStateReadsEveryOutputButLiquid() {
    ConductionProblem problem =
        ConductionProblem.builder(Bodies.wall(), MeshControl.uniform(0.005))
            .boundary(Face.X_MIN, Boundary.Convection.of(7.7, 293.15))
            .boundary(Face.X_MAX, Boundary.PrescribedTemperature.of(263.15))
            .build();
    SteadySolution solution = SteadySolver.solve(problem);
    TemperatureField field = solution.field();
    assertEquals(field.mean("foam"), solution.value(new Probe.Mean("out", "foam")));
    assertEquals(field.maximum("foam"), solution.value(new Probe.Maximum("out", "foam")));
    assertEquals(field.minimum("foam"), solution.value(new Probe.Minimum("out", "foam")));
    Point middle = Bodies.point(0.02);
    assertEquals(field.at(middle), solution.value(new Probe.At("out", middle)));
    assertEquals(field.surfaceMean("xMin"), solution.value(new Probe.SurfaceMean("out", "xMin")));
    assertEquals(
        solution.heatFlows().get("xMin"), solution.value(new Probe.HeatFlow("out", "xMin")));
    assertRefused(
        "probe 'out': is a liquid fraction; a steady state does not determine it, only its history"
            + " does",
        () -> solution.value(new Probe.LiquidFraction("out", "foam")));
  }
}
