package stenotherm.examples;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import stenotherm.base.InvalidInputException;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.Comparison;
import stenotherm.report.MapReport;
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

  @Option(
      names = "--map",
      paramLabel = "FILE",
      description = {
        "The map.json that 'map' wrote for this packing: the sheet then says for which overnight"
            + " lows it is good.",
        "Needs --packing."
      })
  private @Nullable Path map;

  @Override
  void checkOwnOptions() {
    require(map == null || packing != null, "--map", String.valueOf(map), "given with --packing");
  }

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
      return PackingSheet.of(Comparison.withoutChanges(scenario, settings(), threads(), progress));
    }
    Parcel parcel = named(scenario.packings(), packing);
    Optional<String> lows = lows(scenario, parcel);
    Scenario one = scenario.with(List.of(parcel));
    PackingSheet sheet =
        PackingSheet.asPacked(Comparison.withoutChanges(one, settings(), threads(), progress));
    return lows.map(sheet::withLows).orElse(sheet);
  }

  private Optional<String> lows(Scenario scenario, Parcel parcel) {
    if (map == null) {
      return Optional.empty();
    }
    Path file = map;
    return Optional.of(read("--map", () -> MapReport.answerIn(file, scenario, parcel)));
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
