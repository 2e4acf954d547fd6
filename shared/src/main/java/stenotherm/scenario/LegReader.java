package stenotherm.scenario;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import stenotherm.air.StandardAtmosphere;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Situation;
import stenotherm.ambient.Situations;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.ambient.Underside;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Contact;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;

/** Reads one leg: first how long it lasts, then, when the weather is known, its surroundings. */
final class LegReader {
  /** Heading of a parcel whose first length points east [°]. */
  static final double EAST = 90;

  private static final String OUTDOORS = "outdoors";
  private static final String ASSUMED = "assumed";

  /** What a leg may last [s]. */
  private static final Range DURATIONS = new Range(Times.fromMinutes(1), Times.fromDays(30));

  private static final double LONGEST_DELAY = Times.fromDays(30);

  /** Spread of readings if the file does not say [K]. */
  private static final AmbientSpread READ_SPREAD = AmbientSpread.ofItsOwn(2);

  /** Spread of a constant temperature if the file does not say [K]. */
  private static final AmbientSpread GIVEN_SPREAD = AmbientSpread.ofItsOwn(3);

  private static final Source GIVEN =
      Source.assumed("ambient temperature and duration as the scenario file gives them");

  /** Outdoor temperature for surroundings that do not ask for it. */
  private static final TimeFunction NO_WEATHER = TimeFunction.constant(Temperatures.fromCelsius(0));

  private static final Pattern FOLLOWING =
      Pattern.compile(
          "outdoors(?:\\s*([+\\-−])\\s*([^,]+?))?(?:\\s*,\\s*lag\\s+(.+))?", Pattern.DOTALL);
  private static final Pattern NUMBER_FIRST =
      Pattern.compile("[\\s+\\-−.]*[0-9].*", Pattern.DOTALL);
  private static final Pattern READING =
      Pattern.compile(
          "(?is)(?:(.*\\d{4}.*?)(?:T|\\s*,\\s*|\\s+))?"
              + "(\\d{1,2}(?::\\d\\d)?\\s*[ap]\\.?m\\b\\.?|\\d{1,2}:\\d\\d)\\s+(\\S.*)");

  private static final Map<String, Orientation> ORIENTATIONS = orientations();

  private static final Map<String, Stowage> STOWAGES = stowages();

  private static final Map<String, Underside> UNDERSIDES =
      Map.of("hard floor", Underside.Resting.onHardFloor(), "wire shelf", new Underside.Open());

  private final KeyedSection section;
  private final JourneyReader.Trip trip;
  private final String name;
  private final DescribedPlace site;
  private final double start;
  private final double duration;
  private final double delay;

  private LegReader(
      KeyedSection section,
      JourneyReader.Trip trip,
      String name,
      DescribedPlace site,
      double start) {
    this.section = section;
    this.trip = trip;
    this.name = name;
    this.site = site;
    this.start = start;
    this.duration = duration();
    this.delay = delay();
  }

  /** Reads name, place and duration of a leg that starts at a time since sealing [s]. */
  static LegReader of(KeyedSection section, JourneyReader.Trip trip, double start, double hold) {
    String name = section.require("name").asScalar().text();
    DescribedPlace site = trip.sites().at(section.require("at").asScalar());
    LegReader leg = new LegReader(section, trip, name, site, start);
    leg.checkHold(hold);
    return leg;
  }

  /** Which face is up, by its words. */
  static Map<String, Orientation> orientations() {
    Map<String, Orientation> all = new LinkedHashMap<>();
    all.put("lid up", Orientation.LID_UP);
    all.put("lid down", Orientation.LID_DOWN);
    all.put("left up", Orientation.X_MIN_UP);
    all.put("right up", Orientation.X_MAX_UP);
    all.put("front up", Orientation.Y_MIN_UP);
    all.put("back up", Orientation.Y_MAX_UP);
    return Collections.unmodifiableMap(all);
  }

  private static Map<String, Stowage> stowages() {
    Map<String, Stowage> all = new LinkedHashMap<>();
    for (Stowage each : Stowage.values()) {
      all.put(each.words(), each);
    }
    return Collections.unmodifiableMap(all);
  }

