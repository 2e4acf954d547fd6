package stenotherm.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Lengths;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.material.Materials;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Joints;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vent;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.text.ScalarText;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * A packing as a scenario file has it, to paste; its containers are those that the file has. What
 * the reader of scenarios would fill in just so is left out: people are to see what they must buy
 * and do.
 */
final class PackingBlock {
  private static final String NONE = "none";
  private static final double GRAMS = 1000;
  private static final double PERCENT = 100;

  /** Digits after the point: less than a nanometre, than a tenth of a millikelvin. */
  private static final int DIGITS = 6;

  /** Drills and rulers divide an inch into so many parts at most. */
  private static final int PARTS_OF_INCH = 64;

  /** What a length is off by, if it is the one that was meant [m]. */
  static final double ROUND_OFF = 1e-9;

  /** What the mass of a pack that is full is off by [-]. */
  private static final double FULL = 1e-4;

  /** What the reader of scenarios takes where a key is left out. */
  private static final List<WallLayer> USUAL_BOARD =
      List.of(new WallLayer(Materials.CORRUGATED_BOARD, 0.004));

  /** The keys of a warmer that a packing with a single one takes, too. */
  private static final Set<String> SINGLE =
      Set.of("warmer", "stand-off", "contact", "opened", "film");

  private final StringBuilder block = new StringBuilder();
  private final Units units;

  private PackingBlock(Units units) {
    this.units = units;
  }

  /**
   * Writes it.
   *
   * @param name the name that it gets
   * @param box the carton, or the outer size
   * @param packed the packing, with warmers of the catalogue
   * @param units of lengths and temperatures
   */
  static String of(String name, String box, Parcel packed, Units units) {
    PackingBlock writer = new PackingBlock(units);
    writer.block.append("  - name: ").append(ScalarText.quoted(name)).append('\n');
    writer.line("box", box);
    writer.walls(packed);
    writer.line("fill", packed.filling().fill().map(each -> each.name()).orElse("none"));
    writer.openings(packed.openings());
    writer.warmers(packed.warmers());
    writer.packs(packed.packs());
    return writer.block.toString();
  }

  /** A temperature as a file has it. */
  static String temperature(double kelvin, Units units) {
    return units == Units.US
        ? number(Temperatures.toFahrenheit(kelvin)) + " °F"
        : number(Temperatures.toCelsius(kelvin)) + " °C";
  }

  /**
   * Extents as a file has them: in the reader's unit if they are whole in it, else in the other one
   * if they are whole in that, else in millimetres and parts of them. Inches count as whole in
   * parts that a ruler has.
   */
  static String size(Units units, double... extents) {
    boolean inches = areWhole(Lengths.INCH / PARTS_OF_INCH, extents);
    if (inches && (units == Units.US || !areWhole(Lengths.fromMillimetres(1), extents))) {
      return Arrays.stream(extents)
              .mapToObj(
                  extent ->
                      (extent < 0 ? "-" : "")
                          + Figures.fraction(Math.abs(Lengths.toInches(extent)), PARTS_OF_INCH))
              .collect(Collectors.joining(" x "))
          + " in";
    }
    return Arrays.stream(extents)
            .mapToObj(extent -> number(Lengths.toMillimetres(extent)))
            .collect(Collectors.joining(" x "))
        + " mm";
  }

  private static boolean areWhole(double unit, double... lengths) {
    return Arrays.stream(lengths)
        .allMatch(length -> Math.abs(length - unit * Math.rint(length / unit)) <= ROUND_OFF);
  }

  private void line(String key, String value) {
    block.append("    ").append(key).append(": ").append(value).append('\n');
  }

