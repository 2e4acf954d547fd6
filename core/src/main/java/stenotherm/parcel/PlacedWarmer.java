package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Box;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;

/**
 * A warmer in its place.
 *
 * <p>A value, thus thread-safe.
 *
 * @param name name, unique in a parcel
 * @param warmer which warmer
 * @param placement where it lies
 * @param opened when it was opened, in time since sealing [s]; negative if before
 * @param cover what covers the film through which it takes its air
 */
public record PlacedWarmer(
    String name, WarmerClass warmer, Placement placement, double opened, FilmCover cover) {
  /**
   * A warmer whose film is free.
   *
   * @param name name, unique in a parcel
   * @param warmer which warmer
   * @param placement where it lies
   * @param opened when it was opened, in time since sealing [s]; negative if before
   * @throws stenotherm.base.InvalidInputException if the name is blank or the time is not finite
   */
  public PlacedWarmer(String name, WarmerClass warmer, Placement placement, double opened) {
    this(name, warmer, placement, opened, FilmCover.FREE);
  }

  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank or the time is not finite
   */
  public PlacedWarmer {
    Checks.given("name", name);
    Checks.given("warmer", warmer);
    Checks.given("placement", placement);
    Checks.given("film cover", cover);
    Checks.name("warmer name", name);
    Checks.finite("opening time of warmer '" + name + "'", opened, "s");
  }

  /**
   * A warmer in the middle of an inner face.
   *
   * @param name name, unique in a parcel
   * @param warmer which warmer
   * @param face the face whose inner side carries it
   * @param mounting how it is held there
   * @param opened when it was opened, in time since sealing [s]; negative if before
   * @throws stenotherm.base.InvalidInputException if the name is blank or the time is not finite
   */
  public PlacedWarmer(
      String name, WarmerClass warmer, Face face, Mounting mounting, double opened) {
    this(name, warmer, Placement.onFace(face, mounting), opened);
  }

  /**
   * Returns the power that follows a curve.
   *
   * @return power over the time since sealing [W against s], zero before the warmer is opened; zero
   *     throughout for iron powder, whose power depends on air and temperature
   */
  public TimeFunction prescribedPower() {
    return warmer.heat() instanceof PrescribedPower prescribed
        ? new ShiftedFunction(prescribed.power(), opened)
        : TimeFunction.constant(0);
  }

  Item item(Box cavity) {
    WarmerClass.PadSize size = warmer.size();
    Dimensions pad = new Dimensions(size.length(), size.width(), size.thickness());
    return new Item(name, placement.box(pad, cavity));
  }
}
