package stenotherm.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import stenotherm.animal.Animal;
import stenotherm.animal.Animals;
import stenotherm.journey.JourneyTemplate;
import stenotherm.journey.JourneyTemplates;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.BoxSize;
import stenotherm.parcel.BoxSizes;
import stenotherm.parcel.VacuumPanel;
import stenotherm.parcel.VesselSize;
import stenotherm.parcel.VesselSizes;
import stenotherm.text.Quantity;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;
import stenotherm.weather.RecordedWeather;

/**
 * Every key of a scenario file: what it means, what its value says and what holds if it is left
 * out. The reader's rules for keys, the reference page and the schema for editors come from here;
 * only its reader knows how a value is written.
 */
final class Vocabulary {
  private static final String ASSUMED = "assumed";

  /** What people write where there is no warmer, no pack, no hole. */
  static final List<String> NOTHING =
      List.of(Layers.NONE, "no", "false", "without", "no heat", "no heat pack", "no warmer");

  private static final Form NONE_OR_NO =
      new Form.Single(
          "`none` or `no`",
          Map.of("enum", List.of(Layers.NONE, "no", false)),
          List.of(Layers.NONE, "no"));

  private static final Form LENGTH = Form.called("length", Form.of(Quantity.LENGTH, "10 mm"));
  private static final Form DURATION = Form.called("duration", Form.of(Quantity.DURATION, "8 h"));
  private static final Form TEMPERATURE =
      Form.called("temperature", Form.of(Quantity.TEMPERATURE, "21 °C"));

  private static final Form YES_NO =
      new Form.Single(
          "`yes` or `no`", Map.of("enum", List.of("yes", "no", true, false)), List.of("yes", "no"));

  private static final Form LAYER =
      Form.called(
          "layer",
          Form.written(
              "material and thickness, such as `EPS 20, 19 mm` or `3/4 in EPS 20` (the number after"
                  + " EPS is its density in kg/m3; without it, `EPS 19 mm` or `foam 3/4 in`, the"
                  + " density is unknown)",
              List.of(
                  "EPS 20, 19 mm",
                  "3/4 in EPS 20",
                  "EPS 19 mm",
                  "foam 3/4 in",
                  "XPS 25 mm",
                  "PIR 25 mm",
                  "corrugated board 4 mm")));

  private static final Form LAYERS_OR_NONE =
      Form.called("layers", Form.either(LAYER, Form.oneOf(List.of("none")), Form.listOf(LAYER)));

  private static final Form SIZE =
      Form.called(
          "size",
          Form.written("length x width x height", List.of("300 x 200 x 150 mm", "8 x 8 x 7 in")));

  private static final Form POUCH_SIZE =
      Form.written("length x width x thickness", List.of("120 x 80 x 20 mm", "6 x 4 x 3/4 in"));

  private static final Form DATE_TIME =
      Form.called(
          "date and time",
          Form.written(
              "date and time, such as `2014-01-15 18:00`, `15 January 2014 6 pm`, `1/15/2014 6 pm`"
                  + " or `January 15, 2014, 6:30 pm` (within braces in quotes); day and month in"
                  + " numbers only with the year first or a day above 12",
              List.of("2014-01-15 18:00", "15 January 2014 6 pm")));

  private static final Form PLACE_SHORT =
      Form.called(
          "place and offset",
          Form.written(
              "name and offset from UTC, such as `New York, UTC-5`", List.of("New York, UTC-5")));

  private static final Form DELAY_IN =
      Form.called(
          "delay and leg",
          Form.written(
              "duration and leg, such as `12 h in sorting hub`", List.of("12 h in sorting hub")));

  private static final Form ANIMAL =
      Form.called(
          "animal and mass",
          Form.written(
              "[animal](#animals), by its common or its scientific name, and its mass, such as"
                  + " `leopard gecko, 40 g`; several in one container as in `house gecko, 2 x 4 g`",
              animals()));

  private static final Form RANGE =
      Form.called(
          "low and high",
          Form.written(
              "low and high, such as `28 to 46 °F` or `28-46 °F`", List.of("28 to 46 °F")));

  static final FilePart OWN_ANIMAL =
      new FilePart(
          "own animal",
          "An animal that the catalogue lacks, with temperatures that you answer for: nothing checks"
              + " them.",
          List.of(
              Key.required("name", Form.text("any text", "my gecko"), "its name in the results"),
              Key.required(
                  "mass",
                  Form.written(
                      "a mass, such as `40 g`; several in one container as in `2 x 4 g`",
                      List.of("40 g", "2 x 4 g")),
                  "mass of each"),
              Key.required("comfortable", RANGE, "the temperatures to plan for"),
              Key.required(
                  "alarm",
                  RANGE,
                  "the temperatures outside which it should not be, by the mean of an hour"),
              Key.optional(
                  "critical",
                  RANGE,
                  "the temperatures that it does not bear for minutes",
                  "the alarm band, at each moment (assumed)"),
              Key.preset(
                  "shape",
                  Form.written(
                      "length x width x height as ratios, such as `4 x 2 x 1`",
                      List.of("4 x 2 x 1")),
                  "its shape at rest",
                  "3 x 2 x 1",
                  ASSUMED)),
          Map.of());

