package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import stenotherm.grid.MeshControl;
import stenotherm.text.Document;
import stenotherm.validation.cases.CaseResult.Status;

/** How a case is refined, and how it ends. */
class CaseRunnerTest {
  /** So long that no machine is too slow. */
  private static final double HOUR = 3600;

  private static final Limits SMALL = new Limits(200_000, 1L << 30, HOUR);

  /** A column whose sides are at two temperatures: the field has a jump at a corner. */
  private static final String COLUMN =
      TinyCases.STEADY
          .replace("yMax: {kind: adiabatic}", "yMax: {kind: temperature, value: 280}")
          .replace("- {name: out, heatOut: xMax}", "- {name: out, mean: wall}")
          .replace(
              "value: 24.4090909, tolerance: 1 %, unit: W", "value: 285, tolerance: 20, unit: K")
          .replace("point: [1, 0.5, 0.5]", "point: [0.5, 0.5, 0.5]");

  private static CaseFile read(String text) {
    return CaseReader.read(Document.parse("case.yaml", text));
  }

  private static CaseResult run(String text, Limits limits, int refine) {
    return CaseRunner.run(read(text), limits, refine, line -> {});
  }

  @Test
  void aCaseThatAnyGridSolvesEndsAfterThreeGrids() {
    CaseResult result = run(TinyCases.STEADY, SMALL, 0);
    assertEquals(Status.PASSED, result.status());
    assertEquals(3, result.grids().size());
    ValueResult cold = result.values().get(0);
    assertEquals(275.590909, cold.computed(), 1e-6);
    assertEquals(0, cold.accuracy().estimate(), 1e-6);
    assertEquals(Targets.SMOOTH, cold.accuracy().target());
    assertEquals(24.4090909, result.values().get(1).computed(), 1e-6);
  }

  @Test
  void noHeatPassesAnAdiabaticFace() {
    for (String text : List.of(TinyCases.STEADY, TinyCases.TRANSIENT)) {
      String adiabatic =
          text.replace("reference:\n", "  - {name: side, heatOut: zMax}\nreference:\n");
      CaseResult result =
          run(
              adiabatic
                  + "  - {probe: side, value: 0, tolerance: 0.001, unit: W"
                  + (text.equals(TinyCases.STEADY) ? "}\n" : ", time: 300}\n"),
              SMALL,
              0);
      assertEquals(Status.PASSED, result.status(), result::toString);
      ValueResult side = result.values().get(result.values().size() - 1);
      assertEquals(0.0, side.computed());
      assertEquals(0.0, side.accuracy().estimate());
    }
  }

  /** Planes so close that the lines of one grid tell them apart and those of the next do not. */
  @Test
  void planesThatNearlyCoincideHaveASeriesOfMeshes() {
    String close =
        TinyCases.STEADY.replace(
            "- {name: wall, conductivity: 1}\n",
            """
            - {name: wall, conductivity: 1}
              - {name: b, conductivity: 5, x: [0.11665054992749802, 0.11665055084331775],
                 y: [0, 1], z: [0, 1]}
              - {name: c, conductivity: 5, x: [0.11665055045104519, 0.11665055175913751],
                 y: [0, 1], z: [0, 1]}
            """);
    assertEquals(1, MeshSeries.of(read(close)).size());
  }

  @Test
  void refineAddsGrids() {
    assertEquals(5, run(TinyCases.STEADY, SMALL, 2).grids().size());
  }

  @Test
  void progressIsToldGridByGrid() {
    List<String> lines = new ArrayList<>();
    CaseRunner.run(read(TinyCases.STEADY), SMALL, 0, lines::add);
    assertEquals(3, lines.size());
    assertTrue(lines.get(2).matches("tiny: grid 3, [0-9]+ cells, .* s, estimate .* at .*"));
  }

