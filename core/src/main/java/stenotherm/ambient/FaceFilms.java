package stenotherm.ambient;

import stenotherm.air.StandardAtmosphere;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.Radiation;
import stenotherm.base.Source;

/**
 * The surface coefficients of the six faces of a parcel, however it lies.
 *
 * <p>Heat that leaves through the upper face flows upward and meets a large coefficient; heat that
 * leaves through the lower one flows downward and meets a small one. When the surroundings are
 * warmer than the parcel the two change places, so the coefficient of a face depends on the sign of
 * the temperature difference.
 *
 * <p>A value, thus thread-safe.
 *
 * @param movement how the air moves along the faces
 * @param emissivity emissivity of the faces [-], 0.01 to 1
 * @param underside what the lowest face meets
 */
public record FaceFilms(AirMovement movement, double emissivity, Underside underside) {
  /** Emissivity of board and paper [-], {@link #BOARD_EMISSIVITY_SOURCE}. */
  public static final double BOARD_EMISSIVITY = 0.92;

  /** Where the emissivity of board comes from. */
  public static final Source BOARD_EMISSIVITY_SOURCE =
      Source.memory(
          "Incropera and DeWitt, Fundamentals of Heat and Mass Transfer",
          "Table A.11, paper 0.92 to 0.97");

  /**
   * Checks the emissivity.
   *
   * @throws InvalidInputException if it is out of its range
   */
  public FaceFilms {
    Checks.given("movement", movement);
    Checks.given("underside", underside);
    Radiation.emissivity(emissivity);
  }

  /**
   * A carton in still air on a hard floor.
   *
   * @return still air by ISO 6946, board, resting
   */
  public static FaceFilms indoors() {
    return new FaceFilms(AirMovement.STILL, BOARD_EMISSIVITY, Underside.Resting.onHardFloor());
  }

  /**
   * Returns the coefficient between a face of an upright parcel and the ambient temperature, at sea
   * level.
   *
   * @param face the face
   * @param surfaceTemperature temperature of the face [K]
   * @param ambientTemperature temperature of air and surroundings [K]; if equal to the surface's,
   *     heat is taken to leave the parcel
   * @return the coefficient [W/(m2 K)]
   * @throws InvalidInputException if a temperature is not absolute
   */
  public double coefficient(Face face, double surfaceTemperature, double ambientTemperature) {
    return coefficient(
        face,
        Orientation.LID_UP,
        surfaceTemperature,
        ambientTemperature,
        StandardAtmosphere.SEA_LEVEL_PRESSURE);
  }

  /**
   * Returns the coefficient between a face and the ambient temperature.
   *
   * @param face the face, named as if the parcel stood upright
   * @param orientation how the parcel lies; the face below is the one that rests
   * @param surfaceTemperature temperature of the face [K]
   * @param ambientTemperature temperature of air and surroundings [K]; if equal to the surface's,
   *     heat is taken to leave the parcel
   * @param pressure pressure of the air [Pa], 30 000 to 110 000
   * @return the coefficient [W/(m2 K)]
   * @throws InvalidInputException if a temperature is not absolute or the pressure is out of its
   *     range
   */
  public double coefficient(
      Face face,
      Orientation orientation,
      double surfaceTemperature,
      double ambientTemperature,
      double pressure) {
    Checks.temperature("surface temperature", surfaceTemperature);
    Checks.temperature("ambient temperature", ambientTemperature);
    if (rests(face, orientation)) {
      return 1 / underside.floorResistance().orElseThrow();
    }
    HeatDirection outward = orientation.outOf(face);
    HeatDirection heatFlow = ambientTemperature > surfaceTemperature ? outward.reversed() : outward;
    double mean = (surfaceTemperature + ambientTemperature) / 2;
    return SurfaceFilm.of(movement, heatFlow, emissivity, mean, pressure).coefficient();
  }

  /**
   * Tells whether a face lies on a floor, out of the air and the sun.
   *
   * @param face the face, named as if the parcel stood upright
   * @param orientation how the parcel lies
   * @return true for the face below unless the parcel lies open
   */
  public boolean rests(Face face, Orientation orientation) {
    return face == orientation.down() && underside.floorResistance().isPresent();
  }
}
