package stenotherm.scenario;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.journey.AmbientSpread;
import stenotherm.journey.Place;
import stenotherm.sun.OpticalDepths;
import stenotherm.sun.Sky;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;

/** The places of a journey by the names that its legs use. */
final class Sites {
  static final String ORIGIN = "origin";
  static final String DESTINATION = "destination";
  static final String LOWS_HIGHS = "lows/highs";
  static final String PLACES = "places";

  private static final Map<String, OpticalDepths> SKIES = skies();

  /**
   * How far outdoor temperatures may be above or below lows and highs that the file gives, if it
   * does not say [K].
   */
  static final double GIVEN_DAYS_SPREAD = 3;

  private static final Source FORECAST_ERRORS =
      Source.derived(
          "ForecastAdvisor 2006, Accuracy of temperature forecasts; NSSL, Brooks and Doswell, high"
              + " temperatures of Oklahoma City, Table 1",
          "highs a day ahead were within 3 °F in 68 % of about 1.5 million forecasts, root mean"
              + " square 3.8 °F at Oklahoma City: 2.7 K and 3.5 K as central 90 % of a normal"
              + " distribution");

  /** The same for days on record: the place's station is not the parcel's street [K]. */
  static final double RECORDED_DAYS_SPREAD = 1;

  /** No clock in use is farther from mean solar time, daylight saving included [h]. */
  private static final double CLOCK_FROM_SUN = 4;

  private final Assumptions assumptions;
  private final KeyedSection journey;
  private final Map<String, DescribedPlace> sites = new LinkedHashMap<>();
  private final Set<DescribedPlace> coordinatesUsed = new HashSet<>();

  private Sites(Assumptions assumptions, KeyedSection journey) {
    this.assumptions = assumptions;
    this.journey = journey;
  }

  static Sites read(Assumptions assumptions, KeyedSection journey) {
    Sites sites = new Sites(assumptions, journey);
    Faults faults = new Faults();
    faults
        .attempt(() -> sites.site(journey.value(JourneyReader.FROM), ORIGIN))
        .ifPresent(site -> sites.sites.put(ORIGIN, site));
    faults
        .attempt(() -> sites.site(journey.value(JourneyReader.TO), DESTINATION))
        .ifPresent(site -> sites.sites.put(DESTINATION, site));
    for (MappingNode each :
        journey.optional(PLACES).map(node -> node.asSequence().mappings()).orElse(List.of())) {
      faults.attempt(() -> sites.addPlace(each));
    }
    faults.throwIfAny();
    return sites;
  }

  /** Puts both ends of the journey into other weather. */
  void put(OtherWeather weather) {
    sites.computeIfPresent(ORIGIN, (key, site) -> site.in(weather.origin()));
    sites.computeIfPresent(DESTINATION, (key, site) -> site.in(weather.destination()));
  }

  private static Map<String, OpticalDepths> skies() {
    Map<String, OpticalDepths> skies = new LinkedHashMap<>();
    skies.put("clear winter", OpticalDepths.CLEAR_WINTER);
    skies.put("hazy summer", OpticalDepths.HAZY_SUMMER);
    return Collections.unmodifiableMap(skies);
  }

  static List<String> skyNames() {
    return List.copyOf(SKIES.keySet());
  }

  DescribedPlace origin() {
    return sites.getOrDefault(ORIGIN, sites.values().iterator().next());
  }

  DescribedPlace destination() {
    return sites.getOrDefault(DESTINATION, origin());
  }

  /** Tells whether a leg there asks what it is like outdoors. */
  boolean followWeather(String name) {
    Node legs = journey.optional("legs").orElse(null);
    return !(legs instanceof SequenceNode list)
        || list.items().stream().anyMatch(leg -> followsWeather(leg, name));
  }