  private static final Form OCCUPANT = Form.either(ANIMAL, Form.table(OWN_ANIMAL));

  /** Dry pads that take up a stated mass of water. */
  static final List<Material> PADS =
      List.of(Materials.DRY_PAPER_TOWEL, Materials.SPHAGNUM_DRY, Materials.COIR);

  static final FilePart BEDDING =
      new FilePart(
          "bedding",
          "A layer on the floor of a container, with its water.",
          List.of(
              Key.required(
                  "material",
                  Form.text("[material](#materials-and-fills) by name", "dry coir"),
                  "what lies there"),
              Key.required("thickness", LENGTH, "how thick it is"),
              Key.optional(
                  "water",
                  Form.of(Quantity.PERCENTAGE, "300 %"),
                  "mass of water in percent of the dry mass; for "
                      + String.join(", ", PADS.stream().map(Material::name).toList()),
                  "the water that the catalogue states")),
          Map.of());

  private static final Form BEDDING_FORM =
      Form.called("bedding layer", Form.either(LAYER, Form.table(BEDDING)));

  private static final Form VESSEL_SIZE =
      Form.called(
          "container size",
          Form.either(
              Form.written(
                  "round cup by its volume, such as `16 fl oz`, `5.5 oz`, `500 ml` or `0.5 l`",
                  List.of("16 fl oz", "500 ml", "0.5 l")),
              SIZE,
              Form.written("diameter x height, such as `100 x 60 mm`", List.of("100 x 60 mm")),
              Form.written(
                  "[container](#containers) by name, such as `8 fl oz` or `8 oz deli cup`",
                  vesselSizes())));

  private static final Form POSITION = Form.called("position", new Form.Items(LENGTH, 2, 3));

  static final FilePart CONTAINER =
      new FilePart(
          "container",
          "A cup, bag or vial with bedding on its floor and an animal on the bedding. A size alone"
              + " stands for a container with everything else left out.",
          List.of(
              Key.optional(
                  "name",
                  Form.text("any text", "left cup"),
                  "its name in the results",
                  "`cup`, `bag` or `vial` if it is the only one, else `container 1`, `container 2`,"
                      + " ..."),
              Key.required("size", VESSEL_SIZE, "its inner size"),
              Key.optional(
                  "count",
                  Form.text("whole number from 1 to 50", "12"),
                  "how many of it, each with such an animal; not in `cup`",
                  "1"),
              Key.optional(
                  "kind",
                  Form.oneOf(ContainerReader.kinds()),
                  "what it is",
                  "box cup for three lengths, round cup for two"),
              Key.optional(
                  "along",
                  Form.oneOf(ContainerReader.axisNames()),
                  "the direction of the box in which a vial lies",
                  "height: the vial stands (assumed)"),
              Key.optional(
                  "wall",
                  LAYER,
                  "wall and lid",
                  "polypropylene 0.5 mm for cups, cotton cloth 0.5 mm for bags, polystyrene 1.2 mm"
                      + " for vials (assumed)"),
              Key.preset(
                      "holes",
                      Form.either(
                          Form.written(
                              "how many and how wide, such as `8 x 2 mm`", List.of("8 x 2 mm")),
                          Form.oneOf(List.of("none"))),
                      "holes in the lid of a cup or the cap of a vial; without any it counts as tight",
                      "8 x 2 mm",
                      "common practice, no source")
                  .where("in cups and vials"),
              Key.optional(
                  "bedding",
                  Form.either(BEDDING_FORM, Form.oneOf(List.of("none")), Form.listOf(BEDDING_FORM)),
                  "what lies on its floor, the lowest first",
                  "damp paper towel 4 mm under an animal in a cup or vial, else none (assumed)"),
              Key.optional(
                  "towel",
                  LENGTH,
                  "thickness of a damp paper towel, instead of `bedding`",
                  "as `bedding`"),
              Key.optional(
                  "position",
                  POSITION,
                  "distance of its middle from the middle of the room inside, along length and"
                      + " width, and, if wanted, its height above the floor",
                  "in the middle, on the floor; several stand side by side, in rows and layers (assumed)"),
              Key.optional(
                  "on-top-of",
                  Form.text("name of a container above it in the list", "container 1"),
                  "what it stands on",
                  "the floor"),
              Key.optional(
                  "animal",
                  Form.either(ANIMAL, Form.oneOf(List.of("none")), Form.table(OWN_ANIMAL)),
                  "who is in it",
                  "the `animal` of the scenario")),
          Map.of());

  private static final Form CUP =
      Form.called("container or its size", Form.either(VESSEL_SIZE, Form.table(CONTAINER)));

  private static final Form CONTAINERS =
      Form.either(
          Form.listOf(CUP),
          Form.written(
              "how many of a container known by name, such as `12 x 9 dram vial`",
              List.of("12 x 9 dram vial")),
          Form.table(CONTAINER));

