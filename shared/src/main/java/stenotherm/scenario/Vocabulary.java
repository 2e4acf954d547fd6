package stenotherm.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.text.Quantity;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;
import stenotherm.weather.RecordedWeather;

/**
 * Every key of a scenario file: how its value is written, what it means and what holds if it is
 * left out. The reader's rules, the reference page and the schema for editors come from here.
 */
final class Vocabulary {
  private static final String ASSUMED = "assumed";

  private static final Form LENGTH = Form.of(Quantity.LENGTH, "10 mm");
  private static final Form DURATION = Form.of(Quantity.DURATION, "8 h");
  private static final Form TEMPERATURE = Form.of(Quantity.TEMPERATURE, "21 °C");

  private static final Form LAYER =
      Form.named(
          "material and thickness, such as `EPS 20, 19 mm` (the number after EPS is its density in"
              + " kg/m3)",
          Quantity.LENGTH,
          List.of("EPS 20, 19 mm", "XPS 25 mm", "PIR 25 mm", "corrugated board 4 mm"));

  private static final Form LAYER_OR_NONE = Form.either(LAYER, Form.oneOf(List.of("none")));

  private static final Form SIZE =
      Form.matching(
          "length x width x height", sizePattern(), List.of("300 x 200 x 150 mm", "8 x 8 x 7 in"));

  private static final Form DATE_TIME =
      Form.matching(
          "date and time on the 24-hour clock, such as `2014-01-15 18:00`",
          "\\d{4}-\\d\\d-\\d\\d(?:T|\\s+)\\d\\d:\\d\\d(?::\\d\\d)?",
          List.of("2014-01-15 18:00"));

  private static final Form PLACE =
      Form.matching(
          "place and its offset from UTC, such as `New York, UTC-5`",
          "[\\s\\S]+,\\s*(?:UTC|Z|UTC\\s*[+\\-−]\\d{1,2}(?::?\\d\\d)?|[+\\-−]\\d\\d:\\d\\d)",
          List.of("New York, UTC-5"));

  private static final Form ANIMAL =
      Form.named("animal of the catalogue and its mass", Quantity.MASS, animals());

  static final List<String> FACES =
      List.of(
          "lid", "floor", "left", "right", "front", "back", "xMin", "xMax", "yMin", "yMax", "zMin",
          "zMax");

  static final Part CUP =
      new Part(
          "cup",
          "A lidded cup with a damp towel on its floor and the animal on the towel.",
          List.of(
              Key.required("size", SIZE, "inner length, width and height"),
              Key.preset("wall", LAYER, "wall and lid", "polypropylene 0.5 mm", ASSUMED),
              Key.preset("towel", LENGTH, "thickness of the damp towel", "4 mm", ASSUMED),
              Key.optional(
                  "position",
                  new Form.Items(LENGTH, 2, 3),
                  "distance of its middle from the middle of the room inside, along length and"
                      + " width, and if wanted its height above the floor",
                  "in the middle, on the floor")),
          Map.of());

  static final Part LEG =
      new Part(
          "leg",
          "A part of the journey under one kind of surroundings.",
          List.of(
              Key.required("name", Form.text("any text", "night on the dock"), "what happens"),
              Key.required(
                  "at",
                  Form.oneOf(List.of("origin", "destination")),
                  "whose clock and weather apply"),
              Key.required("for", DURATION, "how long, 1 min to 30 d"),
              Key.required(
                  "ambient",
                  Form.either(
                      Form.oneOf(List.of("outdoors")),
                      TEMPERATURE,
                      Form.matching(
                          "daily low and high, such as `28 to 46 °F`",
                          rangePattern(),
                          List.of("28 to 46 °F"))),
                  "temperature of air and surroundings"),
              Key.optional(
                  "spread",
                  Form.of(Quantity.TEMPERATURE_DIFFERENCE, "3 K"),
                  "how far the ambient may lie off to either side",
                  "2 K for an outdoor temperature, 3 K for another (assumed)"),
              Key.optional(
                  "wind",
                  Form.of(Quantity.SPEED, "1 m/s"),
                  "speed of the air next to the parcel, 0 to 10 m/s",
                  "still air (rule of ISO 6946, assumed to hold)")),
          refusedInLegs());

  static final Part JOURNEY =
      new Part(
          "journey",
          "Where the parcel goes, from sealing to opening.",
          List.of(
              Key.required(
                  "sealed", DATE_TIME, "when the parcel is sealed, on the clock of the origin"),
              Key.required("start", TEMPERATURE, "temperature of everything in it at sealing"),
              Key.required("from", PLACE, "the origin"),
              Key.required("to", PLACE, "the destination"),
              Key.required("legs", Form.listOf(Form.table(LEG)), "the legs in their order")),
          Map.of("template", "write the legs of the journey out"));

