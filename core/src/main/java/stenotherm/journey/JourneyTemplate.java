package stenotherm.journey;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stenotherm.ambient.Situation;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

/**
 * A named kind of journey: its legs, their surroundings and their usual hours.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name, as scenario files call it
 * @param legs the legs in their order, at least one
 * @param source where legs and hours come from
 */
public record JourneyTemplate(String name, List<TemplateLeg> legs, Source source) {
  /** Waits at least this long are reported [s]. */
  private static final double LONG_WAIT = Times.fromHours(12);

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** Lagged air is computed from this many lags before its leg, but not from before sealing. */
  private static final double LAGS = 4;

  /**
   * Checks the name and that there is a leg.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank or there is no leg
   */
  public JourneyTemplate {
    Checks.given("name", name);
    Checks.given("legs", legs);
    Checks.given("source", source);
    Checks.name("journey template", name);
    legs = Checks.notEmpty("legs of " + name, legs);
  }

  /**
   * When a parcel starts. A value, thus thread-safe.
   *
   * @param sealing when the parcel is sealed, on the clock of the origin
   * @param temperature temperature of everything in it [K]
   */
  public record Start(LocalDateTime sealing, double temperature) {
    /**
     * Checks the temperature.
     *
     * @throws stenotherm.base.InvalidInputException if it is not absolute
     */
    public Start {
      Checks.given("sealing", sealing);
      Checks.temperature("start temperature", temperature);
    }
  }

  /**
   * Makes the journey. Every leg takes the pressure, the films, the stowage and the temperature of
   * its situation; where its air follows the outdoor temperature, it shares the uncertainty of
   * that.
   *
   * @param start when and how warm the parcel is sealed
   * @param origin weather where it is sent from
   * @param destination weather where it is sent to
   * @param hold how long delays are to be followed [s], 0 or above; the weather must be known from
   *     sealing until so long after the planned opening
   * @return the journey, the parcel upright
   * @throws stenotherm.base.InvalidInputException if an outdoor temperature is not known long
   *     enough
   */
  public Journey journey(Start start, Outdoors origin, Outdoors destination, double hold) {
    Checks.notNegative("hold", hold, "s");
    List<Double> durations = durations(start.sealing(), origin.place(), destination.place());
    double end = durations.stream().mapToDouble(Double::doubleValue).sum() + hold;
    List<Leg> made = new ArrayList<>();
    double time = 0;
    for (int index = 0; index < legs.size(); index++) {
      TemplateLeg leg = legs.get(index);
      Outdoors there = leg.end() == TemplateLeg.JourneyEnd.ORIGIN ? origin : destination;
      Situation situation = leg.situation();
      double from = Math.max(0, time - LAGS * situation.rule().lag());
      TimeFunction air = situation.rule().course(there.temperature(), new Range(from, end));
      double shared =
          there.spread()
              * situation.rule().passedOn(air, new Range(time, time + durations.get(index)));
      Surroundings surroundings =
          Surroundings.of(air, new AmbientSpread(situation.spread(), shared), situation)
              .under(situation.sunlit() ? there.sunshine() : Sunshine.NONE);
      made.add(
          new Leg(
              leg.name(), there.place(), durations.get(index), surroundings, situation.source()));
      time += durations.get(index);
    }
    Place first = made.get(0).place();
    return new Journey(
        first.clockAt(0, start.sealing(), origin.place()), start.temperature(), made);
  }

  /**
   * Returns how long the legs last, for reports that echo what a template stands for.
   *
   * @param sealing when the parcel is sealed, on the clock of the origin
   * @param origin where it is sent from
   * @param destination where it is sent to
   * @return duration of each leg [s]
   */
  public List<Double> durations(LocalDateTime sealing, Place origin, Place destination) {
    List<Double> durations = new ArrayList<>();
    double time = 0;
    for (TemplateLeg leg : legs) {
      Place there = leg.end() == TemplateLeg.JourneyEnd.ORIGIN ? origin : destination;
      double duration = leg.timing().duration(there.clockAt(time, sealing, origin));
      durations.add(duration);
      time += duration;
    }
    return List.copyOf(durations);
  }

  /**
   * Returns what a user who chose the hour of sealing should know: legs that wait half a day or
   * more for their hour, and legs that just miss it, which go on as soon as they can.
   *
   * @param sealing when the parcel is sealed, on the clock of the origin
   * @param origin where it is sent from
   * @param destination where it is sent to
   * @return sentences; empty if the hours suit the template
   */
  public List<String> unusualWaits(LocalDateTime sealing, Place origin, Place destination) {
    List<String> sentences = new ArrayList<>();
    double time = 0;
    for (TemplateLeg leg : legs) {
      Place there = leg.end() == TemplateLeg.JourneyEnd.ORIGIN ? origin : destination;
      LocalDateTime start = there.clockAt(time, sealing, origin);
      double duration = leg.timing().duration(start);
      Optional<TemplateLeg.UntilClock> waiting = leg.timing().untilClock();
      if (waiting.isPresent()) {
        TemplateLeg.UntilClock until = waiting.get();
        String begins =
            "'" + leg.name() + "' begins at " + CLOCK.format(start) + " and would end at ";
        String lasts = Checks.show(Times.toHours(duration), "h");
        if (until.misses(start)) {
          sentences.add(
              begins
                  + until.clock()
                  + ", which it misses: the parcel is taken to go on after "
                  + lasts
                  + ".");
        } else if (duration >= LONG_WAIT) {
          sentences.add(
              begins + until.clock() + ": the parcel is taken to wait " + lasts + " for it.");
        }
      }
      time += duration;
    }
    return List.copyOf(sentences);
  }
}
