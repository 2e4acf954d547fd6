package stenotherm.parcel;

import java.util.List;
import java.util.regex.Pattern;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Lengths;
import stenotherm.base.Source;
import stenotherm.base.Suggestions;
import stenotherm.base.Volumes;
import stenotherm.material.Materials;

/**
 * Cups, vials, boxes and bags that people know.
 *
 * <p>Round vessels are cylinders of the volume in their name: the mean diameter is common practice,
 * the height follows. Real cups taper, and hold a little more to the brim.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class VesselSizes {
  /** One US fluid dram [m3]: an eighth of a fluid ounce. */
  private static final double FLUID_DRAM = Volumes.US_FLUID_OUNCE / 8;

  /** A cup as its users call it; ounces of a cup are fluid ones. */
  private static final Pattern CUP =
      Pattern.compile(
          "(?i)^([0-9]+)\\s*(?:fl\\s*)?(?:oz|ounces?)(?:\\s+deli)?(?:\\s+(?:cup|container|tub))?$");

  private static final WallLayer CUP_WALL = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
  private static final WallLayer VIAL_WALL = new WallLayer(Materials.POLYSTYRENE, 0.0012);
  private static final WallLayer CLOTH = new WallLayer(Materials.COTTON_CLOTH, 0.0005);

  private static final Source CUPS =
      Source.practice(
          "Round deli cups are named by their volume; mean inner diameter as usual in the trade,"
              + " height derived from the volume, wall of 0.5 mm assumed");

  private static final Source VIALS =
      Source.practice(
          "Vials are named by their volume in fluid drams; inner diameter as usual in the trade,"
              + " length derived from the volume, wall of 1.2 mm assumed");

  private static final Source BOXES =
      Source.practice("Lidded plastic boxes of about this size are usual; wall of 0.5 mm assumed");

  private static final Source BAGS =
      Source.practice(
          "Cotton bags for snakes and lizards; extents of the tied bag and cloth of 0.5 mm"
              + " assumed");

  private static final List<VesselSize> ALL =
      List.of(
          cup(2, 52),
          cup(4, 62),
          cup(8, 95),
          cup(12, 98),
          cup(16, 100),
          cup(24, 102),
          cup(32, 105),
          vial(9, 27),
          vial(16, 34),
          vial(40, 47),
          new VesselSize(
              "small lidded box", new Vessel.BoxCup(millimetres(110, 80, 60), CUP_WALL), BOXES),
          new VesselSize(
              "large lidded box", new Vessel.BoxCup(millimetres(180, 110, 75), CUP_WALL), BOXES),
          new VesselSize("small cloth bag", new Vessel.Bag(millimetres(120, 90, 50), CLOTH), BAGS),
          new VesselSize(
              "large cloth bag", new Vessel.Bag(millimetres(220, 160, 80), CLOTH), BAGS));

  private VesselSizes() {}

  private static Dimensions millimetres(int length, int width, int height) {
    return new Dimensions(
        Lengths.fromMillimetres(length),
        Lengths.fromMillimetres(width),
        Lengths.fromMillimetres(height));
  }

  private static double height(double volume, double diameter) {
    return volume / (Math.PI / 4 * diameter * diameter);
  }

  private static VesselSize cup(int fluidOunces, int millimetres) {
    double diameter = Lengths.fromMillimetres(millimetres);
    double height = height(Volumes.fromFluidOunces(fluidOunces), diameter);
    return new VesselSize(
        fluidOunces + " fl oz", new Vessel.RoundCup(diameter, height, CUP_WALL), CUPS);
  }

  private static VesselSize vial(int fluidDrams, int millimetres) {
    double diameter = Lengths.fromMillimetres(millimetres);
    double length = height(fluidDrams * FLUID_DRAM, diameter);
    return new VesselSize(
        fluidDrams + " dram vial", new Vessel.Vial(diameter, length, Axis.Z, VIAL_WALL), VIALS);
  }

  /**
   * Returns all sizes.
   *
   * @return round cups, vials (standing), boxes and bags; unmodifiable
   */
  public static List<VesselSize> all() {
    return ALL;
  }

  /**
   * Finds a vessel by its name, without regard to case. A round cup may be called as its users call
   * it.
   *
   * @param name for example {@code "8 fl oz"} or {@code "8 oz deli cup"}
   * @return the size
   * @throws stenotherm.base.InvalidInputException if there is none; it offers the closest name
   */
  public static VesselSize named(String name) {
    String plain = CUP.matcher(Checks.given("vessel", name).strip()).replaceFirst("$1 fl oz");
    boolean isCup = ALL.stream().anyMatch(each -> each.name().equals(plain));
    return Suggestions.find("vessel", isCup ? plain : name, ALL, VesselSize::name);
  }
}
