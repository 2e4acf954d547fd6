package stenotherm.scenario;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Underside;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.weather.DayExtremes;
import stenotherm.weather.RecordedWeather;

/** Reads the journey of a scenario. */
final class JourneyReader {
  /** Spread of an outdoor temperature if the file does not say [K]. */
  private static final double OUTDOOR_SPREAD = 2;

  /** Spread of a temperature that the file gives if it does not say [K]. */
  private static final double GIVEN_SPREAD = 3;

  /** More than any journey; keeps dates within what calendars can count. */
  private static final double LONGEST_JOURNEY = Times.fromDays(365);

  /** What a leg may last [s]. */
  private static final Range LEG_DURATIONS = new Range(Times.fromMinutes(1), Times.fromDays(30));

  /** What a parcel may have at its start [K]. */
  private static final Range TEMPERATURES = new Range(180, 400);

  private static final Source GIVEN =
      Source.assumed("ambient temperature and duration as the scenario file gives them");

  /** A place and where the file names it. */
  private record Site(Place place, Node node) {}

  /** An ambient temperature, how well it is known, and from where. */
  private record Surroundings(TimeFunction course, double spread, Source source) {}

  private final Assumptions assumptions;
  private final double hold;

  JourneyReader(Assumptions assumptions, double hold) {
    this.assumptions = assumptions;
    this.hold = hold;
  }

  Journey read(Node node) {
    if (node instanceof ScalarNode) {
      throw node.fail("must be written out leg by leg, named journeys cannot be used yet");
    }
    Section journey = Section.of(node, Vocabulary.JOURNEY, assumptions);
    ScalarNode sealed = journey.require("sealed").asScalar();
    LocalDateTime sealing = sealed.localDateTime();
    ScalarNode started = journey.require("start").asScalar();
    double startTemperature = started.temperature();
    started.locate(
        () ->
            Checks.within(
                "temperature", startTemperature, TEMPERATURES, "K", "20 °C is 293.15 K."));
    Map<String, Site> sites = new LinkedHashMap<>();
    Site origin = site(journey.require("from"));
    sites.put("origin", origin);
    sites.put("destination", site(journey.require("to")));

    Node legsNode = journey.require("legs");
    List<MappingNode> nodes = legsNode.asSequence().mappings();
    if (nodes.isEmpty()) {
      throw legsNode.fail("must have at least one leg");
    }
    List<Leg> legs = new ArrayList<>();
    LocalDateTime sealingUtc = utc(sealing, origin.place());
    double time = 0;
    for (int index = 0; index < nodes.size(); index++) {
      boolean last = index == nodes.size() - 1;
      MappingNode legNode = nodes.get(index);
      double start = time;
      Leg leg =
          Names.within(
              legNode,
              () ->
                  new LegReader(
                          Section.of(legNode, Vocabulary.LEG, assumptions), sealed, sealingUtc)
                      .read(sites, start, last ? hold : 0));
      legs.add(leg);
      time += leg.duration();
    }
    addFilms();
    // A journey counts its clock from the place of its first leg, the file from the origin.
    ZoneOffset first = legs.get(0).place().utcOffset();
    return new Journey(sealingUtc.plusSeconds(first.getTotalSeconds()), startTemperature, legs);
  }

  private static LocalDateTime utc(LocalDateTime local, Place place) {
    return local.minusSeconds(place.utcOffset().getTotalSeconds());
  }

  private static Site site(Node node) {
    ScalarNode scalar = node.asScalar();
    String text = scalar.text();
    int comma = text.lastIndexOf(',');
    if (comma < 1) {
      throw node.fail("must be a place and its offset from UTC, write for example New York, UTC-5");
    }
    String name = scalar.piece(text.substring(0, comma)).text();
    ZoneOffset offset = scalar.piece(text.substring(comma + 1)).utcOffset();
    return new Site(new Place(name, offset), node);
  }

  private void addFilms() {
    assumptions.add(
        "Emissivity of the faces, " + FaceFilms.BOARD_EMISSIVITY,
        FaceFilms.BOARD_EMISSIVITY_SOURCE);
    assumptions.add(
        "The parcel rests on a hard floor, "
            + Underside.Resting.onHardFloor().resistance()
            + " m2 K/W",
        Underside.Resting.HARD_FLOOR_SOURCE);
  }

  /** Reads one leg. */
  private final class LegReader {
    private final Section node;
    private final ScalarNode sealed;
    private final LocalDateTime sealingUtc;

    LegReader(Section node, ScalarNode sealed, LocalDateTime sealingUtc) {
      this.node = node;
      this.sealed = sealed;
      this.sealingUtc = sealingUtc;
    }

