package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.InvalidInputException;

class QuadraticResponseTest {
  private static final long SEED = 20261129;
  private static final List<String> NAMES = List.of("x", "y", "z");

  /** 5 + 2 x - y + 0.5 x² + 3 y z of scores. */
  private static double quadratic(double[] point) {
    double x = NormalScores.of(point[0]);
    double y = NormalScores.of(point[1]);
    double z = NormalScores.of(point[2]);
    return 5 + 2 * x - y + 0.5 * x * x + 3 * y * z;
  }

  /** More samples than any test adds. */
  private static final long MOST = 1 << 20;

  /** No quadratic function. */
  private static double wavy(double[] point) {
    return Math.sin(5 * point[0]) + point[1] * Math.exp(point[2]);
  }

  private static QuadraticResponse sampled(
      int quantities, int replicate, int points, ToDoubleFunction<double[]> function) {
    QuadraticResponse response = new QuadraticResponse(quantities, 1, MOST);
    SobolPoints sobol = new SobolPoints(quantities, SEED, replicate);
    double[] point = new double[quantities];
    for (int index = 0; index < points; index++) {
      sobol.point(index, point);
      response.add(point, function.applyAsDouble(point));
    }
    return response;
  }

  private static QuadraticResponse joined(
      int quantities, int replicates, int points, ToDoubleFunction<double[]> function) {
    QuadraticResponse all = new QuadraticResponse(quantities, 1, MOST);
    IntStream.range(0, replicates)
        .forEach(replicate -> all.addAll(sampled(quantities, replicate, points, function)));
    return all;
  }

  @Test
  void twoValuesAreFittedAsEachAlone() {
    QuadraticResponse both = new QuadraticResponse(3, 2, MOST);
    SobolPoints sobol = new SobolPoints(3, SEED, 0);
    double[] point = new double[3];
    for (int index = 0; index < 64; index++) {
      sobol.point(index, point);
      both.add(point, quadratic(point), wavy(point));
    }
    double[] at = {0.2, 0.7, 0.4};
    QuadraticFit one = sampled(3, 0, 64, QuadraticResponseTest::quadratic).fit(0);
    QuadraticFit other = sampled(3, 0, 64, QuadraticResponseTest::wavy).fit(0);
    assertEquals(one.at(at), both.fit(0).at(at));
    assertEquals(other.at(at), both.fit(1).at(at));
    assertEquals(other.unexplained(), both.fit(1).unexplained());
  }

  @Test
  void aQuadraticFunctionIsRecovered() {
    QuadraticFit fit = joined(3, 4, 16, QuadraticResponseTest::quadratic).fit(0);
    assertTrue(fit.isCrossed());
    assertEquals(0, fit.unexplained(), 1e-12);
    double[] point = {0.01, 0.6, 0.97};
    assertEquals(quadratic(point), fit.at(point), 1e-10);
  }

  /** Variances of 2 x, - y, 0.5 x² and 3 y z: 4, 1, 0.5, 9. */
  @Test
  void aQuadraticFunctionHasItsExactShares() {
    List<Share> shares = joined(3, 4, 16, QuadraticResponseTest::quadratic).fit(0).shares(NAMES);
    double[] first = {4.5 / 14.5, 1 / 14.5, 0};
    double[] total = {4.5 / 14.5, 10 / 14.5, 9 / 14.5};
    for (int index = 0; index < 3; index++) {
      assertEquals(NAMES.get(index), shares.get(index).of());
      assertEquals(first[index], shares.get(index).firstOrder(), 1e-12);
      assertEquals(total[index], shares.get(index).total(), 1e-12);
    }
  }

  @Test
  void itsSharesAreThoseOfPickFreeze() {
    QuadraticFit fit = joined(3, 4, 16, QuadraticResponseTest::quadratic).fit(0);
    List<Share> exact = fit.shares(NAMES);
    List<Share> estimated = Shares.of(NAMES, fit::at, 16, 4096, SEED);
    for (int index = 0; index < 3; index++) {
      assertEquals(exact.get(index).firstOrder(), estimated.get(index).firstOrder(), 0.005);
      assertEquals(exact.get(index).total(), estimated.get(index).total(), 0.005);
    }
  }

  /** Ten coefficients with products, seven without. */
  @Test
  void productsAreLeftOutWithFewerThanThreeSamplesForEachCoefficient() {
    assertFalse(sampled(3, 0, 29, QuadraticResponseTest::quadratic).fit(0).isCrossed());
    assertTrue(sampled(3, 0, 30, QuadraticResponseTest::quadratic).fit(0).isCrossed());
  }

  /** Nine of 14.5 parts of the variance come from the product that is left out. */
  @Test
  void whatIsLeftOutIsTold() {
    QuadraticFit fit = joined(3, 1, 29, QuadraticResponseTest::quadratic).fit(0);
    assertEquals(9 / 14.5, fit.unexplained(), 0.25);
    assertEquals(1, fit.shares(NAMES).stream().mapToDouble(Share::firstOrder).sum(), 1e-12);
  }

