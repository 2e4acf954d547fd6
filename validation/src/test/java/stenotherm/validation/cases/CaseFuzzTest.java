package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stenotherm.validation.cases.CaseResult.Status;

/**
 * Some hundred damaged cases: each runs to its end or is refused, in short printable lines. The
 * seed is fixed, so a failure repeats.
 */
class CaseFuzzTest {
  private static final int MUTANTS = 300;
  private static final long SEED = 20_140_116;

  @Test
  void everyMutantIsRunOrRefusedInShortLines() {
    Map<Status, Integer> ends = new EnumMap<>(Status.class);
    for (String mutant : CaseFuzz.mutants(SEED, MUTANTS)) {
      CaseFuzz.Result result = CaseFuzz.run(mutant);
      assertEquals("", result.complaint(), mutant);
      ends.merge(result.status(), 1, Integer::sum);
    }
    // were all refused, or none, the damage would miss the point
    assertTrue(ends.getOrDefault(Status.REFUSED, 0) > MUTANTS / 5, ends::toString);
    assertTrue(ends.getOrDefault(Status.PASSED, 0) > MUTANTS / 50, ends::toString);
    assertTrue(ends.getOrDefault(Status.NOT_CONVERGED, 0) > 0, ends::toString);
  }

  /** The line that tells how a case ended is cut like all others. */
  @Test
  void aLongIdMakesNoLongLine() {
    String id = "x".repeat(2000);
    CaseFuzz.Result result = CaseFuzz.run(TinyCases.STEADY.replace("id: tiny", "id: " + id));
    assertEquals("", result.complaint());
    assertTrue(result.longest() > 200, "the id is shown, in part");
  }
}
