package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.function.Executable;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** Small bodies that several tests use. */
final class Bodies {
  static final Material FOAM = Material.of("foam", 0.036, 20, 1450);
  static final Material BOARD = Material.of("board", 0.06, 170, 1400);
  static final Material WATER = Material.of("water", 0.6, 1000, 4186);

  private Bodies() {}

  static void assertRefused(String message, Executable executable) {
    assertEquals(message, assertThrows(InvalidInputException.class, executable).getMessage());
  }

  static Point point(double x) {
    return new Point(x, 0.5, 0.5);
  }

  /** Part of a cube of one metre between two planes normal to x. */
  static Box slice(double from, double to) {
    return new Box(new Point(from, 0, 0), new Point(to, 1, 1));
  }

  /** 30 mm of foam and 10 mm of board along x. */
  static Layout wall() {
    return new Layout(
        List.of(
            new Block.Solid("foam", slice(0, 0.04), FOAM),
            new Block.Solid("board", slice(0.03, 0.04), BOARD)));
  }
}
