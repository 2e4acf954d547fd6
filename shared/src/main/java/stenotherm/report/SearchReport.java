package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import stenotherm.base.Axis;
import stenotherm.base.Lengths;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Harm;
import stenotherm.decision.Level;
import stenotherm.decision.PackingSearch;
import stenotherm.decision.PackingSearch.Found;
import stenotherm.decision.Remedy;
import stenotherm.decision.SearchSpace;
import stenotherm.grid.Box;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.Parcel;
import stenotherm.picture.OddsBars;
import stenotherm.scenario.Scenario;
import stenotherm.transit.TransitSettings;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * The smallest box that reaches wanted odds.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class SearchReport implements Answer {
  /** The page; it works offline and without scripts. */
  public static final String PAGE = "search.html";

  /** All candidates with all digits, as JSON. */
  public static final String SUMMARY = "search.json";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, SUMMARY);

  private static final Pattern INCHES = Pattern.compile("\\bin\\b");

  /** Foam as it is sold by the millimetre [m]: common practice, no source. */
  private static final List<Double> METRIC_FOAMS =
      DoubleStream.of(10, 20, 30, 40, 50).map(Lengths::fromMillimetres).boxed().toList();

  private final Scenario scenario;
  private final Parcel parcel;
  private final PackingSearch search;
  private final OptionalDouble divisor;
  private final Figures figures;
  private final Words words;
  private final VerdictWords verdicts;

  private SearchReport(
      Scenario scenario, Parcel parcel, PackingSearch search, OptionalDouble divisor) {
    this.scenario = scenario;
    this.parcel = parcel;
    this.search = search;
    this.divisor = divisor;
    this.figures = new Figures(scenario.units());
    this.words = new Words(scenario);
    this.verdicts = new VerdictWords(words);
  }

  /**
   * What is asked for.
   *
   * @param odds wanted odds [-], above 0 and below 1
   * @param divisor by which carriers turn volume into weight [m3/kg]; empty if not asked for
   * @param most how many candidates may be tried
   */
  public record Wish(double odds, OptionalDouble divisor, int most) {}

  /**
   * Searches.
   *
   * @param scenario the scenario
   * @param parcel the packing of it whose contents are to be packed
   * @param wish what is asked for
   * @param settings how finely
   * @param threads work done at a time
   * @param progress told how far the work is, and the first look
   * @return what was found
   * @throws stenotherm.base.InvalidInputException if nothing fits, or something melts
   * @throws IllegalStateException if a run failed or an interrupt stopped it
   */
  public static SearchReport of(
      Scenario scenario,
      Parcel parcel,
      Wish wish,
      TransitSettings settings,
      int threads,
      Comparison.Watcher progress) {
    SearchSpace usual = SearchSpace.usual(parcel, scenario.journey());
    boolean metric = isMetric(scenario);
    SearchSpace space =
        new SearchSpace(
            metric ? BoxSizes.metric() : usual.boxes(),
            metric ? METRIC_FOAMS : usual.foams(),
            usual.fillings(),
            usual.warmers(),
            usual.counts(),
            usual.changes(),
            wish.most());
    Figures figures = new Figures(scenario.units());
    PackingSearch search =
        PackingSearch.of(
            parcel,
            scenario.journey(),
            space,
            wish.odds(),
            new AssessmentSettings(settings.withThreads(threads), scenario.longestHold()),
            looks ->
                looks.stream()
                    .filter(each -> each.margin() >= 0)
                    .findFirst()
                    .ifPresent(
                        each ->
                            progress.soFar(
                                "First look, one typical journey computed roughly: in a box of "
                                    + size(figures, each.shipment().parcel())
                                    + ", measured outside, all stays within its temperatures. How"
                                    + " often that goes well follows.")),
            progress);
    return new SearchReport(scenario, parcel, search, wish.divisor());
  }

  private static String size(Figures figures, Parcel parcel) {
    Box outer = parcel.outer();
    return figures.size(outer.size(Axis.X), outer.size(Axis.Y), outer.size(Axis.Z));
  }

  /** The answer: at the wanted odds, else what likely holds, else the best there is. */
  private Optional<Found> answer() {
    return search.best().or(() -> search.best(Level.LIKELY));
  }

  private String headline() {
    String wanted = Words.inHundred(search.wanted()) + " of 100 journeys";
    if (search.best().isPresent()) {
      Found best = search.best().get();
      return "The smallest box found with which at least "
          + wanted
          + " go well, some doubt taken off: "
          + named(best)
          + "; "
          + share(best)
          + ".";
    }
    boolean open =
        search.checked().stream()
            .flatMap(each -> each.within().stream())
            .anyMatch(odds -> odds.within() >= search.wanted());
    String none =
        open
            ? "No box that was tried is sure to let "
                + wanted
                + " go well, as only so many journeys were computed. "
            : "With no box that was tried do " + wanted + " go well. ";
    if (answer().isPresent()) {
      Found best = answer().get();
      return none + "The smallest that likely holds: " + named(best) + "; " + share(best) + ".";
    }
    Found best = search.checked().get(0);
    return none
        + "The best is "
        + named(best)
        + "; "
        + share(best)
        + best.within().map(odds -> " (" + Level.of(odds).words() + ")").orElse("")
        + ".";
  }

  private static String share(Found found) {
    return TriedOdds.share(found.within()) + " of 100" + TriedOdds.goWell(found.within());
  }

  /** What to buy and to do. */
  private String words(Found found) {
    return found.choice().box().name() + inside(found);
  }

  /** The same, with how large it is outside. */
  private String named(Found found) {
    return found.choice().box().name()
        + " ("
        + size(figures, found.shipment().parcel())
        + " outside)"
        + inside(found);
  }

  private String inside(Found found) {
    StringBuilder words = new StringBuilder(", ");
    words.append(
        found.choice().foam() > 0 ? figures.tape(found.choice().foam()) + " foam" : "no foam");
    int count = found.choice().count();
    found
        .choice()
        .warmer()
        .ifPresentOrElse(
            kind -> words.append(count > 1 ? ", " + count + " x " : ", ").append(kind.name()),
            () -> words.append(", no warmer"));
    for (Remedy change : found.choice().changes()) {
      words.append(", ").append(verdicts.remedy(change));
    }
    return words.toString();
  }

  /** With what the number of journeys leaves open. */
  private static String interval(Found found) {
    return found
        .within()
        .map(odds -> Words.percent(odds.within()) + " (" + Words.interval(odds) + ")")
        .orElse(Tables.NOTHING);
  }

  /** The best, by numbers under which what breaks them is told. */
  private TextTable best() {
    List<List<String>> lines = new ArrayList<>();
    for (Found each : search.checked()) {
      lines.add(line(lines.size() + 1 + ": " + words(each), each));
    }
    return new TextTable(
        search.best().isPresent()
            ? "The best, computed in full"
            : "What comes nearest, computed in full",
        head(),
        lines);
  }

  private TextTable tradeOff() {
    List<String> head = head();
    head.add("computed");
    List<List<String>> lines = new ArrayList<>();
    for (Found each : search.tradeOff()) {
      List<String> line = line(words(each), each);
      line.add(each.checked().isPresent() ? "in full" : "roughly");
      lines.add(line);
    }
    return new TextTable(
        "Size, mass and odds: what no other candidate beats without more changes, the smallest first",
        head,
        lines);
  }

  private List<String> head() {
    List<String> head = new ArrayList<>(List.of("packing", "of 100 go well", "mass"));
    divisor.ifPresent(any -> head.add("dimensional weight"));
    return head;
  }

  private List<String> line(String name, Found found) {
    List<String> line = new ArrayList<>();
    line.add(name);
    line.add(interval(found));
    line.add(figures.mass(found.shipment().parcel().mass()));
    divisor.ifPresent(by -> line.add(figures.mass(found.volume() / by)));
    return line;
  }

  private List<TextTable> tables() {
    TextTable mishaps = mishaps();
    return mishaps.lines().isEmpty()
        ? List.of(tradeOff(), best())
        : List.of(tradeOff(), best(), mishaps);
  }

  /** What breaks the best: of each mishap, which of them and how. */
  private TextTable mishaps() {
    Map<String, Map<String, List<Integer>>> broken = new LinkedHashMap<>();
    int number = 0;
    for (Found each : search.checked()) {
      number++;
      for (Map.Entry<String, String> mishap : breaking(each).entrySet()) {
        broken
            .computeIfAbsent(mishap.getKey(), any -> new LinkedHashMap<>())
            .computeIfAbsent(mishap.getValue(), any -> new ArrayList<>())
            .add(number);
      }
    }
    List<List<String>> lines =
        broken.entrySet().stream()
            .sorted(Comparator.comparingInt(each -> -many(each.getValue())))
            .map(each -> List.of(each.getKey(), numbers(each.getValue())))
            .toList();
    return new TextTable(
        "What goes wrong with these, one thing at a time, in a typical journey computed roughly",
        List.of("what goes wrong", "which of them it breaks"),
        lines);
  }

  /** What breaks a packing, and by what danger. */
  private Map<String, String> breaking(Found found) {
    if (found.margin() < 0) {
      return Map.of("nothing need go wrong: it is harmed as planned", "");
    }
    Map<String, String> all = new LinkedHashMap<>();
    found.harms().stream()
        .filter(Harm::isBreached)
        .forEach(harm -> all.put(harm.words(words), harm.danger().words()));
    return all;
  }

  private static int many(Map<String, List<Integer>> how) {
    return how.values().stream().mapToInt(List::size).sum();
  }

  /** Such as "1, 4 (cold); 2 (heat)" or "all (cold)". */
  private String numbers(Map<String, List<Integer>> how) {
    return how.entrySet().stream()
        .map(
            each ->
                (each.getValue().size() == search.checked().size()
                        ? "all"
                        : each.getValue().stream()
                            .map(String::valueOf)
                            .collect(Collectors.joining(", ")))
                    + (each.getKey().isEmpty() ? "" : " (" + each.getKey() + ")"))
        .collect(Collectors.joining("; "));
  }

  private String note() {
    return "Candidates that were tried: "
        + search.candidates().size()
        + "; left out, as they would not fit together, bring a warmer too near to a cup or beside"
        + " something cold, or change what is not there: "
        + search.unfit()
        + ". Cartons and foams are those sold in "
        + (isMetric(scenario) ? "centimetres and millimetres" : "inches")
        + ". All went through a"
        + " typical, a cold and a hot journey, computed roughly, the promising ones through 64, the"
        + " best through 256 in full. In brackets stands what so few journeys leave open; the lower number must"
        + " reach what is wanted. With the best, what goes wrong as a rule was tried one by one; the command break"
        + " finds the odds of that, and pairs. Other boxes may be smaller still."
        + (divisor.isPresent()
            ? " Dimensional weight is not rounded up; check your carrier's rules."
            : "");
  }

  private Found chosen() {
    return answer().orElse(search.checked().get(0));
  }

  /** Whether metric cartons are tried: units say so, and no carton of the file is one of inches. */
  private static boolean isMetric(Scenario scenario) {
    return scenario.units() == Units.METRIC
        && scenario.packings().stream()
            .flatMap(packing -> scenario.carton(packing).stream())
            .noneMatch(INCHES.asPredicate());
  }

  /** The block to paste; empty where nobody should send the best there is. */
  private Optional<PastedShipment> pasted() {
    Found found = chosen();
    boolean isHopeless = found.within().filter(odds -> Level.of(odds) != Level.DO_NOT).isEmpty();
    return isHopeless
        ? Optional.empty()
        : Optional.of(
            PastedShipment.of(
                "found by search",
                found.choice().box().name(),
                found.shipment(),
                found.choice().changes(),
                parcel,
                scenario));
  }

  private List<String> cautions() {
    Parcel found = chosen().shipment().parcel();
    return Cautions.of(scenario, found, found.cautions());
  }

  private String title() {
    return scenario.title() + ": what is the smallest box? Contents of '" + parcel.name() + "'";
  }

  @Override
  public void print(PrintWriter out) {
    ConsoleText.answer(out, title(), headline());
    tables().forEach(table -> table.print(out));
    out.println();
    ConsoleText.line(out, note());
    pasted()
        .ifPresent(
            block -> {
              out.println();
              ConsoleText.pasted(out, block);
            });
    ConsoleText.list(out, "Cautions", cautions());
  }

  @Override
  public String json() {
    ObjectNode root = JsonText.object();
    root.put("title", scenario.title());
    root.put("packing", parcel.name());
    root.put("answer", headline());
    root.put("wanted", search.wanted());
    root.put("tried", search.candidates().size());
    root.put("unfit", search.unfit());
    pasted()
        .ifPresent(
            block -> root.put("block", block.packing()).put("journey_block", block.journey()));
    add(root.putArray("checked"), search.checked());
    add(root.putArray("trade_off"), search.tradeOff());
    add(root.putArray("candidates"), search.candidates());
    cautions().forEach(root.putArray("cautions")::add);
    return JsonText.of(root);
  }

  private void add(ArrayNode array, List<Found> all) {
    for (Found each : all) {
      ObjectNode node = array.addObject();
      node.put("what", words(each));
      node.put("volume", each.volume());
      node.put("mass", each.shipment().parcel().mass());
      node.put("warmers", each.choice().count());
      divisor.ifPresent(by -> node.put("dimensional_weight", each.volume() / by));
      if (Double.isFinite(each.margin())) {
        node.put("margin", each.margin());
      }
      each.within().ifPresent(odds -> JsonText.addOdds(node, odds));
      if (each.checked().isPresent()) {
        ArrayNode breaking = node.putArray("broken_by");
        each.harms().stream()
            .filter(Harm::isBreached)
            .map(harm -> harm.words(words))
            .forEach(breaking::add);
        node.put("mishaps", each.harms().size());
      }
    }
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    AnswerPage page = new AnswerPage(title(), headline());
    page.deferral();
    if (pictures) {
      OddsBars.Builder builder =
          OddsBars.titled("Size against odds: what no other candidate beats, the smallest on top")
              .level("wanted", search.wanted());
      for (Found each : search.tradeOff()) {
        double share = each.within().orElseThrow().within();
        builder.row(words(each), share, Words.inHundred(share));
      }
      OddsBars chart = builder.build();
      page.picture(
          chart,
          chart::heightFor,
          "Each bar is a packing: of 100 journeys, so many go well with it.");
    }
    tables().forEach(page::table);
    page.sentence(note());
    pasted().ifPresent(page::pasted);
    page.cautions(cautions());
    page.restsOn(scenario);
    page.files("All digits in SI units", List.of(SUMMARY));
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, page.html());
    files.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