  @Test
  void theCaseInTheReadmePasses() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    int start = readme.indexOf("```yaml\nid: ") + "```yaml\n".length();
    CaseResult result = run(readme.substring(start, readme.indexOf("```", start)), SMALL, 0);
    assertEquals(Status.PASSED, result.status());
  }

  @Test
  void aWrongValueFails() {
    CaseResult result = run(TinyCases.wrong(), SMALL, 0);
    assertEquals(Status.FAILED, result.status());
    assertEquals(-0.409091, result.values().get(0).error(), 1e-5);
    assertTrue(result.values().get(1).passed());
  }

  @Test
  void aCaseThatMeetsTheCellLimitSaysHowFarItGot() {
    CaseResult result = run(COLUMN, new Limits(1_500, 1L << 30, HOUR), 0);
    assertEquals(Status.NOT_CONVERGED, result.status());
    String problem = result.problem().orElseThrow();
    assertTrue(problem.matches("not converged: .*limit of 1,500 cells"), problem);
  }

  @Test
  void aCaseThatMeetsTheTimeLimitSaysSo() {
    CaseResult result = run(TinyCases.TRANSIENT, new Limits(200_000, 1L << 30, 0), 0);
    assertEquals(Status.NOT_CONVERGED, result.status());
    assertFalse(result.values().get(0).passed());
    assertTrue(result.problem().orElseThrow().contains("limit of 0 s"));
  }

  /** Layers of 0.02 mm: many cells, whose grids and solutions take longer than the limit. */
  private static final String THIN =
      COLUMN.replace(
          "- {name: wall, conductivity: 1}",
          "- {name: wall, conductivity: 1}\n"
              + "  - {name: thin, conductivity: 0.01, x: [0.5, 0.50002], y: [0.5, 0.50002],"
              + " z: [0.3, 0.30002]}");

  @Test
  void theLimitOfTimeHoldsWhereverACaseMeetsIt() {
    for (double seconds = 0.002; seconds < 0.4; seconds *= 1.3) {
      CaseResult result = run(THIN, new Limits(2_000_000, 4L << 30, seconds), 5);
      assertEquals(Status.NOT_CONVERGED, result.status());
      String problem = result.problem().orElseThrow();
      assertTrue(problem.contains("ended at the limit of"), problem);
      assertFalse(Thread.currentThread().isInterrupted(), "the limit takes its interrupt back");
    }
  }

  /** Two seconds of its thread's processor time: how fast the clock runs depends on others. */
  @Test
  @SuppressWarnings("deprecation") // the other name of a thread's number came with Java 19
  void anInterruptStopsACaseWithinTwoSeconds() throws InterruptedException {
    ThreadMXBean times = ManagementFactory.getThreadMXBean();
    AtomicReference<RuntimeException> end = new AtomicReference<>();
    AtomicLong atEnd = new AtomicLong();
    Thread thread =
        new Thread(
            () -> {
              try {
                run(THIN, new Limits(2_000_000, 4L << 30, 60), 5);
              } catch (CancellationException stop) {
                end.set(stop);
                atEnd.set(times.getCurrentThreadCpuTime());
              }
            });
    thread.start();
    Thread.sleep(1500);
    assertTrue(thread.isAlive(), "the case takes longer than that");
    long interrupted = times.getThreadCpuTime(thread.getId());
    thread.interrupt();
    thread.join();
    assertInstanceOf(CancellationException.class, end.get());
    double seconds = 1e-9 * (atEnd.get() - interrupted);
    assertTrue(seconds <= 2, seconds + " s");
  }

  @Test
  void aCaseThatMeetsTheMemoryLimitSaysSo() {
    CaseResult result = run(COLUMN, new Limits(200_000, 500_000, HOUR), 0);
    assertEquals(Status.NOT_CONVERGED, result.status());
    assertTrue(result.problem().orElseThrow().contains("GB of memory"));
  }

  @Test
  void anOpenTemperatureLevelIsRefused() {
    String floating =
        TinyCases.STEADY
            .replace("xMin: {kind: temperature, value: 300}", "xMin: {kind: adiabatic}")
            .replace(
                "xMax: {kind: convection, coefficient: 10, ambient: 273.15}",
                "xMax: {kind: flux, value: 0}");
    CaseResult result = run(floating, SMALL, 0);
    assertEquals(Status.REFUSED, result.status());
    assertTrue(result.problem().orElseThrow().contains("temperature level"));
  }

  @Test
  void aTransientEstimatesTheErrorOfItsSteps() {
    CaseResult result = run(TinyCases.TRANSIENT, SMALL, 0);
    for (ValueResult value : result.values()) {
      assertTrue(value.isConverged(), value::toString);
      assertTrue(value.accuracy().steps() > 0, value::toString);
      assertTrue(value.accuracy().steps() < value.accuracy().target(), value::toString);
    }
    assertTrue(result.steps() > 0);
    // temperatures and heat flows
    assertEquals(2, result.pictures().size());
  }

  @Test
  void aCoarseTimeToleranceOfTheFileIsKeptAndNamed() {
    // so slow a plate needs no short steps: with a strong film its surface follows the ambient
    String coarse =
        TinyCases.TRANSIENT
            .replace("until: 600", "until: 600, timeTolerance: 5")
            .replace("coefficient: 5", "coefficient: 50")
            .replace("amplitude: 5", "amplitude: 50");
    CaseResult result = run(coarse, SMALL, 0);
    assertEquals(Status.NOT_CONVERGED, result.status(), result::toString);
    assertTrue(result.problem().orElseThrow().contains("make timeTolerance smaller"));
  }

  @Test
  void theMeshOfAFileIsTheThirdOne() {
    CaseFile file = read(TinyCases.STEADY + "mesh: {largestCell: 0.01}\n");
    CaseResult result = CaseRunner.run(file, SMALL, 0, line -> {});
    int cells = file.problem(MeshControl.uniform(0.01)).network().grid().cellCount();
    assertEquals(cells, result.cells());
    assertEquals(3, result.grids().size());
  }

  /** Grids of cells half as wide each, with made-up values of both probes. */
  private static List<ValueResult> ofGrids(double[] first, double[] second) {
    CaseFile file = read(TinyCases.STEADY);
    Attempt attempt = new Attempt(file, MeshSeries.of(file).get(0), new Targets(file));
    double width = 1;
    for (int grid = 0; grid < first.length; grid++) {
      attempt.add(width, new GridRun(1, 0, List.of(first[grid], second[grid]), 0));
      width /= 2;
    }
    return attempt.values(List.of(0.0, 0.0));
  }

  @Test
  void valuesThatOrderAreExtrapolatedAndOthersHaveABound() {
    List<ValueResult> values =
        ofGrids(new double[] {276.8, 276.4, 276.2}, new double[] {24, 26, 25});
    ValueResult first = values.get(0);
    assertEquals(276, first.computed(), 1e-9);
    assertEquals(1, first.accuracy().order(), 1e-9);
    // two thirds of the correction, 0.2: second order would have corrected a third of it
    assertEquals(0.2 * 2 / 3, first.accuracy().grid(), 1e-9);
    assertFalse(first.accuracy().isBound());
    ValueResult second = values.get(1);
    assertEquals(25, second.computed());
    assertTrue(second.accuracy().isBound());
    assertEquals(1.25 * 2, second.accuracy().grid(), 1e-9);
  }

  @Test
  void twoGridsTellNoError() {
    ValueResult first = ofGrids(new double[] {276.8, 276.4}, new double[] {24, 26}).get(0);
    assertEquals(276.4, first.computed());
    assertTrue(Double.isNaN(first.accuracy().estimate()));
    assertFalse(first.isConverged());
  }

  @Test
  void cornersHaveTheirOwnTarget() {
    CaseFile file =
        read(
            COLUMN
                .replace("point: [0.5, 0.5, 0.5]", "point: [1, 1, 0.5]")
                .replace("mean: wall", "max: wall"));
    Targets targets = new Targets(file);
    List<Double> values = List.of(280.0, 300.0);
    assertEquals(Targets.SINGULAR, targets.of(0, values));
    assertEquals(Targets.SINGULAR, targets.of(1, values));
    // an end of the body where nothing passes is a plane of symmetry, not an edge
    CaseFile side = read(COLUMN.replace("point: [0.5, 0.5, 0.5]", "point: [1, 0, 0.5]"));
    assertEquals(Targets.SMOOTH, new Targets(side).of(0, values));
  }
}
