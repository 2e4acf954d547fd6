package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HeatDirectionTest {
  @ParameterizedTest
  @EnumSource(Face.class)
  void heatLeavesTheLidUpwardAndTheFloorDownward(Face face) {
    HeatDirection expected =
        face.axis() != Axis.Z
            ? HeatDirection.HORIZONTAL
            : face.isMax() ? HeatDirection.UPWARD : HeatDirection.DOWNWARD;
    assertEquals(expected, HeatDirection.outOf(face));
  }

  @ParameterizedTest
  @EnumSource(Face.class)
  void theOppositeFaceHasTheReversedFlow(Face face) {
    assertEquals(HeatDirection.outOf(face).reversed(), HeatDirection.outOf(face.opposite()));
  }
}
