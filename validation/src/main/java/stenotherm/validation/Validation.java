package stenotherm.validation;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.ScopeType;
import stenotherm.base.MessageText;
import stenotherm.base.Range;
import stenotherm.validation.agreement.AgreementReport;
import stenotherm.validation.agreement.ClimateAgreement;
import stenotherm.validation.agreement.LoggerCoverage;
import stenotherm.validation.benchmark.CompareWithScipy;
import stenotherm.validation.benchmark.FullSolverReport;
import stenotherm.validation.benchmark.ModalReport;
import stenotherm.validation.benchmark.ModelRunsReport;
import stenotherm.validation.benchmark.TransitReport;
import stenotherm.validation.cases.RunCases;
import stenotherm.validation.fault.RunFaults;
import stenotherm.validation.odds.AnswerTimes;
import stenotherm.validation.odds.Choices;
import stenotherm.validation.odds.OddsAgreement;
import stenotherm.validation.odds.UsualPackings;
import stenotherm.validation.odds.WarmSide;
import stenotherm.validation.odds.WarmerPlaces;
import stenotherm.validation.studies.WarmerEdges;
import stenotherm.words.LastWords;

/**
 * The validation program: checks what Stenotherm computes. {@code --help} lists what it can do.
 *
 * <p>Internal.
 */
@Command(
    name = "stenotherm-validation",
    description = "Checks what Stenotherm computes.",
    subcommands = {
      RunCases.class,
      RunFaults.class,
      Validation.ModelAccuracy.class,
      Validation.ClimateAccuracy.class,
      Validation.TransientAccuracy.class,
      Validation.TransitAccuracy.class,
      Validation.ModalAccuracy.class,
      Validation.ModelRunsAccuracy.class,
      Validation.AgreementOfOdds.class,
      Validation.TimesOfAnswers.class,
      Validation.OddsOfUsualPackings.class,
      Validation.OddsOfChoices.class,
      Validation.OddsOfWarmSide.class,
      Validation.OddsOfWarmerPlaces.class,
      Validation.CoverageOfLoggers.class,
      Validation.WarmerAccuracy.class,
      CompareWithScipy.class
    },
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:passed",
      "1:failed",
      "2:the command line is wrong",
      "3, 4:see the command",
      "5:stopped, or out of memory",
      "6:something unforeseen happened, which is a fault of the program"
    })
public final class Validation {
  private static final int WRONG = 2;
  private static final int STOPPED = 5;
  private static final int UNFORESEEN = 6;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Show this help and exit.")
  @SuppressWarnings("unused") // picocli sets and reads it
  private boolean helpWanted;

  private Validation() {}

  /**
   * Runs the program and ends with its exit status.
   *
   * @param arguments a command and its options
   */
  public static void main(String[] arguments) {
    System.exit(commandLine().execute(arguments));
  }

  /** The commands, as {@link #main} runs them. */
  static CommandLine commandLine() {
    return new CommandLine(new Validation())
        .setExpandAtFiles(false)
        .setParameterExceptionHandler((wrong, arguments) -> explain(wrong))
        .setExecutionStrategy(Validation::execute);
  }

  private static int explain(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    command.getErr().println(MessageText.of(String.valueOf(wrong.getMessage())));
    command.usage(command.getErr());
    return WRONG;
  }

  /** Whatever ends a command, nobody sees a stack trace. */
  private static int execute(ParseResult parsed) {
    try {
      return new CommandLine.RunLast().execute(parsed);
    } catch (ParameterException wrong) {
      throw wrong;
    } catch (RuntimeException | Error end) {
      Throwable cause = end instanceof ExecutionException ? end.getCause() : end;
      Throwable known = cause == null ? end : cause;
      PrintWriter console = parsed.commandSpec().commandLine().getErr();
      if (known instanceof InterruptedException || known instanceof CancellationException) {
        console.println("stopped: " + MessageText.of(String.valueOf(known.getMessage())));
        return STOPPED;
      }
      console.println(LastWords.of(known));
      return LastWords.isWantOfMemory(known) ? STOPPED : UNFORESEEN;
    }
  }

