package stenotherm.validation.cases;

import java.io.IOException;
import java.util.function.Consumer;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.text.Document;
import stenotherm.text.TextFormatException;
import stenotherm.validation.studies.Study;

/**
 * A file that should hold a case.
 *
 * @param name the name that messages show
 * @param reader reads it
 */
record CaseSource(String name, Reader reader) implements ValidationCase {
  /** Reads a document. */
  interface Reader {
    /**
     * Reads the document.
     *
     * @throws IOException if it cannot be read
     * @throws TextFormatException if it is not YAML or JSON
     */
    Document read() throws IOException;
  }

  @Override
  public CaseResult run(Limits limits, int refine, Consumer<String> progress) {
    CaseFile file;
    try {
      file = CaseReader.read(reader.read());
    } catch (TextFormatException fault) {
      return refused(String.valueOf(fault.getMessage()));
    } catch (InvalidInputException fault) {
      // of the whole case, such as a grid that would be too large
      return refused(name + ": " + fault.getMessage());
    } catch (IOException fault) {
      return refused(name + ": cannot be read, " + MessageText.of(fault.toString()));
    }
    return CaseRunner.run(file, limits, refine, progress);
  }

  private CaseResult refused(String reason) {
    return CaseResult.refused(new Study.Heading(name, name, "", Study.Kind.UNSTATED), reason);
  }
}
