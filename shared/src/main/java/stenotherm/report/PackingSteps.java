package stenotherm.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stenotherm.air.VentHole;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.grid.Box;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.material.Melting;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Occupant;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Vent;
import stenotherm.parcel.Vessel;
import stenotherm.parcel.WallLayer;
import stenotherm.words.FaceNames;
import stenotherm.words.Figures;

/**
 * What goes into a parcel where, one step after the other; and the step at which each thing does.
 */
final class PackingSteps {
  /** Of the air in a room [K]: 15 °C, assumed; what is colder gets wet. */
  private static final double DEW_POINT = 288.15;

  /** What lies on a container is no farther from its inside: its wall is thin [m]. */
  private static final double CLOSE = 2e-3;

  /** Distances that differ by less count as one [m]. */
  private static final double SAME = 5e-4;

  /** Liquids that go in this cold come out of a refrigerator: assumed [K]. */
  private static final Range REFRIGERATOR =
      new Range(Temperatures.fromCelsius(0), Temperatures.fromCelsius(10));

  /** A name with a number at its end. */
  private static final Pattern COUNTED = Pattern.compile("(|.*\\D)(\\d{1,6})");

  /** So many containers that are alike, in even rows, have one step. */
  private static final int MANY = 4;

  /** A pouch with so much of what it holds is full [-]. */
  private static final double FULL = 0.98;

  private final Parcel parcel;
  private final Box cavity;
  private final Figures figures;
  private final Predicate<PlacedWarmer> needsCarton;
  private final List<String> steps = new ArrayList<>();
  private final Map<String, Integer> stepOf = new HashMap<>();

  /** A thing that is put in, or containers that are alike. */
  private record Thing(List<String> names, Box box, Optional<Placement.OnFace> on, String words) {
    Thing(String name, Box box, Optional<Placement.OnFace> on, String words) {
      this(List.of(name), box, on, words);
    }

    String name() {
      return names.get(0);
    }

    boolean lies(Face where) {
      return on.filter(place -> place.face() == where).isPresent();
    }

    boolean lies(Axis normal) {
      return on.filter(place -> place.face().axis() == normal).isPresent();
    }

    /** How far off its face it is held [m]. */
    double gap() {
      return on.map(place -> place.mounting().standOff()).orElse(0.0);
    }
  }

  /**
   * Finds the order of packing.
   *
   * @param parcel what is packed
   * @param carton what the file calls its carton; empty if it gives the size outside
   * @param needsCarton whether a piece of carton goes between a warmer and the foam it lies against
   * @param figures writes numbers in the reader's units
   */
  PackingSteps(
      Parcel parcel,
      Optional<String> carton,
      Predicate<PlacedWarmer> needsCarton,
      Figures figures) {
    this.parcel = parcel;
    this.cavity = parcel.cavity();
    this.needsCarton = needsCarton;
    this.figures = figures;
    List<Thing> things = things();
    step(carton(carton.orElse("box") + ", " + size(parcel.outer()) + " outside") + panels());
    if (!parcel.openings().vents().isEmpty()) {
      step(
          "Make "
              + holes()
              + "; measured outside, from the edges of the box to the middle of a hole. Nothing but"
              + " fill may lie on or behind them.");
    }
    things.stream().filter(thing -> thing.lies(Face.Z_MIN)).forEach(this::put);
    double bed =
        things.stream().mapToDouble(this::aboveFloor).filter(h -> h > SAME).min().orElse(0);
    boolean onFloor =
        things.stream().anyMatch(thing -> thing.on().isEmpty() && aboveFloor(thing) <= SAME);
    if (bed > 0 && !onFloor && !fill().isEmpty()) {
      step("Lay " + figures.tape(bed) + " of " + fill() + " on the floor.");
    }
    things.stream()
        .filter(thing -> thing.on().isEmpty())
        .sorted(Comparator.comparingDouble(this::aboveFloor))
        .forEach(this::put);
    things.stream().filter(thing -> thing.lies(Axis.X)).forEach(this::put);
    things.stream().filter(thing -> thing.lies(Axis.Y)).forEach(this::put);
    fillUp(things.stream().filter(thing -> thing.lies(Face.Z_MAX)).toList());
    parcel.warmers().forEach(warmer -> keepApart(warmer.name()));
    step("Close the lid; seams: " + seams() + ".");
  }

