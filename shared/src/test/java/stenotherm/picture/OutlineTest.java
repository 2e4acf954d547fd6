package stenotherm.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Range;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;

class OutlineTest {
  private static final Box BOX = new Box(new Point(0, 1, 2), new Point(2, 3, 6));

  private static Outline cut(Shape shape, Axis normal, double at) {
    return Outline.of("cup", BOX, shape, normal, at).orElseThrow();
  }

  private static void assertRange(double low, double high, Range range) {
    assertEquals(low, range.low(), 1e-12);
    assertEquals(high, range.high(), 1e-12);
  }

  @Test
  void uprightCylinderIsRoundFromAboveAndStraightFromTheSide() {
    Outline plan = cut(Shape.CYLINDER_Z, Axis.Z, 5.9);
    Outline side = cut(Shape.CYLINDER_Z, Axis.Y, 2);

    assertTrue(plan.round());
    assertRange(0, 2, plan.x());
    assertRange(1, 3, plan.z());
    assertFalse(side.round());
    assertRange(0, 2, side.x());
    assertRange(2, 6, side.z());
  }

  /** Radius 1, cut 0.6 from the axis: half a chord of 0.8. */
  @Test
  void cutBesideTheAxisIsNarrower() {
    Outline side = cut(Shape.CYLINDER_Z, Axis.Y, 2.6);
    Outline end = cut(Shape.CYLINDER_Z, Axis.X, 0.4);

    assertRange(0.2, 1.8, side.x());
    assertRange(2, 6, side.z());
    assertRange(1.2, 2.8, end.x());
    assertRange(2, 6, end.z());
  }

  /**
   * Lying along x: half axes 1 and 2; from above, at 1.2 of 2 beside the axis, 0.8 of its width.
   */
  @Test
  void lyingCylinder() {
    Outline plan = cut(Shape.CYLINDER_X, Axis.Z, 5.2);

    assertTrue(cut(Shape.CYLINDER_X, Axis.X, 1).round());
    assertFalse(plan.round());
    assertRange(0, 2, plan.x());
    assertRange(1.2, 2.8, plan.z());
  }

  @Test
  void boxIsABoxWhereverItIsCutAndNothingBeside() {
    Outline plan = cut(Shape.BOX, Axis.Z, 5.9);

    assertFalse(plan.round());
    assertRange(0, 2, plan.x());
    assertRange(1, 3, plan.z());
    assertTrue(Outline.of("cup", BOX, Shape.BOX, Axis.Z, 6.1).isEmpty());
    assertTrue(Outline.of("cup", BOX, Shape.CYLINDER_Z, Axis.Y, 0.9).isEmpty());
  }
}
