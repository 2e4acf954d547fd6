package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import stenotherm.base.Face;
import stenotherm.base.Sinusoid;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.Probe;
import stenotherm.conduction.SteadySolver;
import stenotherm.grid.MeshControl;
import stenotherm.material.Material;

/**
 * Dynamic characteristics of layered walls for a period of a day (ISO 13786): out of complex
 * transfer matrices, and out of the time-domain solver after the start has died away.
 */
final class PeriodicWalls implements Study {
  private static final double INSIDE = 0.13;
  private static final double OUTSIDE = 0.04;
  private static final double OMEGA = 2 * Math.PI / Times.DAY;
  private static final double MEAN = 283.15;
  private static final double AMPLITUDE = 10;

  /** The slowest wall forgets its start by exp(-1) in less than 1.2 days. */
  private static final double SETTLED = 12 * Times.DAY;

  private static final String MATRICES =
      "ISO 13786, method of transfer matrices; evaluated with complex numbers (derived)";

  @Override
  public Heading heading() {
    return new Heading(
        "periodic-walls",
        "Layered walls under a daily swing: transmittance, admittances, decrement, time shift",
        MATRICES,
        Kind.VERIFICATION);
  }

  /** A wall from inside to outside. */
  private record Wall(String name, List<Bodies.Layer> layers) {}

  private static Wall wall(String name, Bodies.Layer... layers) {
    return new Wall(name, List.of(layers));
  }

  private static Bodies.Layer layer(double thickness, double k, double density, double heat) {
    return new Bodies.Layer(Material.of("layer", k, density, heat), thickness);
  }

  private static List<Wall> walls() {
    Material concrete = Material.of("concrete", 1.8, 2400, 1000);
    Bodies.Layer slab = new Bodies.Layer(concrete, 0.200);
    Material wool = Material.of("wool", 0.04, 30, 1400);
    Material coating = Material.of("coating", 1.0, 1200, 1500);
    Material foam = Material.of("foam", 0.036, 20, 1450);
    Material board = Material.of("board", 0.06, 170, 1400);
    Material brick = Material.of("brick", 0.77, 1700, 800);
    return List.of(
        wall("concrete", slab),
        wall(
            "insulated concrete",
            slab,
            new Bodies.Layer(wool, 0.100),
            new Bodies.Layer(coating, 0.005)),
        wall("foam and board", new Bodies.Layer(foam, 0.030), new Bodies.Layer(board, 0.004)),
        wall("brick", new Bodies.Layer(brick, 0.215)));
  }

  /** Temperature and heat flow outside from those inside, both as complex amplitudes. */
  private static Complex[][] matrix(Wall wall) {
    Complex[][] matrix = film(INSIDE);
    for (Bodies.Layer layer : wall.layers()) {
      Complex root = new Complex(0, OMEGA / layer.material().diffusivity()).sqrt();
      Complex depth = root.multiply(layer.thickness());
      Complex k = root.multiply(layer.material().conductivity());
      matrix =
          product(
              new Complex[][] {
                {depth.cosh(), depth.sinh().divide(k).negate()},
                {depth.sinh().multiply(k).negate(), depth.cosh()}
              },
              matrix);
    }
    return product(film(OUTSIDE), matrix);
  }

  private static Complex[][] film(double resistance) {
    return new Complex[][] {{Complex.ONE, new Complex(-resistance)}, {Complex.ZERO, Complex.ONE}};
  }

