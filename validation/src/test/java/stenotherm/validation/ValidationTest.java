package stenotherm.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
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
  void commandsHaveHelp() {
    assertEquals(0, run("transient-accuracy", "--help"));
    assertTrue(out.toString().contains("60,000 cells"), out::toString);
  }

  @Test
  void noCommandAndUnknownCommandsAreErrors() {
    assertEquals(2, run());
    assertTrue(errors.toString().contains("Missing required subcommand"), errors::toString);
    assertEquals(2, run("no-such-command"));
  }
}
