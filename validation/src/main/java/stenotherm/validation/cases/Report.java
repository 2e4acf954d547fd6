package stenotherm.validation.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import stenotherm.picture.Picture;
import stenotherm.validation.cases.CaseResult.Status;
import stenotherm.validation.studies.Findings.Exhibit;
import stenotherm.validation.studies.Study;

/** What people read of a run: counts, then what went wrong, then every value, then every case. */
final class Report {
  static final String TITLE = "Validation report";

  private static final List<String> VALUE_COLUMNS =
      List.of(
          "result",
          "case",
          "kind",
          "source",
          "probe",
          "time [s]",
          "computed",
          "reference",
          "unit",
          "error",
          "tolerance",
          "why that tolerance",
          "estimate: grid",
          "steps",
          "order");

  /**
   * A section beside those of the cases.
   *
   * @param title its heading
   * @param exhibits what it shows
   */
  record Section(String title, List<Exhibit> exhibits) {}

  private final List<CaseResult> results;
  private final List<Section> more;
  private final Page page;

  private Report(List<CaseResult> results, List<Section> more, Page page) {
    this.results = results;
    this.more = more;
    this.page = page;
  }

  /** Writes a report of cases, and of what else was run, on a page. */
  static void write(List<CaseResult> results, List<Section> more, Page page) {
    List<CaseResult> worstFirst =
        results.stream().sorted(Comparator.comparing(CaseResult::status)).toList();
    new Report(worstFirst, more, page).write();
  }

  private void write() {
    page.heading(1, TITLE);
    counts();
    troubles();
    page.heading(2, "Every value");
    values((result, value) -> true);
    cases();
    for (Section section : more) {
      page.heading(2, section.title());
      section.exhibits().forEach(exhibit -> exhibit.showOn(page));
    }
    Prose.write("not-validated.md", 2, page);
    legend();
  }

  /** Counts in one line, as the console shows them, too. */
  static String counts(List<CaseResult> results) {
    StringBuilder text = new StringBuilder();
    text.append(results.size()).append(results.size() == 1 ? " case" : " cases");
    for (Status status : Status.values()) {
      long count = results.stream().filter(result -> result.status() == status).count();
      if (count > 0) {
        text.append(", ").append(count).append(' ').append(status.words());
      }
    }
    List<ValueResult> values =
        results.stream().flatMap(result -> result.values().stream()).toList();
    long passed = values.stream().filter(ValueResult::passed).count();
    text.append("; ").append(values.size()).append(values.size() == 1 ? " value, " : " values, ");
    text.append(passed).append(" passed");
    long disagree =
        results.stream()
            .filter(result -> result.heading().kind().differenceIsFinding())
            .flatMap(result -> result.values().stream())
            .filter(value -> !value.passed())
            .count();
    if (passed + disagree < values.size()) {
      text.append(", ").append(values.size() - passed - disagree).append(" failed");
    }
    if (disagree > 0) {
      text.append(", ").append(disagree).append(' ').append(Status.DISAGREES.words());
    }
    return text.append('.').toString();
  }

  private void counts() {
    page.paragraph(counts(results));
    List<List<String>> rows = new ArrayList<>();
    for (Study.Kind kind : Study.Kind.values()) {
      List<CaseResult> of =
          results.stream().filter(result -> result.heading().kind() == kind).toList();
      if (of.isEmpty()) {
        continue;
      }
      List<ValueResult> values = of.stream().flatMap(result -> result.values().stream()).toList();
      rows.add(
          List.of(
              kind.word() + " (" + kind.meaning() + ")",
              Integer.toString(of.size()),
              count(of, result -> result.status() == Status.PASSED),
              Long.toString(of.stream().mapToLong(Report::sources).sum()),
              Integer.toString(values.size()),
              count(values, ValueResult::passed)));
    }
    page.table(
        List.of("kind", "cases", "passed", "checks (case and source)", "values", "passed"), rows);
  }

  private static <T> String count(List<T> items, Predicate<T> which) {
    return Long.toString(items.stream().filter(which).count());
  }

  /** A check is one case against one source. */
  private static long sources(CaseResult result) {
    return result.values().stream().map(value -> value.reference().source()).distinct().count();
  }

  private void troubles() {
    List<String> problems = results.stream().flatMap(result -> result.trouble().stream()).toList();
    if (!problems.isEmpty()) {
      page.heading(2, "Not converged or refused");
      page.list(problems);
    }
    if (results.stream().anyMatch(CaseResult::hasFailure)) {
      page.heading(2, "Failed");
      values((result, value) -> result.hasFailure() && !value.passed());
    }
    if (results.stream().anyMatch(result -> result.status() == Status.DISAGREES)) {
      page.heading(2, "Findings: where the model disagrees with measurements or common practice");
      values((result, value) -> result.status() == Status.DISAGREES && !value.passed());
      page.paragraph(
          "Either may be wrong. The case of that name, below, says what is known about why.");
    }
  }

