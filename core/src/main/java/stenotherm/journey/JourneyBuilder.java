package stenotherm.journey;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Situation;
import stenotherm.base.Checks;
import stenotherm.base.Source;
import stenotherm.base.Temperature;
import stenotherm.base.TimeFunction;
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
   * Adds a leg in still air of one temperature, out of the sun. Its air counts as known exactly:
   * the odds of a journey of such legs leave out that air may be colder or warmer than stated.
   * Where odds are wanted, state a spread as well.
   *
   * @param name what happens
   * @param duration how long, a minute to 30 days
   * @param ambient temperature of air and surroundings
   * @return this builder
   * @throws stenotherm.base.InvalidInputException if the name is blank or the duration is out of
   *     its range
   */
  public JourneyBuilder leg(String name, Duration duration, Temperature ambient) {
    return leg(name, duration, ambient, 0);
  }

  /**
   * Adds a leg in still air of one temperature that is not known exactly, out of the sun.
   *
   * @param name what happens
   * @param duration how long, a minute to 30 days
   * @param ambient temperature of air and surroundings
   * @param spreadInKelvin uncertainty of that temperature, plus or minus [K], 0 to 30; none of it
   *     shared with other legs
   * @return this builder
   * @throws stenotherm.base.InvalidInputException if the name is blank, or the duration or the
   *     spread is out of its range
   */
  public JourneyBuilder leg(
      String name, Duration duration, Temperature ambient, double spreadInKelvin) {
    return leg(name, duration, Surroundings.of(air(ambient), spreadInKelvin, FaceFilms.indoors()));
  }

  /**
   * Adds a leg in a kind of surroundings, with a temperature of its own. How uncertain that is,
   * wind, altitude and whether the parcel lies among others are as usual there; the parcel is
   * upright and out of the sun.
   *
   * @param name what happens
   * @param duration how long, a minute to 30 days
   * @param situation where, see {@link stenotherm.ambient.Situations}
   * @param ambient temperature of air and surroundings, instead of what is usual there
   * @return this builder
   * @throws stenotherm.base.InvalidInputException if the name is blank, or the duration or the
   *     situation's spread is out of its range
   */
  public JourneyBuilder leg(
      String name, Duration duration, Situation situation, Temperature ambient) {
    double usual = Checks.given("situation", situation).spread();
    return leg(name, duration, situation, ambient, usual);
  }

  /**
   * Adds a leg in a kind of surroundings, with a temperature and a spread of its own. Wind,
   * altitude and whether the parcel lies among others are as usual there; the parcel is upright and
   * out of the sun.
   *
   * @param name what happens
   * @param duration how long, a minute to 30 days
   * @param situation where, see {@link stenotherm.ambient.Situations}
   * @param ambient temperature of air and surroundings, instead of what is usual there
   * @param spreadInKelvin uncertainty of that temperature, plus or minus [K], 0 to 30; none of it
   *     shared with other legs
   * @return this builder
   * @throws stenotherm.base.InvalidInputException if the name is blank, or the duration or the
   *     spread is out of its range
   */
  public JourneyBuilder leg(
      String name,
      Duration duration,
      Situation situation,
      Temperature ambient,
      double spreadInKelvin) {
    AmbientSpread spread = AmbientSpread.ofItsOwn(spreadInKelvin);
    return leg(name, duration, Surroundings.of(air(ambient), spread, situation));
  }

  private static TimeFunction air(Temperature ambient) {
    return Ambient.constant(Checks.given("ambient", ambient).kelvin());
  }

  /**
   * Adds a leg in any surroundings, such as in air whose temperature changes.
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
