package stenotherm.scenario;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.ambient.Underside;
import stenotherm.base.MessageText;
import stenotherm.base.Suggestions;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.journey.Leg;
import stenotherm.journey.Outdoors;
import stenotherm.journey.TemplateLeg;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads the journey of a scenario. */
final class JourneyReader {
  /** More than any journey with an animal; keeps what is read of it small. */
  static final double LONGEST_JOURNEY = Times.fromDays(30);

  private static final int MOST_LEGS = 100;
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  /** Stands in for a start with a fault, to read on [K]. */
  private static final double ANY_TEMPERATURE = 293.15;

  static final String FROM = "from";
  static final String TO = "to";

  private static final String TEMPLATE = "template";
  private static final String LEGS = "legs";
  private static final String DELAY = "delay";
  private static final String WITHOUT = "without";
  static final String SEALED = "sealed";

  private static final double LONGEST_DELAY = Times.fromDays(30);

  private static final Pattern DELAY_IN = Pattern.compile("(.+?)\\s+in\\s+(.+)", Pattern.DOTALL);

  private static final Pattern ARTICLE = Pattern.compile("(?i)^(?:the|a|an)\\s+");

  /** Most legs that are offered for one that is unknown. */
  private static final int MOST_OFFERED = 3;

  /** Longest name that a message repeats. */
  private static final int LONGEST_NAME = 40;

  private static final Map<String, SolarAbsorptance> SURFACES = surfaces();

  private final Assumptions assumptions;
  private final double hold;
  private final @Nullable OtherWeather weather;
  private final Optional<Node> forecast;

  /** Reads a journey beside a forecast, of which a complaint shows the first low and high. */
  JourneyReader(Assumptions assumptions, double hold, Optional<Node> forecast) {
    this.assumptions = assumptions;
    this.hold = hold;
    this.weather = null;
    this.forecast = forecast;
  }

  /** Reads a journey in other weather than the file gives. */
  JourneyReader(Assumptions assumptions, double hold, OtherWeather weather) {
    this.assumptions = assumptions;
    this.hold = hold;
    this.weather = weather;
    this.forecast = Optional.empty();
  }

  private static Map<String, SolarAbsorptance> surfaces() {
    Map<String, SolarAbsorptance> surfaces = new LinkedHashMap<>();
    surfaces.put("brown board", SolarAbsorptance.KRAFT_BOARD);
    surfaces.put("white", SolarAbsorptance.WHITE_PAINT);
    surfaces.put("black", SolarAbsorptance.BLACK_PAINT);
    return Collections.unmodifiableMap(surfaces);
  }

  static List<String> surfaceNames() {
    return List.copyOf(SURFACES.keySet());
  }

  Journey read(Node node) {
    MappingNode mapping = node instanceof ScalarNode scalar ? spelledOut(scalar) : node.asMapping();
    KeyedSection journey = KeyedSection.of(mapping, Vocabulary.JOURNEY, assumptions);
    boolean legs = journey.has(LEGS);
    if (legs == journey.has(TEMPLATE)) {
      throw legs
          ? journey.node().failAt(TEMPLATE, "cannot be given together with legs")
          : node.fail("must have legs, or a template such as template: overnight by air");
    }
    journey.optional(TEMPLATE).ifPresent(JourneyReader::refuseShortForm);
    Faults faults = new Faults();
    Optional<Sites> places = faults.attempt(() -> sites(journey));
    Optional<ScalarNode> when =
        places.flatMap(sites -> faults.attempt(() -> sealed(journey, sites)));
    Optional<LocalDateTime> sealing =
        when.flatMap(date -> faults.attempt(() -> moment(date))).map(this::onDate);
    double start = faults.attempt(() -> start(journey)).orElse(ANY_TEMPERATURE);
    if (journey.has("surface")) {
      faults.attempt(() -> surface(journey));
    }
    if (places.isEmpty() || when.isEmpty() || sealing.isEmpty()) {
      faults.throwIfAny();
    }
    Trip trip =
        new Trip(journey, places.orElseThrow(), when.orElseThrow(), sealing.orElseThrow(), start);
    addFilms();
    return faults.get(faults.attempt(() -> delayed(trip, legs)));
  }

  private Sites sites(KeyedSection journey) {
    Sites sites = Sites.read(assumptions, journey);
    if (weather != null) {
      if (!sites.followWeather(Sites.ORIGIN) && !sites.followWeather(Sites.DESTINATION)) {
        throw journey
            .node()
            .fail(
                "does not depend on the weather: no leg is outdoors at its origin or destination,"
                    + " write for example ambient: outdoors in a leg");
      }
      sites.put(weather);
    }
    return sites;
  }

