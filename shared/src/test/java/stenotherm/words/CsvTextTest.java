package stenotherm.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTextTest {
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\uFF1D1"})
  void noFieldIsAFormula(String text) {
    assertEquals("'" + text, CsvText.field(text));
  }

  @Test
  void separatorsAreQuoted() {
    assertEquals("thin foam", CsvText.field("thin foam"));
    assertEquals("", CsvText.field(""));
    assertEquals("\"a, \"\"b\"\"\"", CsvText.field("a, \"b\""));
    assertEquals("\"'=a,b\"", CsvText.field("=a,b"));
  }
}
