package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import stenotherm.text.Document;
import stenotherm.validation.cases.CaseResult.Status;

/** The command: exit status, console and files. */
class RunCasesTest {
  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter errors = new StringWriter();

  private int run(String... arguments) {
    return new CommandLine(new RunCases())
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(errors, true))
        .execute(arguments);
  }

  private Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private String results() throws IOException {
    return Files.readString(folder.resolve("out/results.csv"));
  }

  private int runAll(String... more) {
    String[] arguments = new String[more.length + 2];
    arguments[0] = "--out";
    arguments[1] = folder.resolve("out").toString();
    System.arraycopy(more, 0, arguments, 2, more.length);
    return run(arguments);
  }

  @Test
  void aCaseThatPasses() throws IOException {
    assertEquals(0, runAll(write("tiny.yaml", TinyCases.STEADY).toString()), errors::toString);
    List<String> lines = results().lines().toList();
    assertEquals(
        "case,probe,time_s,computed,reference,tolerance,unit,error,estimate,passed,cells,steps,wall_s",
        lines.get(0));
    assertEquals(3, lines.size());
    String[] cells = lines.get(1).split(",", -1);
    assertEquals(13, cells.length);
    assertEquals("tiny", cells[0]);
    assertEquals("cold", cells[1]);
    assertEquals("", cells[2]);
    assertEquals(275.590909, Double.parseDouble(cells[3]), 1e-6);
    assertEquals("275.590909", cells[4]);
    assertEquals("K", cells[6]);
    assertEquals("true", cells[9]);
    assertEquals("0", cells[11]);
    assertTrue(out.toString().contains("1 case, 1 passed; 2 values, 2 passed."), out::toString);
  }

  @Test
  void aFolderWithAllKindsOfTrouble() throws IOException {
    write("cases/a/tiny.yaml", TinyCases.STEADY);
    write("cases/b/wrong.yml", TinyCases.wrong());
    write("cases/b/again.json.yaml", TinyCases.STEADY);
    write("cases/broken.yaml", TinyCases.STEADY.replace("conductivity", "conductivty"));
    write("cases/notes.txt", "no case");
    assertEquals(1, runAll(folder.resolve("cases").toString()));
    String text = out.toString();
    assertTrue(text.contains("broken.yaml:6:18: blocks[0].conductivty: unknown key"), text);
    assertTrue(text.contains("Did you mean 'conductivity'?"), text);
    assertTrue(text.contains("tiny: another case has the same id"), text);
    assertTrue(text.contains("wrong: failed: cold is 275.5909 K, reference 276"), text);
    assertTrue(
        text.contains("4 cases, 1 failed, 2 refused, 1 passed; 4 values, 3 passed, 1 failed."),
        text);
    // what is refused stands before what failed, and both before what passed
    String markdown = Files.readString(folder.resolve("out/report.md"));
    int refused = markdown.indexOf("Not converged or refused");
    int failed = markdown.indexOf("## Failed");
    int all = markdown.indexOf("## Every value");
    assertTrue(0 < refused && refused < failed && failed < all, markdown);
    assertTrue(markdown.indexOf("FAILED", all) < markdown.indexOf("| passed |", all), markdown);
    assertTrue(results().contains("wrong,cold,,275.59"), results());
    assertTrue(results().contains(",false,"), results());
  }

  @Test
  void disagreementWithPracticeIsAFindingAndNoFailure() throws IOException {
    String practice = "kind: practice\n" + TinyCases.wrong();
    assertEquals(0, runAll(write("habit.yaml", practice).toString()), out::toString);
    String text = out.toString();
    assertTrue(
        text.contains(": finding: disagrees with the practice value: cold is 275.5909 K"), text);
    assertTrue(
        text.contains(
            "1 case, 1 in disagreement with practice or measurement; 2 values, 1 passed, 1 in"
                + " disagreement with practice or measurement."),
        text);
    String markdown = Files.readString(folder.resolve("out/report.md"));
    int findings =
        markdown.indexOf(
            "## Findings: where the model disagrees with measurements or common practice");
    assertTrue(0 < findings && findings < markdown.indexOf("## Every value"), markdown);
    assertFalse(markdown.contains("## Failed"), markdown);
    assertTrue(results().contains(",false,"), results());
  }

  /** Each of these took all other cases of a run with it. */
  @Test
  void aBadCaseLeavesTheOthersAlone() throws IOException {
    String[] bad = {
      TinyCases.STEADY.replace("[0, 1]", "[0, 4.9e-324]").replace("[1, 0.5, 0.5]", "[0, 0, 0]"),
      TinyCases.STEADY.replace("[0, 1]", "[0, 1e308]"),
      TinyCases.STEADY.replace("x: [0, 1]", "x: [0, 1e308]"),
      TinyCases.STEADY.replace("conductivity: 1", "conductivity: 1, power: 1e308"),
      TinyCases.STEADY.replace("conductivity: 1", "conductivity: 1, power: 1e300"),
      TinyCases.TRANSIENT.replace("[[0, 2], [300, 4]]", "1e308"),
      TinyCases.TRANSIENT.replace("[[0, 2], [300, 4]]", "1e300"),
    };
    for (int number = 0; number < bad.length; number++) {
      write(
          "cases/bad" + number + ".yaml",
          bad[number].replaceFirst("id: [a-z]+", "id: bad" + number));
    }
    write("cases/tiny.yaml", TinyCases.STEADY);
    assertEquals(1, runAll(folder.resolve("cases").toString()), errors::toString);
    assertEquals("", errors.toString());
    String text = out.toString();
    for (int number = 0; number < 3; number++) {
      assertTrue(text.contains("bad" + number + ".yaml:4:13: domain.x: "), text);
    }
    assertTrue(text.contains("bad3: not converged: no estimate"), text);
    assertTrue(text.contains("the linear system met a number that is not finite"), text);
    assertTrue(text.contains("8 cases, 4 not converged, 3 refused, 1 passed;"), text);
  }

  @Test
  void whatIsUnforeseenInACaseIsALineAndLeavesTheOthersAlone() throws IOException {
    ValidationCase broken =
        new ValidationCase() {
          @Override
          public String name() {
            return "broken";
          }

          @Override
          public CaseResult run(Limits limits, int refine, Consumer<String> progress) {
            throw new ArrayIndexOutOfBoundsException("7");
          }
        };
    RunCases command = new RunCases();
    List<CaseResult> results =
        command.run(
            List.of(broken, new CaseSource("t", () -> Document.parse("t", TinyCases.STEADY))),
            Limits.STANDARD,
            new PrintWriter(out, true));
    assertEquals(Status.REFUSED, results.get(0).status());
    assertTrue(
        results
            .get(0)
            .problem()
            .orElseThrow()
            .startsWith("unforeseen: ArrayIndexOutOfBoundsException '7' in RunCasesTest"),
        results.get(0)::toString);
    assertEquals(Status.PASSED, results.get(1).status());
  }

  @Test
  void aRefusedFileAloneIsNoFailure() throws IOException {
    assertEquals(3, runAll(write("bad.yaml", "id: x\n").toString()));
  }

  @Test
  void aTransientHasPictures() throws IOException {
    assertEquals(0, runAll(write("plate.yaml", TinyCases.TRANSIENT).toString()), out::toString);
    String html = Files.readString(folder.resolve("out/report.html"));
    assertEquals(3, html.split("<svg", -1).length);
    assertTrue(html.contains("verification (exact mathematics)"), html);
    assertTrue(html.contains("<td>rounding</td>"), html);
    assertTrue(html.contains("<td>a book</td>"), html);
    assertFalse(html.contains("http://") && html.contains("<script"), html);
    String markdown = Files.readString(folder.resolve("out/report.md"));
    assertTrue(markdown.contains("](plots/plate-1.svg)"), markdown);
    assertTrue(Files.readString(folder.resolve("out/plots/plate-2.svg")).contains("<svg"));
    assertTrue(results().contains("plate,middle,300.0,"), results());
  }

  @Test
  void digitsAreThoseOfThisFileInEveryLocale() throws IOException {
    String cases = write("plate.yaml", TinyCases.TRANSIENT).toString();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(0, runAll(cases), errors::toString);
    } finally {
      Locale.setDefault(before);
    }
    for (String name : List.of("report.html", "report.md", "results.csv", "plots/plate-1.svg")) {
      String text = Files.readString(folder.resolve("out").resolve(name));
      assertTrue(text.chars().noneMatch(c -> Character.isDigit(c) && c > '9'), name);
    }
    assertTrue(out.toString().chars().noneMatch(c -> Character.isDigit(c) && c > '9'));
  }

  @Test
  void wrongCommandLines() throws IOException {
    assertEquals(2, run("x.yaml"));
    assertTrue(errors.toString().contains("--out"), errors::toString);
    assertEquals(2, runAll("no-such-file.yaml"));
    assertTrue(errors.toString().contains("no-such-file.yaml: does not exist"), errors::toString);
    assertEquals(2, runAll(Files.createDirectory(folder.resolve("empty")).toString()));
    assertTrue(errors.toString().contains("holds no case file"), errors::toString);
    assertEquals(2, runAll("--refine", "-1", write("t.yaml", TinyCases.STEADY).toString()));
  }

  @Test
  void namesWithCommasAreQuoted() throws IOException {
    String text = TinyCases.STEADY.replace("cold", "\"T(1, 0)\"");
    assertEquals(0, runAll(write("tiny.yaml", text).toString()), out::toString);
    assertTrue(results().contains("tiny,\"T(1, 0)\",,"), results());
  }
}
