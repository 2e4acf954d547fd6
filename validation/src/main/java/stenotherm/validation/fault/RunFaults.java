package stenotherm.validation.fault;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * The command that seeds all faults one by one.
 *
 * <p>Internal.
 */
@Command(
    name = "faults",
    description = {
      "Puts known faults into copies of core, one at a time, and checks whether a known answer"
          + " reveals each.",
      "Needs the source tree and a JDK. A fault is a patch in validation/src/faults."
    })
public final class RunFaults implements Callable<Integer> {
  @Option(
      names = "--tree",
      defaultValue = ".",
      paramLabel = "DIR",
      description = "The source tree (default: the current folder).")
  private Path tree = Path.of(".");

  @Option(names = "--quick", description = "Ask only for the answers that the faults name.")
  private boolean quick;

  @Parameters(
      arity = "0..*",
      paramLabel = "NAME",
      description = "Faults to seed, by the names of their files (default: all).")
  private List<String> names = List.of();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it
  private CommandSpec spec;

  /** Made by picocli. */
  public RunFaults() {}

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter errors = spec.commandLine().getErr();
    Path folder = tree.resolve("validation/src/faults");
    if (!Files.isDirectory(folder)) {
      errors.println("There is no folder " + folder + "; run in the source tree or name it.");
      return 2;
    }
    try {
      return seed(Fault.readAll(folder), out) ? 0 : 1;
    } catch (FaultException wrong) {
      errors.println(wrong.getMessage());
      return 1;
    }
  }

  private boolean seed(List<Fault> all, PrintWriter out) throws IOException {
    List<String> known = all.stream().map(Fault::name).toList();
    for (String name : names) {
      if (!known.contains(name)) {
        throw new FaultException("there is no fault '" + name + "'; there are " + known);
      }
    }
    long start = System.nanoTime();
    List<Fault> seeded =
        all.stream().filter(each -> names.isEmpty() || names.contains(each.name())).toList();
    List<KnownAnswer> answers =
        quick ? seeded.stream().map(Fault::answer).distinct().toList() : KnownAnswer.all();
    FaultyCore core = new FaultyCore(tree, tree.resolve("validation/target/faults"), answers);
    boolean passed = true;
    for (Map.Entry<KnownAnswer, String> answer : core.ask().entrySet()) {
      if (!answer.getValue().isEmpty()) {
        passed = false;
        line(out, "WRONG WITHOUT A FAULT: %s: %s", answer.getKey().words(), answer.getValue());
      }
    }
    int caught = 0;
    for (Fault fault : seeded) {
      caught += report(core, fault, out) ? 1 : 0;
    }
    double seconds = (System.nanoTime() - start) * 1e-9;
    line(
        out,
        "%d of %d faults caught by the answer named, in %.1f s",
        caught,
        seeded.size(),
        seconds);
    passed &= caught == seeded.size();
    line(out, passed ? "PASSED" : "FAILED");
    return passed;
  }

  /** Seeds a fault and tells what came of it; true if the answer named is wrong. */
  private static boolean report(FaultyCore core, Fault fault, PrintWriter out) throws IOException {
    Map<KnownAnswer, String> answers;
    try {
      answers = core.ask(fault);
    } catch (FaultException wrong) {
      line(out, "NOT SEEDED %s: %s", fault.name(), String.valueOf(wrong.getMessage()));
      return false;
    }
    String failure = answers.getOrDefault(fault.answer(), "");
    long others =
        answers.entrySet().stream()
            .filter(answer -> answer.getKey() != fault.answer() && !answer.getValue().isEmpty())
            .count();
    line(out, "%s %s: %s", failure.isEmpty() ? "SURVIVED" : "caught", fault.name(), fault.title());
    line(
        out,
        "  %s: %s; wrong besides: %d of %d",
        fault.answer().words(),
        failure.isEmpty() ? "right" : failure,
        others,
        answers.size() - 1);
    return !failure.isEmpty();
  }

  private static void line(PrintWriter out, String format, Object... values) {
    out.println(String.format(Locale.ROOT, format, values));
    out.flush();
  }
}
