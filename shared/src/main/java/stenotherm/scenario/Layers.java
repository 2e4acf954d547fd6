package stenotherm.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.MessageText;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.VacuumPanel;
import stenotherm.parcel.WallLayer;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;

/** Reads materials and layers of them. */
final class Layers {
  static final String NONE = "none";

  static final List<VacuumPanel> PANELS =
      List.of(VacuumPanel.METALLISED_FILM, VacuumPanel.ALUMINIUM_FOIL);

  /** Plastic thicker than the wall of any container is meant as foam [m]. */
  private static final double THICKEST_PLASTIC = 0.005;

  private static final Pattern THICKNESS_ALONE =
      Pattern.compile("(?i)[0-9./\\s-]+(?:mm|cm|in\\.?|inch(?:es)?|\")");

  /** A number at the end without a unit, which after EPS may be the density. */
  private static final Pattern WITHOUT_UNIT =
      Pattern.compile("(?i)(?:(?!EPS\\s+[0-9.]+$)(\\p{L}[\\p{L}\\s]*)\\s)?([0-9.][0-9./\\s-]*)");

  private static final Set<String> NOTHING =
      Set.of("no", "nothing", "no foam", "no insulation", "without");

  /** Longest thickness that a message repeats. */
  private static final int LONGEST_SHOWN = 20;

  private static final Pattern EPS = Pattern.compile("(?i)EPS\\s*([0-9]+(?:\\.[0-9]+)?)");

  private Layers() {}

  /** One layer or several, the outermost first, or none. */
  static List<WallLayer> read(Node node, Assumptions assumptions) {
    if (node instanceof ScalarNode scalar) {
      return scalar.text().equals(NONE) ? List.of() : List.of(wall(scalar, assumptions));
    }
    List<WallLayer> layers = new ArrayList<>();
    for (ScalarNode each : node.asSequence().scalars()) {
      layers.add(wall(each, assumptions));
    }
    return layers;
  }

  private static WallLayer wall(ScalarNode node, Assumptions assumptions) {
    if (NOTHING.contains(node.text().toLowerCase(Locale.ROOT))) {
      throw node.fail("is written none, for walls of board alone");
    }
    String text = node.writtenOut();
    if (THICKNESS_ALONE.matcher(text).matches()) {
      String thickness = MessageText.of(text, LONGEST_SHOWN);
      throw node.fail(
          "is a thickness without a material, write for example foam "
              + thickness
              + " (white, of beads) or XPS "
              + thickness);
    }
    Matcher bare = WITHOUT_UNIT.matcher(text);
    if (text.length() <= LONGEST_SHOWN && bare.matches()) {
      String name = bare.group(1) == null ? "foam" : bare.group(1);
      throw node.fail(
          (bare.group(1) == null ? "has neither a unit nor a material" : "has no unit")
              + ", write for example "
              + name
              + " "
              + bare.group(2)
              + (bare.group(2).matches("[5-9]|[0-9]{2,}") ? " mm" : " in"));
    }
    return layer(node, EverydayWords.WALL, assumptions);
  }

  /** A material and its thickness, or a kind of vacuum panel and its three extents. */
  static WallLayer layer(ScalarNode node, EverydayWords words, Assumptions assumptions) {
    for (VacuumPanel panel : PANELS) {
      if (node.text().regionMatches(true, 0, panel.name(), 0, panel.name().length())) {
        return panel(panel, node);
      }
    }
    NamedQuantity layer =
        NamedQuantity.of(
            node,
            "a material and a thickness",
            words == EverydayWords.BEDDING
                ? "damp sphagnum 20 mm or damp sphagnum 3/4 in"
                : "EPS 20 19 mm or EPS 20 3/4 in");
    Material material = material(layer.name(), words, assumptions);
    double thickness = layer.quantity().length();
    if (material.equals(Materials.POLYSTYRENE) && thickness > THICKEST_PLASTIC) {
      throw node.fail(
          "is solid plastic; foam of it is EPS, write for example foam 19 mm or EPS 20 19 mm");
    }
    return node.locate(() -> new WallLayer(material, thickness));
  }

  private static WallLayer panel(VacuumPanel panel, ScalarNode node) {
    String size = node.text().substring(panel.name().length()).replaceFirst("^\\s*,", "").strip();
    if (size.isEmpty()) {
      throw node.fail(
          "needs the panel's length, width and thickness, because heat passes along its edges,"
              + " write for example "
              + panel.name()
              + " 300 x 200 x 20 mm");
    }
    Size extents = node.piece(size).size();
    return node.locate(
        () ->
            panel.layer(
                Math.max(extents.x(), extents.y()),
                Math.min(extents.x(), extents.y()),
                extents.z()));
  }

  static Material material(ScalarNode node, EverydayWords words, Assumptions assumptions) {
    return words.material(node, assumptions).orElseGet(() -> node.locate(() -> named(node)));
  }

  private static Material named(ScalarNode node) {
    Matcher eps = EPS.matcher(node.text());
    return eps.matches()
        ? Materials.expandedPolystyrene(node.piece(eps.group(1)).number())
        : Materials.named(node.text());
  }
}
