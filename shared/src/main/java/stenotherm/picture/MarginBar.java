package stenotherm.picture;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * How far one packing stays from the edge of the alarm band, as a {@link MarginChart} shows it.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param name the packing's name
 * @param nominal the margin with the values as stated; negative if the band is left [K]
 * @param range the margin at the ends of the uncertain values' ranges [K]
 * @param note what limits the packing, for example {@code "cold side at 04:30"}; may be empty
 */
public record MarginBar(String name, double nominal, Range range, String note) {
  /**
   * Checks the margin.
   *
   * @param name the packing's name
   * @param nominal the margin with the values as stated [K]
   * @param range the margin at the ends of the ranges [K]
   * @param note what limits the packing
   * @throws InvalidInputException if the name is blank, a value not finite or the nominal margin
   *     outside the range
   */
  public MarginBar {
    Checks.name("packing name", name);
    Checks.finite("low end of margin", range.low(), "K");
    Checks.finite("high end of margin", range.high(), "K");
    Checks.within("margin", nominal, range, "K", "The range must hold the nominal margin.");
  }
}
