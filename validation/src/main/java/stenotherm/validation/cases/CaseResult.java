package stenotherm.validation.cases;

import java.util.List;
import java.util.Optional;
import stenotherm.picture.Picture;
import stenotherm.validation.studies.Findings.Exhibit;
import stenotherm.validation.studies.Study;

/**
 * How a case ended.
 *
 * @param heading what the case is
 * @param values its reference values with what was computed; empty if the case was refused
 * @param grids the grids that were solved, from coarse to fine
 * @param problem why the case did not converge or was refused; empty if neither
 * @param pictures histories of a transient case
 * @param exhibits tables and texts that belong to the case
 * @param seconds wall-clock time of the whole case [s]
 */
record CaseResult(
    Study.Heading heading,
    List<ValueResult> values,
    List<GridRun> grids,
    Optional<String> problem,
    List<Picture> pictures,
    List<Exhibit> exhibits,
    double seconds) {
  CaseResult {
    values = List.copyOf(values);
    grids = List.copyOf(grids);
    pictures = List.copyOf(pictures);
    exhibits = List.copyOf(exhibits);
  }

  /** A case that could not be computed at all. */
  static CaseResult refused(Study.Heading heading, String reason) {
    return new CaseResult(
        heading, List.of(), List.of(), Optional.of(reason), List.of(), List.of(), 0);
  }

  /** How a case ended, the worst first. */
  enum Status {
    NOT_CONVERGED("not converged"),
    FAILED("failed"),
    REFUSED("refused"),
    /** Model and practice, or a measurement, differ, which is a finding, not a failure. */
    DISAGREES("in disagreement with practice or measurement"),
    PASSED("passed");

    private final String words;

    Status(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  Status status() {
    if (values.isEmpty()) {
      return Status.REFUSED;
    }
    if (!values.stream().allMatch(ValueResult::isConverged)) {
      return Status.NOT_CONVERGED;
    }
    if (values.stream().allMatch(ValueResult::passed)) {
      return Status.PASSED;
    }
    return heading.kind().differenceIsFinding() ? Status.DISAGREES : Status.FAILED;
  }

  /** What went wrong, with the case's name; empty if the case converged. */
  Optional<String> trouble() {
    // what is wrong with a file names the file itself
    return problem.map(text -> text.startsWith(heading.id()) ? text : heading.id() + ": " + text);
  }

  /** Whether a value lies outside its tolerance and that is no finding. */
  boolean hasFailure() {
    return !heading.kind().differenceIsFinding() && !values.stream().allMatch(ValueResult::passed);
  }

  /** Cells of the finest grid; 0 if none was solved. */
  int cells() {
    return grids.isEmpty() ? 0 : grids.get(grids.size() - 1).cells();
  }

  /** Time steps on the finest grid. */
  long steps() {
    return grids.isEmpty() ? 0 : grids.get(grids.size() - 1).steps();
  }
}
