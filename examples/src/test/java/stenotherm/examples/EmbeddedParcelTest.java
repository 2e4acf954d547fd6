package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.decision.Verdict;

class EmbeddedParcelTest {
  @Test
  void printsWhatTheGuideShows() {
    assertEquals(
        List.of(
            "Coldest: 12.0 °C after 8.0 h, -2.8 K to the cold end of the alarm band.",
            Verdict.DEFER),
        Printed.by(EmbeddedParcel::main));
  }
}
