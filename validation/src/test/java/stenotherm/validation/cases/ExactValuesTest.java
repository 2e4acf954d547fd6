package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import stenotherm.conduction.Probe;
import stenotherm.grid.Point;

/**
 * The reference values of the verification files against the closed forms that the files name. A
 * value in a file has at least seven digits, so that its rounding is below {@link #ROUNDING} of the
 * value.
 */
class ExactValuesTest {
  private static final double ROUNDING = 1e-6;

  private static CaseFile file(String name) throws IOException {
    for (CaseSource source : CaseSources.bundled()) {
      if (source.name().equals("verification/" + name + ".yaml")) {
        return CaseReader.read(source.reader().read());
      }
    }
    throw new IllegalArgumentException(name);
  }

  /** What a closed form gives at a point and a time; the time is 0 in a steady case. */
  private interface Exact {
    double at(Point point, double time);
  }

  /** Compares every value at a point; returns the other values by probe and time. */
  private static Map<String, Double> checkPoints(String name, Exact exact) throws IOException {
    CaseFile file = file(name);
    Map<String, Double> others = new HashMap<>();
    for (Reference reference : file.references()) {
      double time = reference.time().orElse(0);
      double value = reference.expected().value();
      if (file.probe(reference.probe()) instanceof Probe.At at) {
        assertEquals(
            exact.at(at.point(), time), value, ROUNDING * Math.abs(value), reference::toString);
      } else {
        others.put(reference.probe() + " " + time, value);
      }
    }
    return others;
  }

  private static void check(double exact, Map<String, Double> values, String key) {
    double value = values.getOrDefault(key, Double.NaN);
    assertEquals(exact, value, ROUNDING * Math.abs(exact), key);
  }

  @Test
  void halfColumn() throws IOException {
    checkPoints(
        "half-column",
        (point, time) -> {
          double sum = 0;
          for (int n = 1; n < 400; n += 2) {
            double a = n * Math.PI / 2;
            double y = point.y();
            // sinh(a y) / sinh(2 a), without overflow
            double ratio = Math.exp(a * (y - 2)) * -Math.expm1(-2 * a * y) / -Math.expm1(-4 * a);
            sum += Math.sin(a * point.x()) * ratio / n;
          }
          return 80 / Math.PI * sum;
        });
  }

  @Test
  void halfSpaces() throws IOException {
    double diffusivity = 1.4 / (2300 * 880.0);
    double length = Math.sqrt(diffusivity * 3600);
    DoubleUnaryOperator eta = x -> x / (2 * length);
    Map<String, Double> step =
        checkPoints(
            "half-space-step",
            (point, time) -> 293.15 - 20 * Erf.erfc(eta.applyAsDouble(point.x())));
    check(1.4 * 20 / (Math.sqrt(Math.PI) * length), step, "out 3600.0");
    checkPoints(
        "half-space-flux",
        (point, time) -> {
          double e = eta.applyAsDouble(point.x());
          return 293.15
              + 2 * 300 * length / 1.4 * (Math.exp(-e * e) / Math.sqrt(Math.PI) - e * Erf.erfc(e));
        });
    DoubleUnaryOperator film =
        x -> {
          double e = eta.applyAsDouble(x);
          double b = 25 * length / 1.4;
          return -20 * (Erf.erfc(e) - Math.exp(2 * e * b + b * b) * Erf.erfc(e + b));
        };
    Map<String, Double> filmed =
        checkPoints("half-space-film", (point, time) -> 293.15 + film.applyAsDouble(point.x()));
    check(25 * (20 + film.applyAsDouble(0)), filmed, "out 3600.0");
  }

  @Test
  void slab() throws IOException {
    Map<String, Double> others =
        checkPoints(
            "slab-cooling",
            (point, time) -> 283.15 + 20 * Series.slab(1, 5e-5 * time, point.x() / 0.1));
    for (double time : new double[] {2000, 10000, 20000}) {
      check(283.15 + 20 * Series.slabMean(1, 5e-5 * time), others, "mean " + time);
      check(5 * 20 * Series.slab(1, 5e-5 * time, 1), others, "out " + time);
    }
  }

  @Test
  void brick() throws IOException {
    double[] half = {0.1, 0.08, 0.05};
    Map<String, Double> others =
        checkPoints(
            "brick-cooling",
            (point, time) -> {
              double[] at = {point.x(), point.y(), point.z()};
              double product = 1;
              for (int axis = 0; axis < 3; axis++) {
                double fourier = 2.5e-7 * time / (half[axis] * half[axis]);
                product *= Series.slab(20 * half[axis], fourier, at[axis] / half[axis]);
              }
              return 283.15 + 10 * product;
            });
    for (double time : new double[] {1800, 3600, 7200, 14400}) {
      double product = 1;
      for (double extent : half) {
        product *= Series.slabMean(20 * extent, 2.5e-7 * time / (extent * extent));
      }
      check(283.15 + 10 * product, others, "mean " + time);
    }
  }

