package stenotherm.examples;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stenotherm.animal.Animal;
import stenotherm.animal.AnimalGroup;
import stenotherm.animal.Animals;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.base.Provenance;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.Volumes;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.Container;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.VesselSize;
import stenotherm.parcel.VesselSizes;
import stenotherm.scenario.ScenarioReader;
import stenotherm.text.ScalarText;
import stenotherm.text.TextFormatException;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** Asks ten questions, and writes a scenario file from the answers. */
@Command(
    name = "new",
    description =
        "Asks ten questions and writes a scenario file: measures, way, animal, mass, container, foam,"
            + " box, weather, warmer, day. An empty answer takes what stands in brackets, ? tells what may"
            + " be answered.",
    footer = ConsoleCommand.PROGRAM + "new my-scenario.yaml")
final class NewScenario extends ConsoleCommand implements Callable<Integer> {
  /** In which measures things are bought, and what is usual in them. */
  private enum Measures {
    METRIC(
        "metric",
        List.of("metric", "m", "cm", "mm", "ml", "g", "°c", "c", "celsius"),
        "20 x 20 x 20 cm carton",
        List.of("50 x 40 x 30 cm carton", "60 x 45 x 40 cm carton", "100 x 70 x 50 cm carton"),
        "EPS 20 20 mm",
        "20, 30 and 40 mm",
        "-2 to 7 °C",
        "4 to 12 °C",
        "UTC+1",
        "27 °C",
        List.of("250 x 200 x 120 mm", "400 x 300 x 200 mm", "900 x 600 x 400 mm"),
        "12 g",
        List.of(
            "inner size such as 110 x 80 x 60 mm, or diameter and height such as 100 x 60 mm;",
            "a round cup by any volume such as 300 ml; by name:"),
        "EPS 20 is white, of beads, 20 kg/m3",
        List.of("22 x 18 x 16 cm carton", "200 x 170 x 150 mm")),
    US(
        "us",
        List.of("us", "u.s.", "usa", "imperial", "in", "inch", "inches", "oz", "°f", "f"),
        "8 x 8 x 7 in carton",
        List.of("20 x 16 x 12 in carton", "24 x 18 x 16 in carton", "40 x 28 x 20 in carton"),
        "EPS 20 3/4 in",
        "1/2, 3/4, 1, 1 1/2 and 2 in",
        "28 to 45 °F",
        "42 to 60 °F",
        "UTC-5",
        "80 °F",
        List.of("10 x 8 x 5 in", "16 x 12 x 8 in", "36 x 24 x 16 in"),
        "1.5 oz or 40 grams",
        List.of(
            "inner size such as 4 x 3 x 2 1/2 in, or diameter and height such as 4 x 2 1/2 in;",
            "a round cup by any volume such as 10 fl oz or 10 oz deli cup; by name:"),
        "EPS 20 is white, of beads, 1.25 lb/ft3",
        List.of("9 x 9 x 8 in carton", "8 x 7 x 6 in"));

    private final String label;
    private final List<String> words;
    private final String usualBox;

    /** Cartons for containers that none of the usual ones has room for. */
    private final List<String> largeBoxes;

    private final String foam;
    private final String thicknesses;
    private final String weather;

    /** What may be at the other end. */
    private final String milder;

    /** Where it is. */
    private final String zone;

    /** From which high on no warmer is offered. */
    private final String hot;

    /** Containers for animals that none with a name has room for. */
    private final List<String> largeCups;

    /** What may be answered, in these measures. */
    private final String mass;

    private final List<String> cups;
    private final String density;
    private final List<String> boxSizes;

    Measures(
        String label,
        List<String> words,
        String usualBox,
        List<String> largeBoxes,
        String foam,
        String thicknesses,
        String weather,
        String milder,
        String zone,
        String hot,
        List<String> largeCups,
        String mass,
        List<String> cups,
        String density,
        List<String> boxSizes) {
      this.label = label;
      this.words = words;
      this.usualBox = usualBox;
      this.largeBoxes = largeBoxes;
      this.foam = foam;
      this.thicknesses = thicknesses;
      this.weather = weather;
      this.milder = milder;
      this.zone = zone;
      this.hot = hot;
      this.largeCups = largeCups;
      this.mass = mass;
      this.cups = cups;
      this.density = density;
      this.boxSizes = boxSizes;
    }

