package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.text.TextFormatException;

/** What no parcel is or meets is refused where it is written. */
class ImplausibleTest {
  static Stream<Arguments> faults() {
    return Stream.of(
        arguments(
            "box: 203 x 180 x 150 mm",
            "box: 203 x 180 x 150 in",
            "s.yaml:22:10: packings[0].box (carton): outer box 5156.2 x 4572.0 x 3810.0 mm (203.00 x 180.00 x 150.00 in) is longer than 2000.0 mm (78.74 in) along X"),
        arguments(
            "box: 203 x 180 x 150 mm",
            "box: 20 x 18 x 15 mm",
            "s.yaml:22:10: packings[0].box (carton): walls leave no room inside along the length, where they take 46.0 mm (1.81 in) of 20.0 mm (0.79 in). What lies in it would fit into 128 x 82 x 72 mm (5.1 x 3.3 x 2.9 in) inside, such as a carton of 7 x 7 x 6 in or 20 x 15 x 15 cm"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: EPS 20, 19 cm",
            "s.yaml:22:10: packings[0].box (carton): walls leave no room inside along the length, where they take 388.0 mm (15.28 in) of 203.0 mm (7.99 in). What lies in it would fit into 128 x 82 x 72 mm (5.1 x 3.3 x 2.9 in) inside"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: gel pack 19 mm",
            "s.yaml:23:11: packings[0].foam (carton): layer of gel pack: 'gel pack' melts, which only a pack may"),
        arguments(
            "foam: EPS 20, 19 mm",
            "foam: EPS 20, 19 mm\n    joints: 1e-9 mm",
            "s.yaml:24:13: packings[0].joints (carton): gap between panels: 1.00000e-12 m is narrower than any joint; write 0 for none, or at least 1.00000e-05 m"),
        arguments(
            "fill: shredded paper",
            "fill: ice pack",
            "s.yaml:24:11: packings[0].fill (carton): 'ice pack' melts, which only a pack may"),
        arguments(
            "cup: 110 x 80 x 60 mm",
            "cup: {size: 110 x 80 x 60 mm, bedding: gel pack 4 mm}",
            "s.yaml:4:40: cup.bedding: layer of gel pack: 'gel pack' melts, which only a pack may"),
        arguments(
            "start: 21 °C",
            "start: 21 K",
            "s.yaml:8:10: journey.start: 21 K is too cold for a parcel with an animal, which is at least 268.15 K. Did you mean °C?"),
        arguments(
            "start: 21 °C",
            "start: 80 °C",
            "s.yaml:8:10: journey.start: 80 °C is too hot for a parcel with an animal, which is at most 50 °C. Did you mean °F?"),
        arguments(
            "ambient: 12 °C",
            "ambient: 12 K",
            "s.yaml:13:72: journey.legs[1].ambient (aircraft hold): 12 K is too cold for the air of a leg, which is at least 200.15 K. Did you mean °C or °F?"),
        arguments(
            "spread: 1.5 K",
            "spread: 300 K",
            "s.yaml:18:15: journey.legs[2].spread (doorstep): ambient spread: 300 K must lie between 0 K and 30 K. It is a difference: 9 F° of difference are 5 K."));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void isRefusedWithItsPlace(String old, String other, String message) {
    String text = ScenarioFiles.with(old, other);
    assertEquals(
        message,
        assertThrows(TextFormatException.class, () -> ScenarioReader.read("s.yaml", text))
            .getMessage());
  }
}
