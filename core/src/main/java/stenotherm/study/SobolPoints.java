package stenotherm.study;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import stenotherm.base.InvalidInputException;

/**
 * The first 65,536 of Sobol's points (direction numbers of Joe and Kuo 2008), scrambled anew for
 * each replicate: the mean of a function over the first 2^m points is an unbiased estimate of its
 * integral, and those of several replicates are independent.
 *
 * <p>The scrambling is nested uniform: each binary digit of a coordinate is flipped or not by
 * chance, anew for each row of higher digits. It leaves what makes the points even: each of the 2^m
 * intervals of length 2^-m holds one coordinate of the first 2^m points.
 *
 * <p>Sources: A. B. Owen (1995), Randomly permuted (t,m,s)-nets and (t,s)-sequences, in: Monte
 * Carlo and Quasi-Monte Carlo Methods in Scientific Computing, Lecture Notes in Statistics 106,
 * 299-317; S. Joe and F. Y. Kuo (2008), SIAM J. Sci. Comput. 30, 2635-2654; for the hash G. L.
 * Steele, D. Lea and C. H. Flood (2014), Fast splittable pseudorandom number generators, OOPSLA,
 * 453-472. All from memory.
 *
 * <p>Integers alone up to the last step, which is exact: the same bits on every machine. Immutable,
 * thus thread-safe.
 */
final class SobolPoints {
  static final int MOST_DIMENSIONS = 200;

  /** Binary digits that differ from zero before scrambling. */
  private static final int DIGITS = 16;

  /** Number of points. */
  static final int MOST_POINTS = 1 << DIGITS;

  /** Digits below them, all zero before scrambling. */
  private static final int MORE_DIGITS = 36;

  /** 2^64 over the golden ratio, odd: far apart arguments for the hash. */
  private static final long GOLDEN = 0x9e3779b97f4a7c15L;

  /** Dimension, digit of the Gray code: the direction number. */
  private final int[][] directions;

  /** What tells dimensions, replicates and seeds apart. */
  private final long[] keys;

  /**
   * Starts a replicate.
   *
   * @param dimensions number of coordinates, 1 to {@value #MOST_DIMENSIONS}
   * @param seed the caller's seed
   * @param replicate number of the replicate
   * @throws InvalidInputException if the number of coordinates is out of range
   */
  SobolPoints(int dimensions, long seed, int replicate) {
    this(directions(dimensions), seed, replicate);
  }

  private SobolPoints(int[][] directions, long seed, int replicate) {
    this.directions = directions;
    this.keys = new long[directions.length];
    long ofReplicate = hash(hash(seed, 1), replicate);
    for (int dimension = 0; dimension < keys.length; dimension++) {
      keys[dimension] = hash(ofReplicate, dimension);
    }
  }

  /** Another replicate of as many coordinates; the direction numbers are found once. */
  SobolPoints replicate(long seed, int replicate) {
    return new SobolPoints(directions, seed, replicate);
  }

  /**
   * The direction numbers. The Gray codes of 2^k and 2^(k-1) have two digits and one: the points
   * are the sums, without carry, of the direction numbers of these digits.
   */
  private static int[][] directions(int dimensions) {
    if (dimensions < 1 || dimensions > MOST_DIMENSIONS) {
      throw new InvalidInputException(
          "dimensions", dimensions + " must be within 1 to " + MOST_DIMENSIONS);
    }
    SobolSequenceGenerator generator = new SobolSequenceGenerator(dimensions);
    int[][] directions = new int[dimensions][DIGITS];
    for (int digit = 0; digit < DIGITS; digit++) {
      double[] point = generator.skipTo(1 << digit);
      for (int dimension = 0; dimension < dimensions; dimension++) {
        int sum = (int) (point[dimension] * MOST_POINTS);
        directions[dimension][digit] = digit == 0 ? sum : sum ^ directions[dimension][digit - 1];
      }
    }
    return directions;
  }

  int dimensions() {
    return keys.length;
  }

  /**
   * Computes a point.
   *
   * @param index number of the point, from 0; those below a power of two belong together
   * @param into its coordinates, each above 0 and below 1
   * @throws InvalidInputException if there is no such point
   */
  void point(int index, double[] into) {
    if (index < 0 || index >= MOST_POINTS) {
      throw new InvalidInputException(
          "index of a point", index + " must be within 0 to " + (MOST_POINTS - 1));
    }
    for (int dimension = 0; dimension < keys.length; dimension++) {
      // in the middle of the interval that 52 digits tell; 53 digits are exact
      into[dimension] = (scrambled(digits(index, dimension), keys[dimension]) + 0.5) * 0x1p-52;
    }
  }

  /** The digits of a coordinate before scrambling, as an integer: the coordinate times 2^16. */
  int digits(int index, int dimension) {
    int sum = 0;
    int gray = index ^ (index >>> 1);
    for (int digit = 0; gray != 0; digit++, gray >>>= 1) {
      if ((gray & 1) != 0) {
        sum ^= directions[dimension][digit];
      }
    }
    return sum;
  }

  /**
   * Flips digits. What is flipped depends on the node of the binary tree to which the higher digits
   * lead; nodes are numbered level by level, the root is 1. Points differ in their first 16 digits,
   * so that all digits below are independent between points and come from a single hash.
   */
  private static long scrambled(int digits, long key) {
    long node = 1;
    long scrambled = 0;
    for (int place = DIGITS - 1; place >= 0; place--) {
      int digit = (digits >>> place) & 1;
      long flip = hash(key, node) >>> (Long.SIZE - 1);
      scrambled = 2 * scrambled + (digit ^ flip);
      node = 2 * node + digit;
    }
    return (scrambled << MORE_DIGITS) + (hash(key, node) >>> (Long.SIZE - MORE_DIGITS));
  }

  /** A number of the SplitMix64 stream that starts at a key: one-to-one in the key. */
  private static long hash(long key, long number) {
    long mixed = key + number * GOLDEN;
    mixed = (mixed ^ (mixed >>> 30)) * 0xbf58476d1ce4e5b9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
    return mixed ^ (mixed >>> 31);
  }
}
