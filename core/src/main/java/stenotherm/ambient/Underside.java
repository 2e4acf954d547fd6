package stenotherm.ambient;

import java.util.OptionalDouble;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Source;

/**
 * What a parcel's lowest face meets.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Underside {
  /**
   * Returns the resistance of a floor or shelf that the parcel rests on.
   *
   * @return resistance from the face to where the ambient temperature holds [m2 K/W]; nothing if
   *     the face has a film like the others
   */
  default OptionalDouble floorResistance() {
    return OptionalDouble.empty();
  }

  /** Air, as on a wire shelf: the face has a film like the others. */
  record Open() implements Underside {}

  /**
   * A floor or shelf that keeps the ambient temperature, behind the gaps that an uneven carton
   * leaves.
   *
   * @param resistance resistance from the face to where the ambient temperature holds [m2 K/W],
   *     above 0; a floor that warms up under the parcel has more
   */
  record Resting(double resistance) implements Underside {
    /** Where the resistance of {@link #onHardFloor} comes from. */
    public static final Source HARD_FLOOR_SOURCE =
        Source.assumed(
            "A carton on a hard floor has 3 mm of air below it on average: 0.025 W/(m K) over"
                + " 3 mm and radiation between surfaces of emissivity 0.9 at 10 °C make 0.080 m2 K/W");

    /**
     * Checks the resistance.
     *
     * @throws InvalidInputException if it is not a finite number above 0
     */
    public Resting {
      Checks.positive("resistance below a resting parcel", resistance, "m2 K/W");
    }

    /**
     * A hard floor that keeps the ambient temperature: 0.08 m2 K/W, see {@link #HARD_FLOOR_SOURCE}.
     *
     * @return the underside
     */
    public static Resting onHardFloor() {
      return new Resting(0.08);
    }

    @Override
    public OptionalDouble floorResistance() {
      return OptionalDouble.of(resistance);
    }
  }
}