  static final Part PACKING =
      new Part(
          "packing",
          "A way to pack the animal; all packings are compared.",
          List.of(
              Key.required("name", Form.text("any text", "thin foam"), "its name in the results"),
              Key.required("box", SIZE, "outer length, width and height"),
              Key.preset(
                  "board",
                  LAYER_OR_NONE,
                  "outer layer of all walls",
                  "corrugated board 4 mm",
                  ASSUMED),
              Key.required("foam", LAYER_OR_NONE, "inner layer of all walls"),
              Key.optional("lid", LAYER_OR_NONE, "inner layer of the lid", "as `foam`"),
              Key.optional("floor", LAYER_OR_NONE, "inner layer of the floor", "as `foam`"),
              Key.required(
                  "fill",
                  Form.text("material of the catalogue", "shredded paper"),
                  "what fills the room between walls, cup and warmer"),
              Key.optional(
                  "cup",
                  Form.either(SIZE, Form.table(CUP)),
                  "the cup of this packing",
                  "the `cup` of the scenario"),
              Key.optional(
                  "warmer",
                  Form.either(
                      Form.matching(
                          "warmer and face, such as `40 hour warmer on lid`",
                          "[\\s\\S]+\\s+on\\s+\\S+",
                          warmersOnLid()),
                      Form.oneOf(List.of("none"))),
                  "the warmer and the face that it is on",
                  "no warmer"),
              Key.optional(
                  "stand-off",
                  LENGTH,
                  "gap between wall and warmer, filled with fill",
                  "none, the warmer touches the wall"),
              Key.preset(
                  "contact",
                  Form.of(Quantity.THERMAL_RESISTANCE, "0.02 m2 K/W"),
                  "resistance between the wall and a warmer that touches it",
                  "0.02 m2 K/W",
                  "taped flat, assumed"),
              Key.preset(
                  "opened",
                  Form.either(
                      Form.matching(
                          "time before sealing, such as `30 min before sealing`",
                          Quantity.DURATION.pattern() + "\\s*before\\s+sealing",
                          List.of("30 min before sealing")),
                      Form.oneOf(List.of("at sealing"))),
                  "when the warmer was opened",
                  "30 min before sealing",
                  ASSUMED)),
          refusedInPackings());

  static final Part SCENARIO =
      new Part(
          "scenario",
          "The whole file.",
          List.of(
              Key.required(
                  "format",
                  new Form.Text("`1`", Map.of("enum", List.of(1, "1")), List.of("1")),
                  "version of the format; the first key"),
              Key.required(
                  "title", Form.text("any text", "A gecko goes west"), "title of the report"),
              Key.required("animal", ANIMAL, "the animal"),
              Key.optional(
                  "cup",
                  Form.either(SIZE, Form.table(CUP)),
                  "the cup of every packing that has none of its own",
                  "each packing needs its own"),
              Key.preset(
                  "hold",
                  DURATION,
                  "how long a delay after the planned opening is followed, up to 29 d",
                  "24 h",
                  ASSUMED),
              Key.required("journey", Form.table(JOURNEY), "where the parcel goes"),
              Key.required(
                  "packings", Form.listOf(Form.table(PACKING)), "the packings to compare")),
          Map.of("units", "results come in °C and mm"));

  private Vocabulary() {}

  /** All parts, the whole file first, each after one that mentions it. */
  static List<Part> parts() {
    Set<Part> all = new LinkedHashSet<>();
    List<Part> open = new ArrayList<>(List.of(SCENARIO));
    while (!open.isEmpty()) {
      Part part = open.remove(0);
      if (all.add(part)) {
        part.keys().forEach(key -> open.addAll(key.form().parts()));
      }
    }
    return List.copyOf(all);
  }

  /**
   * Returns a value that a file could have at a key path.
   *
   * @param path the path, for example {@code journey.legs[2].for}
   * @return the value, empty if there is no such key
   */
  static String exampleAt(String path) {
    List<Part> open = List.of(SCENARIO);
    String example = "";
    for (String name : path.replaceAll("\\[\\d+]", "").split("\\.", -1)) {
      List<Key> keys =
          open.stream()
              .flatMap(part -> part.keys().stream())
              .filter(key -> key.name().equals(name))
              .toList();
      if (keys.isEmpty()) {
        return "";
      }
      open = keys.stream().flatMap(key -> key.form().parts().stream()).toList();
      example = keys.get(0).form().example();
    }
    return path.endsWith("]") ? "" : example;
  }

  private static Map<String, String> refusedInLegs() {
    Map<String, String> refused = new LinkedHashMap<>();
    refused.put("sun", "sunshine on a parcel is not computed");
    refused.put("altitude", "air is taken at the pressure of sea level");
    refused.put("orientation", "parcels stand upright");
    return refused;
  }

  private static Map<String, String> refusedInPackings() {
    Map<String, String> refused = new LinkedHashMap<>();
    refused.put("vent", "air that passes through holes is not computed");
    refused.put("coldPack", "cold packs are not computed");
    refused.put("orientation", "parcels stand upright");
    return refused;
  }

  private static List<String> animals() {
    return Animals.all().stream().map(Animal::name).map(name -> name + ", 40 g").toList();
  }

  private static List<String> warmersOnLid() {
    return Warmers.all().stream().map(WarmerClass::name).map(name -> name + " on lid").toList();
  }

  /** The names that values may use, by heading. */
  static Map<String, List<String>> catalogues() {
    Map<String, List<String>> names = new LinkedHashMap<>();
    names.put(
        "Animals",
        Animals.all().stream().map(each -> each.name() + " (" + each.species() + ")").toList());
    names.put("Materials and fills", Materials.all().stream().map(Material::name).toList());
    names.put("Warmers", Warmers.all().stream().map(WarmerClass::name).toList());
    names.put("Places with recorded weather", RecordedWeather.bundled().places());
    return names;
  }

  private static String sizePattern() {
    String length = Quantity.LENGTH.pattern();
    String number = "[+\\-−]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?\\s*";
    String any = "(?:" + length + "|" + number + ")";
    return any + "\\s*[x×X]\\s*" + any + "\\s*[x×X]\\s*" + length;
  }

  private static String rangePattern() {
    String temperature = Quantity.TEMPERATURE.pattern();
    return "(?:" + temperature + "|[+\\-−]?[0-9.]+(?:[eE][+-]?[0-9]+)?)\\s*to\\s+" + temperature;
  }
}
