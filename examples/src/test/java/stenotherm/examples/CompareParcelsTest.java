package stenotherm.examples;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;
import stenotherm.decision.Level;
import stenotherm.decision.Verdict;
import stenotherm.report.Cautions;
import stenotherm.study.Odds;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CompareParcelsTest {
  private static final Pattern PERMISSION = Pattern.compile("\\bsafe", Pattern.CASE_INSENSITIVE);
  private static final Set<String> FILES = Set.of("report.html", "summary.json", "history.csv");

  private Path folder;
  private Path scenario;
  private Said one;
  private Said two;
  private String keptFromBefore = "";

  private static Said coarse(Path scenario, Path out, int threads) {
    return Said.to(scenario, "--out", out, "--threads", threads, "--mesh-scale", 2);
  }

  @BeforeAll
  void compare(@TempDir Path shared) throws IOException {
    folder = shared;
    scenario = Files.writeString(folder.resolve("small.yaml"), Small.SCENARIO);
    one = coarse(scenario, folder.resolve("first"), 1);
    // where an earlier report lies, and a scenario that is refused has been tried
    Path other = Files.createDirectories(folder.resolve("other"));
    Files.writeString(other.resolve("report.html"), "earlier");
    Path bad = Files.writeString(folder.resolve("version.yaml"), "format: 2\n");
    assertEquals(CompareParcels.BAD_SCENARIO, coarse(bad, other, 1).code());
    keptFromBefore = Files.readString(other.resolve("report.html"));
    two = coarse(scenario, other, 2);
  }

  private String file(String name) throws IOException {
    return Files.readString(folder.resolve("first").resolve(name));
  }

  private static Set<String> names(Path directory) throws IOException {
    try (Stream<Path> entries = Files.list(directory)) {
      return entries
          .map(entry -> entry.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Test
  void succeeds() {
    assertEquals(0, one.code(), one.err());
    assertEquals(0, two.code(), two.err());
    assertTrue(one.err().endsWith("computing: 100 %" + System.lineSeparator()), one.err());
    List<String> told = told(one);
    assertTrue(told.get(0).startsWith("First look, one typical journey"), one.err());
    assertTrue(told.size() <= 5, "a file needs a few lines of progress");
  }

  /** What is told on the way, but for what a slow machine tells as well. */
  private static List<String> told(Said run) {
    return run.err().lines().filter(line -> !line.endsWith(" s so far")).toList();
  }

  /** The same answer, the same numbers, no picture; for other programs the summary. */
  @Test
  void quickLeavesThePicturesOutAndJsonIsTheSummary() throws IOException {
    Path quick = folder.resolve("quick");
    Said run = Said.to(scenario, "--quick", "--json", "--out", quick, "--mesh-scale", 2);
    assertEquals(0, run.code(), run.err());
    String page = Files.readString(quick.resolve("report.html"));
    assertFalse(page.contains("<svg"));
    assertTrue(file("report.html").contains("<svg"));
    assertEquals(file("summary.json"), Files.readString(quick.resolve("summary.json")));
    assertEquals(file("summary.json"), run.out());
    String answer = "<p class=\"answer\">.*?</p>";
    assertEquals(first(answer, file("report.html")), first(answer, page));
  }

  private static String first(String pattern, String text) {
    return Pattern.compile(pattern, Pattern.DOTALL)
        .matcher(text)
        .results()
        .map(found -> found.group())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void printsTableVerdictsAndCautions() {
    for (String expected :
        List.of(
            "warm, \"foam\", with warmer  ",
            "bare foam    ",
            "lid, shredded paper",
            "200 x 170 x 150 mm",
            "These results rest on ",
            "warm, \"foam\", with warmer: ",
            "coldest about",
            Cautions.ILLUSTRATIVE,
            Verdict.DEFER,
            "Report: ")) {
      assertTrue(one.out().contains(expected), expected + " in\n" + one.out());
    }
  }

  @Test
  void writesThreeFilesAndLeavesNothingElse() throws IOException {
    assertEquals(FILES, names(folder.resolve("first")));
    assertTrue(names(folder).stream().noneMatch(name -> name.startsWith(".")));
  }

  @Test
  void noOutputGivesPermission() throws IOException {
    for (String text :
        List.of(one.out(), file("report.html"), file("summary.json"), file("history.csv"))) {
      assertFalse(PERMISSION.matcher(text).find());
    }
  }

  @Test
  void sameResultsWhateverTheThreads() throws IOException {
    for (String name : FILES) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("first").resolve(name)),
          Files.readAllBytes(folder.resolve("other").resolve(name)),
          name);
    }
    assertEquals(
        one.out().replace(folder.resolve("first").toString(), ""),
        two.out().replace(folder.resolve("other").toString(), ""));
  }

  /** Also where neither digits nor calendar are those of this file. */
  @Test
  void sameResultsWhateverTheLocale() throws IOException {
    String tag = "th-TH-u-ca-buddhist-nu-thai";
    Locale before = Locale.getDefault();
    Said there;
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      there = coarse(scenario, folder.resolve(tag), 1);
    } finally {
      Locale.setDefault(before);
    }
    assertEquals(0, there.code(), there.err());
    assertEquals(
        one.out().replace(folder.resolve("first").toString(), ""),
        there.out().replace(folder.resolve(tag).toString(), ""));
    assertEquals(told(one), told(there));
    for (String name : FILES) {
      assertEquals(file(name), Files.readString(folder.resolve(tag).resolve(name)), name);
    }
  }

  @Test
  void reportIsOneWellFormedPage() throws Exception {
    String html = file("report.html");
    assertTrue(html.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
    for (String expected :
        List.of(
            "<meta charset=\"utf-8\">",
            "name=\"viewport\"",
            "<h2>Cautions</h2>",
            "<summary>warm, &quot;foam&quot;, with warmer: ",
            "<summary>bare foam: ",
            "<summary>The odds in more detail</summary>",
            "<summary>How it was computed</summary>",
            "<h2>Words used here</h2>",
            "<a href=\"summary.json\">",
            "<a href=\"history.csv\">",
            "reduced model, ",
            "What makes one journey colder than another",
            " assumptions and their sources</summary>",
            "<h1>Small &lt;test&gt; &amp; &quot;more&quot;</h1>",
            Cautions.ILLUSTRATIVE,
            Verdict.DEFER)) {
      assertTrue(html.contains(expected), expected);
    }
    // for each packing two charts, a sheet of sections and its heat; for wide and narrow screens
    assertEquals(2 * 2 * 4, html.split("<svg", -1).length - 1);
    assertEquals(
        List.of("#cautions", "summary.json", "history.csv"),
        Pattern.compile("href=\"([^\"]*)\"").matcher(html).results().map(r -> r.group(1)).toList(),
        "links within the page and to the files beside it only");
    for (String link : List.of("src=", "<script", "<link", "url(", "@import")) {
      assertFalse(html.contains(link), link);
    }
    // apart from its two void elements the page is XML too
    String xml = html.replace("<!DOCTYPE html>", "").replaceAll("<meta([^>]*)>", "<meta$1/>");
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }

  /**
   * What is read first, neither folded nor the list of words: the words and the units of a keeper.
   */
  @Test
  void theFirstScreenHasPlainWordsAndTheReadersUnitsAlone() throws IOException {
    String first =
        file("report.html")
            .replaceAll("(?s)<details>.*</details>|<style>.*</style>|<dl>.*</dl>", "");
    for (String text : List.of(first, one.out())) {
      for (String word :
          List.of(
              "worse end",
              "nominal",
              "margin",
              "alarm band",
              "ambient",
              "apron",
              "not converged",
              "surface film",
              "xMin",
              "none, outside",
              "°F",
              "F°",
              " K ",
              " K,",
              "tightest")) {
        assertFalse(text.contains(word), word + " in " + text);
      }
    }
    assertTrue(first.contains(Verdict.DEFER));
  }

  @Test
  void summaryHoldsAllDigits() throws IOException {
    JsonNode root = new ObjectMapper().readTree(file("summary.json"));
    assertEquals("Small <test> & \"more\"", root.get("title").asText());
    assertEquals(5 * 3600, root.get("planned_duration_s").asDouble());
    // without its warmer the first is the second
    assertEquals(2, root.get("packings").size());
    JsonNode first = root.get("packings").get(0);
    assertTrue(first.get("warmer").asBoolean());
    assertEquals(13, first.get("sensitivities").size());
    assertEquals(9, root.get("packings").get(1).get("sensitivities").size());
    for (JsonNode row : root.get("packings")) {
      JsonNode odds = row.get("odds");
      double within = odds.get("within").asDouble();
      assertTrue(odds.get("low").asDouble() <= within && within <= odds.get("high").asDouble());
      assertTrue(within <= row.get("odds_not_too_cold").get("within").asDouble());
      assertTrue(within <= row.get("odds_not_too_hot").get("within").asDouble());
      Level level = Level.valueOf(row.get("level").asText());
      assertEquals(level.words(), row.get("level_words").asText());
      assertEquals(Level.of(new Odds(within, odds.get("low").asDouble(), 1)), level);
      assertEquals(4, row.get("odds_by_hours_late").size(), "a hold of three hours");
      JsonNode margin = row.get("cold_margin");
      assertTrue(margin.get("q05_K").asDouble() < margin.get("q50_K").asDouble());
      assertTrue(margin.get("q50_K").asDouble() < margin.get("q95_K").asDouble());
      double nominal = margin.get("nominal").get("margin_K").asDouble();
      assertTrue(margin.get("stress").get("margin_K").asDouble() < nominal);
      assertEquals(1, row.get("animals").size());
      assertEquals(
          nominal, row.get("animals").get(0).get("nominal_cold_margin").get("margin_K").asDouble());
    }
    assertTrue(one.out().contains(root.get("headline").asText()), one.out());
    JsonNode heat = first.get("heat_until_opening_J");
    double scale = heat.get("given_by_warmers").get("warmer").asDouble();
    assertEquals(0, heat.get("residual").asDouble(), 1e-6 * scale);
    assertTrue(heat.get("stored_in_blocks").has("fill"));
    assertEquals(2, first.get("coefficients_of_legs").size());
    assertTrue(first.get("outer_volume_m3").asDouble() > 0.2 * 0.17 * 0.15 - 1e-12);
    assertTrue(first.get("mean_heat_into_parcel_until_opening_W").get("lid").asDouble() < 0);
    assertTrue(within(first, "odds_enough_air") && within(first, "odds_not_burnt"));
    double oxygen = first.get("air_until_opening").get("least_oxygen").get("fraction").asDouble();
    assertTrue(oxygen > 0.1 && oxygen < 0.2095, "oxygen " + oxygen);
    assertEquals("FILM", first.get("warmers").get(0).get("mostly_limited_by").asText());
  }

  private static boolean within(JsonNode row, String odds) {
    return row.get("odds").get("within").asDouble() <= row.get(odds).get("within").asDouble();
  }

  /** What causes most of the spread of the deciding margin is named, where something fails. */
  @Test
  void whatCausesMostIsNamed() throws IOException {
    int told = 0;
    for (JsonNode row : new ObjectMapper().readTree(file("summary.json")).get("packings")) {
      if (row.get("odds").get("within").asDouble() >= 0.995) {
        continue;
      }
      String side = row.get("tighter_side").asText().startsWith("cold") ? "cold" : "hot";
      JsonNode shares = row.get(side + "_margin").get("shares_of_variance");
      for (int next = 1; next < shares.size(); next++) {
        double more = shares.get(next - 1).get("total").asDouble();
        assertTrue(shares.get(next).get("total").asDouble() <= more, "the largest first");
      }
      String most = shares.get(0).get("of").asText();
      String sentence = "What makes journeys differ most: " + most + " (";
      assertTrue(
          file("report.html").contains(sentence.replace("'", "&#39;"))
              || file("report.html").contains(sentence),
          sentence);
      told++;
    }
    assertTrue(told > 0);
  }

  @Test
  void historyHasOneRowForEachStoredTime() throws IOException {
    List<String> lines = file("history.csv").lines().toList();
    // 8 h at 4 values an hour, with the start, for two runs
    assertEquals(1 + 2 * 33, lines.size());
    assertTrue(lines.get(0).startsWith("packing,warmer,container,time_s,local_clock,ambient_K,"));
    assertTrue(lines.get(1).startsWith("\"warm, \"\"foam\"\"\",yes,"), lines.get(1));
    assertTrue(lines.get(1).contains(",0.0,2026-01-15T18:00:00,287.15,"), lines.get(1));
    assertTrue(lines.get(34).endsWith(",,"), "neither warmer nor pack, nothing of them");
    // the later leg's clock and air hold from its first moment
    assertTrue(lines.get(9).contains(",7200.0,2026-01-15T19:00:00,285.15,"), lines.get(9));
  }

  @Test
  void refusesBadScenarioAndWritesNothing() throws IOException {
    Path bad =
        Files.writeString(
            folder.resolve("bad.yaml"),
            Small.SCENARIO.replace("animal: leopard", "animal: lepard"));
    Said run = coarse(bad, folder.resolve("never"), 1);
    assertEquals(CompareParcels.BAD_SCENARIO, run.code());
    assertTrue(run.err().contains("bad.yaml:3:"), run.err());
    assertFalse(Files.exists(folder.resolve("never")));
    Said missing = coarse(folder.resolve("missing.yaml"), folder.resolve("never"), 1);
    assertEquals(CompareParcels.BAD_SCENARIO, missing.code());
    assertTrue(missing.err().contains("missing.yaml"), missing.err());
  }

  @Test
  void keepsEarlierReportUntilTheNewOneIsWhole() throws IOException {
    Path out = folder.resolve("other");
    assertEquals("earlier", keptFromBefore);
    assertEquals(0, two.code());
    assertEquals(file("report.html"), Files.readString(out.resolve("report.html")));
    assertEquals(FILES, names(out));
    assertTrue(names(folder).stream().noneMatch(name -> name.startsWith(".")));
  }

  @Test
  void neverReplacesWhatIsNoReport() throws IOException {
    Path mine = Files.createDirectories(folder.resolve("letters"));
    Path letter = Files.writeString(mine.resolve("letter.txt"), "mine");
    Said run = coarse(scenario, mine, 1);
    assertEquals(CompareParcels.CANNOT_WRITE, run.code());
    assertTrue(run.err().contains("letter.txt"), run.err());
    assertEquals(CompareParcels.CANNOT_WRITE, coarse(scenario, letter, 1).code());
    assertEquals("mine", Files.readString(letter));
    assertEquals(Set.of("letter.txt"), names(mine));
  }

  @Test
  void refusesBadCommandLine() {
    assertEquals(CompareParcels.BAD_COMMAND_LINE, Said.to("--threads", 0).code());
    assertEquals(CompareParcels.BAD_COMMAND_LINE, Said.to("--mesh-scale", 2.1).code());
    assertEquals(CompareParcels.BAD_COMMAND_LINE, Said.to("--what").code());
  }

  @Test
  void thereAreNoArgumentFilesAndNoRawEscapes() {
    Said missing = Said.to("@missing");
    assertEquals(CompareParcels.BAD_SCENARIO, missing.code(), missing.err());
    assertEquals(1, missing.err().lines().count(), missing.err());
    for (Said red : List.of(Said.to("--\u001b[31mred"), Said.to("\u001b[31mred.yaml"))) {
      assertFalse(red.err().contains("\u001b"), red.err());
      assertTrue(red.err().contains("\\u001B[31mred"), red.err());
    }
  }

  private static Said helpTo(Error problem) {
    PrintWriter broken =
        new PrintWriter(
            new StringWriter() {
              @Override
              public void write(String text, int offset, int length) {
                throw problem;
              }
            });
    StringWriter err = new StringWriter();
    int code = Stenotherm.run(broken, new PrintWriter(err, true), "--help");
    return new Said(code, "", err.toString());
  }

  @Test
  void whatIsUnforeseenIsALine() {
    Said unforeseen = helpTo(new StackOverflowError());
    assertEquals(CompareParcels.UNFORESEEN, unforeseen.code());
    assertTrue(unforeseen.err().startsWith("unforeseen: StackOverflowError"), unforeseen.err());
    assertEquals(1, unforeseen.err().lines().count(), unforeseen.err());
    Said full = helpTo(new OutOfMemoryError("Java heap space"));
    assertEquals(CompareParcels.FAILED, full.code());
    assertTrue(full.err().startsWith("out of memory: "), full.err());
    assertTrue(full.err().contains("java -Xmx4g"), full.err());
    assertEquals(1, full.err().lines().count(), full.err());
  }

  /** A small machine is told in a line what it lacks, before or during the work. */
  @Test
  void aSmallHeapIsToldInALine() throws Exception {
    Process small =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx96m",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Stenotherm.class.getName(),
                "--out",
                folder.resolve("small-heap").toString())
            .redirectErrorStream(true)
            .start();
    String text = new String(small.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(
        Set.of(0, CompareParcels.BAD_SCENARIO, CompareParcels.FAILED).contains(small.waitFor()),
        text);
    assertFalse(text.contains("\tat "), text);
    assertFalse(text.contains("Exception"), text);
  }

  @Test
  void stopsWhenInterrupted() {
    Path out = folder.resolve("stopped");
    Thread.currentThread().interrupt();
    Said run = coarse(Path.of("unread.yaml"), out, 1);
    Thread.interrupted();
    assertEquals(CompareParcels.BAD_SCENARIO, run.code(), "no scenario, nothing to stop");
    Thread.currentThread().interrupt();
    Said stopped = Said.to("--out", out, "--threads", 1, "--mesh-scale", 2);
    assertTrue(Thread.interrupted());
    assertEquals(CompareParcels.FAILED, stopped.code(), stopped.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void versionIsTheProjects() throws IOException {
    String version = Said.to("--version").out().strip().replace("Stenotherm ", "");
    assertTrue(Files.readString(Path.of("pom.xml")).contains("<version>" + version + "<"));
  }
}
