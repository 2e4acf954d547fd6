package stenotherm.scenario;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stenotherm.base.Times;
import stenotherm.decision.Mishap;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.text.Document;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;
import stenotherm.text.TextFormatException;
import stenotherm.words.Units;

/**
 * Reads scenario files.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class ScenarioReader {
  private static final String FORMAT = "format";
  private static final String JOURNEY = "journey";
  private static final String FORECAST = "forecast";
  private static final Map<String, Units> UNITS = units();

  private static final double LONGEST_HOLD = Times.fromDays(29);

  private ScenarioReader() {}

  static List<String> unitNames() {
    return List.copyOf(UNITS.keySet());
  }

  private static Map<String, Units> units() {
    Map<String, Units> units = new LinkedHashMap<>();
    for (Units each : Units.values()) {
      units.put(each.label(), each);
    }
    units.put("imperial", Units.US);
    return Collections.unmodifiableMap(units);
  }

  /**
   * Reads a scenario from text that names no other file.
   *
   * @param fileName the name that messages show
   * @param text the scenario
   * @return the scenario
   * @throws TextFormatException if the text is not a scenario that can be computed, or names a file
   */
  public static Scenario read(String fileName, String text) {
    return read(Document.parse(fileName, text, Vocabulary::exampleAt), NamedFiles.none());
  }

  /**
   * Reads a scenario from text.
   *
   * @param fileName the name that messages show
   * @param text the scenario
   * @param folder where the tables lie that it names
   * @return the scenario
   * @throws TextFormatException if the text is not a scenario that can be computed, or a table that
   *     it names is none
   */
  public static Scenario read(String fileName, String text, Path folder) {
    return read(Document.parse(fileName, text, Vocabulary::exampleAt), NamedFiles.in(folder));
  }

  /**
   * Reads a scenario from a file in UTF-8, with the tables that it names in its folder or below.
   *
   * @param path the file; messages show it as given
   * @return the scenario
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the file is not a scenario that can be computed, or a table that
   *     it names is none
   */
  public static Scenario read(Path path) throws IOException {
    return read(Document.read(path, Vocabulary::exampleAt), NamedFiles.beside(path));
  }

  /**
   * Reads a scenario from a file as {@link #read(Path)} does, for a question that puts the journey
   * into the weather of a forecast: the file need not give its lows and highs a second time. The
   * journey of the scenario has those of the first day at the origin where the file gives none.
   *
   * @param path the file; messages show it as given
   * @param forecast the forecast; empty for the one in the file, if it has one
   * @return the scenario
   * @throws IOException if the file cannot be read
   * @throws TextFormatException if the file is not a scenario that can be computed, or a table that
   *     it names is none
   */
  public static Scenario readForForecast(Path path, Optional<DailyTable> forecast)
      throws IOException {
    return read(
        Document.read(path, Vocabulary::exampleAt),
        NamedFiles.beside(path),
        root -> inForecast(root, forecast));
  }

  private static Scenario read(Document document, NamedFiles files) {
    return read(document, files, root -> root.require(JOURNEY));
  }

  private static Scenario read(
      Document document, NamedFiles files, Function<KeyedSection, Node> journey) {
    MappingNode file = document.root().asMapping();
    checkFormat(file);
    Assumptions assumptions = new Assumptions();
    Faults keys = new Faults();
    KeyedSection.checkKeys(file, Vocabulary.SCENARIO, keys);
    try {
      Scenario scenario =
          read(
              KeyedSection.of(file, Vocabulary.SCENARIO, assumptions), files, assumptions, journey);
      keys.throwIfAny();
      return scenario;
    } catch (TextFormatException values) {
      throw keys.all().map(unknown -> together(unknown, values)).orElse(values);
    }
  }

  private static Scenario read(
      KeyedSection root,
      NamedFiles files,
      Assumptions assumptions,
      Function<KeyedSection, Node> asked) {
    Faults faults = new Faults();
    Optional<String> title = faults.attempt(() -> root.require("title").asScalar().text());
    Optional<Units> units = faults.attempt(() -> root.value("units").asScalar().choice(UNITS));
    Optional<Double> hold = faults.attempt(() -> hold(root.value("hold").asScalar()));
    // without a hold what follows is still checked, with the shortest there is
    double held = hold.orElse(1.0);
    Optional<Journey> journey =
        faults.attempt(
            () -> new JourneyReader(assumptions, held, firstDay(root)).read(asked.apply(root)));
    PackingReader packed = new PackingReader(assumptions, root, files);
    Optional<List<Parcel>> packings = faults.attempt(() -> packed.read(root.require("packings")));
    Optional<DailyTable> forecast =
        root.optional(FORECAST)
            .flatMap(
                list -> faults.attempt(() -> DailyTable.readEnds(list.asSequence(), assumptions)));
    Optional<List<Mishap>> mishaps =
        journey.isPresent() && packings.isPresent()
            ? faults.attempt(
                () -> MishapReader.read(root, packings.get().get(0), journey.get(), held))
            : Optional.empty();
    faults.throwIfAny();
    packings.orElseThrow().forEach(assumptions::packing);
    return new Scenario(
        title.orElseThrow(),
        units.orElseThrow(),
        packings.orElseThrow(),
        journey.orElseThrow(),
        new JourneyPlan(root.require(JOURNEY), held),
        held,
        assumptions.sentences(),
        mishaps.orElseThrow(),
        forecast,
        packed.spellings());
  }

  /** Low and high at the origin on the first day of the forecast in the file. */
  private static Optional<Node> firstDay(KeyedSection root) {
    return root.optional(FORECAST)
        .filter(list -> list instanceof SequenceNode days && !days.items().isEmpty())
        .map(list -> list.asSequence().items().get(0))
        .filter(MappingNode.class::isInstance)
        .flatMap(day -> day.asMapping().optional(Sites.ORIGIN));
  }

  /**
   * A journey in the weather of a forecast, unless the file gives it, or places beside its ends.
   */
  private static Node inForecast(KeyedSection root, Optional<DailyTable> forecast) {
    Node journey = root.require(JOURNEY);
    if (!(journey instanceof MappingNode keys)
        || keys.keys().contains(Sites.LOWS_HIGHS)
        || keys.keys().contains(Sites.PLACES)) {
      return journey;
    }
    return forecast
        .map(table -> table.origin().get(0))
        .map(day -> day.low() + " to " + day.high() + " K")
        .<Node>map(text -> keys.preset(Sites.LOWS_HIGHS, text))
        .or(() -> firstDay(root))
        .<Node>map(day -> keys.with(Sites.LOWS_HIGHS, day))
        .orElse(journey);
  }

  /** What is missing next to an unknown key is most often the same fault. */
  private static TextFormatException together(
      TextFormatException unknown, TextFormatException values) {
    Set<String> parts = new HashSet<>();
    unknown.faults().forEach(fault -> parts.add(partOf(fault)));
    List<TextFormatException> all = new ArrayList<>(unknown.faults());
    for (TextFormatException fault : values.faults()) {
      boolean isMissing = fault.problem().startsWith(MappingNode.MISSING);
      boolean follows = parts.contains(isMissing ? partOf(fault) : fault.path());
      if (!follows) {
        all.add(fault);
      }
    }
    return TextFormatException.all(all);
  }

  /** The path of the mapping that a key is in. */
  private static String partOf(TextFormatException fault) {
    return fault.path().substring(0, Math.max(0, fault.path().lastIndexOf('.')));
  }

  private static void checkFormat(MappingNode file) {
    Node format =
        file.optional(FORMAT)
            .orElseThrow(
                () ->
                    file.fail(
                        "must begin with the line format: 1"
                            + (file.keys().stream().anyMatch(FORMAT::equalsIgnoreCase)
                                ? "; keys have small letters"
                                : "")));
    if (!format.asScalar().text().equals("1")) {
      throw format.fail("this version reads format 1 only");
    }
    if (!file.keys().iterator().next().equals(FORMAT)) {
      throw file.failAt(FORMAT, "must be the first key");
    }
  }

  private static double hold(ScalarNode node) {
    double hold = node.duration();
    if (!(hold > 0) || hold > LONGEST_HOLD) {
      throw node.fail("must be longer than 0 and at most 29 d");
    }
    return hold;
  }
}
