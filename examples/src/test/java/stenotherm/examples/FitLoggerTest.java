package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.base.End;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.decision.LoggerSensor;
import stenotherm.decision.LoggerTrace;
import stenotherm.decision.SensorSpot;
import stenotherm.decision.TestBox;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.ScenarioReader;
import stenotherm.transit.Factor;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;

/** What loggers tell of a box that was tested. */
class FitLoggerTest {
  private static final String BOX =
      """
      format: 1
      title: A box in a cold room
      units: metric
      animal: leopard gecko, 40 g
      cup: 16 oz deli cup
      journey: overnight by air, 2 to 10 °C
      packings:
        - name: cube
          box: 7 in cube carton
          foam: EPS 20 3/4 in
          fill: shredded paper
          warmer: 40 hour warmer on lid
      """;

  @TempDir private Path folder;

  private JsonNode fitted(Object... args) throws IOException {
    Said said = Said.to(args);
    assertEquals(0, said.code(), said.err());
    assertFalse(said.out().matches("(?is).*\\bsafe\\b.*"), said.out());
    return new ObjectMapper().readTree(folder.resolve("out").resolve("logger.json").toFile());
  }

  private static Map<String, JsonNode> byName(JsonNode fit) {
    Map<String, JsonNode> all = new HashMap<>();
    fit.get("fitted").forEach(each -> all.put(each.get("quantity").asText(), each));
    return all;
  }

  /** The head of the shipped trace says with which values it was computed. */
  @Test
  void theShippedTraceGivesBackWhatItWasMadeWith() throws IOException {
    JsonNode fit = fitted("fit", "--out", folder.resolve("out"));
    Map<String, Double> truth =
        Map.of(
            "conductivity of the fill", 0.054,
            "gap of the seams", 0.35e-3,
            "strength of the warmer", 0.92);
    Map<String, JsonNode> found = byName(fit);
    assertEquals(truth.keySet(), found.keySet());
    truth.forEach(
        (name, value) -> {
          JsonNode interval = found.get(name).get("interval90");
          assertTrue(
              interval.get(0).asDouble() <= value && value <= interval.get(1).asDouble(),
              name + " " + interval);
        });
    String page = Files.readString(folder.resolve("out").resolve("logger.html"));
    assertTrue(page.contains("<svg"), "measured and computed are drawn");
    assertTrue(page.contains("Measured in '") && page.contains(" than usual"), "in plain words");
    assertTrue(page.contains("measured:"), "the block stands on the page");
  }

  private Path table(LoggerTrace trace, double[] cup) throws IOException {
    StringBuilder text = new StringBuilder("hours, outside [°C], cup [°C]\n");
    for (int row = 0; row < cup.length; row++) {
      text.append(
          String.format(
              Locale.ROOT,
              "%.2f, %.1f, %.1f%n",
              Times.toHours(trace.times()[row]),
              Temperatures.toCelsius(trace.outside()[row]),
              Temperatures.toCelsius(cup[row])));
    }
    return Files.writeString(folder.resolve("box.csv"), text);
  }

  /** Carried from 24 °C into 5 °C. */
  private static LoggerTrace cold(int quarters) {
    double[] times = new double[quarters];
    double[] outside = new double[quarters];
    double[] inside = new double[quarters];
    Arrays.setAll(times, row -> row * Times.fromMinutes(15));
    Arrays.fill(outside, Temperatures.fromCelsius(5));
    Arrays.fill(inside, Temperatures.fromCelsius(24));
    return new LoggerTrace(
        times,
        outside,
        List.of(new LoggerSensor("cup", new SensorSpot.InCup("cup"))),
        new double[][] {inside});
  }

  /** A fill that conducts more than its range says, in a trace that this library computed. */
  @Test
  void theBlockCanBePastedIntoTheScenario() throws IOException {
    Path scenario = Files.writeString(folder.resolve("box.yaml"), BOX);
    Parcel parcel = ScenarioReader.read(scenario).packings().get(0);
    LoggerTrace trace = cold(121);
    TestBox box = TestBox.of(parcel, trace, false, TransitSettings.standard().meshScaled(2));
    Variation wet = Variation.NOMINAL.with(Factor.FILL_CONDUCTIVITY, End.HIGH);
    double[] cup = box.readings(trace, Temperatures.fromCelsius(24), wet)[0];
    JsonNode fit = fitted("fit", scenario, table(trace, cup), "--out", folder.resolve("out"));
    Map<String, JsonNode> found = byName(fit);
    assertTrue(fit.has("block"), fit.toString());
    String block = fit.get("block").asText();
    assertTrue(block.contains("fill conductivity: "), block);
    Path pasted = Files.writeString(folder.resolve("pasted.yaml"), BOX + block);
    Parcel measured = ScenarioReader.read(pasted).packings().get(0);
    double told = found.get("conductivity of the fill").get("value").asDouble();
    assertEquals(
        told, measured.filling().fill().orElseThrow().conductivity(), 0.01 * told, "as pasted");
  }

  /** Warm and cold by turns inside, while it is always as cold outside: another box, or a fault. */
  @Test
  void aTraceOfAnotherBoxLeavesNoBlockAndTellsNothing() throws IOException {
    double[] cup = new double[121];
    Arrays.setAll(cup, row -> Temperatures.fromCelsius(20 + (row / 20 % 2 == 0 ? 6 : -6)));
    Path scenario = Files.writeString(folder.resolve("box.yaml"), BOX);
    Path table = table(cold(cup.length), cup);
    JsonNode fit = fitted("fit", scenario, table, "--out", folder.resolve("out"));
    String answer = fit.get("answer").asText();
    assertTrue(answer.startsWith("Take nothing from this trace: it does not match 'cube'"), answer);
    assertFalse(fit.get("trace_is_of_this_box").asBoolean());
    assertFalse(fit.has("block"), fit.toString());
    fit.get("fitted").forEach(each -> assertFalse(each.get("told").asBoolean(), each.toString()));
  }

  @Test
  void aTraceThatTellsNothingLeavesNoBlock() throws IOException {
    Path scenario =
        Files.writeString(
            folder.resolve("box.yaml"), BOX.replace("    warmer: 40 hour warmer on lid\n", ""));
    LoggerTrace trace = cold(24);
    double[] cup = new double[24];
    Arrays.fill(cup, Temperatures.fromCelsius(5.3));
    JsonNode fit = fitted("fit", scenario, table(trace, cup), "--out", folder.resolve("out"));
    assertTrue(fit.get("untold").toString().contains("too flat"), fit.toString());
    assertFalse(fit.has("block"), fit.toString());
  }

  @Test
  void aScenarioNeedsItsTrace() throws IOException {
    Path scenario = Files.writeString(folder.resolve("box.yaml"), BOX);
    Said said = Said.to("fit", scenario);
    assertEquals(3, said.code());
    assertTrue(said.err().contains("trace: is missing"), said.err());
  }
}
