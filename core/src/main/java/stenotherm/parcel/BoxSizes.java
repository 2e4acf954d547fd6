package stenotherm.parcel;

import java.util.List;
import stenotherm.base.Lengths;
import stenotherm.base.Suggestions;

/**
 * Sizes of cartons that are usual. Others are made by {@link BoxSize#carton}.
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

  private BoxSizes() {}

  private static BoxSize inches(int length, int width, int height) {
    return BoxSize.carton(
        length + " x " + width + " x " + height + " in carton",
        new Dimensions(
            Lengths.fromInches(length), Lengths.fromInches(width), Lengths.fromInches(height)));
  }

  /**
   * Returns all sizes.
   *
   * @return all sizes, the smallest first; unmodifiable
   */
  public static List<BoxSize> all() {
    return ALL;
  }

  /**
   * Finds a size by its name, without regard to case.
   *
   * @param name for example {@code "8 x 8 x 7 in carton"}
   * @return the size
   * @throws stenotherm.base.InvalidInputException if there is none; it offers the closest name
   */
  public static BoxSize named(String name) {
    return Suggestions.find("box size", name, ALL, BoxSize::name);
  }
}
