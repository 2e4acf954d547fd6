package stenotherm.examples;

import java.util.List;
import picocli.CommandLine.Command;
import stenotherm.report.Answer;
import stenotherm.report.ExportedRun;
import stenotherm.scenario.Scenario;

/** What do other programs get of a run? */
@Command(
    name = ExportRun.NAME,
    description = {
      "Runs a packing once with everything as stated and writes it for other programs: histories"
          + " as CSV, the temperatures of all cells at the coldest and the hottest moment of its"
          + " animals as VTK (legacy text form). SI units.",
      "One run is no verdict, and never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + ExportRun.NAME + " my-scenario.yaml --packing large")
final class ExportRun extends PackingCommand {
  static final String NAME = "export";

  @Override
  List<String> fileNames() {
    return ExportedRun.FILES;
  }

  @Override
  String folderName() {
    return NAME;
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    return ExportedRun.of(scenario, packing(scenario), settings().withThreads(threads()), progress);
  }
}
