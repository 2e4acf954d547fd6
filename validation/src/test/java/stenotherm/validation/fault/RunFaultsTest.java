package stenotherm.validation.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The machinery of seeded faults: on one of them, and on patches that must not pass. */
class RunFaultsTest {
  private static final Path TREE = Path.of("..");
  private static final Path FAULTS = TREE.resolve("validation/src/faults");

  private final StringWriter out = new StringWriter();

  private int run(String... arguments) {
    PrintWriter writer = new PrintWriter(out, true);
    return new CommandLine(new RunFaults()).setOut(writer).setErr(writer).execute(arguments);
  }

  @Test
  void everyPatchFitsTheSources() throws IOException {
    List<Fault> faults = Fault.readAll(FAULTS);
    assertTrue(faults.size() >= 30);
    Set<KnownAnswer> unused = new HashSet<>(KnownAnswer.all());
    for (Fault fault : faults) {
      unused.remove(fault.answer());
      fault
          .patch()
          .apply(
              file -> {
                try {
                  return Files.readString(TREE.resolve(file));
                } catch (IOException missing) {
                  throw new AssertionError(fault.name(), missing);
                }
              });
    }
    assertEquals(Set.of(), unused, "an answer that no fault needs");
  }

  @Test
  void faultsAreCaughtOrTheCommandFails(@TempDir Path tree) throws IOException {
    copy(TREE.resolve("core/src/main/java"), tree.resolve("core/src/main/java"));
    Path faults = tree.resolve("validation/src/faults");
    Files.createDirectories(faults);
    Files.copy(FAULTS.resolve("film-sign.patch"), faults.resolve("film-sign.patch"));
    String file = "core/src/main/java/stenotherm/conduction/HeatOperator.java";
    String head = "Fault: none\nAnswer: HEAT_CAPACITY\n--- a/" + file + "\n+++ b/" + file + "\n";
    Files.writeString(
        faults.resolve("harmless.patch"),
        head + "@@ -1 +1,2 @@\n+// nothing\n package stenotherm.conduction;\n");
    Files.writeString(faults.resolve("moved.patch"), head + "@@ -1 +1 @@\n-was here\n+is here\n");
    Files.writeString(faults.resolve("twice.patch"), head + "@@ -1 +1 @@\n-\n+ \n");
    Files.writeString(
        faults.resolve("broken.patch"),
        head + "@@ -1 +1 @@\n-package stenotherm.conduction;\n+package stenotherm,conduction;\n");
    // one run, as it compiles all of core; whether a sound core has all answers is
    // KnownAnswerTest's
    assertEquals(1, run("--quick", "--tree", tree.toString()), out::toString);
    for (String expected :
        List.of(
            "caught film-sign",
            "SURVIVED harmless",
            "NOT SEEDED moved: its lines stand nowhere in",
            "NOT SEEDED twice: its lines stand more than once in",
            "NOT SEEDED broken: does not compile:",
            "1 of 5 faults caught",
            "FAILED")) {
      assertTrue(out.toString().contains(expected), () -> expected + " is not in\n" + out);
    }
    assertTrue(!out.toString().contains("WRONG WITHOUT A FAULT"), out::toString);
  }

  @Test
  void wrongUseIsTold(@TempDir Path empty) {
    assertEquals(2, run("--tree", empty.toString()));
    assertTrue(out.toString().contains("run in the source tree or name it"), out::toString);
    assertEquals(1, run("--tree", TREE.toString(), "no-such-fault"));
    assertTrue(out.toString().contains("there is no fault 'no-such-fault'"), out::toString);
    assertThrows(FaultException.class, () -> SourcePatch.read(List.of("nothing")));
  }

  private static void copy(Path from, Path to) throws IOException {
    List<Path> files;
    try (Stream<Path> walked = Files.walk(from)) {
      files = walked.filter(Files::isRegularFile).toList();
    }
    for (Path file : files) {
      Path copy = to.resolve(from.relativize(file).toString());
      Files.createDirectories(copy.getParent());
      Files.copy(file, copy);
    }
  }
}
