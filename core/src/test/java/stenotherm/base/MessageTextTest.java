package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MessageTextTest {
  @Test
  void onlyWhatPrintsIsShown() {
    assertEquals("a\\u001B[0m\\u000Ab", MessageText.of("a\u001b[0m\nb"));
    assertEquals("\\uD83E half", MessageText.of("\uD83E half"));
    assertEquals("\\u202Ereversed", MessageText.of("\u202Ereversed"));
    assertEquals("whole \uD83E\uDD8E, 21 °C", MessageText.of("whole \uD83E\uDD8E, 21 °C"));
  }

  @Test
  void aMessageIsCutBetweenCharacters() {
    assertEquals("x".repeat(360), MessageText.of("x".repeat(360)));
    assertEquals("x".repeat(359) + "…", MessageText.of("x".repeat(361)));
    assertEquals("ab…", MessageText.of("ab\uD83E\uDD8Ecd", 4));
  }

  @Test
  void theOneExceptionKeepsToIt() {
    String message = new InvalidInputException("name", "x\u0007".repeat(900)).getMessage();
    assertEquals(MessageText.LONGEST, message.length(), 6);
    assertEquals(-1, message.indexOf('\u0007'));
  }
}
