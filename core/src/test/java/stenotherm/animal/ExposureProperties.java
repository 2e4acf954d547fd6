package stenotherm.animal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import stenotherm.base.Range;
import stenotherm.base.Source;

class ExposureProperties {
  private static final double STEP = 600;

  private static TemperatureBand band(double low, double high) {
    return new TemperatureBand(new Range(low, high), Source.assumed("a property"));
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static Exposure judge(double[] coldest, double spread, double shrink) {
    double[] times = new double[coldest.length];
    double[] hottest = coldest.clone();
    for (int row = 0; row < times.length; row++) {
      times[row] = row * STEP;
      hottest[row] += spread;
    }
    Tolerance tolerance =
        new Tolerance(band(288 + shrink, 300 - shrink), band(285, 305), band(280, 315));
    return Exposure.of(tolerance, times, coldest, hottest);
  }

  @Property(seed = "20260111")
  void aNarrowerBandIsNeverLeftLess(
      @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 270, max = 310) Double> history,
      @ForAll @DoubleRange(min = 0, max = 8) double spread,
      @ForAll @DoubleRange(min = 0, max = 6) double shrink) {
    Exposure.Excursions wide = judge(array(history), spread, 0).comfortable();
    Exposure.Excursions narrow = judge(array(history), spread, shrink).comfortable();
    assertTrue(narrow.duration() >= wide.duration() - 1e-6);
    assertTrue(narrow.cold().duration() >= wide.cold().duration() - 1e-6);
    assertTrue(narrow.hot().duration() >= wide.hot().duration() - 1e-6);
    assertTrue(narrow.cold().degreeTime() >= wide.cold().degreeTime() - 1e-6);
    assertTrue(narrow.hot().degreeTime() >= wide.hot().degreeTime() - 1e-6);
    assertTrue(
        narrow.firstBreach().orElse(Double.MAX_VALUE)
            <= wide.firstBreach().orElse(Double.MAX_VALUE) + 1e-6);
  }

  @Property(seed = "20260112")
  void timeOutsideLiesBetweenTheLongerSideAndTheSumOfBoth(
      @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 270, max = 310) Double> history,
      @ForAll @DoubleRange(min = 0, max = 20) double spread) {
    Exposure.Excursions comfort = judge(array(history), spread, 0).comfortable();
    double cold = comfort.cold().duration();
    double hot = comfort.hot().duration();
    assertTrue(comfort.duration() >= Math.max(cold, hot) - 1e-6);
    assertTrue(comfort.duration() <= cold + hot + 1e-6);
    assertTrue(comfort.duration() <= (history.size() - 1) * STEP + 1e-6);
  }

  @Property(seed = "20260113")
  void aBreachAndANegativeMarginGoTogether(
      @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 270, max = 310) Double> history) {
    Exposure exposure = judge(array(history), 2, 0);
    for (Limit limit : Limit.values()) {
      Exposure.Excursions outside = exposure.outside(limit);
      assertEquals(exposure.coldMargin(limit) < 0, outside.cold().firstBreach().isPresent());
      assertEquals(exposure.hotMargin(limit) < 0, outside.hot().firstBreach().isPresent());
    }
  }

  @Property(seed = "20260114")
  void pointsOnTheLineChangeNothing(
      @ForAll @Size(min = 2, max = 8) List<@DoubleRange(min = 270, max = 310) Double> history) {
    double[] coldest = array(history);
    double[] halved = new double[2 * coldest.length - 1];
    double[] times = new double[halved.length];
    for (int row = 0; row < halved.length; row++) {
      times[row] = row * STEP / 2;
      halved[row] = row % 2 == 0 ? coldest[row / 2] : (coldest[row / 2] + coldest[row / 2 + 1]) / 2;
    }
    Exposure coarse = judge(array(history), 0, 0);
    Exposure fine = Exposure.of(coarse.tolerance(), times, halved, halved);
    assertEquals(coarse.alarm().duration(), fine.alarm().duration(), 1e-6);
    assertEquals(coarse.alarm().cold().degreeTime(), fine.alarm().cold().degreeTime(), 1e-6);
  }
}
