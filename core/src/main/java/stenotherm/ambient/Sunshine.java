package stenotherm.ambient;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;

/**
 * Sun and sky on the faces of a parcel, in directions of the world: those in which the faces of an
 * upright parcel look, usually x to the east and y to the north. Which face of the parcel looks
 * there follows from its orientation.
 *
 * <p>A value, thus thread-safe.
 *
 * @param irradiance sunlight that falls on a plane of each direction, direct, diffuse and reflected
 *     [W/m2 against s]; directions not named get none
 * @param absorptance of the parcel's outside
 * @param skyLoss what a black face that looks up loses to the sky beyond its loss to surroundings
 *     as warm as the air [W/m2], 0 to 150; see {@link SolAir#CLEAR_SKY_LOSS}
 */
public record Sunshine(
    Map<Face, TimeFunction> irradiance, SolarAbsorptance absorptance, double skyLoss) {
  // before the constant, whose constructor uses it
  private static final Range SKY_LOSSES = new Range(0, 150);

  /** No sun, and a roof or cloud above. */
  public static final Sunshine NONE = new Sunshine(Map.of(), SolarAbsorptance.KRAFT_BOARD, 0);

  /**
   * Copies the map and checks the values.
   *
   * @throws InvalidInputException if the loss is out of its range, or the irradiance is negative in
   *     a row of a table or as a constant
   */
  public Sunshine {
    Checks.given("irradiance", irradiance);
    Checks.given("absorptance", absorptance);
    Checks.within(
        "loss to the sky", skyLoss, SKY_LOSSES, "W/m2", "A clear sky takes about 63 W/m2.");
    Map<Face, TimeFunction> copy = new EnumMap<>(Face.class);
    copy.putAll(irradiance);
    copy.forEach((face, sun) -> Checks.notNegative("irradiance on " + face.label(), sun, "W/m2"));
    irradiance = Collections.unmodifiableMap(copy);
  }

  /**
   * Sunlight on one direction only.
   *
   * @param world the direction
   * @param irradiance sunlight that falls on it [W/m2 against s]
   * @param absorptance of the parcel's outside
   * @return the sunshine, without a loss to the sky
   */
  public static Sunshine on(Face world, TimeFunction irradiance, SolarAbsorptance absorptance) {
    return new Sunshine(Map.of(world, irradiance), absorptance, 0);
  }

  /**
   * Tells whether there is neither sun nor a loss to the sky.
   *
   * @return true if nothing changes the ambient temperature
   */
  public boolean isNone() {
    return irradiance.isEmpty() && skyLoss == 0;
  }
}
