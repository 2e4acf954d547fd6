package stenotherm.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.parcel.Container;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Vent;
import stenotherm.parcel.WallLayer;
import stenotherm.words.FaceNames;
import stenotherm.words.Figures;

/**
 * What goes into a parcel where, one step after the other; and the step at which each thing does.
 */
final class PackingSteps {
  /** Distances that differ by less count as one [m]. */
  private static final double SAME = 5e-4;

  private final Parcel parcel;
  private final Box cavity;
  private final Figures figures;
  private final List<String> steps = new ArrayList<>();
  private final Map<String, Integer> stepOf = new HashMap<>();

  /** A thing that is put in. */
  private record Thing(String name, Box box, Optional<Face> face, String words) {
    boolean lies(Face where) {
      return face.equals(Optional.of(where));
    }
  }

  PackingSteps(Parcel parcel, Figures figures) {
    this.parcel = parcel;
    this.cavity = parcel.cavity();
    this.figures = figures;
    List<Thing> things = things();
    step("Line the box, " + size(parcel.outer()) + " outside: " + walls() + ".");
    if (!parcel.openings().vents().isEmpty()) {
      step("Make " + holes() + ", spread over the face.");
    }
    things.stream().filter(thing -> thing.lies(Face.Z_MIN)).forEach(this::put);
    double bed =
        things.stream().mapToDouble(this::aboveFloor).filter(h -> h > SAME).min().orElse(0);
    boolean onFloor =
        things.stream().anyMatch(thing -> thing.face().isEmpty() && aboveFloor(thing) <= SAME);
    if (bed > 0 && !onFloor && !fill().isEmpty()) {
      step("Lay " + figures.length(bed) + " of " + fill() + " on the floor.");
    }
    things.stream()
        .filter(thing -> thing.face().isEmpty())
        .sorted(Comparator.comparingDouble(this::aboveFloor))
        .forEach(this::put);
    things.stream()
        .filter(thing -> thing.face().map(face -> face.axis() != Axis.Z).orElse(false))
        .forEach(this::put);
    step(
        fill().isEmpty()
            ? "Leave the room around empty, as computed; nothing may shift."
            : "Fill all room around and above with "
                + fill()
                + ", loosely, so that nothing shifts.");
    things.stream().filter(thing -> thing.lies(Face.Z_MAX)).forEach(this::put);
    step("Close the lid; seams: " + seams() + ".");
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
    stepOf.put(thing.name(), steps.size());
  }

  private double aboveFloor(Thing thing) {
    return thing.box().min().z() - cavity.min().z();
  }

  private List<Thing> things() {
    List<Thing> things = new ArrayList<>();
    for (Container each : parcel.containers()) {
      Box room = parcel.room(each);
      String words = "Set '" + each.name() + "' (" + size(room) + " inside) " + where(room) + ". ";
      things.add(new Thing(each.name(), room, Optional.empty(), words + inside(each)));
    }
    for (PlacedWarmer each : parcel.warmers()) {
      Box box = box(each.name());
      String words =
          thing("'" + each.name() + "' (" + each.warmer().name() + ")", each.placement(), box);
      String film = film(each.cover());
      things.add(new Thing(each.name(), box, face(each.placement()), words + " " + film));
    }
    for (PlacedPack each : parcel.packs()) {
      Box box = box(each.name());
      String what = "'" + each.name() + "' (" + each.pack().name() + ", " + size(box) + ")";
      String words =
          thing(what, each.placement(), box) + " It goes in " + start(each.start()) + ".";
      things.add(new Thing(each.name(), box, face(each.placement()), words));
    }
    return things;
  }

  private Box box(String block) {
    return parcel.layout().block(block).box();
  }

  private String thing(String what, Placement placement, Box box) {
    if (placement instanceof Placement.OnFace on) {
      Mounting held = on.mounting();
      String how =
          held.standOff() > 0
              ? "Hold " + what + " " + figures.length(held.standOff()) + " off the "
              : "Tape " + what + " flat to the inside of the ";
      boolean middle = Math.abs(on.alongFirst()) < SAME && Math.abs(on.alongSecond()) < SAME;
      return how + side(on.face()) + ", " + (middle ? "in its middle" : where(box)) + ".";
    }
    return "Lay " + what + " " + where(box) + ".";
  }

  private static Optional<Face> face(Placement placement) {
    return placement instanceof Placement.OnFace on ? Optional.of(on.face()) : Optional.empty();
  }

  private String where(Box box) {
    double up = box.min().z() - cavity.min().z();
    double left = box.min().x() - cavity.min().x();
    double right = cavity.max().x() - box.max().x();
    double front = box.min().y() - cavity.min().y();
    double back = cavity.max().y() - box.max().y();
    return (up > SAME ? figures.length(up) + " above the floor inside, " : "on the floor inside, ")
        + apart("left", left, "right", right)
        + ", "
        + apart("front", front, "back", back);
  }

  private String apart(String one, double toOne, String other, double toOther) {
    return Math.abs(toOne - toOther) < SAME
        ? figures.length(Math.max(0, toOne)) + " from " + one + " and " + other
        : figures.length(Math.max(0, toOne))
            + " from "
            + one
            + " and "
            + figures.length(Math.max(0, toOther))
            + " from "
            + other;
  }

  private String inside(Container container) {
    List<String> layers =
        container.bedding().stream()
            .map(layer -> layer.name() + " " + figures.length(layer.thickness()))
            .toList();
    String bedding = layers.isEmpty() ? "" : " on " + String.join(", ", layers);
    return container
        .occupant()
        .map(
            who ->
                "In it: "
                    + who.animal().name()
                    + ", "
                    + figures.mass(who.body().mass())
                    + bedding
                    + ".")
        .orElse("Nobody is in it.");
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

  private String start(PackStart start) {
    return start instanceof PackStart.AtTemperature at
        ? "at " + figures.temperature(at.temperature())
        : "partly melted, as the file says";
  }

  /** For example "corrugated board 4 mm, EPS 20 19 mm on all sides", from outside to inside. */
  private String walls() {
    Map<String, List<String>> faces = new LinkedHashMap<>();
    for (Face face : FaceNames.all().values()) {
      String layers =
          parcel.walls().layersOf(face).stream()
              .map(this::layer)
              .collect(Collectors.joining(", then "));
      faces.computeIfAbsent(layers, none -> new ArrayList<>()).add(face.words());
    }
    if (faces.size() == 1) {
      return faces.keySet().iterator().next() + " on all sides";
    }
    return faces.entrySet().stream()
        .map(entry -> entry.getKey() + " on " + String.join(", ", entry.getValue()))
        .collect(Collectors.joining("; "));
  }

  private String layer(WallLayer layer) {
    return layer.material().name() + " " + figures.length(layer.thickness());
  }

  private String holes() {
    return parcel.openings().vents().stream().map(this::holes).collect(Collectors.joining(" and "));
  }

  private String holes(Vent vent) {
    return vent.count()
        + (vent.count() == 1 ? " hole of " : " holes of ")
        + figures.length(vent.diameter())
        + " in the "
        + side(vent.face());
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

  private String fill() {
    return parcel.filling().fill().map(fill -> fill.name()).orElse("");
  }

  private String size(Box box) {
    return figures.size(box.size(Axis.X), box.size(Axis.Y), box.size(Axis.Z));
  }
}
