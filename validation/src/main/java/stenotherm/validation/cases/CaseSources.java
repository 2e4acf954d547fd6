package stenotherm.validation.cases;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import stenotherm.base.InvalidInputException;
import stenotherm.text.Document;

/** Finds case files: in folders, and those that come with the program. */
final class CaseSources {
  private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");

  /** Lists the cases that come with the program; a jar has no folders to look into. */
  private static final String INDEX = "index.txt";

  private CaseSources() {}

  /**
   * Finds the files of paths.
   *
   * @param paths files, or folders that are searched with all that they hold
   * @return the files; those of a folder in the order of their names
   * @throws InvalidInputException if a path does not exist or a folder holds no case file
   * @throws IOException if a folder cannot be read
   */
  static List<CaseSource> of(List<Path> paths) throws IOException {
    List<CaseSource> sources = new ArrayList<>();
    for (Path path : paths) {
      if (!Files.isDirectory(path)) {
        if (!Files.exists(path)) {
          throw new InvalidInputException(path.toString(), "does not exist");
        }
        sources.add(source(path));
        continue;
      }
      List<Path> files;
      try (Stream<Path> all = Files.walk(path)) {
        files = all.filter(CaseSources::isCase).sorted().toList();
      }
      if (files.isEmpty()) {
        throw new InvalidInputException(
            path.toString(), "holds no case file (" + String.join(", ", ENDINGS) + ")");
      }
      files.forEach(file -> sources.add(source(file)));
    }
    return sources;
  }

  private static boolean isCase(Path path) {
    String name = path.toString().toLowerCase(Locale.ROOT);
    return Files.isRegularFile(path) && ENDINGS.stream().anyMatch(name::endsWith);
  }

  private static CaseSource source(Path path) {
    return new CaseSource(path.toString(), () -> Document.read(path));
  }

  /**
   * The cases that come with the program.
   *
   * @throws IOException if the program's own files cannot be read
   */
  static List<CaseSource> bundled() throws IOException {
    String index = new String(resource(INDEX), StandardCharsets.UTF_8);
    return index
        .lines()
        .map(name -> new CaseSource(name, () -> Document.parse(name, resource(name))))
        .toList();
  }

  private static byte[] resource(String name) throws IOException {
    try (InputStream stream = CaseSources.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IOException("the program comes without " + name);
      }
      return stream.readAllBytes();
    }
  }
}
