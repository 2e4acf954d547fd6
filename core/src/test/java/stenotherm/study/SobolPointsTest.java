package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.InvalidInputException;

class SobolPointsTest {
  private static final long SEED = 20261129;

  private static double[] point(SobolPoints points, int index) {
    double[] point = new double[points.dimensions()];
    points.point(index, point);
    return point;
  }

  /**
   * S. Joe and F. Y. Kuo, the list printed beside their direction numbers (read in copies of it).
   */
  @Test
  void unscrambledPointsAreThePublishedOnes() {
    double[][] published = {
      {0, 0, 0},
      {0.5, 0.5, 0.5},
      {0.75, 0.25, 0.25},
      {0.25, 0.75, 0.75},
      {0.375, 0.375, 0.625},
      {0.875, 0.875, 0.125},
      {0.625, 0.125, 0.875},
      {0.125, 0.625, 0.375},
      {0.1875, 0.3125, 0.9375},
      {0.6875, 0.8125, 0.4375}
    };
    SobolPoints points = new SobolPoints(3, SEED, 0);
    for (int index = 0; index < published.length; index++) {
      for (int dimension = 0; dimension < 3; dimension++) {
        assertEquals(published[index][dimension], points.digits(index, dimension) * 0x1p-16);
      }
    }
  }

  @Test
  void anyPointIsReachedAsByTheStandardOrder() {
    SobolPoints points = new SobolPoints(SobolPoints.MOST_DIMENSIONS, SEED, 0);
    SobolSequenceGenerator standard = new SobolSequenceGenerator(SobolPoints.MOST_DIMENSIONS);
    for (int index = 0; index < 5000; index++) {
      double[] expected = standard.nextVector();
      for (int dimension = 0; dimension < expected.length; dimension++) {
        assertEquals(expected[dimension], points.digits(index, dimension) * 0x1p-16);
      }
    }
    double[] last = standard.skipTo(SobolPoints.MOST_POINTS - 1);
    for (int dimension = 0; dimension < last.length; dimension++) {
      assertEquals(
          last[dimension], points.digits(SobolPoints.MOST_POINTS - 1, dimension) * 0x1p-16);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 5, 9})
  void eachIntervalHoldsOneCoordinate(int power) {
    int count = 1 << power;
    for (int replicate = 0; replicate < 4; replicate++) {
      SobolPoints points = new SobolPoints(SobolPoints.MOST_DIMENSIONS, SEED, replicate);
      boolean[][] held = new boolean[SobolPoints.MOST_DIMENSIONS][count];
      for (int index = 0; index < count; index++) {
        double[] point = point(points, index);
        for (int dimension = 0; dimension < point.length; dimension++) {
          int interval = (int) (point[dimension] * count);
          assertTrue(!held[dimension][interval], "two in one interval");
          held[dimension][interval] = true;
        }
      }
    }
  }

  /** All rectangles of area 2^-m with sides that are powers of two. */
  @ParameterizedTest
  @ValueSource(ints = {2, 5, 10})
  void eachRectangleOfTheFirstTwoDimensionsHoldsOnePoint(int power) {
    int count = 1 << power;
    for (int replicate = 0; replicate < 4; replicate++) {
      SobolPoints points = new SobolPoints(2, SEED, replicate);
      for (int split = 0; split <= power; split++) {
        int columns = 1 << split;
        int rows = count / columns;
        boolean[] held = new boolean[count];
        for (int index = 0; index < count; index++) {
          double[] point = point(points, index);
          int rectangle = (int) (point[0] * columns) * rows + (int) (point[1] * rows);
          assertTrue(!held[rectangle], "two in one rectangle");
          held[rectangle] = true;
        }
      }
    }
  }

  /**
   * What tells it from other scramblings: equal higher digits stay equal, the first other differs.
   */
  @Test
  void digitsAreFlippedByTheirHigherDigits() {
    SobolPoints points = new SobolPoints(5, SEED, 3);
    for (int index = 0; index < 300; index++) {
      double[] one = point(points, index);
      double[] other = point(points, index + 1000);
      for (int dimension = 0; dimension < 5; dimension++) {
        int apart = points.digits(index, dimension) ^ points.digits(index + 1000, dimension);
        int scrambledApart =
            (int) (one[dimension] * SobolPoints.MOST_POINTS)
                ^ (int) (other[dimension] * SobolPoints.MOST_POINTS);
        assertEquals(Integer.highestOneBit(apart), Integer.highestOneBit(scrambledApart));
      }
    }
  }

