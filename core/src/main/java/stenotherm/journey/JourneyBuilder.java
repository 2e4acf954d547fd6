package stenotherm.journey;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Checks;
import stenotherm.base.Source;
import stenotherm.base.Temperature;
import stenotherm.base.Times;

/**
 * Puts a journey together leg by leg.
 *
 * <p>Experimental. Not thread-safe.
 */
public final class JourneyBuilder {
  /** Where legs come from unless the caller says otherwise. */
  private static final Source CALLER = Source.assumed("given by the caller");

  private final LocalDateTime sealing;
  private final Temperature start;
  private final List<Leg> legs = new ArrayList<>();
  private Place place = new Place("on the way", ZoneOffset.UTC);

  private JourneyBuilder(LocalDateTime sealing, Temperature start) {
    this.sealing = Checks.given("sealing", sealing);
    this.start = Checks.given("start", start);
  }

  /**
   * Starts a journey.
   *
   * @param sealing when the parcel is sealed, on the clock of the first leg's place
   * @param start temperature of all that is packed
   * @return a builder without legs
   */
  public static JourneyBuilder sealed(LocalDateTime sealing, Temperature start) {
    return new JourneyBuilder(sealing, start);
  }

  /**
   * Sets the place of the legs that follow; without one their clock is UTC.
   *
   * @param other the place
   * @return this builder
   */
  public JourneyBuilder at(Place other) {
    place = Checks.given("place", other);
    return this;
  }

  /**
   * Adds a leg in still air of one temperature, known exactly, out of the sun.
   *
   * @param name what happens
   * @param duration how long, a minute to 30 days
   * @param ambient temperature of air and surroundings
   * @return this builder
   * @throws stenotherm.base.InvalidInputException if the name is blank or the duration is out of
   *     its range
   */
  public JourneyBuilder leg(String name, Duration duration, Temperature ambient) {
    double kelvin = Checks.given("ambient", ambient).kelvin();
    return leg(name, duration, Surroundings.of(Ambient.constant(kelvin), 0, FaceFilms.indoors()));
  }

  /**
   * Adds a leg.
   *
   * @param name what happens
   * @param duration how long, a minute to 30 days
   * @param surroundings surroundings of the parcel
   * @return this builder
   * @throws stenotherm.base.InvalidInputException if the name is blank or the duration is out of
   *     its range
   */
  public JourneyBuilder leg(String name, Duration duration, Surroundings surroundings) {
    double seconds = Times.seconds(Checks.given("duration", duration));
    legs.add(new Leg(name, place, seconds, surroundings, CALLER));
    return this;
  }

  /**
   * Returns the journey.
   *
   * @return the journey
   * @throws stenotherm.base.InvalidInputException if there is no leg
   */
  public Journey build() {
    return new Journey(sealing, start.kelvin(), legs);
  }
}
