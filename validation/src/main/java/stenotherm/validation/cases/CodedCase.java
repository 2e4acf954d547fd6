package stenotherm.validation.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import stenotherm.validation.cases.ValueResult.Accuracy;
import stenotherm.validation.studies.Check;
import stenotherm.validation.studies.Findings;
import stenotherm.validation.studies.Studies;
import stenotherm.validation.studies.Study;

/**
 * A case that is computed by code. It chooses its grids itself, so neither the limits nor further
 * grids concern it.
 *
 * @param study what is computed
 * @param depth how thoroughly
 */
record CodedCase(Study study, Study.Depth depth) implements ValidationCase {
  /** The cases that come with the program. */
  static List<CodedCase> all(Study.Depth depth) {
    return Studies.all().stream().map(study -> new CodedCase(study, depth)).toList();
  }

  @Override
  public String name() {
    return study.heading().id();
  }

  @Override
  public CaseResult run(Limits limits, int refine, Consumer<String> progress) {
    long start = System.nanoTime();
    Findings findings = study.run(depth);
    List<ValueResult> values = findings.checks().stream().map(CodedCase::value).toList();
    List<GridRun> grids = new ArrayList<>();
    for (Findings.Cost run : findings.runs()) {
      grids.add(new GridRun(run.cells(), run.steps(), List.of(), run.seconds()));
    }
    return new CaseResult(
        study.heading(),
        values,
        grids,
        problem(values),
        List.of(),
        findings.exhibits(),
        GridRun.since(start));
  }

  private static ValueResult value(Check check) {
    Check.Expected expected = check.expected();
    Reference reference =
        new Reference(
            check.quantity(),
            OptionalDouble.empty(),
            new Reference.Expected(
                expected.value(), expected.tolerance(), new ReferenceUnit(expected.unit(), 1, 0)),
            expected.source(),
            expected.why());
    return new ValueResult(reference, check.computed().value(), accuracy(check.computed()));
  }

  private static Accuracy accuracy(Check.Computed computed) {
    return computed
        .estimate()
        .map(
            grids ->
                new Accuracy(
                    grids.valueError(), computed.steps(), grids.order(), computed.target()))
        // a closed form: no grid has a part in it
        .orElse(new Accuracy(0, computed.steps(), Double.NaN, computed.target()));
  }

  private static Optional<String> problem(List<ValueResult> values) {
    List<String> open =
        values.stream()
            .filter(value -> !value.isConverged())
            .map(
                value ->
                    value.reference().probe()
                        + ": estimate "
                        + Digits.of(value.accuracy().estimate())
                        + ", target "
                        + Digits.of(value.accuracy().target()))
            .toList();
    return open.isEmpty()
        ? Optional.empty()
        : Optional.of("not converged: " + String.join("; ", open));
  }
}
