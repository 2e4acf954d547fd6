package stenotherm.validation.fault;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A fault to seed, as its patch file says: a line {@code Fault:} with what is wrong and a line
 * {@code Answer:} with the {@link KnownAnswer} that must reveal it, before the change itself.
 *
 * <p>Internal. Immutable, thus thread-safe.
 *
 * @param name name of the file, without its ending
 * @param title what is wrong
 * @param answer the answer that must come out wrong
 * @param patch the change
 */
record Fault(String name, String title, KnownAnswer answer, SourcePatch patch) {
  private static final String ENDING = ".patch";

  /**
   * Reads all faults of a folder.
   *
   * @return the faults in the order of their names
   * @throws FaultException if a file is not what it should be
   */
  static List<Fault> readAll(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> listed = Files.list(folder)) {
      files = listed.filter(file -> file.toString().endsWith(ENDING)).sorted().toList();
    }
    List<Fault> faults = new ArrayList<>();
    for (Path file : files) {
      String name = String.valueOf(file.getFileName());
      name = name.substring(0, name.length() - ENDING.length());
      List<String> lines = Files.readAllLines(file);
      try {
        KnownAnswer answer = KnownAnswer.named(header(lines, "Answer: "));
        faults.add(new Fault(name, header(lines, "Fault: "), answer, SourcePatch.read(lines)));
      } catch (IllegalArgumentException | FaultException wrong) {
        throw new FaultException("fault '" + name + "': " + wrong.getMessage(), wrong);
      }
    }
    return faults;
  }

  private static String header(List<String> lines, String key) {
    return lines.stream()
        .filter(line -> line.startsWith(key))
        .findFirst()
        .map(line -> line.substring(key.length()).strip())
        .orElseThrow(() -> new FaultException("has no line '" + key.strip() + "'"));
  }
}