  /** Values in a table, those that failed first. */
  private void values(BiPredicate<CaseResult, ValueResult> which) {
    List<List<String>> rows = new ArrayList<>();
    for (boolean passed : new boolean[] {false, true}) {
      for (CaseResult result : results) {
        for (ValueResult value : result.values()) {
          if (value.passed() == passed && which.test(result, value)) {
            rows.add(row(result, value));
          }
        }
      }
    }
    page.table(VALUE_COLUMNS, rows);
  }

  private static List<String> row(CaseResult result, ValueResult value) {
    Reference reference = value.reference();
    Reference.Expected expected = reference.expected();
    String outcome =
        value.passed() ? "passed" : result.hasFailure() ? "FAILED" : "FINDING: disagrees";
    ValueResult.Accuracy accuracy = value.accuracy();
    return List.of(
        value.isConverged() ? outcome : outcome + ", not converged",
        result.heading().id(),
        result.heading().kind().word(),
        reference.source(),
        reference.probe(),
        reference.time().isPresent() ? Digits.value(reference.time().getAsDouble()) : "",
        Digits.value(value.computed()),
        Digits.value(expected.value()),
        expected.unit().label(),
        Digits.of(value.error()),
        Digits.of(expected.tolerance()),
        reference.why().isEmpty() ? value.concern().orElse("") : reference.why(),
        (accuracy.isBound() ? "below " : "") + Digits.of(accuracy.grid()),
        accuracy.steps() == 0 ? "" : Digits.of(accuracy.steps()),
        Double.isNaN(accuracy.order()) ? "" : String.format(Locale.ROOT, "%.2f", accuracy.order()));
  }

  private void cases() {
    page.heading(2, "Every case");
    for (CaseResult result : results) {
      Study.Heading heading = result.heading();
      page.heading(
          3,
          heading.id().equals(heading.title())
              ? heading.id()
              : heading.id() + ": " + heading.title());
      page.paragraph(
          result.status().words()
              + (heading.source().isEmpty() ? "" : ". Source: " + heading.source()));
      result.problem().ifPresent(page::paragraph);
      if (!result.grids().isEmpty()) {
        List<List<String>> rows = new ArrayList<>();
        for (GridRun grid : result.grids()) {
          rows.add(
              List.of(
                  String.format(Locale.ROOT, "%,d", grid.cells()),
                  grid.steps() == 0 ? "" : String.format(Locale.ROOT, "%,d", grid.steps()),
                  String.format(Locale.ROOT, "%.2f", grid.seconds())));
        }
        page.table(List.of("cells", "time steps", "seconds"), rows);
      }
      result.exhibits().forEach(exhibit -> exhibit.showOn(page));
      int number = 0;
      for (Picture picture : result.pictures()) {
        page.picture(pictureName(result, number++), picture);
      }
    }
  }

  /** Name of the file of a picture, without its ending. */
  static String pictureName(CaseResult result, int number) {
    return result.heading().id() + "-" + (number + 1);
  }

  private void legend() {
    page.heading(2, "How to read this");
    page.list(
        List.of(
            "Error: computed minus reference. A value passes if the size of its error is at most"
                + " the tolerance.",
            "Estimate: how far the computed value may be from what an infinitely fine grid and"
                + " infinitely short time steps would give. Where the three finest grids show an"
                + " order of 0.5 to 2, the value is extrapolated (Richardson), and the grid's part"
                + " is at least half of the correction and what that exceeds second order; where"
                + " they do not, the finest value stands and the part is a bound (\"below\"): their"
                + " largest change times 1.25. That of the time steps comes from two step"
                + " tolerances on the coarsest grid.",
            "A value has converged if the estimate is at most 0.02 K for means and interior points,"
                + " 0.1 K for extremes and for points on edges and vertices, 0.1 % for heat flows."
                + " One that has not converged passes only if its error plus the estimate is"
                + " within the"
                + " tolerance.",
            "Cases that are code, not files, choose their own grids and targets: 0.3"
                + " % where edges of a box are singular and for melting fronts and melt rates, 1 K"
                + " to 1.5 K for the animal in a whole parcel.",
            "Verification compares with exact mathematics, benchmark with published solutions,"
                + " measured with what was measured on real things, practice with what people do"
                + " and say without a source or a number: in these two a value outside its range is"
                + " a finding, not a failure; regression"
                + " with earlier output of the same program. A check is one case against one"
                + " source."));
  }
}
