package stenotherm.base;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds what a user probably meant by a name that does not exist.
 *
 * <p>Two names are compared without regard to case, by the number of insertions, deletions,
 * replacements and swaps of neighbouring letters that turn one into the other (Damerau 1964,
 * Communications of the ACM 7:171-176; here in the restricted form that edits no part twice). A
 * name is offered only if it is at most one edit away for every three letters, rounded up, and at
 * most three in all.
 *
 * <p>Stable. Stateless, thus thread-safe.
 */
public final class Suggestions {
  private static final int LETTERS_PER_EDIT = 3;
  private static final int MOST_EDITS = 3;

  private Suggestions() {}

  /**
   * Returns the known name that is closest to a given one.
   *
   * @param given what the user wrote
   * @param known the names that exist; among equally close ones the first wins
   * @return the closest name; empty if none is close
   */
  public static Optional<String> closest(String given, Collection<String> known) {
    String wanted = normal(given);
    int fewest =
        1 + Math.min(MOST_EDITS, (wanted.length() + LETTERS_PER_EDIT - 1) / LETTERS_PER_EDIT);
    Optional<String> best = Optional.empty();
    for (String candidate : known) {
      int edits = distance(wanted, normal(candidate));
      if (edits < fewest) {
        fewest = edits;
        best = Optional.of(candidate);
      }
    }
    return best;
  }

  /**
   * Makes the exception for a name that does not exist, with the closest name or else all names.
   *
   * @param field name of the input
   * @param given what the user wrote
   * @param known the names that exist
   * @return the exception, to be thrown by the caller
   */
  public static InvalidInputException unknown(
      String field, String given, Collection<String> known) {
    return new InvalidInputException(
        field,
        "there is no \""
            + given
            + "\". "
            + closest(given, known)
                .map(name -> "Did you mean \"" + name + "\"?")
                .orElseGet(() -> "Known: " + String.join(", ", known) + "."));
  }

  /**
   * Finds an item of a catalogue by its name, without regard to case or surrounding blanks.
   *
   * @param <T> type of the items
   * @param field name of the input
   * @param given what the user wrote
   * @param items the catalogue
   * @param nameOf gives an item's name
   * @return the item
   * @throws InvalidInputException if no item has that name; it offers the closest name
   */
  public static <T> T find(
      String field, String given, List<T> items, Function<? super T, String> nameOf) {
    String wanted = normal(given);
    for (T item : items) {
      if (normal(nameOf.apply(item)).equals(wanted)) {
        return item;
      }
    }
    throw unknown(field, given, items.stream().<String>map(nameOf).toList());
  }

  /** Number of edits between two texts. */
  static int distance(String first, String second) {
    int[] twoBack = new int[second.length() + 1];
    int[] back = new int[second.length() + 1];
    int[] row = new int[second.length() + 1];
    for (int column = 0; column <= second.length(); column++) {
      back[column] = column;
    }
    for (int line = 1; line <= first.length(); line++) {
      row[0] = line;
      for (int column = 1; column <= second.length(); column++) {
        boolean same = first.charAt(line - 1) == second.charAt(column - 1);
        int edits = back[column - 1] + (same ? 0 : 1);
        edits = Math.min(edits, Math.min(back[column], row[column - 1]) + 1);
        boolean swapped =
            line > 1
                && column > 1
                && first.charAt(line - 1) == second.charAt(column - 2)
                && first.charAt(line - 2) == second.charAt(column - 1);
        if (swapped) {
          edits = Math.min(edits, twoBack[column - 2] + 1);
        }
        row[column] = edits;
      }
      int[] free = twoBack;
      twoBack = back;
      back = row;
      row = free;
    }
    return back[second.length()];
  }

  private static String normal(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }
}
