package stenotherm.animal;

import java.util.List;
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
 * @param cautions what a user of these numbers must know, as sentences; may be empty
 */
public record Animal(
    String name,
    String species,
    Tolerance tolerance,
    Material tissue,
    Proportions restingShape,
    List<String> cautions) {
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
    cautions = List.copyOf(Checks.given("cautions about " + name, cautions));
    cautions.forEach(caution -> Checks.name("caution about " + name, caution));
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
