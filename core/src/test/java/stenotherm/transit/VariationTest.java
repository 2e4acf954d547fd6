package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stenotherm.base.End;
import stenotherm.base.InvalidInputException;

class VariationTest {
  @Test
  void whatIsNotNamedIsNominal() {
    for (Factor factor : Factor.values()) {
      assertEquals(0, Variation.NOMINAL.of(factor));
    }
    Variation varied = Variation.NOMINAL.with(Factor.SURFACE_FILM, -0.4);
    assertEquals(-0.4, varied.of(Factor.SURFACE_FILM));
    assertEquals(0, varied.of(Factor.AMBIENT));
    assertEquals(0, Variation.NOMINAL.of(Factor.SURFACE_FILM), "a value does not change");
    assertEquals(1, varied.with(Factor.SURFACE_FILM, End.HIGH).of(Factor.SURFACE_FILM));
  }

  @Test
  void aWarmersOwnStrengthReplacesThatOfAll() {
    Variation varied = Variation.NOMINAL.with(Factor.WARMER_STRENGTH, 0.5).withWarmer("pad", -1);
    assertEquals(-1, varied.ofWarmer("pad"));
    assertEquals(0.5, varied.ofWarmer("other pad"));
  }

  @Test
  void offsetsAddUp() {
    Variation varied = Variation.NOMINAL.withOffset(1).withOffsetAt("hub", 2).withOffsetIn(3, -0.5);
    assertEquals(1, varied.offset(0, "porch"));
    assertEquals(3, varied.offset(0, "hub"));
    assertEquals(0.5, varied.offset(3, "porch"));
    assertEquals(2.5, varied.offset(3, "hub"));
    assertEquals(4, varied.withOffset(2).withOffsetIn(3, 0).offset(3, "hub"));
  }

  @Test
  void farPositionsAndOffsetsAreRefused() {
    Variation nominal = Variation.NOMINAL;
    nominal.with(Factor.AMBIENT, Variation.MOST).with(Factor.AMBIENT, -Variation.MOST);
    for (double far : new double[] {Math.nextUp(Variation.MOST), -5.1, Double.NaN}) {
      String message =
          assertThrows(InvalidInputException.class, () -> nominal.with(Factor.AMBIENT, far))
              .getMessage();
      assertTrue(message.startsWith("position of temperature outside: "), message);
      assertThrows(InvalidInputException.class, () -> nominal.withWarmer("pad", far));
    }
    nominal.withOffset(100).withOffsetAt("hub", -100).withOffsetIn(0, 100);
    for (double far : new double[] {100.1, -101, Double.NaN}) {
      assertThrows(InvalidInputException.class, () -> nominal.withOffset(far));
      assertThrows(InvalidInputException.class, () -> nominal.withOffsetAt("hub", far));
      assertThrows(InvalidInputException.class, () -> nominal.withOffsetIn(0, far));
    }
  }

  @Test
  void mapsAreCopied() {
    Map<String, Double> places = new HashMap<>(Map.of("hub", 1.0));
    Variation varied = new Variation(Map.of(), Map.of(), 0, places, Map.of());
    places.put("hub", 2.0);
    assertEquals(1, varied.offset(0, "hub"));
    assertEquals(Variation.NOMINAL.withOffsetAt("hub", 1), varied);
    assertThrows(UnsupportedOperationException.class, () -> varied.places().put("hub", 3.0));
  }
}
