package stenotherm.examples;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stenotherm.base.InvalidInputException;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.Departures;
import stenotherm.report.RankedDays;
import stenotherm.scenario.DailyTable;
import stenotherm.scenario.Scenario;
import stenotherm.scenario.ScenarioReader;

/** On which day of a forecast does a packing fare best? */
@Command(
    name = RankDays.NAME,
    description = {
      "Ranks the days of a forecast: on which does the packing fare best, with or without its"
          + " warmer?",
      "The forecast is a list under forecast in the file, or a table with commas and a row for each"
          + " day: date, origin low [°F], origin high [°F], destination low [°F], destination high"
          + " [°F]. The journey needs no other lows and highs then.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + RankDays.NAME + " my-scenario.yaml --forecast week.csv")
final class RankDays extends PackingCommand {
  static final String NAME = "rank";

  /** More than any forecast is off for a day more [K]. */
  private static final double MOST_ERROR = 5;

  @Option(
      names = "--forecast",
      paramLabel = "FILE",
      description = {
        "Lows and highs at both ends, day by day; the first day is the day it was made.",
        "Default: those that the scenario file lists."
      })
  private @Nullable Path forecast;

  @Option(
      names = "--error-per-day",
      paramLabel = "KELVIN",
      description =
          "How much more the forecast is off for each day further ahead. Default:"
              + " ${DEFAULT-VALUE} (assumed).")
  private double errorPerDay = Departures.ERROR_PER_DAY;

  @Mixin private AtMost atMost = new AtMost();

  /** The table, once it is read: it may come through a pipe. */
  private @Nullable DailyTable table;

  @Override
  List<String> fileNames() {
    return RankedDays.FILES;
  }

  @Override
  String folderName() {
    return "days";
  }

  @Override
  void checkOwnOptions() {
    require(
        errorPerDay >= 0 && errorPerDay <= MOST_ERROR,
        "--error-per-day",
        errorPerDay,
        "within 0 to 5");
  }

  @Override
  Scenario scenario(Path file) throws IOException {
    return ScenarioReader.readForForecast(file, table());
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    DailyTable days = days(scenario);
    Parcel packing =
        asked(
            scenario,
            meant -> "On which day of the forecast does " + quoted(meant) + " fare best?",
            "about a minute for a week");
    return atMost.ask(
        "Fewer days of forecast take less.",
        progress,
        watcher ->
            Departures.rank(scenario, packing, days, errorPerDay, settings(), threads(), watcher));
  }

  private DailyTable days(Scenario scenario) {
    return table()
        .or(scenario::forecast)
        .orElseThrow(
            () ->
                new InvalidInputException(
                    "forecast",
                    "is missing: list days in the file, as in forecast: [{date: 2026-01-15,"
                        + " origin: 28 to 45 °F, destination: 30 to 48 °F}], or give --forecast"
                        + " FILE"));
  }

  private Optional<DailyTable> table() {
    Path file = forecast;
    if (table == null && file != null) {
      table = read("forecast", () -> DailyTable.readEnds(file));
    }
    return Optional.ofNullable(table);
  }
}