  /** Runs {@link FullSolverReport}. */
  @Command(
      name = "transient-accuracy",
      description = {
        "Runs a journey of two days on a grid of more than 60,000 cells.",
        "Prints what the run costs, its error from the time steps and from the grid, and its heat"
            + " ledger."
      })
  static final class TransientAccuracy implements Callable<Integer> {
    @Override
    public Integer call() {
      return FullSolverReport.print(System.out) ? 0 : 1;
    }
  }

  /** Runs {@link ModalReport}. */
  @Command(
      name = "modal-report",
      description = {
        "Builds reduced models of a parcel of more than 60,000 cells and follows a journey of two"
            + " days with them.",
        "Prints what building, finding modes and stepping cost, and the errors against the full"
            + " solver."
      })
  static final class ModalAccuracy implements Callable<Integer> {
    @Override
    public Integer call() {
      return ModalReport.print(new PrintWriter(System.out, true, StandardCharsets.UTF_8)) ? 0 : 1;
    }
  }

  /** Runs {@link ModelRunsReport}. */
  @Command(
      name = "model-runs",
      description = {
        "Builds models of a parcel of more than 60,000 cells and runs journeys with them.",
        "Prints what building and running cost, beside stepping every cell, and the errors against"
            + " that."
      })
  static final class ModelRunsAccuracy implements Callable<Integer> {
    @Override
    public Integer call() {
      return ModelRunsReport.print(new PrintWriter(System.out, true, StandardCharsets.UTF_8))
          ? 0
          : 1;
    }
  }

  /** Runs {@link OddsAgreement}. */
  @Command(
      name = "odds-agreement",
      description = {
        "Runs 304 journeys of six packings, every uncertain quantity varied, as verdicts do and by"
            + " the model of the full grid.",
        "Prints how far odds and margins are apart."
      })
  static final class AgreementOfOdds implements Callable<Integer> {
    @Option(
        names = "--seeds",
        defaultValue = "1",
        description = "How often, on other points; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private int seeds;

    @Override
    public Integer call() {
      return OddsAgreement.print(System.out, seeds) ? 0 : 1;
    }
  }

  /** Runs {@link AnswerTimes}. */
  @Command(
      name = "answer-times",
      description = {
        "Judges scenarios and one packing on a template, and runs 10,240 journeys of that packing,"
            + " twice.",
        "Prints wall and processor time and bytes allocated, beside runs of the full grid. The start"
            + " of the JVM is not in it."
      })
  static final class TimesOfAnswers implements Callable<Integer> {
    @Parameters(paramLabel = "SCENARIO", arity = "0..*", description = "Scenario files.")
    @SuppressWarnings("unused") // picocli sets it
    private List<Path> scenarios = new ArrayList<>();

    @Override
    public Integer call() throws IOException {
      AnswerTimes.print(System.out, scenarios);
      return 0;
    }
  }

  /** Runs {@link UsualPackings}. */
  @Command(
      name = "usual-packings",
      description = "Prints the odds of usual packings over the overnight lows at both ends.")
  static final class OddsOfUsualPackings implements Callable<Integer> {
    @Override
    public Integer call() {
      UsualPackings.print(System.out);
      return 0;
    }
  }

  /** Runs {@link WarmSide}. */
  @Command(
      name = "warm-side",
      description = {
        "Splits what fails of usual boxes with a warmer in mild weather: cold, heat, air, burns.",
        "Prints what decides, and what single quantities change."
      })
  static final class OddsOfWarmSide implements Callable<Integer> {
    @Override
    public Integer call() {
      WarmSide.print(System.out);
      return 0;
    }
  }

  /** Runs {@link Choices}. */
  @Command(
      name = "choices",
      description = {
        "Finds the odds of usual boxes in mild to harsh weather with one choice made otherwise:"
            + " running mean, which temperature of the animal, how ranges are read, parcels among"
            + " others, correlation of legs.",
        "Prints what each choice alone does."
      })
  static final class OddsOfChoices implements Callable<Integer> {
    @Override
    public Integer call() {
      Choices.print(System.out);
      return 0;
    }
  }