  private static Complex[][] product(Complex[][] a, Complex[][] b) {
    Complex[][] c = new Complex[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        c[i][j] = a[i][0].multiply(b[0][j]).add(a[i][1].multiply(b[1][j]));
      }
    }
    return c;
  }

  private static Boundary swinging(double resistance) {
    return new Boundary.Convection(
        TimeFunction.constant(1 / resistance),
        new Sinusoid(MEAN, new Sinusoid.Wave(AMPLITUDE, Times.DAY, 0)));
  }

  private static ConductionProblem.Builder problem(Wall wall, double width) {
    return ConductionProblem.builder(
            Bodies.slab(wall.layers().toArray(new Bodies.Layer[0])),
            MeshControl.graded(6 * width, width))
        .boundary(Face.X_MIN, Boundary.Convection.of(1 / INSIDE, MEAN))
        .boundary(Face.X_MAX, Boundary.Convection.of(1 / OUTSIDE, MEAN))
        .initial(MEAN);
  }

  /** Heat flow into a face per kelvin of a swing, over the last day. */
  private static Complex response(List<Double> flows, int first, int stride) {
    double inPhase = 0;
    double ahead = 0;
    int hours = 24;
    for (int hour = 0; hour < hours; hour++) {
      double angle = OMEGA * hour * Times.HOUR;
      double flow = flows.get(first + stride * hour);
      inPhase += 2.0 / hours * flow * Math.sin(angle);
      ahead += 2.0 / hours * flow * Math.cos(angle);
    }
    return new Complex(inPhase / AMPLITUDE, ahead / AMPLITUDE);
  }

  /** The names of what {@link #characteristics} gives, with units. */
  private static final List<String[]> NAMES =
      List.of(
          new String[] {"periodic transmittance", "W/(m2 K)"},
          new String[] {"time shift", "h"},
          new String[] {"decrement", "-"},
          new String[] {"inside admittance", "W/(m2 K)"},
          new String[] {"lead of the inside admittance", "h"},
          new String[] {"outside admittance", "W/(m2 K)"},
          new String[] {"lead of the outside admittance", "h"});

  /** From the heat flow out of the inside face and into both faces, per kelvin. */
  private static List<Double> characteristics(
      Complex through, Complex inside, Complex outside, double transmittance) {
    return List.of(
        through.abs(),
        hours(through),
        through.abs() / transmittance,
        inside.abs(),
        hours(inside),
        outside.abs(),
        hours(outside));
  }

  private static double hours(Complex amplitude) {
    return amplitude.getArgument() * 24 / (2 * Math.PI);
  }

  private static Ladder.Grid solve(Wall wall, double width, double stepTolerance) {
    double[] times = new double[24];
    for (int hour = 0; hour < times.length; hour++) {
      times[hour] = SETTLED + hour * Times.HOUR;
    }
    List<Probe> probes =
        List.of(new Probe.HeatFlow("in", "xMin"), new Probe.HeatFlow("out", "xMax"));
    Ladder.Grid outer =
        Bodies.history(
            problem(wall, width).boundary(Face.X_MAX, swinging(OUTSIDE)).build(),
            probes,
            times,
            stepTolerance);
    Ladder.Grid inner =
        Bodies.history(
            problem(wall, width).boundary(Face.X_MIN, swinging(INSIDE)).build(),
            probes,
            times,
            stepTolerance);
    double transmittance =
        Bodies.heatInto(
            SteadySolver.solve(
                problem(wall, width)
                    .boundary(Face.X_MIN, Boundary.Convection.of(1 / INSIDE, MEAN + 1))
                    .build()),
            "xMin");
    return new Ladder.Grid(
        characteristics(
            response(outer.values(), 0, 2).negate(),
            response(inner.values(), 0, 2),
            response(outer.values(), 1, 2),
            transmittance),
        outer.cells(),
        outer.steps() + inner.steps());
  }

  private static List<Double> exact(Wall wall) {
    Complex[][] z = matrix(wall);
    double resistance = INSIDE + OUTSIDE;
    for (Bodies.Layer layer : wall.layers()) {
      resistance += layer.thickness() / layer.material().conductivity();
    }
    return characteristics(
        z[0][1].reciprocal().negate(),
        z[0][0].divide(z[0][1]).negate(),
        z[1][1].divide(z[0][1]).negate(),
        1 / resistance);
  }

  @Override
  public Findings run(Depth depth) {
    List<Check> checks = new ArrayList<>();
    List<Ladder> ladders = new ArrayList<>();
    for (Wall wall : depth == Depth.FAST ? walls().subList(2, 3) : walls()) {
      Ladder ladder =
          Ladder.over(
              Ladder.three(depth == Depth.FAST ? 0.001 : 0.0005),
              1e-4,
              (width, tolerance) -> solve(wall, width, tolerance));
      ladders.add(ladder);
      List<Double> exact = exact(wall);
      for (int index = 0; index < exact.size(); index++) {
        String unit = NAMES.get(index)[1];
        // a phase of 0.001 is 0.0038 h
        boolean phase = unit.equals("h");
        double tolerance = phase ? 0.004 : 1e-3 * exact.get(index);
        checks.add(
            new Check(
                wall.name() + ": " + NAMES.get(index)[0],
                ladder.output(index, tolerance),
                new Check.Expected(
                    exact.get(index),
                    tolerance,
                    unit,
                    MATRICES,
                    phase
                        ? "an error of 0.1 % of the amplitude turns the phase by up to 0.004 h"
                        : "0.1 % of a heat flow's amplitude")));
      }
    }
    checks.add(penetration(ladders));
    return new Findings(checks, Ladder.together(ladders), List.of());
  }

  /** The depth at which a surface's swing has fallen to 1 / e, from the swing at two depths. */
  private static Check penetration(List<Ladder> ladders) {
    Bodies.Layer thick = layer(1.2, 1.8, 2400, 1000);
    double[] times = new double[24];
    for (int hour = 0; hour < times.length; hour++) {
      times[hour] = 30 * Times.DAY + hour * Times.HOUR;
    }
    List<Probe> probes =
        List.of(new Probe.At("near", Bodies.at(0.1)), new Probe.At("far", Bodies.at(0.3)));
    Ladder ladder =
        Ladder.over(
            Ladder.three(0.005),
            1e-4,
            (width, tolerance) -> {
              Ladder.Grid grid =
                  Bodies.history(
                      ConductionProblem.builder(Bodies.slab(thick), MeshControl.uniform(width))
                          .boundary(
                              Face.X_MIN,
                              new Boundary.PrescribedTemperature(
                                  new Sinusoid(MEAN, new Sinusoid.Wave(AMPLITUDE, Times.DAY, 0))))
                          .initial(MEAN)
                          .build(),
                      probes,
                      times,
                      tolerance);
              double near = response(grid.values(), 0, 2).abs();
              double far = response(grid.values(), 1, 2).abs();
              return new Ladder.Grid(
                  List.of(0.2 / Math.log(near / far)), grid.cells(), grid.steps());
            });
    ladders.add(ladder);
    double exact = Math.sqrt(thick.material().diffusivity() * Times.DAY / Math.PI);
    return new Check(
        "penetration depth of concrete",
        ladder.output(0, 1e-3 * exact),
        new Check.Expected(
            exact,
            1e-3 * exact,
            "m",
            "ISO 13786: sqrt(a T / pi), where the swing is 1 / e; other books call 4 sqrt(a /"
                + " omega), 2.83 times as deep, by the same name",
            "0.1 % of a swing"));
  }
}
