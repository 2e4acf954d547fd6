package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.decision.LoggerTrace;
import stenotherm.decision.SensorSpot;
import stenotherm.grid.Point;
import stenotherm.parcel.Parcel;
import stenotherm.text.TextFormatException;

class TraceReaderTest {
  private static final Parcel PACKING =
      ScenarioReader.read("s.yaml", ScenarioFiles.GOOD).packings().get(0);

  private static final String HEAD =
      "# kitchen\nhours, outside [°F], cup [°C], under lid at 100 x 90 x 120 mm [°C]\n";

  private static String table(String head) {
    StringBuilder text = new StringBuilder(head);
    for (int row = 0; row < 24; row++) {
      text.append(String.format(Locale.ROOT, "%.2f, 32, 20.5, \"21\"%n", row * 0.25));
    }
    return text.toString();
  }

  @Test
  void readsUnitsPlacesAndTimes() {
    LoggerTrace trace = TraceReader.read("t.csv", table(HEAD), PACKING);
    assertEquals(24, trace.times().length);
    assertEquals(900, trace.times()[1], 1e-9);
    assertEquals(273.15, trace.outside()[3], 1e-9);
    assertEquals(293.65, trace.inside(0)[3], 1e-9);
    assertEquals(new SensorSpot.InCup("cup"), trace.sensors().get(0).spot());
    assertEquals("under lid", trace.sensors().get(1).name());
    assertEquals(new SensorSpot.AtPoint(new Point(0.1, 0.09, 0.12)), trace.sensors().get(1).spot());
  }

  @Test
  void takesCapitalLettersInTheHeader() {
    String text = table("Hours, Outside [°F], Cup [°C], Under Lid at 100 x 90 x 120 mm [°C]\n");
    LoggerTrace trace = TraceReader.read("t.csv", text, PACKING);
    assertEquals(900, trace.times()[1], 1e-9);
    assertEquals(new SensorSpot.InCup("cup"), trace.sensors().get(0).spot());
  }

  @Test
  void takesTheMeanOfSensorsOutsideAndDates() {
    StringBuilder text = new StringBuilder("time, outside a [°C], outside b [°C], inside [°C]\n");
    for (int row = 0; row < 24; row++) {
      text.append(String.format(Locale.ROOT, "2026-01-03 %02d:00, 1, 3, 20%n", row));
    }
    LoggerTrace trace = TraceReader.read("t.csv", text.toString(), PACKING);
    assertEquals(275.15, trace.outside()[5], 1e-9);
    assertEquals(3600, trace.times()[1], 1e-9);
  }

  @Test
  void readsDatesAsAmericanLoggersWriteThem() {
    StringBuilder text = new StringBuilder("time, outside [°C], inside [°C]\n");
    for (int row = 0; row < 48; row++) {
      int hour = row % 24;
      text.append(
          String.format(
              Locale.ROOT,
              "11/%02d/2026 %02d:00 %s, 1, 20%n",
              12 + row / 24,
              (hour + 11) % 12 + 1,
              hour < 12 ? "AM" : "PM"));
    }
    LoggerTrace trace = TraceReader.read("t.csv", text.toString(), PACKING);
    assertEquals(47 * 3600, trace.times()[47] - trace.times()[0], 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cup [°C]|cup|t.csv:2:21: needs its unit in brackets, as in cup [°F]"
            + " (the first line may be: time,outside [°F],cup [°F])",
        "cup [°C]|cop [°C]|t.csv:2:21: unknown name 'cop', allowed are cup, inside. Did you mean"
            + " 'cup'? (the first line may be: time,outside [°F],cup [°F])",
        "cup [°C]|cup [mm]|t.csv:2:21: '0 mm' is not a temperature, the unit must be one of °C, °F,"
            + " K (the first line may be: time,outside [°F],cup [°F])",
        ", outside [°F]|, lid at 100 x 90 x 120 mm [°F]|t.csv:2:1: needs a column 'outside' beside"
            + " it and one for each sensor inside (the first line may be: time,outside [°F],cup [°F])",
        "hours|time|t.csv:3:1: time: '0.00' is not a date with a time, write for example 2026-12-01"
            + " 15:00 or December 1 2026 3 pm",
        "100 x 90|900 x 90|t.csv:2:31: is not inside the box, count from its left, front and floor"
            + " (the first line may be: time,outside [°F],cup [°F])",
        "0.50, 32|0.50; 32|t.csv:5:1: has semicolons; separate values by commas, and write"
            + " numbers with a point",
        "0.50, 32|32|t.csv:5:1: has 3 values but there are 4 columns",
        "0.50, 32|0.20, 32|t.csv:5:1: hours: must be later than the row before, 0.25",
        "0.50, 32|0.50,|t.csv:5:6: outside [°F]: has no reading, take the row out",
        "0.50, 32|0.50, cold|t.csv:5:6: outside [°F]: 'cold' is not a number, write digits as in 12"
            + " or 2.5",
      })
  void saysWhereAFaultIs(String right, String wrong, String message) {
    String text = table(HEAD).replace(right, wrong);
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> TraceReader.read("t.csv", text, PACKING));
    assertEquals(message, fault.getMessage());
  }
}
