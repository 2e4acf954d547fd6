package stenotherm.validation.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import stenotherm.conduction.ConductionProblem;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.conduction.Probe;
import stenotherm.conduction.TransientSolution;
import stenotherm.conduction.TransientSolver;
import stenotherm.picture.HistoryChart;
import stenotherm.picture.Picture;

/** Draws the histories of a transient case, with the reference values as circles. */
final class CaseCharts {
  /** Most cells of the grid that the curves are computed on again, with many stored times. */
  static final int MOST_CELLS = 20_000;

  private static final int SAMPLES = 150;

  private CaseCharts() {}

  /** One chart of the temperatures and one of the heat flows, as far as the case has any. */
  static List<Picture> of(CaseFile file, ConductionProblem problem, double stepTolerance) {
    double until = ((RunPlan.Transient) file.run()).until();
    TreeSet<Double> times = new TreeSet<>();
    for (int sample = 0; sample <= SAMPLES; sample++) {
      times.add(until * sample / SAMPLES);
    }
    file.references().forEach(reference -> times.add(reference.time().orElse(0)));
    TransientSolution solution =
        TransientSolver.solve(
            problem,
            file.probes(),
            times.stream().mapToDouble(Double::doubleValue).toArray(),
            IntegratorSettings.adaptive(stepTolerance));
    if (!solution.outcome().isCompleted()) {
      return List.of();
    }
    String grid =
        String.format(
            Locale.ROOT,
            "Curves: computed on %,d cells. Circles: reference values.",
            problem.network().grid().cellCount());
    List<Picture> pictures = new ArrayList<>();
    chart(file, solution, false, grid, pictures);
    chart(file, solution, true, grid, pictures);
    return pictures;
  }

  private static void chart(
      CaseFile file,
      TransientSolution solution,
      boolean heatFlows,
      String grid,
      List<Picture> pictures) {
    List<Probe> probes =
        file.probes().stream().filter(probe -> probe.isHeatFlow() == heatFlows).toList();
    if (probes.isEmpty()) {
      return;
    }
    HistoryChart.Builder chart =
        HistoryChart.titled(
                file.heading().title(),
                heatFlows ? "heat flow out of the body [W]" : "temperature [°C]")
            .subtitle(grid);
    double[] times = solution.times();
    for (Probe probe : probes) {
      double[] history = solution.history(probe.name());
      List<HistoryChart.Sample> samples = new ArrayList<>();
      for (int index = 0; index < times.length; index++) {
        double shown = heatFlows ? -history[index] : ReferenceUnit.CELSIUS.shown(history[index]);
        samples.add(new HistoryChart.Sample(times[index], shown));
      }
      // an instant after a jump of a prescribed temperature has no finite heat flow to show
      chart.line(
          new HistoryChart.Line(
              probe.name(), heatFlows ? samples.subList(1, samples.size()) : samples));
      for (Reference reference : file.references()) {
        if (probe.equals(file.probe(reference.probe()))) {
          ReferenceUnit unit = reference.expected().unit();
          double si = (reference.expected().value() + unit.offset()) * unit.divisor();
          double shown = heatFlows ? si : ReferenceUnit.CELSIUS.shown(si);
          chart.mark(new HistoryChart.Sample(reference.time().orElse(0), shown));
        }
      }
    }
    pictures.add(chart.build());
  }
}
