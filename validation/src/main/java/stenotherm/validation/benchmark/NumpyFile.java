package stenotherm.validation.benchmark;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

/**
 * Writes arrays in the open format NPY, version 1.0: a short text with type and shape, padded to a
 * multiple of 64 bytes, then the numbers. Source: the format's description in the documentation of
 * NumPy, from memory.
 */
final class NumpyFile {
  private static final byte[] MAGIC = {(byte) 0x93, 'N', 'U', 'M', 'P', 'Y', 1, 0};
  private static final int ALIGNMENT = 64;

  private NumpyFile() {}

  /**
   * Writes doubles.
   *
   * @throws IOException if the file cannot be written
   */
  static void write(Path file, double[] values) throws IOException {
    String shape = "(" + values.length + ",)";
    write(file, "<f8", shape, 8 * values.length, bytes -> put(bytes, values));
  }

  /**
   * Writes whole numbers.
   *
   * @throws IOException if the file cannot be written
   */
  static void write(Path file, int[] values) throws IOException {
    String shape = "(" + values.length + ",)";
    write(
        file,
        "<i4",
        shape,
        4 * values.length,
        bytes -> {
          for (int value : values) {
            bytes.putInt(value);
          }
        });
  }

  /**
   * Writes a table by rows.
   *
   * @param rows at least one, all of one length
   * @throws IOException if the file cannot be written
   */
  static void write(Path file, double[][] rows) throws IOException {
    int columns = rows[0].length;
    String shape = "(" + rows.length + ", " + columns + ")";
    write(
        file,
        "<f8",
        shape,
        8 * rows.length * columns,
        bytes -> {
          for (double[] row : rows) {
            put(bytes, row);
          }
        });
  }

  private static void put(ByteBuffer bytes, double[] values) {
    for (double value : values) {
      bytes.putDouble(value);
    }
  }

  private static void write(
      Path file, String type, String shape, int length, Consumer<ByteBuffer> numbers)
      throws IOException {
    String text = "{'descr': '" + type + "', 'fortran_order': False, 'shape': " + shape + ", }";
    // the text ends with a line feed; two bytes before it tell its length
    int unpadded = MAGIC.length + 2 + text.length() + 1;
    int padding = (ALIGNMENT - unpadded % ALIGNMENT) % ALIGNMENT;
    String header = text + " ".repeat(padding) + "\n";
    byte[] content = new byte[unpadded + padding + length];
    ByteBuffer bytes = ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN);
    bytes.put(MAGIC).putShort((short) header.length());
    bytes.put(header.getBytes(StandardCharsets.US_ASCII));
    numbers.accept(bytes);
    Files.write(file, content);
  }
}
