package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
