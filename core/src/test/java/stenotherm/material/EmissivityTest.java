package stenotherm.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;

class EmissivityTest {
  private static final Source SOURCE = Source.assumed("a test");

  @Test
  void surfacesAreFoundByName() {
    for (Emissivity surface : Emissivity.all()) {
      assertSame(surface, Emissivity.named(surface.name().toUpperCase(Locale.ROOT)));
    }
  }

  /** Only bare metal radiates little. */
  @Test
  void onlyFoilRadiatesLittle() {
    for (Emissivity surface : Emissivity.all()) {
      assertEquals(surface.equals(Emissivity.ALUMINIUM_FOIL), surface.nominal() < 0.5);
    }
  }

  /** The standard's ordinary surfaces are board and plastics. */
  @Test
  void ordinarySurfacesAgreeWithTheStandard() {
    assertTrue(Emissivity.PLASTIC.range().contains(AirLayer.ORDINARY_EMISSIVITY));
    assertEquals(AirLayer.ORDINARY_EMISSIVITY, Emissivity.BOARD.nominal(), 0.02 + 1e-12);
  }

  /** Where sources differ the nominal value lies between them, not at the end of the range. */
  @Test
  void foamAndBlackPaintLieBetweenTheirSources() {
    for (Emissivity surface : List.of(Emissivity.FOAM, Emissivity.BLACK_PAINT)) {
      Range range = surface.range();
      assertTrue(range.low() + 0.02 < surface.nominal(), surface.name());
      assertTrue(surface.nominal() < range.high() - 0.02, surface.name());
    }
    // 0.8 of building libraries, 0.6 of infrared manuals; dull and shiny lacquer
    assertEquals(0.7, Emissivity.FOAM.nominal(), 0.1);
    assertEquals(0.97, Emissivity.BLACK_PAINT.nominal(), 0.025);
  }

  @Test
  void badValuesAreRefused() {
    Range range = new Range(0.8, 0.9);
    assertThrows(InvalidInputException.class, () -> new Emissivity("x", 0.7, range, SOURCE));
    assertThrows(
        InvalidInputException.class, () -> new Emissivity("x", 0.9, new Range(0.8, 1.1), SOURCE));
    assertThrows(InvalidInputException.class, () -> new Emissivity(" ", 0.8, range, SOURCE));
  }
}