  /** What is computed between a warmer and an animal's container must stay there on the way. */
  private void keepApart(String warmer) {
    Map<String, List<String>> cups = new LinkedHashMap<>();
    for (Container cup : parcel.occupied()) {
      double apart = -box(warmer).overlap(parcel.room(cup));
      if (apart > SAME && !fill().isEmpty()) {
        cups.computeIfAbsent(figures.tape(apart), none -> new ArrayList<>()).add(cup.name());
      }
    }
    cups.forEach(
        (apart, names) ->
            step(
                "Between '"
                    + warmer
                    + "' and "
                    + (names.size() > 1 ? "each of " : "")
                    + names(names)
                    + " there must be "
                    + apart
                    + " of "
                    + fill()
                    + ", pressed firm: the warmer must never come to lie on "
                    + (names.size() > 1 ? "any of them." : "it.")));
  }

  /** For example "'cup', 'vial 1' to 'vial 12'": names that are counted are not all told. */
  static String names(List<String> names) {
    List<String> told = new ArrayList<>();
    int first = 0;
    for (int next = 1; next <= names.size(); next++) {
      if (next < names.size() && follows(names.get(next - 1), names.get(next))) {
        continue;
      }
      if (next - first > 2) {
        told.add("'" + names.get(first) + "' to '" + names.get(next - 1) + "'");
      } else {
        names.subList(first, next).forEach(name -> told.add("'" + name + "'"));
      }
      first = next;
    }
    return Figures.listed(told);
  }

  private static boolean follows(String one, String other) {
    Matcher before = COUNTED.matcher(one);
    Matcher after = COUNTED.matcher(other);
    return before.matches()
        && after.matches()
        && before.group(1).equals(after.group(1))
        && Integer.parseInt(before.group(2)) + 1 == Integer.parseInt(after.group(2));
  }

  /** Fills the room that is left; what is held off the lid lies on fill, with fill over it. */
  private void fillUp(List<Thing> atLid) {
    if (fill().isEmpty()) {
      step("Leave the room around empty, as computed; nothing may shift.");
      atLid.forEach(this::put);
      return;
    }
    List<Thing> covered =
        atLid.stream()
            .filter(thing -> thing.gap() > SAME)
            .sorted(Comparator.comparingDouble(this::aboveFloor))
            .toList();
    double filled = 0;
    for (Thing thing : covered) {
      double height = aboveFloor(thing);
      if (height > filled + SAME) {
        step(
            (filled == 0 ? "Fill all room around with " : "Fill on with ")
                + fill()
                + ", up to "
                + figures.tape(cavity.max().z() - thing.box().min().z())
                + " below the lid, so that nothing shifts.");
        filled = height;
      }
      put(thing);
    }
    step(
        (covered.isEmpty() ? "Fill all room around and above with " : "Fill the rest above with ")
            + fill()
            + (covered.isEmpty()
                ? ", so that nothing shifts" + roomFor(atLid) + "."
                : ": that alone keeps "
                    + Figures.listed(
                        covered.stream().map(thing -> "'" + thing.name() + "'").toList())
                    + " off the lid."));
    atLid.stream().filter(thing -> thing.gap() <= SAME).forEach(this::put);
  }

  /** What is taped under the lid needs room when it is closed. */
  private static String roomFor(List<Thing> atLid) {
    return atLid.isEmpty()
        ? ""
        : "; leave room under the lid for "
            + Figures.listed(atLid.stream().map(thing -> "'" + thing.name() + "'").toList());
  }

  /** The steps in their order. */
  List<String> sentences() {
    return List.copyOf(steps);
  }

  /** The number of the step at which a container, warmer or pack goes in. */
  int stepOf(String thing) {
    return stepOf.getOrDefault(thing, 0);
  }

  private void step(String sentence) {
    steps.add(sentence);
  }

  private void put(Thing thing) {
    step(thing.words());
    thing.names().forEach(name -> stepOf.put(name, steps.size()));
  }

