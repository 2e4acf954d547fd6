package stenotherm.examples;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stenotherm.base.ProgressListener;
import stenotherm.grid.GridBudget;
import stenotherm.report.Comparison;
import stenotherm.transit.TransitSettings;

/** Answers other programs of this machine over HTTP. */
@Command(
    name = "serve",
    description = {
      "Answers other programs on this machine over HTTP until Ctrl-C: a scenario file posted to"
          + " /compare is answered with JSON, as 'compare --json' prints it.",
      "What takes too long, is too large or comes when all places are taken is refused."
    },
    footer = {
      ConsoleCommand.PROGRAM + "serve --port=8080",
      "  curl --data-binary @my-scenario.yaml http://localhost:8080/compare"
    })
final class Serve extends ConsoleCommand implements Callable<Integer> {
  @Option(names = "--port", description = "Port. Default: ${DEFAULT-VALUE}; 0 for a free one.")
  private int port = 8080;

  @Option(names = "--threads", description = "Scenarios at a time. Default: the processors.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Option(names = "--waiting", description = "Scenarios that wait. Default: ${DEFAULT-VALUE}.")
  private int waiting = 8;

  @Option(names = "--seconds", description = "Time limit of each. Default: ${DEFAULT-VALUE}.")
  private int seconds = 120;

  @Option(names = "--talk-seconds", description = "Time to send a file. Default: ${DEFAULT-VALUE}.")
  private int talkSeconds = 10;

  @Option(names = "--most-cells", description = "Largest grid. Default: ${DEFAULT-VALUE}.")
  private long mostCells = GridBudget.standard().cells();

  @Option(names = "--most-bytes", description = "Longest file. Default: ${DEFAULT-VALUE}.")
  private int mostBytes = 65_536;

  @Override
  public Integer call() {
    check("--port", port, 0, 65_535);
    check("--threads", threads, 1, 256);
    check("--waiting", waiting, 1, 1000);
    check("--seconds", seconds, 1, 86_400);
    check("--talk-seconds", talkSeconds, 1, 86_400);
    check("--most-cells", mostCells, 1, GridBudget.MOST_CELLS);
    check("--most-bytes", mostBytes, 1, 10_000_000);
    TransitSettings usual = TransitSettings.standard();
    TransitSettings settings =
        new TransitSettings(
            usual.mesh().within(GridBudget.standard().withCells(mostCells)),
            usual.interval(),
            usual.stepping());
    Duration time = Duration.ofSeconds(seconds);
    ScenarioServer.limitRequests(talkSeconds);
    try (ScenarioServer server =
        new ScenarioServer(
            port,
            new ScenarioServer.Limits(threads, waiting, time, mostBytes),
            scenario ->
                Comparison.run(scenario, settings, 1, ProgressListener.NONE::progress).json())) {
      out().println("Listening on http://localhost:" + server.port() + "/compare");
      out().flush();
      new CountDownLatch(1).await();
    } catch (InterruptedException stopped) {
      return 0;
    } catch (IOException problem) {
      return complain(FAILED, "cannot listen on port " + port + ": " + inWords(problem));
    }
    return 0;
  }

  private void check(String option, long value, long low, long high) {
    require(value >= low && value <= high, option, value, "within " + low + " to " + high);
  }
}
