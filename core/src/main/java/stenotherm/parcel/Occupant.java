package stenotherm.parcel;

import stenotherm.animal.Animal;
import stenotherm.animal.AnimalBody;
import stenotherm.base.Checks;
import stenotherm.base.Mass;

/**
 * An animal in a container.
 *
 * <p>A value, thus thread-safe.
 *
 * @param animal which animal
 * @param body its mass and shape
 */
public record Occupant(Animal animal, AnimalBody body) {
  /**
   * Checks that nothing is null.
   *
   * @throws stenotherm.base.InvalidInputException if something is
   */
  public Occupant {
    Checks.given("animal", animal);
    Checks.given("body", body);
  }

  /**
   * An animal in its resting shape.
   *
   * @param animal which animal
   * @param mass its mass, 0.1 g to 20 kg
   * @return the occupant
   * @throws stenotherm.base.InvalidInputException if the mass is out of its range
   */
  public static Occupant of(Animal animal, Mass mass) {
    return new Occupant(animal, Checks.given("animal", animal).body(mass));
  }

  /** Box of its tissue, lying along the longer horizontal side of its vessel. */
  Dimensions dimensions(Dimensions vessel) {
    AnimalBody.Extents body = body().extents(animal.tissue());
    boolean turned = vessel.width() > vessel.length();
    return new Dimensions(
        turned ? body.width() : body.length(),
        turned ? body.length() : body.width(),
        body.height());
  }
}
