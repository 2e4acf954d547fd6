package stenotherm.material;

import java.util.Locale;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * A homogeneous isotropic material.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name, unique in a catalogue
 * @param conductivity thermal conductivity [W/(m K)], above 0; of the solid if the material melts
 * @param conductivityRange range in which the conductivity of real samples lies [W/(m K)]; contains
 *     {@code conductivity}; both ends are equal if no spread is known
 * @param density density [kg/m3], above 0
 * @param specificHeat specific heat capacity [J/(kg K)], above 0
 * @param source where the values come from
 * @param behaviour how the properties depend on temperature
 */
public record Material(
    String name,
    double conductivity,
    Range conductivityRange,
    double density,
    double specificHeat,
    Source source,
    Behaviour behaviour) {
  /**
   * A material whose properties do not depend on temperature.
   *
   * @param name name, unique in a catalogue
   * @param conductivity thermal conductivity [W/(m K)], above 0
   * @param conductivityRange range in which the conductivity of real samples lies [W/(m K)]
   * @param density density [kg/m3], above 0
   * @param specificHeat specific heat capacity [J/(kg K)], above 0
   * @param source where the values come from
   * @throws InvalidInputException if a property is not a finite number above 0, or the conductivity
   *     lies outside its own range
   */
  public Material(
      String name,
      double conductivity,
      Range conductivityRange,
      double density,
      double specificHeat,
      Source source) {
    this(
        name,
        conductivity,
        conductivityRange,
        density,
        specificHeat,
        source,
        new Behaviour.Constant());
  }

  /**
   * Checks the properties.
   *
   * @throws InvalidInputException if a property is not a finite number above 0, or the conductivity
   *     lies outside its own range
   */
  public Material {
    Checks.name("material name", name);
    Checks.given("conductivity range of " + name, conductivityRange);
    Checks.given("source of " + name, source);
    Checks.given("behaviour of " + name, behaviour);
    Checks.positive("conductivity of " + name, conductivity, "W/(m K)");
    Checks.positive("lowest conductivity of " + name, conductivityRange.low(), "W/(m K)");
    Checks.positive("highest conductivity of " + name, conductivityRange.high(), "W/(m K)");
    if (!conductivityRange.contains(conductivity)) {
      throw new InvalidInputException(
          "conductivity of " + name,
          Checks.show(conductivity, "W/(m K)")
              + " lies outside its own range "
              + conductivityRange);
    }
    Checks.positive("density of " + name, density, "kg/m3");
    Checks.positive("specific heat of " + name, specificHeat, "J/(kg K)");
  }

  /**
   * A material with no spread of conductivity.
   *
   * @param name name
   * @param conductivity thermal conductivity [W/(m K)]
   * @param density density [kg/m3]
   * @param specificHeat specific heat capacity [J/(kg K)]
   * @return the material
   * @throws InvalidInputException if a property is not a finite number above 0
   */
  public static Material of(String name, double conductivity, double density, double specificHeat) {
    return new Material(
        name,
        conductivity,
        new Range(conductivity, conductivity),
        density,
        specificHeat,
        Source.assumed("given by the caller"));
  }

  /**
   * The same material with another conductivity; the range becomes that value.
   *
   * @param other thermal conductivity [W/(m K)]
   * @return the changed material
   */
  public Material withConductivity(double other) {
    return new Material(
        name, other, new Range(other, other), density, specificHeat, source, behaviour);
  }

  /**
   * The same material with a conductivity that was measured.
   *
   * @param other thermal conductivity [W/(m K)]
   * @param range range that holds it with 90 % [W/(m K)]
   * @param how where the values come from
   * @return the changed material
   * @throws InvalidInputException if the value is not above 0 or not in the range
   */
  public Material measured(double other, Range range, Source how) {
    return new Material(name, other, range, density, specificHeat, how, behaviour);
  }

  /**
   * The same material at a position in its range of conductivity.
   *
   * @param position the position [-], see {@link Range#at}
   * @return the changed material; its range is that value
   */
  public Material at(double position) {
    return withConductivity(conductivityRange.at(position, conductivity));
  }

  /**
   * The same material with another behaviour.
   *
   * @param other how the properties depend on temperature
   * @return the changed material
   */
  public Material withBehaviour(Behaviour other) {
    return new Material(
        name, conductivity, conductivityRange, density, specificHeat, source, other);
  }

  /**
   * The same material with the properties of its liquid and another behaviour.
   *
   * @param melting how it melts
   * @param other how the properties depend on temperature
   * @return the changed material; its range of conductivity is as wide as that of the solid
   */
  public Material liquid(Melting melting, Behaviour other) {
    double ratio = melting.liquidConductivity() / conductivity;
    Range range = new Range(ratio * conductivityRange.low(), ratio * conductivityRange.high());
    return new Material(
        name,
        melting.liquidConductivity(),
        range,
        density,
        melting.liquidSpecificHeat(),
        source,
        other);
  }

  /**
   * Tells whether the conductivity depends on temperature.
   *
   * @return whether {@link #conductivityAt} does
   */
  public boolean followsTemperature() {
    return behaviour.followsTemperature();
  }

  /**
   * Returns the conductivity at a temperature; of a melting material that of the solid.
   *
   * @param temperature temperature of the material [K]
   * @return the conductivity [W/(m K)]
   */
  public double conductivityAt(double temperature) {
    return conductivity * behaviour.conductivityRatio(temperature);
  }

  /**
   * Returns the heat capacity of a volume.
   *
   * @return density times specific heat [J/(m3 K)]
   */
  public double volumetricHeatCapacity() {
    return density * specificHeat;
  }

  /**
   * Returns the thermal diffusivity.
   *
   * @return conductivity over volumetric heat capacity [m2/s]
   */
  public double diffusivity() {
    return conductivity / volumetricHeatCapacity();
  }

  /**
   * Returns name and properties, without range and source.
   *
   * @return for example "EPS 20, 0.0350 W/(m K), 20 kg/m3, 1450 J/(kg K)"
   */
  @Override
  public String toString() {
    return name
        + String.format(Locale.ROOT, ", %.3g W/(m K), ", conductivity)
        + Checks.show(density, "kg/m3")
        + ", "
        + Checks.show(specificHeat, "J/(kg K)");
  }
}
