package stenotherm.parcel;

import java.util.Optional;
import stenotherm.animal.Animal;
import stenotherm.animal.AnimalBody;
import stenotherm.animal.Companions;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Mass;

/**
 * An animal in a container, or several alike. Of several one is computed as a body: the heat that
 * the others store, give and take is left out. All of them breathe, take room and weigh.
 *
 * <p>A value, thus thread-safe.
 *
 * @param animal which animal
 * @param body mass and shape of each
 * @param count how many, 1 to 100
 */
public record Occupant(Animal animal, AnimalBody body, int count) {
  /** The most animals that one container may hold. */
  public static final int MOST = 100;

  /**
   * Checks that nothing is null.
   *
   * @throws InvalidInputException if something is, or the count is out of its range
   */
  public Occupant {
    Checks.given("animal", animal);
    Checks.given("body", body);
    if (count < 1 || count > MOST) {
      throw new InvalidInputException(
          "number of animals", "must be 1 to " + MOST + " animals, not " + count);
    }
  }

  /**
   * One animal.
   *
   * @param animal which animal
   * @param body its mass and shape
   * @throws InvalidInputException if something is null
   */
  public Occupant(Animal animal, AnimalBody body) {
    this(animal, body, 1);
  }

  /**
   * An animal in its resting shape.
   *
   * @param animal which animal
   * @param mass its mass, 0.1 g to 20 kg
   * @return the occupant
   * @throws InvalidInputException if the mass is out of its range
   */
  public static Occupant of(Animal animal, Mass mass) {
    return new Occupant(animal, Checks.given("animal", animal).body(mass));
  }

  /**
   * Returns the mass of all of them.
   *
   * @return the mass [kg]
   */
  public double mass() {
    return count * body.mass();
  }

  /**
   * Returns the volume of all of them.
   *
   * @return the volume [m3]
   */
  public double volume() {
    return count * body.volume(animal.tissue());
  }

  /** All of them as one body, to see whether they fit. */
  Occupant heap() {
    return new Occupant(animal, new AnimalBody(mass(), body.proportions()));
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

  /**
   * Says what is wrong with several animals in one container.
   *
   * @return a sentence for keepers; empty for a single animal, and where nothing is known against
   *     others
   */
  public Optional<String> crowding() {
    if (count == 1 || animal.companions() == Companions.ANY) {
      return Optional.empty();
    }
    return Optional.of(
        count
            + " animals, "
            + animal.name()
            + ", in one container "
            + (animal.companions() == Companions.NONE
                ? "eat each other: each needs a container of its own"
                : "must be of one size: a larger one eats a smaller one")
            + " (common practice, no source).");
  }
}
