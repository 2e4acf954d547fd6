package stenotherm.validation.fault;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A small case whose answer is known in closed form, exact for the scheme. A sound core has all of
 * them right; the tests see to that.
 *
 * <p>Internal. Thread-safe.
 */
public sealed interface KnownAnswer
    permits ConductionAnswer, ParcelAnswer, ClimateAnswer, VerdictAnswer {
  /**
   * Computes the answer.
   *
   * @throws IllegalStateException if it is not the known one
   */
  void check();

  /**
   * Returns the name.
   *
   * @return the constant's name, unique among all answers
   */
  String name();

  /**
   * Returns the name as words.
   *
   * @return the name in small letters
   */
  default String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Returns all answers.
   *
   * @return those of the solver, then those of what is around it, of what burns and breathes
   *     inside, and of verdicts
   */
  static List<KnownAnswer> all() {
    return Stream.<KnownAnswer[]>of(
            ConductionAnswer.values(),
            ParcelAnswer.values(),
            ClimateAnswer.values(),
            VerdictAnswer.values())
        .flatMap(Stream::of)
        .toList();
  }

  /**
   * Finds an answer.
   *
   * @param name the constant's name
   * @return the answer
   * @throws IllegalArgumentException if there is none of that name
   */
  static KnownAnswer named(String name) {
    return all().stream()
        .filter(answer -> answer.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no answer '" + name + "'"));
  }

  /**
   * Checks one answer; it may be called in a class loader of its own, so that it takes and gives
   * nothing but texts.
   *
   * @param name the constant's name
   * @return what is wrong; empty if nothing is
   */
  static String failure(String name) {
    try {
      named(name).check();
      return "";
    } catch (RuntimeException | LinkageError wrong) {
      String message = wrong.getMessage();
      return message == null ? wrong.toString() : message;
    }
  }
}
