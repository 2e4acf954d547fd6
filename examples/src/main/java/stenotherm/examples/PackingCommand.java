package stenotherm.examples;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Suggestions;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.Scenario;

/**
 * A question about one packing of a scenario file.
 *
 * <p>Not thread-safe; one object for each run.
 */
abstract class PackingCommand extends ScenarioCommand {
  @Option(
      names = "--packing",
      paramLabel = "NAME",
      description = "Which packing of the file is meant. Default: the first.")
  private @Nullable String packing;

  /**
   * Finds the packing that is meant, and says what is asked about it and how long that takes.
   *
   * @param question asks about a packing
   * @param time how long it takes, as in "a minute or two"
   * @throws ParameterException if the file has none of that name; the message suggests one
   */
  final Parcel asked(Scenario scenario, Function<Parcel, String> question, String time) {
    Parcel meant = find(scenario);
    complain(0, question.apply(meant) + " The answer takes " + time + ".");
    tellWhich(scenario, meant);
    return meant;
  }

  /**
   * Finds the packing that is meant, and says which if nobody asked for one of several.
   *
   * @throws ParameterException if the file has none of that name; the message suggests one
   */
  final Parcel packing(Scenario scenario) {
    Parcel meant = find(scenario);
    tellWhich(scenario, meant);
    return meant;
  }

  static String quoted(Parcel packing) {
    return "'" + packing.name() + "'";
  }

  private Parcel find(Scenario scenario) {
    if (packing != null) {
      try {
        return Suggestions.find("--packing", packing, scenario.packings(), Parcel::name);
      } catch (InvalidInputException unknown) {
        throw new ParameterException(command(), String.valueOf(unknown.getMessage()), unknown);
      }
    }
    return scenario.packings().get(0);
  }

  private void tellWhich(Scenario scenario, Parcel meant) {
    int many = scenario.packings().size();
    if (packing == null && many > 1) {
      complain(
          0,
          "packing: "
              + quoted(meant)
              + ", the first of "
              + many
              + "; for another one add --packing and its name");
    }
  }
}
