package stenotherm.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;

class AmbientSpreadTest {
  @Test
  void bothPartsAddUp() {
    assertEquals(6, new AmbientSpread(4, 2).total());
    assertEquals(new AmbientSpread(7, 0), AmbientSpread.ofItsOwn(7));
  }

  @Test
  void anotherSumKeepsTheProportion() {
    assertEquals(new AmbientSpread(2, 1), new AmbientSpread(4, 2).adjustedTo(3));
    assertEquals(new AmbientSpread(0, 5), new AmbientSpread(0, 2).adjustedTo(5));
    assertEquals(AmbientSpread.ofItsOwn(5), AmbientSpread.ofItsOwn(0).adjustedTo(5));
    assertEquals(AmbientSpread.ofItsOwn(0), new AmbientSpread(4, 2).adjustedTo(0));
  }

  @Test
  void partsLieWithinTheirRange() {
    assertEquals(
        "outdoor spread: 31 K must lie between 0 K and 30 K. It is a difference: 9 F° of"
            + " difference are 5 K.",
        assertThrows(InvalidInputException.class, () -> new AmbientSpread(0, 31)).getMessage());
    assertThrows(InvalidInputException.class, () -> AmbientSpread.ofItsOwn(-1));
    assertThrows(InvalidInputException.class, () -> new AmbientSpread(4, 2).adjustedTo(40));
  }
}
