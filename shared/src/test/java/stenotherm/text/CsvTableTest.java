package stenotherm.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTableTest {
  private static CsvTable table(String... dates) {
    StringBuilder text = new StringBuilder("time,cup [°F]\n");
    for (String date : dates) {
      text.append(date).append(",70\n");
    }
    return CsvTable.parse("t.csv", text.toString());
  }

  @Test
  void aDayAbove12TellsTheOrderOfTheWholeColumn() {
    assertEquals(
        List.of(LocalDate.of(2026, 11, 12), LocalDate.of(2026, 11, 13)),
        table("11/12/2026", "11/13/2026").dates(0));
    assertEquals(
        List.of(LocalDate.of(2026, 12, 11), LocalDate.of(2026, 11, 13)),
        table("11.12.2026", "13.11.2026").dates(0));
  }

  @Test
  void twelveIsReadAsProgramsWriteIt() {
    assertEquals(
        List.of(
            LocalDateTime.of(2026, 11, 30, 12, 0),
            LocalDateTime.of(2026, 11, 30, 16, 0, 5),
            LocalDateTime.of(2026, 12, 1, 0, 0),
            LocalDateTime.of(2026, 12, 1, 4, 0)),
        table(
                "11/30/2026 12:00 PM",
                "11/30/2026 04:00:05 PM",
                "12/1/2026 12:00:00 AM",
                "12/1/2026 4:00")
            .datesWithTimes(0));
  }

  @Test
  void saysWhatWouldTellMonthAndDayApart() {
    String example = ", write for example 2026-12-01 15:00 or December 1 2026 3 pm";
    assertFault(
        "t.csv:2:1: time: '12/1/2026 4:00 PM' is not a date with a time: which number is the month"
            + " is not certain, in no row of its column is one of them above 12: write its name or"
            + " year-month-day, then the time"
            + example,
        table("12/1/2026 4:00 PM", "12/2/2026 4:00 PM"));
    assertFault(
        "t.csv:4:1: time: '13/1/2026 4 pm' has the day first, '1/13/2026 4 pm' in line 3 the month:"
            + " write year-month-day or the month's name in all rows",
        table("1/1/2026 4 pm", "1/13/2026 4 pm", "13/1/2026 4 pm"));
    assertFault(
        "t.csv:2:1: time: '11/20/26 4:00 PM' is not a date with a time: the year needs four digits,"
            + " as in 2026"
            + example,
        table("11/20/26 4:00 PM"));
    assertFault(
        "t.csv:3:1: time: '11/9/2026 25:00' is not a date with a time: the time is written as in"
            + " 15:00 or 3 pm"
            + example,
        table("11/20/2026 4:00 PM", "11/9/2026 25:00"));
  }

  private static void assertFault(String message, CsvTable table) {
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> table.datesWithTimes(0));
    assertEquals(message, fault.getMessage());
  }
}
