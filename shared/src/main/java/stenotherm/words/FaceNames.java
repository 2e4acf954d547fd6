package stenotherm.words;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.base.Face;

/**
 * What people call the faces of a parcel: lid, floor, left, right, front and back.
 *
 * <p>Left and right are the ends of the box's first length, front and back those of its second, all
 * named as if the lid were up.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class FaceNames {
  private static final Map<String, Face> BY_NAME = byName();
  private static final Pattern LABEL = Pattern.compile("\\b[xyz](?:Min|Max)\\b");

  private FaceNames() {}

  private static Map<String, Face> byName() {
    Map<String, Face> faces = new LinkedHashMap<>();
    for (Face face :
        new Face[] {Face.Z_MAX, Face.Z_MIN, Face.X_MIN, Face.X_MAX, Face.Y_MIN, Face.Y_MAX}) {
      faces.put(face.words(), face);
    }
    return Collections.unmodifiableMap(faces);
  }

  /**
   * Returns all faces by their names.
   *
   * @return the six faces, unmodifiable
   */
  public static Map<String, Face> all() {
    return BY_NAME;
  }

  /**
   * Puts the names of faces in the place of their {@link Face#label() labels}, which names of
   * boundaries and blocks are made of.
   *
   * @param text a text, for example {@code "part 1 of zMax"}
   * @return the same for people, for example {@code "part 1 of lid"}
   */
  public static String in(String text) {
    StringBuilder named = new StringBuilder();
    Matcher labels = LABEL.matcher(text);
    while (labels.find()) {
      for (Face face : Face.values()) {
        if (face.label().equals(labels.group())) {
          labels.appendReplacement(named, face.words());
        }
      }
    }
    return labels.appendTail(named).toString();
  }
}
