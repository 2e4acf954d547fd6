package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import stenotherm.transit.StageForecast.Met;

class StageForecastTest {
  private static final double TOLERANCE = 1e-3;
  private static final Met USUAL = met(290, 295, 280, 1);

  /** A run whose means are linear in what it differs by. */
  private static Met met(double wall, double fill, double ambient, double strength) {
    double warmth = (wall + fill) / 2;
    double surface = 0.1 * warmth + 0.9 * ambient;
    double wallMean = 0.5 * wall + 0.5 * ambient;
    double fillMean = 0.7 * fill + 0.2 * ambient + 8 * strength;
    return new Met(
        new double[] {wall, fill},
        new double[] {ambient, strength},
        new Temperatures(new double[] {surface}, new double[] {wallMean, fillMean}));
  }

  @Test
  void recoversALinearLaw() {
    Random random = new Random(4);
    List<Met> runs = new ArrayList<>();
    for (int run = 0; run < 12; run++) {
      runs.add(
          met(
              290 + 3 * random.nextGaussian(),
              295 + 3 * random.nextGaussian(),
              280 + 3 * random.nextGaussian(),
              1 + 0.1 * random.nextGaussian()));
    }
    Met wanted = met(283, 301, 274, 1.3);
    Temperatures found =
        StageForecast.fitted(USUAL, runs).means(wanted.atStart(), wanted.conditions());
    assertArrayEquals(wanted.means().surfaces(), found.surfaces(), TOLERANCE);
    assertArrayEquals(wanted.means().blocks(), found.blocks(), TOLERANCE);
  }

  @Test
  void givesNoWeightToWhatNoRunDiffersBy() {
    List<Met> runs = List.of(met(290, 295, 282, 1), met(290, 295, 277, 1));
    StageForecast forecast = StageForecast.fitted(USUAL, runs);
    // no run was warmer inside at the beginning, or had a stronger warmer
    Temperatures found = forecast.means(new double[] {310, 320}, new double[] {280, 2});
    assertArrayEquals(USUAL.means().surfaces(), found.surfaces(), TOLERANCE);
    assertArrayEquals(USUAL.means().blocks(), found.blocks(), TOLERANCE);
  }

  @Test
  void keepsItsWeightsAboutAnotherUsualRun() {
    List<Met> runs = List.of(met(290, 295, 282, 1), met(290, 295, 277, 1));
    Met other = met(270, 275, 260, 1);
    Temperatures found =
        StageForecast.fitted(USUAL, runs)
            .about(other)
            .means(other.atStart(), new double[] {264, 1});
    assertEquals(other.means().surfaces()[0] + 0.9 * 4, found.surfaces()[0], TOLERANCE);
    assertEquals(other.means().blocks()[1] + 0.2 * 4, found.blocks()[1], TOLERANCE);
  }
}
