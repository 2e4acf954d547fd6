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
  /** Water that evaporates from damp bedding and, also without any, from the animal. */
  public static final UnmodelledEffect EVAPORATION =
      new UnmodelledEffect(
          "evaporation from bedding and animal",
          new Range(-2.2, 0),
          Source.derived(
              "heat of evaporation",
              "1 g/day makes an animal in 20 x 17 x 15 cm 0.7 K colder; up to 2.2 K are assumed"));

  /** Heat that the animal gives off itself. */
  public static final UnmodelledEffect ANIMAL_HEAT =
      new UnmodelledEffect(
          "heat of the animal",
          new Range(0, 1.6),
          Source.derived(
              "metabolism of 20 mW to 50 mW", "0.6 K to 1.6 K in 20 x 17 x 15 cm; less if small"));

  /** Air in a container, which moves more or less than assumed. */
  public static final UnmodelledEffect CONTAINER_AIR =
      new UnmodelledEffect(
          "air around the animal",
          new Range(-0.6, 0.5),
          Source.derived(
              "half and twice the conductivity of the air in a container", "its effect"));

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
    List<UnmodelledEffect> all = new ArrayList<>(List.of(EVAPORATION, ANIMAL_HEAT, CONTAINER_AIR));
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
