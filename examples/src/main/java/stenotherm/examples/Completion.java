package stenotherm.examples;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** Prints a script by which a shell completes commands and options. */
@Command(
    name = "completion",
    description = {
      "Prints a script by which bash and zsh complete the commands and options of the program,"
          + " where it is called stenotherm."
    },
    footer = {
      "  alias stenotherm='" + ConsoleCommand.CALL + "'",
      "  source <(stenotherm completion)"
    })
final class Completion extends ConsoleCommand implements Callable<Integer> {
  @Override
  public Integer call() {
    out().print(AutoComplete.bash(Stenotherm.NAME, command().getParent()));
    out().flush();
    return 0;
  }
}
