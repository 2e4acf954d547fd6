package stenotherm.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder that holds a whole report or none: a new report is written beside it and then takes its
 * place.
 *
 * <p>Experimental. Immutable, thus thread-safe; one writer at a time.
 */
public final class ReportFolder {
  private final Path path;
  private final Set<String> names;

  /**
   * Names a folder; nothing is read or written yet.
   *
   * @param path where the folder is or shall be
   * @param names names of the files and subfolders that a report may have in it
   */
  public ReportFolder(Path path, Set<String> names) {
    this.path = path.toAbsolutePath().normalize();
    this.names = Set.copyOf(names);
  }

  /**
   * Returns where a file of the report is.
   *
   * @param name its name
   * @return the file's path
   */
  public Path file(String name) {
    return path.resolve(name);
  }

  /**
   * Checks that a report would replace nothing but an earlier report.
   *
   * @throws IOException if there is a file, or a folder with other things than a report in it
   */
  public void check() throws IOException {
    if (path.getParent() == null) {
      throw new IOException(path + " is the root of a file system");
    }
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(path + " exists and is not a folder");
    }
    for (Path entry : entries()) {
      if (!names.contains(entry.getFileName().toString())) {
        throw new IOException(
            path
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
   * @param files contents by name; a name may have a subfolder before it, as in {@code
   *     plots/one.svg}
   * @throws IOException if that fails
   */
  public void write(Map<String, byte[]> files) throws IOException {
    check();
    Path parent = parentOf(path);
    Files.createDirectories(parent);
    Path fresh = sibling(parent, ".new");
    Path earlier = sibling(parent, ".old");
    try {
      Files.createDirectory(fresh);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path target = fresh.resolve(file.getKey());
        Files.createDirectories(parentOf(target));
        Files.write(target, file.getValue());
      }
      boolean replaces = Files.exists(path);
      if (replaces) {
        Files.move(path, earlier);
      }
      try {
        Files.move(fresh, path);
      } catch (IOException failure) {
        if (replaces) {
          Files.move(earlier, path);
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
    return parent.resolve("." + path.getFileName() + "-" + ProcessHandle.current().pid() + ending);
  }

  private List<Path> entries() throws IOException {
    try (Stream<Path> entries = Files.list(path)) {
      return entries.sorted().toList();
    }
  }

  /** Deletes a folder with all that is in it; links are not followed. */
  private static void delete(Path folder) throws IOException {
    if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(each);
        }
      }
    }
  }
}
