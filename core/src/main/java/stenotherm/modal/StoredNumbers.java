package stenotherm.modal;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInput;
import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Rows of numbers beside a stored model, with their checksum. Numbers are big-endian.
 *
 * <pre>
 * int       length of the part that follows [bytes], at most 2^24
 * part      int     rows; for each
 *             int       numbers
 *             double for each
 * int       checksum (CRC-32) of that part
 * </pre>
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class StoredNumbers {
  private StoredNumbers() {}

  /**
   * Writes rows.
   *
   * @param rows finite numbers [in units that whoever writes and reads agrees on]; rows need not be
   *     of one length
   * @param out where to write to; neither flushed nor closed
   * @throws IOException if writing fails
   * @throws IllegalStateException if they are more than the form has room for
   */
  public static void write(List<double[]> rows, DataOutput out) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream part = new DataOutputStream(bytes);
    part.writeInt(rows.size());
    for (double[] row : rows) {
      part.writeInt(row.length);
      for (double value : row) {
        part.writeDouble(value);
      }
    }
    StoredForm.writePart(bytes.toByteArray(), out);
  }

  /**
   * Reads rows that were written. Safe for data of unknown origin: lengths are compared with what
   * is there before anything is allocated.
   *
   * @param in where to read from; exactly the rows are read
   * @return the rows, in the order and of the lengths in which they were written [in their units]
   * @throws ModelFormatException if these are no such rows, or they are damaged
   * @throws IOException if reading fails
   */
  public static List<double[]> read(DataInput in) throws IOException {
    byte[] bytes = StoredForm.readPart(in, 0);
    if (bytes.length < Integer.BYTES) {
      throw new ModelFormatException("rows", 0, "are too short");
    }
    DataInputStream part = new DataInputStream(new ByteArrayInputStream(bytes));
    int count = count("rows", part.readInt(), part.available() / Integer.BYTES);
    List<double[]> rows = new ArrayList<>();
    for (int left = count; left > 0; left--) {
      double[] row = new double[count("numbers", part.readInt(), part.available() / Double.BYTES)];
      for (int n = 0; n < row.length; n++) {
        row[n] = part.readDouble();
        if (!Double.isFinite(row[n])) {
          throw new ModelFormatException("number", 0, row[n] + " is not finite");
        }
      }
      rows.add(row);
    }
    return rows;
  }

  private static int count(String field, int value, int most) throws ModelFormatException {
    if (value < 0 || value > most) {
      throw new ModelFormatException(field, 0, value + " must lie between 0 and " + most);
    }
    return value;
  }
}
