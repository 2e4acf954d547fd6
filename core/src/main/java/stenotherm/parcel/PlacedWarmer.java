package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Box;
import stenotherm.warmer.Bench;
import stenotherm.warmer.BenchRun;
import stenotherm.warmer.IronPowder;
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
   * When warmers are opened as a rule, so that they are warm to the hand at sealing: half an hour
   * before [s]. Common practice, no source.
   */
  public static final double USUALLY_OPENED = -1800;

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
   * Another warmer in the same place.
   *
   * @param other which warmer
   * @return the changed warmer
   */
  public PlacedWarmer with(WarmerClass other) {
    return new PlacedWarmer(name, other, placement, opened, cover);
  }

  /**
   * The same warmer elsewhere.
   *
   * @param other where it lies
   * @return the changed warmer
   */
  public PlacedWarmer at(Placement other) {
    return new PlacedWarmer(name, warmer, other, opened, cover);
  }

  /**
   * The same warmer with its film covered otherwise.
   *
   * @param other what covers it
   * @return the changed warmer
   */
  public PlacedWarmer covered(FilmCover other) {
    return new PlacedWarmer(name, warmer, placement, opened, other);
  }

  /**
   * The same, opened at another time.
   *
   * @param other when it is opened, in time since sealing [s]; negative if before
   * @return the changed warmer
   * @throws stenotherm.base.InvalidInputException if the time is not finite
   */
  public PlacedWarmer openedAt(double other) {
    return new PlacedWarmer(name, warmer, placement, other, cover);
  }

  /**
   * Returns the power that follows a curve.
   *
   * @return power over the time since sealing [W against s], zero before the warmer is opened; zero
   *     throughout where power depends on air or temperature: iron powder, controlled heaters
   */
  public TimeFunction prescribedPower() {
    return warmer.heat() instanceof PrescribedPower prescribed
        ? new ShiftedFunction(prescribed.power(), opened)
        : TimeFunction.constant(0);
  }

  /**
   * Returns the state at sealing: that of a warmer that has lain open on a table since it was
   * opened, or of a cold one.
   *
   * @param room temperature of the room, and of all that is packed [K]
   * @return temperature, heat and conversion
   * @throws stenotherm.base.InvalidInputException if the temperature is out of its range
   */
  public BenchRun.BenchState atSealing(double room) {
    return burnsBeforeSealing()
        ? Bench.onTable(room).opened(warmer, -opened).state()
        : new BenchRun.BenchState(room, 0, 0);
  }

  /**
   * Tells whether it is warmer than the rest at sealing.
   *
   * @return true for iron powder that was opened before and that air reaches
   */
  public boolean burnsBeforeSealing() {
    return opened < 0 && cover.open() > 0 && warmer.heat() instanceof IronPowder;
  }

  Item item(Box cavity) {
    WarmerClass.PadSize size = warmer.size();
    Dimensions pad = new Dimensions(size.length(), size.width(), size.thickness());
    return new Item(name, placement.box(pad, cavity));
  }
}
