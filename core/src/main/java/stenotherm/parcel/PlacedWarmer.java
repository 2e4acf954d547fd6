package stenotherm.parcel;

import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.warmer.WarmerClass;

/**
 * A warmer on an inner face, centred on it.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param name name, unique in a parcel
 * @param warmer which warmer
 * @param face the face whose inner side carries it
 * @param mounting how it is held there
 * @param opened when it was opened, in time since sealing [s]; negative if before
 */
public record PlacedWarmer(
    String name, WarmerClass warmer, Face face, Mounting mounting, double opened) {
  /**
   * How a warmer is held on a wall.
   *
   * @param standOff gap between wall and warmer, filled with fill [m], 0 if it touches
   * @param contactResistance resistance of unit area between a touching warmer and the wall [m2
   *     K/W]
   */
  public record Mounting(double standOff, double contactResistance) {
    /**
     * Checks the numbers.
     *
     * @throws stenotherm.base.InvalidInputException if one is negative or not finite
     */
    public Mounting {
      Checks.notNegative("stand-off of a warmer", standOff, "m");
      Checks.notNegative("contact resistance of a warmer", contactResistance, "m2 K/W");
    }

    /**
     * Taped flat to the wall: 0.02 m2 K/W for cloth, film and trapped air, assumed.
     *
     * @return the mounting
     */
    public static Mounting taped() {
      return new Mounting(0, 0.02);
    }

    /**
     * Held off the wall by a spacer.
     *
     * @param gap gap filled with fill [m], above 0
     * @return the mounting
     */
    public static Mounting standingOff(double gap) {
      return new Mounting(Checks.positive("stand-off of a warmer", gap, "m"), 0);
    }
  }

  /**
   * Checks the parts.
   *
   * @throws stenotherm.base.InvalidInputException if the name is blank or the time is not finite
   */
  public PlacedWarmer {
    Checks.name("warmer name", name);
    Checks.finite("opening time of warmer '" + name + "'", opened, "s");
  }

  /**
   * Returns the power over the time since sealing.
   *
   * @return power [W against s], zero before it is opened
   */
  public TimeFunction power() {
    TimeFunction curve = warmer.power();
    return new ShiftedFunction(curve, opened);
  }

  Item item(Box cavity) {
    WarmerClass.PadSize size = warmer.size();
    Axis normal = face.axis();
    Axis first = normal == Axis.X ? Axis.Y : Axis.X;
    Axis second = normal == Axis.Z ? Axis.Y : Axis.Z;
    boolean longerFirst = cavity.size(first) >= cavity.size(second);
    double[] half = new double[3];
    half[first.ordinal()] = (longerFirst ? size.length() : size.width()) / 2;
    half[second.ordinal()] = (longerFirst ? size.width() : size.length()) / 2;
    half[normal.ordinal()] = size.thickness() / 2;
    double[] centre = {cavity.centre().x(), cavity.centre().y(), cavity.centre().z()};
    double depth = mounting.standOff() + size.thickness() / 2;
    centre[normal.ordinal()] = cavity.at(face) + (face.isMax() ? -depth : depth);
    double[] min = new double[3];
    double[] max = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      min[axis] = centre[axis] - half[axis];
      max[axis] = centre[axis] + half[axis];
    }
    if (mounting.standOff() == 0) {
      // the pad ends on the wall to the last digit
      (face.isMax() ? max : min)[normal.ordinal()] = cavity.at(face);
    }
    return new Item(
        name, new Box(new Point(min[0], min[1], min[2]), new Point(max[0], max[1], max[2])));
  }
}
