package stenotherm.examples;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import stenotherm.base.MessageText;
import stenotherm.base.Suggestions;
import stenotherm.words.LastWords;

/**
 * The program: a command for each question about a scenario file.
 *
 * <p>Experimental. {@link #run} may be called by many threads at a time.
 */
@Command(
    name = Stenotherm.NAME,
    description = {
      "Computes what a small animal goes through in an insulated parcel. One command for each"
          + " question; a file without a command is compared.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    synopsisSubcommandLabel = "COMMAND",
    footerHeading = "%nA line to type for each; --help behind its name tells more of it:%n")
public final class Stenotherm extends ConsoleCommand {
  static final String NAME = "stenotherm";
  static final String VERSION = "Stenotherm 0.1.0-SNAPSHOT";

  /** A first word that is meant as a command; files have an ending or a folder. */
  private static final Pattern WORD = Pattern.compile("[a-z]+");

  private static final String HELP = "help";

  private static final List<String> OPTIONS = List.of("-h", "--help", "-V", "--version");

  private static final Pattern DIGITS = Pattern.compile("\\s*[+-]?[0-9]+\\s*");

  private static final int LONGEST_SHOWN = 60;

  /** Letters in a line of a help: the longest example fits. */
  private static final int WIDTH = 100;

  /** How long a computation may take to end after Ctrl-C [s]. */
  private static final int LAST_SECONDS = 5;

  private Stenotherm() {}

  /** The commands, in the order of the help. A new one is a class and a line here. */
  private static List<ConsoleCommand> commands() {
    return List.of(
        new CompareParcels(),
        new MapLows(),
        new RankDays(),
        new ReplayDays(),
        new BreakParcel(),
        new SearchPackings(),
        new FitLogger(),
        new PrintSheet(),
        new NewScenario(),
        new ExportRun(),
        new Serve(),
        new Completion());
  }

  /**
   * Runs the program. Returns if all went well, ends the JVM with a documented exit code if not.
   *
   * @param args the command line, see {@code --help}
   */
  public static void main(String[] args) {
    Charset console =
        Charset.forName(System.getProperty("stdout.encoding", Charset.defaultCharset().name()));
    // what cannot write a degree sign is told in UTF-8
    Charset charset = console.newEncoder().canEncode('°') ? console : StandardCharsets.UTF_8;
    PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, charset));
    CountDownLatch ended = new CountDownLatch(1);
    stopWithCtrlC(Thread.currentThread(), ended);
    PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, charset), true);
    int code = run(out, err, args);
    out.flush();
    ended.countDown();
    if (code != 0) {
      System.exit(code);
    }
  }

  /** Ctrl-C interrupts the computation, and waits for its last line. */
  private static void stopWithCtrlC(Thread computing, CountDownLatch ended) {
    Runnable stop =
        () -> {
          computing.interrupt();
          try {
            ended.await(LAST_SECONDS, TimeUnit.SECONDS);
          } catch (InterruptedException inAHurry) {
            Thread.currentThread().interrupt();
          }
        };
    Runtime.getRuntime().addShutdownHook(new Thread(stop, "stop"));
  }

  /**
   * Runs the program within another one.
   *
   * @param out where answers go
   * @param err where progress and complaints go
   * @param args the command line
   * @return the exit code
   */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    return commandLine().setOut(out).setErr(err).execute(withCommand(args, Files::exists));
  }

  /** The command line with all commands. */
  static CommandLine commandLine() {
    CommandLine program = new CommandLine(new Stenotherm());
    commands().forEach(program::addSubcommand);
    program.getCommandSpec().usageMessage().footer(examples(program));
    return program
        .setUsageHelpWidth(WIDTH)
        .registerConverter(int.class, typed -> whole(typed, Integer::valueOf))
        .registerConverter(Integer.class, typed -> whole(typed, Integer::valueOf))
        .registerConverter(long.class, typed -> whole(typed, Long::valueOf))
        .registerConverter(double.class, Stenotherm::number)
        .setExpandAtFiles(false)
        .setParameterExceptionHandler((wrong, args) -> explain(wrong))
        .setExecutionStrategy(Stenotherm::execute);
  }

  /** The first example of each command. */
  private static String[] examples(CommandLine program) {
    return program.getSubcommands().values().stream()
        .flatMap(
            command ->
                Stream.of(command.getCommandSpec().usageMessage().footer())
                    .filter(line -> line.startsWith(program()))
                    .limit(1))
        .toArray(String[]::new);
  }

  private static <T extends Number> T whole(String typed, Function<String, T> reading) {
    try {
      return reading.apply(typed.strip());
    } catch (NumberFormatException wrong) {
      throw new TypeConversionException(
          quoted(typed)
              + (DIGITS.matcher(typed).matches()
                  ? " is too large a number"
                  : " is not a whole number, write it in digits, such as 12"));
    }
  }

  private static double number(String typed) {
    try {
      return Double.parseDouble(typed.strip());
    } catch (NumberFormatException wrong) {
      throw new TypeConversionException(
          quoted(typed) + " is not a number, write it in digits with a point, such as 12 or 2.5");
    }
  }

  private static String quoted(String typed) {
    return "'" + MessageText.of(typed, LONGEST_SHOWN) + "'";
  }

  /**
   * A file or an option without a command goes to the comparison. A folder of a report may be
   * called like a command. Help may be asked for as for a command.
   */
  static String[] withCommand(String[] args, Predicate<Path> exists) {
    if (args.length > 0 && args[0].equals(HELP) && !exists.test(Path.of(HELP))) {
      return Stream.concat(Arrays.stream(args).skip(1).limit(1), Stream.of("--help"))
          .toArray(String[]::new);
    }
    if (args.length > 0
        && (OPTIONS.contains(args[0])
            || commandLine().getSubcommands().containsKey(args[0])
            || (WORD.matcher(args[0]).matches() && !exists.test(Path.of(args[0]))))) {
      return args;
    }
    return Stream.concat(Stream.of(CompareParcels.NAME), Arrays.stream(args))
        .toArray(String[]::new);
  }

  private static int explain(ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    if (command.getParent() == null && wrong instanceof UnmatchedArgumentException unmatched) {
      command.getErr().println(unknown(unmatched.getUnmatched().get(0), command));
      command.getErr().println("see " + program().strip() + " --help");
      return BAD_COMMAND_LINE;
    }
    command.getErr().println(MessageText.of(String.valueOf(wrong.getMessage())));
    if (!UnmatchedArgumentException.printSuggestions(wrong, command.getErr())) {
      // the whole help would scroll the line above away
      String name = command.getCommandName();
      String all = program().strip() + (name.equals(NAME) ? "" : " " + name) + " --help";
      command.getErr().println("see " + all);
    }
    return BAD_COMMAND_LINE;
  }

  /** Only what is no file comes here. */
  private static String unknown(String word, CommandLine program) {
    Set<String> names = program.getSubcommands().keySet();
    return "there is no command and no file "
        + quoted(word)
        + Suggestions.closest(word, names)
            .map(name -> ". Did you mean " + name + "?")
            .orElseGet(() -> ". The commands are " + String.join(", ", names));
  }

  /** Whatever ends the program, nobody sees a stack trace. */
  private static int execute(ParseResult parsed) {
    try {
      return new CommandLine.RunLast().execute(parsed);
    } catch (ParameterException wrong) {
      throw wrong;
    } catch (RuntimeException | Error end) {
      Throwable cause = end instanceof ExecutionException ? end.getCause() : end;
      Throwable known = cause == null ? end : cause;
      CommandLine command = parsed.commandSpec().commandLine();
      command.getErr().println(LastWords.of(known));
      return LastWords.isWantOfMemory(known) ? FAILED : UNFORESEEN;
    }
  }
}