  private static final Form DIFFERENCE =
      Form.called("temperature difference", Form.of(Quantity.TEMPERATURE_DIFFERENCE, "3 K"));
  private static final Form ANGLE = Form.called("angle", Form.of(Quantity.ANGLE, "40.7 °"));
  private static final Form RESISTANCE =
      Form.called("thermal resistance", Form.of(Quantity.THERMAL_RESISTANCE, "0.08 m2 K/W"));
  private static final Form FACE = Form.oneOf(Faces.all());
  private static final Form SHARE =
      Form.called(
          "part of a face",
          Form.written("part of the face, such as `0 % to 50 %`", List.of("0 % to 50 %")));

  static final FilePart CONTACT =
      new FilePart(
          "contact",
          "Something that touches a part of a face of the parcel during a leg.",
          List.of(
              Key.required("face", FACE, "the face that it touches, named as if the lid were up"),
              Key.required(
                  "neighbour",
                  Form.either(TEMPERATURE, Form.oneOf(List.of("packed alike", "as the air"))),
                  "its temperature; no heat passes to a neighbour that is packed alike"),
              Key.preset("along", SHARE, "part of the face's longer axis", "0 % to 100 %", ASSUMED),
              Key.preset("across", SHARE, "part of its other axis", "0 % to 100 %", ASSUMED),
              Key.preset(
                      "resistance",
                      RESISTANCE,
                      "resistance between the two",
                      "0.08 m2 K/W",
                      ASSUMED)
                  .where("for a neighbour with a temperature")),
          Map.of());

  static final FilePart LEG =
      new FilePart(
          "leg",
          "A part of the journey under one kind of surroundings.",
          List.of(
              Key.required("name", Form.text("any text", "night on the dock"), "what happens"),
              Key.required(
                  "at",
                  Form.text(
                      "`origin`, `destination` or the name of a place", "origin", "destination"),
                  "whose clock and weather apply"),
              Key.optional("for", DURATION, "how long, 1 min to 30 d", "`until` must be given"),
              Key.optional(
                  "until",
                  Form.either(
                      Form.written(
                          "time on the clock of the place, such as `06:30` or `6:30 am`",
                          List.of("06:30", "6:30 am")),
                      DATE_TIME),
                  "when it ends, instead of `for`",
                  "`for` must be given"),
              Key.optional("delay", DURATION, "how much longer it lasts, up to 30 d", "no delay"),
              Key.required(
                  "ambient",
                  Form.either(
                      Form.written(
                          "`outdoors`, also warmer and late as in `outdoors + 3 K, lag 2 h`",
                          List.of("outdoors", "outdoors + 3 K, lag 2 h")),
                      TEMPERATURE,
                      RANGE,
                      Form.written(
                          "[surroundings](#surroundings) by name", LegReader.situationNames()),
                      Form.listOf(
                          Form.written(
                              "reading such as `18:00 12 °C` or `6 pm 54 °F`",
                              List.of("18:00 12 °C", "6 pm 54 °F")))),
                  "temperature of air and surroundings"),
              Key.optional(
                  "spread",
                  DIFFERENCE,
                  "how far the true temperature may be above or below, the weather's part"
                      + " included",
                  "that of the surroundings and, where they follow the weather, of the place; 3 K"
                      + " for a constant temperature, 2 K for readings (assumed), that of lows and"
                      + " highs for those of a leg"),
              Key.optional(
                  "stowed",
                  Form.oneOf(LegReader.stowageNames()),
                  "whether other parcels lie around it; what they let through follows the air"
                      + " late",
                  "as in the surroundings, else alone (assumed)"),
              Key.optional(
                  "wind",
                  Form.of(Quantity.SPEED, "1 m/s"),
                  "speed of the air next to the parcel, 0 to 10 m/s",
                  "that of the surroundings, else still air (rule of ISO 6946, assumed to hold)"),
              Key.preset(
                  "resting",
                  Form.either(Form.oneOf(List.of("hard floor", "wire shelf")), RESISTANCE),
                  "what the parcel stands on; a wire shelf lets air reach it from below",
                  "hard floor",
                  ASSUMED),
              Key.preset(
                  "orientation",
                  Form.oneOf(LegReader.orientationNames()),
                  "which face is up",
                  "lid up",
                  ASSUMED),
              Key.optional(
                  "altitude",
                  Form.of(Quantity.LENGTH, "2400 m"),
                  "altitude that sets the air pressure",
                  "that of the surroundings, else 0 m (assumed)"),
              Key.optional(
                  "sun",
                  YES_NO,
                  "whether the sun reaches the parcel",
                  "as in the surroundings, else no (assumed)"),
              Key.optional(
                  "sky",
                  YES_NO,
                  "whether the lid looks up to the open sky, which cools it, most of all in a clear"
                      + " night; also without sun",
                  "as the sun"),
              Key.preset(
                      "heading",
                      ANGLE,
                      "compass direction that the right side (the end of the box's first length)"
                          + " faces: 0 °"
                          + " is north, 90 ° east; matters only in the sun",
                      "90 °",
                      ASSUMED)
                  .where("in the sun"),
              Key.optional(
                  "touches",
                  Form.listOf(Form.table(CONTACT)),
                  "what touches the parcel",
                  "nothing but what it rests on")),
          Map.of());