  private void walls(Parcel packed) {
    List<WallLayer> outermost = packed.walls().layersOf(Face.Z_MAX);
    int shells = shells(packed.walls());
    List<WallLayer> board = outermost.subList(0, shells);
    if (!board.equals(USUAL_BOARD)) {
      line("board", layers(board));
    }
    Map<Face, String> inside = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      List<WallLayer> all = packed.walls().layersOf(face);
      inside.put(face, layers(all.subList(shells, all.size())));
    }
    String usual = inside.getOrDefault(Face.X_MIN, NONE);
    line("foam", usual);
    inside.forEach(
        (face, layers) -> {
          if (!layers.equals(usual)) {
            line(face.words(), layers);
          }
        });
    Joints joints = packed.walls().joints();
    if (joints.gap() > 0) {
      boolean sidesOver = joints.overlap().get(0) != Axis.Z;
      line(
          "joints",
          "{gap: "
              + length(joints.gap())
              + ", overlap: "
              + (sidesOver ? "sides over lid and floor" : "lid and floor over the sides")
              + "}");
    }
  }

  /**
   * How many of the outermost layers are written as board: those that joints leave out, which all
   * faces have alike; without joints one, if all have it.
   */
  private static int shells(Walls walls) {
    if (walls.joints().gap() > 0) {
      return walls.joints().firstShell();
    }
    WallLayer outermost = walls.layersOf(Face.Z_MAX).get(0);
    boolean alike =
        Arrays.stream(Face.values())
            .allMatch(face -> walls.layersOf(face).get(0).equals(outermost));
    return alike ? 1 : 0;
  }

  private String layers(List<WallLayer> layers) {
    if (layers.size() == 1) {
      return layer(layers.get(0));
    }
    return layers.isEmpty()
        ? NONE
        : layers.stream().map(this::layer).collect(Collectors.joining(", ", "[", "]"));
  }

  private String layer(WallLayer layer) {
    return layer.material().name() + " " + length(layer.thickness());
  }

  private void openings(Openings openings) {
    if (openings.seamGap() == 0) {
      line("seams", "taped");
    } else if (openings.seamGap() == Openings.LOOSE_GAP) {
      line("seams", "loose");
    }
    List<String> holes = new ArrayList<>();
    for (Vent vent : openings.vents()) {
      holes.add(vent.count() + " x " + length(vent.diameter()) + " on " + vent.face().words());
    }
    if (!holes.isEmpty()) {
      line("holes", "[" + String.join(", ", holes) + "]");
    }
  }

  private void warmers(List<PlacedWarmer> warmers) {
    if (warmers.isEmpty()) {
      return;
    }
    if (warmers.size() == 1) {
      Map<String, String> keys = keys(warmers.get(0), "warmer");
      // the only one has no key for its name, nor for where it lies but on a face's middle
      if (SINGLE.containsAll(keys.keySet())) {
        keys.forEach(this::line);
        return;
      }
    }
    block.append("    warmers:\n");
    for (int i = 0; i < warmers.size(); i++) {
      item(keys(warmers.get(i), "warmer " + (i + 1)));
    }
  }

  private void item(Map<String, String> keys) {
    block.append(
        keys.entrySet().stream()
            .map(key -> key.getKey() + ": " + key.getValue())
            .collect(Collectors.joining(", ", "      - {", "}\n")));
  }

  private Map<String, String> keys(PlacedWarmer warmer, String usualName) {
    Map<String, String> keys = new LinkedHashMap<>();
    if (!warmer.name().equals(usualName)) {
      keys.put("name", ScalarText.quoted(warmer.name()));
    }
    place("warmer", warmer.warmer().name(), warmer.placement(), keys);
    if (warmer.opened() != PlacedWarmer.USUALLY_OPENED) {
      keys.put(
          "opened",
          warmer.opened() < 0
              ? number(Times.toMinutes(-warmer.opened())) + " min before sealing"
              : "at sealing");
    }
    if (warmer.cover() != FilmCover.FREE) {
      keys.put("film", warmer.cover().shortWords());
    }
    return keys;
  }

  private void packs(List<PlacedPack> packs) {
    if (packs.isEmpty()) {
      return;
    }
    block.append("    packs:\n");
    for (int i = 0; i < packs.size(); i++) {
      PlacedPack each = packs.get(i);
      PackClass pack = each.pack();
      Map<String, String> keys = new LinkedHashMap<>();
      if (!each.name().equals("pack " + (i + 1))) {
        keys.put("name", ScalarText.quoted(each.name()));
      }
      place("pack", pack.contents().name(), each.placement(), keys);
      keys.put(
          "size", size(units, pack.size().length(), pack.size().width(), pack.size().height()));
      if (Math.abs(pack.mass() / (pack.size().volume() * pack.contents().density()) - 1) > FULL) {
        keys.put("mass", number(GRAMS * pack.mass()) + " g");
      }
      if (pack.wrap() > 0) {
        keys.put("wrap", number(pack.wrap()) + " m2 K/W");
      }
      keys.put("start", start(each.start()));
      item(keys);
    }
  }

  private String start(PackStart start) {
    return start instanceof PackStart.PartlyMelted melted
        ? number(PERCENT * melted.liquidFraction()) + " % liquid"
        : temperature(((PackStart.AtTemperature) start).temperature(), units);
  }

  /** Tells what something is and where it lies. */
  private void place(String noun, String what, Placement placement, Map<String, String> keys) {
    if (placement instanceof Placement.OnFace there) {
      keys.put(noun, what + " on " + there.face().words());
      if (there.alongFirst() != 0 || there.alongSecond() != 0) {
        keys.put("offset", lengths(there.alongFirst(), there.alongSecond()));
      }
      Mounting mounting = there.mounting();
      if (mounting.standOff() > 0) {
        keys.put("stand-off", length(mounting.standOff()));
      } else if (!mounting.equals(Mounting.taped())) {
        keys.put("contact", number(mounting.contactResistance()) + " m2 K/W");
      }
      return;
    }
    keys.put(noun, what);
    Placement.InCavity loose = (Placement.InCavity) placement;
    Position at = loose.position();
    keys.put("position", lengths(at.alongX(), at.alongY(), at.aboveFloor()));
    if (loose.thin() != Axis.Z) {
      keys.put("thin", List.of("length", "width", "height").get(loose.thin().ordinal()));
    }
  }

  private String lengths(double... metres) {
    return Arrays.stream(metres).mapToObj(this::length).collect(Collectors.joining(", ", "[", "]"));
  }

  private String length(double metres) {
    return size(units, metres);
  }

  private static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DIGITS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
