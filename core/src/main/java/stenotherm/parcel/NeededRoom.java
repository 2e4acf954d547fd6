package stenotherm.parcel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.grid.Box;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/**
 * How large the cavity of a parcel must be for what is to lie in it, each thing where it was put.
 * It is looked for only after something did not fit.
 */
final class NeededRoom {
  /** Far below the millimetre that is shown [m]. */
  private static final double CLOSE = 1e-6;

  /** What sizes may be found too large, lest a round number is shown as the next one [m]. */
  private static final double SLACK = 2 * CLOSE;

  private static final List<Material> BOARDS =
      List.of(Materials.CORRUGATED_BOARD, Materials.DOUBLE_WALL_BOARD);

  private final Function<Box, List<Item>> contents;
  private final double largest;

  /**
   * Room for some things.
   *
   * @param contents the things in their places in a cavity
   * @param largest the longest side that a box may have [m]
   */
  NeededRoom(Function<Box, List<Item>> contents, double largest) {
    this.contents = contents;
    this.largest = largest;
  }

  /** What does not fit into a cavity, in words; empty if all fits. */
  static Optional<String> fault(Box cavity, List<Item> items) {
    for (int index = 0; index < items.size(); index++) {
      Item item = items.get(index);
      for (Face face : Face.values()) {
        double excess = cavity.excess(item.box(), face);
        if (excess > Parcel.ROUND_OFF) {
          return Optional.of(
              "'"
                  + item.name()
                  + "' sticks out of the cavity at the "
                  + face.words()
                  + " by "
                  + LengthText.of(excess));
        }
      }
      for (Item other : items.subList(0, index)) {
        double depth = item.overlap(other);
        if (depth > Parcel.ROUND_OFF) {
          return Optional.of(
              "'" + item.name() + "' overlaps '" + other.name() + "' by " + LengthText.of(depth));
        }
      }
    }
    return Optional.empty();
  }

  /** Says what would do: a smallest cavity, and the smallest usual cartons with these walls. */
  String inWords(String subject, Walls walls) {
    double[] least = least();
    if (least.length == 0) {
      return "No larger box helps: move what does not fit";
    }
    String size =
        String.format(
            Locale.ROOT,
            "%s would fit into %.0f x %.0f x %.0f mm (%.1f x %.1f x %.1f in) inside",
            subject,
            Math.ceil(Lengths.toMillimetres(least[0] - SLACK)),
            Math.ceil(Lengths.toMillimetres(least[1] - SLACK)),
            Math.ceil(Lengths.toMillimetres(least[2] - SLACK)),
            tenthsUp(Lengths.toInches(least[0] - SLACK)),
            tenthsUp(Lengths.toInches(least[1] - SLACK)),
            tenthsUp(Lengths.toInches(least[2] - SLACK)));
    List<String> cartons = new ArrayList<>();
    smallest(BoxSizes.all(), walls).ifPresent(cartons::add);
    smallest(BoxSizes.metric(), walls).ifPresent(cartons::add);
    return cartons.isEmpty()
        ? size
        : size + ", such as a carton of " + String.join(" or ", cartons);
  }

  /**
   * A smallest cavity: as narrow as can be, then as short, then as low. There are others, as pads
   * turn with the longer side of a wall. Empty if not even the largest has room.
   */
  private double[] least() {
    double[] size = {largest, largest, largest};
    if (!fits(size)) {
      return new double[0];
    }
    for (Axis axis : List.of(Axis.Y, Axis.X, Axis.Z)) {
      double low = 0;
      while (size[axis.ordinal()] - low > CLOSE) {
        double[] tried = size.clone();
        tried[axis.ordinal()] = (low + size[axis.ordinal()]) / 2;
        if (fits(tried)) {
          size = tried;
        } else {
          low = tried[axis.ordinal()];
        }
      }
    }
    return size;
  }

  private boolean fits(double[] size) {
    return fits(Box.ofSize(size[0], size[1], size[2]));
  }

  private boolean fits(Box cavity) {
    return fault(cavity, contents.apply(cavity)).isEmpty();
  }

  /** The smallest carton in which all fits within these walls, if their outermost layer is one. */
  private Optional<String> smallest(List<BoxSize> sizes, Walls walls) {
    boolean isCarton =
        walls.layers().values().stream()
            .allMatch(layers -> BOARDS.contains(layers.get(0).material()));
    return sizes.stream()
        .filter(size -> isCarton && fits(size, walls))
        .min(Comparator.comparingDouble(size -> size.inside().volume()))
        .map(size -> size.name().replace(" carton", ""));
  }

  private boolean fits(BoxSize size, Walls walls) {
    try {
      return fits(walls.inside(size.outer(walls), walls.shells()));
    } catch (InvalidInputException walled) {
      return false;
    }
  }

  private static double tenthsUp(double value) {
    return Math.ceil(10 * value) / 10;
  }
}
