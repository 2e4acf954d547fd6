package stenotherm.validation.cases;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stenotherm.base.Face;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.Boundary;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.Probe;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.validation.studies.Study;

/**
 * A case as its file states it.
 *
 * @param heading what the case is
 * @param body the blocks and what drives them
 * @param run what is computed
 * @param probes the outputs; a {@link Probe.HeatFlow} stands for the heat flow out of the body, the
 *     negative of what the probe reads
 * @param references the values that outputs must have, at least one
 * @param mesh the mesh to start from; where empty, the runner chooses it
 */
record CaseFile(
    Study.Heading heading,
    Body body,
    RunPlan run,
    List<Probe> probes,
    List<Reference> references,
    Optional<MeshControl> mesh) {
  CaseFile {
    probes = List.copyOf(probes);
    references = List.copyOf(references);
  }

  /**
   * Blocks and what drives them.
   *
   * @param layout the blocks
   * @param boundaries the boundary of each face of the domain
   * @param environments the boundary of each environment
   * @param powers power of heated blocks [W]
   */
  record Body(
      Layout layout,
      Map<Face, Boundary> boundaries,
      Map<String, Boundary> environments,
      Map<String, TimeFunction> powers) {}

  String id() {
    return heading.id();
  }

  Probe probe(String name) {
    return probes.stream().filter(probe -> probe.name().equals(name)).findFirst().orElseThrow();
  }

  /** The problem on a mesh. */
  ConductionProblem problem(MeshControl control) {
    ConductionProblem.Builder builder = ConductionProblem.builder(body.layout(), control);
    body.boundaries().forEach(builder::boundary);
    body.environments().forEach(builder::boundary);
    body.powers().forEach(builder::source);
    run.history().ifPresent(history -> builder.initial(history.initial()));
    return builder.build();
  }
}
