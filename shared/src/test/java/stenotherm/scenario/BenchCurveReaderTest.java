package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.text.TextFormatException;
import stenotherm.warmer.Bench;
import stenotherm.warmer.BenchCurve;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** A warmer by the curve that its user measured, in a table beside the scenario. */
class BenchCurveReaderTest {
  private static final String SCENARIO =
      """
      format: 1
      title: mine
      animal: leopard gecko, 40 g
      cup: 16 fl oz cup
      journey: overnight by air, 2 to 9 °C
      packings:
        - name: box
          box: 12 x 9 x 8 in
          foam: EPS 20 19 mm
          fill: shredded paper
          warmer: {on: lid, curve: mine.csv, bench: wrapped in cloth, contents: 50 g, size: 130 x 95 x 4 mm}
      """;

  private static final WarmerClass TRUTH = Warmers.TWENTY_HOUR;
  private static final double ROOM = Temperatures.fromCelsius(21);

  @TempDir Path folder;

  /** Readings each half hour, to hundredths, of the warmer of the catalogue in a loose cloth. */
  private static String table(String head, boolean isRise, String... changes) {
    BenchCurve curve = Bench.wrapped(ROOM).opened(TRUTH, Times.fromHours(30)).curve();
    StringBuilder csv = new StringBuilder("# mine\n" + head + "\n");
    for (int row = 0; row <= 60; row++) {
      double kelvin = curve.at(1800.0 * row);
      double value = isRise ? kelvin - ROOM : Temperatures.toCelsius(kelvin);
      csv.append(String.format(Locale.ROOT, "%.1f, %.2f%n", row / 2.0, value));
    }
    String text = csv.toString();
    for (int change = 0; change < changes.length; change += 2) {
      String changed = text.replaceFirst(changes[change], changes[change + 1]);
      assertNotEquals(text, changed);
      text = changed;
    }
    return text;
  }

  private Scenario read(String scenario, String table) throws IOException {
    Files.writeString(folder.resolve("mine.csv"), table);
    Path file = folder.resolve("s.yaml");
    Files.writeString(file, scenario);
    return ScenarioReader.read(file);
  }

  private String fault(String scenario, String table) {
    String message =
        assertThrows(TextFormatException.class, () -> read(scenario, table)).getMessage();
    return message.replace(folder.toString(), "DIR").replace('\\', '/');
  }

  private static String with(String old, String other) {
    return ScenarioFiles.with(SCENARIO, old, other);
  }

  /** The warmer comes back, with what the curve cannot tell among what the answer rests on. */
  @Test
  void aCurveGivesItsWarmer() throws IOException {
    Scenario scenario = read(SCENARIO, table("hours, pouch [°C]", false));
    WarmerClass own = scenario.packings().get(0).warmers().get(0).warmer();
    IronPowder truth = (IronPowder) TRUTH.heat();
    IronPowder found = assertInstanceOf(IronPowder.class, own.heat());
    assertEquals(1, found.film().permeance() / truth.film().permeance(), 0.02);
    assertEquals(1, found.iron() / truth.iron(), 0.02);
    assertEquals(WarmerClass.SINGLE, own.strength());
    assertEquals(new Range(0.7, 1.3), own.bench());
    String told = String.join("\n", scenario.assumptions());
    for (String part :
        new String[] {
          "Warmer of your own by its curve in 'mine.csv', measured by the user: permeance of the"
              + " film 2.",
          "each interval with 90 %",
          "film, iron and watts may all be 0.70 to 1.30 times as large",
          "all of them 0.7 to 1.3 times, for want of the bench's resistances"
        }) {
      assertTrue(told.contains(part), part + " in " + told);
    }
  }

  /** A rise over a stated room says the same. */
  @Test
  void aRiseTellsAsMuch() throws IOException {
    Scenario scenario =
        read(
            with("bench: wrapped in cloth", "room: 21 °C, bench: wrapped in cloth"),
            table("hours, rise [K]", true));
    IronPowder found = (IronPowder) scenario.packings().get(0).warmers().get(0).warmer().heat();
    assertEquals(1, found.iron() / ((IronPowder) TRUTH.heat()).iron(), 0.02);
  }

  /** On a bench that conducts more the same curve stands for more iron. */
  @Test
  void theBenchCounts() throws IOException {
    String table = table("hours, pouch [°C]", false);
    double cloth = iron(read(SCENARIO, table));
    double bare =
        iron(read(with("wrapped in cloth", "bare table").replace("50 g", "140 g"), table));
    // 0.20 and 0.10 for 0.40 and 0.40 m2 K/W
    assertEquals(3, bare / cloth, 0.3);
  }

  private static double iron(Scenario scenario) {
    return ((IronPowder) scenario.packings().get(0).warmers().get(0).warmer().heat()).iron();
  }

