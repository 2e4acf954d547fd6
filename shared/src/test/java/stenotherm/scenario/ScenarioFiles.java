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

  /** As short as a scenario can be. */
  static final String SHORT =
      """
      format: 1
      title: Overnight in March
      units: us
      animal: mourning gecko, 3 g
      cup: 8 fl oz cup
      journey: overnight by air, 28 to 45 °F
      packings:
        - {name: foam box, box: 8 x 8 x 7 in carton, foam: EPS 20 0.75 in, fill: shredded paper}
      """;

  /** Every key of a packing. */
  static final String PARCEL =
      """
      format: 1
      title: Two geckos and a snake in summer
      journey: {template: two days by road, lows/highs: 68 to 95 °F, delay: 12 h in depot on the way, without: porch}
      containers:
        - {name: left, size: 110 x 80 x 60 mm, wall: PET 0.5 mm, towel: 3 mm, animal: 'leopard gecko, 40 g'}
        - {name: right, size: 4 fl oz, animal: 'mourning gecko, 3 g', bedding: none}
      packings:
        - name: panels
          box: {inner: 260 x 200 x 200 mm}
          foam: XPS 20 mm
          sides: [XPS 10 mm, 'vacuum panel in metallised film, 260 x 200 x 10 mm']
          lid: PIR 25 mm
          floor: EPS 25, 30 mm
          left: XPS 25 mm
          right: XPS 25 mm
          front: XPS 30 mm
          back: vacuum panel 20 mm
          joints: {gap: 1 mm, overlap: sides over lid and floor}
          fill: crumpled newspaper
          gap: 20 mm
          warmers:
            - {name: upper, warmer: 40 hour warmer on lid, offset: [10 mm, -5 mm], stand-off: 5 mm, opened: at sealing}
            - {warmer: 20 hour warmer, position: [0 mm, 70 mm, 90 mm], thin: width}
            - 10 hour warmer on front
            - {warmer: 10 hour warmer on back, contact: 0.03 m2 K/W, offset: [80 mm, 40 mm]}
          packs:
            - {name: cold, pack: gel pack on floor, size: 60 x 40 x 10 mm, mass: 24 g, wrap: 0.01 m2 K/W, start: -18 °C, contact: 0.01 m2 K/W, offset: [100 mm, 80 mm]}
            - {pack: n-octadecane on left, size: 100 x 50 x 20 mm, stand-off: 2 mm, start: 25 % liquid}
            - {pack: ice pack, position: [-90 mm, -60 mm, 100 mm], thin: length, size: 50 x 40 x 10 mm, start: -5 °C}
        - name: stacked
          box: {outer: 12 x 12 x 12 in}
          board: double-wall corrugated board 7 mm
          foam: EPS 20 19 mm
          joints: 0.5 mm
          fill: none
          containers:
            - {name: bag, size: 120 x 90 x 50 mm, kind: bag, position: [-50 mm, -10 mm], animal: 'corn snake, 20 g', bedding: [dry coir 5 mm, damp sphagnum 10 mm]}
            - {name: vial, size: 40 x 100 mm, kind: vial, along: length, on-top-of: bag, animal: none}
            - {size: 95 x 60 mm, position: [70 mm, 70 mm, 0 mm], animal: 'mourning gecko, 3 g', bedding: {material: dry paper towel, thickness: 4 mm, water: 250 %}}
          warmer: 72 hour warmer on vial
          opened: 1 h before sealing
        - name: plain
          box: 203 x 180 x 150 mm
          foam: EPS 20, 19 mm
          fill: shredded paper
          cup: {size: 110 x 80 x 60 mm, animal: 'leopard gecko, 40 g', bedding: damp coir 5 mm, position: [0 mm, 0 mm]}
          warmer: 40 hour warmer on lid
          stand-off: 2 mm
        - name: carton
          box: 10 x 8 x 6 in carton
          foam: EPS 20, 19 mm
          fill: shredded paper
          cup: {size: small lidded box, animal: 'leopard gecko, 40 g', holes: 12 x 3 mm, count: 1}
          warmer: 40 hour warmer on lid
          contact: 0.02 m2 K/W
          measured:
            fill conductivity: 0.051 (0.047 to 0.056) W/(m K)
            foam conductivity: 0.036 (0.034 to 0.038) W/(m K)
            seam gap: 0.4 (0.2 to 0.6) mm
            warmer strength: 0.92 (0.87 to 0.97)
      """;

  /** Every key of a journey. */
  static final String JOURNEY =
      """
      format: 1
      title: Three places and a mountain
      units: metric
      animal: corn snake, 20 g
      cup: 100 x 60 mm
      hold: 6 h
      journey:
        sealed: 2014-07-10 15:00
        start: 70 °F
        surface: white
        delay: [1 h in road, 2 h in porch]
        lows/highs: [60 to 80 °F, 16 to 27 °C]
        from: {name: Seattle, utc: UTC-7, latitude: 47.6 °, longitude: -122.3 °, clouds: 30 %, sky: hazy summer}
        to: {name: a valley, utc: UTC-4, spread: 4 K, lows/highs: 15 to 31 °C}
        places:
          - {name: the pass, utc: '-06:00', lows/highs: 2 to 12 °C}
        legs:
          - {name: yard, at: origin, for: 45 min, ambient: outdoors, sun: yes, heading: 180 °, wind: 2 m/s}
          - {name: ramp, at: origin, until: 18:30, ambient: airport ramp}
          - {name: road, at: the pass, for: 6 h, ambient: 'outdoors + 3 K, lag 2 h', orientation: left up, altitude: 8000 ft, stowed: among others}
          - {name: hub, at: the pass, until: 2014-07-11 06:00, ambient: sorting hub, spread: 4 K, delay: 30 min}
          - name: van
            at: destination
            for: 3 h
            ambient: [05:00 18 °C, 11:00 27 °C, 2014-07-11 14:00 30 °C]
            touches:
              - {face: left, neighbour: 30 °C, along: 0 % to 50 %, across: 20 % to 100 %, resistance: 0.1 m2 K/W}
              - {face: back, neighbour: packed alike}
          - {name: porch, at: destination, for: 4 h, ambient: 64 to 86 °F, resting: wire shelf, sun: no}
          - {name: hall, at: destination, for: 1 h, ambient: 22 °C, resting: 0.2 m2 K/W, sky: no}
      packings:
        - {name: box, box: 203 x 180 x 150 mm, foam: EPS 20 19 mm, fill: shredded paper}
      """;

  /** Animals that the catalogue lacks, and the words that people use. */
  static final String OWN_ANIMALS =
      """
      format: 1
      title: Animals of my own
      units: imperial
      animal: {name: my gecko, mass: 2 x 4 g, comfortable: 20-26 °C, alarm: 16 to 28 °C, critical: 10 to 35 °C, shape: 4 x 2 x 1}
      journey:
        legs:
          - {name: room, at: origin, for: 3 h, ambient: 18-22 °C}
          - {name: van, at: destination, for: 2 h, ambient: 15 °C}
      packings:
        - name: words
          box: 203 x 180 x 150 mm
          foam: foam 3/4 in
          fill: packing peanuts
          cup: {size: 16 oz deli cup, bedding: moss 10 mm}
          warmer: 72 hour on top
        - name: bag
          box: 12 x 9 x 6 in
          foam: 3/4 in foam
          fill: moss
          cup: {size: small cloth bag, animal: {name: my beetle, mass: 3 g, comfortable: 64-79 °F, alarm: 55 to 90 °F}}
          warmer: 40 h on bag
      """;

  /** Warmers that the catalogue lacks, and where the air comes in. */
  static final String OWN_WARMERS =
      """
      format: 1
      title: Warmers of my own
      animal: leopard gecko, 40 g
      cup: 110 x 80 x 60 mm
      journey: overnight by air, 28 to 45 °F
      packings:
        - name: two
          box: 12 x 9 x 8 in
          foam: XPS 3/4 in
          fill: shredded paper
          seams: taped
          holes: [1 x 1/4 in on the top, 2 x 5 mm on left]
          warmers:
            - name: printed
              warmer: {on: lid, rating: {peak: 131 °F, hours: 40 h, mean: 48 °C, rise: 45 min}, contents: 100 g, size: 128 x 82 x 12 mm}
              film: half taped over
              opened: 30 min before
            - {warmer: {watts: 2 W, lasting: 30 h, contents: 3 oz, size: 100 x 80 x 10 mm}, position: [0 mm, 45 mm, 80 mm]}
        - name: one
          box: 12 x 9 x 8 in
          foam: foam 3/4 in
          fill: shredded paper
          holes: 2 x 6 mm on lid
          seams: loose
          warmer: {on: lid, watts: 1.5 W, lasting: 1 d, contents: 100 g, size: 128 x 82 x 12 mm}
        - {name: bare, box: 12 x 9 x 8 in, foam: foam 3/4 in, fill: none, warmer: 40 h on lid, film: edges taped, holes: none}
      """;

  /** What may go wrong beside the usual. */
  static final String MISHAPS =
      """
      format: 1
      title: Fears of my own
      animal: leopard gecko, 40 g
      cup: 110 x 80 x 60 mm
      hold: 36 h
      journey:
        sealed: 2026-01-15 08:00
        lows/highs: 28 to 45 °F
        legs:
          - {name: van, at: origin, for: 6 h, ambient: outdoors}
          - {name: hold, at: origin, for: 6 h, ambient: 12 °C}
      packings:
        - {name: box, box: 12 x 9 x 8 in, foam: EPS 20 19 mm, fill: shredded paper, warmer: 40 h on lid}
      mishaps:
        - {name: a night of frost, weather: 8 K colder}
        - {name: a cold hold, weather: 18 F° colder in hold, vehicles: unheated}
        - {name: lost, delay: [10 h in van, 1 d in hold], warmer: dead}
        - {name: left in the sun, sun: 3 h in van, fill: none, openings: blocked, pack: half frozen}
        - {name: on its head, orientation: lid down, warmer: loose against the cup}
      forecast:
        - {date: 2026-01-15, origin: 28 to 45 °F, destination: 30 to 48 °F}
        - {date: 2026-01-16, origin: -2 to 6 °C, destination: 1 to 8 °C}
      """;

  /** Where the tables lie that a scenario names. */
  static final Path SHIPPED = Path.of("../examples/src/main/resources/stenotherm/examples");

  /** By the centimetre, with the words that keepers have for nothing. */
  static final String METRIC =
      """
      format: 1
      title: By road
      animal: pantherophis GUTTATUS, 20 g
      cup: 500 ml
      journey: two days by road, 12 to 20 °C
      packings:
        - name: small
          box: 20 x 20 x 15 cm carton
          foam: EPS 20 20 mm
          fill: shredded paper
          warmer: no
          packs: none
        - name: large
          box: 25 x 25 x 20 cm carton
          foam: XPS 30 mm
          fill: shredded paper
          warmers: none
      """;

  private ScenarioFiles() {}

  /** The scenarios of this class and all that are shipped. */
  static List<String> allGood() {
    List<String> all =
        new ArrayList<>(List.of(GOOD, SHORT, PARCEL, JOURNEY, OWN_ANIMALS, OWN_WARMERS, MISHAPS));
    try (Stream<Path> files = Files.list(SHIPPED)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        all.add(Files.readString(file));
      }
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
    return all;
  }

  /** Those scenarios several times, sun and a rating once: light and iron take time to compute. */
  static List<String> allForDamage() {
    String shaded =
        with(with(JOURNEY, "sun: yes, heading: 180 °, ", ""), "airport ramp", "sorting hub");
    String unrated =
        with(
            OWN_WARMERS,
            "rating: {peak: 131 °F, hours: 40 h, mean: 48 °C, rise: 45 min}",
            "watts: 3 W, lasting: 40 h");
    String watts = with(unrated, "        film: half taped over\n", "");
    String curve = "curve: warmer-curve.csv, bench: wrapped in cloth, room: 21 °C, contents";
    List<String> all = new ArrayList<>(List.of(JOURNEY, OWN_WARMERS));
    for (int times = 0; times < 4; times++) {
      allGood().stream()
          .map(text -> text.equals(JOURNEY) ? shaded : text)
          .map(text -> text.equals(OWN_WARMERS) ? watts : text)
          .map(text -> text.replace(curve, "watts: 3 W, lasting: 40 h, contents"))
          .forEach(all::add);
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
    return with(GOOD, old, other);
  }

  /** A text with one place of it, the first that is found, replaced. */
  static String with(String text, String old, String other) {
    if (!text.contains(old)) {
      throw new IllegalArgumentException(old);
    }
    int at = text.indexOf(old);
    return text.substring(0, at) + other + text.substring(at + old.length());
  }
}