  private double aboveFloor(Thing thing) {
    return thing.box().min().z() - cavity.min().z();
  }

  private List<Thing> things() {
    List<Thing> things = new ArrayList<>();
    ContainerPlaces places = new ContainerPlaces(parcel, figures);
    Map<String, List<Container>> alike = new LinkedHashMap<>();
    for (Container each : parcel.containers()) {
      alike.computeIfAbsent(description(each), none -> new ArrayList<>()).add(each);
    }
    // one that stands beside another comes after it
    for (Container each : parcel.containers()) {
      List<Container> group = alike.getOrDefault(description(each), List.of());
      Optional<String> rows = group.size() < MANY ? Optional.empty() : places.rows(group);
      if (rows.isEmpty()) {
        things.add(container(each, places));
      } else if (each.equals(group.get(0))) {
        things.add(containers(group, rows.get()));
      }
    }
    for (PlacedWarmer each : parcel.warmers()) {
      Box box = box(each.name());
      String words =
          thing(
              "'" + each.name() + "' (" + each.warmer().name() + ", " + flat(box) + ")",
              each.placement(),
              box);
      String between =
          needsCarton.test(each)
              ? " Put a piece of carton between it and the foam, which may soften."
              : "";
      String film = film(each.cover());
      things.add(new Thing(each.name(), box, face(each.placement()), words + between + " " + film));
    }
    for (PlacedPack each : parcel.packs()) {
      Box box = box(each.name());
      String what =
          "'"
              + each.name()
              + "' ("
              + each.pack().name()
              + ", "
              + figures.mass(each.pack().mass())
              + ", "
              + flat(box)
              + ")";
      String words =
          thing(what, each.placement(), box)
              + pouch(each.pack())
              + " It goes in "
              + start(each)
              + "."
              + dry(each)
              + hold(each)
              + drip(box);
      things.add(new Thing(each.name(), box, face(each.placement()), words));
    }
    return things;
  }

  /** What a container is, what is in it and how high it stands. */
  private String description(Container each) {
    return inside(each.vessel(), parcel.room(each))
        + lid(each.vessel())
        + inside(each)
        + tight(each)
        + Math.round((parcel.room(each).min().z() - cavity.min().z()) / SAME);
  }

  private Thing container(Container each, ContainerPlaces places) {
    Box room = parcel.room(each);
    String inside = inside(each.vessel(), room);
    String place = parcel.containers().size() > 1 ? places.where(each) : where(room);
    String words = "Set '" + each.name() + "' (" + inside + ")" + lid(each.vessel()) + place + ". ";
    return new Thing(each.name(), room, Optional.empty(), words + inside(each) + tight(each));
  }

  /** Many containers that are alike and stand in even rows. */
  private Thing containers(List<Container> alike, String rows) {
    Container first = alike.get(0);
    Box room = parcel.room(first);
    List<String> names = alike.stream().map(Container::name).toList();
    String words =
        "Set "
            + alike.size()
            + " "
            + PackingSheet.kind(first.vessel())
            + "s, "
            + names(names)
            + " (each "
            + inside(first.vessel(), room)
            + ")"
            + lid(first.vessel())
            + rows
            + ". "
            + inside(first).replace("In it:", "In each:").replace("in it.", "in them.")
            + tight(first);
    return new Thing(names, room, Optional.empty(), words);
  }

  private Box box(String block) {
    return parcel.layout().block(block).box();
  }

  private String thing(String what, Placement placement, Box box) {
    if (placement instanceof Placement.OnFace on) {
      boolean middle = Math.abs(on.alongFirst()) < SAME && Math.abs(on.alongSecond()) < SAME;
      return held(what, on) + ", " + (middle ? "in its middle" : where(box)) + gap(on) + ".";
    }
    return "Lay " + what + " " + on(box) + where(box) + ".";
  }

  /** The container that a thing lies on. */
  private String on(Box box) {
    return parcel.containers().stream()
        .filter(each -> Math.abs(parcel.room(each).max().z() - box.min().z()) < CLOSE)
        .filter(each -> parcel.room(each).overlap(box) > -CLOSE)
        .findFirst()
        .map(each -> "on '" + each.name() + "', ")
        .orElse("");
  }

