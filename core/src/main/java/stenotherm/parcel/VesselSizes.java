package stenotherm.parcel;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.MessageText;
import stenotherm.base.Range;
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

  /** A cup whose volume is left out. */
  private static final Pattern CUP_ALONE =
      Pattern.compile("(?i)(?:deli|plastic|lidded|round)?\\s*(?:cup|container|tub)");

  /** A cup as its users call it; ounces of a cup are fluid ones. */
  private static final Pattern CUP =
      Pattern.compile(
          "(?i)([0-9]*\\.?[0-9]+)[\\s-]*(?:fl(?:uid)?\\.?\\s*)?(?:oz|ounces?)\\.?"
              + "(?:\\s+(?:deli|plastic|insect))*(?:\\s+(?:cup|container|tub))?");

  /** A cup by its volume in metric units. */
  private static final Pattern METRIC_CUP =
      Pattern.compile(
          "(?i)([0-9]*\\.?[0-9]+)\\s*(?:(mls?|millilit(?:er|re)s?)|(l|lit(?:er|re)s?))"
              + "(?:\\s+deli)?(?:\\s+(?:cup|container|tub))?");

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[0-9]+,[0-9]+\\s*\\p{L}.*");

  private static final int LONGEST_SHOWN = 40;

  /** Volumes of cups that are taken from their volume alone [l]: assumed. */
  private static final Range LITRES = new Range(0.02, 5);

  private static final WallLayer CUP_WALL = new WallLayer(Materials.POLYPROPYLENE, 0.0005);
  private static final WallLayer VIAL_WALL = new WallLayer(Materials.POLYSTYRENE, 0.0012);
  private static final WallLayer CLOTH = new WallLayer(Materials.COTTON_CLOTH, 0.0005);

  private static final Source CUPS =
      Source.practice(
          "Round deli cups are named by their volume; mean inner diameter as usual in the trade,"
              + " height derived from the volume, wall of 0.5 mm assumed");

  private static final Source CUPS_OF_ANY_VOLUME =
      Source.assumed(
          "shaped like the usual round deli cups: mean inner diameter between those of the next"
              + " smaller and the next larger one, height derived from the volume, wall of 0.5 mm");

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

  private static final List<VesselSize> METRIC =
      Stream.concat(
              IntStream.of(50, 100, 250, 500, 750, 1000)
                  .mapToObj(millilitres -> metricCup(millilitres / 1000.0)),
              ALL.stream().filter(each -> !isRoundCup(each)))
          .toList();

  private VesselSizes() {}

  private static boolean isRoundCup(VesselSize size) {
    return size.vessel() instanceof Vessel.RoundCup;
  }

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

  /** A round cup of a volume [l]. */
  private static VesselSize metricCup(double litres) {
    double volume = Volumes.fromLitres(litres);
    double diameter = diameter(volume);
    return new VesselSize(
        Checks.show(1000 * litres, "ml"),
        new Vessel.RoundCup(diameter, height(volume, diameter), CUP_WALL),
        CUPS_OF_ANY_VOLUME);
  }

  /**
   * Mean diameter of a round cup [m]: between those of the usual cups in a straight line over the
   * volume; smaller and larger ones have the proportions of the smallest and the largest.
   */
  private static double diameter(double volume) {
    List<Vessel.RoundCup> cups =
        ALL.stream()
            .filter(VesselSizes::isRoundCup)
            .map(each -> (Vessel.RoundCup) each.vessel())
            .toList();
    Vessel.RoundCup smaller = cups.get(0);
    if (volume < smaller.volume()) {
      return scaled(smaller, volume);
    }
    for (Vessel.RoundCup larger : cups.subList(1, cups.size())) {
      if (volume <= larger.volume()) {
        double part = (volume - smaller.volume()) / (larger.volume() - smaller.volume());
        return smaller.diameter() + part * (larger.diameter() - smaller.diameter());
      }
      smaller = larger;
    }
    return scaled(smaller, volume);
  }

  private static double scaled(Vessel.RoundCup cup, double volume) {
    return cup.diameter() * StrictMath.cbrt(volume / cup.volume());
  }

  /** A round cup of the list, or one of another volume [fl oz]. */
  private static VesselSize fluidOunceCup(double ounces, String given) {
    String name = Checks.show(ounces, "fl oz");
    Optional<VesselSize> listed = ALL.stream().filter(each -> each.name().equals(name)).findFirst();
    if (listed.isPresent()) {
      return listed.get();
    }
    double volume = Volumes.fromFluidOunces(ounces);
    requireCup(volume / Volumes.fromLitres(1), given);
    double diameter = diameter(volume);
    return new VesselSize(
        name,
        new Vessel.RoundCup(diameter, height(volume, diameter), CUP_WALL),
        CUPS_OF_ANY_VOLUME);
  }

  private static void requireCup(double litres, String given) {
    if (!LITRES.contains(litres)) {
      throw new InvalidInputException(
          "vessel",
          MessageText.of(given, LONGEST_SHOWN)
              + " must lie between 20 ml and 5 l (0.7 and 169 fl oz); write the inner size of"
              + " another, such as 100 x 60 mm");
    }
  }

  private static VesselSize vial(int fluidDrams, int millimetres) {
    double diameter = Lengths.fromMillimetres(millimetres);
    double length = height(fluidDrams * FLUID_DRAM, diameter);
    return new VesselSize(
        fluidDrams + " dram vial", new Vessel.Vial(diameter, length, Axis.Z, VIAL_WALL), VIALS);
  }

  /**
   * Returns all sizes with names of their own.
   *
   * @return round cups by the fluid ounce, vials (standing), boxes and bags; unmodifiable
   */
  public static List<VesselSize> all() {
    return ALL;
  }

  /**
   * Returns sizes for those who measure in metric units.
   *
   * @return some round cups by the millilitre, of which {@link #named} knows any, and all of {@link
   *     #all} but the cups by the fluid ounce; unmodifiable
   */
  public static List<VesselSize> metric() {
    return METRIC;
  }

  /**
   * Finds a vessel by its name, without regard to case. A round cup may be called as its users call
   * it, and be one of any volume from 20 ml to 5 l.
   *
   * @param name for example {@code "8 fl oz"}, {@code "5.5 oz deli cup"}, {@code "500 ml"} or
   *     {@code "0.5 l cup"}
   * @return the size
   * @throws stenotherm.base.InvalidInputException if there is none; it offers the closest name
   */
  public static VesselSize named(String name) {
    String stripped = Checks.given("vessel", name).strip();
    Matcher metric = METRIC_CUP.matcher(stripped);
    if (metric.matches()) {
      double litres = Double.parseDouble(metric.group(1)) / (metric.group(2) == null ? 1 : 1000);
      requireCup(litres, stripped);
      return metricCup(litres);
    }
    if (DECIMAL_COMMA.matcher(stripped).matches()) {
      throw new InvalidInputException(
          "vessel",
          "\""
              + MessageText.of(stripped, LONGEST_SHOWN)
              + "\" has a comma, write a point as the decimal mark, as in 0.5 l");
    }
    Matcher cup = CUP.matcher(stripped);
    if (cup.matches()) {
      return fluidOunceCup(Double.parseDouble(cup.group(1)), stripped);
    }
    if (CUP_ALONE.matcher(stripped).matches()) {
      throw new InvalidInputException(
          "vessel",
          "\""
              + stripped
              + "\" may be of any size, write its volume before it, as in 16 oz deli cup");
    }
    return Suggestions.find("vessel", name, ALL, VesselSize::name);
  }
}
