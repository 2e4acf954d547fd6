package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Lengths;
import stenotherm.base.TemperatureDifferences;
import stenotherm.base.Temperatures;
import stenotherm.decision.LoggerFit;
import stenotherm.decision.LoggerFit.Estimate;
import stenotherm.decision.LoggerQuantity;
import stenotherm.decision.LoggerTrace;
import stenotherm.decision.TestBox;
import stenotherm.decision.Verdict;
import stenotherm.picture.HistoryChart;
import stenotherm.transit.Factor;
import stenotherm.words.CsvText;
import stenotherm.words.Figures;
import stenotherm.words.Units;

/**
 * What a logger's trace tells of a packing: values, their intervals, what is left, and a block for
 * the scenario file.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param title title of the scenario
 * @param units units of the results
 * @param packing name of the packing
 * @param trace the trace
 * @param fit what it tells
 */
public record LoggerReport(
    String title, Units units, String packing, LoggerTrace trace, LoggerFit fit) implements Answer {
  /** The page; it works offline and without scripts. */
  public static final String PAGE = "logger.html";

  /** All numbers in SI units, as JSON. */
  public static final String SUMMARY = "logger.json";

  /** What was measured and computed, in SI units, as CSV. */
  public static final String HISTORY = "logger.csv";

  /** Names of all files, the page first. */
  public static final List<String> FILES = List.of(PAGE, SUMMARY, HISTORY);

  private static final List<String> CAUTIONS =
      List.of(
          Verdict.DEFER,
          "The values hold for a box packed as the tested one was: fill that is pressed or shaken"
              + " together, other tape and another warmer have others.",
          "All else is held at what the scenario says, the walls unless they were asked for: what is"
              + " wrong there goes into the fitted values.",
          "How the box stood is assumed: "
              + TestBox.SURROUNDINGS.work()
              + ". Sensors are taken to show their surroundings at once.");

  private static final int PICTURE_HEIGHT = 420;

  /** About so many readings of each sensor are drawn: more would hide the line. */
  private static final int CIRCLES = 20;

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(PAGE, page(pictures));
    files.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    files.put(HISTORY, history().getBytes(StandardCharsets.UTF_8));
    return files;
  }

  /**
   * Returns the answer.
   *
   * @return one or two sentences
   */
  public String sentence() {
    if (!fit.isOfThisBox()) {
      return "Take nothing from this trace: it does not match '"
          + packing
          + "' as the file has it. Whatever is fitted, about "
          + figures().difference(fit.noise())
          + " are left between measured and computed. Look whether box, foam, fill and warmer are"
          + " those of the file, when the warmer was opened and the box closed, and where the"
          + " sensors lay.";
    }
    List<String> told = new ArrayList<>();
    List<String> untold = new ArrayList<>();
    for (Estimate each : fit.estimates()) {
      LoggerQuantity of = each.quantity();
      if (isTold(each)) {
        told.add(besideUsual(each));
      } else {
        untold.add("the " + of.name());
      }
    }
    String sentence =
        told.isEmpty()
            ? "The trace tells nothing that was not known before."
            : "Measured in '" + packing + "': " + Figures.listed(told) + ".";
    return untold.isEmpty() || told.isEmpty()
        ? sentence
        : sentence + " It does not tell " + Figures.listed(untold) + ".";
  }

  /** What a value means beside the usual one; the table has the numbers. */
  private static String besideUsual(Estimate each) {
    LoggerQuantity of = each.quantity();
    long percent = Math.round(100 * (each.value() / of.nominal() - 1));
    String by = Math.abs(percent) + " % ";
    String heat =
        percent == 0
            ? "as much heat as usual"
            : by + (percent > 0 ? "more" : "less") + " heat than usual";
    return switch (of.factor()) {
      case SEAMS ->
          "the seams are "
              + (percent == 0
                  ? "as wide as usual"
                  : by + (percent > 0 ? "wider" : "narrower") + " than usual");
      case WARMER_STRENGTH -> "the warmer gives " + heat;
      case FILL_CONDUCTIVITY -> "the fill conducts " + heat;
      default -> of.name().replaceFirst("conductivity of ", "") + " conducts " + heat;
    };
  }

  private static String interval(Estimate each) {
    return number(each.quantity(), each.interval().low())
        + " to "
        + shown(each.quantity(), each.interval().high());
  }

  /** A value with its unit, a gap in millimetres. */
  private static String shown(LoggerQuantity of, double value) {
    return (number(of, value) + " " + unit(of)).strip();
  }

  private static String unit(LoggerQuantity of) {
    return of.factor() == Factor.SEAMS ? "mm" : of.unit();
  }

  private static String number(LoggerQuantity of, double value) {
    return switch (of.factor()) {
      case SEAMS ->
          String.format(Locale.ROOT, "%.2f", Math.max(0.01, Lengths.toMillimetres(value)));
      case WARMER_STRENGTH -> String.format(Locale.ROOT, "%.2f", value);
      default -> String.format(Locale.ROOT, "%.4f", value);
    };
  }

  /** What is pasted into the packing of the scenario file. */
  private String block() {
    StringBuilder block = new StringBuilder("    measured:\n");
    for (Estimate each : fit.estimates()) {
      if (isTold(each)) {
        LoggerQuantity of = each.quantity();
        String key =
            switch (of.factor()) {
              case FILL_CONDUCTIVITY -> "fill conductivity";
              case SEAMS -> "seam gap";
              case WARMER_STRENGTH -> "warmer strength";
              default -> "foam conductivity";
            };
        String text =
            number(of, each.value())
                + " ("
                + number(of, each.interval().low())
                + " to "
                + number(of, each.interval().high())
                + ") "
                + unit(of);
        block.append("      ").append(key).append(": ").append(text.strip()).append('\n');
      }
    }
    return block.toString();
  }

  private boolean tellsSomething() {
    return fit.estimates().stream().anyMatch(this::isTold);
  }

  /** A trace of another box tells nothing of this one, however narrow its intervals are. */
  private boolean isTold(Estimate each) {
    return fit.isOfThisBox() && each.isTold();
  }

  private TextTable values() {
    List<List<String>> lines = new ArrayList<>();
    for (Estimate each : fit.estimates()) {
      LoggerQuantity of = each.quantity();
      lines.add(
          List.of(
              of.name(),
              shown(of, each.value()),
              interval(each),
              number(of, of.stated().low()) + " to " + shown(of, of.stated().high()),
              isTold(each) ? "yes" : "no"));
    }
    return new TextTable(
        "What was fitted; intervals and stated ranges hold 90 %",
        List.of("quantity", "value", "interval", "stated range", "told"), lines);
  }

  private TextTable correlations() {
    List<Estimate> all = fit.estimates();
    List<String> head = new ArrayList<>(List.of("quantity"));
    List<List<String>> lines = new ArrayList<>();
    for (int row = 0; row < all.size(); row++) {
      head.add(all.get(row).quantity().name());
      List<String> line = new ArrayList<>(List.of(all.get(row).quantity().name()));
      for (int column = 0; column < all.size(); column++) {
        line.add(String.format(Locale.ROOT, "%.2f", fit.correlation(row, column)));
      }
      lines.add(line);
    }
    return new TextTable(
        "How closely what was fitted goes together: beyond "
            + LoggerFit.INSEPARABLE
            + " or -"
            + LoggerFit.INSEPARABLE
            + " two are not told apart",
        head,
        lines);
  }

  private TextTable sensors() {
    List<List<String>> lines = new ArrayList<>();
    for (int sensor = 0; sensor < trace.sensors().size(); sensor++) {
      lines.add(
          List.of(
              trace.sensors().get(sensor).name(),
              figures().change(fit.offset(sensor)) + " " + figures().differenceUnit()));
    }
    return new TextTable(
        "How much warmer each sensor shows than the one outside would; at most about "
            + figures().difference(LoggerFit.OFFSET)
            + " is assumed",
        List.of("sensor", "offset"),
        lines);
  }

  private Figures figures() {
    return new Figures(units);
  }

  private String leftOver() {
    String lasting =
        fit.lasting() > 0
            ? ", lasting about " + Figures.duration(Math.max(60, fit.lasting()))
            : ", from row to row anew";
    return "What is left between measured and computed is "
        + figures().hundredths(fit.noise())
        + " "
        + figures().differenceUnit()
        + lasting
        + "; by the fit all in the box had, when it was closed, "
        + figures().temperature(fit.start())
        + ".";
  }

  private byte[] page(boolean pictures) {
    AnswerPage page = new AnswerPage(title, sentence());
    page.sentence(leftOver()).deferral();
    if (tellsSomething()) {
      page.heading("For the scenario file")
          .sentence("Paste this into the packing '" + packing + "', beside its other keys:")
          .preformatted(block());
    }
    page.table(values());
    if (pictures) {
      HistoryChart measured = measured();
      page.picture(
          measured,
          width -> measured.heightFor(width, PICTURE_HEIGHT),
          "Circles: some of what was measured. Lines of the same colour: computed with the fitted values.");
      HistoryChart residuals = residuals();
      page.picture(
          residuals,
          width -> residuals.heightFor(width, PICTURE_HEIGHT * 2 / 3),
          "Waves that last for hours are what the model misses; a good fit scatters around 0.");
    }
    page.heading("What the trace does not tell")
        .list(
            fit.untold().isEmpty() ? List.of("It tells all that was asked of it.") : fit.untold());
    page.table(correlations()).table(sensors());
    page.cautions(CAUTIONS);
    page.folded(
        "How it was computed",
        folded ->
            folded.list(
                List.of(
                    "Least squares over what was fitted, how well the outside exchanges heat with"
                        + " the air (0.7 to 1.4 of the rule's), the temperature at closing (2 C°)"
                        + " and an offset of each sensor (0.5 C°): a central 90 % of each is"
                        + " assumed; twice the stated range for a conductivity.",
                    "Noise and how long it lasts are those of what is left; the sensor outside is"
                        + " taken to err as those inside do.",
                    "Up to 100 means of rows that follow each other are compared.")));
    page.files("All digits in SI units", List.of(SUMMARY, HISTORY));
    return page.html();
  }

  /**
   * Draws measured and computed temperatures.
   *
   * @return the picture
   */
  public HistoryChart measured() {
    HistoryChart.Builder chart =
        HistoryChart.titled(
            "Measured and computed temperatures in '" + packing + "'",
            "temperature [" + (units == Units.US ? "°F" : "°C") + "]");
    chart.line(line("outside", fit.outside(), this::degrees));
    for (int sensor = 0; sensor < trace.sensors().size(); sensor++) {
      chart.line(line(trace.sensors().get(sensor).name(), fit.computed(sensor), this::degrees));
      double[] times = fit.times();
      double[] measured = fit.measured(sensor);
      for (int row = 0; row < times.length; row += Math.max(1, times.length / CIRCLES)) {
        chart.mark(new HistoryChart.Sample(times[row], degrees(measured[row])));
      }
    }
    return chart.build();
  }

  /**
   * Draws what is left between measured and computed temperatures.
   *
   * @return the picture
   */
  public HistoryChart residuals() {
    HistoryChart.Builder chart =
        HistoryChart.titled(
            "What is left: measured less computed",
            "difference [" + figures().differenceUnit() + "]");
    for (int sensor = 0; sensor < trace.sensors().size(); sensor++) {
      double[] left = fit.measured(sensor);
      double[] computed = fit.computed(sensor);
      for (int row = 0; row < left.length; row++) {
        left[row] -= computed[row];
      }
      chart.line(
          line(
              trace.sensors().get(sensor).name(),
              left,
              kelvin -> units == Units.US ? TemperatureDifferences.toFahrenheit(kelvin) : kelvin));
    }
    return chart.build();
  }

  private double degrees(double kelvin) {
    return units == Units.US ? Temperatures.toFahrenheit(kelvin) : Temperatures.toCelsius(kelvin);
  }

  private HistoryChart.Line line(String name, double[] kelvin, DoubleUnaryOperator shown) {
    double[] times = fit.times();
    List<HistoryChart.Sample> samples = new ArrayList<>();
    for (int row = 0; row < times.length; row++) {
      samples.add(new HistoryChart.Sample(times[row], shown.applyAsDouble(kelvin[row])));
    }
    return new HistoryChart.Line(name, samples);
  }

  @Override
  public String json() {
    ObjectNode root = JsonText.object();
    root.put("title", title);
    root.put("packing", packing);
    root.put("answer", sentence());
    root.put("trace_is_of_this_box", fit.isOfThisBox());
    ArrayNode values = root.putArray("fitted");
    for (int row = 0; row < fit.estimates().size(); row++) {
      Estimate each = fit.estimates().get(row);
      ObjectNode value = values.addObject();
      value.put("quantity", each.quantity().name());
      value.put("unit", each.quantity().unit());
      value.put("value", each.value());
      value.putArray("interval90").add(each.interval().low()).add(each.interval().high());
      value
          .putArray("stated")
          .add(each.quantity().stated().low())
          .add(each.quantity().stated().high());
      value.put("told", isTold(each));
      ArrayNode correlations = value.putArray("correlations");
      for (int column = 0; column < fit.estimates().size(); column++) {
        correlations.add(fit.correlation(row, column));
      }
    }
    ArrayNode sensors = root.putArray("sensors");
    for (int sensor = 0; sensor < trace.sensors().size(); sensor++) {
      sensors
          .addObject()
          .put("name", trace.sensors().get(sensor).name())
          .put("offsetKelvin", fit.offset(sensor));
    }
    root.put("noiseKelvin", fit.noise());
    root.put("noiseLastsSeconds", fit.lasting());
    root.put("startKelvin", fit.start());
    ArrayNode untold = root.putArray("untold");
    fit.untold().forEach(untold::add);
    if (tellsSomething()) {
      root.put("block", block());
    }
    return JsonText.of(root);
  }

  private String history() {
    StringBuilder csv = new StringBuilder("time_s,outside_K");
    for (int sensor = 0; sensor < trace.sensors().size(); sensor++) {
      String name = trace.sensors().get(sensor).name();
      csv.append(',').append(CsvText.field(name + " measured_K"));
      csv.append(',').append(CsvText.field(name + " computed_K"));
    }
    csv.append('\n');
    double[] times = fit.times();
    double[] outside = fit.outside();
    for (int row = 0; row < times.length; row++) {
      csv.append(times[row]).append(',').append(outside[row]);
      for (int sensor = 0; sensor < trace.sensors().size(); sensor++) {
        csv.append(',').append(fit.measured(sensor)[row]);
        csv.append(',').append(fit.computed(sensor)[row]);
      }
      csv.append('\n');
    }
    return csv.toString();
  }

  @Override
  public void print(PrintWriter out) {
    ConsoleText.answer(out, title, sentence());
    ConsoleText.line(out, leftOver());
    values().print(out);
    correlations().print(out);
    if (!fit.untold().isEmpty()) {
      ConsoleText.list(out, "What the trace does not tell", fit.untold());
    }
    if (tellsSomething()) {
      out.println();
      ConsoleText.line(out, "For the packing '" + packing + "' in the scenario file:");
      out.print(block());
    }
    ConsoleText.list(out, "Cautions", CAUTIONS);
  }
}