  private String held(String what, Placement.OnFace on) {
    double gap = on.mounting().standOff();
    if (gap == 0) {
      return "Tape " + what + " flat to the inside of the " + side(on.face());
    }
    return (on.face().axis() == Axis.Z ? "Lay " : "Stand ")
        + what
        + " "
        + figures.tape(gap)
        + " off the "
        + side(on.face());
  }

  /** What keeps a thing off its face. The model has in the gap what fills the cavity. */
  private String gap(Placement.OnFace on) {
    if (on.mounting().standOff() == 0) {
      return "";
    }
    if (fill().isEmpty()) {
      return ", on spacers at its corners: the gap stays open";
    }
    return on.face() == Face.Z_MAX ? ", flat on that fill" : ", with " + fill() + " between";
  }

  private static Optional<Placement.OnFace> face(Placement placement) {
    return placement instanceof Placement.OnFace on ? Optional.of(on) : Optional.empty();
  }

  private String where(Box box) {
    double up = box.min().z() - cavity.min().z();
    double left = box.min().x() - cavity.min().x();
    double right = cavity.max().x() - box.max().x();
    double front = box.min().y() - cavity.min().y();
    double back = cavity.max().y() - box.max().y();
    return (up > SAME ? figures.tape(up) + " above the floor inside, " : "on the floor inside, ")
        + apart("left", left, "right", right)
        + ", "
        + apart("front", front, "back", back);
  }

  private String apart(String one, double toOne, String other, double toOther) {
    return Math.abs(toOne - toOther) < SAME
        ? distance(toOne) + " from " + one + " and " + other
        : distance(toOne) + " from " + one + " and " + distance(toOther) + " from " + other;
  }

  private String distance(double metres) {
    return figures.tape(metres < SAME ? 0 : metres);
  }

  /** Holes that have to be punched: a lid as it is sold may have none. */
  private String lid(Vessel vessel) {
    List<VentHole> holes = vessel.holes();
    return holes.isEmpty()
        ? " "
        : ", with "
            + holes(holes.size(), holes.get(0).diameter())
            + " in its "
            + cover(vessel)
            + ", ";
  }

  private static String cover(Vessel vessel) {
    return vessel instanceof Vessel.Vial ? "cap" : "lid";
  }

  private static String tight(Container container) {
    Vessel vessel = container.vessel();
    return vessel.isTight() && container.occupant().isPresent()
        ? " Its "
            + cover(vessel)
            + " has no holes: all that is breathed in it is the air shut in with the animal."
        : "";
  }

  private String inside(Container container) {
    List<String> layers =
        container.bedding().stream()
            .map(layer -> bedding(layer) + " " + figures.tape(layer.thickness()))
            .toList();
    String bedding = layers.isEmpty() ? "" : " on " + String.join(", ", layers);
    return container
        .occupant()
        .map(who -> "In it: " + who(who) + bedding + ".")
        .orElse("Nobody is in it.");
  }

  /** Not the short name of a layer: dry moss kills what damp moss keeps. */
  private static String bedding(Bedding layer) {
    String material = layer.material().name();
    // a pad that a file gives its water has the name of the dry one
    return material.startsWith("moist ")
        ? material.replace("moist dry ", "moist ").replaceFirst(", dry$", "")
        : material;
  }

  private String who(Occupant of) {
    int many = of.count();
    String mass = figures.mass(of.body().mass());
    String name = of.animal().name();
    return many > 1 ? many + " " + several(name) + " of " + mass + " each" : name + ", " + mass;
  }

  /** More than one of an animal; names that a letter does not make more of stay as they are. */
  static String several(String animal) {
    if (animal.matches(".*(s|x|fish|[^a-z])")) {
      return animal;
    }
    if (animal.endsWith("louse")) {
      return animal.replaceFirst("louse$", "lice");
    }
    return animal + (animal.endsWith("ch") ? "es" : "s");
  }