  private static final Form DAYS =
      Form.called("lows and highs", Form.either(RANGE, Form.listOf(RANGE)));

  static final FilePart PLACE =
      new FilePart(
          "place",
          "A place with its clock, its weather and its sun. `New York, UTC-5` alone gives name and"
              + " utc.",
          List.of(
              Key.required("name", Form.text("any text", "New York"), "its name"),
              Key.required(
                  "utc",
                  Form.written("offset from UTC, such as `UTC-5`", List.of("UTC-5")),
                  "how far its clock is ahead of UTC"),
              Key.optional(
                  "lows/highs",
                  DAYS,
                  "outdoor lows and highs there: one pair for all days, or a list from the day of"
                      + " sealing on",
                  "those of the journey, else recorded weather by its name"),
              Key.optional(
                  "spread",
                  DIFFERENCE,
                  "how far the true temperatures may be above or below; one error for all legs"
                      + " there",
                  Assumptions.number(Sites.GIVEN_DAYS_SPREAD)
                      + " K for lows and highs that the file gives (derived from errors of"
                      + " forecasts), "
                      + Assumptions.number(Sites.RECORDED_DAYS_SPREAD)
                      + " K for recorded weather (assumed)"),
              Key.optional("latitude", ANGLE, "north is positive", "no sun there"),
              Key.optional(
                  "longitude",
                  ANGLE,
                  "east is positive; tells how far the clock is from the sun",
                  "no sun there, lows and highs by the clock"),
              Key.preset(
                      "clouds",
                      Form.of(Quantity.PERCENTAGE, "30 %"),
                      "part of the sky that clouds cover",
                      "0 %",
                      "assumed, the most sun")
                  .where("with latitude and longitude"),
              Key.preset(
                      "sky",
                      Form.oneOf(Sites.skyNames()),
                      "how clear it is between the clouds",
                      "clear winter",
                      "assumed, the most sun")
                  .where("with latitude and longitude")),
          Map.of());

  private static final Form LEG_NAME = Form.text("name of a leg", "porch");

  static final FilePart JOURNEY =
      new FilePart(
          "journey",
          "Where the parcel goes, from sealing to opening. `overnight by air, 28 to 45 °F` stands"
              + " for template and lows/highs.",
          List.of(
              Key.optional(
                  "template",
                  Form.written("[journey](#journeys) by name", templates()),
                  "a common kind of journey instead of legs",
                  "`legs` must be given"),
              Key.preset(
                      "sealed",
                      DATE_TIME,
                      "when the parcel is sealed, on the clock of the origin; must be given with"
                          + " recorded weather and with sun",
                      "2026-01-15 15:00",
                      ASSUMED)
                  .where("without recorded weather and without sun"),
              Key.preset(
                  "start",
                  TEMPERATURE,
                  "temperature of everything in it at sealing",
                  "21 °C",
                  ASSUMED),
              Key.preset(
                  "from",
                  Form.either(PLACE_SHORT, Form.table(PLACE)),
                  "the origin",
                  "origin, UTC",
                  ASSUMED),
              Key.preset(
                  "to",
                  Form.either(PLACE_SHORT, Form.table(PLACE)),
                  "the destination",
                  "destination, UTC",
                  ASSUMED),
              Key.optional(
                  Sites.PLACES,
                  Form.listOf(Form.table(PLACE)),
                  "further places on the way",
                  "none"),
              Key.optional(
                  "lows/highs",
                  DAYS,
                  "outdoor lows and highs at every place that gives none of its own; not needed"
                      + " where all legs have temperatures of their own",
                  "recorded weather by the name of the place"),
              Key.optional(
                  "delay",
                  Form.either(DELAY_IN, Form.listOf(DELAY_IN)),
                  "how late the parcel is, and in which leg",
                  "no delay"),
              Key.optional(
                  "without",
                  Form.either(LEG_NAME, Form.listOf(LEG_NAME)),
                  "legs that are left out, such as `porch` where somebody takes the parcel in",
                  "none is left out"),
              Key.preset(
                      "surface",
                      Form.oneOf(JourneyReader.surfaceNames()),
                      "colour of the box, for the sun",
                      "brown board",
                      ASSUMED)
                  .where("in the sun"),
              Key.optional(
                  "legs",
                  Form.listOf(Form.table(LEG)),
                  "the legs in their order",
                  "`template` must be given")),
          Map.of());

  static final FilePart BOX =
      new FilePart(
          "box",
          "The box by its outer or by its inner dimensions.",
          List.of(
              Key.optional(
                  "outer", SIZE, "outer length, width and height", "`inner` must be given"),
              Key.optional(
                  "inner",
                  SIZE,
                  "length, width and height of the room inside all walls",
                  "`outer` must be given")),
          Map.of());

  static final FilePart JOINTS =
      new FilePart(
          "joints",
          "How the panels inside the board meet. A length alone is the gap.",
          List.of(
              Key.required("gap", LENGTH, "gap between panels, 0 to 10 mm"),
              Key.preset(
                  "overlap",
                  Form.oneOf(BoxReader.overlapNames()),
                  "which panels reach over which",
                  "lid and floor over the sides",
                  ASSUMED)),
          Map.of());

