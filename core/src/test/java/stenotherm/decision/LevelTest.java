package stenotherm.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import stenotherm.study.Odds;

class LevelTest {
  private static Level of(double low) {
    // the share and the upper end of its interval would give another level
    return Level.of(new Odds(Math.min(1, low + 0.2), low, Math.min(1, low + 0.4)));
  }

  @Test
  void theLowerEndOfTheIntervalDecides() {
    assertEquals(Level.HOLDS, of(0.95));
    assertEquals(Level.LIKELY, of(Math.nextDown(0.95)));
    assertEquals(Level.LIKELY, of(0.8));
    assertEquals(Level.GAMBLE, of(Math.nextDown(0.8)));
    assertEquals(Level.GAMBLE, of(0.5));
    assertEquals(Level.DO_NOT, of(Math.nextDown(0.5)));
    assertEquals(Level.DO_NOT, of(0));
  }

  @Test
  void fewJourneysHoldNothing() {
    // 32 of 32: Wilson's interval begins at 32 / (32 + 1.96²) = 0.893
    int[] hits = new int[16];
    Arrays.fill(hits, 2);
    assertEquals(Level.LIKELY, Level.of(Odds.of(hits, 2)));
  }

  @Test
  void noWordsPermitAnything() {
    for (Level level : Level.values()) {
      assertFalse(level.words().toLowerCase(Locale.ROOT).contains("safe"));
    }
    assertEquals(
        List.of("holds", "likely holds", "a gamble", "do not send it like this"),
        List.of(Level.values()).stream().map(Level::words).toList());
  }

  @Test
  void everyPartOfTheErrorCounts() {
    assertEquals(15, new NumericalError(1, true, 2, 4, 8).total());
  }
}
