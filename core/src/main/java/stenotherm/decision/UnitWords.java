package stenotherm.decision;

/** Writes quantities for people, in their units. */
public interface UnitWords {
  /**
   * Writes a temperature.
   *
   * @param kelvin the temperature [K]
   * @return the text
   */
  String temperature(double kelvin);

  /**
   * Writes a difference of temperature.
   *
   * @param kelvin the difference [K]
   * @return the text
   */
  String difference(double kelvin);

  /**
   * Writes a length.
   *
   * @param metres the length [m]
   * @return the text
   */
  String length(double metres);

  /**
   * Writes the size of a thing.
   *
   * @param length its length [m]
   * @param width its width [m]
   * @param height its height [m]
   * @return the text
   */
  String size(double length, double width, double height);
}
