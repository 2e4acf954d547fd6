package stenotherm.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Face;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Vent;
import stenotherm.text.Faults;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;

/** Reads where air passes the walls of a packing: holes and seams. */
final class OpeningsReader {
  private static final String HOLES = "holes";

  private static final Pattern HOLE =
      Pattern.compile("([0-9]{1,6})\\s*[x×X]\\s*(.+?)\\s+on\\s+(?:the\\s+)?(.+)", Pattern.DOTALL);

  /** Gap along the edges [m]. */
  private static final Map<String, Double> SEAMS = seams();

  private OpeningsReader() {}

  private static Map<String, Double> seams() {
    Map<String, Double> seams = new LinkedHashMap<>();
    seams.put("taped", 0.0);
    seams.put("closed", Openings.CLOSED_GAP);
    seams.put("loose", Openings.LOOSE_GAP);
    return Collections.unmodifiableMap(seams);
  }

  static List<String> seamNames() {
    return List.copyOf(SEAMS.keySet());
  }

  static Openings read(KeyedSection packing) {
    Faults faults = new Faults();
    double gap = faults.attempt(() -> packing.value("seams").asScalar().choice(SEAMS)).orElse(0.0);
    List<Vent> vents = new ArrayList<>();
    Node holes = packing.value(HOLES);
    boolean none = holes instanceof ScalarNode scalar && scalar.text().equals(Layers.NONE);
    if (!none) {
      List<ScalarNode> all =
          holes instanceof ScalarNode one ? List.of(one) : holes.asSequence().scalars();
      for (ScalarNode each : all) {
        faults.attempt(() -> vent(each)).ifPresent(vents::add);
      }
    }
    faults.throwIfAny();
    return new Openings(gap, vents);
  }

  private static Vent vent(ScalarNode node) {
    Matcher parts = HOLE.matcher(node.text());
    if (!parts.matches()) {
      throw node.fail(
          "must be how many holes, how wide and on which face, write for example 2 x 6 mm on lid");
    }
    int count = Integer.parseInt(parts.group(1));
    double diameter = node.piece(parts.group(2)).length();
    Face face = Faces.of(node.piece(parts.group(3)));
    return node.locate(() -> new Vent(face, count, diameter));
  }
}
