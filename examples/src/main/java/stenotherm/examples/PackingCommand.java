package stenotherm.examples;

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
   * Finds the packing that is meant, and says which if nobody asked for one of several.
   *
   * @throws ParameterException if the file has none of that name; the message suggests one
   */
  final Parcel packing(Scenario scenario) {
    if (packing != null) {
      try {
        return Suggestions.find("--packing", packing, scenario.packings(), Parcel::name);
      } catch (InvalidInputException unknown) {
        throw new ParameterException(command(), String.valueOf(unknown.getMessage()), unknown);
      }
    }
    Parcel first = scenario.packings().get(0);
    if (scenario.packings().size() > 1) {
      complain(0, "packing: '" + first.name() + "', the first; another one with --packing");
    }
    return first;
  }
}
