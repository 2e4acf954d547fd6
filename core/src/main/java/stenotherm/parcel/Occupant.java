package stenotherm.parcel;

import stenotherm.animal.Animal;
import stenotherm.animal.AnimalBody;
import stenotherm.base.Checks;

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
