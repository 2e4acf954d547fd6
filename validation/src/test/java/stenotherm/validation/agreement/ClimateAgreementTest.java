package stenotherm.validation.agreement;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import stenotherm.base.Range;

/** Reduced models with chemistry and air on, against stepping every cell. */
class ClimateAgreementTest {
  /** Among them a frog of 2.5 g on a damp towel, both of which evaporate at the high end. */
  @Test
  void reducedModelsAgreeWithTheFullSolver() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream lines = new PrintStream(out, true, StandardCharsets.UTF_8);
    boolean passed = ClimateAgreement.print(lines, 2, 7000, new Range(1800, 3500));
    assertTrue(passed, () -> out.toString(StandardCharsets.UTF_8));
  }
}
