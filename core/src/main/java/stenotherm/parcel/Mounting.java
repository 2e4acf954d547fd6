package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;

/**
 * How a warmer or a pack is held on a wall.
 *
 * <p>A value, thus thread-safe.
 *
 * @param standOff gap between wall and warmer or pack, filled like the rest of the cavity [m], 0 if
 *     it touches
 * @param contactResistance resistance of unit area between the wall and what touches it [m2 K/W]
 */
public record Mounting(double standOff, double contactResistance) {
  /**
   * Checks the numbers.
   *
   * @throws InvalidInputException if one is negative or not finite, or a contact resistance is
   *     given together with a stand-off
   */
  public Mounting {
    Checks.notNegative("stand-off", standOff, "m");
    Checks.notNegative("contact resistance", contactResistance, "m2 K/W");
    if (standOff > 0 && contactResistance > 0) {
      throw new InvalidInputException(
          "contact resistance",
          Checks.show(contactResistance, "m2 K/W")
              + " means nothing at a stand-off of "
              + Checks.show(standOff, "m")
              + ": it does not touch");
    }
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
   * @param gap gap filled like the rest of the cavity [m], above 0
   * @return the mounting
   * @throws InvalidInputException if the gap is not a finite number above 0
   */
  public static Mounting standingOff(double gap) {
    return new Mounting(Checks.positive("stand-off", gap, "m"), 0);
  }
}
