package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The documents stay short, and what they point at is there. */
class DocumentsTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```.*?^```$");
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");

  /** The version of a project, as against those of its plugins. */
  private static final Pattern VERSION = Pattern.compile("(?m)^  <version>(.*)</version>$");

  /** A test that the text names. */
  private static final Pattern TEST = Pattern.compile("`([A-Z]\\w*(?:Test|Properties))`");

  @ParameterizedTest
  @CsvSource({"README.md, 8192", "DEVELOPERS.md, 16384", "examples/fleet/README.md, 6144"})
  void staysShort(String document, long bytes) throws IOException {
    assertTrue(Files.size(ROOT.resolve(document)) <= bytes, document + " is for a first reading");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "README.md",
        "DEVELOPERS.md",
        "core/CHANGELOG.md",
        "core/RELEASING.md",
        "examples/README.md",
        "examples/fleet/README.md",
        "validation/README.md"
      })
  void linksLeadSomewhere(String document) throws IOException {
    Path page = ROOT.resolve(document);
    List<String> dead = new ArrayList<>();
    for (String link : found(LINK, BLOCK.matcher(Files.readString(page)).replaceAll(""))) {
      if (link.startsWith("https:")) {
        continue;
      }
      String[] parts = link.split("#", 2);
      Path target = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
      if (!Files.exists(target) || parts.length > 1 && !anchors(target).contains(parts[1])) {
        dead.add(link);
      }
    }
    assertEquals(List.of(), dead, document);
  }

  /** The anchors that a reader of Markdown makes of headings. */
  private static Set<String> anchors(Path page) throws IOException {
    Set<String> anchors = new HashSet<>();
    for (String heading : found(HEADING, BLOCK.matcher(Files.readString(page)).replaceAll(""))) {
      anchors.add(
          heading.toLowerCase(Locale.ROOT).replaceAll("[^\\w -]", "").strip().replace(' ', '-'));
    }
    return anchors;
  }

  @Test
  void testsThatContributorsAreSentToExist() throws IOException {
    Set<String> sources = new HashSet<>();
    for (String module : List.of("core", "shared", "examples", "validation")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
        files.forEach(file -> sources.add(String.valueOf(file.getFileName())));
      }
    }
    List<String> tests = found(TEST, Files.readString(ROOT.resolve("DEVELOPERS.md")));
    assertTrue(tests.size() > 10, tests::toString);
    assertEquals(
        List.of(), tests.stream().filter(test -> !sources.contains(test + ".java")).toList());
  }

  /** The table of versions has no parent, and the program says its version itself. */
  @Test
  void thereIsOneVersion() throws IOException {
    for (String pom : List.of("pom.xml", "shared/bom/pom.xml")) {
      List<String> versions = found(VERSION, Files.readString(ROOT.resolve(pom)));
      assertEquals(
          List.of(Stenotherm.VERSION), versions.stream().map("Stenotherm "::concat).toList());
    }
  }

  @Test
  void everyProgramIsOnThePageOfExamples() throws IOException {
    String page = Files.readString(Path.of("README.md"));
    try (Stream<Path> files = Files.list(Path.of("src/main/java/stenotherm/examples"))) {
      for (Path file : files.toList()) {
        if (Files.readString(file).contains("public static void main(")) {
          String name = String.valueOf(file.getFileName()).replace(".java", "");
          assertTrue(page.contains("`" + name + "`") || page.contains("[" + name + "]"), name);
        }
      }
    }
  }

  private static List<String> found(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(match -> match.group(1)).toList();
  }
}
