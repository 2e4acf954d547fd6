package stenotherm.animal;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.material.Material;

/**
 * An animal's body as the heat model sees it: a box of tissue with the animal's mass.
 *
 * <p>The box has the volume of the tissue, so it is smaller than the space that legs, tail and
 * coils enclose; a rounded body of equal volume has up to a fifth less surface.
 *
 * <p>A value, thus thread-safe.
 *
 * @param mass mass [kg], 0.0001 to 20
 * @param proportions shape of the resting body
 */
public record AnimalBody(double mass, Proportions proportions) {
  /** Masses that the model is meant for [kg]. */
  public static final Range MASSES = new Range(0.0001, 20);

  /**
   * Checks the mass.
   *
   * @throws InvalidInputException if the mass is out of its range
   */
  public AnimalBody {
    Checks.given("proportions of an animal", proportions);
    Checks.mass("animal mass", mass, MASSES, "");
  }

  /**
   * Returns the volume of the body.
   *
   * @param tissue what it is made of
   * @return mass over density [m3]
   */
  public double volume(Material tissue) {
    return mass / tissue.density();
  }

  /**
   * Returns the extents of the box that has the body's volume and proportions.
   *
   * @param tissue what it is made of
   * @return length, width and height [m]
   */
  public Extents extents(Material tissue) {
    double unitVolume = proportions.length() * proportions.width() * proportions.height();
    double scale = StrictMath.cbrt(volume(tissue) / unitVolume);
    return new Extents(
        scale * proportions.length(), scale * proportions.width(), scale * proportions.height());
  }

  /**
   * The extents of a body's box.
   *
   * @param length along the parcel's x [m]
   * @param width along the parcel's y [m]
   * @param height upwards [m]
   */
  public record Extents(double length, double width, double height) {}
}
