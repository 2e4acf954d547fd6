package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Radiation;

class FaceFilmsTest {
  private static final FaceFilms RAISED =
      new FaceFilms(AirMovement.STILL, 0.9, new Underside.Open());

  private static double still(HeatDirection heatFlow) {
    return SurfaceFilm.of(AirMovement.STILL, heatFlow, 0.9, 288.15).coefficient();
  }

  @Test
  void aWarmParcelLosesHeatUpwardThroughItsLid() {
    assertEquals(still(HeatDirection.UPWARD), RAISED.coefficient(Face.Z_MAX, 293.15, 283.15));
    assertEquals(still(HeatDirection.DOWNWARD), RAISED.coefficient(Face.Z_MIN, 293.15, 283.15));
    assertEquals(still(HeatDirection.HORIZONTAL), RAISED.coefficient(Face.X_MIN, 293.15, 283.15));
  }

  @Test
  void aColdParcelTakesHeatDownwardThroughItsLid() {
    assertEquals(still(HeatDirection.DOWNWARD), RAISED.coefficient(Face.Z_MAX, 283.15, 293.15));
    assertEquals(still(HeatDirection.UPWARD), RAISED.coefficient(Face.Z_MIN, 283.15, 293.15));
    assertEquals(still(HeatDirection.HORIZONTAL), RAISED.coefficient(Face.Y_MAX, 283.15, 293.15));
  }

  @Test
  void aRestingFaceHasTheResistanceOfItsFloor() {
    FaceFilms films = FaceFilms.indoors();
    assertEquals(12.5, films.coefficient(Face.Z_MIN, 293.15, 283.15), 1e-12);
    assertEquals(12.5, films.coefficient(Face.Z_MIN, 283.15, 293.15), 1e-12);
  }

  /** The stated ground of the assumed floor: 3 mm of air and radiation at 10 °C. */
  @Test
  void theAssumedFloorIsWhatItsSourceSays() {
    double gap =
        0.025 / 0.003 + Radiation.exchangeFactor(0.9, 0.9) * Radiation.blackCoefficient(283.15);
    assertEquals(Underside.Resting.onHardFloor().resistance(), 1 / gap, 0.0005);
  }

  @Test
  void badValuesAreRefused() {
    assertThrows(
        InvalidInputException.class,
        () -> new FaceFilms(AirMovement.STILL, 0, new Underside.Open()));
    assertThrows(InvalidInputException.class, () -> new Underside.Resting(0));
    assertThrows(InvalidInputException.class, () -> RAISED.coefficient(Face.Z_MAX, -5, 283.15));
  }
}
