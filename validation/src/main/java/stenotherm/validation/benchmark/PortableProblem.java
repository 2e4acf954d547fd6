package stenotherm.validation.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.NetworkEquations;

/**
 * A transient written to files from which another program can solve it: the numbers of its
 * equations and what drives them, no matrix. The script {@code scipy-comparison.py} describes the
 * files and reads them.
 *
 * @param network the body; all its boundaries are films
 * @param coefficients of each boundary port [W/(m2 K)]
 * @param ambient of each boundary port [K]
 * @param powers of each source port [W]
 * @param start uniform temperature at time zero [K]
 * @param blocks those whose means are the outputs
 * @param interval between outputs [s]
 * @param end of the run [s], a multiple of the interval
 */
record PortableProblem(
    HeatNetwork network,
    List<TimeFunction> coefficients,
    List<TimeFunction> ambient,
    List<TimeFunction> powers,
    double start,
    List<String> blocks,
    double interval,
    double end) {
  /** Copies the lists. */
  PortableProblem {
    coefficients = List.copyOf(coefficients);
    ambient = List.copyOf(ambient);
    powers = List.copyOf(powers);
    blocks = List.copyOf(blocks);
  }

  /** The first hours alone. */
  PortableProblem until(double hours) {
    return new PortableProblem(
        network, coefficients, ambient, powers, start, blocks, interval, Times.fromHours(hours));
  }

  /** Times of the outputs [s], zero first. */
  double[] outputTimes() {
    int intervals = (int) Math.round(end / interval);
    double[] times = new double[intervals + 1];
    Arrays.setAll(times, row -> row * interval);
    return times;
  }

  /**
   * Writes the files.
   *
   * @param folder an existing folder
   * @param reference what the outputs should be, a row for each of their times [K]
   * @throws IOException if a file cannot be written
   */
  void write(Path folder, double[][] reference) throws IOException {
    NetworkEquations equations = NetworkEquations.of(network);
    NumpyFile.write(folder.resolve("capacity.npy"), equations.capacities());
    NumpyFile.write(folder.resolve("coupling-first.npy"), equations.firstCells());
    NumpyFile.write(folder.resolve("coupling-second.npy"), equations.secondCells());
    NumpyFile.write(folder.resolve("coupling-conductance.npy"), equations.conductances());
    for (int p = 0; p < coefficients.size(); p++) {
      String name = "boundary-" + p + "-";
      NumpyFile.write(folder.resolve(name + "cell.npy"), equations.boundaryCells(p));
      NumpyFile.write(folder.resolve(name + "area.npy"), equations.boundaryAreas(p));
      NumpyFile.write(folder.resolve(name + "resistance.npy"), equations.boundaryResistances(p));
      NumpyFile.write(folder.resolve(name + "coefficient.npy"), table(coefficients.get(p)));
      NumpyFile.write(folder.resolve(name + "ambient.npy"), table(ambient.get(p)));
    }
    for (int s = 0; s < powers.size(); s++) {
      String name = "source-" + s + "-";
      NumpyFile.write(folder.resolve(name + "cell.npy"), equations.sourceCells(s));
      NumpyFile.write(folder.resolve(name + "share.npy"), equations.sourceShares(s));
      NumpyFile.write(folder.resolve(name + "power.npy"), table(powers.get(s)));
    }
    for (int output = 0; output < blocks.size(); output++) {
      String name = "output-" + output + "-";
      NumpyFile.write(folder.resolve(name + "cell.npy"), equations.blockCells(blocks.get(output)));
      NumpyFile.write(
          folder.resolve(name + "share.npy"), equations.blockShares(blocks.get(output)));
    }
    NumpyFile.write(folder.resolve("reference.npy"), reference);
    Files.writeString(folder.resolve("problem.json"), description(equations.cells()));
  }

  private String description(int cells) {
    return String.format(
        Locale.ROOT,
        """
        {
          "format": 1,
          "cells": %d,
          "boundaries": %d,
          "sources": %d,
          "outputs": [%s],
          "start": %s,
          "interval": %s,
          "end": %s
        }
        """,
        cells,
        coefficients.size(),
        powers.size(),
        blocks.stream().map(block -> '"' + block + '"').collect(Collectors.joining(", ")),
        start,
        interval,
        end);
  }

  /** Rows of time and value; two rows at one time are a jump. */
  private double[][] table(TimeFunction function) {
    List<double[]> rows = new ArrayList<>();
    rows.add(new double[] {0, function.at(0)});
    for (double time : function.breakpoints(0, end)) {
      rows.add(new double[] {time, function.before(time)});
      if (function.at(time) != function.before(time)) {
        rows.add(new double[] {time, function.at(time)});
      }
    }
    rows.add(new double[] {end, function.before(end)});
    return rows.toArray(double[][]::new);
  }
}
