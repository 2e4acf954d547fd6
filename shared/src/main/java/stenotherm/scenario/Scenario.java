package stenotherm.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.decision.Mishap;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
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
 * @param cartons what the file calls the cartons of packings, such as {@code 8 x 8 x 7 in carton},
 *     by the names of the packings; none where it gives the size outside
 * @param crowds how many animals are in containers, by the names of packing and container; none
 *     where there is one or nobody: a parcel computes one of them
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
    Map<String, String> cartons,
    Map<String, Map<String, Integer>> crowds) {
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
    cartons = Map.copyOf(cartons);
    Map<String, Map<String, Integer>> copies = new HashMap<>();
    crowds.forEach((packing, inIt) -> copies.put(packing, Map.copyOf(inIt)));
    crowds = Map.copyOf(copies);
  }

  /**
   * Tells how many animals are in a container.
   *
   * @param packing the packing
   * @param container one of its containers
   * @return the number, 0 if nobody is in it
   */
  public int animalsIn(Parcel packing, Container container) {
    if (container.occupant().isEmpty()) {
      return 0;
    }
    return crowds.getOrDefault(packing.name(), Map.of()).getOrDefault(container.name(), 1);
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
        cartons,
        crowds);
  }
}
