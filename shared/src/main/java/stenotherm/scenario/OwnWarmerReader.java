package stenotherm.scenario;

import java.util.Optional;
import java.util.OptionalDouble;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.parcel.Placement;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.Rating;
import stenotherm.warmer.WarmerClass;

/** Reads a warmer that the catalogue lacks: by what is printed on it, or by its watts. */
final class OwnWarmerReader {
  private static final String NAME = "warmer of your own";
  private static final String RATING = "rating";
  private static final String WATTS = "watts";
  private static final String LASTING = "lasting";

  /** How far the watts that a keeper gives may be off [-]. */
  private static final Range STRENGTH = new Range(0.75, 1.25);

  private OwnWarmerReader() {}

  /** The warmer, and where it lies. */
  record Described(WarmerClass kind, Placement placement) {}

  static Described read(
      MappingNode node, PlacementReader places, boolean isLoose, Assumptions assumptions) {
    KeyedSection own = KeyedSection.of(node, Vocabulary.OWN_WARMER, assumptions);
    Optional<Node> on = isLoose ? own.optional("on") : Optional.of(own.require("on"));
    Placement placement = on.isPresent() ? places.on(on.orElseThrow().asScalar()) : places.loose();
    Size extents = own.require("size").asScalar().size();
    WarmerClass.PadSize size = new WarmerClass.PadSize(extents.x(), extents.y(), extents.z());
    double contents = own.require("contents").asScalar().mass();
    if (own.has(RATING) == own.has(WATTS)) {
      throw node.fail("must have either the rating printed on it or its watts");
    }
    if (own.has(WATTS)) {
      TimeFunction power = power(own);
      Source source = Source.assumed("watts as the scenario file gives them, with any air");
      return new Described(
          node.locate(
              () ->
                  new WarmerClass(
                      NAME, size, contents, new PrescribedPower(power), STRENGTH, source)),
          placement);
    }
    if (own.has(LASTING)) {
      throw node.failAt(LASTING, "has no effect with a rating, which has its hours");
    }
    Rating rating = rating(KeyedSection.of(own.require(RATING), Vocabulary.RATING, assumptions));
    return new Described(
        node.locate(() -> WarmerClass.rated(NAME, size, contents, rating)), placement);
  }

  private static TimeFunction power(KeyedSection own) {
    ScalarNode wattsNode = own.require(WATTS).asScalar();
    double watts = wattsNode.power();
    wattsNode.locate(() -> Checks.positive(WATTS, watts, "W"));
    ScalarNode lastingNode = own.require(LASTING).asScalar();
    double lasting = lastingNode.duration();
    return lastingNode.locate(
        () ->
            TimeFunction.table(
                new double[] {0, Checks.positive(LASTING, lasting, "s"), lasting},
                new double[] {watts, watts, 0}));
  }

  private static Rating rating(KeyedSection rating) {
    double peak = rating.require("peak").asScalar().temperature();
    double hours = rating.require("hours").asScalar().duration();
    OptionalDouble mean =
        rating.optional("mean").stream()
            .mapToDouble(node -> node.asScalar().temperature())
            .findAny();
    OptionalDouble rise =
        rating.optional("rise").stream().mapToDouble(node -> node.asScalar().duration()).findAny();
    return rating.node().locate(() -> new Rating(peak, hours, mean, rise));
  }
}