  @Test
  void capitalLettersInTheHeaderDoNotMatter() throws IOException {
    assertEquals(
        iron(read(SCENARIO, table("hours, pouch [°C]", false))),
        iron(read(SCENARIO, table("Hours, Pouch [°C]", false))));
  }

  @Test
  void faultsOfTheTableNameItsLines() {
    String where = "DIR/mine.csv:";
    assertEquals(
        where
            + "2:1: unknown name 'hour', allowed are hours, minutes, time. Did you mean"
            + " 'hours'?",
        fault(SCENARIO, table("hour, pouch [°C]", false)));
    assertEquals(
        where + "2:7: unknown name 'poach', allowed are pouch, rise. Did you mean" + " 'pouch'?",
        fault(SCENARIO, table("hours, poach [°C]", false)));
    assertEquals(
        where + "2:7: needs its unit in brackets, as in pouch [°C]",
        fault(SCENARIO, table("hours, pouch", false)));
    assertEquals(
        where + "5:5: pouch [°C]: 'warm' is not a number, write digits as in 12 or 2.5",
        fault(SCENARIO, table("hours, pouch [°C]", false, "1.0, [0-9.]+", "1.0, warm")));
    assertEquals(
        where + "3:1: hours: must be 0, the moment at which the warmer was opened",
        fault(SCENARIO, table("hours, pouch [°C]", false, "0.0, ", "0.1, ")));
    assertEquals(
        where + "5:1: hours: must be later than the row before, 0.5",
        fault(SCENARIO, table("hours, pouch [°C]", false, "1.0, ", "0.4, ")));
    assertEquals(
        where
            + "1:1: there must be two columns, a time and a temperature, write for"
            + " example hours, pouch [°C]",
        fault(SCENARIO, "hours\n0\n"));
    assertEquals(where + "1:1: there is no row below it", fault(SCENARIO, "hours, pouch [°C]\n"));
  }

  @Test
  void faultsOfTheKeysNameTheScenario() {
    String table = table("hours, pouch [°C]", false);
    String at = "DIR/s.yaml:11:13: packings[0].warmer (box): ";
    assertEquals(
        "DIR/s.yaml:11:30: packings[0].warmer.curve (box): there is no such table in the scenario's"
            + " folder. Did you mean 'mine.csv'?",
        fault(with("mine.csv", "mein.csv"), table));
    assertEquals(
        "DIR/s.yaml:11:30: packings[0].warmer.curve (box): must lie in the scenario's folder or below"
            + " it",
        fault(with("mine.csv", "../mine.csv"), table));
    assertEquals(
        "DIR/s.yaml:11:30: packings[0].warmer.curve (box): must be a table in the scenario's folder"
            + " whose name ends with .csv",
        fault(with("mine.csv", "/etc/passwd"), table));
    assertEquals(
        "DIR/s.yaml:11:47: packings[0].warmer.bench (box): unknown name 'in cloth', allowed are"
            + " wrapped in cloth, bare table, rating bench",
        fault(with("wrapped in cloth", "in cloth"), table));
    assertEquals(
        "DIR/s.yaml:11:13: packings[0].warmer.bench (box): is missing and must be given, write for"
            + " example bench: wrapped in cloth",
        fault(with("bench: wrapped in cloth, ", ""), table));
    assertEquals(
        at + "must have one of the rating printed on it, a curve measured of it, its watts",
        fault(with("curve: mine.csv", "watts: 2 W, lasting: 30 h, curve: mine.csv"), table));
    assertEquals(
        "DIR/s.yaml:11:50: packings[0].warmer.bench (box): has no effect without a curve",
        fault(with("curve: mine.csv", "watts: 2 W, lasting: 30 h"), table));
    assertEquals(
        at + "must have the room's temperature, as its curve tells rises over it",
        fault(SCENARIO, table("hours, rise [K]", true)));
    assertTrue(
        fault(SCENARIO, "hours, pouch [°C]\n0, 21\n1, 30\n")
            .startsWith(at + "curve: never reaches 40 °C"));
  }

  /** A text that is posted or pasted reads nothing on this machine. */
  @Test
  void aTextWithoutFolderReadsNoFile() throws IOException {
    Files.writeString(folder.resolve("mine.csv"), table("hours, pouch [°C]", false));
    String message =
        assertThrows(TextFormatException.class, () -> ScenarioReader.read("posted", SCENARIO))
            .getMessage();
    assertEquals(
        "posted:11:30: packings[0].warmer.curve (box): names a file, which only a scenario that is a"
            + " file itself may do",
        message);
    assertEquals(1, ScenarioReader.read("posted", SCENARIO, folder).packings().size());
  }
}
