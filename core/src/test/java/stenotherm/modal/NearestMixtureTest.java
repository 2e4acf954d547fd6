package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class NearestMixtureTest {
  private static NearestMixture of(double[][] points, double[] target) {
    return new NearestMixture(
        points.length,
        (a, b) -> {
          double sum = 0;
          for (int i = 0; i < target.length; i++) {
            sum += (points[a][i] - target[i]) * (points[b][i] - target[i]);
          }
          return sum;
        },
        0);
  }

  private static double[] mixed(NearestMixture mixture, double[][] points) {
    double[] mixed = new double[points[0].length];
    for (int m = 0; m < mixture.count(); m++) {
      for (int i = 0; i < mixed.length; i++) {
        mixed[i] += mixture.part(m) * points[mixture.point(m)][i];
      }
    }
    return mixed;
  }

  /** Beside an edge, beyond a corner, inside. */
  @Test
  void ofATriangle() {
    double[][] triangle = {{0, 0}, {4, 0}, {0, 4}};
    double[] onEdge = mixed(of(triangle, new double[] {1, -2}), triangle);
    assertEquals(1, onEdge[0], 1e-9);
    assertEquals(0, onEdge[1], 1e-9);
    NearestMixture corner = of(triangle, new double[] {6, -1});
    assertEquals(1, corner.count());
    assertEquals(5, corner.square(), 1e-9);
    double[] inside = mixed(of(triangle, new double[] {1, 2}), triangle);
    assertEquals(1, inside[0], 1e-9);
    assertEquals(2, inside[1], 1e-9);
  }

  /** No point lies nearer to the target, seen from the mixture: what makes it the nearest one. */
  @Property(seed = "4301", tries = 50)
  void nothingIsNearer(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
    Random random = new Random(seed);
    int dimensions = 2 + random.nextInt(8);
    double[][] points = new double[2 + random.nextInt(40)][dimensions];
    for (double[] point : points) {
      for (int i = 0; i < dimensions; i++) {
        point[i] = random.nextGaussian();
      }
    }
    double[] target = new double[dimensions];
    for (int i = 0; i < dimensions; i++) {
      target[i] = 0.7 * random.nextGaussian();
    }
    NearestMixture mixture = of(points, target);
    double sum = 0;
    for (int m = 0; m < mixture.count(); m++) {
      assertTrue(mixture.part(m) >= 0);
      sum += mixture.part(m);
    }
    assertEquals(1, sum, 1e-12);
    double[] mixed = mixed(mixture, points);
    double square = 0;
    for (int i = 0; i < dimensions; i++) {
      square += (mixed[i] - target[i]) * (mixed[i] - target[i]);
    }
    for (double[] point : points) {
      double along = 0;
      for (int i = 0; i < dimensions; i++) {
        along += (mixed[i] - target[i]) * (point[i] - target[i]);
      }
      // the part of the squared distance that it leaves; where the target is a mixture itself, what
      // keeps its equations from being singular
      assertTrue(along >= square * (1 - 2e-5) - 1e-9, () -> "another point would bring it nearer");
    }
  }
}