  /** The flips of one level are independent: the mean over nodes of a flip is a half. */
  @Test
  void digitsAreFlippedAnewForEachRowOfHigherDigits() {
    SobolPoints points = new SobolPoints(3, SEED, 0);
    for (int dimension = 0; dimension < 3; dimension++) {
      int flipped = 0;
      int count = 1 << 12;
      for (int index = 0; index < count; index++) {
        int before = points.digits(index, dimension);
        int after = (int) (point(points, index)[dimension] * SobolPoints.MOST_POINTS);
        flipped += ((before ^ after) >>> 4) & 1;
      }
      // one bit for each point, each at a node of its own: a standard deviation is 32
      assertEquals(count / 2.0, flipped, 5 * 32);
    }
  }

  @Test
  void seedsReplicatesAndDimensionsDiffer() {
    double[] one = point(new SobolPoints(2, SEED, 0), 0);
    assertNotEquals(one[0], one[1]);
    assertNotEquals(one[0], point(new SobolPoints(2, SEED, 1), 0)[0]);
    assertNotEquals(one[0], point(new SobolPoints(2, SEED + 1, 0), 0)[0]);
  }

  /** Integers and one exact step. Values of another program, from the recurrence of Joe and Kuo. */
  @Test
  void bitsAreTheSameEverywhere() {
    SobolPoints points = new SobolPoints(3, SEED, 7);
    assertArrayEquals(
        new double[] {0.01751461087024697, 0.6953502645573767, 0.05623665592252147},
        point(points, 12345));
  }

  @Test
  void aPointDoesNotDependOnItsDimensionsOrOnOtherPoints() {
    SobolPoints few = new SobolPoints(3, SEED, 2);
    SobolPoints many = new SobolPoints(40, SEED, 2);
    double[] first = point(few, 77);
    point(few, 5);
    assertArrayEquals(first, point(few, 77));
    assertArrayEquals(first, Arrays.copyOf(point(many, 77), 3));
  }

  @Test
  void coordinatesAreInside() {
    double least = 1;
    double most = 0;
    for (int replicate = 0; replicate < 4; replicate++) {
      SobolPoints points = new SobolPoints(1, SEED, replicate);
      for (int index = 0; index < SobolPoints.MOST_POINTS; index++) {
        double at = point(points, index)[0];
        least = Math.min(least, at);
        most = Math.max(most, at);
      }
    }
    assertTrue(least > 0 && least < 1e-5, "least " + least);
    assertTrue(most < 1 && most > 1 - 1e-5, "most " + most);
  }

  /** Mean of exp(x + y + z) over the cube is (e - 1)^3. */
  private static double error(int replicate, int count) {
    SobolPoints points = new SobolPoints(3, SEED, replicate);
    double sum = 0;
    for (int index = 0; index < count; index++) {
      sum += Math.exp(Arrays.stream(point(points, index)).sum());
    }
    return sum / count - Math.pow(Math.E - 1, 3);
  }

  @Test
  void replicatesAreUnbiased() {
    // eight points only, so that the replicates' spread is large beside round-off
    int replicates = 400;
    double[] errors = IntStream.range(0, replicates).mapToDouble(each -> error(each, 8)).toArray();
    double mean = Arrays.stream(errors).average().orElseThrow();
    double square = Arrays.stream(errors).map(each -> each * each).average().orElseThrow();
    assertTrue(Math.abs(mean) < 3 * Math.sqrt(square / replicates), "mean error " + mean);
  }

  private static double rootMeanSquare(int count) {
    return Math.sqrt(
        IntStream.range(0, 32)
            .mapToDouble(replicate -> Math.pow(error(replicate, count), 2))
            .average()
            .orElseThrow());
  }

  /**
   * A. B. Owen (1997), Scrambled net variance for integrals of smooth functions, Ann. Stat. 25,
   * 1541-1562 (from memory): N^-3/2, times powers of log N.
   */
  @Test
  void theErrorFallsFasterThanTheNumberOfPointsGrows() {
    double order = Math.log(rootMeanSquare(16) / rootMeanSquare(4096)) / Math.log(256);
    assertTrue(order > 1.2, "order " + order);
  }

  @Test
  void refusesWhatIsOutOfRange() {
    assertThrows(InvalidInputException.class, () -> new SobolPoints(0, SEED, 0));
    assertThrows(InvalidInputException.class, () -> new SobolPoints(201, SEED, 0));
    SobolPoints points = new SobolPoints(1, SEED, 0);
    assertThrows(InvalidInputException.class, () -> points.point(-1, new double[1]));
    assertThrows(
        InvalidInputException.class, () -> points.point(SobolPoints.MOST_POINTS, new double[1]));
  }
}
