package stenotherm.journey;

import java.util.List;
import stenotherm.air.StandardAtmosphere;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Situation;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.TimeFunction;

/**
 * The surroundings of a parcel during a leg, and how it is stowed and lies.
 *
 * <p>A value, thus thread-safe.
 *
 * @param ambient temperature of air and surroundings over the time since sealing [K against s]
 * @param spread uncertainty of the ambient temperature
 * @param films films of the faces
 * @param stowage whether the parcel stands alone or lies among others
 * @param orientation how the parcel lies
 * @param altitude altitude whose pressure the air has [m], -500 to 5500; thin air carries off less
 *     heat
 * @param sunshine sun and sky on the faces
 * @param contacts parts of faces that meet something else; later ones override earlier ones
 */
public record Surroundings(
    TimeFunction ambient,
    AmbientSpread spread,
    FaceFilms films,
    Stowage stowage,
    Orientation orientation,
    double altitude,
    Sunshine sunshine,
    List<Contact> contacts) {
  /**
   * Checks the values.
   *
   * @throws InvalidInputException if the altitude is out of its range or the sun shines on a part
   *     of the face that the parcel rests on
   */
  public Surroundings {
    Checks.given("ambient", ambient);
    Checks.given("spread", spread);
    Checks.given("films", films);
    Checks.given("stowage", stowage);
    Checks.given("orientation", orientation);
    Checks.given("sunshine", sunshine);
    Checks.given("contacts", contacts);
    StandardAtmosphere.checked("altitude", altitude);
    contacts = List.copyOf(contacts);
    for (Contact contact : contacts) {
      if (contact.condition().sunlight().isPresent() && films.rests(contact.face(), orientation)) {
        throw new InvalidInputException(
            "contact on the " + contact.face().words(),
            "lies in the sun, but the parcel rests on that face");
      }
    }
  }

  /**
   * Surroundings at sea level in which a parcel stands alone and upright, out of the sun.
   *
   * @param ambient temperature of air and surroundings [K against s since sealing]
   * @param spread uncertainty of that temperature, plus or minus [K], 0 to 30; none of it shared
   *     with other legs
   * @param films films of the faces
   * @return the surroundings
   * @throws stenotherm.base.InvalidInputException if the spread is out of its range
   */
  public static Surroundings of(TimeFunction ambient, double spread, FaceFilms films) {
    return new Surroundings(
        ambient,
        AmbientSpread.ofItsOwn(spread),
        films,
        Stowage.ALONE,
        Orientation.LID_UP,
        0,
        Sunshine.NONE,
        List.of());
  }

  /**
   * Surroundings as a situation usually has them, with air of a temperature of its own: films,
   * stowage and altitude are the situation's. The parcel is upright and out of the sun, {@linkplain
   * Situation#sunlit sunlit} or not: sun and sky depend on day and place.
   *
   * @param ambient temperature of air and surroundings [K against s since sealing]
   * @param spread uncertainty of that temperature
   * @param situation where the parcel is
   * @return the surroundings
   */
  public static Surroundings of(TimeFunction ambient, AmbientSpread spread, Situation situation) {
    Checks.given("situation", situation);
    return new Surroundings(
        ambient,
        spread,
        situation.films(),
        situation.stowage(),
        Orientation.LID_UP,
        situation.altitude(),
        Sunshine.NONE,
        List.of());
  }

  /**
   * The same surroundings with warmer air; what touches the parcel stays as it is.
   *
   * @param kelvin by how much, negative for colder air [K], -60 to 60
   * @return the changed surroundings
   * @throws InvalidInputException if it is out of its range
   */
  public Surroundings warmer(double kelvin) {
    return new Surroundings(
        Ambient.warmer(ambient, kelvin),
        spread,
        films,
        stowage,
        orientation,
        altitude,
        sunshine,
        contacts);
  }

  /**
   * The same surroundings with the parcel stowed another way.
   *
   * @param other whether it stands alone or lies among others
   * @return the changed surroundings
   */
  public Surroundings stowed(Stowage other) {
    return new Surroundings(
        ambient, spread, films, other, orientation, altitude, sunshine, contacts);
  }

  /**
   * The same surroundings with the parcel lying another way.
   *
   * @param other how it lies
   * @return the changed surroundings
   */
  public Surroundings lying(Orientation other) {
    return new Surroundings(ambient, spread, films, stowage, other, altitude, sunshine, contacts);
  }

  /**
   * The same surroundings at another altitude.
   *
   * @param other altitude whose pressure the air has [m], -500 to 5500; 8000 ft are 2438 m
   * @return the changed surroundings
   * @throws stenotherm.base.InvalidInputException if it is out of its range
   */
  public Surroundings atAltitude(double other) {
    return new Surroundings(
        ambient, spread, films, stowage, orientation, other, sunshine, contacts);
  }

  /**
   * The same surroundings under another sun.
   *
   * @param other sun and sky
   * @return the changed surroundings
   */
  public Surroundings under(Sunshine other) {
    return new Surroundings(
        ambient, spread, films, stowage, orientation, altitude, other, contacts);
  }

  /**
   * The same surroundings with other contacts.
   *
   * @param others parts of faces that meet something else
   * @return the changed surroundings
   */
  public Surroundings touching(List<Contact> others) {
    return new Surroundings(
        ambient, spread, films, stowage, orientation, altitude, sunshine, others);
  }

  /**
   * Returns the pressure of the air.
   *
   * @return the pressure [Pa]
   */
  public double pressure() {
    return StandardAtmosphere.pressure(altitude);
  }

  /**
   * Tells whether sunlight falls on a face or a part of one.
   *
   * @return true if the absorptance of the parcel's outside matters
   */
  public boolean hasSun() {
    return !sunshine.irradiance().isEmpty()
        || contacts.stream().anyMatch(each -> each.condition().sunlight().isPresent());
  }
}
