package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.picture.HistoryChart.Line;
import stenotherm.picture.HistoryChart.Sample;
import stenotherm.picture.HistoryChart.TimeUnit;

/** The chart of any quantity against time. */
class HistoryChartTest {
  private static HistoryChart chart(double end, double last) {
    return HistoryChart.titled("a body cools", "heat flow [W]")
        .subtitle("circles: reference")
        .line(new Line("outside", List.of(new Sample(0, 2), new Sample(end, last))))
        .mark(new Sample(end / 2, 1))
        .build();
  }

  @Test
  void theSameChartGivesTheSameBytes() {
    String svg = chart(7200, 0.5).svg(800, 400);
    assertEquals(svg, chart(7200, 0.5).svg(800, 400));
    assertTrue(svg.contains("heat flow [W]"), svg);
    assertTrue(svg.contains("outside"), svg);
  }

  @Test
  void theTimeUnitSuitsTheLength() {
    assertEquals(TimeUnit.SECONDS, chart(32, 1).timeUnit());
    assertEquals(TimeUnit.MINUTES, chart(3600, 1).timeUnit());
    assertEquals(TimeUnit.HOURS, chart(36_000, 1).timeUnit());
    assertEquals(TimeUnit.DAYS, chart(1_000_000, 1).timeUnit());
  }

  @Test
  void aConstantHasAnAxis() {
    Line constant = new Line("constant", List.of(new Sample(0, 5), new Sample(9, 5)));
    HistoryChart chart = HistoryChart.titled("nothing happens", "power [W]").line(constant).build();
    assertTrue(chart.axis().low() < 5 && chart.axis().high() > 5);
  }

  /** Values so large that neighbouring numbers are farther apart than an axis of some units. */
  @Test
  void hugeConstantsAreDrawn() {
    for (double value : new double[] {1e17, -3e200, 1e300}) {
      Line line = new Line("huge", List.of(new Sample(0, value), new Sample(9, value)));
      String svg = HistoryChart.titled("far too hot", "power [W]").line(line).build().svg(800, 400);
      assertTrue(svg.contains(">huge</text>"), svg);
      assertFalse(svg.contains("NaN"), svg);
    }
  }

  /** Beside curves that run close together nobody could tell which one a name means. */
  @Test
  void manyNamesStandAboveAndTakeTheirRoom() {
    HistoryChart.Builder builder = HistoryChart.titled("many loggers", "temperature [°C]");
    for (int number = 1; number <= 7; number++) {
      builder
          .line(
              new Line(
                  "logger number " + number,
                  List.of(new Sample(0, number), new Sample(7200, 2 + number))))
          .mark(new Sample(3600, number));
    }
    HistoryChart many = builder.build();
    for (int width : new int[] {340, 760}) {
      int height = many.heightFor(width, 420);
      assertTrue(height > 420, width + " wide");
      String svg = many.svg(width, height);
      for (int number = 1; number <= 7; number++) {
        assertTrue(svg.contains(">logger number " + number + "</text>"), svg);
      }
    }
    assertEquals(420, chart(7200, 1).heightFor(340, 420));
  }

  @Test
  void badChartsAreRefused() {
    assertThrows(
        InvalidInputException.class, () -> HistoryChart.titled("no curve", "power [W]").build());
    assertThrows(
        InvalidInputException.class, () -> new Line("one point", List.of(new Sample(0, 5))));
    assertThrows(InvalidInputException.class, () -> new Sample(Double.NaN, 5));
    assertThrows(InvalidInputException.class, () -> chart(0, 1));
  }
}
