package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

class OddsTest {
  private static final int REPLICATES = 16;

  /**
   * R. G. Newcombe (1998), Two-sided confidence intervals for the single proportion: comparison of
   * seven methods, Stat. Med. 17, 857-872, table I, method 3 (read in tests of other programs).
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  void wilsonsIntervalIsThePublishedOne(int hits, int all, double low, double high) {
    Range interval = Odds.wilson(hits, all);
    assertEquals(low, interval.low(), 5e-5);
    assertEquals(high, interval.high(), 5e-5);
  }

  /** Values of every table of Student's distribution. */
  @ParameterizedTest
  @CsvSource({"1, 12.706", "15, 2.131", "30, 2.042", "1023, 1.962"})
  void studentsQuantileIsThatOfTables(int degreesOfFreedom, double quantile) {
    assertEquals(quantile, Odds.studentQuantile(degreesOfFreedom), 5e-4);
  }

  private static int[] equal(int hits) {
    int[] all = new int[REPLICATES];
    Arrays.fill(all, hits);
    return all;
  }

  /** Of 16 and 14 in turn: mean 15, standard deviation sqrt(16 / 15). */
  @Test
  void studentsIntervalIsThatOfTheReplicates() {
    int[] hits = new int[REPLICATES];
    Arrays.setAll(hits, replicate -> replicate % 2 == 0 ? 16 : 14);
    Range interval = Odds.student(hits, 20);
    double half = 2.13145 * Math.sqrt(16.0 / 15) / 4 / 20;
    assertEquals(0.75 - half, interval.low(), 1e-6);
    assertEquals(0.75 + half, interval.high(), 1e-6);
  }

  @Test
  void replicatesThatAgreeClaimNoCertainty() {
    Odds all = Odds.of(equal(32), 32);
    assertEquals(1, all.within());
    assertEquals(Odds.wilson(512, 512).low(), all.low(), 1e-15);
    assertEquals(1, all.high());
    assertTrue(all.low() < 0.993, "low " + all.low());
    Odds none = Odds.of(equal(0), 32);
    assertEquals(0, none.low());
    assertTrue(none.high() > 0.007, "high " + none.high());
    Odds half = Odds.of(equal(16), 32);
    assertEquals(Odds.wilson(256, 512), new Range(half.low(), half.high()));
  }

  @Test
  void replicatesThatDifferMuchWidenTheInterval() {
    int[] hits = new int[REPLICATES];
    Arrays.setAll(hits, replicate -> replicate % 2 == 0 ? 32 : 0);
    Odds odds = Odds.of(hits, 32);
    assertEquals(Odds.student(hits, 32), new Range(odds.low(), odds.high()));
    assertTrue(odds.high() - odds.low() > 3 * (Odds.wilson(256, 512).high() - 0.5), "not wider");
  }

  /** Each side is the wider one of the two by itself; ends stay within 0 and 1. */
  @Test
  void eachSideIsTheWiderOne() {
    int[] hits = equal(32);
    hits[3] = 10;
    Odds odds = Odds.of(hits, 32);
    Range student = Odds.student(hits, 32);
    Range wilson = Odds.wilson(490, 512);
    assertTrue(student.low() < wilson.low() && student.high() > 1, student + ", " + wilson);
    assertEquals(student.low(), odds.low());
    assertEquals(1, odds.high());
  }

  private interface Interval {
    Range of(int[] hits, int perReplicate);
  }

  private static Range joined(int[] hits, int perReplicate) {
    Odds odds = Odds.of(hits, perReplicate);
    return new Range(odds.low(), odds.high());
  }

  /** Share of 4000 experiments whose interval holds the truth. */
  private static double coverage(double share, DoubleUnaryOperator ofReplicate, Interval interval) {
    SplittableRandom random = new SplittableRandom(20261129);
    int experiments = 4000;
    int covered = 0;
    for (int experiment = 0; experiment < experiments; experiment++) {
      int[] hits = new int[REPLICATES];
      for (int replicate = 0; replicate < REPLICATES; replicate++) {
        double chance = ofReplicate.applyAsDouble(random.nextDouble());
        for (int journey = 0; journey < 32; journey++) {
          hits[replicate] += random.nextDouble() < chance ? 1 : 0;
        }
      }
      covered += interval.of(hits, 32).contains(share) ? 1 : 0;
    }
    return covered / (double) experiments;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.9, 0.95, 0.99, 0.999})
  void independentJourneysAreCoveredAsOftenAsClaimed(double share) {
    double covered = coverage(share, uniform -> share, OddsTest::joined);
    assertTrue(covered > 0.95, "covered " + covered);
  }

  /**
   * Replicates with chances of their own, 0.6 to 1: Wilson's interval alone would be too narrow.
   */
  @Test
  void replicatesWithAChanceOfTheirOwnAreCoveredAsOftenAsClaimed() {
    DoubleUnaryOperator chance = uniform -> 0.6 + 0.4 * uniform;
    double joined = coverage(0.8, chance, OddsTest::joined);
    double wilson =
        coverage(
            0.8, chance, (hits, each) -> Odds.wilson(Arrays.stream(hits).sum(), 32L * REPLICATES));
    assertTrue(joined > 0.94, "covered " + joined);
    assertTrue(wilson < 0.85, "covered by Wilson's alone " + wilson);
  }

  @Test
  void refusesCountsThatCannotBe() {
    assertThrows(InvalidInputException.class, () -> Odds.of(new int[15], 32));
    assertThrows(InvalidInputException.class, () -> Odds.of(new int[16], 0));
    assertThrows(InvalidInputException.class, () -> Odds.of(equal(33), 32));
    assertThrows(InvalidInputException.class, () -> Odds.of(equal(-1), 32));
    assertThrows(InvalidInputException.class, () -> new Odds(0.5, 0.6, 0.7));
    assertThrows(InvalidInputException.class, () -> new Odds(0.5, 0.4, 0.45));
    assertThrows(InvalidInputException.class, () -> new Odds(Double.NaN, 0, 1));
    assertThrows(InvalidInputException.class, () -> new Odds(0.5, -0.1, 1));
    assertThrows(InvalidInputException.class, () -> new Odds(0.5, 0, 1.1));
  }
}
