package stenotherm.conduction;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.grid.RectilinearGrid;

/**
 * Writes temperature fields for programs that draw them: VTK's legacy text form of a rectilinear
 * grid. Each cell has the scalars {@code temperature} [K], not a number where nothing is solid, and
 * {@code block}, the position of its block in the layout. The form is that of "VTK file formats" in
 * The VTK User's Guide (Kitware, 11th edition, 2010).
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class VtkFile {
  /** As the form has it. */
  private static final int LONGEST_TITLE = 255;

  private VtkFile() {}

  /**
   * Writes a field.
   *
   * @param field the field
   * @param title what it shows, on one line of ASCII, at most 255 characters
   * @param out where to; neither flushed nor closed
   * @throws InvalidInputException if the title does not fit
   * @throws IOException if writing fails
   */
  public static void write(TemperatureField field, String title, Appendable out)
      throws IOException {
    RectilinearGrid grid = Checks.given("field", field).grid();
    Checks.given("out", out);
    if (Checks.given("title", title).length() > LONGEST_TITLE
        || title.chars().anyMatch(Character::isISOControl)
        || !StandardCharsets.US_ASCII.newEncoder().canEncode(title)) {
      throw new InvalidInputException(
          "title", "must be one line of at most " + LONGEST_TITLE + " ASCII characters");
    }
    out.append("# vtk DataFile Version 3.0\n").append(title).append("\nASCII\n");
    out.append("DATASET RECTILINEAR_GRID\nDIMENSIONS");
    for (Axis axis : Axis.values()) {
      out.append(' ').append(Integer.toString(grid.count(axis) + 1));
    }
    out.append('\n');
    for (Axis axis : Axis.values()) {
      double[] lines = grid.lines(axis);
      out.append(axis.name()).append("_COORDINATES ").append(Integer.toString(lines.length));
      out.append(" double\n");
      for (double line : lines) {
        out.append(Double.toString(line)).append('\n');
      }
    }
    out.append("CELL_DATA ").append(Integer.toString(grid.cellCount()));
    out.append("\nSCALARS temperature double 1\nLOOKUP_TABLE default\n");
    for (int cell = 0; cell < grid.cellCount(); cell++) {
      double kelvin = field.isSolid(cell) ? field.ofCell(cell) : Double.NaN;
      out.append(Double.toString(kelvin)).append('\n');
    }
    out.append("SCALARS block int 1\nLOOKUP_TABLE default\n");
    for (int cell = 0; cell < grid.cellCount(); cell++) {
      out.append(Integer.toString(grid.blockOf(cell))).append('\n');
    }
  }
}
