package stenotherm.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder that holds a whole report or none: a new report is written beside it and then takes its
 * place. What a program that was killed has left beside it is put back or deleted by the next one.
 *
 * <p>Experimental. Immutable, thus thread-safe; one writer at a time.
 */
public final class ReportFolder {
  private static final String FRESH = ".new";
  private static final String EARLIER = ".old";

  /** A report is written within seconds: what lies beside it for longer was left behind [s]. */
  private static final long LEFT_BEHIND = 3600;

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
   * Checks, before any work, that a report can be written and would replace nothing but an earlier
   * report. An earlier report that a killed program has moved aside gets its name back; other
   * remains of such programs are deleted.
   *
   * @throws IOException if there is a file, or a folder with other things than a report in it, or
   *     nothing can be written there
   */
  public void check() throws IOException {
    if (path.getParent() == null) {
      throw new IOException(path + " is the root of a file system");
    }
    tidyUp();
    requireWritable();
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(path + " exists and is not a folder");
    }
    Optional<Path> other = other(path);
    if (other.isPresent()) {
      throw new IOException(
          path
              + " holds '"
              + other.get().getFileName()
              + "', which is no part of the report that this command writes;"
              + " name an empty folder, a new one or one with an earlier report of the same command");
    }
    // whether it can be moved depends on more than permissions; this is what will be done to it
    Path aside = sibling(EARLIER);
    Files.move(path, aside);
    Files.move(aside, path);
  }

  /** Makes a folder where the report or the folders above it shall be, and deletes it. */
  private void requireWritable() throws IOException {
    Path above = parentOf(path);
    while (!Files.exists(above, LinkOption.NOFOLLOW_LINKS)) {
      above = parentOf(above);
    }
    Path trial = above.resolve(sibling(FRESH).getFileName());
    Files.createDirectory(trial);
    Files.delete(trial);
  }

  /** Deals with what killed programs have left; what cannot be deleted stays. */
  private void tidyUp() throws IOException {
    Path parent = parentOf(path);
    if (!Files.isDirectory(parent)) {
      return;
    }
    Pattern left =
        Pattern.compile(
            Pattern.quote("." + path.getFileName() + "-") + "[0-9a-f]{1,16}\\.(new|old)");
    for (Path each : entries(parent)) {
      if (!left.matcher(each.getFileName().toString()).matches()
          || !Files.isDirectory(each, LinkOption.NOFOLLOW_LINKS)
          || other(each).isPresent()) {
        continue;
      }
      if (each.toString().endsWith(EARLIER) && !Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
        Files.move(each, path);
      } else if (isLeftBehind(each)) {
        deleteIfPossible(each);
      }
    }
  }

  private static boolean isLeftBehind(Path folder) throws IOException {
    Instant written = Files.getLastModifiedTime(folder).toInstant();
    return written.isBefore(Instant.now().minusSeconds(LEFT_BEHIND));
  }

  /** Something in a folder that is no part of a report. */
  private Optional<Path> other(Path folder) throws IOException {
    return entries(folder).stream()
        .filter(entry -> !names.contains(entry.getFileName().toString()))
        .findFirst();
  }

  /**
   * Writes the files; an earlier report stays as it is unless all of them could be written.
   *
   * @param files contents by name; a name may have a subfolder before it, as in {@code
   *     plots/one.svg}
   * @return where the earlier report is, if it is replaced but could not be deleted
   * @throws IOException if the report could not be written
   */
  public Optional<Path> write(Map<String, byte[]> files) throws IOException {
    check();
    Files.createDirectories(parentOf(path));
    Path fresh = sibling(FRESH);
    Path earlier = sibling(EARLIER);
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
      deleteIfPossible(fresh);
    }
    deleteIfPossible(earlier);
    return Files.exists(earlier) ? Optional.of(earlier) : Optional.empty();
  }

  private static Path parentOf(Path path) {
    Path parent = path.getParent();
    if (parent == null) {
      throw new IllegalStateException(path + " has no parent");
    }
    return parent;
  }

  /** A name beside the folder that nobody has: process numbers repeat in containers. */
  private Path sibling(String ending) {
    String unique = Long.toHexString(ThreadLocalRandom.current().nextLong());
    return parentOf(path).resolve("." + path.getFileName() + "-" + unique + ending);
  }

  private static List<Path> entries(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    }
  }

  /** Deletes a folder with all that is in it; links are not followed. */
  private static void deleteIfPossible(Path folder) {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    } catch (IOException | UncheckedIOException another) {
      // it may belong to somebody else, and does no harm
    }
  }
}
