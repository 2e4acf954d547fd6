package stenotherm.scenario;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import stenotherm.base.Checks;
import stenotherm.base.Mass;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.parcel.Placement;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.Size;
import stenotherm.warmer.Bench;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.Rating;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.WarmerFit;

/** Reads a warmer that the catalogue lacks: by its rating, a curve measured of it, or its watts. */
final class OwnWarmerReader {
  private static final String NAME = "warmer of your own";
  private static final String RATING = "rating";
  private static final String CURVE = "curve";
  private static final String BENCH = "bench";
  private static final String ROOM = "room";
  private static final String WATTS = "watts";
  private static final String LASTING = "lasting";

  /** How far the watts that a keeper gives may be off [-]. */
  private static final Range STRENGTH = new Range(0.75, 1.25);

  /** How a warmer lay while its curve was measured. */
  private static final Map<String, DoubleFunction<Bench>> BENCHES = benches();

  private final KeyedSection own;
  private final WarmerClass.PadSize size;

  /** Mass of the contents [kg]. */
  private final double contents;

  private OwnWarmerReader(KeyedSection own) {
    this.own = own;
    Size extents = own.require("size").asScalar().size();
    this.size = new WarmerClass.PadSize(extents.x(), extents.y(), extents.z());
    this.contents = own.require("contents").asScalar().mass();
  }

  private static Map<String, DoubleFunction<Bench>> benches() {
    Map<String, DoubleFunction<Bench>> benches = new LinkedHashMap<>();
    benches.put("wrapped in cloth", Bench::wrapped);
    benches.put("bare table", Bench::onTable);
    benches.put("rating bench", Bench::rating);
    return Collections.unmodifiableMap(benches);
  }

  static List<String> benchNames() {
    return List.copyOf(BENCHES.keySet());
  }

  /** The warmer, and where it lies. */
  record Described(WarmerClass kind, Placement placement) {}

  /** A fit, and the words for what was fitted. */
  private record Known(WarmerFit fit, String data) {}

  /** Reads a warmer; a curve is one of the files. */
  static Described read(
      KeyedSection own, PlacementReader places, boolean isLoose, NamedFiles files) {
    Optional<Node> on = isLoose ? own.optional("on") : Optional.of(own.require("on"));
    Placement placement = on.isPresent() ? places.on(on.orElseThrow().asScalar()) : places.loose();
    return new Described(new OwnWarmerReader(own).kind(files), placement);
  }

  private WarmerClass kind(NamedFiles files) {
    if (Stream.of(RATING, CURVE, WATTS).filter(own::has).count() != 1) {
      throw own.node()
          .fail("must have one of the rating printed on it, a curve measured of it, its watts");
    }
    refuseWithout(CURVE, "has no effect without a curve", BENCH, ROOM);
    refuseWithout(WATTS, "has no effect without watts, its hours follow from the rest", LASTING);
    if (own.has(WATTS)) {
      PrescribedPower power = new PrescribedPower(power());
      Source source = Source.assumed("watts as the scenario file gives them, with any air");
      return own.node()
          .locate(() -> new WarmerClass(NAME, size, contents, power, STRENGTH, source));
    }
    Known known = own.has(CURVE) ? curve(files) : rating();
    own.assumptions().fitted(known.data(), known.fit());
    return own.node()
        .locate(
            () -> WarmerClass.fitted(NAME, size, new Mass(contents), known.fit(), known.data()));
  }

  private void refuseWithout(String needed, String problem, String... keys) {
    for (String key : keys) {
      if (own.has(key) && !own.has(needed)) {
        throw own.node().failAt(key, problem);
      }
    }
  }

  private Known curve(NamedFiles files) {
    ScalarNode file = own.require(CURVE).asScalar();
    DoubleFunction<Bench> bench = own.require(BENCH).asScalar().choice(BENCHES);
    BenchCurveReader.Measured measured = BenchCurveReader.read(files.table(file), own);
    WarmerFit fit =
        own.node()
            .locate(
                () ->
                    WarmerFit.of(
                        measured.curve(), bench.apply(measured.room()), size, new Mass(contents)));
    return new Known(fit, "curve in '" + file.text() + "', measured by the user");
  }

  private Known rating() {
    KeyedSection printed =
        KeyedSection.of(own.require(RATING), Vocabulary.RATING, own.assumptions());
    Rating rating = rating(printed);
    return new Known(
        own.node().locate(() -> WarmerFit.of(rating, size, new Mass(contents))), rating.words());
  }

  private TimeFunction power() {
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
