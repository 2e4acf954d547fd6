package stenotherm.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stenotherm.decision.Mishap;
import stenotherm.journey.Journey;
import stenotherm.parcel.Parcel;
import stenotherm.text.Faults;
import stenotherm.text.MappingNode;
import stenotherm.text.Node;
import stenotherm.text.ScalarNode;
import stenotherm.text.SequenceNode;

/** Reads what a scenario says may go wrong. */
final class MishapReader {
  private static final String DELAY = "delay";
  private static final String ORIENTATION = "orientation";
  private static final String SUN = "sun";

  private static final Pattern WEATHER =
      Pattern.compile("(.+?)\\s+(colder|warmer)(?:\\s+in\\s+(.+))?", Pattern.DOTALL);

  private static final String AGAINST_CUP = "loose against the cup";

  /** Keys whose values are names, and what these stand for. */
  private static final Map<String, Map<String, Mishap>> NAMED = named();

  private final Parcel packing;
  private final Journey journey;
  private final double hold;

  private MishapReader(Parcel packing, Journey journey, double hold) {
    this.packing = packing;
    this.journey = journey;
    this.hold = hold;
  }

  private static Map<String, Map<String, Mishap>> named() {
    Map<String, Map<String, Mishap>> all = new LinkedHashMap<>();
    all.put("vehicles", Map.of("unheated", new Mishap.UnheatedVehicle()));
    all.put("fill", Map.of("none", new Mishap.NoFill()));
    Map<String, Mishap> warmers = new LinkedHashMap<>();
    warmers.put("dead", new Mishap.DeadWarmer());
    warmers.put(AGAINST_CUP, new Mishap.LooseWarmer());
    warmers.put("film taped over", new Mishap.CoveredFilm());
    all.put("warmer", Collections.unmodifiableMap(warmers));
    Map<String, Mishap> packs = new LinkedHashMap<>();
    packs.put("forgotten", new Mishap.ForgottenPack());
    packs.put("half frozen", new Mishap.HalfFrozenPack());
    packs.put(AGAINST_CUP, new Mishap.LoosePack());
    all.put("pack", Collections.unmodifiableMap(packs));
    all.put("openings", Map.of("blocked", new Mishap.BlockedOpenings()));
    return Collections.unmodifiableMap(all);
  }

  /** The names that a key takes. */
  static List<String> names(String key) {
    return List.copyOf(NAMED.getOrDefault(key, Map.of()).keySet());
  }

  /**
   * Reads all mishaps of a file.
   *
   * @param packing a packing, to try them on
   * @param hold how long delays are followed [s]
   */
  static List<Mishap> read(KeyedSection file, Parcel packing, Journey journey, double hold) {
    Node list = file.optional("mishaps").orElse(null);
    if (list == null) {
      return List.of();
    }
    MishapReader reader = new MishapReader(packing, journey, hold);
    List<Mishap> all = new ArrayList<>();
    Faults faults = new Faults();
    for (MappingNode each : list.asSequence().mappings()) {
      faults
          .attempt(
              () ->
                  Names.within(
                      each,
                      () ->
                          reader.mishap(
                              KeyedSection.of(each, Vocabulary.MISHAP, file.assumptions()))))
          .ifPresent(all::add);
    }
    faults.throwIfAny();
    return all;
  }

  /** One mishap of parts; the sun divides its leg and comes when all legs are as they will be. */
  private Mishap mishap(KeyedSection section) {
    String name = section.require("name").asScalar().text();
    Faults faults = new Faults();
    List<Mishap> parts = new ArrayList<>();
    NAMED.forEach(
        (key, names) ->
            section
                .optional(key)
                .flatMap(node -> faults.attempt(() -> node.asScalar().choice(names)))
                .ifPresent(parts::add));
    section
        .optional("weather")
        .flatMap(node -> faults.attempt(() -> weather(node.asScalar())))
        .ifPresent(parts::add);
    section
        .optional(ORIENTATION)
        .flatMap(node -> faults.attempt(() -> lying(node.asScalar())))
        .ifPresent(parts::add);
    section
        .optional(DELAY)
        .flatMap(node -> faults.attempt(() -> late(node)))
        .ifPresent(parts::addAll);
    if (section.has(SUN) && section.has(ORIENTATION)) {
      faults.add(
          section
              .node()
              .failAt(SUN, "shines on the lid and cannot be given together with orientation"));
    }
    section
        .optional(SUN)
        .flatMap(node -> faults.attempt(() -> sun(node.asScalar())))
        .ifPresent(parts::add);
    faults.throwIfAny();
    if (parts.isEmpty()) {
      throw section.node().fail("must say what happens, write for example weather: 8 K colder");
    }
    return Mishap.Own.together(name, parts);
  }

  private Mishap weather(ScalarNode node) {
    Matcher parts = WEATHER.matcher(node.text());
    if (!parts.matches()) {
      throw node.fail(
          "must be how much colder or warmer, write for example 8 K colder, or 8 K colder in "
              + journey.legs().get(0).name());
    }
    double size = node.piece(parts.group(1)).temperatureDifference();
    if (!(size > 0)) {
      throw node.fail("must be above 0 K; colder or warmer says which way");
    }
    double kelvin = parts.group(2).equals("colder") ? -size : size;
    String leg = parts.group(3);
    return possible(
        node,
        leg == null
            ? new Mishap.MissedForecast(kelvin)
            : new Mishap.OtherAir(
                JourneyReader.legNamed(JourneyReader.names(journey), node, leg), leg, kelvin));
  }

  private Mishap lying(ScalarNode node) {
    return new Mishap.Lying(node.choice(LegReader.orientations()));
  }

  private List<Mishap> late(Node node) {
    List<ScalarNode> delays =
        node instanceof SequenceNode list ? list.scalars() : List.of(node.asScalar());
    List<Mishap> all = new ArrayList<>();
    double sum = 0;
    for (ScalarNode each : delays) {
      JourneyReader.InLeg late = JourneyReader.inLeg(journey, each);
      sum += late.lasting();
      if (sum > hold) {
        throw each.fail(
            "must not be longer than the hold of the file, "
                + Assumptions.hours(hold)
                + ", all delays together; write a longer hold");
      }
      String leg = journey.legs().get(late.leg()).name();
      all.add(each.locate(() -> new Mishap.Late(late.leg(), leg, late.lasting())));
    }
    return all;
  }

  private Mishap sun(ScalarNode node) {
    JourneyReader.InLeg sunny = JourneyReader.inLeg(journey, node);
    return possible(
        node, node.locate(() -> new Mishap.SunOnLid(sunny.lasting(), OptionalInt.of(sunny.leg()))));
  }

  /** Tries it, so that a mishap that no journey can meet is refused here. */
  private Mishap possible(ScalarNode node, Mishap mishap) {
    node.locate(() -> mishap.applyTo(packing, journey));
    return mishap;
  }
}