  private LocalDateTime onDate(LocalDateTime given) {
    return weather == null ? given : weather.sealed().atTime(given.toLocalTime());
  }

  private Journey delayed(Trip trip, boolean legs) {
    Journey delayed = legs ? written(trip) : named(trip);
    if (!trip.journey().has(WITHOUT)) {
      // a leg that is left out may be the one that has the sun
      trip.sites().requireCoordinatesUsed();
    }
    for (ScalarNode delay : oneOrMore(trip.journey(), DELAY)) {
      delayed = delayed(delayed, delay);
    }
    return delayed;
  }

  /** What the legs of a journey share. */
  record Trip(
      KeyedSection journey, Sites sites, ScalarNode sealed, LocalDateTime sealing, double start) {}

  static MappingNode spelledOut(ScalarNode scalar) {
    String text = scalar.text();
    int comma = text.lastIndexOf(',');
    if (comma < 1) {
      throw scalar.fail(
          "must be a template and a daily low and high, write for example \"overnight by air, 28"
              + " to 45 °F\", or write the journey out");
    }
    refuseDate(scalar);
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put(TEMPLATE, text.substring(0, comma));
    texts.put(Sites.LOWS_HIGHS, text.substring(comma + 1));
    return scalar.shortFor(texts);
  }

  /** Refuses a date in the short form of a journey, which has no room for it. */
  private static void refuseDate(ScalarNode scalar) {
    String[] parts = scalar.text().split("\\s*,\\s*", 3);
    if (parts.length == 3 && scalar.piece(parts[1]).isRange() && scalar.piece(parts[2]).isDated()) {
      throw scalar.fail(
          "has a date, which goes with keys alone, write journey: {template: "
              + MessageText.of(parts[0], LONGEST_NAME)
              + ", lows/highs: "
              + MessageText.of(parts[1], LONGEST_NAME)
              + ", sealed: '"
              + MessageText.of(parts[2], LONGEST_NAME)
              + "'}");
    }
  }

  /** Refuses a template that has its weather beside it, as the short form of a journey has. */
  private static void refuseShortForm(Node node) {
    if (node instanceof ScalarNode scalar && !scalar.isBlank()) {
      String text = scalar.text();
      int comma = text.lastIndexOf(',');
      if (comma > 0 && scalar.piece(text.substring(comma + 1)).isRange()) {
        String weather = MessageText.of(text.substring(comma + 1).strip(), LONGEST_NAME);
        throw scalar.fail(
            "has the weather beside it, which has a key of its own here, write template: "
                + MessageText.of(text.substring(0, comma).strip(), LONGEST_NAME)
                + " and on another line lows/highs: "
                + weather);
      }
    }
  }

  /** A date that only names hours has a preset; one that decides about weather or sun has none. */
  private ScalarNode sealed(KeyedSection journey, Sites sites) {
    if (sites.lackWeatherAtOrigin()) {
      String usual =
          forecast
              .filter(day -> day instanceof ScalarNode text && text.isRange())
              .map(day -> day.asScalar().text())
              .orElse("28 to 45 °F");
      throw journey
          .node()
          .fail(
              "needs lows/highs, such as "
                  + MessageText.of(usual, LONGEST_NAME)
                  + ", or a place with recorded weather as from"
                  + (forecast.isPresent() ? "; the forecast is for the command rank alone" : ""));
    }
    boolean matters = sites.needRecordedWeather();
    boolean sunny = sites.all().stream().anyMatch(site -> site.sun().isPresent());
    return (matters || sunny ? journey.require(SEALED) : journey.value(SEALED)).asScalar();
  }

  private static LocalDateTime moment(ScalarNode sealed) {
    LocalDateTime moment = sealed.localDateTime();
    if (moment.getYear() < FIRST_YEAR || moment.getYear() > LAST_YEAR) {
      throw sealed.fail("must lie between the years " + FIRST_YEAR + " and " + LAST_YEAR);
    }
    return moment;
  }

  private static double start(KeyedSection journey) {
    return PlausibleTemperatures.start(journey.value("start").asScalar());
  }