  static List<String> stowageNames() {
    return List.copyOf(STOWAGES.keySet());
  }

  static List<String> orientationNames() {
    return List.copyOf(ORIENTATIONS.keySet());
  }

  static List<String> situationNames() {
    return Situations.all().stream().map(Situation::name).toList();
  }

  /** Planned duration and delay [s]. */
  double lasting() {
    return duration + delay;
  }

  private double duration() {
    Node lasting = section.optional("for").orElse(null);
    Node until = section.optional("until").orElse(null);
    if (lasting != null && until != null) {
      throw section.node().failAt("until", "cannot be given together with for");
    }
    if (until != null) {
      return until(until.asScalar());
    }
    ScalarNode node = section.require("for").asScalar();
    return checked(node, node.duration());
  }

  private static double checked(ScalarNode node, double duration) {
    if (!DURATIONS.contains(duration)) {
      throw node.fail("must lie between 1 min and 30 d");
    }
    return duration;
  }

  /** Until the clock of the place next shows a time, or until a date and a time. */
  private double until(ScalarNode node) {
    if (node.isDated()) {
      double duration = timeOf(node.localDateTime()) - start;
      if (!(duration > 0)) {
        throw node.fail("must come after the start of the leg, which is at " + startClock());
      }
      return checked(node, duration);
    }
    LocalTime time = node.clock();
    LocalDateTime begin = clock(start);
    LocalDateTime end = begin.toLocalDate().atTime(time);
    return checked(node, timeOf(end.isAfter(begin) ? end : end.plusDays(1)) - start);
  }

  private LocalDateTime clock(double time) {
    return site.place().clockAt(time, trip.sealing(), originPlace());
  }

  private String startClock() {
    return clock(start).toString().replace('T', ' ');
  }

  private double timeOf(LocalDateTime clock) {
    return site.place().timeOf(clock, trip.sealing(), originPlace());
  }

  private Place originPlace() {
    return trip.sites().origin().place();
  }

  private double delay() {
    ScalarNode node = section.optional("delay").map(Node::asScalar).orElse(null);
    if (node == null) {
      return 0;
    }
    double seconds = node.duration();
    if (!(seconds >= 0) || seconds > LONGEST_DELAY) {
      throw node.fail("must lie between 0 and 30 d");
    }
    return seconds;
  }

  /** A delay that is followed after the leg must not make it longer than a leg may be. */
  private void checkHold(double hold) {
    if (delay + hold > LONGEST_DELAY) {
      throw section.node().failAt("delay", "must not be longer than 30 d together with the hold");
    }
    if (start + lasting() + hold > JourneyReader.LONGEST_JOURNEY) {
      throw section
          .require(section.has("until") ? "until" : "for")
          .fail("makes the journey longer than 30 d, with its hold");
    }
  }

  Leg read(Weather weather) {
    Faults faults = new Faults();
    Optional<Air> known = faults.attempt(() -> air(weather));
    Optional<Orientation> orientation =
        faults.attempt(() -> section.value("orientation").asScalar().choice(ORIENTATIONS));
    // the rest is checked even if the air is not known
    Air air = known.orElse(Air.of(NO_WEATHER, GIVEN_SPREAD, GIVEN));
    Optional<AmbientSpread> spread = faults.attempt(() -> spread(air));
    Optional<FaceFilms> films = faults.attempt(() -> films(air));
    Optional<Stowage> stowage = faults.attempt(() -> stowage(air));
    Optional<Double> altitude = faults.attempt(() -> altitude(air));
    Optional<List<Contact>> contacts = faults.attempt(() -> contacts(air));
    Optional<Sunshine> sunshine =
        known.isEmpty() ? Optional.empty() : faults.attempt(() -> sunshine(air, weather));
    faults.throwIfAny();
    Surroundings surroundings =
        new Surroundings(
            air.course(),
            spread.orElseThrow(),
            films.orElseThrow(),
            stowage.orElseThrow(),
            orientation.orElseThrow(),
            altitude.orElseThrow(),
            sunshine.orElseThrow(),
            contacts.orElseThrow());
    return section
        .node()
        .locate(() -> new Leg(name, site.place(), duration, delay, surroundings, air.source()));
  }

