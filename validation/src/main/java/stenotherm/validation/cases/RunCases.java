package stenotherm.validation.cases;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
import stenotherm.report.ReportFolder;
import stenotherm.validation.benchmark.ScipyComparison;
import stenotherm.validation.cases.CaseResult.Status;
import stenotherm.validation.studies.Findings.Exhibit;
import stenotherm.validation.studies.Study;
import stenotherm.words.LastWords;

/**
 * The command that runs cases.
 *
 * <p>Internal.
 */
@Command(
    name = "run",
    description = {
      "Runs validation cases and writes results.csv, report.html and report.md into a" + " folder.",
      "Each case is solved on finer and finer grids until its values are accurate enough: 0.02 K"
          + " for means and interior points, 0.1 K for extremes and corners, 0.1 %% for heat flows."
          + " It ends at 2 million cells, 2 GB or 120 s as 'not converged'."
    },
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:all values passed and converged",
      "1:a value lies outside its tolerance (measurements and common practice apart: that is a finding), or SciPy"
          + " gives other answers",
      "2:the command line is wrong, or a folder cannot be read or written",
      "3:none failed, but a file was refused",
      "4:none failed, but a value did not converge",
      "5:stopped or out of memory; nothing was written",
      "6:something unforeseen happened to a case or to the program, which is a fault of the program"
    })
public final class RunCases implements Callable<Integer> {
  private static final int FAILED = 1;
  private static final int WRONG = 2;
  private static final int REFUSED = 3;
  private static final int NOT_CONVERGED = 4;
  private static final int UNFORESEEN = 6;

