package stenotherm.conduction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Scanner;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;

/**
 * The form, as "VTK file formats" (The VTK User's Guide, Kitware, 11th edition, 2010) has it: order
 * of the parts, counts, x running fastest. VTK 9.7's own reader gave back dimensions, bounds, and
 * ranges of a shipped scenario's field on the day this was written.
 */
class VtkFileTest {
  private static final TemperatureField FIELD = field();

  /** A slab of two layers, 300 K below and 280 K above, with a gap to one side. */
  private static TemperatureField field() {
    Layout layout =
        new Layout(
            List.of(
                new Block.Solid("below", Box.ofSize(0.1, 0.2, 0.05), Bodies.FOAM),
                new Block.Solid(
                    "above",
                    new Box(new Point(0, 0, 0.03), new Point(0.1, 0.2, 0.05)),
                    Bodies.WATER),
                new Block.Environment(
                    "gap", new Box(new Point(0.08, 0, 0), new Point(0.1, 0.2, 0.05)))));
    return SteadySolver.solve(
            ConductionProblem.builder(layout, MeshControl.uniform(0.02))
                .boundary(Face.Z_MIN, Boundary.PrescribedTemperature.of(300))
                .boundary(Face.Z_MAX, Boundary.PrescribedTemperature.of(280))
                .boundary("gap", Boundary.Convection.of(5, 290))
                .build())
        .field();
  }

  private static String written(String title) throws IOException {
    StringBuilder out = new StringBuilder();
    VtkFile.write(FIELD, title, out);
    return out.toString();
  }

  @Test
  void theFormIsThatOfTheGuide() throws IOException {
    String text = written("two layers");
    assertTrue(text.startsWith("# vtk DataFile Version 3.0\ntwo layers\nASCII\n"), text);
    Scanner words = new Scanner(text.lines().skip(3).reduce((a, b) -> a + "\n" + b).orElseThrow());
    assertEquals("DATASET", words.next());
    assertEquals("RECTILINEAR_GRID", words.next());
    assertEquals("DIMENSIONS", words.next());
    int[] points = {
      Integer.parseInt(words.next()), Integer.parseInt(words.next()), Integer.parseInt(words.next())
    };
    double[][] lines = new double[3][];
    for (Axis axis : Axis.values()) {
      assertEquals(axis.name() + "_COORDINATES", words.next());
      lines[axis.ordinal()] = new double[Integer.parseInt(words.next())];
      assertEquals(points[axis.ordinal()], lines[axis.ordinal()].length);
      assertEquals("double", words.next());
      Arrays.setAll(lines[axis.ordinal()], at -> Double.parseDouble(words.next()));
    }
    assertEquals(0.1, lines[0][points[0] - 1]);
    assertEquals(0.2, lines[1][points[1] - 1]);
    assertEquals(0.05, lines[2][points[2] - 1]);
    assertEquals("CELL_DATA", words.next());
    int cells = (points[0] - 1) * (points[1] - 1) * (points[2] - 1);
    assertEquals(cells, Integer.parseInt(words.next()));
    String[] head = new String[6];
    Arrays.setAll(head, at -> words.next());
    String[] temperature = {"SCALARS", "temperature", "double", "1", "LOOKUP_TABLE", "default"};
    assertArrayEquals(temperature, head);
    double[] kelvin = new double[cells];
    Arrays.setAll(kelvin, at -> Double.parseDouble(words.next()));
    Arrays.setAll(head, at -> words.next());
    String[] block = {"SCALARS", "block", "int", "1", "LOOKUP_TABLE", "default"};
    assertArrayEquals(block, head);
    for (int cell = 0; cell < cells; cell++) {
      double x = middle(lines[0], cell % (points[0] - 1));
      double y = middle(lines[1], cell / (points[0] - 1) % (points[1] - 1));
      double z = middle(lines[2], cell / (points[0] - 1) / (points[1] - 1));
      int of = Integer.parseInt(words.next());
      assertEquals(x > 0.08 ? 2 : z > 0.03 ? 1 : 0, of, "block of cell " + cell);
      if (of == 2) {
        assertTrue(Double.isNaN(kelvin[cell]), "nothing solid is there");
      } else {
        assertEquals(FIELD.at(new Point(x, y, z)), kelvin[cell], 1e-9);
      }
    }
    assertTrue(!words.hasNext(), "nothing follows");
  }

  private static double middle(double[] lines, int cell) {
    return (lines[cell] + lines[cell + 1]) / 2;
  }

  @Test
  void aTitleThatWouldBreakTheFormIsRefused() {
    for (String title : List.of("two\nlines", "15 °C", "x".repeat(256))) {
      InvalidInputException refused =
          assertThrows(InvalidInputException.class, () -> written(title));
      assertTrue(refused.getMessage().contains("at most 255 ASCII characters"), title);
    }
  }
}
