package stenotherm.scenario;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stenotherm.base.Face;
import stenotherm.text.ScalarNode;
import stenotherm.words.FaceNames;

/** The names that files may use for the faces of a box: those of people and the axes' labels. */
final class Faces {
  private static final Map<String, Face> NAMES = names();

  /** Other words for faces; a container may have one as its name, unlike a face's own name. */
  private static final Map<String, Face> OTHER_WORDS =
      Map.of("top", Face.Z_MAX, "bottom", Face.Z_MIN);

  private static final Set<String> SIDES = Set.of("side", "sides");

  /** A word that adds nothing after the name of a face. */
  private static final Pattern WALL = Pattern.compile("(?<=\\w)\\s+(?:side|wall)$");

  private Faces() {}

  private static Map<String, Face> names() {
    Map<String, Face> faces = new LinkedHashMap<>(FaceNames.all());
    for (Face face : Face.values()) {
      faces.put(face.label(), face);
    }
    return Collections.unmodifiableMap(faces);
  }

  static List<String> all() {
    return Stream.concat(NAMES.keySet().stream(), OTHER_WORDS.keySet().stream().sorted()).toList();
  }

  static boolean has(String name) {
    return NAMES.containsKey(name);
  }

  /** The face that a file names. */
  static Face of(ScalarNode node) {
    if (SIDES.contains(node.text())) {
      throw node.fail(
          "'"
              + node.text()
              + "' does not say which of the four, write left or right (the ends of the box's first"
              + " length), front or back (the ends of its second)");
    }
    ScalarNode bare = node.piece(WALL.matcher(node.text()).replaceFirst(""));
    Face other = OTHER_WORDS.get(bare.text());
    return other == null ? bare.choice(NAMES) : other;
  }
}
