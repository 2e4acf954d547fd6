package stenotherm.validation.agreement;

import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import stenotherm.base.Range;

/**
 * Choices, drawn from a list of whole numbers. The lowest number, which also stands for those
 * beyond the list's end, makes the plainest choice: a shorter list of smaller numbers makes a
 * plainer thing, which is how a property shrinks what it finds wrong.
 *
 * <p>Internal. Not thread-safe.
 */
public final class Draws {
  /** The numbers are from 0 to below this. */
  public static final int LEVELS = 1000;

  private final Iterator<Integer> numbers;

  /**
   * Draws from numbers.
   *
   * @param numbers from 0 to below {@link #LEVELS}
   */
  public Draws(List<Integer> numbers) {
    this.numbers = numbers.iterator();
  }

  /**
   * Makes a list of random numbers.
   *
   * @param random where from
   * @param count how many
   * @return the numbers
   */
  public static List<Integer> numbers(Random random, int count) {
    return IntStream.range(0, count).mapToObj(n -> random.nextInt(LEVELS)).toList();
  }

  private int next() {
    return numbers.hasNext() ? numbers.next() : 0;
  }

  /** A number from a range; the lowest is the plainest. */
  double within(double low, double high) {
    return low + (high - low) * next() / LEVELS;
  }

  double within(Range range) {
    return within(range.low(), range.high());
  }

  /** Whole millimetres from a range [m], as things are made. */
  double millimetres(int low, int high) {
    return (low + next() * (high - low + 1) / LEVELS) / 1000.0;
  }

  /** A yes of some probability; no is plain. */
  boolean chance(double probability) {
    return next() >= LEVELS * (1 - probability);
  }

  /** One of several; the first is the plainest. */
  <T> T of(List<T> choices) {
    return choices.get(next() * choices.size() / LEVELS);
  }
}
