package stenotherm.report;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stenotherm.base.Range;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.journey.Place;
import stenotherm.scenario.JourneyPlan.StatedWeather;
import stenotherm.scenario.Scenario;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * In which weather a packing sheet does not hold, in terms of what was read: a packer has a
 * forecast, not the air of vans and halls.
 */
final class SheetWeather {
  private static final String ANEW = ": compute anew.";

  /** How often the air is looked at [s]. */
  private static final double INTERVAL = Times.fromMinutes(10);

  private final Scenario scenario;
  private final Journey journey;
  private final Figures figures;

  SheetWeather(Scenario scenario) {
    this.scenario = scenario;
    this.journey = scenario.journey();
    this.figures = new Figures(scenario.units());
  }

  List<String> sentences() {
    Map<Place, Range> forecast = new LinkedHashMap<>();
    List<String> recorded = new ArrayList<>();
    for (StatedWeather each : scenario.plan().weather()) {
      if (each.days().isEmpty()) {
        recorded.add(each.place().name());
      } else {
        forecast.put(each.place(), range(each));
      }
    }
    List<String> sentences = new ArrayList<>();
    if (!forecast.isEmpty()) {
      sentences.add(unlessForecast(forecast));
    }
    if (!recorded.isEmpty()) {
      sentences.add(
          "In other weather than that on record at "
              + Figures.listed(recorded)
              + " for "
              + days()
              + ANEW);
    }
    if (sentences.isEmpty()) {
      Range air = air();
      sentences.add(
          "If the air around the box may at any time be below "
              + figures.temperature(air.low())
              + " or above "
              + figures.temperature(air.high())
              + ": no forecast was read, compute anew.");
    }
    return sentences;
  }

  private String unlessForecast(Map<Place, Range> forecast) {
    Collection<Range> ranges = forecast.values();
    Range first = ranges.iterator().next();
    if (forecast.size() > 1 && ranges.stream().allMatch(first::equals)) {
      return "If "
          + outside(first)
          + " is forecast at "
          + (forecast.size() == 2 ? "either end" : "any place")
          + ANEW;
    }
    return forecast.entrySet().stream()
        .map(each -> outside(each.getValue()) + " is forecast at " + each.getKey().name())
        .collect(Collectors.joining(", or ", "If ", ANEW));
  }

  private String outside(Range range) {
    return "a low under "
        + figures.temperature(range.low())
        + " or a high above "
        + figures.temperature(range.high());
  }

  /** Lowest low and highest high of the days from sealing to opening. */
  private Range range(StatedWeather weather) {
    Place origin = journey.legs().get(0).place();
    long first = day(weather.place().clockAt(0, journey.sealing(), origin));
    long last = day(weather.place().clockAt(journey.duration(), journey.sealing(), origin));
    Range all = weather.days().get(0);
    for (int day = 1; day <= last - first && day < weather.days().size(); day++) {
      Range next = weather.days().get(day);
      all = new Range(Math.min(all.low(), next.low()), Math.max(all.high(), next.high()));
    }
    return all;
  }

  private static long day(LocalDateTime time) {
    return time.toLocalDate().toEpochDay();
  }

  /** For example "Wednesday 15 January 2014 to Thursday 16 January 2014". */
  private String days() {
    LocalDateTime sealed = journey.sealing();
    LocalDateTime opened = journey.localClock(journey.duration());
    String first = day(sealed) == day(opened) ? "" : dated(sealed) + " to ";
    return first + dated(opened);
  }

  private String dated(LocalDateTime time) {
    return figures.day(time.toLocalDate())
        + (figures.units() == Units.US ? ", " : " ")
        + time.getYear();
  }

  /** The air that parcels meet on the journey as stated. */
  private Range air() {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double time = 0; time < journey.duration(); time += INTERVAL) {
      double ambient = journey.ambientAt(time);
      low = Math.min(low, ambient);
      high = Math.max(high, ambient);
    }
    return new Range(low, high);
  }
}
