package stenotherm.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stenotherm.air.StandardAtmosphere;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.decision.ChangesTried;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Remedy;
import stenotherm.decision.Side;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.journey.Journey;
import stenotherm.journey.Surroundings;
import stenotherm.material.Material;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.study.OddsByCause;
import stenotherm.transit.TransitResult;
import stenotherm.words.Figures;

/** The tables that console and report share. */
final class Tables {
  /** Delays of the opening that the table of odds tells of [h]. */
  private static final List<Integer> DELAYS = List.of(6, 12, 24);

  /** What lies closer together than this touches [m]. */
  private static final double TOUCHING = 1e-6;

  /** Air below this is not told to be thin [m]. */
  private static final double HIGH = 500;

  /** What a cell holds that does not apply. */
  static final String NOTHING = "-";

  /** Heads the column of how late a packing may be; its cells are delays. */
  static final String LATE_BY = "likely holds if late by up to";

  private final Words words;
  private final List<Judged> rows;

  Tables(Words words, List<Judged> rows) {
    this.words = words;
    this.rows = rows;
  }

  /** What a packing is chosen by. */
  TextTable overview() {
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      lines.add(
          List.of(
              row.label(),
              row.verdict().level().words(),
              Words.decidingInColumn(row.verdict().within()),
              stored(row, Side.COLD),
              stored(row, Side.HOT),
              ClimateWords.percent(new Climate(row).leastOxygen().value()),
              delay(row)));
    }
    return new TextTable(
        "Until opening; coldest and hottest on a typical journey, on the clock of the place"
            + inFlight()
            + (rows.stream().anyMatch(row -> Words.isLowered(row.verdict().within()))
                ? "; " + Words.BRACKETS
                : ""),
        List.of(
            "packing", "verdict", "of 100 go well", "coldest", "hottest", "least oxygen", LATE_BY),
        lines);
  }

  /** What is sealed, handed over and paid for, and where the warmers are. */
  TextTable parcels() {
    boolean warmed = rows.stream().anyMatch(Judged::hasWarmer);
    List<String> head = new ArrayList<>(List.of("packing", "outer size", "mass"));
    if (warmed) {
      head.addAll(List.of("warmer's hottest part", "warmer touches"));
    }
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      Box outer = row.parcel().outer();
      List<String> line =
          new ArrayList<>(
              List.of(
                  row.label(),
                  words.figures().size(outer.size(Axis.X), outer.size(Axis.Y), outer.size(Axis.Z)),
                  words.figures().mass(row.parcel().mass())));
      if (warmed) {
        line.add(row.hasWarmer() ? warmest(row) : NOTHING);
        line.add(row.hasWarmer() ? touched(row.parcel()) : NOTHING);
      }
      lines.add(line);
    }
    return new TextTable("The parcels", head, lines);
  }

  /** What the oxygen of a column is to be held against, where that is not 21 %. */
  private String inFlight() {
    double highest =
        rows.get(0).planned().journey().legs().stream()
            .mapToDouble(leg -> leg.surroundings().altitude())
            .max()
            .orElse(0);
    double fresh =
        ClimateWords.FRESH
            * StandardAtmosphere.pressure(highest)
            / StandardAtmosphere.SEA_LEVEL_PRESSURE;
    return highest < HIGH
        ? ""
        : "; fresh air has 21 % of oxygen, at the height of the flight as little as "
            + ClimateWords.percent(fresh);
  }

  private String stored(Judged row, Side side) {
    Extreme extreme = Extreme.of(row.assessment(), side);
    return words.temperature(extreme.typical()) + ", " + words.stored(row.held(), extreme.time());
  }

  private String moment(Judged row, Extreme extreme) {
    return words.temperature(extreme.typical()) + ", " + words.moment(row.held(), extreme.time());
  }

  /** How late it may be and still likely hold. */
  static String delay(Judged row) {
    if (row.delay().isEmpty()) {
      return "not even on time";
    }
    int hours = row.delay().getAsInt();
    String text = hours == 0 ? "less than 1 h" : hours + " h";
    return hours == row.odds().longestDelay() ? "at least " + hours + " h" : text;
  }

  /**
   * The hottest that a warmer's surface gets until opening, with all as stated, the error of the
   * computation beside it, and with the strongest warmer in the warmest air.
   */
  private String warmest(Judged row) {
    return words.temperature(warmest(row, row.assessment().nominal()))
        + ", give or take "
        + words.figures().difference(row.assessment().error().warmer())
        + "; worst case "
        + words.temperature(warmestAtWorst(row));
  }

  /** The hottest that a warmer's surface gets in the worst case [K]. */
  static double warmestAtWorst(Judged row) {
    return warmest(row, row.assessment().warmest());
  }

  private static double warmest(Judged row, TransitResult result) {
    double[] times = result.times();
    double most = Double.NEGATIVE_INFINITY;
    for (PlacedWarmer warmer : row.parcel().warmers()) {
      double[] hottest = result.hottest(warmer.name());
      for (int at = 0; at < times.length && times[at] <= row.assessment().plannedEnd(); at++) {
        most = Math.max(most, hottest[at]);
      }
    }
    return most;
  }

  /** What the warmers of a packing lie on or in. */
  static String touched(Parcel parcel) {
    Layout layout = parcel.layout();
    Set<String> touched = new LinkedHashSet<>();
    for (PlacedWarmer warmer : parcel.warmers()) {
      Box pad = layout.block(warmer.name()).box();
      for (Face face : Face.values()) {
        if (Math.abs(parcel.cavity().excess(pad, face)) < TOUCHING) {
          touched.add(face.words());
        }
      }
      for (Container container : parcel.containers()) {
        if (pad.overlap(layout.block(container.airBlock()).box()) > -TOUCHING) {
          touched.add(container.name());
        }
      }
      for (PlacedPack pack : parcel.packs()) {
        if (pad.overlap(layout.block(pack.name()).box()) > -TOUCHING) {
          touched.add(pack.name());
        }
      }
    }
    touched.add(parcel.filling().fill().map(Material::name).orElse("air"));
    return String.join(", ", touched);
  }

  /** In how many of a hundred journeys each packing keeps the animals within their bands. */
  TextTable odds() {
    List<String> head =
        new ArrayList<>(
            List.of("packing", "on time", "too cold", "too hot", "short of air", "could be burnt"));
    int longest = rows.stream().mapToInt(row -> row.odds().longestDelay()).min().orElse(0);
    List<Integer> delays = DELAYS.stream().filter(hours -> hours <= longest).toList();
    delays.forEach(hours -> head.add(hours + " h late"));
    head.add("if all varied 1.5 times as much");
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      List<String> cells = new ArrayList<>();
      cells.add(row.label());
      cells.add(Words.withInterval(row.verdict().within()));
      cells.add(Words.percent(1 - row.odds().notTooCold().within()));
      cells.add(Words.percent(1 - row.odds().notTooHot().within()));
      cells.add(Words.percent(1 - row.odds().enoughAir().within()));
      cells.add(Words.percent(1 - row.odds().notBurnt().within()));
      for (int hours : delays) {
        cells.add(Words.percent(row.odds().withinUntil(hours).within()));
      }
      cells.add(Words.percent(row.assessment().wider().within().within()));
      lines.add(cells);
    }
    return new TextTable(
        "Of 100 journeys, in how many all goes well (in brackets: what is left open by the number of"
            + " journeys computed)",
        head,
        lines);
  }

  /** How cold and how hot it gets on a typical journey, seldom, and at worst. */
  TextTable temperatures() {
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      List<String> line = new ArrayList<>(List.of(row.label()));
      for (Side side : Side.values()) {
        Extreme extreme = Extreme.of(row.assessment(), side);
        line.add(words.temperature(extreme.typical()));
        line.add(words.temperature(extreme.seldom()));
        line.add(words.temperature(worst(row, extreme.cup(), side)));
      }
      line.add(words.error(row));
      lines.add(line);
    }
    return new TextTable(
        "How cold and how hot it gets until opening: typically, on one journey of twenty at that"
            + " moment, and in the worst case at any moment",
        List.of(
            "packing",
            "coldest",
            "1 of 20",
            "worst case",
            "hottest",
            "1 of 20",
            "worst case",
            "error of the computation ±"),
        lines);
  }

  private static double worst(Judged row, Container cup, Side side) {
    double[] times = row.odds().times();
    double[] worst = row.worst(cup, side);
    double most = worst[0];
    for (int at = 1; at < times.length && times[at] <= row.assessment().plannedEnd(); at++) {
      most = side == Side.COLD ? Math.min(most, worst[at]) : Math.max(most, worst[at]);
    }
    return most;
  }

  private static boolean several(List<Judged> rows) {
    return rows.stream().anyMatch(row -> row.parcel().occupied().size() > 1);
  }

  /** Each animal on its own, if a packing has several. */
  Optional<TextTable> animals() {
    if (!several(rows)) {
      return Optional.empty();
    }
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      for (Container cup : told(row)) {
        lines.add(
            List.of(
                row.label(),
                Judged.animal(cup).name() + ", " + cup.name(),
                moment(row, Extreme.of(row.assessment(), cup, Side.COLD)),
                moment(row, Extreme.of(row.assessment(), cup, Side.HOT))));
      }
    }
    return Optional.of(
        new TextTable(
            rows.stream().anyMatch(row -> row.parcel().occupied().size() > FEW)
                ? "The coldest and the hottest of all animals, on a typical journey"
                : "Each animal on its own, on a typical journey",
            List.of("packing", "animal", "coldest", "hottest"),
            lines));
  }

  /**
   * The containers that are told of: of many only those with the coldest and the hottest animal.
   */
  private static List<Container> told(Judged row) {
    List<Container> all = row.parcel().occupied();
    if (all.size() <= FEW) {
      return all;
    }
    Container coldest =
        Collections.min(all, Comparator.comparingDouble(cup -> typical(row, cup, Side.COLD)));
    Container hottest =
        Collections.max(all, Comparator.comparingDouble(cup -> typical(row, cup, Side.HOT)));
    return all.stream().filter(cup -> cup.equals(coldest) || cup.equals(hottest)).toList();
  }

  private static double typical(Judged row, Container cup, Side side) {
    return Extreme.of(row.assessment(), cup, side).typical();
  }

  /** More animals than this are not told one by one. */
  private static final int FEW = 4;

  /** How far the packs that melt are spent, if there are any. */
  Optional<TextTable> packs() {
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      for (PlacedPack pack : row.parcel().packs()) {
        if (pack.pack().melts()) {
          lines.add(packLine(row, pack));
        }
      }
    }
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new TextTable(
            "Melted part of the packs, with everything as stated",
            List.of(
                "packing",
                "pack",
                "melts at",
                "at sealing",
                "at opening",
                "half melted",
                "all melted"),
            lines));
  }

  private List<String> packLine(Judged row, PlacedPack pack) {
    double[] liquid = row.planned().liquidFraction(pack.name());
    Range melting = pack.pack().contents().behaviour().fusion().orElseThrow().range();
    return List.of(
        row.label(),
        pack.name(),
        words.temperature((melting.low() + melting.high()) / 2),
        percent(liquid[0]),
        percent(liquid[liquid.length - 1]),
        reached(row, liquid, 0.5),
        reached(row, liquid, 0.999));
  }

  private static String percent(double fraction) {
    return Math.round(100 * fraction) + " %";
  }

  /** When a melted part is first reached, to a stored time. */
  private String reached(Judged row, double[] liquid, double fraction) {
    if (liquid[0] >= fraction) {
      return "at sealing";
    }
    double[] times = row.planned().times();
    for (int i = 1; i < liquid.length; i++) {
      if (liquid[i] >= fraction) {
        return words.moment(row.held(), times[i]);
      }
    }
    return "not before opening";
  }

  /** What a change must bring to a margin to be listed [K]: a rough look is no finer. */
  private static final double NOTICEABLE = 0.1;

  /** The changes to a packing that have odds. */
  TextTable changes(Improvement changes, VerdictWords verdicts) {
    ChangesTried tried = changes.tried();
    Map<String, OddsByCause> judged = new LinkedHashMap<>();
    judged.put("as it is", tried.before());
    tried.changes().stream()
        .filter(each -> each.odds().isPresent())
        .sorted(Comparator.comparingDouble(each -> -each.within().orElseThrow().within()))
        .forEach(each -> judged.put(verdicts.remedy(each.remedy()), each.odds().orElseThrow()));
    List<Cause> causes = Cause.of(judged.values());
    List<String> head = new ArrayList<>(List.of("change", "of 100 go well"));
    causes.forEach(cause -> head.add(cause.words()));
    List<List<String>> lines = new ArrayList<>();
    judged.forEach(
        (change, odds) -> {
          List<String> line = new ArrayList<>(List.of(change, Words.withInterval(odds.within())));
          causes.forEach(cause -> line.add(Words.percent(cause.share(odds))));
          lines.add(line);
        });
    return new TextTable(
        "Tried in full on '"
            + changes.row().label()
            + (tried.best().isPresent() ? "'" : "', none clearly better")
            + " (in brackets: what is left open by the number of journeys computed)",
        head,
        lines);
  }

  /** The changes that look better but were not worth odds, if there are any. */
  Optional<TextTable> lesserChanges(ChangesTried tried, VerdictWords verdicts) {
    List<List<String>> lines =
        tried.changes().stream()
            .filter(each -> each.odds().isEmpty() && isNoticeable(each, tried))
            .sorted(Comparator.comparingDouble(each -> -each.margin()))
            .map(
                each ->
                    List.of(
                        shortly(each.remedy(), verdicts),
                        words.figures().difference(each.margin())))
            .toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new TextTable(
                "Tried only roughly, the better ones: what is left to the nearer end of its temperatures on a rather"
                    + " cold and a rather hot journey, below 0 outside; as it is, "
                    + words.figures().difference(tried.margin()),
                List.of("change", "left"),
                lines));
  }

  /**
   * Whether it leaves more than what it is made on: the packing as it is, or one with more room.
   */
  private static boolean isNoticeable(ChangesTried.TriedChange change, ChangesTried tried) {
    double before =
        tried.changes().stream()
            .filter(each -> each.remedy() instanceof Remedy.MoreRoom)
            .filter(each -> isInLargerBox(change.remedy()))
            .mapToDouble(ChangesTried.TriedChange::margin)
            .reduce(tried.margin(), Math::max);
    return change.margin() > before + NOTICEABLE;
  }

  private static boolean isInLargerBox(Remedy remedy) {
    return remedy instanceof Remedy.Both both && both.first() instanceof Remedy.MoreRoom;
  }

  /** Where all is tried in a larger box, that is said of the ones with odds. */
  private static String shortly(Remedy remedy, VerdictWords verdicts) {
    return isInLargerBox(remedy)
        ? "in the larger box, " + verdicts.remedy(((Remedy.Both) remedy).second())
        : verdicts.remedy(remedy);
  }

  /** Parts of a leg at whose ends its air is looked at. */
  private static final int LOOKS = 8;

  /** The parts of the journey, and what air the parcel meets on them: that decides most answers. */
  TextTable way() {
    Journey journey = rows.get(0).planned().journey();
    List<List<String>> lines = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      Surroundings around = journey.legs().get(leg).surroundings();
      double own = around.spread().own();
      double outdoors = around.spread().outdoors();
      String change = Words.clockChange(journey, leg);
      lines.add(
          List.of(
              journey.legs().get(leg).name(),
              words.dayAndClock(journey, journey.start(leg))
                  + (change.isEmpty() ? "" : " (" + change + ")"),
              Words.hours(journey.legs().get(leg).lasting()) + " h",
              air(around.ambient(), journey.start(leg), journey.start(leg + 1)),
              words.figures().difference(Math.hypot(own, outdoors)),
              around.stowage().words()));
    }
    return new TextTable(
        "The way; nine of ten journeys meet air within what is given or taken",
        List.of("part of the journey", "from", "lasts", "air", "give or take", "it lies"),
        lines);
  }

  /** From the coldest to the warmest in a leg. */
  private String air(TimeFunction ambient, double from, double to) {
    double coldest = Double.POSITIVE_INFINITY;
    double warmest = Double.NEGATIVE_INFINITY;
    for (int look = 0; look <= LOOKS; look++) {
      double time = from + (to - from) * look / LOOKS;
      double value = look == LOOKS ? ambient.before(to) : ambient.at(time);
      coldest = Math.min(coldest, value);
      warmest = Math.max(warmest, value);
    }
    String low = words.temperature(coldest);
    String high = words.temperature(warmest);
    return low.equals(high) ? low : Figures.range(low, high);
  }

  /** What of delays with everything as stated is to be counted on. */
  private static final String ALLOWED =
      "with all that is uncertain it bears less, see '" + LATE_BY + "'";

  /** The packings that keep the alarm band. */
  private List<Judged> inside() {
    return rows.stream().filter(row -> !row.legDelays().isEmpty()).toList();
  }

  private static boolean bearsAnyDelay(Judged row) {
    return row.legDelays().stream().allMatch(DelayMargin::isAtLeast);
  }

  /** Where no delay of a single leg that was tried does harm: that in a sentence. */
  Optional<String> anyLegMayBeLate() {
    List<Judged> inside = inside();
    if (inside.isEmpty() || !inside.stream().allMatch(Tables::bearsAnyDelay)) {
      return Optional.empty();
    }
    String which = inside.stream().map(Judged::label).collect(Collectors.joining("', '"));
    return Optional.of(
        "With everything exactly as stated, any single part of the journey of '"
            + which
            + "' could last "
            + Words.delay(inside.get(0).legDelays().get(0))
            + " longer before an animal leaves its temperatures. Nobody can count on that: "
            + ALLOWED);
  }

  /** How much longer each leg may last, for the packings that keep the alarm band. */
  Optional<TextTable> legDelays() {
    List<Judged> inside = inside();
    if (inside.isEmpty() || anyLegMayBeLate().isPresent()) {
      return Optional.empty();
    }
    List<String> head = new ArrayList<>(List.of("part of the journey", "from", "planned"));
    inside.forEach(row -> head.add(row.label()));
    Journey journey = inside.get(0).planned().journey();
    List<List<String>> lines = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      List<String> line = new ArrayList<>();
      line.add(journey.legs().get(leg).name());
      String change = Words.clockChange(journey, leg);
      line.add(
          words.dayAndClock(journey, journey.start(leg))
              + (change.isEmpty() ? "" : " (" + change + ")"));
      line.add(Words.hours(journey.legs().get(leg).lasting()) + " h");
      for (Judged row : inside) {
        line.add(Words.delay(row.legDelays().get(leg)));
      }
      lines.add(List.copyOf(line));
    }
    return Optional.of(
        new TextTable(
            "How much longer a single part could last before an animal leaves its temperatures, were"
                + " everything exactly as stated. Nobody can count on that: "
                + ALLOWED,
            head,
            lines));
  }
}
