package stenotherm.study;

/**
 * How the animals of one run fared.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param cold how they came to the cold end of what they tolerate
 * @param hot how they came to its hot end
 * @param outside time until the planned opening during which an animal's running mean was outside
 *     its alarm band [s], the longest of all animals; between stored times that mean is taken as
 *     linear
 * @param airless when the air of an animal first was beyond an alarm level [s]; infinite if it
 *     never was
 * @param burnt when a place that an animal can reach first was hotter than it may touch [s];
 *     infinite if none ever was
 */
public record Fate(Approach cold, Approach hot, double outside, double airless, double burnt) {
  /**
   * How animals came to one end.
   *
   * @param margin smallest distance of a running mean to that end of its alarm band until the
   *     planned opening [K], negative if outside
   * @param breach when an animal first was beyond it, by its alarm band or critical limit [s];
   *     infinite if it never was
   */
  public record Approach(double margin, double breach) {}

  /**
   * Returns when an animal first left what it tolerates, lacked air or could burn itself.
   *
   * @return the time since sealing [s]; infinite if none ever did
   */
  public double breach() {
    return Math.min(Math.min(cold.breach, hot.breach), Math.min(airless, burnt));
  }
}
