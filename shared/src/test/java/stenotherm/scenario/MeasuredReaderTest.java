package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.Range;
import stenotherm.material.Material;
import stenotherm.parcel.Parcel;
import stenotherm.text.TextFormatException;

class MeasuredReaderTest {
  private static final String MEASURED =
      """
          measured:
            fill conductivity: 0.051 (0.047 to 0.056) W/(m K)
            foam conductivity: 0.036 (0.034 to 0.038) W/(m K)
            seam gap: 0.4 (0.2 to 0.6) mm
            warmer strength: 0.92 (0.87 to 0.97)
      """;

  private static String scenario(String measured) {
    return ScenarioFiles.GOOD.replace(
        "    opened: 45 min before sealing\n", "    opened: 45 min before sealing\n" + measured);
  }

  @Test
  void measuredValuesStandForStatedOnes() {
    Parcel parcel = ScenarioReader.read("s.yaml", scenario(MEASURED)).packings().get(0);
    Material fill = parcel.filling().fill().orElseThrow();
    assertEquals("shredded paper", fill.name());
    assertEquals(0.051, fill.conductivity());
    assertEquals(new Range(0.047, 0.056), fill.conductivityRange());
    assertEquals(0.036, parcel.walls().insulation().material().conductivity());
    assertEquals(0.0004, parcel.openings().seamGap(), 1e-12);
    assertEquals(0.5, parcel.openings().gapFactors().low(), 1e-12);
    assertEquals(1.5, parcel.openings().gapFactors().high(), 1e-12);
    assertEquals(0.92, parcel.warmers().get(0).warmer().strengthAt(0), 1e-12);
    assertEquals(0.97, parcel.warmers().get(0).warmer().strengthAt(1), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.051 (0.047 to 0.056) W/(m K)|0.051 W/(m K)|packings[0].measured.fill conductivity"
            + " (carton): must be a value and its range, write for example 0.051 (0.047 to 0.056)"
            + " W/(m K)",
        "0.4 (0.2 to 0.6) mm|0.4 (0.5 to 0.6) mm|packings[0].measured.seam gap (carton): must have"
            + " the value within its range, the lower end first",
        "0.4 (0.2 to 0.6) mm|4 (2 to 6) mm|packings[0].measured.seam gap (carton): gap of the seams:"
            + " 0.004 m must lie between 0 m and 0.002 m. Panels that fit leave about half a"
            + " millimetre, 0.0005 m.",
        "0.92 (0.87 to 0.97)|0.92 (0 to 0.97)|packings[0].measured.warmer strength (carton): weakest"
            + " strength of 40 hour warmer: 0 must be a finite number above 0",
      })
  void saysWhatIsWrong(String right, String wrong, String message) {
    String text = scenario(MEASURED.replace(right, wrong));
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> ScenarioReader.read("s.yaml", text));
    String said = String.valueOf(fault.getMessage());
    assertEquals(message, said.substring(said.indexOf("packings")));
  }
}
