package stenotherm.parcel;

import java.util.List;
import java.util.stream.Stream;
import stenotherm.base.Lengths;
import stenotherm.base.Suggestions;

/**
 * Sizes of cartons that are usual, by the inch and by the centimetre. Others are made by {@link
 * BoxSize#carton}.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class BoxSizes {
  private static final List<BoxSize> ALL =
      List.of(
          inches(6, 6, 6),
          inches(7, 7, 6),
          inches(7, 7, 7),
          inches(8, 6, 4),
          inches(8, 8, 7),
          inches(8, 8, 8),
          inches(10, 8, 6),
          inches(10, 10, 8),
          inches(12, 9, 6),
          inches(12, 10, 8),
          inches(12, 12, 12),
          inches(14, 12, 8),
          inches(16, 12, 10));

  private static final List<BoxSize> METRIC =
      List.of(
          centimetres(15, 15, 15),
          centimetres(20, 15, 15),
          centimetres(20, 20, 15),
          centimetres(25, 20, 15),
          centimetres(20, 20, 20),
          centimetres(30, 20, 15),
          centimetres(30, 20, 20),
          centimetres(25, 25, 20),
          centimetres(25, 25, 25),
          centimetres(30, 30, 20),
          centimetres(35, 25, 25),
          centimetres(30, 30, 30),
          centimetres(40, 30, 30));

  private static final List<BoxSize> BOTH = Stream.concat(ALL.stream(), METRIC.stream()).toList();

  private BoxSizes() {}

  private static BoxSize inches(int length, int width, int height) {
    return BoxSize.carton(
        length + " x " + width + " x " + height + " in carton",
        new Dimensions(
            Lengths.fromInches(length), Lengths.fromInches(width), Lengths.fromInches(height)));
  }

  private static BoxSize centimetres(int length, int width, int height) {
    return BoxSize.carton(
        length + " x " + width + " x " + height + " cm carton",
        new Dimensions(length / 100.0, width / 100.0, height / 100.0));
  }

  /**
   * Returns the sizes that are usual where cartons are sold by the inch.
   *
   * @return all sizes by the inch, the smallest first; unmodifiable
   */
  public static List<BoxSize> all() {
    return ALL;
  }

  /**
   * Returns the sizes that are usual where cartons are sold by the centimetre.
   *
   * @return all sizes by the centimetre, the smallest first; unmodifiable
   */
  public static List<BoxSize> metric() {
    return METRIC;
  }

  /**
   * Finds a size of either list by its name, without regard to case.
   *
   * @param name for example {@code "8 x 8 x 7 in carton"}
   * @return the size
   * @throws stenotherm.base.InvalidInputException if there is none; it offers the closest name
   */
  public static BoxSize named(String name) {
    return Suggestions.find("box size", name, BOTH, BoxSize::name);
  }
}
