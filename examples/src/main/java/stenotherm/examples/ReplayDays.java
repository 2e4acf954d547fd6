package stenotherm.examples;

import java.nio.file.Path;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stenotherm.base.InvalidInputException;
import stenotherm.journey.Leg;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.Departures;
import stenotherm.report.ReplayedDays;
import stenotherm.scenario.DailyTable;
import stenotherm.scenario.Scenario;
import stenotherm.weather.DayExtremes;
import stenotherm.weather.RecordedWeather;

/** How would a packing have fared on every recorded day? */
@Command(
    name = ReplayDays.NAME,
    description = {
      "Sends the packing on every recorded day: what share of departures would have gone well, month"
          + " by month?",
      "Recorded are New York and Seattle, 2012 to 2015. For other places give a station's record, a"
          + " table with commas and a row for each day: date, low [°F], high [°F].",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + ReplayDays.NAME + " my-scenario.yaml --origin station.csv")
final class ReplayDays extends PackingCommand {
  static final String NAME = "replay";

  private static final int MONTHS = 12;

  @Option(
      names = "--origin",
      paramLabel = "FILE",
      description = "Record of a station where it is sent from, instead of the place's own.")
  private @Nullable Path origin;

  @Option(
      names = "--destination",
      paramLabel = "FILE",
      description = "Record of a station where it is sent to, instead of the place's own.")
  private @Nullable Path destination;

  @Option(
      names = "--months",
      paramLabel = "MONTH",
      split = ",",
      description =
          "Months of departure, as numbers. Default: 12,1,2, the winter; all: 1,2,3 to 12.")
  private List<Integer> months = List.of(12, 1, 2);

  @Mixin private AtMost atMost = new AtMost();

  @Override
  void checkOwnOptions() {
    for (int month : months) {
      require(month >= 1 && month <= MONTHS, "--months", month, "within 1 to 12");
    }
  }

  @Override
  List<String> fileNames() {
    return ReplayedDays.FILES;
  }

  @Override
  String folderName() {
    return "replay";
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    List<Leg> legs = scenario.journey().legs();
    Leg first = legs.get(0);
    Leg last = legs.get(legs.size() - 1);
    requireRecords(first, last);
    List<DayExtremes> from = days("--origin", origin, first);
    List<DayExtremes> to = days("--destination", destination, last);
    Set<Month> chosen = EnumSet.noneOf(Month.class);
    months.forEach(month -> chosen.add(Month.of(month)));
    Parcel packing = packing(scenario);
    return atMost.ask(
        "Fewer --months take less.",
        progress,
        watcher ->
            Departures.replay(scenario, packing, from, to, chosen, settings(), threads(), watcher));
  }

  /** Says of all that is missing at once what to type. */
  private void requireRecords(Leg first, Leg last) {
    StringBuilder options = new StringBuilder();
    if (origin == null && !isRecorded(first)) {
      options.append(" --origin station.csv");
    }
    if (destination == null && !isRecorded(last)) {
      options.append(" --destination station.csv");
    }
    if (!options.isEmpty()) {
      throw new InvalidInputException(
          NAME,
          "needs recorded days at both ends. Add"
              + options
              + " (a table headed date,low [°F],high [°F], with a row for each day), or write recorded"
              + " places under journey, as in from: New York, UTC-5 (recorded: "
              + String.join(", ", RecordedWeather.bundled().places())
              + ")");
    }
  }

  private static boolean isRecorded(Leg leg) {
    return RecordedWeather.bundled().has(leg.place().name());
  }

  private static List<DayExtremes> days(String option, @Nullable Path file, Leg leg) {
    return file == null
        ? RecordedWeather.bundled().days(leg.place().name())
        : read(option, () -> DailyTable.readPlace(file));
  }
}
