package stenotherm.validation.studies;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.journey.Leg;
import stenotherm.journey.Outdoors;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.validation.studies.Check.Expected;
import stenotherm.validation.studies.LoggedParcel.Seen;
import stenotherm.weather.RecordedWeather;

/**
 * What loggers in parcels saw, beside the air that the templates of journeys lead through. Not the
 * parcels' journeys: those are not told. Each template is run from every day of the recorded
 * weather of two cities to the other, its air shifted by draws from its spreads.
 */
final class LoggedJourneys implements Study {
  private static final String SOURCE =
      "abstracts of studies with loggers in parcels, as each check says";

  private static final String TEXT =
      "The loggers lay inside parcels of other makes, most with animals that warm them, on journeys"
          + " and in weather that the abstracts do not tell. The templates show what is outside a"
          + " parcel, in the weather of New York and Seattle 2012 to 2015 (for mice, on days when"
          + " carriers take them), without delays and without sun: the air, and what a parcel meets"
          + " that lies at any depth among others, which at first are as warm as what it met before"
          + " (assumed). So an agreement is no proof and a difference no refutation. How often it is"
          + " cold agrees with the mice, and the hold decides it: 13 °C ± 7 K on each of two flights."
          + " That warmth is rarer here is expected: sun on the apron, and the mice's own heat, are"
          + " left out. Air swings more often than was logged; a parcel among others does so about as"
          + " often as was logged. Extremes are those of thousands of journeys here, of few parcels"
          + " there: only that the logged ones lie within is to be expected, apart from parcels that"
          + " stood in the sun or in other cities.";

  /** A normal distribution has 90 % within so many standard deviations. */
  private static final double STANDARD_DEVIATIONS = 1.6449;

  /** 95 % of a count lie within so many standard deviations. */
  private static final double COUNTED = 1.96;

  /** Recorded days are so certain [K]. */
  private static final double RECORDED = 1;

  private static final double READING = Times.fromMinutes(15);

  /** 45 °F and 85 °F: what mice are carried in [°C]. */
  private static final double COLD = 7.2;

  private static final double WARM = 29.4;

  /** Draws for each journey: few days are mild. */
  private static final int DRAWS = 10;

  private static final long SEED = 20_080_101;
  private static final List<City> CITIES =
      List.of(
          new City(new Place("New York", ZoneOffset.ofHours(-5))),
          new City(new Place("Seattle", ZoneOffset.ofHours(-8))));
  private static final List<JourneyTemplate> TEMPLATES =
      List.of(JourneyTemplates.OVERNIGHT_BY_AIR, JourneyTemplates.TWO_DAYS_BY_ROAD);

  /** An end of the journeys. */
  private record City(Place place) {
    /** Its weather from the day before a sealing at 15:00 at the origin. */
    Outdoors outdoors(LocalDateTime sealing, Place origin) {
      LocalDate first = sealing.toLocalDate().minusDays(1);
      List<Range> days =
          RecordedWeather.bundled().days(place.name(), first, first.plusDays(5)).stream()
              .map(day -> new Range(day.low(), day.high()))
              .toList();
      double midnight = place.timeOf(first.atStartOfDay(), sealing, origin);
      return new Outdoors(
          place,
          new DailyExtremes(midnight, days, DiurnalShape.SOLAR_TIME),
          RECORDED,
          Sunshine.NONE);
    }
  }

  /** The air around one parcel, and what met it if it lay among others. */
  private record Met(Reading air, Reading pile) {}

  /** When a journey began and whether outdoors it was mild enough for carriers of mice. */
  private record Season(Month month, boolean mild) {}

  /** Temperatures of a journey [°C]. */
  private record Reading(Season season, double lowest, double highest, double mean) {
    static Reading of(Season season, List<Double> celsius) {
      DoubleSummaryStatistics all =
          celsius.stream().mapToDouble(Double::doubleValue).summaryStatistics();
      return new Reading(season, all.getMin(), all.getMax(), all.getAverage());
    }
  }

  @Override
  public Heading heading() {
    return new Heading(
        "measured-journeys",
        "What loggers in parcels saw, and the air of the templates of journeys",
        SOURCE,
        Kind.MEASURED);
  }

  @Override
  public Findings run(Depth depth) {
    Map<JourneyTemplate, List<Met>> met = new HashMap<>();
    for (JourneyTemplate template : TEMPLATES) {
      met.put(template, journeys(template, depth == Depth.FAST ? 5 : 1));
    }
    List<Check> checks = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (LoggedParcel logged : LoggedParcel.all()) {
      List<String> row =
          new ArrayList<>(
              List.of(
                  logged.what(),
                  logged.parcels() == 0 ? "not stated" : Integer.toString(logged.parcels()),
                  logged.seen().words(),
                  shown(logged.value(), logged.unit())));
      for (JourneyTemplate template : TEMPLATES) {
        List<Met> all = met.getOrDefault(template, List.of());
        double value = of(logged, all.stream().map(Met::air).toList());
        row.add(shown(value, logged.unit()));
        row.add(shown(of(logged, all.stream().map(Met::pile).toList()), logged.unit()));
        if (isCheck(logged, template)) {
          checks.add(
              Check.closed(
                  logged.seen().words() + ", " + logged.what() + "; " + template.name(),
                  value,
                  expected(logged)));
        }
      }
      rows.add(row);
    }
    List<String> header =
        new ArrayList<>(List.of("logged parcels", "number", "what was seen", "loggers"));
    for (JourneyTemplate template : TEMPLATES) {
      header.add(template.name() + ": air");
      header.add("among others");
    }
    return Findings.of(checks)
        .with(new Findings.Exhibit.Tabulation(header, rows), new Findings.Exhibit.Paragraph(TEXT));
  }

