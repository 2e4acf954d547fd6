package stenotherm.examples;

import java.nio.file.Path;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import stenotherm.base.InvalidInputException;
import stenotherm.base.MessageText;
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
    footer = ConsoleCommand.PROGRAM + ReplayDays.NAME + " my-scenario.yaml --months 6,7,8")
final class ReplayDays extends PackingCommand {
  static final String NAME = "replay";

  private static final int SHORTEST = 3;
  private static final int LONGEST_SHOWN = 60;

  /** A number, perhaps of two digits, as in 03. */
  private static final Pattern NUMBER = Pattern.compile("^0?([0-9]+)$");

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
          "Months of departure, by number or name. Default: 12,1,2, the winter; all: 1,2,3 to 12.",
      converter = MonthName.class)
  private List<Month> months = List.of(Month.DECEMBER, Month.JANUARY, Month.FEBRUARY);

  @Mixin private AtMost atMost = new AtMost();

  /** Reads a month by its number, its name or the first three letters of it. */
  static final class MonthName implements ITypeConverter<Month> {
    @Override
    public Month convert(String typed) {
      String word = typed.strip().toLowerCase(Locale.ROOT);
      for (Month each : Month.values()) {
        String name = each.name().toLowerCase(Locale.ROOT);
        boolean isName = word.length() >= SHORTEST && name.startsWith(word);
        if (isName || NUMBER.matcher(word).replaceFirst("$1").equals("" + each.getValue())) {
          return each;
        }
      }
      throw new TypeConversionException(
          "'"
              + MessageText.of(typed, LONGEST_SHOWN)
              + "' is no month, write numbers from 1 to 12 or names, such as 12,1,2 or march,april");
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
    Set<Month> chosen = EnumSet.copyOf(months);
    Parcel packing =
        asked(
            scenario,
            meant -> "How would " + quoted(meant) + " have fared on recorded days?",
            "up to a few minutes");
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
              + " places under journey, as in from: \"New York, UTC-5\" (recorded: "
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
