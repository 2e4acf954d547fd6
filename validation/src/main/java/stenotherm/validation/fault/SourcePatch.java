package stenotherm.validation.fault;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A change of source files in the unified format. A piece is put where its old lines stand, not at
 * its line number: a file may grow around it, but the lines themselves must stand there once.
 *
 * <p>Internal. Immutable, thus thread-safe.
 */
final class SourcePatch {
  /** Old and new lines of one piece, context included. */
  private record Piece(String file, String before, String after) {}

  private final List<Piece> pieces;

  private SourcePatch(List<Piece> pieces) {
    this.pieces = pieces;
  }

  /**
   * Reads a patch.
   *
   * @param lines the lines; those before the first file's are not looked at
   * @throws FaultException if there is no piece in it
   */
  static SourcePatch read(List<String> lines) {
    List<Piece> pieces = new ArrayList<>();
    String file = "";
    StringBuilder before = new StringBuilder();
    StringBuilder after = new StringBuilder();
    boolean isWithin = false;
    for (String line : lines) {
      boolean isHeader = line.startsWith("--- ") || line.startsWith("@@ ");
      if (isHeader && isWithin) {
        pieces.add(new Piece(file, before.toString(), after.toString()));
        isWithin = false;
      }
      if (line.startsWith("+++ b/")) {
        file = line.substring("+++ b/".length()).strip();
      } else if (line.startsWith("@@ ")) {
        before.setLength(0);
        after.setLength(0);
        isWithin = true;
      } else if (isWithin) {
        String text = line.isEmpty() ? "" : line.substring(1);
        if (!line.startsWith("+")) {
          before.append(text).append('\n');
        }
        if (!line.startsWith("-")) {
          after.append(text).append('\n');
        }
      }
    }
    if (isWithin) {
      pieces.add(new Piece(file, before.toString(), after.toString()));
    }
    if (pieces.isEmpty()) {
      throw new FaultException("holds no change");
    }
    return new SourcePatch(pieces);
  }

  /** A reader of source files by their path in the source tree. */
  interface Sources {
    /** Text of a file. */
    String read(String file);
  }

  /**
   * Changes files.
   *
   * @param sources the files as they are
   * @return the texts of the changed files by path
   * @throws FaultException if the old lines of a piece do not stand in its file just once
   */
  Map<String, String> apply(Sources sources) {
    Map<String, String> changed = new LinkedHashMap<>();
    for (Piece piece : pieces) {
      String text = changed.computeIfAbsent(piece.file(), sources::read);
      int first = text.indexOf(piece.before());
      if (first < 0 || text.indexOf(piece.before(), first + 1) >= 0) {
        throw new FaultException(
            "its lines stand "
                + (first < 0 ? "nowhere" : "more than once")
                + " in "
                + piece.file()
                + "; write the patch anew:\n"
                + piece.before());
      }
      String end = text.substring(first + piece.before().length());
      changed.put(piece.file(), text.substring(0, first) + piece.after() + end);
    }
    return changed;
  }
}
