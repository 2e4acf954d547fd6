package stenotherm.report;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Lengths;
import stenotherm.base.Times;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Level;
import stenotherm.decision.UnitWords;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.scenario.Scenario;
import stenotherm.study.Odds;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * Numbers of a comparison as people read them: in their units, rounded to what they are worth.
 *
 * @param figures writes numbers in the reader's units
 * @param dated whether the date is known, or else days are counted from that of sealing
 */
record Words(Figures figures, boolean dated) implements UnitWords {
  /** What stands in brackets in columns of odds, for a caption. */
  static final String BRACKETS =
      "in brackets what the number of computed journeys leaves open, where its lower end decides";

  /** What one journey in twenty exceeds. */
  static final double ONE_IN_TWENTY = 0.05;

  /** What sums of shares and lengths in parts of an inch may be off by. */
  private static final double ROUND_OFF = 1e-9;

  /** As a scenario wants them; a date that it does not give is not told: it would be invented. */
  Words(Scenario scenario) {
    this(new Figures(scenario.units()), scenario.plan().isDated());
  }

  @Override
  public String temperature(double kelvin) {
    return figures.temperature(kelvin);
  }

  @Override
  public String difference(double kelvin) {
    return figures.difference(kelvin);
  }

  /** A length to cut or to drill: as it is meant, and where that is no part of an inch, nearly. */
  @Override
  public String length(double metres) {
    String inches = figures.tape(metres);
    return figures.units() == Units.US && !isOnTape(metres)
        ? Figures.METRIC.length(metres) + " (about " + inches + ")"
        : inches;
  }

  private static boolean isOnTape(double metres) {
    double inches = Lengths.toInches(metres);
    double parts = inches * (inches < 1 ? 16 : 8);
    return Math.abs(parts - Math.rint(parts)) < ROUND_OFF;
  }

  @Override
  public String size(double length, double width, double height) {
    String inches = figures.tapeSize(length, width, height);
    return figures.units() == Units.US
        ? Figures.METRIC.size(length, width, height) + " (about " + inches + ")"
        : inches;
  }

  static String hours(double seconds) {
    return Figures.tenth(Times.toHours(seconds));
  }

  static String clock(Journey journey, double time) {
    return Figures.clock(journey.localClock(time));
  }

  /** Where no line may end: before a unit, and within a number such as 1 1/2 or a day. */
  private static final Pattern UNBROKEN =
      Pattern.compile(
          "(?<=\\d) (?=°C|°F|C°|F°|%|(?:mm|k?g|oz|lb|h)\\b|\\d/\\d|\\d\\d/\\d|"
              + "(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\\b)|(?<=\\bday) (?=\\d)");

  /** A text whose numbers no end of a line tears from their units. */
  static String unbroken(String text) {
    return UNBROKEN.matcher(text).replaceAll("\u00a0");
  }

  /** A moment, for example "16 Jan 08:15"; without a date "day 2, 08:15". */
  String dayAndClock(Journey journey, double time) {
    return dayAndClock(journey, journey.localClock(time));
  }

  /** A moment that was stored: at a change of legs on the clock of the one that ends. */
  String stored(Journey journey, double time) {
    return dayAndClock(journey, storedClock(journey, time));
  }

  /** The same, and whose clock it is where that is in doubt. */
  String moment(Journey journey, double time) {
    return stored(journey, time) + zone(journey, time);
  }

  /** The same with the day of the week, where there is a date. */
  String weekdayMoment(Journey journey, double time) {
    return dated
        ? figures.weekdayAndClock(storedClock(journey, time)) + zone(journey, time)
        : moment(journey, time);
  }

  /** The same for a sentence, for example "08:15 on 16 January". */
  String clockOnDay(Journey journey, double time) {
    LocalDateTime clock = storedClock(journey, time);
    return (dated ? figures.clockOnDay(clock) : Figures.clock(clock) + " on " + day(journey, clock))
        + zone(journey, time);
  }

  private static LocalDateTime storedClock(Journey journey, double time) {
    return journey.localClock(time, journey.legUntil(time));
  }

  private String dayAndClock(Journey journey, LocalDateTime clock) {
    return dated ? figures.dayAndClock(clock) : day(journey, clock) + ", " + Figures.clock(clock);
  }

