package stenotherm.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.decision.Mishap;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.words.Units;

/**
 * What a scenario file asks: which of several packings fares how on one journey.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param title title, as reports show it
 * @param units units of the results
 * @param packings the packings in the order of the file, with their warmers; at least one
 * @param journey the journey
 * @param plan makes the journey on other days and in other weather
 * @param longestHold how long a delay of the last leg is followed [s], above 0
 * @param assumptions what the reader filled in from presets, with values and sources, a sentence
 *     each
 * @param mishaps what the file says may go wrong beside the usual
 * @param forecast lows and highs of the days to choose from; empty if the file has none
 * @param spellings how the file writes packings, by their names
 */
public record Scenario(
    String title,
    Units units,
    List<Parcel> packings,
    Journey journey,
    JourneyPlan plan,
    double longestHold,
    List<String> assumptions,
    List<Mishap> mishaps,
    Optional<DailyTable> forecast,
    Map<String, Spelling> spellings) {
  /**
   * How a file writes a packing.
   *
   * @param carton what it calls its carton, such as {@code 8 x 8 x 7 in carton}; empty where it
   *     gives the size outside
   * @param ownContainers whether the packing has a cup or containers of its own
   * @param measured whether something of it was measured
   */
  public record Spelling(Optional<String> carton, boolean ownContainers, boolean measured) {
    /** Checks that it is given. */
    public Spelling {
      Checks.given("carton", carton);
    }
  }

  /**
   * Checks the parts.
   *
   * @throws InvalidInputException if the title is blank, there is no packing or the hold is not
   *     above 0
   */
  public Scenario {
    Checks.name("title", title);
    packings = Checks.notEmpty("packings", packings);
    Checks.positive("longest hold", longestHold, "s");
    assumptions = List.copyOf(assumptions);
    mishaps = List.copyOf(mishaps);
    Checks.given("forecast", forecast);
    spellings = Map.copyOf(spellings);
  }

  /**
   * Tells how the file writes a packing.
   *
   * @param packing the packing
   * @return its spelling; that of one with nothing of its own if the file has no such packing
   */
  public Spelling spelling(Parcel packing) {
    return spellings.getOrDefault(packing.name(), new Spelling(Optional.empty(), false, false));
  }

  /**
   * Tells what the file calls the carton of a packing.
   *
   * @param packing the packing
   * @return such as {@code 8 x 8 x 7 in carton}; empty if the file has no such packing, or gives
   *     the size of its box outside
   */
  public Optional<String> carton(Parcel packing) {
    return spelling(packing).carton();
  }

  /**
   * The same question about other packings.
   *
   * @param others the packings, at least one
   * @return the changed scenario
   * @throws InvalidInputException if there is no packing
   */
  public Scenario with(List<Parcel> others) {
    return new Scenario(
        title,
        units,
        others,
        journey,
        plan,
        longestHold,
        assumptions,
        mishaps,
        forecast,
        spellings);
  }
}
