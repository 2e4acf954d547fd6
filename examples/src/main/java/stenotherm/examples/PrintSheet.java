package stenotherm.examples;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stenotherm.base.InvalidInputException;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.Comparison;
import stenotherm.report.PackingSheet;
import stenotherm.scenario.Scenario;

/** How is the parcel packed? One page for the packing table. */
@Command(
    name = "print",
    description = {
      "Makes a sheet for the packing table, one printed page: the parcel to scale, what goes where"
          + " in which order, when to open the warmer, when not to send, labels, checks on arrival.",
      "It is that of the packing which 'compare' would take, or of the one named."
    },
    footer = ConsoleCommand.PROGRAM + "print my-scenario.yaml --packing=large")
final class PrintSheet extends ScenarioCommand {
  @Option(
      names = "--packing",
      paramLabel = "NAME",
      description = "Which packing of the file, with the warmers that it has there.")
  private @Nullable String packing;

  @Override
  List<String> fileNames() {
    return PackingSheet.FILES;
  }

  @Override
  String folderName() {
    return "packing-sheet";
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    if (packing == null) {
      return PackingSheet.of(Comparison.run(scenario, settings(), threads(), progress));
    }
    Scenario one = scenario.with(List.of(named(scenario.packings(), packing)));
    return PackingSheet.asPacked(Comparison.run(one, settings(), threads(), progress));
  }

  private static Parcel named(List<Parcel> packings, String name) {
    return packings.stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidInputException(
                    "--packing",
                    "there is no '"
                        + name
                        + "'; the file has "
                        + packings.stream().map(each -> "'" + each.name() + "'").toList()));
  }
}
