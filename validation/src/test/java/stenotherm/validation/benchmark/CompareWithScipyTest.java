package stenotherm.validation.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import stenotherm.validation.cases.RunCases;

/** The comparison on a small problem: with stand-ins for Python, and with SciPy if it is there. */
class CompareWithScipyTest {
  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter errors = new StringWriter();

  private int run(Object command, String... arguments) {
    return new CommandLine(command)
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(errors, true))
        .execute(arguments);
  }

  /** A program in place of Python; the folder is its second argument. */
  private String standIn(String... lines) throws IOException {
    Path program = folder.resolve("stand-in");
    Files.writeString(program, "#!/bin/sh\n" + String.join("\n", lines) + "\n");
    assumeTrue(program.toFile().setExecutable(true), "no scripts of the shell here");
    return program.toString();
  }

  private int compare(String python) {
    return run(
        new CompareWithScipy(), "--quick", "--python", python, "--keep", kept("").toString());
  }

  private Path kept(String file) {
    return folder.resolve("kept").resolve(file);
  }

  /** What a script that solves the small problem leaves. */
  private static String result(double fineError) {
    String run = "{\"name\": \"%s\", \"processor\": %s, \"error\": %s, \"row\": [%s]}";
    String row = "\"TR-BDF2\"" + ", \"\"".repeat(9);
    String[] runs = {
      String.format(Locale.ROOT, run, "best", 40.5, 0.015, row),
      String.format(Locale.ROOT, run, "balanced", 50.5, 0.015, row),
      String.format(Locale.ROOT, run, "plain", 80.5, 0.2, row),
      String.format(Locale.ROOT, run, "default", 60.5, 0.2, row),
      String.format(Locale.ROOT, run, "fine", 2, fineError, row)
    };
    return "echo '{\"versions\": \"Python 0, NumPy 0, SciPy 0\", \"runs\": ["
        + String.join(", ", runs)
        + "], \"best\": [[290, 290, 290, 290], [290, 290, 290, 290]]}' > $2/result.json";
  }

  @Test
  void missingPythonIsSaid() {
    assertEquals(3, compare(folder.resolve("no-such-python").toString()));
    String text = out.toString();
    assertTrue(text.contains("NOT COMPARED: Python or SciPy is missing"), text);
    assertTrue(text.contains("apt-get install python3-scipy"), text);
    // what there is of our own is told all the same
    assertTrue(text.contains("ours, standard"), text);
  }

  @Test
  void missingScipyIsSaid() throws IOException {
    assertEquals(3, compare(standIn("echo \"No module named 'scipy'\" >&2", "exit 3")));
    assertTrue(out.toString().contains("missing (No module named 'scipy')"), out::toString);
  }

  @Test
  void aScriptThatGoesWrongIsAFailure() throws IOException {
    assertEquals(1, compare(standIn("echo it broke", "exit 7")));
    assertTrue(
        out.toString().contains("FAILED: the script ended with status 7: it broke."),
        out::toString);
    assertEquals(1, compare(standIn("exit 0")));
    assertTrue(out.toString().contains("FAILED: the script left no result.json."), out::toString);
  }

  @Test
  void tellsTimesAndDifferences() throws IOException {
    assertEquals(0, compare(standIn(result(0.001))), out::toString);
    String text = out.toString();
    assertTrue(text.contains("Both programs give the same answers."), text);
    assertTrue(text.contains("SciPy 40.50 s, "), text);
    assertTrue(text.contains("SciPy 80.50 s, "), text);
    assertTrue(text.contains("Python 0, NumPy 0, SciPy 0, one thread"), text);
    assertTrue(text.contains("SciPy, best"), text);
  }

  @Test
  void otherAnswersAreAFailure() throws IOException {
    assertEquals(1, compare(standIn(result(0.01))));
    assertTrue(out.toString().contains("FAILED: the answers differ"), out::toString);
  }

  @Test
  void theFilesHoldTheProblem() throws IOException {
    compare(folder.resolve("no-such-python").toString());
    JsonNode problem = new ObjectMapper().readTree(kept("problem.json").toFile());
    assertEquals("[\"animal\",\"warmer\"]", problem.get("outputs").toString());
    int cells =
        new ReferenceTransient(ReferenceTransient.fullMesh().scaled(0.99).scaled(8)).cells();
    assertEquals(cells, problem.get("cells").size());
    assertEquals(
        cells,
        IntStream.range(0, 3)
            .map(axis -> problem.get("lines").get(axis).size() - 1)
            .reduce(1, (a, b) -> a * b));
    assertEquals(0.45, problem.get("blocks").get(6).get("conductivity").asDouble());
    assertEquals("[\"insulation\"]", problem.get("thin").get(1).get("outside").toString());
    assertEquals(4, problem.get("reference").get(0).size());
    assertEquals(294.15, problem.get("reference").get(0).get(0).asDouble(), 1e-12);
    // up to the third hour; the first leg ends after two
    assertEquals("[[0.0,0.0],[7200.0,2.2]", problem.get("power").toString().substring(0, 23));
    assertEquals(
        "[[0.0,20.0],[7200.0,20.0],[7200.0,12.0],[10800.0,12.0]]",
        problem.get("films").get(0).toString());
  }

  @Test
  void theReportSaysWhatWasNotCompared() throws IOException {
    Path plate = folder.resolve("tiny.yaml");
    Files.writeString(plate, TINY);
    Path report = folder.resolve("out");
    assertEquals(0, run(new RunCases(), "--out", report.toString(), plate.toString()));
    String heading = "## Full solver and a program that uses SciPy";
    assertTrue(markdown(report).contains(heading), () -> markdown(report));
    assertTrue(markdown(report).contains("--scipy runs it"), () -> markdown(report));
    String python = folder.resolve("no-such-python").toString();
    String[] arguments = {
      "--scipy", "--quick", "--python", python, "--out", report.toString(), plate.toString()
    };
    assertEquals(0, run(new RunCases(), arguments), errors::toString);
    assertTrue(markdown(report).contains("NOT COMPARED"), () -> markdown(report));
    assertTrue(out.toString().contains("NOT COMPARED"), out::toString);
    assertFalse(markdown(report).contains("--scipy runs it"), () -> markdown(report));
  }

  private static String markdown(Path report) {
    try {
      return Files.readString(report.resolve("report.md"));
    } catch (IOException fault) {
      throw new java.io.UncheckedIOException(fault);
    }
  }

  private static final String TINY =
      """
      id: tiny
      title: a wall
      source: half way
      domain: {x: [0, 1], y: [0, 1], z: [0, 1]}
      blocks:
        - {name: wall, conductivity: 1}
      boundaries:
        xMin: {kind: temperature, value: 300}
        xMax: {kind: temperature, value: 280}
        yMin: {kind: adiabatic}
        yMax: {kind: adiabatic}
        zMin: {kind: adiabatic}
        zMax: {kind: adiabatic}
      run: {kind: steady}
      probes:
        - {name: middle, point: [0.5, 0.5, 0.5]}
      reference:
        - {probe: middle, value: 290, tolerance: 0.01, unit: K}
      """;

  /** Where SciPy is, the script itself solves the small problem. */
  @Test
  void scipyGivesTheSameAnswers() throws IOException, InterruptedException {
    assumeTrue(hasScipy(), "no python3 with SciPy here; scipy-comparison says so, too");
    assertEquals(0, compare("python3"), () -> out + log());
    assertTrue(out.toString().contains("SciPy, balanced"), out::toString);
  }

  private String log() {
    try {
      return Files.readString(kept("script.log"));
    } catch (IOException fault) {
      return fault.toString();
    }
  }

  private static boolean hasScipy() throws InterruptedException {
    try {
      return new ProcessBuilder("python3", "-c", "import scipy.sparse.linalg").start().waitFor()
          == 0;
    } catch (IOException missing) {
      return false;
    }
  }
}
