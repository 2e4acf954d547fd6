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
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.scenario.ScenarioReader;
import stenotherm.text.TextFormatException;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** Asks six questions, and writes a scenario file from the answers. */
@Command(
    name = "new",
    description =
        "Asks six questions and writes a scenario file: animal, mass, box, warmer, weather, day."
            + " An empty answer takes what stands in brackets, ? tells what may be answered.",
    footer = ConsoleCommand.PROGRAM + "new my-scenario.yaml")
final class NewScenario extends ConsoleCommand implements Callable<Integer> {
  /** Containers from small to large; the first that an animal fits in is taken. */
  private static final List<String> CUPS =
      List.of(
          "8 fl oz cup",
          "16 fl oz cup",
          "32 fl oz cup",
          "250 x 200 x 120 mm",
          "400 x 300 x 200 mm",
          "700 x 500 x 300 mm");

  /** A box in which every container fits. */
  private static final String LARGEST_BOX = "1 x 1 x 1 m";

  private static final String USUAL_MASS = "40 g";

  @Parameters(
      arity = "0..1",
      paramLabel = "FILE",
      description = "File to write; one that is there is not replaced. Default: ${DEFAULT-VALUE}.")
  private Path file = Path.of("my-scenario.yaml");

  private final @Nullable Reader answers;
  private final LocalDate today;

  private String animal = "leopard gecko";
  private String mass = USUAL_MASS;
  private String cup = CUPS.get(0);
  private String box = LARGEST_BOX;
  private String warmer = "none";
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

  /** An answer that the scenario reader is asked about. */
  private interface Try {
    void take(String answer);
  }

  /** Asks all questions; false if the answers end before. */
  private boolean ask(BufferedReader in) throws IOException {
    day = today.plusDays(1) + " 15:00";
    List<String> animals = Animals.all().stream().map(Animal::name).toList();
    List<String> boxes = new ArrayList<>();
    boxes.add("inner size of a carton such as 9 x 9 x 8 in carton, or outer size such as");
    boxes.add("200 x 170 x 150 mm; by name:");
    BoxSizes.all().stream().map(BoxSize::name).forEach(boxes::add);
    List<String> warmers = new ArrayList<>(List.of("none"));
    Warmers.all().stream()
        .map(WarmerClass::name)
        .map(name -> name + " on lid")
        .forEach(warmers::add);
    List<String> weathers =
        List.of(
            "overnight low and daily high at both ends, such as -2 to 7 °C",
            "two recorded places, such as New York, UTC-5 to Seattle, UTC-8 (days of 2012 to 2015)");
    return question(in, "Which animal?", animal, animals, answer -> animal = answer)
        && question(
            in,
            "How heavy is it?",
            USUAL_MASS,
            List.of("a mass with its unit, such as 12 g or 1.5 oz"),
            this::takeMass)
        && question(in, "Which box?", "8 x 8 x 7 in carton", boxes, answer -> box = answer)
        && question(
            in, "Which warmer?", "40 hour warmer on lid", warmers, answer -> warmer = answer)
        && question(in, "Which lows and highs?", weather, weathers, this::takeWeather)
        && question(
            in,
            "Sealed when?",
            isRecorded() ? "2014-01-15 15:00" : day,
            List.of("day and hour at the origin, such as 2026-03-12 15:00"),
            answer -> day = answer);
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
      answer.take(given.isEmpty() ? usual : given);
      Optional<String> fault = fault();
      if (fault.isEmpty()) {
        return true;
      }
      out().println("  " + MessageText.of(fault.get()));
    }
  }

  /** Takes the first container in which the animal fits. */
  private void takeMass(String answer) {
    mass = answer;
    for (String each : CUPS) {
      cup = each;
      if (fault().isEmpty()) {
        return;
      }
    }
  }

  private boolean isRecorded() {
    return weather.contains("UTC");
  }

  private void takeWeather(String answer) {
    weather = answer;
    day = isRecorded() ? "2014-01-15 15:00" : today.plusDays(1) + " 15:00";
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
        cup: %s  # one by name, or a size; its bedding is a damp towel
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
            quoted(animal + ", " + day),
            units,
            quoted(animal + ", " + mass),
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