  /**
   * The air of a leg, and what else holds there if the file does not say.
   *
   * @param course its temperature [K against s since sealing]
   * @param spread how far the true temperature may be above or below
   * @param movement how it moves
   * @param stowage whether the parcel stands alone in it or lies among others
   * @param altitude altitude whose pressure it has [m]
   * @param sunlit whether the sun gets there
   * @param basis where all but the course comes from, in words
   * @param source where the course comes from
   */
  private record Air(
      TimeFunction course,
      AmbientSpread spread,
      AirMovement movement,
      Stowage stowage,
      double altitude,
      boolean sunlit,
      String basis,
      Source source) {
    /** Air that nothing else is known of: still, with the parcel alone, in the shade, low down. */
    static Air of(TimeFunction course, AmbientSpread spread, Source source) {
      return new Air(course, spread, AirMovement.STILL, Stowage.ALONE, 0, false, ASSUMED, source);
    }
  }

  /** Tells whether a leg needs no weather, because it gives its temperature or is heated. */
  static boolean hasOwnAmbient(MappingNode leg) {
    Node ambient = leg.optional("ambient").orElse(leg);
    if (!(ambient instanceof ScalarNode scalar)) {
      return ambient instanceof SequenceNode;
    }
    String text = scalar.isBlank() ? "" : scalar.text();
    return NUMBER_FIRST.matcher(text).matches()
        || Situations.all().stream()
            .anyMatch(each -> each.name().equalsIgnoreCase(text) && !each.rule().followsOutdoors());
  }

  private Air air(Weather weather) {
    Node node = section.require("ambient");
    if (node instanceof SequenceNode list) {
      return Air.of(series(list, weather.times().high()), READ_SPREAD, GIVEN);
    }
    ScalarNode scalar = node.asScalar();
    String text = scalar.text();
    Matcher following = FOLLOWING.matcher(text);
    if (following.matches()) {
      return Air.of(
          following(scalar, following, weather),
          new AmbientSpread(0, site.spread()),
          weather.source(site));
    }
    if (scalar.isRange()) {
      Range range = PlausibleTemperatures.ofAir(scalar);
      return Air.of(
          scalar.locate(() -> weather.daily(site, range)),
          new AmbientSpread(0, Sites.GIVEN_DAYS_SPREAD),
          GIVEN);
    }
    if (NUMBER_FIRST.matcher(text).matches()) {
      double temperature = PlausibleTemperatures.air(scalar);
      return Air.of(scalar.locate(() -> Ambient.constant(temperature)), GIVEN_SPREAD, GIVEN);
    }
    return named(scalar, weather);
  }

  private Air named(ScalarNode node, Weather weather) {
    List<String> names = Stream.concat(Stream.of(OUTDOORS), situationNames().stream()).toList();
    for (Situation each : Situations.all()) {
      if (each.name().equalsIgnoreCase(node.text())) {
        return named(node, each, weather);
      }
    }
    throw node.fail(
        Suggestions.unknown("surroundings", node.text(), names).problem()
            + " Or write a temperature such as 12 °C, or a daily low and high such as -2 to 6 °C");
  }

  private Air named(ScalarNode node, Situation situation, Weather weather) {
    section.assumptions().situation(situation);
    boolean follows = situation.rule().followsOutdoors();
    Range times = weather.times(start, lasting(), situation.rule().lag());
    TimeFunction course =
        node.locate(() -> situation.rule().course(follows ? outdoors(weather) : NO_WEATHER, times));
    double shared =
        site.spread() * situation.rule().passedOn(course, new Range(start, start + lasting()));
    return new Air(
        course,
        new AmbientSpread(situation.spread(), shared),
        situation.films().movement(),
        situation.stowage(),
        situation.altitude(),
        situation.sunlit(),
        situation.name(),
        situation.source());
  }

  private TimeFunction outdoors(Weather weather) {
    trip.sites().coordinatesUsed(site);
    return weather.outdoors(site);
  }