  private static final Form HOLE =
      Form.called(
          "holes",
          Form.written(
              "how many, how wide and where, such as `2 x 6 mm on lid`",
              List.of("2 x 6 mm on lid", "4 x 1/4 in on left")));

  private static final Key STAND_OFF =
      Key.optional(
          "stand-off",
          LENGTH,
          "gap to the wall, filled as the rest of the box",
          "none, it touches the wall");

  private static final Key CONTACT_RESISTANCE =
      Key.preset(
              "contact",
              RESISTANCE,
              "resistance between it and the wall that it touches",
              "0.02 m2 K/W",
              "taped flat, assumed")
          .where("on a face");

  private static final Key OPENED =
      Key.preset(
          "opened",
          Form.either(
              Form.written(
                  "time before sealing, such as `30 min before`",
                  List.of("30 min before", "30 min before sealing")),
              Form.oneOf(List.of("at sealing"))),
          "when the warmer was opened",
          "30 min before sealing",
          ASSUMED);

  private static final Key FILM =
      Key.preset(
              "film",
              Form.oneOf(PackingReader.filmNames()),
              "what covers the side through which the warmer takes its air: `free` if it faces the"
                  + " room inside, `edges taped`, `half taped over`, `against a wall` (or a cup),"
                  + " `taped over`",
              "free",
              ASSUMED)
          .where("without `watts`");

  static final FilePart RATING =
      new FilePart(
          "rating",
          "What is printed on a warmer: how warm it gets, and how long it has 40 °C or more, on a"
              + " bench in a warm room and not in a cold box.",
          List.of(
              Key.required("peak", Form.of(Quantity.TEMPERATURE, "55 °C"), "highest temperature"),
              Key.required("hours", Form.of(Quantity.DURATION, "40 h"), "time at or above 40 °C"),
              Key.optional(
                  "mean",
                  Form.of(Quantity.TEMPERATURE, "48 °C"),
                  "mean temperature meanwhile",
                  "it follows from the others"),
              Key.optional(
                  "rise",
                  Form.of(Quantity.DURATION, "30 min"),
                  "time until it has 40 °C",
                  "it follows from the others")),
          Map.of());

  static final FilePart OWN_WARMER =
      new FilePart(
          "own warmer",
          "A warmer that the catalogue lacks, by its rating, by a curve that you measured of one, or"
              + " by its watts. Iron and film are those that give the rating or the curve; watts are"
              + " given whatever the air.",
          List.of(
              Key.optional(
                  "on",
                  Form.text("face or container", "lid"),
                  "what it is on",
                  "`position` must be given"),
              Key.optional(
                  "rating",
                  Form.table(RATING),
                  "what is printed on it",
                  "`curve` or `watts` must be given"),
              Key.optional(
                  "curve",
                  Form.text("name of a table in the scenario's folder", "my-warmer.csv"),
                  "how warm it was while it lay by itself, from its opening until it was cold again: a"
                      + " table with commas; its columns are `hours`, `minutes` or `time`, and `pouch"
                      + " [°C]`, or `rise [K]` over the room",
                  "`rating` or `watts` must be given"),
              Key.optional(
                  "bench",
                  Form.oneOf(OwnWarmerReader.benchNames()),
                  "how it lay meanwhile: wrapped in a loose cloth that lets air through, bare on a"
                      + " table, or as for ratings on a support of 30 °C under a light cover",
                  "needed for a `curve`"),
              Key.optional(
                  "room",
                  TEMPERATURE,
                  "temperature of the room meanwhile",
                  "the first reading of the pouch; needed for a `rise`"),
              Key.optional(
                  "watts",
                  Form.of(Quantity.POWER, "2 W"),
                  "its power from opening on",
                  "`rating` or `curve` must be given"),
              Key.optional("lasting", DURATION, "how long it gives its watts", "for `watts` alone"),
              Key.required(
                  "contents", Form.of(Quantity.MASS, "100 g"), "mass of what is in the pouch"),
              Key.required("size", POUCH_SIZE, "its outer size")),
          Map.of());

  private static final Form WARMER_ON =
      Form.called(
          "warmer in its place",
          Form.written(
              "[warmer](#warmers) and face or container, such as `40 hour warmer on lid` or `40 h on"
                  + " cup`",
              warmersOnLid()));

  private static final List<Key> PLACE_KEYS =
      List.of(
          STAND_OFF,
          CONTACT_RESISTANCE,
          Key.optional(
              "offset",
              new Form.Items(LENGTH, 2, 2),
              "distance from the middle of the face along its two axes, the length (or, on left and"
                  + " right, the width) first",
              "in the middle of the face (assumed)"),
          Key.optional(
              "position",
              POSITION,
              "where it lies loose, instead of `on`: distance of its middle from the middle of the"
                  + " room inside, along length and width, and, if wanted, its height above the"
                  + " floor",
              "it is on a face or a container"),
          Key.preset(
                  "thin",
                  Form.oneOf(ContainerReader.axisNames()),
                  "the direction of the box in which its thickness lies",
                  "height",
                  "assumed, it lies flat")
              .where("loose or on a container"));

