package stenotherm.journey;

import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/**
 * A rectangular part of a parcel's face that meets something else than the rest of the face.
 *
 * <p>A value, thus thread-safe.
 *
 * @param face the face, named as if the parcel stood upright
 * @param first part of the face along its first axis (x, or y on an x face), 0 to 1
 * @param second part of the face along its second axis (z, or y on a z face), 0 to 1
 * @param condition what it meets
 */
public record Contact(Face face, Range first, Range second, Condition condition) {
  private static final Range WHOLE = new Range(0, 1);

  /**
   * Checks the parts.
   *
   * @throws InvalidInputException if one is empty or not within 0 and 1
   */
  public Contact {
    Checks.given("face", face);
    Checks.given("first", first);
    Checks.given("second", second);
    Checks.given("condition", condition);
    for (Range part : new Range[] {first, second}) {
      String hint = "The whole face is 0 to 1.";
      Checks.within("contact on the " + face.words(), part.low(), WHOLE, "", hint);
      Checks.within("contact on the " + face.words(), part.high(), WHOLE, "", hint);
      if (part.low() == part.high()) {
        throw new InvalidInputException("contact on the " + face.words(), "has no area");
      }
    }
  }

  /**
   * A contact of a whole face.
   *
   * @param face the face
   * @param condition what it meets
   * @return the contact
   */
  public static Contact whole(Face face, Condition condition) {
    return new Contact(face, WHOLE, WHOLE, condition);
  }

  /**
   * Tells whether another contact is one with the same part of the same face.
   *
   * @param other the other contact
   * @return true if the two cover the same
   */
  public boolean coversSameAs(Contact other) {
    return face == other.face && first.equals(other.first) && second.equals(other.second);
  }

  /**
   * Tells whether another contact covers some of the same part of the same face.
   *
   * @param other the other contact
   * @return true if a part with an area belongs to both
   */
  public boolean overlaps(Contact other) {
    return face == other.face
        && first.low() < other.first.high()
        && other.first.low() < first.high()
        && second.low() < other.second.high()
        && other.second.low() < second.high();
  }

  /** What a part of a face meets. Values, thus thread-safe. */
  public sealed interface Condition {
    /**
     * Returns the sunlight of the part's own.
     *
     * @return irradiance [W/m2 against s since sealing]; nothing if it has none of its own
     */
    default Optional<TimeFunction> sunlight() {
      return Optional.empty();
    }

    /**
     * Returns the thing that touches the part.
     *
     * @return the neighbour; nothing if it touches none
     */
    default Optional<Neighbour> neighbour() {
      return Optional.empty();
    }
  }

  /**
   * A thing of known temperature that touches the parcel: a neighbour, a cold floor.
   *
   * @param temperature its temperature [K against s since sealing], as uncertain as the ambient one
   * @param resistance resistance of unit area between the two [m2 K/W], above 0
   */
  public record Neighbour(TimeFunction temperature, double resistance) implements Condition {
    /**
     * Checks the resistance.
     *
     * @throws InvalidInputException if it is not above 0
     */
    public Neighbour {
      Checks.given("temperature", temperature);
      Checks.positive("resistance to a neighbour", resistance, "m2 K/W");
    }

    @Override
    public Optional<Neighbour> neighbour() {
      return Optional.of(this);
    }
  }

  /** No heat passes, as between two parcels packed alike. */
  public record Insulated() implements Condition {}

  /**
   * The film of the face, but sunlight of its own; zero for the shaded part of a sunlit face.
   *
   * @param irradiance sunlight that falls on it [W/m2 against s since sealing]
   */
  public record Sunlit(TimeFunction irradiance) implements Condition {
    /**
     * Checks the irradiance.
     *
     * @throws InvalidInputException if it is negative in a row of a table or as a constant
     */
    public Sunlit {
      Checks.given("irradiance", irradiance);
      Checks.notNegative("irradiance on a part of a face", irradiance, "W/m2");
    }

    @Override
    public Optional<TimeFunction> sunlight() {
      return Optional.of(irradiance);
    }
  }
}