    String degrees() {
      return this == METRIC ? "°C" : "°F";
    }

    List<BoxSize> boxes() {
      return this == METRIC ? BoxSizes.metric() : BoxSizes.all();
    }

    List<VesselSize> vessels() {
      return this == METRIC ? VesselSizes.metric() : VesselSizes.all();
    }
  }

  /** Volume of a container that is offered, over that of the body: assumed. */
  private static final double ROOM = 10;

  /** Smaller ones are offered to no animal: assumed. */
  private static final double LEAST_ROOM = Volumes.fromLitres(0.09);

  /** From highs of this on no warmer is offered: assumed [K]. */
  private static final double HOT = Temperatures.fromFahrenheit(80);

  private static final int LONGEST_SHOWN = 40;
  private static final String NONE = "none";
  private static final List<String> NOTHING =
      List.of(NONE, "no", "n", "without", "nothing", "no heat", "no heat pack");

  /** A warmer without its place, as in {@code 40 hour heat pack}. */
  private static final Pattern HOURS =
      Pattern.compile("(?i)[0-9]+[\\s-]*h(?!.*\\b(?:on|at|in|under|to)\\b).*");

  private static final String USUAL_WARMER = "40 hour warmer on lid";

  /** Two nights and two days are more than forty hours. */
  private static final String LONGEST_WARMER = "72 hour warmer on lid";

  /** A container and a box in which every animal fits, until it is known which are meant. */
  private static final String LARGEST_CUP = "930 x 900 x 900 mm";

  private static final String LARGEST_BOX = "1 x 1 x 1 m";

  /** An animal with its mass, as in {@code dyeing poison frog, 5 g}. */
  private static final Pattern WITH_MASS = Pattern.compile("(\\D*?[^\\s\\d,])[\\s,]+([0-9.].*)");

  /** A low and a high without a unit, as in {@code 42 to 60} or {@code 42-60°}. */
  private static final Pattern NO_UNIT =
      Pattern.compile("([0-9+−–—.°\\s-]+(?:\\sto\\s[0-9+−–—.°\\s-]+)?[0-9.])\\s*°?");

  /** A length with its unit, as in {@code 30 mm} or {@code 1 1/2 in}. */
  private static final Pattern THICKNESS =
      Pattern.compile("[0-9¼-¾⅐-⅞.][0-9¼-¾⅐-⅞./\\s-]*(?:mm|cm|in\\.?|inch|inches|\")");