    Leg read(Map<String, Site> sites, double start, double held) {
      String name = node.require("name").asScalar().text();
      Site site = node.require("at").asScalar().choice(Collections.unmodifiableMap(sites));
      ScalarNode lasting = node.require("for").asScalar();
      double duration = lasting.duration();
      // Checked before days are fetched, so that a long leg is not called a wrong date.
      if (!LEG_DURATIONS.contains(duration)) {
        throw lasting.fail("must lie between 1 min and 30 d");
      }
      if (!LEG_DURATIONS.contains(duration + held)) {
        throw lasting.fail("must not be longer than 30 d together with the hold");
      }
      double end = start + duration + held;
      if (end > LONGEST_JOURNEY) {
        throw lasting.fail("makes the journey longer than 365 d, with its hold");
      }
      Surroundings around = surroundings(site, start, end);
      return new Leg(
          name, site.place(), duration, around.course(), around.spread(), films(), around.source());
    }

    private Surroundings surroundings(Site site, double start, double end) {
      ScalarNode ambient = node.require("ambient").asScalar();
      String text = ambient.text();
      if (text.equals("outdoors")) {
        List<DayExtremes> days = recorded(site, start, end);
        return new Surroundings(
            course(
                site, start, days.stream().map(day -> new Range(day.low(), day.high())).toList()),
            spread(OUTDOOR_SPREAD, "an outdoor temperature"),
            RecordedWeather.bundled().source());
      }
      if (text.matches("(?s).*\\sto\\s.*")) {
        Range range = ambient.temperatureRange();
        int count =
            Math.toIntExact(lastDay(site, end).toEpochDay() - firstDay(site, start).toEpochDay());
        List<Range> days = Collections.nCopies(count + 1, range);
        return new Surroundings(
            ambient.locate(() -> course(site, start, days)),
            spread(OUTDOOR_SPREAD, "an outdoor temperature"),
            GIVEN);
      }
      if (!text.matches("(?s).*[0-9].*")) {
        throw ambient.fail(
            "must be outdoors, a temperature such as 12 °C, or a daily low and high such as"
                + " -2 to 6 °C");
      }
      double temperature = ambient.temperature();
      return new Surroundings(
          ambient.locate(() -> Ambient.constant(temperature)),
          spread(GIVEN_SPREAD, "a constant ambient temperature"),
          GIVEN);
    }

    private double spread(double preset, String what) {
      Node given = node.optional("spread").orElse(null);
      if (given == null) {
        node.tell("spread", (int) preset + " K for " + what, "assumed");
        return preset;
      }
      double spread = given.asScalar().temperatureDifference();
      return given.locate(() -> Checks.notNegative("ambient spread", spread, "K"));
    }

    private List<DayExtremes> recorded(Site site, double start, double end) {
      RecordedWeather weather = RecordedWeather.bundled();
      String name = site.place().name();
      List<DayExtremes> all = site.node().locate(() -> weather.days(name));
      LocalDate first = firstDay(site, start);
      LocalDate last = lastDay(site, end);
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
                + ", with a day before and after the leg and its hold; the record runs from "
                + from
                + " to "
                + to);
      }
      assumptions.add(
          "Outdoor temperature of " + name + ", daily lows and highs", weather.source());
      return weather.days(name, first, last);
    }

    private DailyExtremes course(Site site, double start, List<Range> days) {
      assumptions.add(
          "Course of a day between its low at 5 h and its high from 14 h to 15 h, the local clock"
              + " taken as solar time",
          DiurnalShape.SOURCE);
      LocalDateTime midnight = utc(firstDay(site, start).atStartOfDay(), site.place());
      return new DailyExtremes(
          Duration.between(sealingUtc, midnight).toSeconds(), days, DiurnalShape.SOLAR_TIME);
    }

    private LocalDate firstDay(Site site, double start) {
      return local(site, start).toLocalDate().minusDays(1);
    }

    private LocalDate lastDay(Site site, double end) {
      return local(site, end).toLocalDate().plusDays(1);
    }

    private LocalDateTime local(Site site, double time) {
      return sealingUtc
          .plusSeconds((long) time)
          .plusSeconds(site.place().utcOffset().getTotalSeconds());
    }

    private FaceFilms films() {
      Node wind = node.optional("wind").orElse(null);
      if (wind == null) {
        node.tell("wind", "still air", "rule of ISO 6946, assumed to hold");
        return FaceFilms.indoors();
      }
      double speed = wind.asScalar().speed();
      AirMovement moving = wind.locate(() -> new AirMovement.Moving(speed));
      return new FaceFilms(moving, FaceFilms.BOARD_EMISSIVITY, Underside.Resting.onHardFloor());
    }
  }
}
