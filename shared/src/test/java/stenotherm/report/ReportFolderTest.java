package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report takes the place of an earlier one, and of nothing else. */
class ReportFolderTest {
  private static final Set<String> NAMES = Set.of("page", "plots");

  @TempDir Path home;

  private ReportFolder folder() {
    return new ReportFolder(home.resolve("out"), NAMES);
  }

  private static Map<String, byte[]> files(String... names) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name : names) {
      files.put(name, name.getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  private List<String> written() throws IOException {
    try (Stream<Path> all = Files.walk(home)) {
      return all.filter(Files::isRegularFile)
          .map(file -> home.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  @Test
  void replacesAnEarlierReportWithItsSubfolders() throws IOException {
    folder().write(files("page", "plots/1", "plots/2"));
    assertEquals(List.of("out/page", "out/plots/1", "out/plots/2"), written());
    folder().write(files("page", "plots/3"));
    assertEquals(List.of("out/page", "out/plots/3"), written());
    assertEquals("plots/3", Files.readString(folder().file("plots/3")));
  }

  @Test
  void keepsAnEarlierReportIfAFileCannotBeWritten() throws IOException {
    folder().write(files("page"));
    // a file where a subfolder would have to be
    assertThrows(IOException.class, () -> folder().write(files("plots", "plots/1")));
    assertEquals(List.of("out/page"), written());
  }

  /** A program was killed when the earlier report was moved aside and the new one not yet there. */
  @Test
  void aReportThatAKilledProgramMovedAsideGetsItsNameBack() throws IOException {
    folder().write(files("page"));
    Files.move(home.resolve("out"), home.resolve(".out-7.old"));
    folder().check();
    assertEquals(List.of("out/page"), written());
  }

  @Test
  void whatKilledProgramsLeftIsDeletedAndNothingElse() throws IOException {
    for (String name : List.of(".out-7.new", ".out-9af3.old", ".out-8.new", ".out-x.new")) {
      Files.createDirectories(home.resolve(name));
      Files.writeString(home.resolve(name).resolve("page"), name);
    }
    Files.writeString(home.resolve(".out-8.new/letter"), "mine");
    Files.createDirectories(home.resolve(".out-6.new"));
    Files.writeString(home.resolve(".out-6.new/page"), "being written");
    FileTime yesterday = FileTime.from(Instant.now().minusSeconds(86_400));
    for (String name : List.of(".out-7.new", ".out-9af3.old", ".out-8.new", ".out-x.new")) {
      Files.setLastModifiedTime(home.resolve(name), yesterday);
    }
    folder().write(files("page"));
    folder().write(files("page"));
    assertEquals(
        List.of(
            ".out-6.new/page",
            ".out-8.new/letter",
            ".out-8.new/page",
            ".out-x.new/page",
            "out/page"),
        written());
  }

  /** Before anything is computed, not after. */
  @Test
  void aPlaceWhereNothingCanBeWrittenIsRefusedAtOnce() throws IOException {
    Files.writeString(home.resolve("letter"), "mine");
    ReportFolder below = new ReportFolder(home.resolve("letter/deep/out"), NAMES);
    assertThrows(IOException.class, below::check);
    ReportFolder deep = new ReportFolder(home.resolve("new/deep/out"), NAMES);
    deep.check();
    assertEquals(List.of("letter"), written());
    assertFalse(Files.exists(home.resolve("new")), "a check leaves nothing");
  }

  @Test
  void anEarlierReportThatCannotBeDeletedIsNoFailure() throws IOException {
    folder().write(files("page", "plots/1"));
    Path plots = folder().file("plots");
    Files.setPosixFilePermissions(plots, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeFalse(Files.isWritable(plots), "the user may write everywhere");
    Optional<Path> left = folder().write(files("page"));
    assertTrue(Files.exists(left.orElseThrow().resolve("plots/1")));
    assertEquals("page", Files.readString(folder().file("page")));
    Files.setPosixFilePermissions(
        left.get().resolve("plots"), PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  @Test
  void neverReplacesAnythingElse() throws IOException {
    Files.createDirectories(home.resolve("out"));
    Files.writeString(home.resolve("out/letter"), "mine");
    IOException refusal = assertThrows(IOException.class, () -> folder().write(files("page")));
    assertTrue(refusal.getMessage().contains("'letter'"), refusal.getMessage());
    ReportFolder aFile = new ReportFolder(home.resolve("out/letter"), NAMES);
    assertThrows(IOException.class, aFile::check);
    ReportFolder root = new ReportFolder(home.getRoot(), NAMES);
    assertThrows(IOException.class, root::check);
    assertEquals(List.of("out/letter"), written());
  }
}
