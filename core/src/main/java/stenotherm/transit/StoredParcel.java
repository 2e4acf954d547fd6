package stenotherm.transit;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInput;
import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.journey.Contact;
import stenotherm.modal.ModelFormatException;
import stenotherm.modal.ReducedModel;
import stenotherm.modal.StoredForm;
import stenotherm.parcel.Parcel;

/**
 * Writes and reads the form in which the model of a packing is stored. Numbers are big-endian.
 *
 * <pre>
 * long      0x5354454E50415243, "STENPARC"
 * int       version, 4
 * int       length of the part that follows [bytes], at most 2^24
 * part      long    checksum (CRC-32) of all that runs of the packing depend on
 *           int     number of solid cells
 *           byte    scope, by its position
 *           double  time between stored values [s]
 *           int     contacts, at most 1000; for each
 *             byte  face, by its position
 *             4 doubles  ends of its two ranges
 *           int     boundaries in one air, at most 1000; a text each
 *           int     outputs, as many as a model of that scope reads; for each
 *             double  estimated error of the reduction
 *           int     blocks that vary; for each
 *             double  conductivity in the network that was reduced [W/(m K)]
 *           int     settings at hand, at most 1000; for each
 *             double for each boundary  surface coefficient [W/(m2 K)]
 *             double for each block that varies  conductivity [W/(m K)]
 * int       checksum (CRC-32) of that part
 * the reduced model, see the documentation of the package modal
 * </pre>
 *
 * Texts are in modified UTF-8 after their length as an unsigned short.
 */
final class StoredParcel {
  private static final long MAGIC = 0x5354454E50415243L;
  private static final int VERSION = 4;
  private static final int MOST = 1000;

  /** Most numbers of a kind: a part has room for no more. */
  private static final int MOST_NUMBERS = StoredForm.LONGEST / Double.BYTES;

  /** Position of the part; a fault inside it is reported here. */
  private static final int PART_AT = 12;

  private StoredParcel() {}

  /** What is stored beside the reduced model. */
  record Content(
      int cells,
      ModelScope scope,
      double interval,
      TreeSet<String> inOneAir,
      ReducedParcel reduced,
      Map<TransitOutput, Double> errors) {}

