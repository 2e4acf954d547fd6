package stenotherm.scenario;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.parcel.Container;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads where a warmer or a pack lies: on a face, on a container, or anywhere in the fill. */
final class PlacementReader {
  private static final String STAND_OFF = "stand-off";
  private static final String CONTACT = "contact";
  private static final String OFFSET = "offset";
  private static final String POSITION = "position";
  private static final String THIN = "thin";

  private static final Pattern ON =
      Pattern.compile(
          "(.+?),?\\s+(?:on|at|taped\\s+(?:to|on|under)|"
              + "(?:under|inside|in)(?=\\s+(?:the\\s+)?(?:lid|top)$))"
              + "\\s+(?:the\\s+)?(.+)",
          Pattern.DOTALL);

  private final KeyedSection section;
  private final String noun;
  private final List<Container> containers;

  /** The name of the thing, and where it lies. */
  record Placed(ScalarNode kind, Placement placement) {}

  /** A thing of a section, which names it and perhaps its place under a key. */
  PlacementReader(KeyedSection section, String key, List<Container> containers) {
    this.section = section;
    this.noun = key;
    this.containers = containers;
  }

  /** A thing that is named together with what it is on, unless it lies loose. */
  Placed read() {
    ScalarNode what = section.require(noun).asScalar();
    Matcher parts = ON.matcher(what.text());
    if (!parts.matches()) {
      if (!section.has(POSITION)) {
        throw what.fail(
            "must say where the "
                + noun
                + " is, write for example "
                + example(what)
                + ", or give its position"
                + EverydayWords.hoursTell(noun, what));
      }
      return new Placed(what, loose());
    }
    return new Placed(what.piece(parts.group(1)), on(what.piece(parts.group(2))));
  }

  /** What the file names, on the lid, if it is known. */
  private String example(ScalarNode what) {
    return EverydayWords.isWarmer(what.text())
        ? what.text() + " on lid"
        : Vocabulary.exampleOnLid(noun);
  }

  /** On a face or a container. */
  Placement on(ScalarNode where) {
    if (section.has(POSITION)) {
      throw section.node().failAt(POSITION, "cannot be given together with 'on'");
    }
    for (Container each : containers) {
      // a single one stands under the key cup, whatever it is
      boolean only = containers.size() == 1 && where.text().equals("cup");
      if ((each.name().equals(where.text()) || only) && !Faces.has(where.text())) {
        refuse("for a " + noun + " that lies on a container", STAND_OFF, CONTACT, OFFSET);
        double top = each.position().aboveFloor() + each.vessel().inner().height();
        Position on = new Position(each.position().alongX(), each.position().alongY(), top);
        return loose(on);
      }
    }
    refuse("for a " + noun + " on a face", THIN);
    return onFace(Faces.of(where));
  }

  /** At the position that the section gives. */
  Placement loose() {
    refuse("for a " + noun + " that lies loose", STAND_OFF, CONTACT, OFFSET);
    return loose(Positions.onFloor(section.require(POSITION)));
  }

  private void refuse(String where, String... keys) {
    for (String key : keys) {
      if (section.has(key)) {
        throw section.node().failAt(key, "has no effect " + where);
      }
    }
  }

  private Placement loose(Position position) {
    Map<String, Axis> axes = ContainerReader.axesByName();
    Axis thin = section.value(THIN).asScalar().choice(axes);
    return new Placement.InCavity(position, thin);
  }

  private Placement onFace(Face face) {
    Mounting mounting = mounting();
    Node offset = section.optional(OFFSET).orElse(null);
    if (offset == null) {
      section.tell(OFFSET, "in the middle of the face", "assumed");
      return Placement.onFace(face, mounting);
    }
    List<ScalarNode> both = offset.asSequence().requireSize(2).scalars();
    double first = both.get(0).length();
    double second = both.get(1).length();
    return offset.locate(() -> new Placement.OnFace(face, first, second, mounting));
  }

  private Mounting mounting() {
    Node standOff = section.optional(STAND_OFF).orElse(null);
    if (standOff == null) {
      ScalarNode contact = section.value(CONTACT).asScalar();
      double resistance = contact.thermalResistance();
      return contact.locate(() -> new Mounting(0, resistance));
    }
    if (section.has(CONTACT)) {
      throw section.node().failAt(CONTACT, "has no effect with a stand-off");
    }
    double gap = standOff.asScalar().length();
    return standOff.locate(() -> Mounting.standingOff(gap));
  }
}
