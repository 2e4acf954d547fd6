package stenotherm.validation.benchmark;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.grid.Block;
import stenotherm.grid.RectilinearGrid;

/**
 * The journey of {@link ReferenceTransient} as a file from which another program can solve it: grid
 * lines, materials and what drives it, no matrix, so that the other program's is its own. The
 * script {@code scipy-comparison.py} describes the file and reads it.
 *
 * @param grid the cells
 * @param end of the run [s], whole hours
 */
record ScipyProblem(RectilinearGrid grid, double end) {
  /** Their means are the outputs. */
  static final List<Probe> OUTPUTS =
      List.of(new Probe.Mean("animal", "animal"), new Probe.Mean("warmer", "warmer"));

  /** Times of the outputs [s]: every hour, zero first. */
  double[] outputTimes() {
    int last = (int) Math.round(Times.toHours(end));
    return IntStream.rangeClosed(0, last).mapToDouble(Times::fromHours).toArray();
  }

  /**
   * Writes the file problem.json.
   *
   * @param folder an existing folder
   * @param reference what the outputs should be
   * @throws IOException if the file cannot be written
   */
  void write(Path folder, TransientSolution reference) throws IOException {
    List<Block> blocks = grid.layout().blocks();
    Map<String, Object> content = new LinkedHashMap<>();
    content.put("lines", Arrays.stream(Axis.values()).map(grid::lines).toList());
    content.put("cells", IntStream.range(0, grid.cellCount()).map(grid::blockOf).toArray());
    content.put("blocks", blocks.stream().map(ScipyProblem::material).toList());
    content.put("thin", ReferenceTransient.thinResistances());
    Stream<Face> faces = Arrays.stream(Face.values());
    content.put("films", faces.map(face -> table(ReferenceTransient.film(face))).toList());
    content.put("ambient", table(ReferenceTransient.ambient()));
    content.put("heated", "warmer");
    content.put("power", table(ReferenceTransient.power()));
    content.put("start", Temperatures.fromCelsius(ReferenceTransient.START_CELSIUS));
    content.put("interval", Times.HOUR);
    content.put("outputs", OUTPUTS.stream().map(Probe::name).toList());
    content.put("reference", OUTPUTS.stream().map(p -> reference.history(p.name())).toList());
    new ObjectMapper().writeValue(folder.resolve("problem.json").toFile(), content);
  }

  private static Map<String, Object> material(Block block) {
    Block.Solid solid = (Block.Solid) block;
    return Map.of(
        "name", solid.name(),
        "conductivity", solid.material().conductivity(),
        "capacity", solid.material().volumetricHeatCapacity());
  }

  /** Rows of time and value; two rows at one time are a jump. */
  private List<double[]> table(TimeFunction function) {
    List<double[]> rows = new ArrayList<>();
    rows.add(new double[] {0, function.at(0)});
    for (double time : function.breakpoints(0, end)) {
      rows.add(new double[] {time, function.before(time)});
      if (function.at(time) != function.before(time)) {
        rows.add(new double[] {time, function.at(time)});
      }
    }
    rows.add(new double[] {end, function.before(end)});
    return rows;
  }
}
