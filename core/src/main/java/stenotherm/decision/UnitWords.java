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
}