  @Test
  void plateWithConvection() throws IOException {
    double ratio = 750.0 / 52;
    Map<String, Double> others =
        checkPoints(
            "plate-with-convection",
            (point, time) -> {
              double sum = 0;
              for (int n = 0; n < 2000; n++) {
                double root = Series.root(0.6 * ratio, n);
                double l = root / 0.6;
                double decay =
                    (Math.exp(-l * point.y()) * (l + ratio)
                            + Math.exp(-l * (2 - point.y())) * (l - ratio))
                        / (l + ratio + (l - ratio) * Math.exp(-2 * l));
                sum += Series.weight(root) * Math.cos(l * point.x()) * decay;
              }
              return 100 * sum;
            });
    double flow = 0;
    for (int n = 0; n < 20_000; n++) {
      double root = Series.root(0.6 * ratio, n);
      double l = root / 0.6;
      double back = (l - ratio) * Math.exp(-2 * l);
      double slope = l * (l + ratio - back) / (l + ratio + back);
      flow += 100 * 52 * Series.weight(root) * slope * Math.sin(root) / l;
    }
    check(-flow, others, "into the held edge 0.0");
  }

  @Test
  void oscillatingSurface() throws IOException {
    double diffusivity = 35 / (7200 * 440.5);
    double omega = Math.PI / 40;
    checkPoints(
        "oscillating-surface",
        (point, time) -> {
          double value = 100 * Math.sin(omega * time) * point.x() / 0.1;
          for (int m = 1; m < 4000; m++) {
            double wave = m * Math.PI / 0.1;
            double rate = diffusivity * wave * wave;
            double integral =
                100
                    * omega
                    * (rate * Math.cos(omega * time)
                        + omega * Math.sin(omega * time)
                        - rate * Math.exp(-rate * time))
                    / (rate * rate + omega * omega);
            double c = (m % 2 == 1 ? 2 : -2) / (m * Math.PI);
            value -= c * integral * Math.sin(wave * point.x());
          }
          return value;
        });
  }

  @Test
  void heatedSlab() throws IOException {
    double source = 120 / 0.06;
    double k = 0.4;
    double thickness = 0.06;
    // T = -q x^2 / (2 k) + slope x + start, with the two films as conditions
    double slope =
        (source * thickness
                + 12 * source * thickness * thickness / (2 * k)
                - 12 * (278.15 - 283.15))
            / (k + 12 * thickness + 12 * k / 4);
    double start = 278.15 + k * slope / 4;
    DoubleUnaryOperator t = x -> -source * x * x / (2 * k) + slope * x + start;
    Map<String, Double> others =
        checkPoints("heated-slab", (point, time) -> t.applyAsDouble(point.x()));
    check(t.applyAsDouble(k * slope / source), others, "hottest 0.0");
    check(t.applyAsDouble(thickness), others, "coldest 0.0");
    check(
        -source * thickness * thickness / (6 * k) + slope * thickness / 2 + start,
        others,
        "mean 0.0");
    check(4 * (t.applyAsDouble(0) - 278.15), others, "out at xMin 0.0");
    check(12 * (t.applyAsDouble(thickness) - 283.15), others, "out at xMax 0.0");
  }

  @Test
  void layeredWall() throws IOException {
    double flux = 30 / 1.18;
    Map<String, Double> others =
        checkPoints(
            "layered-wall",
            (point, time) -> {
              double x = point.x();
              double resistance =
                  0.13
                      + Math.min(x, 0.030) / 0.036
                      + Math.max(0, Math.min(x, 0.035) - 0.030) * 22
                      + Math.max(0, x - 0.035) / 0.06;
              return 30 - flux * resistance;
            });
    check(flux, others, "out 0.0");
    check(30 - flux * (0.13 + 0.030 / 0.036), others, "coldest foam 0.0");
    check(30 - flux * (0.13 + 0.015 / 0.036), others, "mean of foam 0.0");
  }

  @Test
  void twoLayerSlab() throws IOException {
    TwoLayers layers = new TwoLayers();
    Map<String, Double> others =
        checkPoints("two-layer-slab", (point, time) -> 273.15 + 20 * layers.at(point.x(), time));
    for (double time : new double[] {600, 3600, 14400}) {
      check(8 * 20 * layers.at(0.05, time), others, "out " + time);
      check(273.15 + 20 * layers.meanOfCore(time), others, "mean of core " + time);
      check(273.15 + 20 * layers.meanOfFoam(time), others, "mean of foam " + time);
    }
  }
}
