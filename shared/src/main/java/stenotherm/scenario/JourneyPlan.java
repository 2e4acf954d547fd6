package stenotherm.scenario;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.journey.Journey;
import stenotherm.journey.Place;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.TextFormatException;
import stenotherm.weather.DayExtremes;

/**
 * The journey of a scenario before its weather is known: makes it on other days, in other weather.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class JourneyPlan {
  private final Node journey;
  private final double hold;

  JourneyPlan(Node journey, double hold) {
    this.journey = journey;
    this.hold = hold;
  }

  /**
   * Weather that legs of a journey follow, as the file gives it.
   *
   * @param place where
   * @param days low and high of each day from the day of sealing on [K], the last for all later
   *     ones; empty for the recorded weather of the date
   */
  public record StatedWeather(Place place, List<Range> days) {
    /** Copies the days. */
    public StatedWeather {
      Checks.given("place", place);
      days = List.copyOf(days);
    }
  }

  /**
   * Returns the weather that the file gives.
   *
   * @return weather of each place whose weather a leg follows, the origin first; none if every leg
   *     has a temperature of its own
   */
  public List<StatedWeather> weather() {
    return Sites.read(new Assumptions(), section()).followed().stream()
        .map(site -> new StatedWeather(site.place(), site.days()))
        .toList();
  }

  /**
   * Tells whether the file says when the parcel is sealed.
   *
   * @return false if day and hour are a preset
   */
  public boolean isDated() {
    return section().has(JourneyReader.SEALED);
  }

  private KeyedSection section() {
    return KeyedSection.of(spelledOut(), Vocabulary.JOURNEY, new Assumptions());
  }

  private MappingNode spelledOut() {
    return journey instanceof ScalarNode scalar
        ? JourneyReader.spelledOut(scalar)
        : journey.asMapping();
  }

  /**
   * Makes the journey in other weather.
   *
   * @param weather the weather
   * @return the journey, otherwise as the scenario has it
   * @throws TextFormatException if no leg follows the weather of either end, or a temperature is
   *     out of range
   */
  public Journey in(OtherWeather weather) {
    return new JourneyReader(new Assumptions(), hold, weather).read(journey);
  }

  /**
   * Makes the journey on every recorded day from which it can be followed: the day before the
   * sealing is on record, and so is the day after the opening, both at both ends.
   *
   * @param origin recorded days where it is sent from, without gaps, at least one
   * @param destination recorded days where it is sent to, likewise
   * @param wanted tells the days of sealing that are wanted
   * @return the journeys in the order of their days; none if the records share too few days
   * @throws TextFormatException as {@link #in}
   */
  public List<Journey> onRecordedDays(
      List<DayExtremes> origin, List<DayExtremes> destination, Predicate<LocalDate> wanted) {
    LocalDate first = origin.get(0).date();
    LocalDate last = origin.get(origin.size() - 1).date();
    LocalDate firstThere = destination.get(0).date();
    LocalDate lastThere = destination.get(destination.size() - 1).date();
    first = first.isAfter(firstThere) ? first : firstThere;
    last = last.isBefore(lastThere) ? last : lastThere;
    OtherWeather.EndWeather from = recorded(origin);
    OtherWeather.EndWeather to = recorded(destination);
    List<Journey> journeys = new ArrayList<>();
    // the course of a day goes on from the day before it
    for (LocalDate day = first.plusDays(1); day.isBefore(last); day = day.plusDays(1)) {
      if (wanted.test(day)) {
        Journey sent = in(new OtherWeather(day, from, to));
        if (sent.sealing().plusSeconds((long) sent.duration()).toLocalDate().isBefore(last)) {
          journeys.add(sent);
        }
      }
    }
    return journeys;
  }

  private static OtherWeather.EndWeather recorded(List<DayExtremes> days) {
    List<Range> ranges = days.stream().map(day -> new Range(day.low(), day.high())).toList();
    return new OtherWeather.EndWeather(days.get(0).date(), ranges, OtherWeather.RECORDED_SPREAD);
  }

  /**
   * The same journey between other places, which have no coordinates: no leg there can be in the
   * sun.
   *
   * @param origin where it is sent from, as {@code from} of a scenario names it, such as {@code New
   *     York, UTC-5}
   * @param destination where it is sent to, likewise
   * @return the plan; complaints about a place name where the text stands that was given here
   */
  public JourneyPlan between(ScalarNode origin, ScalarNode destination) {
    return new JourneyPlan(
        spelledOut().with(JourneyReader.FROM, origin).with(JourneyReader.TO, destination), hold);
  }
}
