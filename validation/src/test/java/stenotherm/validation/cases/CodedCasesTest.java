package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.validation.studies.Study;

/** The cases that come as code, on coarse grids; the command runs them in full. */
class CodedCasesTest {
  static List<CodedCase> cases() {
    return CodedCase.all(Study.Depth.FAST);
  }

  /** Where practice and measurements are known to disagree; the report says why. */
  private static final Set<String> FINDINGS =
      Set.of(
          "measured-water-box: insulation coefficient",
          "measured-fish-boxes: warmest fish, plastic box",
          "measured-fish-boxes: plastic box over foam box",
          "measured-thick-boxes: hold of five packs in the large box over one in the small",
          "measured-fills: heat through layers of board, over foam",
          "measured-dry-ice: conductance with all walls cold",
          "measured-journeys: met more than 29.4 °C, laboratory mice by air, 24 h and more; overnight"
              + " by air",
          "measured-journeys: swung by 11 K or more, laboratory mice by air, 24 h and more; overnight"
              + " by air",
          "trade-winter-warmer: coldest part without a warmer, lows of 7 °C");

  /** The standard ones but for the time: no machine is too slow. */
  private static final Limits LIMITS =
      new Limits(Limits.STANDARD.cells(), Limits.STANDARD.bytes(), 3600);

  @ParameterizedTest
  @MethodSource("cases")
  void valuesLieWithinTheirTolerance(CodedCase coded) {
    CaseResult result = coded.run(LIMITS, 0, line -> {});
    assertFalse(result.values().isEmpty());
    for (ValueResult value : result.values()) {
      // a coarse grid may not have converged; its error must then be what it says it may be
      double allowed =
          value.reference().expected().tolerance()
              + (value.isConverged() ? 0 : value.accuracy().estimate());
      String check = coded.name() + ": " + value.reference().probe();
      assertEquals(
          !FINDINGS.contains(check), Math.abs(value.error()) <= allowed, () -> check + value);
      assertEquals(Optional.empty(), value.concern());
      assertFalse(value.reference().source().isBlank(), coded.name());
      assertFalse(value.reference().why().isBlank(), coded.name());
    }
  }

  @Test
  void idsDifferFromEachOtherAndFromThoseOfFiles() throws IOException {
    Set<String> ids = new HashSet<>();
    for (CaseSource source : CaseSources.bundled()) {
      ids.add(CaseReader.read(source.reader().read()).id());
    }
    for (CodedCase coded : cases()) {
      assertTrue(ids.add(coded.name()), coded.name());
      assertNotEquals(Study.Kind.UNSTATED, coded.study().heading().kind(), coded.name());
    }
  }

  @Test
  void reportSaysWhatIsNotValidated() {
    Page page = new MarkdownPage();
    Prose.write("not-validated.md", 2, page);
    String text = page.text();
    assertTrue(text.startsWith("## What is not validated\n\nExact mathematics"), text);
    assertTrue(text.contains("| what | why it matters | against what"), text);
    assertTrue(text.contains("### What follows from it\n\n- A margin"), text);
    // every row of the table has its three cells
    assertEquals(
        0,
        text.lines()
            .filter(line -> line.startsWith("|") && line.split(" \\| ").length != 3)
            .count());
  }
}
