package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Month;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;

class MonthChartTest {
  private static String svg(Map<Month, Double> shares) {
    MonthChart chart =
        MonthChart.titled("How it goes").kind("with warmer", shares).level("holds", 0.8).build();
    return chart.svg(760, chart.heightFor(760));
  }

  @Test
  void aWinterBeginsInDecember() {
    String svg = svg(Map.of(Month.JANUARY, 0.4, Month.FEBRUARY, 0.5, Month.DECEMBER, 0.7));
    assertTrue(svg.indexOf(">Dec<") < svg.indexOf(">Jan<"), svg);
    assertTrue(svg.indexOf(">Jan<") < svg.indexOf(">Feb<"), svg);
    assertFalse(svg.contains(">Jul<"), svg);
  }

  @Test
  void monthsAreToldInTheOrderOfThePicture() {
    assertEquals(
        List.of(Month.NOVEMBER, Month.JANUARY, Month.FEBRUARY),
        MonthChart.inOrder(Set.of(Month.FEBRUARY, Month.NOVEMBER, Month.JANUARY)));
    assertEquals(List.of(Month.values()), MonthChart.inOrder(EnumSet.allOf(Month.class)));
  }

  @Test
  void aWholeYearBeginsInJanuary() {
    Map<Month, Double> year = new HashMap<>();
    for (Month month : Month.values()) {
      year.put(month, 0.5);
    }
    String svg = svg(year);
    assertTrue(svg.indexOf(">Jan<") < svg.indexOf(">Dec<"), svg);
    assertEquals(12, svg.split("<circle", -1).length - 1);
  }

  @Test
  void sharesAreOfOne() {
    assertThrows(InvalidInputException.class, () -> svg(Map.of(Month.MAY, 40.0)));
    assertThrows(InvalidInputException.class, () -> svg(Map.of()));
  }
}
