package stenotherm.scenario;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.animal.Animal;
import stenotherm.animal.AnimalBody;
import stenotherm.animal.Animals;
import stenotherm.animal.Proportions;
import stenotherm.animal.TemperatureBand;
import stenotherm.animal.Tolerance;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.material.Materials;
import stenotherm.parcel.Occupant;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads who is in a container: an animal of the catalogue, or one that the file describes. */
final class OccupantReader {
  /** No animal of a parcel has a limit outside these [K]. */
  static final Range TEMPERATURES =
      new Range(Temperatures.fromCelsius(-5), Temperatures.fromCelsius(50));

  private static final Source GIVEN = Source.assumed("given by the user");

  private static final Pattern COUNTED =
      Pattern.compile("([0-9]{1,6})\\s*[x×X]\\s*(\\S.*)", Pattern.DOTALL);

  /** Two animals in one text, each with its mass. */
  private static final Pattern SEVERAL_KINDS =
      Pattern.compile(
          "(?is)(\\D+\\d[\\d.]*\\s*(?:g|oz)\\w*)\\s*(?:,|;|&|\\+|\\band\\b)\\s*\\p{L}{3}.*\\d.*");

  /** How many there are, before their name. */
  private static final Pattern NUMBER_FIRST =
      Pattern.compile(
          "(?is)(?:[0-9]{1,3}\\s*[x×]?|two|three|four|a\\s+pair\\s+of)\\s+"
              + "(?!(?:g|gm|kg|oz|lb|gram|kilo|kilogram|ounce|pound)s?\\b)\\p{L}{3}.*");

  private static final int LONGEST_SHOWN = 40;

  /** Messages have room for some 300 characters. */
  private static final int LONGEST_LISTING = 150;

  private OccupantReader() {}

  static Occupant read(Node node, Assumptions assumptions) {
    return node instanceof ScalarNode scalar
        ? named(scalar)
        : described(KeyedSection.of(node, Vocabulary.OWN_ANIMAL, assumptions));
  }

  private static Occupant named(ScalarNode node) {
    Matcher several = SEVERAL_KINDS.matcher(node.text());
    if (several.matches()) {
      throw node.fail(
          "names more than one animal; each kind has a container of its own: in place of animal and"
              + " cup write containers: [{name: left, size: 16 oz cup, animal: '"
              + MessageText.of(several.group(1), LONGEST_SHOWN)
              + "'}, {name: right, ...}]");
    }
    Matcher many = NUMBER_FIRST.matcher(node.text());
    if (many.matches()) {
      throw node.fail(
          "begins with a number; how many there are stands before the mass of each, write for"
              + " example \"leopard gecko, 2 x 20 g\"");
    }
    NamedQuantity animal =
        NamedQuantity.of(node, "an animal and its mass", "\"leopard gecko, 40 g\"");
    Animal kind = node.locate(() -> known(animal.name().text()));
    return of(kind, animal.quantity(), node);
  }

  private static Animal known(String name) {
    try {
      return Animals.named(name);
    } catch (InvalidInputException unknown) {
      if (unknown.problem().contains("Did you mean")) {
        throw unknown;
      }
      throw new InvalidInputException(
          unknown.field(),
          few(unknown.problem())
              + " All stand in reference.md under Animals; or describe your own, see own animal"
              + " there");
    }
  }

  /** As many of the names as leave room for what to do. */
  private static String few(String problem) {
    return problem.length() <= LONGEST_LISTING
        ? problem
        : problem.substring(0, problem.lastIndexOf(", ", LONGEST_LISTING)) + " and others.";
  }

  /** Animals with a mass such as {@code 40 g} or {@code 2 x 4 g}. */
  private static Occupant of(Animal kind, ScalarNode mass, Node place) {
    Matcher counted = COUNTED.matcher(mass.text());
    int count = counted.matches() ? Integer.parseInt(counted.group(1)) : 1;
    if (count < 1 || count > Occupant.MOST) {
      throw mass.fail("must be 1 to " + Occupant.MOST + " animals, not " + count);
    }
    double each = counted.matches() ? mass.piece(counted.group(2)).mass() : mass.mass();
    return place.locate(() -> new Occupant(kind, new AnimalBody(each, kind.restingShape()), count));
  }

  private static Occupant described(KeyedSection section) {
    ScalarNode name = section.require("name").asScalar();
    String called = name.text();
    if (!section.has("comfortable") && !section.has("alarm")) {
      refuseKnown(section, called);
    }
    TemperatureBand comfortable = band(section.require("comfortable"));
    Node alarmNode = section.require("alarm");
    TemperatureBand alarm = band(alarmNode);
    requireHolds(alarmNode, alarm, "the comfortable band", comfortable);
    Node criticalNode = section.optional("critical").orElse(null);
    Tolerance tolerance;
    if (criticalNode == null) {
      section.tell("critical", "the alarm band, at each moment", "assumed");
      tolerance = new Tolerance(comfortable, alarm);
    } else {
      TemperatureBand critical = band(criticalNode);
      requireHolds(criticalNode, critical, "the alarm band", alarm);
      tolerance = new Tolerance(comfortable, alarm, critical);
    }
    Proportions shape = shape(section.value("shape").asScalar());
    Animal animal =
        name.locate(
            () ->
                new Animal(
                    called,
                    "species not given",
                    tolerance,
                    Materials.ANIMAL_TISSUE,
                    shape,
                    List.of("Its temperatures are given by the user; nothing checks them.")));
    ScalarNode mass = section.require("mass").asScalar();
    return of(animal, mass, mass);
  }

  /** Refuses an animal of the catalogue that is written as one of a file's own. */
  private static void refuseKnown(KeyedSection section, String name) {
    if (Animals.all().stream().anyMatch(each -> each.name().equalsIgnoreCase(name))) {
      String mass = section.optional("mass").map(node -> node.asScalar().text()).orElse("40 g");
      throw section
          .node()
          .fail(
              "has no temperatures of its own, write animal: "
                  + name
                  + ", "
                  + MessageText.of(mass, LONGEST_SHOWN)
                  + " for those of the catalogue");
    }
  }

  private static TemperatureBand band(Node node) {
    Range range = node.temperatureRange();
    if (!TEMPERATURES.contains(range.low()) || !TEMPERATURES.contains(range.high())) {
      throw node.fail("must lie between -5 °C and 50 °C (23 °F and 122 °F)");
    }
    return new TemperatureBand(range, GIVEN);
  }

  private static void requireHolds(
      Node node, TemperatureBand wide, String inner, TemperatureBand narrow) {
    if (wide.range().low() > narrow.range().low() || wide.range().high() < narrow.range().high()) {
      throw node.fail("must hold all of " + inner + ", " + Assumptions.band(narrow));
    }
  }

  /** Three numbers of which only the ratios count. */
  private static Proportions shape(ScalarNode node) {
    String[] parts = node.text().split("\\s*[x×X]\\s*", -1);
    if (parts.length != 3) {
      throw node.fail("must be length x width x height as ratios, write for example 4 x 2 x 1");
    }
    double length = node.piece(parts[0]).number();
    double width = node.piece(parts[1]).number();
    double height = node.piece(parts[2]).number();
    return node.locate(() -> new Proportions(length, width, height));
  }
}