  /** The day of sealing is the first. */
  static String day(Journey journey, LocalDateTime clock) {
    return "day "
        + (1 + ChronoUnit.DAYS.between(journey.sealing().toLocalDate(), clock.toLocalDate()));
  }

  /** Whose clock it is, where clocks of two places on the way show the same. */
  static String zone(Journey journey, double time) {
    Place here = journey.legs().get(journey.legUntil(time)).place();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      double then = time + aheadOf(journey.legs().get(leg).place(), here);
      if (then != time && then >= journey.start(leg) && then <= journey.start(leg + 1)) {
        return " (" + here.name() + " time)";
      }
    }
    return "";
  }

  /** How the clock is set where a leg begins in another time zone; empty elsewhere. */
  static String clockChange(Journey journey, int leg) {
    if (leg == 0) {
      return "";
    }
    List<Leg> legs = journey.legs();
    double ahead = aheadOf(legs.get(leg - 1).place(), legs.get(leg).place());
    return ahead == 0
        ? ""
        : "clock " + Figures.duration(Math.abs(ahead)) + (ahead > 0 ? " ahead" : " back");
  }

  /** How far the clock of a place is ahead of that of another one [s]. */
  private static double aheadOf(Place other, Place place) {
    return place.utcOffset().getTotalSeconds() - other.utcOffset().getTotalSeconds();
  }

  /** Error of the computed temperature. */
  String error(Judged row) {
    // rounded up: an error estimate must not round to nothing
    return figures.difference(Math.ceil(10 * row.assessment().error().total()) / 10);
  }

  /** A share in a hundred; never none or all, which no number of runs could tell. */
  static String inHundred(double share) {
    if (share < 0.005) {
      return "fewer than 1";
    }
    return share >= 0.995 ? "more than 99" : Long.toString(Math.round(100 * share));
  }

  /** What so many of a hundred do. */
  static String goWell(double share) {
    // one, and fewer than one, are one thing
    return share < 0.015 ? " goes well" : " go well";
  }

  /** The same for a column. */
  static String percent(double share) {
    if (share < 0.005) {
      return "<1";
    }
    return share >= 0.995 ? ">99" : Long.toString(Math.round(100 * share));
  }

  /** What the number of journeys leaves open of odds, for example "84 to 89". */
  static String interval(Odds odds) {
    // outwards: a lower end of 79.7 must not be written as 80, from which on it likely holds
    double low = Math.floor(100 * odds.low() + ROUND_OFF) / 100;
    double high = Math.ceil(100 * odds.high() - ROUND_OFF) / 100;
    return percent(low) + " to " + percent(high);
  }

  /** Odds in a hundred, and the interval where the verdict is not the one that they suggest. */
  static String deciding(Odds odds) {
    return inHundred(odds.within())
        + (isLowered(odds) ? " (" + interval(odds) + ", of which the lower end decides)" : "");
  }

  /** The same with its verb, for example "87 go well". */
  static String decidingGoWell(Odds odds) {
    return deciding(odds) + goWell(odds.within());
  }

  /** The same for a column, whose caption {@link #BRACKETS explains} the brackets. */
  static String decidingInColumn(Odds odds) {
    return percent(odds.within()) + brackets(odds);
  }

  /** Odds in a hundred with their interval, for a column: on one line. */
  static String withInterval(Odds odds) {
    return (percent(odds.within()) + " (" + interval(odds) + ")").replace(' ', '\u00a0');
  }

  /** The interval in brackets where its lower end decides; else nothing. */
  static String brackets(Odds odds) {
    return isLowered(odds) ? " (" + interval(odds) + ")" : "";
  }

  /** Whether odds, as they are written, reach a level that the lower end of theirs does not. */
  static boolean isLowered(Odds odds) {
    double written = Math.round(100 * odds.within()) / 100.0;
    return Arrays.stream(Level.values())
        .anyMatch(level -> level.least() <= written && level.least() > odds.low());
  }

  static String delay(DelayMargin delay) {
    String time = hours(delay.time()) + " h";
    return delay.isAtLeast() ? "at least " + time : time;
  }

  /** The boundary of a face or of a part of one, in words; the upright faces together. */
  static String sides(String boundary) {
    for (Face face : Face.values()) {
      if (boundary.equals(face.label()) || boundary.endsWith(" of " + face.label())) {
        return face.axis() == Axis.Z ? face.words() : "four sides";
      }
    }
    return boundary;
  }
}
