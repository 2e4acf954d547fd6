package stenotherm.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Lengths;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
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
import stenotherm.words.Units;

/** A packing as a scenario file has it, to paste; its containers are those that the file has. */
final class PackingBlock {
  private static final String NONE = "none";
  private static final double GRAMS = 1000;
  private static final double PERCENT = 100;

  /** Digits after the point: less than a micrometre, than a tenth of a millikelvin. */
  private static final int DIGITS = 5;

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

  /** Extents as a file has them. */
  static String size(Units units, double... extents) {
    return Arrays.stream(extents)
            .mapToObj(
                extent ->
                    number(
                        units == Units.US
                            ? Lengths.toInches(extent)
                            : Lengths.toMillimetres(extent)))
            .collect(Collectors.joining(" x "))
        + (units == Units.US ? " in" : " mm");
  }

  private void line(String key, String value) {
    block.append("    ").append(key).append(": ").append(value).append('\n');
  }

  private void walls(Parcel packed) {
    List<WallLayer> outermost = packed.walls().layersOf(Face.Z_MAX);
    int shells = shells(packed.walls());
    line("board", layers(outermost.subList(0, shells)));
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
    block.append("    warmers:\n");
    for (PlacedWarmer each : warmers) {
      List<String> keys = new ArrayList<>();
      keys.add("name: " + ScalarText.quoted(each.name()));
      List<String> place = new ArrayList<>();
      keys.add("warmer: " + each.warmer().name() + place(each.placement(), place));
      keys.addAll(place);
      keys.add(
          "opened: "
              + (each.opened() < 0
                  ? number(Times.toHours(-each.opened()) * 60) + " min before sealing"
                  : "at sealing"));
      if (each.cover() != FilmCover.FREE) {
        keys.add("film: " + each.cover().shortWords());
      }
      block.append("      - {").append(String.join(", ", keys)).append("}\n");
    }
  }

  private void packs(List<PlacedPack> packs) {
    if (packs.isEmpty()) {
      return;
    }
    block.append("    packs:\n");
    for (PlacedPack each : packs) {
      PackClass pack = each.pack();
      List<String> keys = new ArrayList<>();
      keys.add("name: " + ScalarText.quoted(each.name()));
      List<String> place = new ArrayList<>();
      keys.add("pack: " + pack.contents().name() + place(each.placement(), place));
      keys.addAll(place);
      keys.add(
          "size: " + size(units, pack.size().length(), pack.size().width(), pack.size().height()));
      keys.add("mass: " + number(GRAMS * pack.mass()) + " g");
      keys.add("wrap: " + number(pack.wrap()) + " m2 K/W");
      keys.add("start: " + start(each.start()));
      block.append("      - {").append(String.join(", ", keys)).append("}\n");
    }
  }

  private String start(PackStart start) {
    return start instanceof PackStart.PartlyMelted melted
        ? number(PERCENT * melted.liquidFraction()) + " % liquid"
        : temperature(((PackStart.AtTemperature) start).temperature(), units);
  }

  /**
   * Tells where something lies.
   *
   * @param keys where to put what tells more of the place
   * @return what follows the thing's name
   */
  private String place(Placement placement, List<String> keys) {
    if (placement instanceof Placement.OnFace there) {
      keys.add("offset: [" + length(there.alongFirst()) + ", " + length(there.alongSecond()) + "]");
      Mounting mounting = there.mounting();
      keys.add(
          mounting.standOff() > 0
              ? "stand-off: " + length(mounting.standOff())
              : "contact: " + number(mounting.contactResistance()) + " m2 K/W");
      return " on " + there.face().words();
    }
    Placement.InCavity loose = (Placement.InCavity) placement;
    Position at = loose.position();
    keys.add(
        "position: ["
            + length(at.alongX())
            + ", "
            + length(at.alongY())
            + ", "
            + length(at.aboveFloor())
            + "]");
    keys.add("thin: " + List.of("length", "width", "height").get(loose.thin().ordinal()));
    return "";
  }

  private String length(double metres) {
    return size(units, metres);
  }

  private static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DIGITS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
