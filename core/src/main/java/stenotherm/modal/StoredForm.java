package stenotherm.modal;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.EOFException;
import java.io.IOException;
import java.util.zip.CRC32;

/**
 * What stored forms have in common: a head of a magic number and a version, and parts with their
 * length and checksum. Numbers are big-endian.
 *
 * <pre>
 * int       length of the part that follows [bytes], at most 2^24
 * part
 * int       checksum (CRC-32) of that part
 * </pre>
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class StoredForm {
  /** Longest that a part may be [bytes]. */
  public static final int LONGEST = 1 << 24;

  private static final String END = "the data end here";

  private StoredForm() {}

  /**
   * Reads a head.
   *
   * @param in where to read from; exactly the head is read
   * @param magic the magic number, a long
   * @param version the version, an int
   * @param otherwise what the data are if the magic number is another, as a clause
   * @throws ModelFormatException if the head is another one, or not all of it is there
   * @throws IOException if reading fails
   */
  public static void readHead(DataInput in, long magic, int version, String otherwise)
      throws IOException {
    long found;
    try {
      found = in.readLong();
    } catch (EOFException early) {
      throw new ModelFormatException("magic number", 0, END);
    }
    if (found != magic) {
      throw new ModelFormatException("magic number", 0, otherwise);
    }
    int of;
    try {
      of = in.readInt();
    } catch (EOFException early) {
      throw new ModelFormatException("version", Long.BYTES, END);
    }
    if (of != version) {
      throw new ModelFormatException(
          "version", Long.BYTES, of + " is unknown; " + version + " is read here");
    }
  }

  /**
   * Writes a part.
   *
   * @param part the part
   * @param out where to write to; neither flushed nor closed
   * @throws IOException if writing fails
   * @throws IllegalStateException if it is longer than the form has room for
   */
  public static void writePart(byte[] part, DataOutput out) throws IOException {
    if (part.length > LONGEST) {
      throw new IllegalStateException(
          part.length + " bytes; their stored form has room for " + LONGEST);
    }
    out.writeInt(part.length);
    out.write(part);
    out.writeInt(checksum(part));
  }

  /**
   * Reads a part. Safe for data of unknown origin: the length has a limit.
   *
   * @param in where to read from; exactly the part is read
   * @param position where the part begins, in bytes from the beginning of what is stored
   * @return the part
   * @throws ModelFormatException if the length is out of its range, not all is there, or it is
   *     damaged
   * @throws IOException if reading fails
   */
  public static byte[] readPart(DataInput in, long position) throws IOException {
    byte[] part;
    int checksum;
    try {
      int length = in.readInt();
      if (length < 0 || length > LONGEST) {
        throw new ModelFormatException(
            "length", position, length + " must lie between 0 and " + LONGEST);
      }
      part = new byte[length];
      in.readFully(part);
      checksum = in.readInt();
    } catch (EOFException early) {
      throw new ModelFormatException("part", position, "the data end within it");
    }
    if (checksum != checksum(part)) {
      throw new ModelFormatException("checksum", position, "does not match: the data are damaged");
    }
    return part;
  }

  private static int checksum(byte[] part) {
    CRC32 checksum = new CRC32();
    checksum.update(part);
    return (int) checksum.getValue();
  }
}
