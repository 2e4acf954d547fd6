package stenotherm.examples;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stenotherm.decision.SearchSpace;
import stenotherm.parcel.Parcel;
import stenotherm.report.Answer;
import stenotherm.report.SearchReport;
import stenotherm.scenario.Scenario;

/** What is the smallest box that reaches wanted odds? */
@Command(
    name = SearchPackings.NAME,
    description = {
      "Looks for the smallest box that keeps the animals within what they tolerate: over usual"
          + " cartons, foam, fill, classes and number of warmers, their place, holes, temperature at"
          + " packing and delivery. The best also meet what goes wrong as a rule.",
      "Results are calculations on stated assumptions, never a permission to send an animal."
    },
    footer = ConsoleCommand.PROGRAM + SearchPackings.NAME + " my-scenario.yaml --wanted 90")
final class SearchPackings extends PackingCommand {
  static final String NAME = "search";

  private static final Pattern DIVISOR =
      Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*(in3/lb|cm3/kg)\\s*");

  /** What the units of a divisor are [m3/kg]. */
  private static final Map<String, Double> UNITS =
      Map.of("in3/lb", 1.6387064e-5 / 0.45359237, "cm3/kg", 1e-6);

  @Option(
      names = "--wanted",
      paramLabel = "N",
      description = "How many of 100 journeys are to go well. Default: ${DEFAULT-VALUE}.")
  private double wanted = 95;

  @Option(
      names = "--divisor",
      paramLabel = "DIVISOR",
      description = "Adds the dimensional weight, as with '139 in3/lb' or '5000 cm3/kg'.")
  private @Nullable String divisor;

  @Option(
      names = "--candidates",
      paramLabel = "N",
      description = "How many candidates are tried. Default: ${DEFAULT-VALUE}.")
  private int candidates = 300;

  @Mixin private AtMost atMost = new AtMost();

  @Override
  List<String> fileNames() {
    return SearchReport.FILES;
  }

  @Override
  String folderName() {
    return NAME;
  }

  @Override
  void checkOwnOptions() {
    require(wanted >= 1 && wanted <= 99, "--wanted", wanted, "within 1 to 99");
    require(
        candidates >= 1 && candidates <= SearchSpace.MOST,
        "--candidates",
        candidates,
        "within 1 to " + SearchSpace.MOST);
    if (divisor != null) {
      Matcher parts = DIVISOR.matcher(divisor);
      require(
          parts.matches() && Double.parseDouble(parts.group(1)) > 0,
          "--divisor",
          divisor,
          "a number above 0 with in3/lb or cm3/kg");
    }
  }

  private OptionalDouble volumeOfMass() {
    if (divisor == null) {
      return OptionalDouble.empty();
    }
    Matcher parts = DIVISOR.matcher(divisor);
    return parts.matches()
        ? OptionalDouble.of(
            Double.parseDouble(parts.group(1)) * UNITS.getOrDefault(parts.group(2), 0.0))
        : OptionalDouble.empty();
  }

  @Override
  Answer answer(Scenario scenario, Progress progress) {
    Parcel packing =
        asked(
            scenario,
            meant ->
                "What is the smallest box for the contents of "
                    + quoted(meant)
                    + " with which "
                    + Math.round(wanted)
                    + " of 100 journeys go well?",
            "up to ten minutes");
    SearchReport.Wish wish = new SearchReport.Wish(wanted / 100, volumeOfMass(), candidates);
    return atMost.ask(
        "Fewer --candidates take less.",
        progress,
        watcher -> SearchReport.of(scenario, packing, wish, settings(), threads(), watcher));
  }
}
