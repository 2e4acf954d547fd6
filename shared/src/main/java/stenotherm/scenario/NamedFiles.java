package stenotherm.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stenotherm.base.Suggestions;
import stenotherm.text.CsvTable;
import stenotherm.text.ScalarNode;
import stenotherm.text.TextFormatException;

/**
 * The tables that a scenario names, in its folder or below it. A scenario may come from a stranger:
 * nothing else on the machine is read, and a text that comes from no folder names no file.
 */
final class NamedFiles {
  private static final String ENDING = ".csv";

  private final Optional<Path> folder;

  private NamedFiles(Optional<Path> folder) {
    this.folder = folder;
  }

  static NamedFiles none() {
    return new NamedFiles(Optional.empty());
  }

  static NamedFiles in(Path folder) {
    return new NamedFiles(Optional.of(folder));
  }

  /** Those beside a file. */
  static NamedFiles beside(Path file) {
    return in(Optional.ofNullable(file.getParent()).orElse(Path.of("")));
  }

  /**
   * Reads a table with commas.
   *
   * @throws TextFormatException if there is none of that name, or with the table's own name, line
   *     and column
   */
  CsvTable table(ScalarNode node) {
    Path from =
        folder.orElseThrow(
            () -> node.fail("names a file, which only a scenario that is a file itself may do"));
    String name = node.text();
    if (!name.endsWith(ENDING)) {
      throw node.fail("must be a table in the scenario's folder whose name ends with .csv");
    }
    Path file;
    try {
      file = from.resolve(name);
    } catch (InvalidPathException problem) {
      throw node.fail("is no name of a file");
    }
    Path root = from.toAbsolutePath().normalize();
    if (!file.toAbsolutePath().normalize().startsWith(root)) {
      throw node.fail("must lie in the scenario's folder or below it");
    }
    try {
      return CsvTable.read(file);
    } catch (NoSuchFileException missing) {
      String meant =
          Suggestions.closest(name, tables(from))
              .map(other -> ". Did you mean '" + other + "'?")
              .orElse("");
      throw node.fail("there is no such table in the scenario's folder" + meant);
    } catch (IOException problem) {
      throw node.fail("cannot be read: " + problem.getMessage());
    }
  }

  /** Names of the tables in a folder; none if it cannot be listed. */
  private static List<String> tables(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(each -> each.endsWith(ENDING))
          .sorted()
          .toList();
    } catch (IOException problem) {
      return List.of();
    }
  }
}
