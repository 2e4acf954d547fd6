package stenotherm.text;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The pattern that editors get takes whatever the reader takes, and not any text. */
class QuantityTest {
  private static boolean matches(Quantity quantity, String text) {
    return Pattern.matches(quantity.pattern(), text);
  }

  @Test
  void patternTakesEveryUnitAndItsSpellings() {
    for (Quantity quantity : Quantity.values()) {
      for (String unit : quantity.unitNames()) {
        assertTrue(matches(quantity, "-1.5e3 " + unit), unit);
      }
    }
    for (String text :
        List.of("12\"", "12″", ".5in", "−3 mm", "1\u00a0mm", "+7. inches", "3/4 in", "1-1/2\"")) {
      assertTrue(matches(Quantity.LENGTH, text), text);
    }
    assertTrue(matches(Quantity.TEMPERATURE, "20ºC"));
    assertTrue(matches(Quantity.THERMAL_RESISTANCE, "0.02 m²K/W"));
    assertTrue(matches(Quantity.THERMAL_RESISTANCE, "0.02 m2·K/W"));
    assertTrue(matches(Quantity.DURATION, "1 h 30 min"));
  }

  @Test
  void patternRefusesOtherTexts() {
    for (String text : List.of("12", "mm", "12 g", "12 mm 3", "1,5 mm", "")) {
      assertFalse(matches(Quantity.LENGTH, text), text);
    }
  }

  @Test
  void examplesCanBeRead() {
    for (Quantity quantity : Quantity.values()) {
      for (String example : quantity.example().split(" or ")) {
        assertTrue(matches(quantity, example), example);
      }
      assertTrue(quantity.kind().matches("an? .+"));
    }
  }
}
