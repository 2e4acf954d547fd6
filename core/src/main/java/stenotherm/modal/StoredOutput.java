package stenotherm.modal;

import java.io.DataOutput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Writes the parts of a stored model and keeps their checksum. */
final class StoredOutput {
  private final DataOutput out;
  private final CRC32 checksum = new CRC32();

  StoredOutput(DataOutput out) {
    this.out = out;
  }

  private void bytes(byte[] bytes) throws IOException {
    checksum.update(bytes);
    out.write(bytes);
  }

  void code(int value) throws IOException {
    bytes(new byte[] {(byte) value});
  }

  void integer(int value) throws IOException {
    bytes(ByteBuffer.allocate(Integer.BYTES).putInt(value).array());
  }

  void large(long value) throws IOException {
    bytes(ByteBuffer.allocate(Long.BYTES).putLong(value).array());
  }

  void real(double value) throws IOException {
    large(Double.doubleToRawLongBits(value));
  }

  void reals(double[] values) throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate(Double.BYTES * values.length);
    buffer.asDoubleBuffer().put(values);
    bytes(buffer.array());
  }

  void text(String value) throws IOException {
    byte[] encoded = value.getBytes(StandardCharsets.UTF_8);
    integer(encoded.length);
    bytes(encoded);
  }

  void checksum() throws IOException {
    out.writeLong(checksum.getValue());
  }
}