  static final FilePart WARMER =
      new FilePart(
          "warmer",
          "A warmer in its place. `40 hour warmer on lid` alone stands for one with everything"
              + " else left out.",
          with(
              PLACE_KEYS,
              Key.optional(
                  "name",
                  Form.text("any text", "upper warmer"),
                  "its name in the results",
                  "`warmer` if it is the only one, else `warmer 1`, `warmer 2`, ..."),
              Key.required(
                  "warmer",
                  Form.either(
                      WARMER_ON,
                      Form.text("[warmer](#warmers)", "40 hour warmer"),
                      Form.table(OWN_WARMER)),
                  "which warmer, and what it is on"),
              OPENED,
              FILM),
          Map.of());

  static final FilePart PACK =
      new FilePart(
          "pack",
          "A pack that stores cold or heat, in its place.",
          with(
              PLACE_KEYS,
              Key.optional(
                  "name",
                  Form.text("any text", "cold pack"),
                  "its name in the results",
                  "`pack 1`, `pack 2`, ..."),
              Key.required(
                  "pack",
                  Form.text(
                      "[contents](#contents-of-packs-that-melt), or a [material](#materials-and-fills), and"
                          + " face or container",
                      "gel pack on lid"),
                  "what is in it, and what it is on"),
              Key.required("size", POUCH_SIZE, "its outer size"),
              Key.optional(
                  "mass",
                  Form.of(Quantity.MASS, "350 g"),
                  "mass of the contents",
                  "as much as fills it"),
              Key.preset(
                  "wrap",
                  RESISTANCE,
                  "resistance of pouch and wrapping",
                  "0 m2 K/W",
                  "bare, assumed"),
              Key.required(
                  "start",
                  Form.either(
                      Form.of(Quantity.TEMPERATURE, "-18 °C"),
                      Form.written(
                          "`from the freezer` (-18 °C) or `from the refrigerator` (4 °C)",
                          List.of("from the freezer", "from the refrigerator")),
                      Form.written("melted part, such as `25 % liquid`", List.of("25 % liquid"))),
                  "its temperature at sealing, where it comes from, or how much of it is melted at"
                      + " its melting point")),
          Map.of());

  static final FilePart MEASURED =
      new FilePart(
          "measured",
          "What loggers told of a packing in a test, instead of what is stated of its parts: a value"
              + " and, in brackets, the range that holds it with 90 %. The command `fit` writes it.",
          List.of(
              Key.optional(
                  MeasuredReader.FILL,
                  measured("0.051 (0.047 to 0.056) W/(m K)"),
                  "conductivity of what `fill` names",
                  "as stated for the material"),
              Key.optional(
                  MeasuredReader.FOAM,
                  measured("0.036 (0.034 to 0.038) W/(m K)"),
                  "conductivity of the layer of the walls that insulates best",
                  "as stated for the material"),
              Key.optional(
                  MeasuredReader.SEAMS,
                  measured("0.4 (0.2 to 0.6) mm"),
                  "gap of the seams, up to 2 mm",
                  "as `seams` says"),
              Key.optional(
                  MeasuredReader.WARMER,
                  measured("0.92 (0.87 to 0.97)"),
                  "factor on the power of all warmers",
                  "1, in the range of the warmer")),
          Map.of());

  private static Form measured(String example) {
    return Form.written("a value and its range such as `" + example + "`", List.of(example));
  }

