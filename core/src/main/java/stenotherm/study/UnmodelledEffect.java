package stenotherm.study;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Parcel;

/**
 * Something that acts on an animal and that the model of heat conduction leaves out: it makes the
 * animal warmer or colder by an amount within a crude range.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param words what reports call it
 * @param kelvin how much warmer it makes an animal, evenly distributed [K]
 * @param source where the range comes from
 */
public record UnmodelledEffect(String words, Range kelvin, Source source) {
  /** How closely a warmer lies against what it is taped to. */
  public static final UnmodelledEffect CONTACT =
      new UnmodelledEffect(
          "contact of the warmer",
          new Range(-0.1, 1),
          Source.derived("a warmer that hangs free or lies close", "its effect"));

  /**
   * Returns what acts in a packing: the contact of a warmer only beside one, radiation and moving
   * air only in a cavity without fill.
   *
   * @param parcel the packing
   * @return the effects
   */
  public static List<UnmodelledEffect> of(Parcel parcel) {
    List<UnmodelledEffect> all = new ArrayList<>();
    if (!parcel.warmers().isEmpty()) {
      all.add(CONTACT);
    }
    parcel.filling().air().ifPresent(air -> all.add(unfilled(air.error())));
    return List.copyOf(all);
  }

  /** What a solid in place of the air of a cavity gets wrong. */
  private static UnmodelledEffect unfilled(double error) {
    return new UnmodelledEffect(
        "air and radiation in a cavity without fill",
        new Range(-error, error),
        Filling.Unfilled.ERROR_SOURCE);
  }
}
