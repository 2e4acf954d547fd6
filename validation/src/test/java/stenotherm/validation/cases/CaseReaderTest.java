package stenotherm.validation.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.Face;
import stenotherm.base.Sinusoid;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.Probe;
import stenotherm.grid.MeshControl;
import stenotherm.text.Document;
import stenotherm.text.TextFormatException;
import stenotherm.validation.studies.Study;

/** The case file: what it means, and what is said of a bad one. */
class CaseReaderTest {
  private static CaseFile read(String text) {
    return CaseReader.read(Document.parse("case.yaml", text));
  }

  private static String fault(String text) {
    return String.valueOf(assertThrows(TextFormatException.class, () -> read(text)).getMessage());
  }

  @Test
  void transientCase() {
    CaseFile file = read(TinyCases.TRANSIENT);
    assertEquals("plate", file.id());
    assertEquals(Study.Kind.VERIFICATION, file.heading().kind());
    assertEquals(
        List.of("middle", "mean", "out"), file.probes().stream().map(Probe::name).toList());
    RunPlan.Transient run = assertInstanceOf(RunPlan.Transient.class, file.run());
    assertEquals(new RunPlan.Transient(293.15, 600, OptionalDouble.empty()), run);
    Boundary.Convection film =
        assertInstanceOf(Boundary.Convection.class, file.body().boundaries().get(Face.X_MIN));
    assertEquals(5, film.coefficient().at(0));
    assertEquals(new Sinusoid(290, new Sinusoid.Wave(5, 600, 0.5)), film.ambient());
    assertEquals(3, file.body().powers().get("plate").at(150), 1e-12);
    Reference reference = file.references().get(0);
    assertEquals(OptionalDouble.of(300), reference.time());
    assertEquals(0.2, reference.expected().tolerance(), 1e-12);
    assertEquals("°C", reference.expected().unit().label());
    assertEquals("rounding", reference.why());
    // a reference without a source of its own has that of the case
    assertEquals("made up", reference.source());
  }

  @Test
  void steadyCaseNeedsNoStorageAndNoTime() {
    CaseFile file = read(TinyCases.STEADY);
    assertInstanceOf(RunPlan.Steady.class, file.run());
    assertEquals(OptionalDouble.empty(), file.references().get(0).time());
    assertTrue(file.mesh().isEmpty());
  }

  @Test
  void jsonIsYaml() {
    CaseFile file =
        read(
            """
            {"id": "j", "title": "t", "source": "s",
             "domain": {"x": [0, 1], "y": [0, 1], "z": [0, 1]},
             "blocks": [{"name": "b", "conductivity": 1}],
             "boundaries": {"xMin": {"kind": "temperature", "value": 300},
               "xMax": {"kind": "flux", "value": 10},
               "yMin": {"kind": "adiabatic"}, "yMax": {"kind": "adiabatic"},
               "zMin": {"kind": "adiabatic"}, "zMax": {"kind": "adiabatic"}},
             "run": {"kind": "steady"},
             "probes": [{"name": "p", "point": [1, 0.5, 0.5]}],
             "reference": [{"probe": "p", "value": 310, "tolerance": 0.01, "unit": "K"}],
             "mesh": {"largestCell": 0.1, "firstCell": 0.05, "growth": 1.2}}
            """);
    assertEquals(new MeshControl(0.1, 0.05, 1.2), file.mesh().orElseThrow());
    assertEquals(Study.Kind.UNSTATED, file.heading().kind());
  }

  @Test
  void unitsPerLengthAndAreaFollowFromTheGeometry() {
    String text =
        TinyCases.STEADY
            .replace("z: [0, 1]}\nblocks", "z: [0, 2]}\nblocks")
            .replace("z: [0, 1]", "z: [0, 2]")
            .replace(
                "yMax: {kind: adiabatic}", "yMax: {kind: convection, coefficient: 1, ambient: 290}")
            .replace("unit: W}", "unit: W/m}");
    assertEquals(2, read(text).references().get(1).expected().unit().divisor());
    assertEquals(
        0.5,
        read(TinyCases.STEADY
                .replace("y: [0, 1]", "y: [0, 0.5]")
                .replace("0.5, 0.5]", "0.1, 0.5]")
                .replace("unit: W}", "unit: W/m2}"))
            .references()
            .get(1)
            .expected()
            .unit()
            .divisor());
    assertTrue(
        fault(TinyCases.STEADY.replace("unit: W}", "unit: W/m}"))
            .contains("needs one axis along which nothing varies, here there are 2"));
  }

