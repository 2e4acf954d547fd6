package stenotherm.validation.benchmark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * The command that runs {@link ScipyComparison}.
 *
 * <p>Internal.
 */
@Command(
    name = "scipy-comparison",
    description = {
      "Solves one journey of two days with the full solver and with a Python program that uses"
          + " SciPy (apt-get install python3-scipy), compares answers, error and cost.",
      "Takes some minutes, nearly all of them SciPy's search for its best. Seconds are told, not"
          + " judged."
    },
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:both programs give the same answers",
      "1:they do not, or one of them went wrong",
      "2:the command line is wrong, or files cannot be written",
      "3:nothing compared: Python or SciPy is missing"
    })
public final class CompareWithScipy implements Callable<Integer> {
  @Spec private @Nullable CommandSpec spec;

  @Option(
      names = "--python",
      paramLabel = "COMMAND",
      defaultValue = "python3",
      description = "How Python is started (default: ${DEFAULT-VALUE}).")
  private String python = "python3";

  @Option(
      names = "--keep",
      paramLabel = "DIR",
      description = "Keep the problem's files, the script and its results in this folder.")
  private @Nullable Path keep;

  @Option(names = "--quick", hidden = true, description = "A small problem, for tests.")
  private boolean quick;

  /** Made by the command line. */
  public CompareWithScipy() {}

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter console = Objects.requireNonNull(spec).commandLine().getOut();
    try {
      ScipyComparison.Result result = new ScipyComparison(List.of(python), quick).run(keep);
      console.println(ScipyComparison.TITLE);
      result.exhibits().forEach(exhibit -> PlainText.print(exhibit, console));
      console.flush();
      return switch (result.status()) {
        case AGREES -> 0;
        case FAILED -> 1;
        case MISSING -> 3;
      };
    } catch (IOException fault) {
      spec.commandLine().getErr().println(fault);
      return 2;
    }
  }
}
