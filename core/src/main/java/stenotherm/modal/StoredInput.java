package stenotherm.modal;

import java.io.DataInput;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * Reads the parts of a stored model. Each length is compared with its limit before anything is
 * allocated for it.
 */
final class StoredInput {
  /** Longest name, in bytes of UTF-8. */
  static final int LONGEST_TEXT = 4000;

  /** Most numbers of a model in all: 256 MiB. */
  private static final long MOST_NUMBERS = 1L << 25;

  private final DataInput in;
  private final CRC32 checksum = new CRC32();
  private long position;
  private long numbers;

  StoredInput(DataInput in) {
    this.in = in;
  }

  ModelFormatException wrong(String field, String problem) {
    return new ModelFormatException(field, position, problem);
  }

  private byte[] bytes(String field, int length) throws IOException {
    byte[] bytes = new byte[length];
    try {
      in.readFully(bytes);
    } catch (EOFException early) {
      throw wrong(field, "the data end here");
    }
    checksum.update(bytes);
    position += length;
    return bytes;
  }

  /** A small code. */
  int code(String field, int most) throws IOException {
    int value = bytes(field, 1)[0];
    if (value < 0 || value > most) {
      throw wrong(field, "the code " + value + " is unknown");
    }
    return value;
  }

  int integer(String field) throws IOException {
    return ByteBuffer.wrap(bytes(field, Integer.BYTES)).getInt();
  }

  /** A number of things or a position among them. */
  int count(String field, int least, int most) throws IOException {
    int value = integer(field);
    if (value < least || value > most) {
      throw wrong(field, value + " must lie between " + least + " and " + most);
    }
    return value;
  }

  long large(String field) throws IOException {
    return ByteBuffer.wrap(bytes(field, Long.BYTES)).getLong();
  }

  /** A finite number. */
  double real(String field) throws IOException {
    return reals(field, 1)[0];
  }

  /** A finite number, 0 or above. */
  double notNegative(String field) throws IOException {
    double value = real(field);
    if (!(value >= 0)) {
      throw wrong(field, value + " must not be negative");
    }
    return value;
  }

  /** Finite numbers; the total read so far must be within a limit. */
  double[] reals(String field, int length) throws IOException {
    numbers += length;
    if (numbers > MOST_NUMBERS) {
      throw wrong(field, "there are more than " + MOST_NUMBERS + " numbers");
    }
    double[] values = new double[length];
    ByteBuffer.wrap(bytes(field, Double.BYTES * length)).asDoubleBuffer().get(values);
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw wrong(field, value + " is not a finite number");
      }
    }
    return values;
  }

  String text(String field) throws IOException {
    byte[] encoded = bytes(field, count("length of " + field, 0, LONGEST_TEXT));
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(encoded)).toString();
    } catch (CharacterCodingException damaged) {
      throw wrong(field, "is not valid UTF-8");
    }
  }

  /** Compares the checksum of all that was read so far. */
  void checksum() throws IOException {
    long expected = checksum.getValue();
    if (large("checksum") != expected) {
      throw wrong("checksum", "does not match; the data are damaged");
    }
  }
}
