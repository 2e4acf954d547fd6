package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import stenotherm.decision.Departure;
import stenotherm.decision.JourneyOdds;
import stenotherm.decision.Level;
import stenotherm.picture.MonthChart;
import stenotherm.scenario.Scenario;
import stenotherm.study.Odds;
import stenotherm.words.CsvText;
import stenotherm.words.Figures;

/**
 * How a packing would have fared on every recorded day, by month.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class ReplayedDays implements Answer {
  /** The page; it works offline and without scripts. */
  public static final String PAGE = "replay.html";

  /** Shares by month, as JSON. */
  public static final String SUMMARY = "replay.json";

  /** Odds of every day, as CSV. */
  public static final String TABLE = "replay.csv";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, SUMMARY, TABLE);

  private static final double LIKELY = Level.LIKELY.least();

  /**
   * No verdict, which would take off what so few journeys of a single day leave open: nearly all.
   */
  private static final String ENOUGH = Words.inHundred(LIKELY) + " or more of 100 go well";

  /** More months than these are counted, not named. */
  private static final int MOST_NAMED = 4;

  private final Scenario scenario;
  private final List<Packed> packings;
  private final List<List<Departure>> days;
  private final List<String> cautions;
  private final Map<Month, List<List<Departure>>> months = new LinkedHashMap<>();

  /** Starts from days by days, packings by packings. */
  ReplayedDays(
      Scenario scenario, List<Packed> packings, List<List<Departure>> days, List<String> cautions) {
    this.scenario = scenario;
    this.packings = List.copyOf(packings);
    this.days = List.copyOf(days);
    this.cautions = List.copyOf(cautions);
    Map<Month, List<List<Departure>>> found = new EnumMap<>(Month.class);
    for (List<Departure> day : days) {
      Month month = day.get(0).journey().sealing().getMonth();
      found.computeIfAbsent(month, any -> new ArrayList<>()).add(day);
    }
    MonthChart.inOrder(found.keySet())
        .forEach(month -> months.put(month, found.getOrDefault(month, List.of())));
  }

  /** Mean share of departures that go well. */
  private static double share(List<List<Departure>> days, int packing) {
    return days.stream()
        .mapToDouble(day -> day.get(packing).odds().within().within())
        .average()
        .orElseThrow();
  }

  /** The same, each day packed in the way that fares better. */
  private static double bestShare(List<List<Departure>> days) {
    return days.stream().mapToDouble(ReplayedDays::best).average().orElseThrow();
  }

  private static double best(List<Departure> day) {
    return day.stream().mapToDouble(each -> each.odds().within().within()).max().orElseThrow();
  }

  /** Mean share of departures that meet a harm, each day packed in the better way. */
  private static double harmed(List<List<Departure>> days, Function<JourneyOdds, Odds> spared) {
    return days.stream()
        .map(day -> day.get(Departures.best(day)).odds())
        .mapToDouble(odds -> 1 - spared.apply(odds).within())
        .average()
        .orElseThrow();
  }

  /** Number of days on which enough journeys of the better way go well, with no doubt taken off. */
  private static long held(List<List<Departure>> days) {
    return days.stream().filter(day -> best(day) >= LIKELY).count();
  }

  private static String name(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /** What the past tells. */
  String headline() {
    Month best = null;
    Month worst = null;
    for (Month month : months.keySet()) {
      double here = bestShare(of(month));
      best = best == null || here > bestShare(of(best)) ? month : best;
      worst = worst == null || here < bestShare(of(worst)) ? month : worst;
    }
    if (best == null || worst == null) {
      throw new IllegalStateException("no month");
    }
    String ways =
        packings.size() > 1 ? ", each with or without the warmer as is better that day," : "";
    return "Of 100 departures on recorded days"
        + inMonths()
        + (ways.isEmpty() ? "," : ways)
        + " "
        + Words.inHundred(bestShare(days))
        + Words.goWell(bestShare(days))
        + "; "
        + ENOUGH
        + " on "
        + (held(days) == 0 ? "none" : held(days))
        + " of "
        + Departures.days(days.size())
        + ". "
        + (best == worst
            ? ""
            : "Best is "
                + name(best)
                + " with "
                + Words.inHundred(bestShare(of(best)))
                + ", worst "
                + name(worst)
                + " with "
                + Words.inHundred(bestShare(of(worst)))
                + ".");
  }

  private String inMonths() {
    int many = months.size();
    return many == Month.values().length
        ? ""
        : " in "
            + (many > MOST_NAMED
                ? many + " months of the year"
                : Figures.listed(months.keySet().stream().map(ReplayedDays::name).toList()));
  }

  /** How to ask for other months; nothing if all are told of. */
  private Optional<String> otherMonths() {
    return months.size() == Month.values().length
        ? Optional.empty()
        : Optional.of(
            "For other months use --months, such as --months 6,7,8 for the summer; without it they"
                + " are those of the winter, December to February.");
  }

  private List<List<Departure>> of(Month month) {
    return months.getOrDefault(month, List.of());
  }

  private TextTable table() {
    boolean warmed = packings.size() > 1;
    List<String> head = new ArrayList<>(List.of("month", "days"));
    head.addAll(
        warmed
            ? List.of("go well, with warmer", "go well, no warmer", "go well, better way")
            : List.of("go well"));
    head.addAll(List.of("good days", "cold", "heat", "air"));
    if (warmed) {
      head.add("burns");
    }
    List<List<String>> lines = new ArrayList<>();
    months.forEach(
        (month, there) -> {
          List<String> line = new ArrayList<>();
          line.add(name(month));
          line.add(Integer.toString(there.size()));
          for (int packing = 0; packing < packings.size(); packing++) {
            line.add(Words.percent(share(there, packing)));
          }
          if (warmed) {
            line.add(Words.percent(bestShare(there)));
          }
          line.add(Long.toString(held(there)));
          line.add(harm(there, JourneyOdds::notTooCold));
          line.add(harm(there, JourneyOdds::notTooHot));
          line.add(harm(there, JourneyOdds::enoughAir));
          if (warmed) {
            line.add(harm(there, JourneyOdds::notBurnt));
          }
          lines.add(line);
        });
    return new TextTable(
        "Of 100 departures in each month so many go well, and so many are harmed by cold, heat, lack"
            + " of air"
            + (warmed ? " or burns" : "")
            + "; good days are those on which "
            + ENOUGH
            + (warmed ? "; these, and the harm, are of the better way each day" : ""),
        head,
        lines);
  }

  private static String harm(List<List<Departure>> days, Function<JourneyOdds, Odds> spared) {
    double share = harmed(days, spared);
    return share > 0 ? Words.percent(share) : Tables.NOTHING;
  }

  private String note() {
    return Departures.days(days.size())
        + " from "
        + new Figures(scenario.units()).day(first())
        + " "
        + first().getYear()
        + " to "
        + new Figures(scenario.units()).day(last())
        + " "
        + last().getYear()
        + ". The weather is that of each day; what else is uncertain varies in 16 journeys of each"
        + " day, so that a single day is told roughly, a month well. If none of a day's first eight"
        + " journeys goes well, the other eight are taken to fail, too: a share may be up to 2 of"
        + " 100 too low. Days on which "
        + ENOUGH
        + " are counted by what these journeys suggest: so few leave much doubt about a single day,"
        + " which the verdicts of other commands take off. Days that follow each other are alike.";
  }

  private LocalDate first() {
    return days.get(0).get(0).journey().sealing().toLocalDate();
  }

  private LocalDate last() {
    return days.get(days.size() - 1).get(0).journey().sealing().toLocalDate();
  }

  private MonthChart chart() {
    MonthChart.Builder chart =
        MonthChart.titled("How departures in each month would have fared")
            .level(Level.LIKELY.words() + " from here on", LIKELY);
    for (int packing = 0; packing < packings.size(); packing++) {
      Map<Month, Double> shares = new TreeMap<>();
      int which = packing;
      months.forEach((month, there) -> shares.put(month, share(there, which)));
      chart.kind(Departures.named(packings.get(packing)), shares);
    }
    if (packings.size() > 1) {
      Map<Month, Double> shares = new TreeMap<>();
      months.forEach((month, there) -> shares.put(month, bestShare(there)));
      chart.kind("in the better way each day", shares);
    }
    return chart.build();
  }

  private String title() {
    return scenario.title()
        + ": how would it have fared? Packing '"
        + packings.get(0).parcel().name()
        + "'";
  }

  @Override
  public void print(PrintWriter out) {
    ConsoleText.answer(out, title(), headline());
    otherMonths().ifPresent(sentence -> ConsoleText.line(out, sentence));
    table().print(out);
    out.println();
    ConsoleText.line(out, note());
    ConsoleText.list(out, "Cautions", cautions);
  }

  @Override
  public String json() {
    ObjectNode root = JsonText.object();
    root.put("title", scenario.title());
    root.put("packing", packings.get(0).parcel().name());
    root.put("answer", headline());
    root.put("days", days.size());
    ArrayNode array = root.putArray("months");
    months.forEach(
        (month, there) -> {
          ObjectNode node = array.addObject();
          node.put("month", month.getValue());
          node.put("days", there.size());
          for (int packing = 0; packing < packings.size(); packing++) {
            boolean warm = !packings.get(packing).parcel().warmers().isEmpty();
            node.put(warm ? "within_with_warmer" : "within_without", share(there, packing));
          }
          node.put("within_better_way", bestShare(there));
          node.put("too_cold_better_way", harmed(there, JourneyOdds::notTooCold));
          node.put("too_hot_better_way", harmed(there, JourneyOdds::notTooHot));
          node.put("short_of_air_better_way", harmed(there, JourneyOdds::enoughAir));
          node.put("burnt_better_way", harmed(there, JourneyOdds::notBurnt));
          node.put("days_with_80_of_100_well", held(there));
        });
    ArrayNode all = root.putArray("cautions");
    cautions.forEach(all::add);
    return JsonText.of(root);
  }

  private String csv() {
    StringBuilder csv = new StringBuilder("sealed,packing,within,not_too_cold,not_too_hot,air\n");
    for (List<Departure> day : days) {
      for (int packing = 0; packing < packings.size(); packing++) {
        Departure each = day.get(packing);
        csv.append(each.journey().sealing()).append(',');
        csv.append(CsvText.field(packings.get(packing).label())).append(',');
        csv.append(each.odds().within().within()).append(',');
        csv.append(each.odds().notTooCold().within()).append(',');
        csv.append(each.odds().notTooHot().within()).append(',');
        csv.append(each.odds().enoughAir().within()).append('\n');
      }
    }
    return csv.toString();
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    AnswerPage page = new AnswerPage(title(), headline());
    otherMonths().ifPresent(page::sentence);
    page.deferral();
    if (pictures) {
      MonthChart chart = chart();
      page.picture(
          chart,
          chart::heightFor,
          "Each point: of 100 departures in that month, so many would have gone well."
              + (packings.size() > 1
                  ? " The better way is chosen anew each day; where its line is hidden, it runs"
                      + " with the other that is seen there."
                  : ""));
    }
    page.table(table());
    page.sentence(note());
    page.cautions(cautions);
    page.restsOn(scenario);
    page.files("All digits in SI units", List.of(SUMMARY, TABLE));
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, page.html());
    files.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    files.put(TABLE, csv().getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
