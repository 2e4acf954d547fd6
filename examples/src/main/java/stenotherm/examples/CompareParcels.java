package stenotherm.examples;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stenotherm.report.Answer;
import stenotherm.report.Comparison;
import stenotherm.report.ComparisonReport;
import stenotherm.scenario.Scenario;

/**
 * Which of several packings keeps an animal's temperature best on one journey? Judges every packing
 * with and without its warmers.
 */
@Command(
    name = CompareParcels.NAME,
    description = {
      "Compares packings of a small animal on one journey: how cold and how hot it gets, how much"
          + " margin is left over the range of what is uncertain, what a warmer changes.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + CompareParcels.NAME + " my-scenario.yaml --out my-report")
final class CompareParcels extends ScenarioCommand {
  static final String NAME = "compare";

  @Mixin private AtMost atMost = new AtMost();

  @Override
  List<String> fileNames() {
    return ComparisonReport.FILES;
  }

  @Override
  String folderName() {
    return "report";
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    return atMost.ask(
        "Fewer packings take less.",
        progress,
        watcher -> Comparison.run(scenario, settings(), threads(), watcher));
  }
}
