package stenotherm.modal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.conduction.Port;

/**
 * What runs that are still to come keep to: within what their inputs stay at all times, however
 * they move there, how far blocks start apart, and how long a configuration lasts at least. See
 * {@link ReducedModel#missedAtMost}.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param inputs the span of each input, by its name: temperatures [K], powers [W] or fluxes [W/m2];
 *     those of powers and fluxes hold 0, since a run begins without them
 * @param apart by how much a block may be warmer than the rest when a run begins, by its name; the
 *     range holds 0 [K]
 * @param shortestStay how long a run stays at least under a configuration before it goes on to
 *     another [s]
 */
public record Spans(Map<String, Range> inputs, Map<String, Range> apart, double shortestStay) {
  /**
   * Checks the ends. Whether the names are those of a model is checked where it meets the spans.
   *
   * @throws InvalidInputException if an end is infinite, what blocks start apart by leaves 0 out,
   *     or the shortest stay is not positive
   */
  public Spans {
    Checks.positive("shortest stay", shortestStay, "s");
    inputs = Map.copyOf(inputs);
    apart = Map.copyOf(apart);
    // sorted: what is refused first must not differ from run to run, as the order of such maps does
    new TreeMap<>(inputs).forEach((name, span) -> checkFinite("span of " + name, span, ""));
    new TreeMap<>(apart)
        .forEach(
            (name, span) -> {
              checkFinite("start apart of " + name, span, "K");
              checkHoldsZero("start apart of " + name, span, "K");
            });
  }

  private static void checkFinite(String field, Range span, String unit) {
    Checks.finite(field, span.low(), unit);
    Checks.finite(field, span.high(), unit);
  }

  private static void checkHoldsZero(String field, Range span, String unit) {
    if (!span.contains(0)) {
      throw new InvalidInputException(
          field, "from " + span.low() + " to " + span.high() + " " + unit + " must hold 0 " + unit);
    }
  }

  /**
   * The same span for all temperatures and for all powers; no block starts apart.
   *
   * @param ports inputs of a model
   * @param temperatures span of each ambient and held surface [K]
   * @param powers span of each source [W]
   * @param shortestStay how long a run stays at least under a configuration [s]
   * @return the spans
   * @throws InvalidInputException if an input is a flux
   */
  public static Spans of(List<Port> ports, Range temperatures, Range powers, double shortestStay) {
    Map<String, Range> inputs = new LinkedHashMap<>();
    for (Port port : ports) {
      inputs.put(
          port.name(),
          switch (port.unit()) {
            case "K" -> temperatures;
            case "W" -> powers;
            default ->
                throw new InvalidInputException(
                    "span of " + port.name(), "is one of " + port.unit() + "; name it");
          });
    }
    return new Spans(inputs, Map.of(), shortestStay);
  }

  /**
   * The same with a block that may start apart.
   *
   * @param block name of the block
   * @param warmer by how much it may be warmer than the rest, 0 included [K]
   * @return the spans
   * @throws InvalidInputException if the range leaves 0 out
   */
  public Spans startingApart(String block, Range warmer) {
    Map<String, Range> all = new LinkedHashMap<>(apart);
    all.put(block, warmer);
    return new Spans(inputs, all, shortestStay);
  }

  /** Tells whether runs that keep to other spans keep to these. */
  boolean hold(Spans others) {
    for (Map.Entry<String, Range> input : inputs.entrySet()) {
      Range other = others.inputs.get(input.getKey());
      if (other == null || !hold(input.getValue(), other)) {
        return false;
      }
    }
    for (String block : others.apart.keySet()) {
      if (!hold(ofStart(block), others.ofStart(block))) {
        return false;
      }
    }
    return others.shortestStay >= shortestStay;
  }

  private static boolean hold(Range range, Range other) {
    return range.low() <= other.low() && other.high() <= range.high();
  }

  /**
   * Refuses spans that are not those of a model: a name that it does not know could be a misspelled
   * one whose span then would not count.
   *
   * @param ports inputs of the model
   * @param startingApart the blocks that may start apart in its runs
   */
  void requireFit(List<Port> ports, Set<String> startingApart) {
    Set<String> names = new TreeSet<>();
    for (Port port : ports) {
      names.add(port.name());
      Range span = inputs.get(port.name());
      if (span == null) {
        throw new InvalidInputException(
            "spans",
            "there is none of '"
                + port.name()
                + "'; there are those of "
                + sorted(inputs.keySet()));
      }
      String field = "span of " + port.name();
      if (port.unit().equals("K")) {
        Checks.temperature(field, span.low());
        Checks.temperature(field, span.high());
      } else {
        checkHoldsZero(field, span, port.unit());
      }
    }
    requireKnown(inputs.keySet(), names, "is no input; there are ");
    requireKnown(apart.keySet(), startingApart, "is no block announced to start apart; there are ");
  }

  private static void requireKnown(Set<String> named, Set<String> known, String problem) {
    for (String name : sorted(named)) {
      if (!known.contains(name)) {
        throw new InvalidInputException("spans", "'" + name + "' " + problem + sorted(known));
      }
    }
  }

  /** In the same order in every run, which that of a set is not. */
  private static Set<String> sorted(Set<String> names) {
    return new TreeSet<>(names);
  }

  /** The span of an input of a model that these fit. */
  Range of(Port port) {
    return Objects.requireNonNull(inputs.get(port.name()));
  }

  /** The range by which a block may start apart; 0 if it is not named. */
  Range ofStart(String block) {
    return apart.getOrDefault(block, new Range(0, 0));
  }
}