  private TimeFunction following(ScalarNode node, Matcher parts, Weather weather) {
    TimeFunction outdoors = outdoors(weather);
    String offsetText = parts.group(2);
    String lagText = parts.group(3);
    if (offsetText == null && lagText == null) {
      return outdoors;
    }
    double offset = 0;
    if (offsetText != null) {
      double size = node.piece(offsetText).temperatureDifference();
      offset = parts.group(1).equals("+") ? size : -size;
    }
    double lag = lagText == null ? 0 : node.piece(lagText).duration();
    double warmer = offset;
    Range times = weather.times(start, lasting(), Math.max(0, lag));
    return node.locate(() -> Ambient.following(outdoors, times, warmer, lag));
  }

  /** Readings at clock times; before the first and after the last the temperature stays. */
  private TimeFunction series(SequenceNode list, double end) {
    List<Double> times = new ArrayList<>();
    List<Double> temperatures = new ArrayList<>();
    LocalDateTime previous = null;
    for (ScalarNode each : list.scalars()) {
      Matcher parts = READING.matcher(each.text());
      if (!parts.matches()) {
        throw each.fail("must be a clock time and a temperature, write for example 18:00 12 °C");
      }
      LocalDateTime clock = clock(each, parts, previous);
      double time = timeOf(clock);
      if (previous != null && !clock.isAfter(previous)) {
        throw each.fail("must come after the reading before it");
      }
      if (previous == null && time > start) {
        throw each.fail("must not come after the start of the leg, which is at " + startClock());
      }
      times.add(time);
      temperatures.add(PlausibleTemperatures.air(each.piece(parts.group(3))));
      previous = clock;
    }
    double last = temperatures.get(temperatures.size() - 1);
    if (times.get(times.size() - 1) < end) {
      times.add(end);
      temperatures.add(last);
      section.tell("ambient", "the last reading holds until the end", "assumed");
    }
    return list.locate(
        () ->
            Ambient.series(
                times.stream().mapToDouble(Double::doubleValue).toArray(),
                temperatures.stream().mapToDouble(Double::doubleValue).toArray()));
  }

  /** A reading without a date is the next after the one before; the first the last before start. */
  private LocalDateTime clock(ScalarNode node, Matcher parts, @Nullable LocalDateTime previous) {
    if (parts.group(1) != null) {
      return node.piece(parts.group(1).strip() + " " + parts.group(2)).localDateTime();
    }
    LocalTime time = node.piece(parts.group(2)).clock();
    if (previous == null) {
      LocalDateTime begin = clock(start);
      LocalDateTime today = begin.toLocalDate().atTime(time);
      return today.isAfter(begin) ? today.minusDays(1) : today;
    }
    LocalDateTime sameDay = previous.toLocalDate().atTime(time);
    return sameDay.isAfter(previous) ? sameDay : sameDay.plusDays(1);
  }

  /** What the file gives is the whole; how much of it is the weather's stays in proportion. */
  private AmbientSpread spread(Air air) {
    Node node = section.optional("spread").orElse(null);
    if (node == null) {
      section.tell("spread", Assumptions.number(air.spread().total()) + " K", air.basis());
      return air.spread();
    }
    double total = node.asScalar().temperatureDifference();
    return node.locate(() -> air.spread().adjustedTo(total));
  }

  private Stowage stowage(Air air) {
    Stowage stowage =
        section.value("stowed", air.stowage().words(), air.basis()).asScalar().choice(STOWAGES);
    section.assumptions().stowage(stowage);
    return stowage;
  }

  private FaceFilms films(Air air) {
    ScalarNode resting = section.value("resting").asScalar();
    Underside underside = UNDERSIDES.get(resting.text());
    if (underside == null) {
      double resistance = resting.thermalResistance();
      underside = resting.locate(() -> new Underside.Resting(resistance));
    }
    return new FaceFilms(movement(air), FaceFilms.BOARD_EMISSIVITY, underside);
  }

