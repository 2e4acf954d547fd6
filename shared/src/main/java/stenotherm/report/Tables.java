package stenotherm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stenotherm.decision.Margin;
import stenotherm.decision.Side;
import stenotherm.journey.Journey;
import stenotherm.parcel.Container;
import stenotherm.parcel.PlacedPack;

/** The tables that console and report share. */
final class Tables {
  /** Delays of the opening that the table of odds tells of [h]. */
  private static final List<Integer> DELAYS = List.of(6, 12, 24);

  private final Words words;
  private final List<Judged> rows;

  Tables(Words words, List<Judged> rows) {
    this.words = words;
    this.rows = rows;
  }

  /** In how many of a hundred journeys each packing keeps the animals within their bands. */
  TextTable odds() {
    List<String> head = new ArrayList<>(List.of("verdict", "within", "too cold", "too hot"));
    int longest = rows.stream().mapToInt(row -> row.odds().longestDelay()).min().orElse(0);
    List<Integer> delays = DELAYS.stream().filter(hours -> hours <= longest).toList();
    delays.forEach(hours -> head.add(hours + " h late"));
    head.add("ranges half as wide again");
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      List<String> cells = new ArrayList<>();
      cells.add(row.verdict().level().words());
      cells.add(
          Words.percent(row.verdict().within().within())
              + " ("
              + Words.percent(row.verdict().within().low())
              + " to "
              + Words.percent(row.verdict().within().high())
              + ")");
      cells.add(Words.percent(1 - row.odds().notTooCold().within()));
      cells.add(Words.percent(1 - row.odds().notTooHot().within()));
      for (int hours : delays) {
        cells.add(Words.percent(row.odds().withinUntil(hours).within()));
      }
      cells.add(Words.percent(row.assessment().wider().within().within()));
      lines.add(line(row, cells.toArray(String[]::new)));
    }
    return new TextTable(
        "Of 100 journeys, in how many "
            + animals(rows)
            + (several(rows) ? " all stay" : " stays")
            + " within the alarm band until opening (interval of the sample)",
        head(head.toArray(String[]::new)),
        lines);
  }

  /** Lowest and highest temperature of the animals of each packing. */
  TextTable temperatures() {
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      lines.add(
          line(
              row,
              moment(row, row.assessment().nominalMargin(Side.COLD)),
              moment(row, row.assessment().nominalMargin(Side.HOT))));
    }
    return new TextTable(
        "Nominal temperatures of " + animals(rows) + " until opening, local clock",
        head("lowest", "highest"),
        lines);
  }

  /** Columns that name a packing, then others. */
  private List<String> head(String... others) {
    List<String> head = new ArrayList<>(List.of("packing"));
    if (rows.stream().anyMatch(Judged::hasWarmer)) {
      head.add("warmer");
    }
    head.addAll(List.of(others));
    return head;
  }

  private List<String> line(Judged row, String... others) {
    List<String> line = new ArrayList<>(List.of(row.parcel().name()));
    if (rows.stream().anyMatch(Judged::hasWarmer)) {
      line.add(row.warmerWords());
    }
    line.addAll(List.of(others));
    return line;
  }

  private static String animals(List<Judged> rows) {
    return several(rows) ? "the animals" : "the animal";
  }

  private static boolean several(List<Judged> rows) {
    return rows.stream().anyMatch(row -> row.parcel().occupied().size() > 1);
  }

  private String moment(Judged row, Margin margin) {
    return words.temperature(margin.temperature()) + ", " + Words.moment(row.held(), margin.time());
  }

  /** Margins of each packing on both sides. */
  TextTable margins() {
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      lines.add(
          line(
              row,
              words.margin(row, Side.COLD),
              words.margin(row, Side.HOT),
              stress(row, Side.COLD),
              stress(row, Side.HOT),
              words.error(row),
              words.figures().volume(row.parcel().outerVolume()),
              words.figures().mass(row.parcel().mass())));
    }
    return new TextTable(
        "Margin to the alarm band until opening ["
            + words.figures().differenceUnit()
            + "]: middle case (19 of 20 journeys have more, 1 of 20 has more); stress: everything at"
            + " its worse end at once",
        head("cold", "hot", "stress, cold", "stress, hot", "error ±", "outer volume", "mass"),
        lines);
  }

  private String stress(Judged row, Side side) {
    return words.figures().degrees(row.assessment().stress(side).kelvin());
  }

  /** Each animal on its own, if a packing has several. */
  Optional<TextTable> animals() {
    if (!several(rows)) {
      return Optional.empty();
    }
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      for (Container cup : row.parcel().occupied()) {
        double end = row.assessment().plannedEnd();
        Margin cold = Margin.of(row.assessment().nominal(), cup.name(), Side.COLD, end);
        Margin hot = Margin.of(row.assessment().nominal(), cup.name(), Side.HOT, end);
        lines.add(
            List.of(
                row.label(),
                Judged.animal(cup).name() + ", " + cup.name(),
                moment(row, cold),
                moment(row, hot),
                words.figures().degrees(cold.kelvin()),
                words.figures().degrees(hot.kelvin())));
      }
    }
    return Optional.of(
        new TextTable(
            "Each animal on its own, nominal, margins in " + words.figures().differenceUnit(),
            List.of("packing", "animal", "lowest", "highest", "cold margin", "hot margin"),
            lines));
  }

  /** How far the packs that melt are spent, if there are any. */
  Optional<TextTable> packs() {
    List<List<String>> lines = new ArrayList<>();
    for (Judged row : rows) {
      for (PlacedPack pack : row.parcel().packs()) {
        if (pack.pack().melts()) {
          lines.add(packLine(row, pack.name()));
        }
      }
    }
    if (lines.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new TextTable(
            "Melted part of the packs, nominal",
            List.of("packing", "pack", "at sealing", "at opening", "half melted", "all melted"),
            lines));
  }

  private static List<String> packLine(Judged row, String pack) {
    double[] liquid = row.planned().liquidFraction(pack);
    return List.of(
        row.label(),
        pack,
        percent(liquid[0]),
        percent(liquid[liquid.length - 1]),
        reached(row, liquid, 0.5),
        reached(row, liquid, 0.999));
  }

  private static String percent(double fraction) {
    return Math.round(100 * fraction) + " %";
  }

  /** When a melted part is first reached, to a stored time. */
  private static String reached(Judged row, double[] liquid, double fraction) {
    if (liquid[0] >= fraction) {
      return "at sealing";
    }
    double[] times = row.planned().times();
    for (int i = 1; i < liquid.length; i++) {
      if (liquid[i] >= fraction) {
        return Words.moment(row.held(), times[i]);
      }
    }
    return "not before opening";
  }

  /** How much longer each leg may last, for the packings that keep the alarm band. */
  Optional<TextTable> legDelays() {
    List<Judged> inside = rows.stream().filter(row -> !row.legDelays().isEmpty()).toList();
    if (inside.isEmpty()) {
      return Optional.empty();
    }
    List<String> head = new ArrayList<>(List.of("leg", "from", "planned"));
    inside.forEach(row -> head.add(row.label()));
    Journey journey = inside.get(0).planned().journey();
    List<List<String>> lines = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      List<String> line = new ArrayList<>();
      line.add(journey.legs().get(leg).name());
      line.add(Words.dayAndClock(journey, journey.start(leg)));
      line.add(Words.hours(journey.legs().get(leg).lasting()) + " h");
      for (Judged row : inside) {
        line.add(Words.delay(row.legDelays().get(leg)));
      }
      lines.add(List.copyOf(line));
    }
    return Optional.of(
        new TextTable(
            "How much longer a single leg may last before an animal leaves the alarm"
                + " band in the nominal case",
            head,
            lines));
  }
}
