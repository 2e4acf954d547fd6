package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.Temperatures;
import stenotherm.text.TextFormatException;
import stenotherm.weather.DayExtremes;

class DailyTableTest {
  private static final String ENDS =
      """
      # pasted from a forecast
      date,origin low [°F],origin high [°F],destination low [°C],destination high [°C]
      2026-12-01,22,35,3.5,8
      2026-12-02,28,41,4,10
      """;

  @Test
  void columnsHaveTheirOwnUnits() {
    DailyTable table = DailyTable.readEnds("week.csv", ENDS);
    assertEquals(LocalDate.of(2026, 12, 1), table.first());
    assertEquals(LocalDate.of(2026, 12, 2), table.last());
    assertEquals(Temperatures.fromFahrenheit(28), table.origin().get(1).low(), 1e-9);
    assertEquals(Temperatures.fromCelsius(8), table.destination().get(0).high(), 1e-9);
  }

  @Test
  void columnsMayStandInAnyOrder() {
    List<DayExtremes> days =
        DailyTable.readPlace("station.csv", "date,high [°C],low [°C]\n2026-12-01,5,-2\n");
    assertEquals(Temperatures.fromCelsius(-2), days.get(0).low(), 1e-9);
    assertEquals(Temperatures.fromCelsius(5), days.get(0).high(), 1e-9);
  }

  @Test
  void theColumnTellsWhichNumberIsTheMonth() {
    List<DayExtremes> days =
        DailyTable.readPlace("s.csv", "date,high [°C],low [°C]\n7/12/2026,5,-2\n7/13/2026,5,-2\n");
    assertEquals(LocalDate.of(2026, 7, 12), days.get(0).date());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-12-02,28,41 | 2026-12-03,28,41 | days follow each other without gaps",
        "2026-12-02,28,41 | 2026-12-02,,41,4,10 | 5 columns",
        "2026-12-02,28,41 | 2026-12-02,48,41 | is above the high of that day",
        "2026-12-02,28,41 | 2026-12-02,cold,41 | week.csv:4:12",
        "2026-12-02,28,41 | Tuesday,28,41 | is not a date",
        "2026-12-02,28,41 | 2026-13-02,28,41 | is not a date",
        "origin low [°F] | origin low | needs its unit in brackets",
        "origin low [°F] | origin lows [°F] | origin low",
        "origin low [°F] | origin low [mm] | °F",
        "destination low [°C] | origin high [°F] | is a column twice",
        "date, | day, | date",
        "4,10 | 4,70 | destination high [°C]: 70 °C is too hot for a daily high, which is at most 56.7",
      })
  void faultsTellWhereAndWhat(String right, String wrong, String told) {
    String text = ENDS.replace(right.strip(), wrong.strip());
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> DailyTable.readEnds("week.csv", text));
    String message = String.valueOf(fault.getMessage());
    assertTrue(message.contains(told) && message.contains("week.csv"), message);
  }

  @Test
  void aMissingColumnIsNamed() {
    TextFormatException fault =
        assertThrows(
            TextFormatException.class,
            () -> DailyTable.readPlace("s.csv", "date,low [°C]\n2026-12-01,1\n"));
    assertTrue(String.valueOf(fault.getMessage()).contains("'high'"), fault.getMessage());
  }

  @Test
  void aWrongHeaderIsToldWithAllColumns() {
    for (String wrong : List.of("day,low [°C]", "date,Temp F", "date,temp [°F]", "date,low [°F]")) {
      TextFormatException fault =
          assertThrows(
              TextFormatException.class,
              () -> DailyTable.readPlace("s.csv", wrong + "\n2026-12-01,1\n"));
      String message = String.valueOf(fault.getMessage());
      assertTrue(message.endsWith(" (the first line may be: date,low [°F],high [°F])"), message);
    }
  }

  @Test
  void capitalLettersInTheHeaderDoNotMatter() {
    DailyTable table =
        DailyTable.readEnds("week.csv", ENDS.replace("date,origin low", "Date,Origin Low"));
    assertEquals(LocalDate.of(2026, 12, 2), table.last());
  }
}
