package stenotherm.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.InvalidInputException;

class NormalScoresTest {
  /** Values of every table of the normal distribution. */
  @ParameterizedTest
  @CsvSource({"0.5, 0", "0.95, 1.644854", "0.975, 1.959964", "0.995, 2.575829", "0.05, -1.644854"})
  void areThoseOfTables(double share, double score) {
    assertEquals(score, NormalScores.of(share), 5e-7);
  }

  @Test
  void reachTheEndsOfThePoints() {
    assertEquals(8.2095, -NormalScores.of(0x1p-53), 1e-3);
    assertEquals(8.2095, NormalScores.of(1 - 0x1p-53), 1e-3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, Double.NaN})
  void refuseWhatIsNoShare(double share) {
    assertThrows(InvalidInputException.class, () -> NormalScores.of(share));
  }
}
