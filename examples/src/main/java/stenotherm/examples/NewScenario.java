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
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stenotherm.animal.Animal;
import stenotherm.animal.AnimalGroup;
import stenotherm.animal.Animals;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.base.Volumes;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.VesselSize;
import stenotherm.parcel.VesselSizes;
import stenotherm.scenario.ScenarioReader;
import stenotherm.text.TextFormatException;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** Asks seven questions, and writes a scenario file from the answers. */
@Command(
    name = "new",
    description =
        "Asks seven questions and writes a scenario file: animal, mass, container, box, warmer,"
            + " weather, day. An empty answer takes what stands in brackets, ? tells what may be answered.",
    footer = ConsoleCommand.PROGRAM + "new my-scenario.yaml")
final class NewScenario extends ConsoleCommand implements Callable<Integer> {
  /** Containers for animals that none with a name has room for. */
  private static final List<String> LARGE_CUPS =
      List.of("250 x 200 x 120 mm", "400 x 300 x 200 mm", "900 x 600 x 400 mm");

  /** Cartons for containers that none of the usual ones has room for. */
  private static final List<String> LARGE_BOXES =
      List.of("20 x 16 x 12 in carton", "24 x 18 x 16 in carton", "40 x 28 x 20 in carton");

  /** Volume of a container that is offered, over that of the body: assumed. */
  private static final double ROOM = 10;

  /** Smaller ones are offered to no animal: assumed. */
  private static final double LEAST_ROOM = Volumes.fromFluidOunces(4);

  private static final String NONE = "none";
  private static final String USUAL_BOX = "8 x 8 x 7 in carton";
  private static final String USUAL_WARMER = "40 hour warmer on lid";

  /** A container and a box in which every animal fits, until it is known which are meant. */
  private static final String LARGEST_CUP = "930 x 900 x 900 mm";

  private static final String LARGEST_BOX = "1 x 1 x 1 m";

  /** An animal with its mass, as in {@code dyeing poison frog, 5 g}. */
  private static final Pattern WITH_MASS = Pattern.compile("(\\D*?[^\\s\\d,])[\\s,]+([0-9.].*)");

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "File to write; one that is there is not replaced. Default: ${DEFAULT-VALUE}.")
  private Path file = Path.of("my-scenario.yaml");

  private final @Nullable Reader answers;
  private final LocalDate today;

  private Animal animal = Animals.LEOPARD_GECKO;
  private String mass = UsualMasses.of(animal);
  private boolean massIsGiven;
  private String cup = LARGEST_CUP;
  private String box = LARGEST_BOX;
  private String warmer = NONE;
  private String weather = "28 to 45 °F";
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
    return askAnimal(in)
        && askCup(in)
        && askBox(in)
        && question(
            in,
            "Which warmer?",
            USUAL_WARMER,
            warmers(),
            answer -> {
              warmer = answer;
              return fault();
            })
        && question(in, "Which lows and highs?", weather, weathers(), this::takeWeather)
        && question(
            in,
            "Sealed when?",
            isRecorded() ? "2014-01-15 15:00" : day,
            List.of("day and hour at the origin, such as 2026-03-12 15:00"),
            answer -> {
              day = answer;
              return fault();
            });
  }

  private boolean askAnimal(BufferedReader in) throws IOException {
    List<String> animals = Animals.all().stream().map(Animal::name).toList();
    return question(in, "Which animal?", animal.name(), animals, this::takeAnimal)
        && (massIsGiven
            || question(
                in,
                "How heavy is it?",
                UsualMasses.of(animal),
                List.of("a mass with its unit, such as 12 g or 1.5 oz; of two animals 2 x 12 g"),
                this::takeMass));
  }

  private boolean askCup(BufferedReader in) throws IOException {
    String usual = smallestCup();
    out()
        .println(
            "  A container in which it has room to turn (assumed: ten times its body) is "
                + usual
                + ". Type yours if it is another.");
    List<String> help = new ArrayList<>();
    help.add("inner size such as 110 x 80 x 60 mm, or diameter and height such as 100 x 60 mm;");
    help.add("by name:");
    VesselSizes.all().stream().map(NewScenario::called).forEach(help::add);
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

  private boolean askBox(BufferedReader in) throws IOException {
    String usual = smallestBox();
    List<String> help = new ArrayList<>();
    help.add("inner size of a carton such as 9 x 9 x 8 in carton, or outer size such as");
    help.add("200 x 170 x 150 mm; by name:");
    BoxSizes.all().stream().map(BoxSize::name).forEach(help::add);
    return question(
        in,
        "Which box?",
        usual,
        help,
        answer -> {
          box = answer;
          return fault().map(fault -> fault + ". A " + usual + " has room");
        });
  }

  private static List<String> warmers() {
    List<String> warmers = new ArrayList<>(List.of(NONE));
    Warmers.all().stream()
        .map(WarmerClass::name)
        .map(name -> name + " on lid")
        .forEach(warmers::add);
    return warmers;
  }

  private static List<String> weathers() {
    return List.of(
        "overnight low and daily high at both ends, such as -2 to 7 °C",
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
    try {
      animal = Animals.named(massIsGiven ? both.group(1) : answer);
    } catch (InvalidInputException unknown) {
      return Optional.of(unknown.problem());
    }
    return massIsGiven ? takeMass(both.group(2)) : Optional.empty();
  }

  private Optional<String> takeMass(String answer) {
    mass = answer;
    return fault();
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
    for (VesselSize each : VesselSizes.all()) {
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
    names.addAll(LARGE_CUPS);
    return firstThatFits(names, each -> cup = each);
  }

  /** Volume of the bodies of all animals in the container [m3]. */
  private double bodies() {
    return ScenarioReader.read("answers", scenario()).packings().get(0).occupied().stream()
        .mapToDouble(each -> each.occupant().orElseThrow().volume())
        .sum();
  }

  /** The usual box, or a larger one if container and usual warmer do not fit in it. */
  private String smallestBox() {
    List<String> names = new ArrayList<>(List.of(USUAL_BOX));
    BoxSizes.all().stream()
        .sorted(Comparator.comparingDouble(size -> size.inside().volume()))
        .forEach(size -> names.add(size.name()));
    names.addAll(LARGE_BOXES);
    warmer = USUAL_WARMER;
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

  private Optional<String> takeWeather(String answer) {
    weather = answer;
    day = isRecorded() ? "2014-01-15 15:00" : today.plusDays(1) + " 15:00";
    return fault();
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
    String units = (mass + box + weather).matches(".*(°F| in\\b| oz\\b).*") ? "us" : "metric";
    String[] ends = weather.split(" to ", 2);
    String journey =
        isRecorded() && ends.length == 2
            ? "  from: " + quoted(ends[0]) + "\n  to: " + quoted(ends[1])
            : "  lows/highs: " + quoted(weather) + "  # outdoors, at both ends";
    return """
        format: 1
        title: %s
        units: %s  # of the results: metric or us
        animal: %s
        cup: %s  # one by name, or a size; with a lid its bedding is a damp towel
        journey:
          template: overnight by air  # or legs of your own
          sealed: %s
        %s
        # each packing is a block of its own; compare some
        packings:
          - name: first packing
            box: %s
            foam: EPS 20 3/4 in  # kind and thickness
            fill: shredded paper
            warmer: %s
        """
        .formatted(
            quoted(animal.name() + ", " + day),
            units,
            quoted(animal.name() + ", " + mass),
            quoted(cup),
            quoted(day),
            journey,
            quoted(box),
            quoted(warmer));
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "''") + "'";
  }
}
