package stenotherm.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.MessageText;

class LastWordsTest {
  @Test
  void aFaultIsFoundAgainFromOneShortLine() {
    String line = LastWords.of(new IndexOutOfBoundsException("x\n\u001b[31m" + "y".repeat(1000)));
    assertTrue(line.startsWith("unforeseen: IndexOutOfBoundsException 'x\\u000A\\u001B"), line);
    assertTrue(line.contains(" in LastWordsTest.aFaultIsFoundAgainFromOneShortLine, line "), line);
    assertTrue(line.contains("report"), line);
    assertTrue(line.length() <= MessageText.LONGEST, line);
    assertEquals(1, line.lines().count());
  }

  @Test
  void wantOfMemoryIsNoFaultAndSaysWhatToDo() {
    Throwable wrapped = new IllegalStateException(new OutOfMemoryError("Java heap space"));
    assertTrue(LastWords.isWantOfMemory(wrapped));
    assertTrue(LastWords.of(wrapped).contains("-Xmx4g"));
    assertFalse(LastWords.isWantOfMemory(new StackOverflowError()));
  }
}
