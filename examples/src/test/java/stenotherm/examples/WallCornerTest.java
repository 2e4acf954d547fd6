package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WallCornerTest {
  @Test
  void printsWhatTheGuideShows() {
    assertEquals(
        List.of(
            "inner surface of the plain wall    13.16 °C",
            "inner corner                        8.64 °C",
            "difference                         -4.53 K",
            "heat from the room, plain wall    105.29 W per metre of height",
            "heat from the room, with corner   109.68 W per metre of height",
            "added by the corner                 4.39 W per metre of height"),
        Printed.by(WallCorner::main));
  }
}
