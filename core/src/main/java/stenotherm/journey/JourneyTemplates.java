package stenotherm.journey;

import static stenotherm.journey.TemplateLeg.JourneyEnd.DESTINATION;
import static stenotherm.journey.TemplateLeg.JourneyEnd.ORIGIN;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import stenotherm.ambient.Situation;
import stenotherm.ambient.Situations;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.Times;

/**
 * Journeys that parcels commonly make. Legs and hours are common practice without a source.
 *
 * <p>Constants, thus thread-safe.
 */
public final class JourneyTemplates {
  /** Handed in by the afternoon, flown to a hub and on by night, delivered before noon. */
  public static final JourneyTemplate OVERNIGHT_BY_AIR =
      template("overnight by air", flown(delivered(3)));

  /** Two nights and a day in depots and trailers, delivered in the afternoon. */
  public static final JourneyTemplate TWO_DAYS_BY_ROAD =
      template("two days by road", driven(delivered(6)));

  /** Flown overnight and held at a heated counter until the evening. */
  public static final JourneyTemplate HELD_FOR_PICKUP =
      template(
          "held for pickup",
          flown(
              List.of(
                  lasting("van to the counter", Situations.VAN, DESTINATION, 1),
                  until("held at the counter", Situations.COUNTER, DESTINATION, 17, 1))));

  private JourneyTemplates() {}

  /**
   * Returns all templates.
   *
   * @return the constants of this class
   */
  public static List<JourneyTemplate> all() {
    return List.of(OVERNIGHT_BY_AIR, TWO_DAYS_BY_ROAD, HELD_FOR_PICKUP);
  }

  /**
   * Finds a template by its name.
   *
   * @param name the name
   * @return the template
   * @throws stenotherm.base.InvalidInputException if there is none; the message suggests a similar
   *     one
   */
  public static JourneyTemplate named(String name) {
    return Suggestions.find("journey template", name, all(), JourneyTemplate::name);
  }

  private static JourneyTemplate template(String name, List<TemplateLeg> legs) {
    return new JourneyTemplate(
        name, legs, Source.practice("legs and hours of a journey " + name + ", no source"));
  }

  private static List<TemplateLeg> flown(List<TemplateLeg> end) {
    List<TemplateLeg> legs = new ArrayList<>();
    legs.add(until("waiting for collection", Situations.INDOORS, ORIGIN, 17, 0.25));
    legs.add(lasting("collection van", Situations.VAN, ORIGIN, 2));
    legs.add(until("depot at the origin", Situations.DEPOT, ORIGIN, 21, 0.5));
    legs.add(lasting("loading beside the aircraft", Situations.RAMP, ORIGIN, 0.5));
    legs.add(lasting("flight to the hub", Situations.AIRCRAFT_HOLD, ORIGIN, 2.5));
    legs.add(lasting("sorting hub", Situations.HUB, ORIGIN, 3));
    legs.add(lasting("flight to the destination", Situations.AIRCRAFT_HOLD, DESTINATION, 2.5));
    legs.add(lasting("unloading beside the aircraft", Situations.RAMP, DESTINATION, 0.5));
    legs.add(until("depot at the destination", Situations.DEPOT, DESTINATION, 8, 1));
    legs.addAll(end);
    return legs;
  }

  private static List<TemplateLeg> driven(List<TemplateLeg> end) {
    List<TemplateLeg> legs = new ArrayList<>();
    legs.add(until("waiting for collection", Situations.INDOORS, ORIGIN, 17, 0.25));
    legs.add(lasting("collection van", Situations.VAN, ORIGIN, 2));
    legs.add(until("depot at the origin", Situations.DEPOT, ORIGIN, 22, 0.5));
    legs.add(lasting("first night on the road", Situations.TRAILER, ORIGIN, 10));
    legs.add(until("depot on the way", Situations.DEPOT, DESTINATION, 19, 2));
    legs.add(lasting("second night on the road", Situations.TRAILER, DESTINATION, 9));
    legs.add(until("depot at the destination", Situations.DEPOT, DESTINATION, 8, 1));
    legs.addAll(end);
    return legs;
  }

  private static List<TemplateLeg> delivered(double hoursInVan) {
    return List.of(
        lasting("delivery van", Situations.VAN, DESTINATION, hoursInVan),
        lasting("porch", Situations.PORCH_IN_SHADE, DESTINATION, 1));
  }

  private static TemplateLeg lasting(
      String name, Situation situation, TemplateLeg.JourneyEnd end, double hours) {
    return new TemplateLeg(name, situation, end, new TemplateLeg.Lasting(Times.fromHours(hours)));
  }

  private static TemplateLeg until(
      String name,
      Situation situation,
      TemplateLeg.JourneyEnd end,
      int hour,
      double shortestHours) {
    return new TemplateLeg(
        name,
        situation,
        end,
        new TemplateLeg.UntilClock(LocalTime.of(hour, 0), Times.fromHours(shortestHours)));
  }
}
