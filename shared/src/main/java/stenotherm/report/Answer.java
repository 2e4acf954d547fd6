package stenotherm.report;

import java.io.PrintWriter;
import java.util.Map;

/**
 * What a program says to a question: as text for a console, as JSON for other programs, and as
 * files.
 *
 * <p>Experimental. Implementations are immutable, thus thread-safe.
 */
public interface Answer {
  /**
   * Prints the answer as text.
   *
   * @param out where to
   */
  void print(PrintWriter out);

  /**
   * Writes the answer for other programs: all digits, SI units.
   *
   * @return a JSON object, ended by a line feed
   */
  String json();

  /**
   * Writes the files to memory; the same answer gives the same bytes.
   *
   * @param pictures whether the page has pictures
   * @return contents by name, the page that people open first
   */
  Map<String, byte[]> files(boolean pictures);
}
