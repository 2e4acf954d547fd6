package stenotherm.examples;

/** A small scenario: two packings, one of them with a warmer, on a short and simple journey. */
final class Small {
  static final String SCENARIO =
      """
      format: 1
      title: Small <test> & "more"
      animal: leopard gecko, 40 g
      cup: 110 x 80 x 60 mm
      hold: 3 h
      journey:
        sealed: 2026-01-15 18:00
        start: 21 °C
        from: Here, UTC-5
        to: There, UTC-6
        legs:
          - {name: van, at: origin, for: 2 h, ambient: 14 °C, spread: 3 K}
          - {name: doorstep, at: destination, for: 3 h, ambient: 12 °C, spread: 3 K}
      packings:
        - {name: 'warm, "foam"', box: 200 x 170 x 150 mm, foam: EPS 20 13 mm, \
      fill: shredded paper, warmer: 40 hour warmer on lid}
        - {name: bare foam, box: 200 x 170 x 150 mm, foam: EPS 20 13 mm, fill: shredded paper}
      """;

  private Small() {}
}
