package stenotherm.animal;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Mass;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.material.Material;

/**
 * A kind of animal: what it tolerates, what it is made of, how it rests.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name common name, unique in a catalogue
 * @param species scientific name
 * @param tolerance body temperatures that it tolerates
 * @param tissue what its body is made of
 * @param restingShape proportions of its body at rest in a cup or bag, an assumption
 * @param cautions what a user of these numbers must know, as sentences; may be empty. That an
 *     animal is kept singly is added to them
 * @param companions which others of its kind may share its container
 */
public record Animal(
    String name,
    String species,
    Tolerance tolerance,
    Material tissue,
    Proportions restingShape,
    List<String> cautions,
    Companions companions) {
  private static final String KEEP_SINGLY =
      "Keep it singly, one animal to a container, for it eats its own kind: common practice, no"
          + " source.";

  /**
   * Checks the names and copies the cautions.
   *
   * @throws InvalidInputException if a name or a caution is blank
   */
  public Animal {
    Checks.name("animal name", name);
    Checks.name("species of " + name, species);
    Checks.given("tolerance of " + name, tolerance);
    Checks.given("tissue of " + name, tissue);
    Checks.given("resting shape of " + name, restingShape);
    Checks.given("companions of " + name, companions);
    Set<String> all = new LinkedHashSet<>(Checks.given("cautions about " + name, cautions));
    if (companions == Companions.NONE) {
      all.add(KEEP_SINGLY);
    }
    cautions = List.copyOf(all);
    cautions.forEach(caution -> Checks.name("caution about " + name, caution));
  }

  /**
   * An animal that others of its kind may be put with.
   *
   * @param name common name, unique in a catalogue
   * @param species scientific name
   * @param tolerance body temperatures that it tolerates
   * @param tissue what its body is made of
   * @param restingShape proportions of its body at rest in a cup or bag, an assumption
   * @param cautions what a user of these numbers must know, as sentences; may be empty
   * @throws InvalidInputException as the other constructor
   */
  public Animal(
      String name,
      String species,
      Tolerance tolerance,
      Material tissue,
      Proportions restingShape,
      List<String> cautions) {
    this(name, species, tolerance, tissue, restingShape, cautions, Companions.ANY);
  }

  /** The same animal with other companions. */
  Animal with(Companions other) {
    return new Animal(name, species, tolerance, tissue, restingShape, cautions, other);
  }

  /**
   * Returns the body of one animal of this kind.
   *
   * @param mass its mass, 0.1 g to 20 kg
   * @return the body in its resting shape
   * @throws InvalidInputException if the mass is out of its range
   */
  public AnimalBody body(Mass mass) {
    return new AnimalBody(Checks.given("mass of " + name, mass).kilograms(), restingShape);
  }

  /**
   * Returns names and alarm band, without the rest of the tolerance and its sources.
   *
   * @return for example "leopard gecko (Eublepharis macularius), alarm band 15 °C to 33 °C"
   */
  @Override
  public String toString() {
    Range alarm = tolerance.alarm().range();
    return name
        + " ("
        + species
        + "), alarm band "
        + Checks.show(Temperatures.toCelsius(alarm.low()), "°C")
        + " to "
        + Checks.show(Temperatures.toCelsius(alarm.high()), "°C");
  }
}
