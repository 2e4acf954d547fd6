package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HeatDirectionTest {
  @ParameterizedTest
  @EnumSource(Face.class)
  void theOppositeFaceHasTheReversedFlow(Face face) {
    assertEquals(
        Orientation.LID_UP.outOf(face).reversed(), Orientation.LID_UP.outOf(face.opposite()));
  }
}
