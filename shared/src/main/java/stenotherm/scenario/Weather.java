package stenotherm.scenario;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.SolAir;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.journey.Place;
import stenotherm.sun.FaceIrradiance;
import stenotherm.text.ScalarNode;
import stenotherm.weather.DayExtremes;
import stenotherm.weather.RecordedWeather;

/** Outdoor temperatures and sun at the places of a journey, from sealing to the end of its hold. */
final class Weather {
  private static final Source GIVEN =
      Source.assumed("daily low and high as the scenario file gives them");

  /** What is left of a start after this many lags, 2e-9 of it, is below round-off. */
  private static final double LAGS_BEFORE = 20;

  /** Longest name that a message repeats. */
  private static final int LONGEST_NAME = 40;

  private final Assumptions assumptions;
  private final ScalarNode sealed;
  private final LocalDateTime sealing;
  private final Place origin;
  private final double end;
  private final double slack;
  private final Map<DescribedPlace, DailyExtremes> courses = new HashMap<>();
  private final Map<GivenDays, DailyExtremes> given = new HashMap<>();

  /** Weather until a planned end, in time since sealing, and for delays after it [s]. */
  Weather(
      Assumptions assumptions,
      ScalarNode sealed,
      LocalDateTime sealing,
      Place origin,
      double planned,
      double slack) {
    this.assumptions = assumptions;
    this.sealed = sealed;
    this.sealing = sealing;
    this.origin = origin;
    this.end = planned + slack;
    this.slack = slack;
  }

  /** How much later a leg may end than planned, by delays before and in it [s]. */
  double slack() {
    return slack;
  }

  /**
   * How long the air of a leg is needed [s]: until it ends with all delays and the hold, and before
   * it for as many lags that its start no longer shows.
   */
  Range times(double start, double lasting, double lag) {
    return new Range(
        Math.max(0, start - LAGS_BEFORE * lag), Math.min(end, start + lasting + slack));
  }

  /** How long the weather is needed: from sealing to the end of the hold [s]. */
  Range times() {
    return new Range(0, end);
  }

  Source source(DescribedPlace site) {
    return site.days().isEmpty() ? RecordedWeather.bundled().source() : GIVEN;
  }

  /** Outdoor temperature [K against s since sealing]. */
  TimeFunction outdoors(DescribedPlace site) {
    return courses.computeIfAbsent(
        site,
        each -> each.days().isEmpty() ? course(site, recorded(site)) : course(site, given(site)));
  }

  /** A daily course from one low and high for all days [K against s since sealing]. */
  DailyExtremes daily(DescribedPlace site, Range range) {
    return given.computeIfAbsent(new GivenDays(site, range), each -> allDays(site, range));
  }

  /** A low and high that legs at a place share. */
  private record GivenDays(DescribedPlace site, Range range) {}

  private DailyExtremes allDays(DescribedPlace site, Range range) {
    List<Range> days = new ArrayList<>();
    for (LocalDate day = firstDay(site); !day.isAfter(lastDay(site)); day = day.plusDays(1)) {
      days.add(range);
    }
    return course(site, days);
  }

  private List<Range> given(DescribedPlace site) {
    LocalDate from =
        site.first().orElseGet(() -> site.place().clockAt(0, sealing, origin).toLocalDate());
    int last = site.days().size() - 1;
    List<Range> days = new ArrayList<>();
    for (LocalDate day = firstDay(site); !day.isAfter(lastDay(site)); day = day.plusDays(1)) {
      int number = Math.toIntExact(day.toEpochDay() - from.toEpochDay());
      days.add(site.days().get(Math.min(Math.max(number, 0), last)));
    }
    if (last > 0 && lastDay(site).toEpochDay() - from.toEpochDay() > last) {
      assumptions.add(
          "Lows and highs at " + site.place().name() + ": later days repeat the last day given.");
    }
    return days;
  }

