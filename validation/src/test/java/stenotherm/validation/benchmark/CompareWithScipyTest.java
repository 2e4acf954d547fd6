package stenotherm.validation.benchmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
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

  /** Answers that lie beside the reference by a constant. */
  private String outputs(double off) {
    StringBuilder rows = new StringBuilder("time_s,best animal,best warmer\\n");
    for (int hour = 0; hour <= 3; hour++) {
      rows.append(3600 * hour).append(',').append(290 + off).append(",290\\n");
    }
    return "printf '" + rows + "' > $2/outputs.csv";
  }

  private static String runs(double fineError) {
    return "printf 'run,scheme,preconditioner,tolerance,step_s,steps,iterations,setup_s,processor_s,"
        + "wall_s,error_K,imbalance\\n"
        + "best,TR-BDF2,Jacobi,0.001 K,720,20,300,0.1,40.5,41,0.015,1e-4\\n"
        + "plain,implicit Euler,Jacobi,1e-08 relative,120,120,4000,0.1,80.5,81,0.2,1e-7\\n"
        + "fine,TR-BDF2,Jacobi,1e-05 K,450,32,900,0.1,2,2,"
        + fineError
        + ",\\n' > $2/runs.csv";
  }

  private static final String VERSIONS = "echo 'Python 0, NumPy 0, SciPy 0' > $2/versions.txt";

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
    assertTrue(out.toString().contains("FAILED: the script left no runs.csv."), out::toString);
  }

  @Test
  void tellsTimesAndDifferences() throws IOException {
    assertEquals(0, compare(standIn(runs(0.001), outputs(0), VERSIONS)), out::toString);
    String text = out.toString();
    assertTrue(text.contains("Both programs give the same answers."), text);
    assertTrue(text.contains("SciPy 40.50 s, "), text);
    assertTrue(text.contains("SciPy 80.50 s, "), text);
    assertTrue(text.contains("Python 0, NumPy 0, SciPy 0, one thread"), text);
    assertTrue(text.contains("SciPy, best"), text);
  }

  @Test
  void otherAnswersAreAFailure() throws IOException {
    assertEquals(1, compare(standIn(runs(0.01), outputs(0), VERSIONS)));
    assertTrue(out.toString().contains("FAILED: the answers differ"), out::toString);
  }

  @Test
  void theFilesHoldTheProblem() throws IOException {
    compare(folder.resolve("no-such-python").toString());
    String about = Files.readString(kept("problem.json"));
    assertTrue(about.contains("\"outputs\": [\"animal\", \"warmer\"]"), about);
    int cells = new ReferenceTransient(ReferenceTransient.fullMesh().scaled(8 * 0.99)).cells();
    double[] capacity = doubles(kept("capacity.npy"), "(" + cells + ",)");
    assertEquals(cells, capacity.length);
    assertTrue(Arrays.stream(capacity).allMatch(value -> value > 0));
    double[] reference = doubles(kept("reference.npy"), "(4, 2)");
    assertEquals(294.15, reference[0], 1e-12);
    // three rows of two hours at most, as the first leg ends after two
    double[] power = doubles(kept("source-0-power.npy"), "(3, 2)");
    assertEquals(
        List.of(0.0, 0.0, 7200.0, 2.2, 10800.0), Arrays.stream(power).limit(5).boxed().toList());
    double[] film = doubles(kept("boundary-0-coefficient.npy"), "(4, 2)");
    assertEquals(
        List.of(0.0, 20.0, 7200.0, 20.0, 7200.0, 12.0),
        Arrays.stream(film).limit(6).boxed().toList());
  }

  private static double[] doubles(Path file, String shape) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
    int header = bytes.getShort(8);
    assertEquals(0, (10 + header) % 64);
    String text = new String(bytes.array(), 10, header, StandardCharsets.US_ASCII);
    assertTrue(text.contains("'descr': '<f8'") && text.contains("'shape': " + shape), text);
    bytes.position(10 + header);
    double[] values = new double[bytes.remaining() / 8];
    bytes.asDoubleBuffer().get(values);
    return values;
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
