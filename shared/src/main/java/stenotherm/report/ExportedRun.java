package stenotherm.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.ProgressListener;
import stenotherm.conduction.VtkFile;
import stenotherm.grid.Block;
import stenotherm.parcel.Container;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.scenario.Scenario;
import stenotherm.transit.Snapshot;
import stenotherm.transit.Transit;
import stenotherm.transit.TransitResult;
import stenotherm.transit.TransitSettings;
import stenotherm.transit.Variation;
import stenotherm.words.CsvText;

/**
 * One run of a packing with everything as stated, for programs that draw and compute: histories as
 * CSV, the fields of its coldest and its hottest moment as VTK. SI units, all digits.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 */
public final class ExportedRun implements Answer {
  /** All histories, a column each, a line for each stored time. */
  public static final String HISTORY = "history.csv";

  /** The field when the cold margin of an animal is smallest. */
  public static final String COLDEST = "coldest.vtk";

  /** The field when the hot margin of an animal is smallest. */
  public static final String HOTTEST = "hottest.vtk";

  /** What the numbers of blocks in the fields stand for, and when the fields are. */
  public static final String SUMMARY = "export.json";

  /** Names of all files. */
  public static final List<String> FILES = List.of(SUMMARY, HISTORY, COLDEST, HOTTEST);

  private final Scenario scenario;
  private final TransitResult run;

  private ExportedRun(Scenario scenario, TransitResult run) {
    this.scenario = scenario;
    this.run = run;
  }

  /**
   * Runs a packing.
   *
   * @param scenario the scenario
   * @param parcel the packing of it that is meant
   * @param settings how finely
   * @param listener told how far the run is; may stop it
   * @return the run
   * @throws stenotherm.base.InvalidInputException if the packing has no animal
   * @throws IllegalStateException if the run failed or was stopped
   */
  public static ExportedRun of(
      Scenario scenario, Parcel parcel, TransitSettings settings, ProgressListener listener) {
    return new ExportedRun(
        scenario,
        Transit.run(parcel, scenario.journey(), Variation.NOMINAL, settings, listener)
            .requireCompleted());
  }

  /** Histories by the heads of their columns, which end in the unit. */
  private Map<String, double[]> columns() {
    Map<String, double[]> all = new LinkedHashMap<>();
    double[] times = run.times();
    all.put("time_s", times);
    all.put("ambient_K", Arrays.stream(times).map(run.journey()::ambientAt).toArray());
    for (Container cup : run.parcel().containers()) {
      all.put(cup.name() + " air_K", run.airIn(cup.name()));
    }
    for (Container cup : run.parcel().occupied()) {
      String name = cup.name();
      all.put(name + " animal_mean_K", run.mean(name));
      all.put(name + " animal_coldest_K", run.coldest(name));
      all.put(name + " animal_hottest_K", run.hottest(name));
      all.put(name + " coldest_place_in_reach_K", run.coldestPlace(name));
      all.put(name + " hottest_place_in_reach_K", run.hottestPlace(name));
      all.put(name + " oxygen_mole_fraction", run.oxygen(name));
      all.put(name + " carbon_dioxide_mole_fraction", run.carbonDioxide(name));
      all.put(name + " relative_humidity", run.humidity(name));
    }
    for (PlacedWarmer warmer : run.parcel().warmers()) {
      String name = warmer.name();
      all.put(name + " power_W", run.power(name));
      double[] conversion = run.conversion(name);
      if (conversion.length > 0) {
        all.put(name + " conversion", conversion);
      }
      all.put(name + " hottest_K", run.hottest(name));
    }
    for (PlacedPack pack : run.parcel().packs()) {
      if (pack.pack().melts()) {
        all.put(pack.name() + " liquid_fraction", run.liquidFraction(pack.name()));
      }
    }
    for (Face face : Face.values()) {
      all.put(face.words() + " surface_K", run.surface(face));
      all.put(face.words() + " heat_in_W", run.heatFlow(face));
    }
    return all;
  }

  private String history() {
    Map<String, double[]> columns = columns();
    StringBuilder text = new StringBuilder();
    text.append(String.join(",", columns.keySet().stream().map(CsvText::field).toList()));
    for (int row = 0; row < run.times().length; row++) {
      char before = '\n';
      for (double[] column : columns.values()) {
        text.append(before).append(column[row]);
        before = ',';
      }
    }
    return text.append('\n').toString();
  }

  private static String field(Snapshot moment, String which) {
    StringBuilder text = new StringBuilder();
    try {
      VtkFile.write(moment.field(), which + " moment, " + moment.time() + " s since sealing", text);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  @Override
  public void print(PrintWriter out) {
    out.println(
        "Packing '"
            + run.parcel().name()
            + "' on its journey of "
            + Words.hours(run.journey().duration())
            + " h, everything as stated: "
            + run.times().length
            + " times in "
            + HISTORY
            + "; "
            + run.cells()
            + " cells at the coldest and the hottest moment of its animals in "
            + COLDEST
            + " and "
            + HOTTEST
            + ". SI units. One run tells nothing of the odds: it is no verdict.");
  }

  @Override
  public String json() {
    ObjectNode root = JsonText.object();
    root.put("format", 2);
    root.put("title", scenario.title());
    root.put("packing", run.parcel().name());
    root.put("engine", run.engine());
    root.put("cells", run.cells());
    root.put("dated", scenario.plan().isDated());
    root.put("sealed_local", DataFiles.clock(run.journey(), 0, new Words(scenario)));
    root.put("coldest_moment_s", run.coldestMoment().time());
    root.put("hottest_moment_s", run.hottestMoment().time());
    ArrayNode blocks = root.putArray("blocks");
    for (Block block : run.parcel().layout().blocks()) {
      ObjectNode one = blocks.addObject();
      one.put("name", block.name());
      ArrayNode low = one.putArray("low_m");
      ArrayNode high = one.putArray("high_m");
      for (Axis axis : Axis.values()) {
        low.add(block.box().at(Face.of(axis, false)));
        high.add(block.box().at(Face.of(axis, true)));
      }
    }
    return JsonText.of(root);
  }

  @Override
  public Map<String, byte[]> files(boolean pictures) {
    Map<String, byte[]> all = new LinkedHashMap<>();
    all.put(SUMMARY, json().getBytes(StandardCharsets.UTF_8));
    all.put(HISTORY, history().getBytes(StandardCharsets.UTF_8));
    all.put(COLDEST, field(run.coldestMoment(), "coldest").getBytes(StandardCharsets.UTF_8));
    all.put(HOTTEST, field(run.hottestMoment(), "hottest").getBytes(StandardCharsets.UTF_8));
    return all;
  }
}
