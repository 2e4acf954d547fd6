package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.decision.JourneyOdds;
import stenotherm.study.Odds;
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

  /** Odds by the number of 16 journeys that go well, and in which all but one harm is spared. */
  private static JourneyOdds odds(int well, int cold, int air) {
    return new JourneyOdds(of(well), of(16 - cold), of(16), of(16 - air), of(16));
  }

  private static Odds of(int hits) {
    int[] each = new int[16];
    Arrays.fill(each, 0, hits, 1);
    return Odds.of(each, 1);
  }

  @Test
  void ofLowsThatAreAlikeTheMiddleOfTheLongestRowIsTheBest() {
    int[] well = {3, 9, 3, 9, 9, 9, 0};
    MapWords.Best best =
        MapWords.best(
            List.of(0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0), low -> odds(well[(int) low], 0, 0));
    assertEquals(4, best.low());
    assertEquals(9 / 16.0, best.odds().within().within());
  }

  @Test
  void whatGoesWrongAtTheBestLowIsTold() {
    MapWords words = new MapWords(Figures.US);
    double low = Temperatures.fromFahrenheit(47);
    assertEquals(
        "With the warmer it does best with lows of 47 °F at both ends: of 100 such journeys 44 go"
            + " well; short of air in 44, too cold in 19.",
        words.best("With the warmer it", new MapWords.Best(low, odds(7, 3, 7))));
    assertEquals(
        "It does best with lows of 47 °F at both ends: of 100 such journeys 6 go well; too cold in"
            + " 94.",
        words.best("It", new MapWords.Best(low, odds(1, 15, 0))));
    assertEquals(
        "It goes well at none of the lows computed: not a single journey did; with lows of 47 °F at"
            + " both ends, in the middle of them, of 100 too cold in more than 99.",
        words.best("It", new MapWords.Best(low, odds(0, 16, 0))));
  }

  @Test
  void aRangeOfOneTemperatureIsToldAsOne() {
    MapWords words = new MapWords(Figures.METRIC);
    Range all = celsius(-12, 30);
    assertEquals("from 3 °C to 9 °C", words.range(all, celsius(3, 9)));
    assertEquals("of 9 °C", words.range(all, celsius(9, 9)));
    assertEquals("of 30 °C, the highest computed,", words.range(all, celsius(30, 30)));
    assertEquals("from -12 °C, the lowest computed, to 9 °C", words.range(all, celsius(-12, 9)));
    assertEquals("9 °C", words.inShort(celsius(9, 9)));
    assertEquals("3 °C to 9 °C", words.inShort(celsius(3, 9)));
  }
}
