package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.Source;

/**
 * A vessel that people know by name.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name, unique among sizes
 * @param vessel the vessel
 * @param source where size and wall come from
 */
public record VesselSize(String name, Vessel vessel, Source source) {
  /**
   * Checks the name.
   *
   * @throws stenotherm.base.InvalidInputException if it is blank
   */
  public VesselSize {
    Checks.given("name", name);
    Checks.given("vessel", vessel);
    Checks.given("source", source);
    Checks.name("name of a vessel size", name);
  }
}