  /** Noise of the same variance as the function: half is unexplained, however few samples. */
  @Test
  void whatIsUnexplainedIsAdjustedForTheNumberOfCoefficients() {
    SplittableRandom random = new SplittableRandom(SEED);
    double sum = 0;
    int fits = 200;
    for (int each = 0; each < fits; each++) {
      sum +=
          sampled(
                  3,
                  each,
                  32,
                  point -> NormalScores.of(point[0]) + NormalScores.of(random.nextDouble(1e-9, 1)))
              .fit(0)
              .unexplained();
    }
    // unadjusted it would be 0.5 times 22 / 31
    assertEquals(0.5, sum / fits, 0.03);
  }

  @Test
  void pureNoiseIsUnexplained() {
    SplittableRandom random = new SplittableRandom(SEED);
    QuadraticFit fit = joined(3, 16, 64, point -> random.nextDouble()).fit(0);
    assertEquals(1, fit.unexplained(), 0.02);
  }

  /** Sums differ in their last digits only if the order of the replicates does. */
  @Test
  void joiningReplicatesIsAsAllAtOnce() {
    double[] point = {0.2, 0.3, 0.9};
    QuadraticResponse all = joined(3, 16, 64, QuadraticResponseTest::wavy);
    QuadraticResponse again = joined(3, 16, 64, QuadraticResponseTest::wavy);
    assertEquals(all.fit(0).at(point), again.fit(0).at(point), 0);
    QuadraticResponse atOnce = new QuadraticResponse(3, 1, MOST);
    double[] at = new double[3];
    for (int replicate = 0; replicate < 16; replicate++) {
      SobolPoints sobol = new SobolPoints(3, SEED, replicate);
      for (int index = 0; index < 64; index++) {
        sobol.point(index, at);
        atOnce.add(at, wavy(at));
      }
    }
    assertEquals(atOnce.fit(0).at(point), all.fit(0).at(point), 1e-12);
    assertEquals(atOnce.fit(0).unexplained(), all.fit(0).unexplained(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 1.7, 8.3, 293.15, 1e6 / 3})
  void aConstantHasNoSharesAndNothingUnexplained(double constant) {
    QuadraticFit fit = joined(3, 16, 64, point -> constant).fit(0);
    assertEquals(0, fit.unexplained());
    assertEquals(constant, fit.at(new double[] {0.1, 0.2, 0.3}), 1e-12 * constant);
    assertTrue(fit.shares(NAMES).stream().allMatch(share -> share.total() == 0));
  }

  @Test
  void fortyQuantitiesAreFitted() {
    int most = QuadraticResponse.MOST_QUANTITIES;
    ToDoubleFunction<double[]> function =
        point -> {
          double sum = 0;
          for (int index = 0; index < most; index++) {
            sum += NormalScores.of(point[index]);
          }
          return sum + 2 * NormalScores.of(point[0]) * NormalScores.of(point[most - 1]);
        };
    QuadraticFit fit = joined(most, 3, 1024, function).fit(0);
    assertTrue(fit.isCrossed());
    assertEquals(0, fit.unexplained(), 1e-12);
    List<String> names = IntStream.range(0, most).mapToObj(index -> "x" + index).toList();
    List<Share> shares = fit.shares(names);
    assertEquals(1 / 44.0, shares.get(1).total(), 1e-12);
    assertEquals(5 / 44.0, shares.get(most - 1).total(), 1e-12);
  }

  @Test
  void refusesWhatCannotBeFitted() {
    assertThrows(InvalidInputException.class, () -> new QuadraticResponse(0, 1, MOST));
    assertThrows(InvalidInputException.class, () -> new QuadraticResponse(41, 1, MOST));
    QuadraticResponse few = sampled(3, 0, 7, QuadraticResponseTest::quadratic);
    assertThrows(InvalidInputException.class, () -> few.fit(0));
    assertThrows(InvalidInputException.class, () -> few.addAll(new QuadraticResponse(2, 1, MOST)));
    double[] inside = {0.5, 0.5, 0.5};
    assertThrows(InvalidInputException.class, () -> few.add(inside, Double.NaN));
    assertThrows(InvalidInputException.class, () -> few.add(new double[] {0, 0.5, 0.5}, 1));
    assertThrows(InvalidInputException.class, () -> few.add(new double[] {0.5, 0.5}, 1));
    QuadraticFit fit = joined(3, 4, 16, QuadraticResponseTest::quadratic).fit(0);
    assertThrows(InvalidInputException.class, () -> fit.at(new double[4]));
    QuadraticResponse same = new QuadraticResponse(3, 1, MOST);
    IntStream.range(0, 50).forEach(sample -> same.add(inside, 1));
    assertThrows(IllegalStateException.class, () -> same.fit(0));
  }
}