  /** A journey whose legs the file gives. */
  private Journey written(Trip trip) {
    List<MappingNode> nodes = trip.journey().require(LEGS).asSequence().mappings();
    if (nodes.size() > MOST_LEGS) {
      throw trip.journey().require(LEGS).fail("must have at most " + MOST_LEGS + " legs");
    }
    if (trip.journey().has(WITHOUT)) {
      nodes = without(trip, nodes, node -> node.require("name").asScalar().text());
    }
    List<LegReader> readers = new ArrayList<>();
    double time = 0;
    Faults faults = new Faults();
    for (MappingNode each : nodes) {
      double start = time;
      Optional<LegReader> reader =
          faults.attempt(
              () ->
                  Names.within(
                      each,
                      () ->
                          LegReader.of(
                              KeyedSection.of(each, Vocabulary.LEG, assumptions),
                              trip,
                              start,
                              hold)));
      // after a leg with a fault nobody knows when the next one starts
      if (reader.isPresent() && faults.isEmpty()) {
        readers.add(reader.get());
        time += reader.get().lasting();
      }
    }
    double end = time;
    Optional<Weather> weather = faults.attempt(() -> weather(trip, end));
    List<Leg> legs = new ArrayList<>();
    for (int index = 0; index < readers.size() && weather.isPresent(); index++) {
      LegReader reader = readers.get(index);
      Weather known = weather.get();
      MappingNode node = nodes.get(index);
      faults.attempt(() -> Names.within(node, () -> reader.read(known))).ifPresent(legs::add);
    }
    faults.throwIfAny();
    // A journey counts its clock from the place of its first leg, the file from the origin.
    LocalDateTime clock =
        legs.get(0).place().clockAt(0, trip.sealing(), trip.sites().origin().place());
    return new Journey(clock, trip.start(), legs);
  }

  /** A journey from the catalogue of templates. */
  private Journey named(Trip trip) {
    ScalarNode name = trip.journey().require(TEMPLATE).asScalar();
    JourneyTemplate whole = name.locate(() -> JourneyTemplates.named(name.text()));
    JourneyTemplate template =
        new JourneyTemplate(
            whole.name(), without(trip, whole.legs(), TemplateLeg::name), whole.source());
    DescribedPlace from = trip.sites().origin();
    DescribedPlace to = trip.sites().destination();
    List<Double> durations = template.durations(trip.sealing(), from.place(), to.place());
    double end = durations.stream().mapToDouble(Double::doubleValue).sum();
    Weather weather = weather(trip, end);
    Journey journey =
        name.locate(
            () ->
                template.journey(
                    new JourneyTemplate.Start(trip.sealing(), trip.start()),
                    outdoors(trip, weather, template, TemplateLeg.JourneyEnd.ORIGIN),
                    outdoors(trip, weather, template, TemplateLeg.JourneyEnd.DESTINATION),
                    weather.slack()));
    tell(template, durations);
    template
        .unusualWaits(trip.sealing(), from.place(), to.place())
        .forEach(sentence -> assumptions.add("Journey " + template.name() + ": " + sentence));
    return journey;
  }

  private void tell(JourneyTemplate template, List<Double> durations) {
    List<String> legs = new ArrayList<>();
    for (int index = 0; index < durations.size(); index++) {
      TemplateLeg leg = template.legs().get(index);
      legs.add(
          leg.name()
              + " "
              + Assumptions.hours(durations.get(index))
              + " ("
              + leg.situation().name()
              + ")");
      assumptions.situation(leg.situation());
      assumptions.stowage(leg.situation().stowage());
    }
    assumptions.add(
        "Journey " + template.name() + ", " + String.join(", ", legs), template.source());
  }

  private Outdoors outdoors(
      Trip trip, Weather weather, JourneyTemplate template, TemplateLeg.JourneyEnd end) {
    DescribedPlace site =
        end == TemplateLeg.JourneyEnd.ORIGIN ? trip.sites().origin() : trip.sites().destination();
    boolean sunlit =
        template.legs().stream().anyMatch(leg -> leg.end() == end && leg.situation().sunlit());
    Sunshine sunshine = Sunshine.NONE;
    if (sunlit && site.sun().isPresent()) {
      sunshine = weather.sunshine(site, LegReader.EAST, surface(trip.journey()), weather.times());
    } else if (sunlit) {
      assumptions.shaded(site.place());
    }
    trip.sites().coordinatesUsed(site);
    return new Outdoors(site.place(), weather.outdoors(site), site.spread(), sunshine);
  }

  /** Weather until a planned end, and as long after it as delays may last. */
  private Weather weather(Trip trip, double planned) {
    double slack = delaySum(trip.journey()) + hold;
    if (planned + slack > LONGEST_JOURNEY) {
      throw trip.journey()
          .node()
          .fail("must not be longer than 30 d, with its delays and its hold");
    }
    return new Weather(
        assumptions, trip.sealed(), trip.sealing(), trip.sites().origin().place(), planned, slack);
  }