  /** What is replaced in the steady case, by what, and what the message must then say. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "conductivity: 1|conductivty: 1|Did you mean 'conductivity'?",
        "conductivity: 1|density: 5|case.yaml:6:5: blocks[0].conductivity: is missing and must be given",
        "kind: steady|kind: stedy|Did you mean 'steady'?",
        "kind: steady|kind: steady, until: 5|run.until: belongs to a transient case",
        "kind: steady|kind: transient|blocks[0].density: is missing",
        "coefficient: 10, ambient: 273.15|coefficient: 10, ambient: 0|Temperatures are absolute",
        "coefficient: 10, ambient: 273.15|coefficient: -1, ambient: 273.15|boundaries.xMax.coefficient",
        "coefficient: 10, ambient: 273.15|coefficient: 10|boundaries.xMax.ambient: is missing",
        "coefficient: 10, ambient: 273.15|coefficient: 10, ambient: 273.15, value: 1|unknown key",
        "coefficient: 10, ambient: 273.15|coefficient: 10, ambient: [[0, 280], [10, 290]]|varies in time",
        "zMax: {kind: adiabatic}|zmax: {kind: adiabatic}|Did you mean 'zMax'?",
        "probe: cold|probe: colt|Did you mean 'cold'?",
        "probe: cold, value|probe: cold, time: 5, value|a steady case has no time",
        "tolerance: 0.01|tolerance: -1|reference[0].tolerance",
        "tolerance: 0.01, unit: K|tolerance: 0.01, unit: F|unknown name 'F'",
        "point: [1, 0.5, 0.5]|point: [1.5, 0.5, 0.5]|lies outside the domain",
        "point: [1, 0.5, 0.5]|point: [1, 0.5]|must have 3 items",
        "point: [1, 0.5, 0.5]|point: [1, 0.5, 0.5], mean: wall|must have exactly one of",
        "heatOut: xMax|heatOut: xMay|Did you mean 'xMax'?",
        "heatOut: xMax|mean: walls|Did you mean 'wall'?",
        "id: tiny|id: a/b|must be made of letters",
        "id: tiny|id: tiny\\nformat: 1|must be the first key",
        "x: [0, 1]|x: [1, 0]|the end must be larger than the start",
        "x: [0, 1]|x: 1|must be a list",
        "conductivity: 1|conductivity: 1, x: [0, 0.5]|the first block fills the domain",
        "conductivity: 1|environment: {coefficient: 5, ambient: 280}|lies inside an environment",
      })
  void badCases(String part, String replacement, String message) {
    String good = TinyCases.STEADY;
    assertTrue(good.contains(part), part);
    String fault = fault(good.replace(part, replacement.replace("\\n", "\n")));
    assertTrue(fault.startsWith("case.yaml:"), fault);
    assertTrue(fault.contains(message), fault);
  }

  @Test
  void anInfiniteHeatFlowIsRefused() {
    String corner =
        TinyCases.STEADY
            .replace(
                "xMax: {kind: convection, coefficient: 10, ambient: 273.15}",
                "xMax: {kind: temperature, value: 280}")
            .replace("yMax: {kind: adiabatic}", "yMax: {kind: temperature, value: 290}");
    String fault = fault(corner);
    assertTrue(fault.contains("probes[1]"), fault);
    assertTrue(fault.contains("jumps where xMax meets yMax"), fault);
    assertTrue(fault.contains("infinite"), fault);
    // the same temperature on both faces is no jump
    assertEquals(2, read(corner.replace("290}", "280}")).probes().size());
  }

  @Test
  void aHeatFlowAtTheInstantOfAJumpIsRefused() {
    String text =
        TinyCases.TRANSIENT
            .replace(
                "xMax: {kind: adiabatic}",
                "xMax: {kind: temperature, value: [[0, 290], [300, 290], [300, 280]]}")
            .replace("heatOut: xMin", "heatOut: xMax");
    // 300 s after the jump the flow is finite
    assertEquals(3, read(text.replace("out, time: 300", "out, time: 600")).probes().size());
    assertTrue(fault(text).contains("jumps at 300.0 s"), fault(text));
    assertTrue(fault(text.replace("out, time: 300", "out, time: 0")).contains("jumps at 0.0 s"));
  }

  @Test
  void laterBlocksOverride() {
    String hidden =
        TinyCases.STEADY.replace(
            "conductivity: 1}",
            "conductivity: 1}\n  - {name: cover, x: [0, 1], y: [0, 1], z: [0, 1], conductivity: 2}");
    assertTrue(fault(hidden.replace("heatOut: xMax", "mean: wall")).contains("has nothing left"));
    assertTrue(
        fault(hidden.replace("{name: cover, x: [0, 1]", "{name: cover, x: [0, 1.5]"))
            .contains("blocks[1]: block 'cover': sticks out"));
  }
}
