package stenotherm.base;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds what a user probably meant by a name that does not exist.
 *
 * <p>Two names are compared without regard to case, by the number of insertions, deletions,
 * replacements and swaps of neighbouring letters that turn one into the other (Damerau 1964,
 * Communications of the ACM 7:171-176; here in the restricted form that edits no part twice). A
 * name is offered only if it is within one edit for every three letters, rounded up, and within
 * three edits in all; a single letter is not offered for another. A name with other numbers is not
 * taken for a typing error: it may be listed, but it is not offered.
 *
 * <p>Stateless, thus thread-safe.
 */
public final class Suggestions {
  private static final int LETTERS_PER_EDIT = 3;
  private static final int MOST_EDITS = 3;

  /** Longest catalogue that a message lists in full. */
  private static final int LONGEST_LIST = 14;

  private static final int LONGEST_LISTING = 200;

  /** Names that a message shows of a longer catalogue. */
  private static final int FEW = 5;

  /** Longer texts are no names with a typing error. */
  private static final int LONGEST_NAME = 100;

  /** Longest piece of a user's text that a message repeats. */
  private static final int LONGEST_SHOWN = 60;

  /** Shorter words, such as "of", say nothing. */
  private static final int SHORTEST_WORD = 3;

  private Suggestions() {}

  /**
   * A word that users write for things that have other names in a catalogue.
   *
   * @param piece piece of what the user wrote, in lower case
   * @param names names in the catalogue that it may stand for, the likeliest first
   */
  public record OtherWord(String piece, List<String> names) {
    /** Copies the names. */
    public OtherWord {
      names = List.copyOf(names);
    }
  }

  /**
   * Returns the known name that is closest to a given one, or else the only one that contains it as
   * a word.
   *
   * @param given what the user wrote
   * @param known the names that exist; among equally close ones the first wins
   * @return the closest name; empty if none is close
   */
  public static Optional<String> closest(String given, Collection<String> known) {
    String wanted = normal(Checks.given("name", given));
    Checks.given("known names", known);
    if (wanted.length() > LONGEST_NAME) {
      return Optional.empty();
    }
    List<String> holding =
        known.stream().filter(name -> words(normal(name)).contains(wanted)).toList();
    if (!holding.isEmpty()) {
      return holding.size() == 1 ? Optional.of(holding.get(0)) : Optional.empty();
    }
    int fewest =
        1 + Math.min(MOST_EDITS, (wanted.length() + LETTERS_PER_EDIT - 1) / LETTERS_PER_EDIT);
    Optional<String> best = Optional.empty();
    for (String candidate : known) {
      int edits = distance(wanted, normal(candidate));
      boolean isAnother = wanted.length() == 1 && candidate.strip().length() == 1 && edits > 0;
      if (edits < fewest && !isAnother && numbers(wanted).equals(numbers(candidate))) {
        fewest = edits;
        best = Optional.of(candidate);
      }
    }
    return best;
  }

  /**
   * Makes the exception for a name that does not exist. It offers the closest name or else lists
   * all names; of a long list it names a few that have a word in common, and tells how many there
   * are.
   *
   * @param field name of the input
   * @param given what the user wrote
   * @param known the names that exist
   * @return the exception, to be thrown by the caller
   */
  public static InvalidInputException unknown(
      String field, String given, Collection<String> known) {
    return unknown(field, given, known, List.of());
  }

  private static InvalidInputException unknown(
      String field, String given, Collection<String> known, List<OtherWord> others) {
    Checks.given(field, given);
    return new InvalidInputException(
        field,
        "there is no \""
            + MessageText.of(given, LONGEST_SHOWN)
            + "\". "
            + closest(given, known)
                .map(name -> "Did you mean \"" + name + "\"?")
                .orElseGet(() -> list(given, known, others)));
  }

  private static String list(String given, Collection<String> known, List<OtherWord> others) {
    if (known.isEmpty()) {
      return "There is none at all.";
    }
    String all = String.join(", ", known);
    if (known.size() <= LONGEST_LIST && all.length() <= LONGEST_LISTING) {
      return "Known: " + all + ".";
    }
    List<String> likeliest =
        given.length() > LONGEST_NAME ? List.of() : likeliest(given, known, others);
    return likeliest.isEmpty()
        ? "None of the " + known.size() + " known names is like it."
        : "Closest of the " + known.size() + " known: " + String.join(", ", likeliest) + ".";
  }

  /**
   * Names that have all the words, names that other words stand for, then names with words in
   * common. Few edits alone make no two things alike: an axolotl is no python.
   */
  private static List<String> likeliest(
      String given, Collection<String> known, List<OtherWord> others) {
    String wanted = normal(given);
    Set<String> meant = new LinkedHashSet<>();
    for (OtherWord other : others) {
      if (wanted.contains(other.piece())) {
        meant.addAll(other.names());
      }
    }
    meant.retainAll(known);
    Set<String> all = words(wanted);
    Set<String> names = new LinkedHashSet<>();
    known.stream()
        .filter(name -> !all.isEmpty() && words(normal(name)).containsAll(all))
        .forEach(names::add);
    names.addAll(meant);
    // what a word stands for is all shown, such as every gecko; names that look alike are not
    long shown = Math.max(FEW, meant.size());
    known.stream()
        .filter(name -> common(wanted, normal(name)) > 0)
        .sorted(
            Comparator.<String>comparingInt(name -> -common(wanted, normal(name)))
                .thenComparingInt(name -> distance(wanted, normal(name))))
        .forEach(names::add);
    return names.stream().limit(shown).toList();
  }

  /** Number of words that two texts have in common. */
  private static int common(String first, String second) {
    Set<String> shared = new HashSet<>(words(first));
    shared.retainAll(words(second));
    return shared.size();
  }

  private static Set<String> words(String text) {
    Set<String> words = new LinkedHashSet<>(List.of(text.split("[^\\p{L}\\p{N}]+", -1)));
    words.removeIf(word -> word.length() < SHORTEST_WORD);
    return words;
  }

  /** The numbers in a text, with a blank between them. */
  private static String numbers(String text) {
    return text.replaceAll("\\D+", " ").strip();
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
    return find(field, given, items, nameOf, List.of());
  }

  /**
   * Finds an item of a catalogue by its name, without regard to case or surrounding blanks.
   *
   * @param <T> type of the items
   * @param field name of the input
   * @param given what the user wrote
   * @param items the catalogue
   * @param nameOf gives an item's name
   * @param others words that users write for some of the items; they lead to a hint, not to an item
   * @return the item
   * @throws InvalidInputException if no item has that name; it offers the closest names
   */
  public static <T> T find(
      String field,
      String given,
      List<T> items,
      Function<? super T, String> nameOf,
      List<OtherWord> others) {
    String wanted = normal(Checks.given(field, given));
    for (T item : items) {
      if (normal(nameOf.apply(item)).equals(wanted)) {
        return item;
      }
    }
    throw unknown(field, given, items.stream().<String>map(nameOf).toList(), others);
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
