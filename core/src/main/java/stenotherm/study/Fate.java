package stenotherm.study;

/**
 * How the animals of one run fared.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param coldMargin smallest distance of a running mean to the cold end of its alarm band until the
 *     planned opening [K], negative if outside
 * @param hotMargin the same at the hot end
 * @param coldBreach when an animal first was too cold, by its alarm band or critical limit [s];
 *     infinite if it never was
 * @param hotBreach when one first was too hot
 * @param outside time until the planned opening during which an animal was outside its alarm band
 *     [s], the longest of all animals
 */
public record Fate(
    double coldMargin, double hotMargin, double coldBreach, double hotBreach, double outside) {
  /**
   * Returns when an animal first left what it tolerates.
   *
   * @return the time since sealing [s]; infinite if none ever did
   */
  public double breach() {
    return Math.min(coldBreach, hotBreach);
  }
}
