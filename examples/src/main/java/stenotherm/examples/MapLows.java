package stenotherm.examples;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stenotherm.base.Range;
import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Temperatures;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.MapReport;
import stenotherm.scenario.JourneyPlan;
import stenotherm.scenario.Scenario;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/** With which overnight lows at both ends does a packing hold, with its warmer and without? */
@Command(
    name = MapLows.NAME,
    description = {
      "Maps in which overnight lows, where a packing is sent from and where it is sent to, it"
          + " holds: with its warmer and without.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + MapLows.NAME + " my-scenario.yaml --lows 10..85F")
final class MapLows extends PackingCommand {
  static final String NAME = "map";

  private static final String NUMBER = "([+-]?[0-9]+(?:\\.[0-9]+)?)";
  private static final Pattern LOWS =
      Pattern.compile(NUMBER + "\\s*(?:\\.\\.|to)\\s*" + NUMBER + "\\s*(°?[CF])?");
  private static final Pattern DIFFERENCE = Pattern.compile(NUMBER + "\\s*(K|C°|F°|°C|°F|C|F)?");

  /** What people live in; the journeys' own limits are far beyond [K]. */
  private static final Range TEMPERATURES = new Range(213.15, 323.15);

  private static final Range DAILY_RANGES = new Range(0.5, 30);
  private static final double LEAST_SPAN = 1;
  private static final int MOST_NODES = 33;

  @Option(
      names = "--lows",
      paramLabel = "FROM..TO",
      description = {
        "Overnight lows at either end, as 10..85F, -10..30C, or in the scenario's units without a"
            + " letter.",
        "Default: 10..85 °F or -12..30 °C."
      })
  private @Nullable String lows;

  @Option(
      names = "--daily-range",
      paramLabel = "DEGREES",
      description = {
        "By how much days are warmer than nights, as 18F°, 10K, or in the scenario's units.",
        "Default: as in the file's own lows and highs at each end, on average; 18 F° or 10 K if it has none."
      })
  private @Nullable String dailyRange;

  @Option(
      names = "--nodes",
      paramLabel = "N",
      description = {
        "Lows at each end that journeys are run at; in between is interpolated.",
        "Default: ${DEFAULT-VALUE}."
      })
  private int nodes = 5;

  @Mixin private AtMost atMost = new AtMost();

  @Override
  List<String> fileNames() {
    return MapReport.FILES;
  }

  @Override
  String folderName() {
    return NAME;
  }

  @Override
  void checkOwnOptions() {
    require(nodes >= 2 && nodes <= MOST_NODES, "--nodes", nodes, "within 2 to " + MOST_NODES);
    // which units are meant only the scenario says; what is wrong in either is found here
    lows(Units.US);
    dailyRanges(Units.US);
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    Parcel parcel =
        asked(
            scenario,
            meant ->
                "With which overnight lows does "
                    + quoted(meant)
                    + " hold"
                    + (meant.warmers().isEmpty() ? "?" : ", with its warmer and without?"),
            "up to a few minutes");
    Range range = lows(scenario.units());
    require(
        TEMPERATURES.contains(range.low())
            && TEMPERATURES.contains(range.high())
            && range.high() - range.low() >= LEAST_SPAN,
        "--lows",
        String.valueOf(lows),
        "two temperatures within -60 to 50 °C, the second at least a degree higher");
    Optional<MapReport.DailyRanges> own =
        dailyRange == null ? ownRanges(scenario) : Optional.empty();
    MapReport.DailyRanges daily = own.orElseGet(() -> dailyRanges(scenario.units()));
    presets(scenario, daily, own.isPresent());
    MapReport.Question question = new MapReport.Question(parcel, range, daily, nodes);
    return atMost.ask(
        "Fewer --nodes take less, and a packing without a warmer half of it.",
        progress,
        watcher -> MapReport.run(scenario, question, settings(), threads(), watcher));
  }

  /** Says what was chosen where nothing was asked for. */
  private void presets(Scenario scenario, MapReport.DailyRanges daily, boolean own) {
    if (dailyRange == null) {
      complain(
          0,
          "Nights are taken as cold as the low, days as "
              + daily.words(new Figures(scenario.units()))
              + (own ? ", as the file's lows and highs are on average" : "")
              + "; for another difference add --daily-range, such as --daily-range "
              + (scenario.units() == Units.US ? "18F°" : "10K"));
    }
  }

  /** By how much days are warmer in the lows and highs of the file; empty if it has none. */
  private static Optional<MapReport.DailyRanges> ownRanges(Scenario scenario) {
    List<OptionalDouble> means =
        scenario.plan().weather().stream().map(MapLows::dailyRange).toList();
    // a day as cold as its night has no course that a map could keep
    return means.isEmpty()
            || means.stream().anyMatch(mean -> !DAILY_RANGES.contains(mean.orElse(0)))
        ? Optional.empty()
        : Optional.of(
            new MapReport.DailyRanges(
                means.get(0).orElseThrow(), means.get(means.size() - 1).orElseThrow()));
  }

  private static OptionalDouble dailyRange(JourneyPlan.StatedWeather place) {
    return place.days().stream().mapToDouble(day -> day.high() - day.low()).average();
  }

  private Range lows(Units units) {
    boolean usual = lows == null;
    String text = usual ? (units == Units.US ? "10..85" : "-12..30") : String.valueOf(lows).strip();
    Matcher parts = LOWS.matcher(text);
    require(parts.matches(), "--lows", text, "two temperatures, such as 10..85F or -10..30C");
    double from = Double.parseDouble(parts.group(1));
    double to = Double.parseDouble(parts.group(2));
    require(from < to, "--lows", text, "the lower temperature first");
    return isFahrenheit(parts.group(3), units)
        ? new Range(Temperatures.fromFahrenheit(from), Temperatures.fromFahrenheit(to))
        : new Range(Temperatures.fromCelsius(from), Temperatures.fromCelsius(to));
  }

  private MapReport.DailyRanges dailyRanges(Units units) {
    double kelvin = units == Units.US ? TemperatureDifferences.fromFahrenheit(18) : 10;
    if (dailyRange != null) {
      Matcher parts = DIFFERENCE.matcher(dailyRange.strip());
      require(parts.matches(), "--daily-range", dailyRange, "degrees, such as 18F° or 10K");
      double degrees = Double.parseDouble(parts.group(1));
      kelvin =
          isFahrenheit(parts.group(2), units)
              ? TemperatureDifferences.fromFahrenheit(degrees)
              : degrees;
      require(DAILY_RANGES.contains(kelvin), "--daily-range", dailyRange, "0.5 to 30 K");
    }
    return new MapReport.DailyRanges(kelvin, kelvin);
  }

  private static boolean isFahrenheit(@Nullable String unit, Units units) {
    return unit == null ? units == Units.US : unit.contains("F");
  }
}
