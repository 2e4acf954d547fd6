package stenotherm.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The command line, without running a journey. */
class ValidationTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter errors = new StringWriter();

  private int run(String... arguments) {
    CommandLine program =
        Validation.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(errors, true));
    return program.execute(arguments);
  }

  @Test
  void helpListsTheCommands() {
    assertEquals(0, run("--help"));
    assertTrue(out.toString().contains("transient-accuracy"), out::toString);
    assertTrue(out.toString().contains("transit-accuracy"), out::toString);
    assertTrue(out.toString().contains("modal-report"), out::toString);
    assertTrue(out.toString().contains("scipy-comparison"), out::toString);
  }

  @Test
  void thePageListsTheCommandsAndTheExitCodes() throws IOException {
    String page = Files.readString(Path.of("README.md"));
    Map<String, CommandLine> commands = Validation.commandLine().getSubcommands();
    Set<String> listed =
        Pattern.compile("^\\| `([a-z-]+)` \\|", Pattern.MULTILINE)
            .matcher(page.substring(page.indexOf("## Commands")))
            .results()
            .map(row -> row.group(1))
            .collect(Collectors.toSet());
    assertEquals(commands.keySet(), listed);
    Map<String, String> exitCodes =
        commands.get("run").getCommandSpec().usageMessage().exitCodeList();
    assertEquals(7, exitCodes.size());
    exitCodes.forEach(
        (code, meaning) ->
            assertTrue(page.contains("| " + code + " | " + meaning + " |"), meaning));
  }

  @Test
  void commandsHaveHelp() {
    assertEquals(0, run("transient-accuracy", "--help"));
    assertTrue(out.toString().contains("60,000 cells"), out::toString);
  }

  @Test
  void whatIsUnforeseenIsALine() {
    PrintWriter broken =
        new PrintWriter(
            new StringWriter() {
              @Override
              public void write(String text, int offset, int length) {
                throw new ArrayIndexOutOfBoundsException("7 \u001b[31m");
              }
            });
    int code =
        Validation.commandLine()
            .setOut(broken)
            .setErr(new PrintWriter(errors, true))
            .execute("--help");
    assertEquals(6, code);
    assertEquals(1, errors.toString().lines().count(), errors::toString);
    assertTrue(
        errors.toString().startsWith("unforeseen: ArrayIndexOutOfBoundsException '7 \\u001B"),
        errors::toString);
  }

  @Test
  void thereAreNoArgumentFilesAndNoRawEscapes() {
    assertEquals(2, run("run", "--out", "target/nothing", "@missing"));
    assertTrue(errors.toString().contains("@missing: does not exist"), errors::toString);
    assertEquals(2, run("run", "--\u001b[31mred"));
    assertFalse(errors.toString().contains("\u001b"), errors::toString);
  }

  @Test
  void noCommandAndUnknownCommandsAreErrors() {
    assertEquals(2, run());
    assertTrue(errors.toString().contains("Missing required subcommand"), errors::toString);
    assertEquals(2, run("no-such-command"));
  }
}