  /** The outside of the box, for legs in the sun. */
  static SolarAbsorptance surface(KeyedSection journey) {
    return journey.value("surface").asScalar().choice(SURFACES);
  }

  /** What stands under a key, alone or in a list; nothing if the key is not there. */
  private static List<ScalarNode> oneOrMore(KeyedSection journey, String key) {
    Node node = journey.optional(key).orElse(null);
    if (node == null) {
      return List.of();
    }
    return node instanceof ScalarNode scalar ? List.of(scalar) : node.asSequence().scalars();
  }

  /** The legs but those that the file leaves out: what comes after these comes earlier. */
  private static <T> List<T> without(Trip trip, List<T> legs, Function<T, String> name) {
    List<T> left = new ArrayList<>(legs);
    for (ScalarNode node : oneOrMore(trip.journey(), WITHOUT)) {
      left.remove(legNamed(left.stream().map(name).toList(), node, node.text()));
      if (left.isEmpty()) {
        throw node.fail("is the only leg; a journey needs one");
      }
    }
    return left;
  }

  private static Matcher delayParts(ScalarNode node) {
    Matcher parts = DELAY_IN.matcher(node.text());
    if (!parts.matches()) {
      throw node.fail("must be how long and in which leg, write for example 12 h in sorting hub");
    }
    return parts;
  }

  private static double delaySum(KeyedSection journey) {
    double sum = 0;
    for (ScalarNode node : oneOrMore(journey, DELAY)) {
      double delay = node.piece(delayParts(node).group(1)).duration();
      if (!(delay >= 0) || delay > LONGEST_DELAY) {
        throw node.fail("must lie between 0 and 30 d");
      }
      sum += delay;
    }
    return sum;
  }

  private static Journey delayed(Journey journey, ScalarNode node) {
    InLeg delay = inLeg(journey, node);
    return node.locate(() -> journey.delayed(delay.leg(), delay.lasting()));
  }

  /**
   * How long something lasts in a leg.
   *
   * @param leg position of the leg
   * @param lasting how long [s]
   */
  record InLeg(int leg, double lasting) {}

  /** Reads a duration and the name of a leg, as in {@code 12 h in sorting hub}. */
  static InLeg inLeg(Journey journey, ScalarNode node) {
    Matcher parts = delayParts(node);
    return new InLeg(
        legNamed(names(journey), node, parts.group(2)), node.piece(parts.group(1)).duration());
  }

  /** Names of the legs of a journey. */
  static List<String> names(Journey journey) {
    return journey.legs().stream().map(Leg::name).toList();
  }

  /** Finds a leg by the name that a part of a text gives. */
  static int legNamed(List<String> names, ScalarNode node, String text) {
    Map<String, Integer> legs = new LinkedHashMap<>();
    for (int index = 0; index < names.size(); index++) {
      String name = names.get(index);
      if (legs.put(name, index) != null && name.equals(text)) {
        throw node.fail("is the name of several legs, give each its own name");
      }
    }
    Integer leg = legs.get(text.strip());
    if (leg == null) {
      String meant = String.join("' or '", legsLike(text.strip(), legs.keySet()));
      throw node.fail(
          "there is no leg '"
              + MessageText.of(text.strip(), LONGEST_NAME)
              + "'. "
              + (meant.isEmpty() ? "" : "Did you mean '" + meant + "'? ")
              + "The legs are "
              + String.join(", ", legs.keySet()));
    }
    return leg;
  }

  /** The closest name, or a few of which the text is a part. */
  private static List<String> legsLike(String text, Set<String> names) {
    // an article before a noun makes no other leg
    String bare = ARTICLE.matcher(text).replaceFirst("");
    Optional<String> closest = Suggestions.closest(bare, names);
    if (closest.isPresent()) {
      return List.of(closest.get());
    }
    return names.stream().filter(name -> name.endsWith(" " + bare)).limit(MOST_OFFERED).toList();
  }

  private void addFilms() {
    assumptions.add(
        "Emissivity of the faces, " + FaceFilms.BOARD_EMISSIVITY,
        FaceFilms.BOARD_EMISSIVITY_SOURCE);
    assumptions.add(
        "A parcel on a hard floor, " + Underside.Resting.onHardFloor().resistance() + " m2 K/W",
        Underside.Resting.HARD_FLOOR_SOURCE);
  }
}
