package stenotherm.validation.cases;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stenotherm.words.CsvText;

/** The results as a table for programs: a row for each reference value, all digits. */
final class ResultsCsv {
  private static final String HEADER =
      "case,probe,time_s,computed,reference,tolerance,unit,error,estimate,passed,cells,steps,wall_s";

  private ResultsCsv() {}

  static String of(List<CaseResult> results) {
    StringBuilder csv = new StringBuilder(HEADER).append('\n');
    for (CaseResult result : results) {
      for (ValueResult value : result.values()) {
        csv.append(row(result, value)).append('\n');
      }
    }
    return csv.toString();
  }

  private static String row(CaseResult result, ValueResult value) {
    Reference reference = value.reference();
    Reference.Expected expected = reference.expected();
    return Stream.of(
            CsvText.field(result.heading().id()),
            CsvText.field(reference.probe()),
            reference.time().isPresent() ? number(reference.time().getAsDouble()) : "",
            number(value.computed()),
            number(expected.value()),
            number(expected.tolerance()),
            CsvText.field(expected.unit().label()),
            number(value.error()),
            number(value.accuracy().estimate()),
            Boolean.toString(value.passed()),
            Integer.toString(result.cells()),
            Long.toString(result.steps()),
            String.format(Locale.ROOT, "%.3f", result.seconds()))
        .collect(Collectors.joining(","));
  }

  /** An unknown number is an empty field. */
  private static String number(double value) {
    return Double.isNaN(value) ? "" : Double.toString(value);
  }
}