  @Spec private @Nullable CommandSpec spec;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      required = true,
      description =
          "Folder for the results: new, empty, or with an earlier report, which is replaced.")
  private @Nullable Path out;

  @Option(
      names = "--refine",
      paramLabel = "N",
      defaultValue = "0",
      description =
          "Solve this many more grids of each case after its values are accurate enough, within"
              + " the same limits (default: 0).")
  private int refine;

  @Option(
      names = "--scipy",
      description =
          "Also compare the full solver with a program that uses SciPy, as the command"
              + " scipy-comparison does; takes some minutes more. If Python or SciPy is missing,"
              + " the report says so.")
  private boolean scipy;

  @Option(
      names = "--python",
      paramLabel = "COMMAND",
      defaultValue = "python3",
      description = "How Python is started for --scipy (default: ${DEFAULT-VALUE}).")
  private String python = "python3";

  @Option(names = "--quick", hidden = true, description = "A small problem for --scipy, for tests.")
  private boolean quick;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..*",
      description =
          "Case files (.yaml, .yml, .json) or folders of them; without any, the cases that come"
              + " with the program.")
  private List<Path> paths = new ArrayList<>();

  /** Whether something happened to a case that nobody foresaw. */
  private boolean unforeseen;

  /** Made by the command line. */
  public RunCases() {}

  @Override
  public Integer call() throws InterruptedException {
    CommandLine line = java.util.Objects.requireNonNull(spec).commandLine();
    PrintWriter console = line.getOut();
    if (refine < 0) {
      line.getErr().println("--refine: " + refine + " must be 0 or above");
      return WRONG;
    }
    try {
      ReportFolder folder =
          new ReportFolder(java.util.Objects.requireNonNull(out), ReportFiles.NAMES);
      folder.check();
      List<CaseResult> results = run(cases(), Limits.STANDARD, console);
      Optional<ScipyComparison.Result> comparison = compare(console);
      folder
          .write(ReportFiles.of(results, List.of(section(comparison))))
          .ifPresent(left -> console.println("The earlier report could not be deleted: " + left));
      summary(results, console);
      comparison.ifPresent(result -> console.println(ScipyComparison.TITLE + ": " + words(result)));
      console.println("Report: " + folder.file(ReportFiles.HTML));
      boolean differs =
          comparison.filter(result -> result.status() == ScipyComparison.Ending.FAILED).isPresent();
      return unforeseen ? UNFORESEEN : differs ? FAILED : status(results);
    } catch (InvalidInputException | IOException fault) {
      String kind =
          fault instanceof FileSystemException ? " (" + fault.getClass().getSimpleName() + ")" : "";
      line.getErr().println(MessageText.of(fault.getMessage() + kind));
      return WRONG;
    }
  }

  private Optional<ScipyComparison.Result> compare(PrintWriter console)
      throws IOException, InterruptedException {
    if (!scipy) {
      return Optional.empty();
    }
    console.println("comparison with SciPy");
    console.flush();
    return Optional.of(new ScipyComparison(List.of(python), quick).run(null));
  }

  private static Report.Section section(Optional<ScipyComparison.Result> comparison) {
    return comparison
        .map(result -> new Report.Section(ScipyComparison.TITLE, result.exhibits()))
        .orElseGet(
            () ->
                new Report.Section(
                    ScipyComparison.TITLE,
                    List.of(new Exhibit.Paragraph("Not run for this report; --scipy runs it."))));
  }

  /** How the comparison ended, as its last paragraph says. */
  private static String words(ScipyComparison.Result result) {
    Exhibit last = result.exhibits().get(result.exhibits().size() - 1);
    return last instanceof Exhibit.Paragraph text ? text.text() : result.status().toString();
  }

  private List<ValidationCase> cases() throws IOException {
    if (!paths.isEmpty()) {
      return List.copyOf(CaseSources.of(paths));
    }
    List<ValidationCase> all = new ArrayList<>(CaseSources.bundled());
    all.addAll(CodedCase.all(Study.Depth.FULL));
    return all;
  }

  /** Runs cases one after the other. */
  List<CaseResult> run(List<? extends ValidationCase> sources, Limits limits, PrintWriter console) {
    List<CaseResult> results = new ArrayList<>();
    Set<String> names = new HashSet<>();
    int number = 0;
    for (ValidationCase source : sources) {
      console.println(MessageText.of(++number + "/" + sources.size() + " " + source.name()));
      CaseResult result = runAlone(source, limits, console);
      if (!names.add(result.heading().id())) {
        result =
            CaseResult.refused(
                result.heading(),
                "another case has the same id, " + source.name() + " is left out");
      }
      console.println(shown("  " + result.heading().id() + ": " + result.status().words()));
      console.flush();
      results.add(result);
    }
    return results;
  }

  /** Whatever happens to a case, the others are run. */
  private CaseResult runAlone(ValidationCase source, Limits limits, PrintWriter console) {
    try {
      return source.run(
          limits,
          refine,
          progress -> {
            console.println(MessageText.of("  " + progress));
            console.flush();
          });
    } catch (CancellationException stop) {
      throw stop;
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError end) {
      unforeseen |= !LastWords.isWantOfMemory(end);
      return CaseResult.refused(
          new Study.Heading(source.name(), source.name(), "", Study.Kind.UNSTATED),
          LastWords.of(end));
    }
  }

  /** What did not converge, was refused or failed, in this order; then the counts. */
  static void summary(List<CaseResult> results, PrintWriter console) {
    for (Status status : new Status[] {Status.NOT_CONVERGED, Status.REFUSED}) {
      for (CaseResult result : results) {
        if (result.status() == status) {
          result.trouble().ifPresent(text -> console.println(shown(text)));
        }
      }
    }
    for (CaseResult result : results) {
      for (ValueResult value : result.values()) {
        if (!value.passed()) {
          console.println(shown(result.heading().id() + ": " + failure(result, value)));
        }
      }
    }
    console.println(Report.counts(results));
  }

  /** Texts come from files: each of their lines as a terminal may show it. */
  private static String shown(String text) {
    return text.lines().map(MessageText::of).collect(Collectors.joining(System.lineSeparator()));
  }

  private static String failure(CaseResult result, ValueResult value) {
    Reference reference = value.reference();
    ReferenceUnit unit = reference.expected().unit();
    return (result.hasFailure()
            ? "failed: "
            : "finding: disagrees with the " + result.heading().kind().word() + " value: ")
        + reference.probe()
        + (reference.time().isPresent()
            ? " at " + Digits.value(reference.time().getAsDouble()) + " s"
            : "")
        + " is "
        + Digits.value(value.computed())
        + " "
        + unit.label()
        + ", reference "
        + Digits.value(reference.expected().value())
        + ", error "
        + Digits.of(value.error())
        + ", tolerance "
        + Digits.of(reference.expected().tolerance());
  }

  private static int status(List<CaseResult> results) {
    if (results.stream().anyMatch(CaseResult::hasFailure)) {
      return FAILED;
    }
    if (results.stream().anyMatch(result -> result.status() == Status.REFUSED)) {
      return REFUSED;
    }
    return results.stream().anyMatch(result -> result.status() == Status.NOT_CONVERGED)
        ? NOT_CONVERGED
        : 0;
  }
}
