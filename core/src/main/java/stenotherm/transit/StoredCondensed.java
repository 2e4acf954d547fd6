package stenotherm.transit;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import stenotherm.modal.ModelFormatException;
import stenotherm.modal.ReducedModel;
import stenotherm.modal.StoredForm;
import stenotherm.modal.StoredNumbers;

/**
 * Writes and reads the form in which a condensed model is stored beside the model that it was made
 * of.
 *
 * <pre>
 * long      0x5354454E434F4E44, "STENCOND"
 * int       version, 1
 * the smaller model, see the documentation of the package modal
 * rows of numbers, see {@link StoredNumbers}:
 *   error of the model [K], number of stages, 1 if stages are forecast or else 0
 *   for each stage of the usual run
 *     position of its leg, its beginning and its end [s]
 *     temperature of each block that varies at the beginning [K]
 *     conditions, see {@link Course#conditions}
 *     mean temperature of each boundary's surface [K]
 *     mean temperature of each block that varies [K]
 *     if stages are forecast, weights for each surface and for each block, a row each
 * </pre>
 */
final class StoredCondensed {
  private static final long MAGIC = 0x5354454E434F4E44L;
  private static final int VERSION = 1;

  /** The maps have another order in each run of a program; what is stored has one. */
  private static final Comparator<Stage> ORDER =
      Comparator.comparingInt(Stage::leg).thenComparingDouble(Stage::from);

  private StoredCondensed() {}

  /**
   * What is stored.
   *
   * @param small the smaller model
   * @param usual what the usual run met in each stage
   * @param forecasts forecasts of the same stages, or none
   * @param error largest difference to the model that was condensed [K]
   */
  record Content(
      ReducedModel small,
      Map<Stage, StageForecast.Met> usual,
      Map<Stage, StageForecast> forecasts,
      double error) {}

  static void write(Content content, DataOutput out) throws IOException {
    out.writeLong(MAGIC);
    out.writeInt(VERSION);
    content.small.write(out);
    List<double[]> rows = new ArrayList<>();
    boolean forecast = !content.forecasts.isEmpty();
    rows.add(new double[] {content.error, content.usual.size(), forecast ? 1 : 0});
    for (Stage stage : content.usual.keySet().stream().sorted(ORDER).toList()) {
      StageForecast.Met met = Objects.requireNonNull(content.usual.get(stage));
      rows.add(new double[] {stage.leg(), stage.from(), stage.to()});
      rows.add(met.atStart());
      rows.add(met.conditions());
      rows.add(met.means().surfaces());
      rows.add(met.means().blocks());
      StageForecast weights = content.forecasts.get(stage);
      if (weights != null) {
        rows.addAll(List.of(weights.ofSurfaces()));
        rows.addAll(List.of(weights.ofBlocks()));
      }
    }
    StoredNumbers.write(rows, out);
  }

  static Content read(DataInput in, ParcelBody body) throws IOException {
    StoredForm.readHead(in, MAGIC, VERSION, "this is no stored condensed model");
    ReducedModel small = ReducedModel.read(in);
    Rows rows = new Rows(StoredNumbers.read(in).iterator());
    double[] head = rows.next("head", 3);
    int blocks = body.varying().size();
    int surfaces = body.ports().size();
    Map<Stage, StageForecast.Met> usual = new LinkedHashMap<>();
    Map<Stage, StageForecast> forecasts = new LinkedHashMap<>();
    for (int left = (int) head[1]; left > 0; left--) {
      double[] times = rows.next("stage", 3);
      Stage stage = new Stage((int) times[0], times[1], times[2]);
      double[] atStart = rows.next("blocks at the beginning", blocks);
      double[] conditions = rows.next("conditions", Course.CONDITIONS);
      Temperatures means =
          new Temperatures(
              rows.next("mean surfaces", surfaces), rows.next("mean of blocks", blocks));
      StageForecast.Met met = new StageForecast.Met(atStart, conditions, means);
      usual.put(stage, met);
      if (head[2] != 0) {
        double[][] ofSurfaces = rows.next("weights", surfaces, 1 + Course.CONDITIONS);
        double[][] ofBlocks = rows.next("weights", blocks, 1 + Course.CONDITIONS);
        forecasts.put(stage, new StageForecast(met, ofSurfaces, ofBlocks));
      }
    }
    return new Content(small, usual, forecasts, head[0]);
  }

  /** Takes row after row, each of the length that the packing asks for. */
  private record Rows(Iterator<double[]> left) {
    double[] next(String field, int length) throws ModelFormatException {
      double[] row = left.hasNext() ? left.next() : new double[0];
      if (row.length != length) {
        throw new ModelFormatException(
            field, 0, row.length + " numbers where the packing has " + length);
      }
      return row;
    }

    double[][] next(String field, int count, int length) throws ModelFormatException {
      double[][] rows = new double[count][];
      for (int n = 0; n < count; n++) {
        rows[n] = next(field, length);
      }
      return rows;
    }
  }
}
