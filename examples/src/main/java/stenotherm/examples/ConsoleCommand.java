package stenotherm.examples;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import stenotherm.base.MessageText;

/** What all commands have in common: help, exit codes, messages of one line each. */
@Command(
    mixinStandardHelpOptions = true,
    version = Stenotherm.VERSION,
    showDefaultValues = false,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done; all files are written",
      "2:the command line is wrong",
      "3:the scenario is wrong, cannot be read, or takes more than is allowed; nothing was written",
      "4:a file cannot be written; an earlier report is kept",
      "5:the computation failed, was stopped or ran out of memory; nothing was written",
      "6:something unforeseen happened, which is a fault of the program",
      "130:stopped with Ctrl-C; nothing was written"
    },
    footerHeading = "%nExample:%n")
abstract class ConsoleCommand {
  static final int BAD_COMMAND_LINE = 2;
  static final int BAD_SCENARIO = 3;
  static final int CANNOT_WRITE = 4;
  static final int FAILED = 5;
  static final int UNFORESEEN = 6;

  /** The property by which a launcher says what it is called. */
  static final String CALLED = "stenotherm.program";

  private static final int LONGEST_NAME = 100;

  /** Where it is after it was built, seen from the project's top folder. */
  private static final String JAR = "java -jar examples/target/stenotherm-examples.jar";

  /** The program as its user calls it, in the texts of helps. */
  static final String CALL = "${sys:" + CALLED + ":-" + JAR + "}";

  /** How the examples in helps begin. */
  static final String PROGRAM = "  " + CALL + " ";

  @Spec private @Nullable CommandSpec spec;

  /** How an example of a command line begins, as {@link #PROGRAM} does in helps. */
  static String program() {
    return "  " + System.getProperty(CALLED, JAR) + " ";
  }

  final CommandLine command() {
    if (spec == null) {
      throw new IllegalStateException("runs through its command line only");
    }
    return spec.commandLine();
  }

  final PrintWriter out() {
    return command().getOut();
  }

  final PrintWriter err() {
    return command().getErr();
  }

  /** Says what is wrong, and returns the exit code. */
  final int complain(int code, String message) {
    message.lines().map(MessageText::of).forEach(err()::println);
    err().flush();
    return code;
  }

  /** Refuses the value of an option. */
  final void require(boolean good, String option, Object value, String allowed) {
    if (!good) {
      throw new ParameterException(command(), option + ": " + value + " must be " + allowed);
    }
  }

  /** Messages of file exceptions are often a bare name; their kind says what is wrong. */
  static String inWords(IOException problem) {
    if (problem instanceof FileSystemException wrong && wrong.getFile() != null) {
      if (problem instanceof NoSuchFileException) {
        return missing(Path.of(wrong.getFile()).toAbsolutePath().normalize());
      }
      if (problem instanceof AccessDeniedException) {
        return MessageText.of(wrong.getFile(), LONGEST_NAME) + ": the system denies access to it";
      }
    }
    String kind =
        problem.getClass() == IOException.class
            ? ""
            : " (" + problem.getClass().getSimpleName() + ")";
    return problem.getMessage() + kind;
  }

  /** Where it was looked for: most often the program was started in another folder. */
  private static String missing(Path file) {
    Path folder = file.getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      return "there is no folder " + MessageText.of(folder.toString(), LONGEST_NAME);
    }
    return "there is no file "
        + MessageText.of(String.valueOf(file.getFileName()), LONGEST_NAME)
        + (folder == null ? "" : " in the folder " + folder);
  }
}