  /** The places whose weather a leg follows, the origin first. */
  List<DescribedPlace> followed() {
    // a template goes between its ends
    Set<String> between = Set.of(ORIGIN, DESTINATION);
    boolean legs = journey.has("legs");
    return sites.entrySet().stream()
        .filter(each -> legs ? followWeather(each.getKey()) : between.contains(each.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  private static boolean followsWeather(Node node, String name) {
    if (!(node instanceof MappingNode leg) || LegReader.hasOwnAmbient(leg)) {
      return false;
    }
    return leg.optional("at")
        .map(
            at ->
                at instanceof ScalarNode scalar && !scalar.isBlank() && scalar.text().equals(name))
        .orElse(true);
  }

  /** Tells whether recorded weather has to be known, by the date of sealing. */
  boolean needRecordedWeather() {
    return sites.entrySet().stream()
        .anyMatch(each -> each.getValue().days().isEmpty() && followWeather(each.getKey()));
  }

  /** Tells whether a leg follows weather at an origin of which the file says nothing. */
  boolean lackWeatherAtOrigin() {
    return !journey.has(JourneyReader.FROM) && origin().days().isEmpty() && followWeather(ORIGIN);
  }

  Collection<DescribedPlace> all() {
    return sites.values();
  }

  /** Notes that a leg follows the sun at a place or its weather, whose hours go by the sun. */
  void coordinatesUsed(DescribedPlace site) {
    coordinatesUsed.add(site);
  }

  /** Refuses coordinates that change nothing. */
  void requireCoordinatesUsed() {
    Faults faults = new Faults();
    for (DescribedPlace site : sites.values()) {
      if (site.sun().isPresent()
          && !coordinatesUsed.contains(site)
          && site.node() instanceof MappingNode node) {
        faults.add(
            node.failAt("latitude", "has no effect, no leg there follows the weather or the sun"));
      }
    }
    faults.throwIfAny();
  }

  /** The place that a leg names. */
  DescribedPlace at(ScalarNode name) {
    return name.choice(Collections.unmodifiableMap(sites));
  }

  private DescribedPlace addPlace(MappingNode node) {
    DescribedPlace site = Names.within(node, () -> site(node, ""));
    if (sites.put(site.place().name(), site) != null) {
      throw node.failAt("name", "an earlier place has the same name, give each its own");
    }
    return site;
  }

  /** A place that legs know by a key, or else by its name. */
  private DescribedPlace site(Node node, String key) {
    MappingNode mapping = node instanceof ScalarNode scalar ? spelledOut(scalar) : node.asMapping();
    KeyedSection section = KeyedSection.of(mapping, Vocabulary.PLACE, assumptions);
    String name = section.require("name").asScalar().text();
    ZoneOffset offset = section.require("utc").asScalar().utcOffset();
    Node days = section.optional(LOWS_HIGHS).or(() -> journey.optional(LOWS_HIGHS)).orElse(null);
    double spread = spread(section, key.isEmpty() ? name : key, days == null);
    DescribedPlace site =
        new DescribedPlace(
            new Place(name, offset),
            node,
            days == null ? List.of() : days(days),
            Optional.empty(),
            spread,
            sun(section, offset));
    // with coordinates of its own it has been looked at beside these
    if (site.clockAhead().filter(Sites::isFarFromSun).isPresent()) {
      throw section
          .require("utc")
          .asScalar()
          .fail("does not fit " + name + ": the clock would be hours from the sun");
    }
    return site;
  }

  private double spread(KeyedSection section, String name, boolean recorded) {
    if (recorded && !section.has("spread") && !followWeather(name)) {
      // no leg asks for it, so that the report need not speak of it
      return RECORDED_DAYS_SPREAD;
    }
    String usual = Assumptions.number(recorded ? RECORDED_DAYS_SPREAD : GIVEN_DAYS_SPREAD) + " K";
    String basis =
        recorded ? "assumed for recorded weather" : "derived for lows and highs as forecast";
    if (!recorded && !section.has("spread")) {
      assumptions.add("Error of forecast lows and highs", FORECAST_ERRORS);
    }
    ScalarNode node = section.value("spread", usual, basis).asScalar();
    double spread = node.temperatureDifference();
    return node.locate(() -> AmbientSpread.checked("outdoor spread", spread));
  }

  private static boolean isFarFromSun(double clockAhead) {
    return Math.abs(clockAhead) > CLOCK_FROM_SUN;
  }

  private static MappingNode spelledOut(ScalarNode scalar) {
    String text = scalar.text();
    int comma = text.lastIndexOf(',');
    if (comma < 1) {
      throw scalar.fail(
          "must be a place and its offset from UTC, write for example \"New York, UTC-5\"");
    }
    Map<String, String> texts = new LinkedHashMap<>();
    texts.put("name", text.substring(0, comma));
    texts.put("utc", text.substring(comma + 1));
    return scalar.shortFor(texts);
  }

  /** One low and high for all days, or one for each day from the day of sealing on. */
  private static List<Range> days(Node node) {
    if (node instanceof ScalarNode scalar) {
      return List.of(PlausibleTemperatures.outdoors(scalar));
    }
    List<Range> days = new ArrayList<>();
    List<ScalarNode> items = node.asSequence().scalars();
    if (items.size() == 2 && items.stream().noneMatch(ScalarNode::isRange)) {
      return List.of(PlausibleTemperatures.outdoors(node));
    }
    for (ScalarNode each : items) {
      days.add(PlausibleTemperatures.outdoors(each));
    }
    return days;
  }

  private static Optional<DescribedPlace.SkyAbove> sun(KeyedSection section, ZoneOffset offset) {
    boolean north = section.has("latitude");
    if (north != section.has("longitude")) {
      throw section
          .node()
          .failAt(
              north ? "latitude" : "longitude", "latitude and longitude must be given together");
    }
    if (!north) {
      for (String key : List.of("clouds", "sky")) {
        if (section.has(key)) {
          throw section.node().failAt(key, "has no effect without latitude and longitude");
        }
      }
      return Optional.empty();
    }
    ScalarNode latitude = section.require("latitude").asScalar();
    double degreesNorth = within(latitude, "latitude", 90, "North is positive.");
    ScalarNode longitude = section.require("longitude").asScalar();
    double degreesEast =
        within(longitude, "longitude", 180, "East is positive: all of the Americas is negative.");
    if (isFarFromSun(DescribedPlace.clockAhead(offset, degreesEast))) {
      throw longitude.fail(
          "does not fit the clock, which is set to UTC"
              + (offset.getTotalSeconds() == 0 ? "" : offset.getId())
              + " and would be "
              + Math.round(Math.abs(DescribedPlace.clockAhead(offset, degreesEast)))
              + " h from the sun; east is positive: all of the Americas is negative");
    }
    OpticalDepths depths = section.value("sky").asScalar().choice(SKIES);
    ScalarNode clouds = section.value("clouds").asScalar();
    double cover = clouds.percentage();
    Sky sky = clouds.locate(() -> new Sky(depths, cover, Sky.COMMON_GROUND));
    return Optional.of(new DescribedPlace.SkyAbove(degreesNorth, degreesEast, sky));
  }

  private static double within(ScalarNode node, String field, double most, String hint) {
    double degrees = node.angle();
    return node.locate(() -> Checks.within(field, degrees, new Range(-most, most), "°", hint));
  }
}