  private static String film(FilmCover cover) {
    return switch (cover) {
      case FREE -> "No tape on its film: the side that breathes faces the inside.";
      case EDGES_TAPED -> "Tape its edges only: the middle of the film stays free.";
      case HALF_TAPED -> "Tape over half of its film; the other half stays free.";
      case AGAINST_WALL -> "Its film lies against the wall, as computed.";
      case TAPED_OVER -> "Its film is taped over, so that it gives no heat.";
    };
  }

  /** Water, unlike a pack that is bought, has nothing around it. */
  private static String pouch(PackClass pack) {
    if (!pack.contents().equals(Materials.WATER)) {
      return "";
    }
    boolean isFull = pack.mass() > FULL * pack.size().volume() * pack.contents().density();
    return " The water is in a flat bag or bottle of this size, closed tight"
        + (isFull ? ", full" : "")
        + (pack.wrap() == 0 ? ", not wrapped." : ".");
  }

  private String start(PlacedPack pack) {
    if (pack.start() instanceof PackStart.PartlyMelted partly) {
      return Math.round(100 * partly.liquidFraction()) + " % melted";
    }
    double temperature = ((PackStart.AtTemperature) pack.start()).temperature();
    Optional<Melting> melting = pack.pack().contents().behaviour().fusion();
    boolean isSolid = pack.leftToMelt().isPresent();
    boolean isCool = REFRIGERATOR.contains(temperature) && !isSolid;
    return "at "
        + figures.temperature(temperature)
        + (isCool ? ": from the refrigerator, not frozen" : isSolid ? ": all of it solid" : "")
        + (melting.isPresent() && !isSolid && !isCool ? ": all of it liquid" : "");
  }

  /** Water condenses on what comes from a refrigerator or freezer. */
  private static String dry(PlacedPack pack) {
    boolean isCold =
        !(pack.start() instanceof PackStart.AtTemperature at) || at.temperature() < DEW_POINT;
    return isTaped(pack) && isCold ? " Wipe it dry first, or the tape does not hold." : "";
  }

  private static boolean isTaped(PlacedPack pack) {
    return face(pack.placement()).filter(on -> on.mounting().standOff() == 0).isPresent();
  }

  /** What comes off a lid or a side may fall on a container. */
  private static String hold(PlacedPack pack) {
    return isTaped(pack) && face(pack.placement()).filter(on -> on.face() != Face.Z_MIN).isPresent()
        ? " It must hold when the box is turned over or dropped."
        : "";
  }

  /** What leaks from a pack that lies above the floor of a container could wet the animal. */
  private String drip(Box pack) {
    boolean isAbove =
        parcel.containers().stream()
            .anyMatch(each -> parcel.room(each).min().z() < pack.min().z() - SAME);
    return isAbove ? " If its pouch leaks, nothing may drip on a container." : "";
  }

  /** The board outside is the box itself: only what is within it has to be put in. */
  private String carton(String box) {
    List<WallLayer> lid = parcel.walls().layersOf(Face.Z_MAX);
    boolean isBoard =
        !lid.isEmpty()
            && lid.get(0).thickness() < PackingSheet.BOARD
            && FaceNames.all().values().stream()
                .map(face -> parcel.walls().layersOf(face))
                .allMatch(layers -> !layers.isEmpty() && layers.get(0).equals(lid.get(0)));
    if (!isBoard) {
      return "Take the " + box + ", its walls from outside to inside: " + walls(0) + ".";
    }
    String lining = walls(1);
    return lining.isEmpty()
        ? "Take the " + box + " and of " + layer(lid.get(0)) + "; it has no lining."
        : "Line the " + box + " and of " + layer(lid.get(0)) + ", with " + lining + ".";
  }

  /** For example "EPS 20 19 mm on all sides", from outside to inside, without outer layers. */
  private String walls(int without) {
    Map<String, List<String>> faces = new LinkedHashMap<>();
    for (Face face : FaceNames.all().values()) {
      String layers =
          parcel.walls().layersOf(face).stream()
              .skip(without)
              .map(this::layer)
              .collect(Collectors.joining(", then "));
      if (!layers.isEmpty()) {
        faces.computeIfAbsent(layers, none -> new ArrayList<>()).add(face.words());
      }
    }
    return faces.entrySet().stream()
        .map(
            entry ->
                entry.getKey()
                    + (entry.getValue().size() == FaceNames.all().size()
                        ? " on all sides"
                        : " on " + String.join(", ", entry.getValue())))
        .collect(Collectors.joining("; "));
  }