  private AirMovement movement(Air air) {
    Node wind = section.optional("wind").orElse(null);
    if (wind == null) {
      String words =
          air.movement() instanceof AirMovement.Moving moving
              ? Assumptions.number(moving.speed()) + " m/s"
              : "still air";
      boolean isAssumed = air.basis().equals(ASSUMED);
      section.tell("wind", words, isAssumed ? "rule of ISO 6946, assumed to hold" : air.basis());
      return air.movement();
    }
    double speed = wind.asScalar().speed();
    return wind.locate(() -> new AirMovement.Moving(speed));
  }

  private double altitude(Air air) {
    String usual = Assumptions.number(Math.rint(air.altitude())) + " m";
    Node node = section.value("altitude", usual, air.basis());
    double altitude = node.asScalar().length();
    return node.locate(() -> StandardAtmosphere.checked("altitude", altitude));
  }

  private Sunshine sunshine(Air air, Weather weather) {
    ScalarNode sun = section.value("sun", air.sunlit() ? "yes" : "no", air.basis()).asScalar();
    boolean shines = sun.yesOrNo();
    ScalarNode open = section.value("sky", shines ? "yes" : "no", "as the sun").asScalar();
    boolean seesSky = open.yesOrNo();
    if (shines && !seesSky) {
      throw open.fail("must be yes where the sun shines");
    }
    if (!shines || site.sun().isEmpty()) {
      if (section.has("heading")) {
        throw section.node().failAt("heading", "has no effect without sun");
      }
      if (shines && section.has("sun")) {
        throw sun.fail("needs latitude and longitude of " + site.place().name());
      }
      if (shines) {
        section.assumptions().shaded(site.place());
      }
      return seesSky ? weather.skyOnly(site) : Sunshine.NONE;
    }
    ScalarNode heading = section.value("heading").asScalar();
    double degrees = heading.angle();
    Range times = new Range(start, start + lasting() + weather.slack());
    trip.sites().coordinatesUsed(site);
    return heading.locate(
        () -> weather.sunshine(site, degrees, JourneyReader.surface(trip.journey()), times));
  }

  private List<Contact> contacts(Air air) {
    Node node = section.optional("touches").orElse(null);
    if (node == null) {
      return List.of();
    }
    List<Contact> contacts = new ArrayList<>();
    Faults faults = new Faults();
    for (MappingNode each : node.asSequence().mappings()) {
      faults
          .attempt(
              () -> contact(KeyedSection.of(each, Vocabulary.CONTACT, section.assumptions()), air))
          .ifPresent(
              contact -> {
                if (contacts.stream().anyMatch(contact::overlaps)) {
                  faults.add(
                      each.fail("overlaps one before it on the same face, give each its own part"));
                }
                contacts.add(contact);
              });
    }
    faults.throwIfAny();
    return contacts;
  }

  /** Something that touches a part of a face. */
  private static Contact contact(KeyedSection contact, Air air) {
    Face face = Faces.of(contact.require("face").asScalar());
    Range first = part(contact.value("along").asScalar());
    Range second = part(contact.value("across").asScalar());
    ScalarNode neighbour = contact.require("neighbour").asScalar();
    Contact.Condition condition;
    if (neighbour.text().equals("packed alike")) {
      if (contact.has("resistance")) {
        throw contact.node().failAt("resistance", "has no effect for a neighbour packed alike");
      }
      condition = new Contact.Insulated();
    } else {
      TimeFunction temperature = air.course();
      if (!neighbour.text().equals("as the air")) {
        double kelvin = neighbour.temperature();
        temperature = neighbour.locate(() -> Ambient.constant(kelvin));
      }
      TimeFunction touched = temperature;
      Node between = contact.value("resistance");
      double resistance = between.asScalar().thermalResistance();
      condition = between.locate(() -> new Contact.Neighbour(touched, resistance));
    }
    return contact.node().locate(() -> new Contact(face, first, second, condition));
  }

  /** Two percentages around the word "to". */
  private static Range part(ScalarNode node) {
    String[] ends = node.text().split("\\s+to\\s+", -1);
    if (ends.length != 2) {
      throw node.fail("must be a part of the face, write for example 0 % to 50 %");
    }
    double low = node.piece(ends[0]).percentage();
    double high = node.piece(ends[1]).percentage();
    if (!(low < high)) {
      throw node.fail("the smaller end must come first");
    }
    return new Range(low, high);
  }
}
