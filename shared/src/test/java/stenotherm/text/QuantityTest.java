package stenotherm.text;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever messages tell people to write can be read. */
class QuantityTest {
  private static double read(Quantity quantity, String text) {
    ScalarNode node =
        Document.parse("f", "a: '" + text + "'\n").root().asMapping().require("a").asScalar();
    return quantity == Quantity.DURATION ? quantity.readSum(node, text) : quantity.read(node, text);
  }

  @ParameterizedTest
  @EnumSource
  void unitsCanBeRead(Quantity quantity) {
    for (String unit : quantity.unitNames()) {
      assertNotEquals(read(quantity, "1 " + unit), read(quantity, "2 " + unit), unit);
    }
  }

  @ParameterizedTest
  @EnumSource
  void examplesCanBeRead(Quantity quantity) {
    for (String example : quantity.example().split(" or ")) {
      assertTrue(read(quantity, example) > 0, example);
    }
    assertTrue(quantity.kind().matches("an? .+"));
  }
}
