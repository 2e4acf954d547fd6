package stenotherm.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import stenotherm.text.CsvTable;
import stenotherm.transit.TransitSettings;

/** Lanes with a small scenario. */
final class Samples {
  static final String SCENARIO =
      """
      format: 1
      title: A gecko in a plain box
      animal: leopard gecko, 40 g
      cup: 16 oz deli cup
      journey:
        sealed: 2014-01-15 18:00
        start: 21 °C
        from: New York, UTC-5
        to: Seattle, UTC-8
        legs:
          - {name: van, at: origin, for: 4 h, ambient: outdoors}
          - {name: doorstep, at: destination, for: 2 h, ambient: outdoors}
      packings:
        - {name: thin, box: 7 x 7 x 6 in carton, foam: EPS 20 3/4 in, fill: shredded paper}
        - {name: warm, box: 7 x 7 x 6 in carton, foam: EPS 20 3/4 in, fill: shredded paper, warmer: 40 hour warmer on lid}
      """;

  static final String HEAD = "lane,scenario,origin,destination\n";
  static final String EAST = "\"New York, UTC-5\"";
  static final String WEST = "\"Seattle, UTC-8\"";

  static final LocalDate FIRST = LocalDate.of(2014, 10, 28);
  static final LocalDate LAST = LocalDate.of(2014, 11, 4);

  /** More than one month, so that lanes have more than one piece; some go well, some do not. */
  static final Predicate<LocalDate> EIGHT_DAYS = day -> !day.isBefore(FIRST) && !day.isAfter(LAST);

  /** Coarse: what is compared is computed alike. */
  static final double MESH_SCALE = 4;

  static final TransitSettings COARSE =
      TransitSettings.standard().meshScaled(MESH_SCALE).withThreads(2);

  private Samples() {}

  /** A folder's scenario file. */
  static void putScenario(Path folder) throws IOException {
    Files.writeString(folder.resolve("box.yaml"), SCENARIO);
  }

  /** Lanes to and fro, so many in all, as text. */
  static String lanes(int count) {
    StringBuilder text = new StringBuilder(HEAD);
    for (int lane = 0; lane < count; lane++) {
      boolean there = lane % 2 == 0;
      text.append("00").append(lane).append(",box.yaml,").append(there ? EAST : WEST);
      text.append(',').append(there ? WEST : EAST).append('\n');
    }
    return text.toString();
  }

  static LaneTable read(Path folder, String lanes) {
    return LaneTable.read(CsvTable.parse("lanes.csv", lanes), folder, EIGHT_DAYS);
  }

  static List<String> lines(String text) {
    return text.lines().toList();
  }
}
