package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.words.Figures;

class MapWordsTest {
  private static Range celsius(double low, double high) {
    return new Range(Temperatures.fromCelsius(low), Temperatures.fromCelsius(high));
  }

  /** With a warmer and without: what lies beyond both ends is told elsewhere. */
  @Test
  void gapsLieBetweenStretches() {
    assertEquals(
        List.of(new Range(0.4, 0.5)),
        MapWords.between(List.of(new Range(0.5, 0.9), new Range(0.1, 0.4), new Range(0.2, 0.3))));
    assertEquals(List.of(), MapWords.between(List.of(new Range(0.1, 0.6), new Range(0.5, 0.9))));
    assertEquals(List.of(), MapWords.between(List.of()));
  }

  @Test
  void lowsAtWhichNeitherWayWillDoAreTold() {
    MapWords words = new MapWords(Figures.METRIC);
    assertEquals("", words.neither(List.of()));
    assertEquals(
        " With lows between 9 °C and 13.5 °C neither way is even a gamble: do not send it then.",
        words.neither(List.of(celsius(9, 13.5))));
  }
}