  /** The sizes to cut where board is lined with one layer, the same on all faces. */
  private String panels() {
    List<WallLayer> layers = parcel.walls().layersOf(Face.Z_MAX);
    int last = layers.size() - 1;
    boolean alike =
        FaceNames.all().values().stream()
            .allMatch(face -> parcel.walls().layersOf(face).equals(layers));
    boolean inBoard =
        last > 0
            && layers.get(last).thickness() >= PackingSheet.BOARD
            && layers.subList(0, last).stream()
                .allMatch(layer -> layer.thickness() < PackingSheet.BOARD);
    if (!alike || !inBoard) {
      return "";
    }
    double thickness = layers.get(last).thickness();
    return " Cut "
        + layers.get(last).material().name()
        + " for it: lid and floor "
        + panel(Axis.Z, Axis.X, Axis.Y, thickness)
        + ", front and back "
        + panel(Axis.Y, Axis.X, Axis.Z, thickness)
        + ", left and right "
        + panel(Axis.X, Axis.Y, Axis.Z, thickness)
        + ".";
  }

  private String panel(Axis normal, Axis length, Axis width, double thickness) {
    return figures.cutSize(extent(normal, length, thickness), extent(normal, width, thickness));
  }

  /** A panel ends at those that reach over it. */
  private double extent(Axis normal, Axis along, double thickness) {
    List<Axis> overlap = parcel.walls().joints().overlap();
    boolean over = overlap.indexOf(normal) < overlap.indexOf(along);
    return cavity.size(along) + (over ? 2 * thickness : 0);
  }

  private String layer(WallLayer layer) {
    return layer.material().name() + " " + figures.tape(layer.thickness());
  }

  private String holes() {
    HolePlaces places = new HolePlaces(parcel, figures);
    return places.rows().stream()
        .map(row -> holes(row.vent()) + ", " + places.words(row))
        .collect(Collectors.joining("; "));
  }

  private String holes(Vent vent) {
    return holes(vent.count(), vent.diameter()) + " in the " + side(vent.face());
  }

  private String holes(int count, double diameter) {
    return count + (count == 1 ? " hole of " : " holes of ") + figures.drill(diameter);
  }

  private static String side(Face face) {
    return face.axis() == Axis.Z ? face.words() : face.words() + " side";
  }

  private String seams() {
    double gap = parcel.openings().seamGap();
    if (gap == 0) {
      return "all taped, so that air comes through foam and holes only";
    }
    return gap > Openings.CLOSED_GAP ? "loose, not taped" : "closed as they fit, not taped over";
  }

  /** The fill as it is to be put in, empty for none: how tight it is makes it another material. */
  private String fill() {
    String name = parcel.filling().fill().map(Material::name).orElse("");
    return name.equals(Materials.CRUMPLED_NEWSPAPER.name()) ? "tightly " + name : name;
  }

  /** The inner extents of a vessel; of a round one those that a tape measures on it. */
  private String inside(Vessel vessel, Box room) {
    if (vessel instanceof Vessel.RoundCup cup) {
      return figures.tape(cup.diameter())
          + " across and "
          + figures.tape(cup.height())
          + " high inside";
    }
    if (vessel instanceof Vessel.Vial vial) {
      return figures.tape(vial.diameter())
          + " across and "
          + figures.tape(vial.length())
          + " long inside";
    }
    return size(room) + " inside";
  }

  /** The size of something flat however it stands, its thickness last. */
  private String flat(Box box) {
    double[] sizes = {box.size(Axis.X), box.size(Axis.Y), box.size(Axis.Z)};
    Arrays.sort(sizes);
    return figures.tapeSize(sizes[2], sizes[1], sizes[0]);
  }

  private String size(Box box) {
    return figures.tapeSize(box.size(Axis.X), box.size(Axis.Y), box.size(Axis.Z));
  }
}
