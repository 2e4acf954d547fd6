package stenotherm.study;

import java.util.List;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * Something that acts on an animal and that the model of heat conduction leaves out: it makes the
 * animal warmer or colder by an amount within a crude range.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param words what reports call it
 * @param kelvin how much warmer it makes an animal, evenly distributed [K]
 * @param needsWarmer whether it acts only beside a warmer
 * @param source where the range comes from
 */
public record UnmodelledEffect(String words, Range kelvin, boolean needsWarmer, Source source) {
  /** Damp bedding that evaporates. */
  public static final UnmodelledEffect EVAPORATION =
      new UnmodelledEffect(
          "evaporation from bedding",
          new Range(-2.2, 0),
          false,
          Source.derived(
              "heat of evaporation",
              "1 g/day makes an animal in 20 x 17 x 15 cm 0.7 K colder; up to 2.2 K are assumed"));

  /** Heat that the animal gives off itself. */
  public static final UnmodelledEffect ANIMAL_HEAT =
      new UnmodelledEffect(
          "heat of the animal",
          new Range(0, 1.6),
          false,
          Source.derived(
              "metabolism of 20 mW to 50 mW", "0.6 K to 1.6 K in 20 x 17 x 15 cm; less if small"));

  /** Air in the cup, which moves more or less than assumed. */
  public static final UnmodelledEffect CUP_AIR =
      new UnmodelledEffect(
          "air in the cup",
          new Range(-0.6, 0.5),
          false,
          Source.derived("half and twice the conductivity of the air in a cup", "its effect"));

  /** How closely a warmer lies against what it is taped to. */
  public static final UnmodelledEffect CONTACT =
      new UnmodelledEffect(
          "contact of the warmer",
          new Range(-0.1, 1),
          true,
          Source.derived("a warmer that hangs free or lies close", "its effect"));

  /**
   * Returns all effects.
   *
   * @return the constants of this record
   */
  public static List<UnmodelledEffect> all() {
    return List.of(EVAPORATION, ANIMAL_HEAT, CUP_AIR, CONTACT);
  }
}
