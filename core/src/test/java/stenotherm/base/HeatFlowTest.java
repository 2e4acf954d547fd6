package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HeatFlowTest {
  @ParameterizedTest
  @EnumSource(Face.class)
  void heatLeavesTheLidUpwardAndTheFloorDownward(Face face) {
    HeatFlow expected =
        face.axis() != Axis.Z
            ? HeatFlow.HORIZONTAL
            : face.isMax() ? HeatFlow.UPWARD : HeatFlow.DOWNWARD;
    assertEquals(expected, HeatFlow.outOf(face));
  }

  @ParameterizedTest
  @EnumSource(Face.class)
  void theOppositeFaceHasTheReversedFlow(Face face) {
    assertEquals(HeatFlow.outOf(face).reversed(), HeatFlow.outOf(face.opposite()));
  }
}
