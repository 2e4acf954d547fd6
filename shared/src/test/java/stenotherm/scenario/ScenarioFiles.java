package stenotherm.scenario;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A scenario for tests and ways to change it. */
final class ScenarioFiles {
  static final String GOOD =
      """
      format: 1
      title: A gecko goes west
      animal: leopard gecko, 40 g
      cup: 110 x 80 x 60 mm
      hold: 12 h
      journey:
        sealed: 2013-12-12 18:00
        start: 21 °C
        from: New York, UTC-5
        to: Seattle, UTC-8
        legs:
          - {name: van, at: origin, for: 2 h, ambient: outdoors}
          - {name: aircraft hold, at: destination, for: 6 h 30 min, ambient: 12 °C}
          - name: doorstep
            at: destination
            for: 6 h
            ambient: outdoors
            spread: 1.5 K
            wind: 1 m/s
      packings:
        - name: carton
          box: 203 x 180 x 150 mm
          foam: EPS 20, 19 mm
          fill: shredded paper
          warmer: 40 hour warmer on lid
          opened: 45 min before sealing
        - name: plain
          box: 203 x 180 x 150 mm
          foam: none
          fill: crumpled newspaper
      """;

  private static final Path SHIPPED = Path.of("../examples/src/main/resources/stenotherm/examples");

  private ScenarioFiles() {}

  /** The scenario of this class and all that are shipped. */
  static List<String> allGood() {
    List<String> all = new ArrayList<>(List.of(GOOD));
    try (Stream<Path> files = Files.list(SHIPPED)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        all.add(Files.readString(file));
      }
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
    return all;
  }

  /** What stands in for a key. */
  static String presetOf(String part, String key) {
    return Vocabulary.parts().stream()
        .filter(each -> each.name().equals(part))
        .findFirst()
        .orElseThrow()
        .key(key)
        .preset()
        .text();
  }

  static String with(String old, String other) {
    if (!GOOD.contains(old)) {
      throw new IllegalArgumentException(old);
    }
    int at = GOOD.indexOf(old);
    return GOOD.substring(0, at) + other + GOOD.substring(at + old.length());
  }
}
