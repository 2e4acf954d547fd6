package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SinusoidTest {
  private static final Sinusoid DAY = new Sinusoid(280, new Sinusoid.Wave(10, 86_400, 1));

  @Test
  void meanOverWholePeriodsIsTheMean() {
    assertEquals(280, DAY.mean(0, 64 * 86_400), 1e-9);
  }

  @Test
  void meanOverPartOfAPeriodIsTheIntegral() {
    // the rising quarter from phase 0 has the mean 2/pi of the amplitude
    Sinusoid wave = new Sinusoid(0, new Sinusoid.Wave(1, 4, 0));
    assertEquals(2 / Math.PI, wave.mean(0, 1), 1e-15);
  }
}