  static final FilePart PACKING =
      new FilePart(
          "packing",
          "A way to pack the animals; all packings are compared.",
          List.of(
              Key.required("name", Form.text("any text", "thin foam"), "its name in the results"),
              Key.required(
                  "box",
                  Form.either(
                      SIZE,
                      Form.written(
                          "carton by its inner size, such as `7 x 7 x 6 in carton` or `18 cm cube"
                              + " carton`; [usual ones](#cartons)",
                          List.of("7 x 7 x 6 in carton", "7 in cube carton")),
                      Form.table(BOX)),
                  "outer length, width and height; a carton is named by its inner ones"),
              Key.preset(
                  "board",
                  LAYERS_OR_NONE,
                  "outer layer of all walls",
                  "corrugated board 4 mm",
                  ASSUMED),
              Key.required(
                  "foam", LAYERS_OR_NONE, "inner layers of all walls, the outermost first"),
              Key.optional("lid", LAYERS_OR_NONE, "inner layers of the lid", "as `foam`"),
              Key.optional("floor", LAYERS_OR_NONE, "inner layers of the floor", "as `foam`"),
              Key.optional("sides", LAYERS_OR_NONE, "inner layers of the four sides", "as `foam`"),
              Key.optional(
                  "left",
                  LAYERS_OR_NONE,
                  "inner layers at one end of the first length",
                  "as `sides`"),
              Key.optional("right", LAYERS_OR_NONE, "inner layers at its other end", "as `sides`"),
              Key.optional(
                  "front",
                  LAYERS_OR_NONE,
                  "inner layers at one end of the second length",
                  "as `sides`"),
              Key.optional("back", LAYERS_OR_NONE, "inner layers at its other end", "as `sides`"),
              Key.optional(
                  "joints",
                  Form.either(LENGTH, Form.table(JOINTS)),
                  "how panels meet",
                  "none, walls of one piece (assumed)"),
              Key.preset(
                  "seams",
                  Form.oneOf(OpeningsReader.seamNames()),
                  "the edges where panels meet, and the lid: `taped` lets no air through, `closed`"
                      + " fits without tape, `loose` does not fit",
                  "closed",
                  ASSUMED),
              Key.preset(
                  "holes",
                  Form.either(HOLE, Form.oneOf(List.of("none")), Form.listOf(HOLE)),
                  "holes through board and foam",
                  "none",
                  ASSUMED),
              Key.required(
                  "fill",
                  Form.text(
                      "[material](#materials-and-fills) by name or an [everyday"
                          + " word](#everyday-words), or `none`",
                      "shredded paper"),
                  "what fills the room between walls, containers, warmers and packs"),
              Key.optional("cup", CUP, "the container of this packing", "as in the scenario"),
              Key.optional(
                  "containers",
                  Form.either(
                      CONTAINERS,
                      Form.written(
                          "`as in` and the name of an earlier packing",
                          List.of("as in small box"))),
                  "the containers of this packing",
                  "as in the scenario"),
              Key.preset("gap", LENGTH, "room between containers side by side", "10 mm", ASSUMED)
                  .where("with several containers"),
              Key.optional(
                  "warmer",
                  Form.either(WARMER_ON, NONE_OR_NO, Form.table(OWN_WARMER)),
                  "a single warmer and what it is on",
                  "no warmer"),
              Key.optional(
                  "stand-off",
                  LENGTH,
                  "as in [warmer](#warmer), for a single one",
                  "it touches the wall"),
              Key.optional(
                  "contact",
                  RESISTANCE,
                  "as in [warmer](#warmer), for a single one",
                  "as in warmer"),
              Key.optional(
                  "opened",
                  OPENED.form(),
                  "as in [warmer](#warmer), for a single one",
                  "as in warmer"),
              Key.optional(
                  "film", FILM.form(), "as in [warmer](#warmer), for a single one", "as in warmer"),
              Key.optional(
                  "warmers",
                  Form.either(Form.listOf(Form.either(WARMER_ON, Form.table(WARMER))), NONE_OR_NO),
                  "several warmers",
                  "no warmer"),
              Key.optional(
                  "packs",
                  Form.either(Form.listOf(Form.table(PACK)), Form.table(PACK), NONE_OR_NO),
                  "packs, or a single one",
                  "no packs"),
              Key.optional(
                  "measured",
                  Form.table(MEASURED),
                  "what a test with loggers told",
                  "as stated for the parts")),
          Map.of());

  static final FilePart MISHAP =
      new FilePart(
          "mishap",
          "Something that goes wrong, for the command `break`. All that one mishap names happens"
              + " together.",
          List.of(
              Key.required("name", Form.text("any text", "a night of frost"), "what happens"),
              Key.optional(
                  "weather",
                  Form.written(
                      "how much colder or warmer, such as `8 K colder`; of a single leg as in `8 K"
                          + " colder in aircraft hold`",
                      List.of("8 K colder", "5 K warmer", "8 K colder in aircraft hold")),
                  "error of the forecast, wherever the weather reaches, or of one leg's air",
                  "as the journey says"),
              Key.optional(
                  "vehicles",
                  Form.oneOf(MishapReader.names("vehicles")),
                  "vans and trailers as cold as outdoors, a hold as an unheated one",
                  "as the journey says"),
              Key.optional(
                  "delay",
                  Form.either(DELAY_IN, Form.listOf(DELAY_IN)),
                  "how late, and in which leg; together not longer than the `hold`",
                  "no delay"),
              Key.optional(
                  "orientation",
                  Form.oneOf(LegReader.orientationNames()),
                  "which face is up, all the way",
                  "as the journey says"),
              Key.optional(
                  "sun",
                  DELAY_IN,
                  "how long the sun shines on the lid (800 W/m2, assumed), and in which leg",
                  "as the journey says"),
              Key.optional(
                  "fill",
                  Form.oneOf(MishapReader.names("fill")),
                  "packed without fill",
                  "as the packing says"),
              Key.optional(
                  "warmer",
                  Form.oneOf(MishapReader.names("warmer")),
                  "what is wrong with the warmers; the first one comes loose",
                  "as the packing says"),
              Key.optional(
                  "pack",
                  Form.oneOf(MishapReader.names("pack")),
                  "what is wrong with the packs; the first one comes loose",
                  "as the packing says"),
              Key.optional(
                  "openings",
                  Form.oneOf(MishapReader.names("openings")),
                  "seams and holes are all taped or blocked",
                  "as the packing says")),
          Map.of());

  static final FilePart FORECAST =
      new FilePart(
          "forecast day",
          "A day of a forecast, for the command `rank`. Days follow each other without gaps; the"
              + " first is the day on which the forecast was made.",
          List.of(
              Key.required(
                  "date",
                  Form.written(
                      "date, such as `2026-01-15`, `15 January 2026` or `1/15/2026`",
                      List.of("2026-01-15", "15 January 2026")),
                  "which day"),
              Key.required("origin", RANGE, "low and high of that day where the parcel is sent"),
              Key.required("destination", RANGE, "low and high of that day where it arrives")),
          Map.of());

