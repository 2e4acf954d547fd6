package stenotherm.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.animal.TemperatureBand;
import stenotherm.animal.Tolerance;
import stenotherm.base.Provenance;
import stenotherm.base.Temperatures;
import stenotherm.decision.Verdict;
import stenotherm.material.Material;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.scenario.Scenario;
import stenotherm.study.Odds;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * What must be said beside the numbers of a comparison.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class Cautions {
  /** What a warmer's curve is worth. */
  public static final String ILLUSTRATIVE =
      "How much heat a warmer gives, and when, is illustrative: it was not measured.";

  /** Burns in so many journeys are said apart from the odds, in which they count anyhow. */
  private static final double OFTEN = 0.05;

  /**
   * From here on polystyrene foam softens [K]: common practice, no source; sellers of EPS name 75
   * to 85 °C for hours.
   */
  private static final double FOAM_SOFTENS = Temperatures.fromCelsius(80);

  /** Names of foams of polystyrene. */
  private static final Pattern POLYSTYRENE = Pattern.compile("\\b(?:EPS|XPS)\\b");

  /** The figures by which a caution was found; they stand with it in the summary. */
  private static final Pattern FIGURES = Pattern.compile(" \\(\\d+\\.\\d K over [^()]*\\)");

  /** How a caution of a run says in which legs; see {@code TransitCautions}. */
  private static final Pattern IN_LEGS =
      Pattern.compile("^In '[^']*'(?:, and less in \\d+ other (?:part|parts of the journey))?: ");

  private static final Pattern CELSIUS = Pattern.compile("(-?\\d+(?:\\.\\d+)?) °C");
  private static final Pattern KELVIN = Pattern.compile("(\\d+(?:\\.\\d+)?) K\\b");

  private Cautions() {}

  /** The cautions of all packings, each once; the one that defers to others comes last. */
  static List<String> of(ComparisonReport report) {
    List<Judged> rows = report.rows();
    Words words = new Words(report.scenario());
    Figures figures = words.figures();
    Set<String> all = new LinkedHashSet<>();
    undated(report.scenario()).ifPresent(all::add);
    for (Judged row : rows) {
      for (Container container : row.parcel().occupied()) {
        basis(Judged.animal(container), figures).ifPresent(all::add);
      }
      for (String caution : row.assessment().verdict().cautions()) {
        // what happens in a leg may differ from packing to packing
        boolean inAll =
            rows.stream()
                .allMatch(each -> each.assessment().verdict().cautions().contains(caution));
        String said = whose(row.parcel(), caution) + plain(caution, figures);
        all.add(isOfPacking(caution) && !inAll ? row.label() + ": " + said : said);
      }
      // without its warmer a packing lacks less
      Stream<String> ofClimate =
          row.stripped() ? Stream.empty() : new ClimateWords(words).cautions(row).stream();
      Stream<String> ofBurns =
          burns(row.assessment().odds().notBurnt(), row.hasWarmer(), words).stream();
      Stream.of(
              ofClimate,
              ofBurns,
              softening(row.parcel(), Tables.warmestAtWorst(row), words).stream())
          .flatMap(each -> each)
          .map(caution -> rows.size() > 1 ? row.label() + ": " + caution : caution)
          .forEach(all::add);
      if (isIllustrative(row.parcel())) {
        all.add(ILLUSTRATIVE);
      }
    }
    all.remove(Verdict.DEFER);
    all.add(Verdict.DEFER);
    return List.copyOf(all);
  }

  /**
   * Where a warmer that lies against polystyrene foam may get too hot for that.
   *
   * @param warmest the hottest that a warmer gets in the worst case [K]
   */
  static Optional<String> softening(Parcel parcel, double warmest, Words words) {
    if (parcel.warmers().stream().noneMatch(warmer -> softens(parcel, warmer, warmest))) {
      return Optional.empty();
    }
    return Optional.of(
        "In the worst case, which is rare, its warmer, which lies against the foam, has "
            + words.temperature(warmest)
            + ": polystyrene foam softens from about "
            + words.temperature(FOAM_SOFTENS)
            + " (common practice, no source). A piece of carton between the two spares the foam.");
  }

  /**
   * Whether a warmer lies against polystyrene foam and may get too hot for that.
   *
   * @param warmest the hottest that a warmer of the parcel gets in the worst case [K]
   */
  static boolean softens(Parcel parcel, PlacedWarmer warmer, double warmest) {
    return warmest > FOAM_SOFTENS
        && warmer
            .placement()
            .onWall()
            .map(placed -> parcel.walls().layersOf(placed.face()))
            .filter(layers -> !layers.isEmpty())
            .filter(layers -> isPolystyrene(layers.get(layers.size() - 1).material()))
            .isPresent();
  }

  private static boolean isPolystyrene(Material material) {
    return POLYSTYRENE.matcher(material.name()).find();
  }

  /** What a typical journey does not show: places in reach that get too hot on others. */
  static Optional<String> burns(Odds notBurnt, boolean warmed, Words words) {
    double burnt = 1 - notBurnt.within();
    return burnt < OFTEN
        ? Optional.empty()
        : Optional.of(
            "On "
                + Words.inHundred(burnt)
                + " of 100 journeys a place in reach of an animal gets above "
                + words.temperature(Tolerance.HOTTEST_TOUCH)
                + ", which counts as harm (assumed): "
                + (warmed
                    ? "keep the warmer farther from it, with more fill between."
                    : "that is the heat of the air or the sun outside."));
  }

  /**
   * The cautions of a question about one packing.
   *
   * @param scenario the scenario
   * @param parcel one of its packings
   * @param ofRuns cautions of its runs
   * @return each once, in the scenario's units; the one that defers to others comes last
   */
  public static List<String> of(Scenario scenario, Parcel parcel, List<String> ofRuns) {
    Figures figures = new Figures(scenario.units());
    Set<String> all = new LinkedHashSet<>();
    for (Container container : parcel.occupied()) {
      Animal animal = Judged.animal(container);
      basis(animal, figures).ifPresent(all::add);
      animal.cautions().forEach(each -> all.add(whose(parcel, each) + plain(each, figures)));
    }
    all.addAll(onceEach(ofRuns.stream().map(caution -> plain(caution, figures)).toList()));
    if (isIllustrative(parcel)) {
      all.add(ILLUSTRATIVE);
    }
    all.remove(Verdict.DEFER);
    all.add(Verdict.DEFER);
    return List.copyOf(all);
  }

  /** What journeys on several days share is said once: in which legs differs from day to day. */
  private static List<String> onceEach(List<String> ofRuns) {
    Map<String, List<String>> alike =
        ofRuns.stream()
            .distinct()
            .collect(
                Collectors.groupingBy(
                    caution -> IN_LEGS.matcher(caution).replaceFirst(""),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return alike.entrySet().stream()
        .map(
            each ->
                each.getValue().size() == 1
                    ? each.getValue().get(0)
                    : "In parts of some of these journeys: " + each.getKey())
        .toList();
  }

  /** Where the file leaves day and hour to a preset, on which every moment rests. */
  static Optional<String> undated(Scenario scenario) {
    return scenario.plan().isDated()
        ? Optional.empty()
        : Optional.of(
            "The file gives no date: the hours are those of a parcel sealed on day 1 at "
                + Words.clock(scenario.journey(), 0)
                + ".");
  }

  /** Whom a caution is about, where other animals are in the parcel, too. */
  static String whose(Parcel parcel, String caution) {
    List<Animal> animals = parcel.occupied().stream().map(Judged::animal).distinct().toList();
    List<Animal> meant =
        animals.stream().filter(animal -> animal.cautions().contains(caution)).toList();
    return meant.isEmpty() || meant.size() == animals.size()
        ? ""
        : meant.stream().map(Animal::name).collect(Collectors.joining(" and ")) + ": ";
  }

  /** Where the temperatures of an animal of the catalogue have no source. */
  static Optional<String> basis(Animal animal, Figures figures) {
    TemperatureBand band = animal.tolerance().alarm();
    Provenance provenance = band.source().provenance();
    boolean unsourced = provenance == Provenance.PRACTICE || provenance == Provenance.ASSUMED;
    if (!unsourced || !Animals.all().contains(animal)) {
      return Optional.empty();
    }
    return Optional.of(
        figures.temperature(band.range().low())
            + " to "
            + figures.temperature(band.range().high())
            + " for the "
            + animal.name()
            + (provenance == Provenance.PRACTICE ? " is common practice" : " is assumed")
            + ": no published source was found.");
  }

  /** A caution in the reader's units, without the figures that only a physicist reads. */
  static String plain(String caution, Figures figures) {
    String words = FIGURES.matcher(caution).replaceAll("");
    if (figures.units() == Units.METRIC) {
      return words.replaceAll("(?<=\\d) K\\b", " C°");
    }
    String inFahrenheit =
        CELSIUS
            .matcher(words)
            .replaceAll(
                found ->
                    figures.temperature(
                        Temperatures.fromCelsius(Double.parseDouble(found.group(1)))));
    return KELVIN
        .matcher(inFahrenheit)
        .replaceAll(found -> figures.difference(Double.parseDouble(found.group(1))));
  }

  /** Whether a caution names a leg or a pack, which other packings may not share. */
  private static boolean isOfPacking(String caution) {
    return Stream.of("In '", "Container '", "'").anyMatch(caution::startsWith);
  }

  private static boolean isIllustrative(Parcel parcel) {
    return parcel.warmers().stream()
        .anyMatch(warmer -> warmer.warmer().source().provenance() == Provenance.ILLUSTRATIVE);
  }
}
