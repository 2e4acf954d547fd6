package stenotherm.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;

class OrientationTest {
  @Test
  void theUpperFaceLooksUp() {
    for (Orientation orientation : Orientation.values()) {
      assertEquals(orientation.up(), orientation.facing(Face.Z_MAX));
      assertEquals(orientation.down(), orientation.facing(Face.Z_MIN));
      assertEquals(HeatDirection.UPWARD, orientation.outOf(orientation.facing(Face.Z_MAX)));
    }
  }

  @Test
  void everyFaceLooksSomewhere() {
    for (Orientation orientation : Orientation.values()) {
      EnumSet<Face> seen = EnumSet.noneOf(Face.class);
      for (Face world : Face.values()) {
        seen.add(orientation.facing(world));
        assertEquals(
            orientation.facing(world).opposite(), orientation.facing(world.opposite()), "pairs");
      }
      assertEquals(6, seen.size(), orientation.name());
    }
  }

  /** East, north and up of a turned parcel are a right-handed frame as those of an upright one. */
  @Test
  void aTurnIsNoMirror() {
    for (Orientation orientation : Orientation.values()) {
      int[] east = normal(orientation.facing(Face.X_MAX));
      int[] north = normal(orientation.facing(Face.Y_MAX));
      int[] up = normal(orientation.facing(Face.Z_MAX));
      int determinant = 0;
      for (int axis = 0; axis < 3; axis++) {
        int next = (axis + 1) % 3;
        int last = (axis + 2) % 3;
        determinant += east[axis] * (north[next] * up[last] - north[last] * up[next]);
      }
      assertEquals(1, determinant, orientation.name());
      assertNotEquals("", orientation.words());
    }
  }

  private static int[] normal(Face face) {
    int[] normal = new int[3];
    normal[face.axis().ordinal()] = face.isMax() ? 1 : -1;
    return normal;
  }
}