  static final FilePart SCENARIO =
      new FilePart(
          "scenario",
          "The whole file.",
          List.of(
              Key.required(
                  "format",
                  new Form.Single("`1`", Map.of("enum", List.of(1, "1")), List.of("1")),
                  "version of the format; the first key"),
              Key.required(
                  "title", Form.text("any text", "A gecko goes west"), "title of the report"),
              Key.preset(
                  "units",
                  Form.oneOf(ScenarioReader.unitNames()),
                  "units of the results; us and imperial are the same",
                  "metric",
                  ASSUMED),
              Key.optional(
                  "animal",
                  OCCUPANT,
                  "the animal in every container that names none",
                  "each container needs its own"),
              Key.optional(
                  "cup",
                  CUP,
                  "the container of every packing that has none",
                  "each packing needs its own"),
              Key.optional(
                  "containers",
                  CONTAINERS,
                  "the containers of every packing that has none",
                  "each packing needs its own"),
              Key.preset(
                  "hold",
                  DURATION,
                  "how far beyond the planned opening to compute, for delays, up to 29 d",
                  "24 h",
                  ASSUMED),
              Key.required(
                  "journey",
                  Form.either(
                      Form.table(JOURNEY),
                      Form.written(
                          "[journey](#journeys) by name and daily low and high, such as `overnight"
                              + " by air, 28 to 45 °F`",
                          templates().stream().map(name -> name + ", 28 to 45 °F").toList())),
                  "where the parcel goes"),
              Key.required("packings", Form.listOf(Form.table(PACKING)), "the packings to compare"),
              Key.optional(
                  "mishaps",
                  Form.listOf(Form.table(MISHAP)),
                  "what may go wrong beside the usual, for the command `break`",
                  "the usual alone"),
              Key.optional(
                  "forecast",
                  Form.listOf(Form.table(FORECAST)),
                  "the days to choose from, for the command `rank`, which needs no other lows and"
                      + " highs then; at most 60",
                  "`rank` needs `--forecast`")),
          Map.of());

  private Vocabulary() {}

  /** All parts, the whole file first, each after one that mentions it. */
  static List<FilePart> parts() {
    Set<FilePart> all = new LinkedHashSet<>();
    List<FilePart> open = new ArrayList<>(List.of(SCENARIO));
    while (!open.isEmpty()) {
      FilePart part = open.remove(0);
      if (all.add(part)) {
        part.keys().forEach(key -> open.addAll(key.form().parts()));
      }
    }
    return List.copyOf(all);
  }

  /** All forms that have a name, in the order in which parts use them. */
  static List<Form.Called> called() {
    Set<Form.Called> all = new LinkedHashSet<>();
    parts().forEach(part -> part.keys().forEach(key -> all.addAll(key.form().called())));
    return List.copyOf(all);
  }

  /**
   * Returns a value that a file could have at a key path.
   *
   * @param path the path, for example {@code journey.legs[2].for}
   * @return the value, empty if there is no such key
   */
  static String exampleAt(String path) {
    List<FilePart> open = List.of(SCENARIO);
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
      example = keys.get(0).form().pastedExample();
    }
    return path.endsWith("]") ? "" : example;
  }

  private static List<String> templates() {
    return JourneyTemplates.all().stream().map(JourneyTemplate::name).toList();
  }

  /** Keys with more before them. */
  private static List<Key> with(List<Key> keys, Key... first) {
    List<Key> all = new ArrayList<>(List.of(first));
    all.addAll(keys);
    return all;
  }

  static String exampleOnLid(String noun) {
    return noun.equals("warmer") ? "40 hour warmer on lid" : "gel pack on lid";
  }

  private static List<String> vesselSizes() {
    return VesselSizes.all().stream().map(VesselSize::name).toList();
  }

  private static List<String> boxSizes() {
    return Stream.concat(BoxSizes.all().stream(), BoxSizes.metric().stream())
        .map(BoxSize::name)
        .toList();
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
    names.put("Materials and fills", materials(false));
    names.put("Everyday words", EverydayWords.all());
    names.put("Contents of packs that melt", materials(true));
    names.put("Vacuum panels, with length x width x thickness", panels());
    names.put("Cartons", boxSizes());
    names.put("Containers", vesselSizes());
    names.put("Warmers", Warmers.all().stream().map(WarmerClass::name).toList());
    names.put("Surroundings", LegReader.situationNames());
    names.put("Journeys", templates());
    names.put("Places with recorded weather", RecordedWeather.bundled().places());
    return names;
  }

  private static List<String> materials(boolean melting) {
    return Materials.all().stream()
        .filter(each -> each.behaviour().phaseChange().isPresent() == melting)
        .map(Material::name)
        .toList();
  }

  private static List<String> panels() {
    return Layers.PANELS.stream().map(VacuumPanel::name).toList();
  }
}
