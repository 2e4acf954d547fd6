package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.base.Range;
import stenotherm.decision.Departure;
import stenotherm.decision.Level;
import stenotherm.journey.Journey;
import stenotherm.scenario.OtherWeather;
import stenotherm.scenario.Scenario;
import stenotherm.study.Odds;
import stenotherm.words.Figures;

/**
 * On which day to send a packing: departures of a forecast, best first.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class RankedDays implements Answer {
  /** The page; it works offline and without scripts. */
  public static final String PAGE = "days.html";

  /** All numbers in SI units, as JSON. */
  public static final String SUMMARY = "days.json";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, SUMMARY);

  private final Scenario scenario;
  private final List<Packed> packings;
  private final List<Day> days;
  private final List<LocalDate> left;
  private final double errorPerDay;
  private final List<String> cautions;

  RankedDays(
      Scenario scenario,
      List<Packed> packings,
      List<Day> days,
      List<LocalDate> left,
      double errorPerDay,
      List<String> cautions) {
    this.scenario = scenario;
    this.packings = List.copyOf(packings);
    this.days = List.copyOf(days);
    this.left = List.copyOf(left);
    this.errorPerDay = errorPerDay;
    this.cautions = List.copyOf(cautions);
  }

  /**
   * A day of departure.
   *
   * @param origin low and high where it is sent from, on that day [K]
   * @param destination low and high where it arrives, on the day of arrival [K]
   * @param spread how far the forecast may be off at departure [K]
   * @param departures how it fares, packing by packing
   */
  record Day(Range origin, Range destination, double spread, List<Departure> departures) {
    Day {
      departures = List.copyOf(departures);
    }

    int bestPacking() {
      return Departures.best(departures);
    }

    Departure best() {
      return departures.get(bestPacking());
    }

    Journey journey() {
      return best().journey();
    }
  }

  /** The best day of some, in a sentence. */
  static String best(List<List<Departure>> days, List<Packed> packings, Figures figures) {
    List<Departure> best =
        days.stream()
            .max(
                Comparator.comparingDouble(
                    day -> day.get(Departures.best(day)).odds().within().low()))
            .orElseThrow();
    Departure departure = best.get(Departures.best(best));
    return figures.day(departure.journey().sealing().toLocalDate())
        + ", "
        + Departures.named(packings.get(Departures.best(best)))
        + ": of 100 such journeys "
        + Words.decidingGoWell(departure.odds().within())
        + atWeekend(departure)
        + ".";
  }

  /** A day that may not be one to send on is not named without it. */
  private static String atWeekend(Departure departure) {
    return Weekends.touches(departure.journey())
        ? " (on the way or due at a weekend: ask your carrier)"
        : "";
  }

  /** What to do. */
  String headline() {
    List<List<Departure>> all = days.stream().map(Day::departures).toList();
    String best = best(all, packings, new Figures(scenario.units()));
    return switch (days.get(0).best().odds().level()) {
      case HOLDS, LIKELY -> "Send it, sealed at " + hour() + ", on " + best + second();
      case GAMBLE -> "Better wait for other days: the best of these is a gamble, " + best;
      case DO_NOT -> "Do not send it like this on any of these days. The least bad is " + best;
    };
  }

  private String hour() {
    return Figures.clock(scenario.journey().sealing());
  }

  private String second() {
    if (days.size() < 2) {
      return "";
    }
    Departure next = days.get(1).best();
    return " Next comes "
        + new Figures(scenario.units()).day(next.journey().sealing().toLocalDate())
        + ", "
        + Departures.named(packings.get(days.get(1).bestPacking()))
        + ": "
        + Words.deciding(next.odds().within())
        + atWeekend(next)
        + ".";
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    Figures figures = new Figures(scenario.units());
    notes.add(
        "Every parcel is sealed at "
            + hour()
            + (scenario.plan().isDated() ? ", as the file says" : ": the file gives no hour")
            + ". At another hour other legs fall into the night. Each is due "
            + due(days.get(0).journey())
            + ".");
    notes.add(
        "Under origin stand low and high of the day of departure, under destination those of the day"
            + " of arrival.");
    notes.add(
        "The first day of the forecast is taken for the day it was made on. Its error, "
            + figures.difference(OtherWeather.FORECAST_SPREAD)
            + " up or down then, grows by "
            + figures.difference(errorPerDay)
            + " for each day further ahead (assumed).");
    List<String> atWeekends =
        days.stream()
            .map(Day::journey)
            .filter(Weekends::touches)
            .map(Journey::sealing)
            .sorted()
            .map(start -> figures.day(start.toLocalDate()))
            .toList();
    if (!atWeekends.isEmpty()) {
      notes.add(
          "On the way or due on a Saturday or Sunday if sealed on "
              + Figures.listed(atWeekends)
              + ". "
              + Weekends.ASK);
    }
    if (!left.isEmpty()) {
      notes.add(
          "The forecast ends before a parcel sent on "
              + figures.day(left.get(0))
              + " or later arrives: such days are left out.");
    }
    return notes;
  }

  /** All journeys take as long. */
  private static String due(Journey journey) {
    long later = journey.sealing().toLocalDate().until(Weekends.due(journey), ChronoUnit.DAYS);
    return later == 0 ? "on the same day" : later == 1 ? "on the next day" : later + " days later";
  }

  private TextTable table() {
    Figures figures = new Figures(scenario.units());
    boolean warmed = packings.size() > 1;
    List<String> head = new ArrayList<>(List.of("sealed", "verdict"));
    head.addAll(
        warmed ? List.of("go well, with warmer", "go well, no warmer") : List.of("go well"));
    head.addAll(List.of("cold", "heat", "air"));
    if (warmed) {
      head.add("burns");
    }
    head.addAll(List.of("origin", "destination"));
    List<List<String>> lines = new ArrayList<>();
    for (Day day : days) {
      Departure best = day.best();
      List<String> line = new ArrayList<>();
      line.add(figures.shortDay(best.journey().sealing().toLocalDate()));
      line.add(best.odds().level().words());
      day.departures().forEach(each -> line.add(Words.decidingInColumn(each.odds().within())));
      line.add(missed(best.odds().notTooCold()));
      line.add(missed(best.odds().notTooHot()));
      line.add(missed(best.odds().enoughAir()));
      if (warmed) {
        line.add(missed(best.odds().notBurnt()));
      }
      line.add(range(figures, day.origin()));
      line.add(range(figures, day.destination()));
      lines.add(line);
    }
    return new TextTable(
        "Days of departure, best first: of 100 journeys so many go well, and so many are harmed by"
            + " cold, heat, lack of air"
            + (warmed ? " or burns in the better way of the two" : "")
            + (days.stream()
                    .flatMap(day -> day.departures().stream())
                    .anyMatch(each -> Words.isLowered(each.odds().within()))
                ? "; " + Words.BRACKETS
                : ""),
        head,
        lines);
  }

  private static String missed(Odds spared) {
    return spared.within() < 1 ? Words.percent(1 - spared.within()) : Tables.NOTHING;
  }

  /** Such as "28 to 45 °F". */
  private static String range(Figures figures, Range range) {
    return Figures.range(figures.temperature(range.low()), figures.temperature(range.high()));
  }

  private String title() {
    return scenario.title() + ": on which day? Packing '" + packings.get(0).parcel().name() + "'";
  }

  @Override
  public void print(PrintWriter out) {
    ConsoleText.answer(out, title(), headline());
    table().print(out);
    out.println();
    notes().forEach(note -> ConsoleText.line(out, note));
    ConsoleText.list(out, "Cautions", cautions);
  }

  @Override
  public String json() {
    ObjectNode root = JsonText.object();
    root.put("title", scenario.title());
    root.put("packing", packings.get(0).parcel().name());
    root.put("answer", headline());
    root.put("forecast_error_per_day_K", errorPerDay);
    ArrayNode array = root.putArray("days");
    for (Day day : days) {
      ObjectNode node = array.addObject();
      node.put("sealed", day.best().journey().sealing().toString());
      node.put("due", Weekends.due(day.journey()).toString());
      node.put("weekend", Weekends.touches(day.journey()));
      node.put("forecast_error_K", day.spread());
      ends(node.putObject("origin"), day.origin());
      ends(node.putObject("destination"), day.destination());
      ArrayNode ways = node.putArray("packings");
      for (int packing = 0; packing < packings.size(); packing++) {
        put(ways.addObject(), packings.get(packing), day.departures().get(packing));
      }
    }
    ArrayNode all = root.putArray("cautions");
    cautions.forEach(all::add);
    return JsonText.of(root);
  }

  private static void ends(ObjectNode node, Range range) {
    node.put("low_K", range.low());
    node.put("high_K", range.high());
  }

  /** A packing with its level and its odds. */
  static void put(ObjectNode node, Packed packed, Departure departure) {
    node.put("warmer", !packed.parcel().warmers().isEmpty());
    Level level = departure.odds().level();
    node.put("level", level.name());
    node.put("level_words", level.words());
    JsonText.addOdds(node.putObject("odds"), departure.odds().within());
    node.put("not_too_cold", departure.odds().notTooCold().within());
    node.put("not_too_hot", departure.odds().notTooHot().within());
    node.put("enough_air", departure.odds().enoughAir().within());
    node.put("not_burnt", departure.odds().notBurnt().within());
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    AnswerPage page = new AnswerPage(title(), headline());
    page.deferral();
    page.table(table());
    notes().forEach(page::sentence);
    page.cautions(cautions);
    page.restsOn(scenario);
    page.files("All digits in SI units", List.of(SUMMARY));
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, page.html());
    files.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
