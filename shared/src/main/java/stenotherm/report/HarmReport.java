package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.base.Times;
import stenotherm.decision.AssessmentSettings;
import stenotherm.decision.Harm;
import stenotherm.decision.Level;
import stenotherm.decision.Mishap;
import stenotherm.decision.MishapStudy;
import stenotherm.decision.Remedy;
import stenotherm.parcel.Parcel;
import stenotherm.picture.OddsBars;
import stenotherm.scenario.Scenario;
import stenotherm.transit.TransitSettings;
import stenotherm.words.Figures;

/**
 * What would harm a shipment first: mishaps one by one and in pairs, the worst first.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class HarmReport implements Answer {
  /** The page; it works offline and without scripts. */
  public static final String PAGE = "break.html";

  /** All mishaps and pairs with all digits, as JSON. */
  public static final String SUMMARY = "break.json";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, SUMMARY);

  /** Pairs that are shown; the others are in the file with all digits. */
  private static final int SHOWN_PAIRS = 12;

  /** Of a hundred fewer than one is told. */
  private static final double FEW = 0.005;

  private static final String COLUMNS =
      "First danger, margin and hours are those of a typical journey: what harms first or comes"
          + " nearest to it; how far it stays from the temperature at which that begins, below 0"
          + " beyond it; and how long after sealing harm begins.";

  private final Scenario scenario;
  private final Parcel parcel;
  private final MishapStudy study;
  private final Figures figures;
  private final Words words;

  private HarmReport(Scenario scenario, Parcel parcel, MishapStudy study) {
    this.scenario = scenario;
    this.parcel = parcel;
    this.study = study;
    this.figures = new Figures(scenario.units());
    this.words = new Words(scenario);
  }

  /**
   * Lets the usual mishaps happen, and those that the scenario adds.
   *
   * @param scenario the scenario
   * @param parcel the packing of it that is meant
   * @param settings how finely
   * @param threads work done at a time
   * @param progress told how far the work is, and the first look
   * @return what would harm it
   * @throws stenotherm.base.InvalidInputException if the packing has no animal
   * @throws IllegalStateException if a run failed or an interrupt stopped it
   */
  public static HarmReport of(
      Scenario scenario,
      Parcel parcel,
      TransitSettings settings,
      int threads,
      Comparison.Watcher progress) {
    double late = Math.min(Times.DAY, scenario.longestHold());
    List<Mishap> mishaps = new ArrayList<>(scenario.mishaps());
    mishaps.addAll(Mishap.usual(scenario.journey(), late));
    MishapStudy study =
        MishapStudy.of(
            parcel,
            scenario.journey(),
            mishaps,
            new AssessmentSettings(settings.withThreads(threads), scenario.longestHold()),
            looks -> {
              if (!looks.isEmpty()) {
                progress.soFar(
                    "First look, one typical journey each: nearest to harm is '"
                        + looks
                            .get(0)
                            .words(
                                new Words(scenario),
                                new Remedy.Shipment(parcel, scenario.journey()))
                        + "'. How often each goes well follows.");
              }
            },
            progress);
    return new HarmReport(scenario, parcel, study);
  }

  private String words(Harm harm) {
    return harm.words(words, new Remedy.Shipment(parcel, scenario.journey()));
  }

  private String headline() {
    String planned =
        "As planned, "
            + TriedOdds.share(study.planned().within())
            + " of 100 journeys with '"
            + parcel.name()
            + "'"
            + TriedOdds.goWell(study.planned().within())
            + ".";
    if (study.singles().isEmpty()) {
      return planned + " Nothing that was tried changes anything.";
    }
    Harm worst = study.singles().get(0);
    if (study.planned().isBroken()) {
      return "Even as planned "
          + (study.planned().within().filter(odds -> odds.within() < FEW).isPresent()
              ? ""
              : "only ")
          + TriedOdds.share(study.planned().within())
          + " of 100 journeys with '"
          + parcel.name()
          + "'"
          + TriedOdds.goWell(study.planned().within())
          + breach(study.planned())
          + ". "
          + (worsens(worst)
              ? "What would harm it most: "
                  + words(worst)
                  + "; "
                  + TriedOdds.share(worst.within())
                  + " of 100 such journeys"
                  + TriedOdds.goWell(worst.within())
                  + "."
              : "Nothing that was tried makes it worse.");
    }
    return "What would harm first: "
        + words(worst)
        + "; "
        + TriedOdds.share(worst.within())
        + " of 100 such journeys"
        + TriedOdds.goWell(worst.within())
        + breach(worst)
        + ". "
        + planned;
  }

  private static String breach(Harm harm) {
    return harm.isBreached()
        ? " (" + harm.danger().words() + " after " + hour(harm) + " in a typical one)"
        : "";
  }

  private static String hour(Harm harm) {
    return harm.isBreached() ? Words.hours(harm.nominal().breach()) + " h" : Tables.NOTHING;
  }

  /** Of temperatures: beside what is harmed first in another way it would mislead. */
  private String margin(Harm harm) {
    boolean other =
        harm.isBreached() && harm.danger() != Harm.Danger.COLD && harm.danger() != Harm.Danger.HOT;
    return other ? Tables.NOTHING : figures.difference(harm.margin());
  }

  private boolean worsens(Harm harm) {
    return harm.within().orElseThrow().within() < study.planned().within().orElseThrow().within();
  }

  private TextTable table(String caption, List<Harm> harms) {
    List<List<String>> lines = new ArrayList<>();
    for (Harm each : harms) {
      lines.add(
          List.of(
              words(each),
              TriedOdds.inColumn(each.within()),
              each.danger().words(),
              margin(each),
              hour(each)));
    }
    return new TextTable(
        caption,
        List.of("what goes wrong", "of 100 go well", "first danger", "margin", "harm after"),
        lines);
  }

  private List<Harm> shownPairs() {
    return study.pairs().subList(0, Math.min(SHOWN_PAIRS, study.pairs().size()));
  }

  private List<Harm> plannedAndSingles() {
    List<Harm> all = new ArrayList<>(List.of(study.planned()));
    all.addAll(study.singles());
    return all;
  }

  private List<TextTable> tables() {
    List<TextTable> all = new ArrayList<>();
    all.add(table("One thing goes wrong, the worst first", plannedAndSingles()));
    if (!study.pairs().isEmpty()) {
      all.add(
          table(
              "Two things go wrong, each withstood alone"
                  + (shownPairs().size() < study.pairs().size()
                      ? ": the worst " + SHOWN_PAIRS + " of " + study.pairs().size() + " pairs"
                      : ", the worst first"),
              shownPairs()));
    }
    return all;
  }

  private String note() {
    String leftOut = String.join("; ", leftOut());
    return "Each mishap alone was tried on 64 journeys that differ in all that is uncertain, each"
        + " computed roughly. "
        + pairing()
        + (happens(Mishap.Concern.SUN) ? " The sun is 800 W/m² on the lid, assumed." : "")
        + (happens(Mishap.Concern.LIE)
            ? " Of a parcel upside down or on its side temperature and air alone are judged, not the"
                + " fall."
            : "")
        + (leftOut.isEmpty() ? "" : " Left out: " + leftOut + ".");
  }

  private boolean happens(Mishap.Concern concern) {
    return study.singles().stream()
        .flatMap(harm -> harm.mishaps().stream())
        .anyMatch(mishap -> mishap.concerns().contains(concern));
  }

  private List<String> leftOut() {
    return study.leftOut().stream()
        .filter(each -> each.mishap().concerns().stream().allMatch(this::isThere))
        .map(each -> each.mishap().words(words) + ": " + each.why())
        .toList();
  }

  /** Whether the packing has what a mishap happens to. */
  private boolean isThere(Mishap.Concern concern) {
    return switch (concern) {
      case WARMER -> !parcel.warmers().isEmpty();
      case PACK -> !parcel.packs().isEmpty();
      default -> true;
    };
  }

  /** The rule by which pairs are made. */
  private String pairing() {
    String rule =
        "Pairs are made of mishaps that it withstands alone: with each of them "
            + Words.inHundred(Level.GAMBLE.least())
            + " of 100 journeys or more go well, at the lower end of what 64 journeys leave open.";
    long broken = study.singles().stream().filter(Harm::isBroken).count();
    String others =
        broken > 0
            ? " Those that break it alone ("
                + broken
                + " here) were not tried in pairs: what else goes wrong then no longer matters."
            : "";
    String how =
        study.pairs().isEmpty()
            ? " No two were left for a pair."
            : " Of each kind the two worst that are left and all of the file's own were tried in"
                + " pairs, in one typical journey; the ten pairs that look worst on 32.";
    return rule + others + how;
  }

  private List<String> cautions() {
    return Cautions.of(scenario, parcel, parcel.cautions());
  }

  private String title() {
    return scenario.title() + ": what would harm it? Packing '" + parcel.name() + "'";
  }

  @Override
  public void print(PrintWriter out) {
    ConsoleText.answer(out, title(), headline());
    out.println();
    ConsoleText.line(out, COLUMNS);
    tables().forEach(table -> table.print(out));
    out.println();
    ConsoleText.line(out, note());
    ConsoleText.list(out, "Cautions", cautions());
  }

  @Override
  public String json() {
    ObjectNode root = JsonText.object();
    root.put("title", scenario.title());
    root.put("packing", parcel.name());
    root.put("answer", headline());
    add(root.putArray("singles"), plannedAndSingles());
    add(root.putArray("pairs"), study.pairs());
    leftOut().forEach(root.putArray("left_out")::add);
    cautions().forEach(root.putArray("cautions")::add);
    return JsonText.of(root);
  }

  private void add(ArrayNode array, List<Harm> harms) {
    for (Harm each : harms) {
      ObjectNode node = array.addObject();
      node.put("what", words(each));
      each.within().ifPresent(odds -> JsonText.addOdds(node, odds));
      node.put("margin", each.margin());
      node.put("danger", each.danger().words());
      if (each.isBreached()) {
        node.put("breach", each.nominal().breach());
      }
    }
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    AnswerPage page = new AnswerPage(title(), headline());
    page.deferral();
    if (pictures) {
      OddsBars.Builder builder =
          OddsBars.titled("How often it goes well when one thing goes wrong")
              .level(Level.LIKELY.words(), Level.LIKELY.least());
      for (Harm each : plannedAndSingles()) {
        builder.row(
            words(each), each.within().orElseThrow().within(), TriedOdds.share(each.within()));
      }
      OddsBars chart = builder.build();
      page.picture(
          chart,
          chart::heightFor,
          "Each bar: of 100 journeys on which this goes wrong, so many go well.");
    }
    page.sentence(COLUMNS);
    tables().forEach(page::table);
    page.sentence(note());
    page.cautions(cautions());
    page.restsOn(scenario);
    page.files("All digits in SI units", List.of(SUMMARY));
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, page.html());
    files.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    return files;
  }
}