  private List<Range> recorded(DescribedPlace site) {
    RecordedWeather weather = RecordedWeather.bundled();
    String name = site.place().name();
    List<DayExtremes> all = site.node().locate(() -> days(weather, site.place()));
    LocalDate first = firstDay(site);
    LocalDate last = lastDay(site);
    LocalDate from = all.get(0).date();
    LocalDate to = all.get(all.size() - 1).date();
    if (first.isBefore(from) || last.isAfter(to)) {
      throw sealed.fail(
          "needs the weather of "
              + name
              + " from "
              + first
              + " to "
              + last
              + ", with a day before and after the journey and its hold; the record runs from "
              + from
              + " to "
              + to);
    }
    assumptions.add("Outdoor temperature of " + name + ", daily lows and highs", weather.source());
    return weather.days(name, first, last).stream()
        .map(day -> new Range(day.low(), day.high()))
        .toList();
  }

  private static List<DayExtremes> days(RecordedWeather weather, Place place) {
    try {
      return weather.days(place.name());
    } catch (InvalidInputException unknown) {
      throw new InvalidInputException(
          unknown.field(),
          unknown.problem()
              + ". For others write lows/highs: 28 to 45 °F under journey, for both ends, or for one end {name: "
              + MessageText.of(place.name(), LONGEST_NAME)
              + ", utc: UTC"
              + (place.utcOffset().getTotalSeconds() == 0 ? "" : place.utcOffset().getId())
              + ", lows/highs: 28 to 45 °F}");
    }
  }

  private DailyExtremes course(DescribedPlace site, List<Range> days) {
    Optional<Double> ahead = site.clockAhead();
    String hours = "Temperature over a day, with the low at 5 h and the high from 14 h to 15 h";
    assumptions.add(
        ahead.isPresent()
            ? String.format(
                Locale.ROOT,
                "%s of solar time, from which the clock of %s differs by %+.1f h",
                hours,
                site.place().name(),
                ahead.orElseThrow())
            : hours
                + " by the clock of "
                + site.place().name()
                + ", whose longitude is not given: under daylight saving both are one to two hours"
                + " later",
        DiurnalShape.SOURCE);
    double midnight = site.place().timeOf(firstDay(site).atStartOfDay(), sealing, origin);
    return new DailyExtremes(midnight, days, DiurnalShape.onClock(ahead.orElse(0.0)));
  }

  private LocalDate firstDay(DescribedPlace site) {
    return site.place().clockAt(0, sealing, origin).toLocalDate().minusDays(1);
  }

  private LocalDate lastDay(DescribedPlace site) {
    return site.place().clockAt(end, sealing, origin).toLocalDate().plusDays(1);
  }

  /**
   * Sun and sky over some time [s] on a parcel whose first length points to a heading [°]; needs
   * coordinates.
   */
  Sunshine sunshine(DescribedPlace site, double heading, SolarAbsorptance surface, Range times) {
    DescribedPlace.SkyAbove sun = site.sun().orElseThrow();
    Place place = site.place();
    Map<Face, TimeFunction> irradiance =
        FaceIrradiance.of(
            new stenotherm.sun.SunSite(sun.latitude(), sun.longitude(), place.utcOffset()),
            sun.sky(),
            heading,
            place.clockAt(0, sealing, origin),
            times);
    double skyLoss = skyLoss(site);
    assumptions.add("Sky over " + place.name(), sun.sky().clear().source());
    assumptions.add(
        "Sunlight absorbed by the outside of the box, "
            + surface.nominal()
            + " ("
            + surface.range().low()
            + " to "
            + surface.range().high()
            + ")",
        surface.source());
    return new Sunshine(irradiance, surface, skyLoss);
  }

  /** A sky whose sun is left out or does not get to the parcel: it cools the face that looks up. */
  Sunshine skyOnly(DescribedPlace site) {
    return new Sunshine(Map.of(), SolarAbsorptance.KRAFT_BOARD, skyLoss(site));
  }

  /** What a black face that looks up loses to the sky [W/m2]; all of it open if nobody says. */
  private double skyLoss(DescribedPlace site) {
    assumptions.add(
        "Heat that a face loses to the clear sky (in proportion to the open part: assumed)",
        SolAir.CLEAR_SKY_SOURCE);
    double clouds = site.sun().map(sun -> sun.sky().cloudCover()).orElse(0.0);
    return SolAir.CLEAR_SKY_LOSS * (1 - clouds);
  }
}
