package stenotherm.examples;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stenotherm.base.InvalidInputException;
import stenotherm.base.ProgressListener;
import stenotherm.decision.LoggerTrace;
import stenotherm.decision.TestBox;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.LoggerReport;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.TraceReader;

/**
 * What does my logger say? Fits fill, leakage and warmer of a packing to what loggers recorded in
 * it without its animal.
 */
@Command(
    name = FitLogger.NAME,
    description = {
      "Fits a packing to what loggers recorded in a test without an animal: how well the fill"
          + " insulates, how wide the seams gape, how strong the warmer is, each with the interval"
          + " that holds it in nine cases of ten, and a block to paste into the scenario.",
      "The trace is a table with commas: hours (or time), outside [°F], cup [°F]; a sensor elsewhere"
          + " is named with its place, such as: under lid at 90 x 90 x 150 mm [°C], from left, front"
          + " and floor.",
      "The journey and the animal of the scenario do not matter. Results are calculations on stated"
          + " assumptions, never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + FitLogger.NAME + " my-scenario.yaml my-trace.csv")
final class FitLogger extends PackingCommand {
  static final String NAME = "fit";

  private static final String SHIPPED_TRACE = "test-box.csv";

  /** Errors of the grid are below what loggers err by: half of the usual cells. */
  private static final double COARSER = 2;

  @Parameters(
      arity = "0..1",
      index = "1",
      paramLabel = "TRACE",
      description =
          "What the loggers recorded (CSV); the shipped "
              + SHIPPED_TRACE
              + " if the scenario is left out.")
  private @Nullable Path traceFile;

  @Option(
      names = "--walls",
      description = "Fits the conductivity of the walls, too; else it is held.")
  private boolean walls;

  @Override
  List<String> fileNames() {
    return LoggerReport.FILES;
  }

  @Override
  String folderName() {
    return "logger";
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    Parcel parcel = packing(scenario);
    LoggerTrace trace = read("trace", () -> trace(parcel));
    progress.progress(5, 100);
    TestBox box =
        TestBox.of(parcel, trace, walls, settings().meshScaled(COARSER).withThreads(threads()));
    if (progress.progress(70, 100) == ProgressListener.Signal.STOP) {
      throw new IllegalStateException("stopped before the fit");
    }
    return new LoggerReport(
        scenario.title(), scenario.units(), parcel.name(), trace, box.fit(trace));
  }

  private LoggerTrace trace(Parcel parcel) throws IOException {
    if (traceFile != null) {
      return TraceReader.read(traceFile, parcel);
    }
    if (!isShipped()) {
      throw new InvalidInputException(
          "trace", "is missing, name it after the scenario: fit my-scenario.yaml my-trace.csv");
    }
    try (InputStream in = FitLogger.class.getResourceAsStream(SHIPPED_TRACE)) {
      if (in == null) {
        throw new FileNotFoundException(SHIPPED_TRACE);
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return TraceReader.read(SHIPPED_TRACE, text, parcel);
    }
  }
}
