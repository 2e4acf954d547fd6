package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.picture.Curve;

/** The planned opening may lie between two stored times. */
class BrokenLineTest {
  private static final double[] TIMES = {0, 900, 1800};
  private static final double[] VALUES = {300, 309, 300};

  @Test
  void aMeanEndsBetweenTwoPoints() {
    assertEquals(300.3, FaceHeat.mean(TIMES, VALUES, 60), 1e-9);
    assertEquals(304.5, FaceHeat.mean(TIMES, VALUES, 900), 1e-9);
    // 900 s of mean 304.5, 450 s of mean 306.75
    assertEquals((900 * 304.5 + 450 * 306.75) / 1350, FaceHeat.mean(TIMES, VALUES, 1350), 1e-9);
    assertEquals(304.5, FaceHeat.mean(TIMES, VALUES, 1800), 1e-9);
  }

  @Test
  void aCurveEndsBetweenTwoPoints() {
    assertEquals(
        List.of(new Curve.Reading(0, 300), new Curve.Reading(60, 300.6)),
        Pictures.curve("short", TIMES, VALUES, 60).points());
    assertEquals(2, Pictures.curve("one step", TIMES, VALUES, 900).points().size());
    assertEquals(3, Pictures.curve("whole", TIMES, VALUES, 5000).points().size());
  }
}