  /** Three lengths with nothing after their unit, as in {@code 8x8x7 in}. */
  private static final Pattern OUTER_SIZE =
      Pattern.compile("[0-9][^xX×]*[xX×][^xX×]*[xX×][^xX×]*?(?:mm|cm|in\\.?|inch|inches|ft|\")");

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "File to write; one that is there is not replaced. Default: ${DEFAULT-VALUE}.")
  private Path file = Path.of("my-scenario.yaml");

  private final @Nullable Reader answers;
  private final LocalDate today;

  private Measures measures = Measures.US;
  private JourneyTemplate way = JourneyTemplates.OVERNIGHT_BY_AIR;
  private Animal animal = Animals.LEOPARD_GECKO;
  private String mass = UsualMasses.of(animal);
  private boolean massIsGiven;
  private String cup = LARGEST_CUP;
  private String foam = Measures.US.foam;
  private String box = LARGEST_BOX;
  private String warmer = NONE;
  private String weather = Measures.US.weather;

  /** Weather at the destination; empty if it is that of both ends. */
  private String weatherThere = "";

  private String zone = "UTC-5";
  private String zoneThere = "UTC-5";
  private String day = "";

  NewScenario() {
    this(null, LocalDate.now(ZoneId.systemDefault()));
  }

  /**
   * The command with answers from elsewhere.
   *
   * @param answers the answers, a line each; null for the console
   * @param today the day from which usual days count
   */
  NewScenario(@Nullable Reader answers, LocalDate today) {
    this.answers = answers;
    this.today = today;
  }

  @Override
  public Integer call() {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      return complain(CANNOT_WRITE, "there is no folder " + folder + "; make it first");
    }
    if (Files.exists(file)) {
      return complain(CANNOT_WRITE, file + " is there already; name another file");
    }
    try {
      BufferedReader in = new BufferedReader(answers == null ? console() : answers);
      if (!ask(in)) {
        out().println();
        out().flush();
        return complain(FAILED, "no more answers: nothing was written");
      }
      Files.writeString(file, scenario(), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    } catch (FileAlreadyExistsException problem) {
      return complain(CANNOT_WRITE, file + " is there already; name another file");
    } catch (IOException problem) {
      return complain(CANNOT_WRITE, "cannot write the scenario: " + inWords(problem));
    }
    out()
        .println(
            "Filled in without a question: fill of shredded paper, no holes in the box, its seams not"
                + " taped. Where yours differs, write fill, holes or seams under packings.");
    out().println("Written: " + file + ". Now compare it, or change it first:");
    out().println(program() + "compare " + file);
    out().flush();
    return 0;
  }

  private static Reader console() {
    String name = System.getProperty("stdin.encoding", Charset.defaultCharset().name());
    return new InputStreamReader(System.in, Charset.forName(name));
  }

  /** Takes an answer. */
  private interface Try {
    /** Returns what is wrong with the answer; empty if it is taken. */
    Optional<String> take(String answer);
  }

  /** Asks all questions; false if the answers end before. */
  private boolean ask(BufferedReader in) throws IOException {
    day = today.plusDays(1) + " 15:00";
    return askMeasures(in)
        && askWay(in)
        && askAnimal(in)
        && askCup(in)
        && askFoam(in)
        && askBox(in)
        && question(in, "Which lows and highs?", measures.weather, weathers(), this::takeWeather)
        && (weatherThere.isEmpty() || askZones(in))
        && askWarmer(in)
        && question(
            in,
            "Sealed when?",
            isRecorded() ? "2014-01-15 15:00" : day,
            List.of(
                "day and hour on the clock at the origin, such as 2026-03-12 15:00 or",
                "March 12, 2026, 3 pm; without a time zone"),
            answer -> {
              day = answer;
              return fault();
            });
  }

  /** What is cold when depends on the clocks of both ends. */
  private boolean askZones(BufferedReader in) throws IOException {
    List<String> help =
        List.of("hours from universal time, such as UTC-5, UTC-8 or UTC+1, as clocks are set then");
    return question(
            in,
            "Time zone at the origin?",
            zone,
            help,
            answer -> {
              zone = answer;
              zoneThere = answer;
              return fault();
            })
        && question(
            in,
            "Time zone at the destination?",
            zoneThere,
            help,
            answer -> {
              zoneThere = answer;
              return fault();
            });
  }

  private boolean askMeasures(BufferedReader in) throws IOException {
    return question(
        in,
        "Metric or US measures?",
        measures.label,
        List.of(
            "metric: cartons in cm, foam in mm, cups in ml, °C",
            "us: cartons and foam in inches, cups in fl oz, °F"),
        this::takeMeasures);
  }

  private boolean askWay(BufferedReader in) throws IOException {
    List<String> help = new ArrayList<>(ways());
    help.add("(a single word of them is enough, such as road; legs of your own go into the file)");
    return question(in, "How does it travel?", way.name(), help, this::takeWay);
  }

  private static List<String> ways() {
    return JourneyTemplates.all().stream().map(JourneyTemplate::name).toList();
  }

  private Optional<String> takeMeasures(String answer) {
    String word = answer.toLowerCase(Locale.ROOT);
    for (Measures each : Measures.values()) {
      if (each.words.contains(word)) {
        measures = each;
        weather = each.weather;
        weatherThere = "";
        zone = each.zone;
        zoneThere = each.zone;
        foam = each.foam;
        return Optional.empty();
      }
    }
    return Optional.of(
        "\"" + MessageText.of(answer, LONGEST_SHOWN) + "\" is neither metric nor us");
  }

  /** Takes a journey by its name, or by a word that no other has. */
  private Optional<String> takeWay(String answer) {
    String word = answer.toLowerCase(Locale.ROOT);
    List<String> meant =
        ways().stream().filter(each -> List.of(each.split(" ", -1)).contains(word)).toList();
    try {
      way = JourneyTemplates.named(meant.size() == 1 ? meant.get(0) : answer);
      return Optional.empty();
    } catch (InvalidInputException unknown) {
      return Optional.of(unknown.problem());
    }
  }

  private String usualWarmer() {
    return way.equals(JourneyTemplates.TWO_DAYS_BY_ROAD) ? LONGEST_WARMER : USUAL_WARMER;
  }

  private boolean askAnimal(BufferedReader in) throws IOException {
    List<String> animals =
        Animals.all().stream().map(each -> each.name() + " (" + each.species() + ")").toList();
    return question(in, "Which animal?", animal.name(), animals, this::takeAnimal)
        && (massIsGiven || askMass(in));
  }

  private boolean askMass(BufferedReader in) throws IOException {
    String usual = UsualMasses.of(animal);
    Source source = UsualMasses.source(animal);
    out()
        .println(
            "  "
                + usual
                + " is usual for an adult "
                + animal.name()
                + ": "
                + (source.provenance() == Provenance.READ
                    ? source.work() + ", " + source.locator()
                    : source.text())
                + ". Weigh yours: a lighter one cools faster.");
    return question(
        in,
        "How heavy is it?",
        usual,
        List.of("a mass with its unit, such as " + measures.mass + "; of two animals 2 x 12 g"),
        this::takeMass);
  }

  private boolean askCup(BufferedReader in) throws IOException {
    String usual = smallestCup();
    out()
        .println(
            (usual.endsWith("bag")
                    ? "  No cup or lidded box of the list has room for it to turn (assumed: ten times"
                        + " its body); cloth gives way, so "
                        + usual
                        + " is offered."
                    : "  A container in which it has room to turn (assumed: ten times its body) is "
                        + usual
                        + ".")
                + " Type yours if it is another.");
    List<String> help = new ArrayList<>(measures.cups);
    measures.vessels().stream().map(NewScenario::called).forEach(help::add);
    return question(
        in,
        "Which container?",
        usual,
        help,
        answer -> {
          cup = answer;
          return fault();
        });
  }

  private boolean askFoam(BufferedReader in) throws IOException {
    return question(
        in,
        "Which foam, how thick?",
        foam,
        List.of(
            measures.thicknesses + " are usual (common practice, no source);",
            measures.density + "; XPS is smooth, of one colour; PUR, PIR;",
            "a thickness alone is white foam of beads whose density you do not know; none"),
        answer -> {
          foam = THICKNESS.matcher(answer).matches() ? "foam " + answer : answer;
          return fault();
        });
  }

  private boolean askBox(BufferedReader in) throws IOException {
    String usual = smallestBox();
    List<String> help = new ArrayList<>();
    help.add("inner size of a carton such as " + measures.boxSizes.get(0) + ", or");
    help.add("outer size such as " + measures.boxSizes.get(1) + "; by name:");
    measures.boxes().stream().map(BoxSize::name).forEach(help::add);
    return question(
        in,
        "Which box?",
        usual,
        help,
        answer -> {
          box = answer;
          Optional<String> fault = fault().isEmpty() ? Optional.empty() : faultWithUsualWarmer();
          if (!OUTER_SIZE.matcher(answer).matches()) {
            return fault;
          }
          String taken =
              "Taken as the outer size. For a carton of this size inside, write "
                  + MessageText.of(answer, LONGEST_SHOWN)
                  + " carton.";
          if (fault.isEmpty()) {
            out().println("  " + taken);
          }
          return fault.map(why -> taken + " As it is, " + why);
        });
  }

  private boolean askWarmer(BufferedReader in) throws IOException {
    Optional<String> against =
        isHot()
            ? Optional.of("With highs of " + measures.hot + " or more (assumed) it may overheat.")
            : faultWithUsualWarmer().map(each -> "It does not fit: " + MessageText.of(each));
    against.ifPresent(why -> out().println("  A " + usualWarmer() + " is not offered. " + why));
    out().println("  Answer none, or hours and place, such as 40 hour heat pack on lid.");
    return question(
        in,
        "Which warmer?",
        against.isEmpty() ? usualWarmer() : NONE,
        warmers(),
        answer -> {
          warmer = NOTHING.contains(answer.toLowerCase(Locale.ROOT)) ? NONE : answer;
          if (HOURS.matcher(answer).matches()) {
            warmer = answer + " on lid";
          }
          Optional<String> fault = fault();
          if (fault.isEmpty() && !warmer.equals(NONE) && !warmer.equals(answer)) {
            out().println("  Taken as " + MessageText.of(warmer, LONGEST_SHOWN) + ".");
          }
          return fault;
        });
  }

  /**
   * Whether a stated high is one at which a warmer rather harms; none is stated of days on record.
   */
  private boolean isHot() {
    return ScenarioReader.read("answers", scenario()).plan().weather().stream()
        .flatMap(each -> each.days().stream())
        .anyMatch(day -> day.high() >= HOT);
  }

  /** What is wrong with the box, and what would do, with the warmer that is offered. */
  private Optional<String> faultWithUsualWarmer() {
    warmer = usualWarmer();
    Optional<String> fault = fault();
    warmer = NONE;
    return fault;
  }

  private static List<String> warmers() {
    return List.of(
        "none, or one of",
        Warmers.all().stream().map(WarmerClass::name).collect(Collectors.joining(", ")) + ",",
        "then its place: on lid, on left, on right, on front, on back or on floor;",
        "heat pack means warmer, and without a place it lies on the lid");
  }

  private List<String> weathers() {
    return List.of(
        "overnight low and daily high at both ends, such as " + measures.weather,
        "or those of the origin, a semicolon and those of the destination, such as "
            + measures.weather
            + "; "
            + measures.milder,
        "two recorded places, such as New York, UTC-5 to Seattle, UTC-8 (days of 2012 to 2015)");
  }

  private boolean question(
      BufferedReader in, String text, String usual, List<String> help, Try answer)
      throws IOException {
    while (true) {
      out().print(text + " [" + usual + "] ");
      out().flush();
      String line = in.readLine();
      if (line == null) {
        return false;
      }
      String given = line.strip();
      if (given.equals("?")) {
        help.forEach(each -> out().println("  " + each));
        continue;
      }
      Optional<String> fault = answer.take(given.isEmpty() ? usual : given);
      if (fault.isEmpty()) {
        return true;
      }
      out().println("  " + MessageText.of(fault.get()));
    }
  }

  /** Takes the name, and the mass if it stands there, too. */
  private Optional<String> takeAnimal(String answer) {
    Matcher both = WITH_MASS.matcher(answer);
    massIsGiven = both.matches();
    String name = massIsGiven ? both.group(1) : answer;
    try {
      // as the list of animals has it
      animal = Animals.named(name.replaceFirst("\\s*\\([^()]*\\)$", ""));
    } catch (InvalidInputException unknown) {
      return Optional.of(unknown.problem());
    }
    return massIsGiven ? takeMass(both.group(2)) : Optional.empty();
  }

  private Optional<String> takeMass(String answer) {
    mass = answer;
    Optional<String> fault = fault();
    if (fault.isEmpty()) {
      occupied()
          .flatMap(each -> each.occupant().flatMap(Occupant::crowding).stream())
          .forEach(warning -> out().println("  Take care: " + warning));
    }
    return fault;
  }

  private static String called(VesselSize size) {
    return size.vessel() instanceof Vessel.RoundCup ? size.name() + " cup" : size.name();
  }

  /**
   * The smallest cup or lidded box that the animal fits in with room to turn, for a reptile else a
   * bag, whose cloth gives way.
   */
  private String smallestCup() {
    cup = LARGEST_CUP;
    double least = Math.max(LEAST_ROOM, ROOM * bodies());
    List<VesselSize> lidded = new ArrayList<>();
    List<VesselSize> bags = new ArrayList<>();
    for (VesselSize each : measures.vessels()) {
      if (each.vessel() instanceof Vessel.Bag) {
        bags.add(each);
      } else if (!(each.vessel() instanceof Vessel.Vial) && each.vessel().volume() >= least) {
        lidded.add(each);
      }
    }
    lidded.sort(Comparator.comparingDouble(size -> size.vessel().volume()));
    List<String> names = new ArrayList<>();
    lidded.forEach(each -> names.add(called(each)));
    if (Animals.group(animal).filter(AnimalGroup.REPTILE::equals).isPresent()) {
      bags.forEach(each -> names.add(each.name()));
    }
    names.addAll(measures.largeCups);
    return firstThatFits(names, each -> cup = each);
  }

  /** Containers with an animal in them, as the answers so far say. */
  private Stream<Container> occupied() {
    return ScenarioReader.read("answers", scenario()).packings().get(0).occupied().stream();
  }

  /** Volume of the bodies of all animals in the container [m3]. */
  private double bodies() {
    return occupied().mapToDouble(each -> each.occupant().orElseThrow().volume()).sum();
  }

  /** The usual box, or a larger one if container and usual warmer do not fit in it. */
  private String smallestBox() {
    List<String> names = new ArrayList<>(List.of(measures.usualBox));
    measures.boxes().stream()
        .sorted(Comparator.comparingDouble(size -> size.inside().volume()))
        .forEach(size -> names.add(size.name()));
    names.addAll(measures.largeBoxes);
    warmer = usualWarmer();
    String box = firstThatFits(names, each -> this.box = each);
    warmer = NONE;
    return box;
  }

  /** Tries one after the other; the last is taken if none fits. */
  private String firstThatFits(List<String> names, Consumer<String> taken) {
    for (String each : names) {
      taken.accept(each);
      if (fault().isEmpty()) {
        return each;
      }
    }
    return names.get(names.size() - 1);
  }

  private boolean isRecorded() {
    return weather.contains("UTC");
  }

  /** Says what was taken, where the answer leaves out the unit or everything. */
  private Optional<String> takeWeather(String answer) {
    String[] ends = answer.split("\\s*;\\s*", 2);
    weather = withUnit(ends[0]);
    weatherThere = ends.length == 2 ? withUnit(ends[1]) : "";
    String taken = weatherThere.isEmpty() ? weather : weather + "; " + weatherThere;
    day = isRecorded() ? "2014-01-15 15:00" : today.plusDays(1) + " 15:00";
    Optional<String> fault = fault();
    if (fault.isEmpty() && (!taken.equals(answer) || answer.equals(measures.weather))) {
      out()
          .println(
              "  Taken as "
                  + MessageText.of(taken, LONGEST_SHOWN)
                  + ", overnight low and daily high outdoors, at "
                  + (weatherThere.isEmpty() ? "both ends." : "the origin and at the destination."));
    }
    return fault;
  }

  private String withUnit(String range) {
    Matcher bare = NO_UNIT.matcher(range);
    return bare.matches() ? bare.group(1) + " " + measures.degrees() : range;
  }

  /** What the scenario reader says to the answers so far; those to come are usual ones. */
  private Optional<String> fault() {
    try {
      ScenarioReader.read("answers", scenario());
      return Optional.empty();
    } catch (TextFormatException fault) {
      return Optional.of(fault.faults().get(0).problem());
    } catch (InvalidInputException fault) {
      return Optional.of(String.valueOf(fault.getMessage()));
    }
  }

  /** The file; answers stand in quotes, so that none of them becomes a part of its structure. */
  private String scenario() {
    String[] ends = weather.split(" to ", 2);
    String journey =
        isRecorded() && ends.length == 2
            ? "  from: " + ScalarText.quoted(ends[0]) + "\n  to: " + ScalarText.quoted(ends[1])
            : weatherThere.isEmpty()
                ? "  lows/highs: " + ScalarText.quoted(weather) + "  # outdoors, at both ends"
                : end("from", "origin", zone, weather)
                    + "\n"
                    + end("to", "destination", zoneThere, weatherThere);
    return """
        format: 1
        title: %s
        units: %s  # of the results: metric or us
        animal: %s
        cup: %s  # one by name, or a size; with a lid its bedding is a damp towel
        journey:
          template: %s  # or legs of your own
          sealed: %s
        %s
        # each packing is a block of its own; compare some
        packings:
          - name: first packing
            box: %s
            foam: %s  # kind and thickness
            fill: shredded paper
            warmer: %s
        """
        .formatted(
            ScalarText.quoted(animal.name() + ", " + day),
            measures.label,
            ScalarText.quoted(animal.name() + ", " + mass),
            ScalarText.quoted(cup),
            way.name(),
            ScalarText.quoted(day),
            journey,
            ScalarText.quoted(box),
            ScalarText.quoted(foam),
            ScalarText.quoted(warmer));
  }

  private static String end(String key, String name, String zone, String weather) {
    return "  %s: {name: %s, utc: %s, lows/highs: %s}"
        .formatted(key, name, ScalarText.quoted(zone), ScalarText.quoted(weather));
  }
}