  /** Mice fly, insects took two days; extremes depend on how many parcels there are. */
  private static boolean isCheck(LoggedParcel logged, JourneyTemplate template) {
    return switch (logged.seen()) {
      case LOWEST, HIGHEST -> false;
      case MET_WARMTH, MET_COLD, SWUNG -> template.equals(JourneyTemplates.OVERNIGHT_BY_AIR);
      case MEAN -> template.equals(JourneyTemplates.TWO_DAYS_BY_ROAD);
      case STAYED_WITHIN -> true;
    };
  }

  private static Expected expected(LoggedParcel logged) {
    if (logged.seen() == Seen.MEAN) {
      return new Expected(
          logged.value(),
          6.3,
          logged.unit(),
          logged.source(),
          "half of the range that was logged, 18.1 °C to 30.7 °C; season and place are not told");
    }
    double share = logged.value() / 100;
    return new Expected(
        logged.value(),
        100 * COUNTED * Math.sqrt(share * (1 - share) / logged.parcels()),
        logged.unit(),
        logged.source(),
        "what the number of parcels alone leaves open, 95 %");
  }

  private static double of(LoggedParcel logged, List<Reading> all) {
    List<Reading> met =
        all.stream()
            .filter(each -> logged.months().contains(each.season().month()))
            .filter(each -> each.season().mild() || !logged.mildOnly())
            .toList();
    return switch (logged.seen()) {
      case STAYED_WITHIN -> share(met, each -> each.lowest() >= 10 && each.highest() <= 36);
      case MET_WARMTH -> share(met, each -> each.highest() > WARM);
      case MET_COLD -> share(met, each -> each.lowest() < COLD);
      case SWUNG -> share(met, each -> each.highest() - each.lowest() >= 11);
      case MEAN -> met.stream().mapToDouble(Reading::mean).average().orElseThrow();
      case LOWEST -> met.stream().mapToDouble(Reading::lowest).min().orElseThrow();
      case HIGHEST -> met.stream().mapToDouble(Reading::highest).max().orElseThrow();
    };
  }

  /** Percentage of journeys. */
  private static double share(List<Reading> met, Predicate<Reading> such) {
    return 100.0 * met.stream().filter(such).count() / met.size();
  }

  private static List<Met> journeys(JourneyTemplate template, int everyDays) {
    Random random = new Random(SEED);
    List<Met> met = new ArrayList<>();
    LocalDate end = LocalDate.of(2015, 12, 20);
    for (LocalDate day = LocalDate.of(2012, 1, 3);
        day.isBefore(end);
        day = day.plusDays(everyDays)) {
      for (City origin : CITIES) {
        City destination = CITIES.get(1 - CITIES.indexOf(origin));
        LocalDateTime sealing = day.atTime(LocalTime.of(15, 0));
        Outdoors from = origin.outdoors(sealing, origin.place());
        Outdoors to = destination.outdoors(sealing, origin.place());
        Journey journey =
            template.journey(
                new JourneyTemplate.Start(sealing, Temperatures.fromCelsius(21)), from, to, 0);
        boolean mild = isMild(from, journey.duration()) && isMild(to, journey.duration());
        met.addAll(meet(journey, new Season(day.getMonth(), mild), random));
      }
    }
    return met;
  }

  private static boolean isMild(Outdoors outdoors, double until) {
    for (double time = 0; time < until; time += READING) {
      double celsius = Temperatures.toCelsius(outdoors.temperature().at(time));
      if (celsius < COLD || celsius > WARM) {
        return false;
      }
    }
    return true;
  }

  /** A journey with draws from what is uncertain about its air. */
  private static List<Met> meet(Journey journey, Season season, Random random) {
    List<double[]> courses = new ArrayList<>();
    for (int index = 0; index < journey.legs().size(); index++) {
      courses.add(course(journey, index));
    }
    List<Met> met = new ArrayList<>();
    for (int draw = 0; draw < DRAWS; draw++) {
      met.add(draw(journey, courses, season, random));
    }
    return met;
  }

  /** Nominal air of a leg at each reading [°C]. */
  private static double[] course(Journey journey, int index) {
    Leg leg = journey.legs().get(index);
    int readings = (int) Math.ceil(leg.lasting() / READING);
    double[] celsius = new double[readings];
    for (int reading = 0; reading < readings; reading++) {
      double time = journey.start(index) + reading * READING;
      celsius[reading] = Temperatures.toCelsius(leg.surroundings().ambient().at(time));
    }
    return celsius;
  }

  private static Met draw(Journey journey, List<double[]> courses, Season season, Random random) {
    Map<String, Double> weather = new HashMap<>();
    double depth = random.nextDouble();
    List<Double> airs = new ArrayList<>();
    List<Double> piles = new ArrayList<>();
    double pile = Temperatures.toCelsius(journey.startTemperature());
    for (int index = 0; index < courses.size(); index++) {
      Leg leg = journey.legs().get(index);
      Surroundings around = leg.surroundings();
      double error =
          weather.computeIfAbsent(leg.place().name(), name -> random.nextGaussian())
                  * around.spread().outdoors()
              + random.nextGaussian() * around.spread().own();
      double kept = Math.exp(-READING / around.stowage().lag(depth));
      for (double nominal : courses.get(index)) {
        double air = nominal + error / STANDARD_DEVIATIONS;
        pile = air + kept * (pile - air);
        airs.add(air);
        piles.add(pile);
      }
    }
    return new Met(Reading.of(season, airs), Reading.of(season, piles));
  }

  private static String shown(double value, String unit) {
    return String.format(Locale.ROOT, "%.1f %s", value, unit);
  }
}
