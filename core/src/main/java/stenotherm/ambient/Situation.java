package stenotherm.ambient;

import stenotherm.air.StandardAtmosphere;
import stenotherm.base.Checks;
import stenotherm.base.Source;

/**
 * A kind of surroundings that parcels meet: how its air temperature follows from that outdoors, how
 * uncertain it is, how the faces exchange heat there, and whether other parcels lie around.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name what reports call it
 * @param rule how its air temperature follows from that outdoors
 * @param spread uncertainty of its air temperature, plus or minus, on top of that of the outdoor
 *     temperature [K], 0 or above
 * @param films films of the faces there
 * @param stowage whether a parcel stands alone there or lies among others
 * @param altitude altitude whose pressure the air has [m]
 * @param sunlit whether sun and sky reach the parcel
 * @param source where these values come from
 */
public record Situation(
    String name,
    AmbientRule rule,
    double spread,
    FaceFilms films,
    Stowage stowage,
    double altitude,
    boolean sunlit,
    Source source) {
  /**
   * Checks the values.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank, the spread is negative or
   *     the altitude is out of its range
   */
  public Situation {
    Checks.given("name", name);
    Checks.given("rule", rule);
    Checks.given("films", films);
    Checks.given("stowage", stowage);
    Checks.given("source", source);
    Checks.name("situation name", name);
    Checks.notNegative("spread of situation '" + name + "'", spread, "K");
    StandardAtmosphere.checked("altitude of situation '" + name + "'", altitude);
  }
}
