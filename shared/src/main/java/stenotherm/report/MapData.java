package stenotherm.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.decision.JourneyOdds;
import stenotherm.decision.Level;
import stenotherm.decision.Lows;
import stenotherm.decision.OddsMap;
import stenotherm.scenario.Scenario;
import stenotherm.words.CsvText;
import stenotherm.words.Figures;

/** The files of a map for other programs: all digits, SI units. */
final class MapData {
  private static final String NO_MAP =
      "is not what the command map writes; give the file " + MapReport.SUMMARY + " of its folder";

  /** Lows at each end of which odds are told. */
  static final int SIDE = 13;

  private MapData() {}

  /** Lows spread evenly over a range, both ends as given [K]. */
  static double[] spread(Range range, int many) {
    double[] all = new double[many];
    for (int n = 0; n < many; n++) {
      double share = n / (many - 1.0);
      all[n] = (1 - share) * range.low() + share * range.high();
    }
    return all;
  }

  static byte[] odds(MapReport report) {
    StringBuilder text =
        new StringBuilder(
            "packing,warmer,low_origin_K,low_destination_K,within,within_low,within_high,too_cold,"
                + "too_hot,short_of_air,burnt\n");
    double[] axis = spread(report.question().lows(), SIDE);
    for (Map.Entry<Packed, OddsMap> each : report.maps().entrySet()) {
      boolean warmer = !each.getKey().parcel().warmers().isEmpty();
      for (double origin : axis) {
        for (double destination : axis) {
          JourneyOdds odds = each.getValue().odds(new Lows(origin, destination));
          text.append(CsvText.field(each.getKey().parcel().name()));
          text.append(warmer ? ",yes" : ",no");
          for (double value :
              new double[] {
                origin,
                destination,
                odds.within().within(),
                odds.within().low(),
                odds.within().high(),
                odds.tooCold(),
                odds.tooHot(),
                odds.shortOfAir(),
                odds.burnt()
              }) {
            text.append(',').append(value);
          }
          text.append('\n');
        }
      }
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The answer of a map made earlier, see {@link MapReport#answerIn}. */
  static String answerIn(Path file, Scenario scenario, String packing) throws IOException {
    JsonNode root;
    try {
      root = new ObjectMapper().readTree(Files.readAllBytes(file));
    } catch (JsonProcessingException notJson) {
      throw new InvalidInputException(file.toString(), NO_MAP);
    }
    JsonNode headline = root.path("headline");
    JsonNode origin = root.path("daily_range_at_origin_K");
    JsonNode destination = root.path("daily_range_at_destination_K");
    if (!headline.isTextual() || !origin.isNumber() || !destination.isNumber()) {
      throw new InvalidInputException(file.toString(), NO_MAP);
    }
    requireSame(file, "title", root.path("title").asText(), scenario.title());
    requireSame(file, "packing", root.path("packing").asText(), packing);
    JsonNode own = root.path("with_own_low_at_origin");
    return "By the map, with nights as cold as the low and days "
        + new MapReport.DailyRanges(origin.asDouble(), destination.asDouble())
            .words(new Figures(scenario.units()))
        + ": "
        + headline.asText()
        + (own.isTextual() ? " " + own.asText() : "");
  }

  private static void requireSame(Path file, String what, String there, String here) {
    if (!there.equals(here)) {
      throw new InvalidInputException(
          file.toString(),
          "is a map of the " + what + " '" + there + "', not of '" + here + "': make it anew");
    }
  }

  static String summary(MapReport report) {
    MapWords words = new MapWords(new Figures(report.scenario().units()));
    Range lows = report.question().lows();
    ObjectNode root = JsonText.object();
    root.put("format", 2);
    root.put("title", report.scenario().title());
    root.put("headline", words.headline(report));
    root.put("units_of_sentences", report.scenario().units().label());
    root.put("packing", report.question().packing().name());
    root.put("daily_range_at_origin_K", report.question().dailyRanges().origin());
    root.put("daily_range_at_destination_K", report.question().dailyRanges().destination());
    words.withOwnLow(report).ifPresent(sentence -> root.put("with_own_low_at_origin", sentence));
    root.put("lowest_low_K", lows.low());
    root.put("highest_low_K", lows.high());
    ArrayNode maps = root.putArray("maps");
    for (Map.Entry<Packed, OddsMap> each : report.maps().entrySet()) {
      OddsMap map = each.getValue();
      MapWords.Best best = words.best(report, map);
      ObjectNode one = maps.addObject();
      one.put("warmer", !map.parcel().warmers().isEmpty());
      one.put("journeys", map.journeys());
      one.put("interpolation_error", map.error());
      add(
          one.putObject("best_equal_low"),
          best,
          words.best(MapWords.way(report, each.getKey()), best));
      ArrayNode levels = one.putArray("levels");
      for (Level level : MapWords.LEVELS) {
        ObjectNode node = levels.addObject();
        node.put("level", level.name());
        node.put("level_words", level.words());
        node.put("least", level.least());
        addStretches(
            node.putArray("equal_lows_K"),
            map,
            level,
            lows,
            Lows.equal(lows.low()),
            Lows.equal(lows.high()));
        ArrayNode lines = node.putArray("lows_at_origin_K");
        for (double destination : spread(lows, SIDE)) {
          ObjectNode line = lines.addObject();
          line.put("low_destination_K", destination);
          addStretches(
              line.putArray("from_to"),
              map,
              level,
              lows,
              new Lows(lows.low(), destination),
              new Lows(lows.high(), destination));
        }
      }
    }
    new MapPage(report).cautions().forEach(root.putArray("cautions")::add);
    StatedAssumptions.sentences(report.scenario()).forEach(root.putArray("assumptions")::add);
    return JsonText.of(root);
  }

  private static void add(ObjectNode node, MapWords.Best best, String sentence) {
    node.put("sentence", sentence);
    node.put("low_K", best.low());
    JsonText.addOdds(node.putObject("odds"), best.odds().within());
    node.put("too_cold", best.odds().tooCold());
    node.put("too_hot", best.odds().tooHot());
    node.put("short_of_air", best.odds().shortOfAir());
    node.put("burnt", best.odds().burnt());
  }

  private static void addStretches(
      ArrayNode node, OddsMap map, Level level, Range lows, Lows from, Lows to) {
    double length = lows.high() - lows.low();
    for (Range stretch : map.stretches(level, from, to)) {
      ArrayNode ends = node.addArray();
      ends.add(lows.low() + stretch.low() * length);
      ends.add(lows.low() + stretch.high() * length);
    }
  }
}