  static void write(ParcelBody body, Content content, DataOutput out) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream part = new DataOutputStream(bytes);
    part.writeLong(PackingIdentity.of(body.parcel()));
    part.writeInt(content.cells);
    part.writeByte(content.scope.ordinal());
    part.writeDouble(content.interval);
    part.writeInt(body.parts().contacts().size());
    for (Contact contact : body.parts().contacts()) {
      part.writeByte(contact.face().ordinal());
      for (Range range : List.of(contact.first(), contact.second())) {
        part.writeDouble(range.low());
        part.writeDouble(range.high());
      }
    }
    part.writeInt(content.inOneAir.size());
    for (String name : content.inOneAir) {
      part.writeUTF(name);
    }
    part.writeInt(body.outputs().size());
    for (TransitOutput output : body.outputs()) {
      part.writeDouble(content.errors.getOrDefault(output, 0.0));
    }
    double[] reference = content.reduced.reference();
    part.writeInt(reference.length);
    writeAll(reference, part);
    part.writeInt(content.reduced.atHand().size());
    for (Schedule.Setting setting : content.reduced.atHand()) {
      writeAll(setting.coefficients().films(), part);
      writeAll(setting.coefficients().conductivities(), part);
    }
    out.writeLong(MAGIC);
    out.writeInt(VERSION);
    StoredForm.writePart(bytes.toByteArray(), out);
    content.reduced.model().write(out);
  }

  private static void writeAll(double[] values, DataOutput out) throws IOException {
    for (double value : values) {
      out.writeDouble(value);
    }
  }

  /** Reads the model of a packing; its body comes with the content. */
  static Read read(DataInput in, Parcel parcel) throws IOException {
    StoredForm.readHead(in, MAGIC, VERSION, "this is no stored model of a packing");
    byte[] bytes = StoredForm.readPart(in, PART_AT);
    DataInputStream part = new DataInputStream(new ByteArrayInputStream(bytes));
    if (bytes.length >= Long.BYTES && part.readLong() != PackingIdentity.of(parcel)) {
      throw new InvalidInputException(
          "packing '" + parcel.name() + "'",
          "is not the one that the model was built for; only its name may be another");
    }
    try {
      return read(part, in, parcel);
    } catch (InvalidInputException refused) {
      throw new ModelFormatException(refused.field(), PART_AT, refused.problem());
    } catch (EOFException early) {
      throw new ModelFormatException("part", PART_AT, "is too short");
    }
  }

  /** What was read. */
  record Read(ParcelBody body, Content content) {}

  private static Read read(DataInput part, DataInput in, Parcel parcel) throws IOException {
    int cells = count("cells", part.readInt(), Integer.MAX_VALUE);
    ModelScope[] scopes = ModelScope.values();
    ModelScope scope = scopes[count("scope", part.readByte(), scopes.length - 1)];
    double interval = number(part);
    List<Contact> contacts = new ArrayList<>();
    for (int left = count("contacts", part.readInt(), MOST); left > 0; left--) {
      Face face = Face.values()[count("face", part.readByte(), Face.values().length - 1)];
      Range first = new Range(number(part), number(part));
      Range second = new Range(number(part), number(part));
      contacts.add(new Contact(face, first, second, new Contact.Insulated()));
    }
    FaceParts parts = FaceParts.of(contacts, parcel.outer());
    TreeSet<String> inOneAir = new TreeSet<>();
    for (int left = count("boundaries", part.readInt(), MOST); left > 0; left--) {
      inOneAir.add(part.readUTF());
    }
    double[] errors = new double[count("outputs", part.readInt(), MOST_NUMBERS)];
    readAll(errors, part);
    double[] reference = new double[count("blocks", part.readInt(), MOST_NUMBERS)];
    readAll(reference, part);
    int settings = count("settings", part.readInt(), MOST);
    ReducedModel model = ReducedModel.read(in);
    ParcelBody body = ParcelBody.of(parcel, parts, model).within(scope);
    if (errors.length != body.outputs().size() || reference.length != body.varying().size()) {
      throw new ModelFormatException("outputs", PART_AT, "are not those of the packing");
    }
    Map<TransitOutput, Double> named = new LinkedHashMap<>();
    for (int index = 0; index < errors.length; index++) {
      named.put(body.outputs().get(index), errors[index]);
    }
    ReducedParcel reduced = new ReducedParcel(body, model, reference, List.of());
    List<Schedule.Setting> atHand = new ArrayList<>();
    for (int setting = 0; setting < settings; setting++) {
      double[] films = new double[body.ports().size()];
      readAll(films, part);
      double[] conductivities = new double[reference.length];
      readAll(conductivities, part);
      Schedule.Setting read = reduced.setting(new Coefficients(films, conductivities));
      // as the builder has them: readings of the two kinds differ in their last bits
      atHand.add(scope == ModelScope.ROUGH_MEANS ? read : read.forManyReadings());
    }
    Content content =
        new Content(cells, scope, interval, inOneAir, reduced.withAtHand(atHand), named);
    return new Read(body, content);
  }

  private static int count(String field, int value, int most) throws ModelFormatException {
    if (value < 0 || value > most) {
      throw new ModelFormatException(field, PART_AT, value + " must lie between 0 and " + most);
    }
    return value;
  }

  private static double number(DataInput in) throws IOException {
    double value = in.readDouble();
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw new ModelFormatException("number", PART_AT, value + " is not finite");
    }
    return value;
  }

  private static void readAll(double[] values, DataInput in) throws IOException {
    for (int index = 0; index < values.length; index++) {
      values[index] = number(in);
    }
  }
}