  /** Runs {@link LoggerCoverage}. */
  @Command(
      name = "logger-coverage",
      description = {
        "Makes loggers' traces of boxes with known fill, leakage and warmer, with noise, offsets and"
            + " steps, and fits them.",
        "Prints how often the 90 % intervals hold the known values, with a warmer and without."
      })
  static final class CoverageOfLoggers implements Callable<Integer> {
    @Option(
        names = "--traces",
        defaultValue = "1000",
        description = "How many; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private int traces;

    @Option(
        names = "--threads",
        defaultValue = "2",
        description = "Fits at a time; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private int threads;

    @Override
    public Integer call() {
      return LoggerCoverage.print(System.out, traces, threads) ? 0 : 1;
    }
  }

  /** Runs {@link WarmerPlaces}. */
  @Command(
      name = "warmer-places",
      description =
          "Prints odds and temperatures with a warmer on the cup, some inches above it and under the"
              + " lid.")
  static final class OddsOfWarmerPlaces implements Callable<Integer> {
    @Override
    public Integer call() {
      WarmerPlaces.print(System.out);
      return 0;
    }
  }

  /** Runs {@link TransitReport}. */
  @Command(
      name = "transit-accuracy",
      description = {
        "Runs a parcel of more than 60,000 cells through journeys of two days, with more and more"
            + " physics.",
        "Prints what the runs cost, their error from the time steps and their heat ledgers; for"
            + " scenario files also the effect of coefficients that are constant within a stage."
      })
  static final class TransitAccuracy implements Callable<Integer> {
    @Parameters(paramLabel = "SCENARIO", arity = "0..*", description = "Scenario files.")
    @SuppressWarnings("unused") // picocli sets it
    private List<Path> scenarios = new ArrayList<>();

    @Override
    public Integer call() throws IOException {
      return TransitReport.print(System.out, scenarios) ? 0 : 1;
    }
  }

  /** Runs {@link WarmerEdges}. */
  @Command(
      name = "warmer-accuracy",
      description = {
        "Computes two boxes with a warmer on the lid on finer and finer grids, steady and on the way"
            + " there.",
        "Prints errors against number of cells, on equal cells and on those that parcels get, as"
            + " verdicts correct and state them."
      })
  static final class WarmerAccuracy implements Callable<Integer> {
    @Override
    public Integer call() {
      return WarmerEdges.print(System.out) ? 0 : 1;
    }
  }

  /** Runs {@link AgreementReport}. */
  @Command(
      name = "modal-agreement",
      description = {
        "Draws parcels, journeys and variations at random and runs each with a reduced model and by"
            + " stepping every cell.",
        "Prints how far animals and warmers are apart, and what the error estimates are worth."
      })
  static final class ModelAccuracy implements Callable<Integer> {
    @Option(
        names = "--tries",
        defaultValue = "200",
        description = "How many; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private int tries;

    @Option(
        names = "--seed",
        defaultValue = "5000",
        description = "Seed of the first, others follow it; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private long seed;

    @Option(
        names = "--cells",
        defaultValue = "11000",
        description = "Cells of each, within 40 per cent; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private int cells;

    @Override
    public Integer call() throws java.util.concurrent.ExecutionException, InterruptedException {
      Range range = new Range(cells / 1.4, cells * 1.4);
      return AgreementReport.print(System.out, tries, seed, range) ? 0 : 1;
    }
  }

  /** Runs {@link ClimateAgreement}. */
  @Command(
      name = "climate-agreement",
      description = {
        "Draws parcels with warmers of iron powder, seams and holes at random and runs each with a"
            + " reduced model and by stepping every cell.",
        "Prints how far temperatures and oxygen are apart."
      })
  static final class ClimateAccuracy implements Callable<Integer> {
    @Option(
        names = "--tries",
        defaultValue = "30",
        description = "How many; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private int tries;

    @Option(
        names = "--seed",
        defaultValue = "7000",
        description = "Seed of the first, others follow it; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private long seed;

    @Option(
        names = "--cells",
        defaultValue = "5000",
        description = "Cells of each, within 40 per cent; ${DEFAULT-VALUE} unless given.")
    @SuppressWarnings("unused") // picocli sets it
    private int cells;

    @Override
    public Integer call() throws InterruptedException {
      Range range = new Range(cells / 1.4, cells * 1.4);
      return ClimateAgreement.print(System.out, tries, seed, range) ? 0 : 1;
    }
  }
}
