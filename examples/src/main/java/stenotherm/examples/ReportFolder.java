package stenotherm.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder that holds a whole report or none: a new one is written beside it and then takes its
 * place.
 */
final class ReportFolder {
  static final String REPORT = "report.html";
  static final String SUMMARY = "summary.json";
  static final String HISTORY = "history.csv";

  private static final Set<String> NAMES = Set.of(REPORT, SUMMARY, HISTORY);

  private final Path folder;

  ReportFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  Path folder() {
    return folder;
  }

  Path report() {
    return folder.resolve(REPORT);
  }

  /**
   * Refuses a place where a report would take the place of something else.
   *
   * @throws IOException if there is a file, or a folder with other things than a report in it
   */
  void check() throws IOException {
    if (folder.getParent() == null) {
      throw new IOException(folder + " is the root of a file system");
    }
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(folder + " exists and is not a folder");
    }
    for (Path entry : entries(folder)) {
      if (!NAMES.contains(entry.getFileName().toString())) {
        throw new IOException(
            folder
                + " holds '"
                + entry.getFileName()
                + "', which is no part of a report;"
                + " name an empty folder, a new one or one with an earlier report");
      }
    }
  }

  /**
   * Writes the files; an earlier report stays as it is unless all of them could be written.
   *
   * @param files contents by name
   * @throws IOException if that fails
   */
  void write(Map<String, byte[]> files) throws IOException {
    check();
    Path parent = parentOf(folder);
    Files.createDirectories(parent);
    Path fresh = sibling(parent, ".new");
    Path earlier = sibling(parent, ".old");
    try {
      Files.createDirectory(fresh);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Files.write(fresh.resolve(file.getKey()), file.getValue());
      }
      boolean replaces = Files.exists(folder);
      if (replaces) {
        Files.move(folder, earlier);
      }
      try {
        Files.move(fresh, folder);
      } catch (IOException failure) {
        if (replaces) {
          Files.move(earlier, folder);
        }
        throw failure;
      }
    } finally {
      delete(fresh);
    }
    delete(earlier);
  }

  private static Path parentOf(Path path) {
    Path parent = path.getParent();
    if (parent == null) {
      throw new IllegalStateException(path + " has no parent");
    }
    return parent;
  }

  private Path sibling(Path parent, String ending) {
    return parent.resolve(
        "." + folder.getFileName() + "-" + ProcessHandle.current().pid() + ending);
  }

  private static List<Path> entries(Path directory) throws IOException {
    try (Stream<Path> entries = Files.list(directory)) {
      return entries.sorted().toList();
    }
  }

  /** Deletes a folder of files. */
  private static void delete(Path directory) throws IOException {
    if (Files.isDirectory(directory, LinkOption.NOFOLLOW_LINKS)) {
      for (Path entry : entries(directory)) {
        Files.delete(entry);
      }
      Files.delete(directory);
    }
  }
}
