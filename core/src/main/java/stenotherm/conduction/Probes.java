package stenotherm.conduction;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import stenotherm.base.InvalidInputException;

/** Reads a list of outputs from a state; looks everything up once. */
final class Probes {
  private final HeatOperator operator;
  private final List<Probe> probes;
  private final int[] boundary;
  private final int[][] cells;
  private final double[][] weights;
  private final boolean needsField;
  private final double[] flows;

  /**
   * Looks up every name and point.
   *
   * @throws InvalidInputException if a name occurs twice, or a block, boundary or point does not
   *     exist
   */
  Probes(HeatOperator operator, List<Probe> probes) {
    this.operator = operator;
    this.probes = List.copyOf(probes);
    this.boundary = new int[probes.size()];
    this.cells = new int[probes.size()][];
    this.weights = new double[probes.size()][];
    this.flows = new double[operator.network().patches().list().size()];
    boolean field = false;
    Set<String> names = new HashSet<>();
    for (int index = 0; index < probes.size(); index++) {
      Probe probe = probes.get(index);
      if (!names.add(probe.name())) {
        throw new InvalidInputException("probe", "the name '" + probe.name() + "' occurs twice");
      }
      HeatNetwork network = operator.network();
      if (probe instanceof Probe.Mean mean) {
        int[] of = TemperatureField.requireSolidCells(network, mean.block());
        cells[index] = of;
        weights[index] = volumeShares(network, of);
      } else if (probe instanceof Probe.LiquidFraction liquid) {
        cells[index] = meltingCells(operator, liquid.block());
      } else if (probe instanceof Probe.HeatFlow flow) {
        boundary[index] = network.boundaryIndex(flow.boundary());
      } else {
        field = true;
        cells[index] = lookUp(network, probe);
      }
    }
    this.needsField = field;
  }

  /** Positions of a block's cells among the melting ones. */
  private static int[] meltingCells(HeatOperator operator, String block) {
    int[] of = TemperatureField.requireSolidCells(operator.network(), block);
    int[] positions = new int[of.length];
    for (int index = 0; index < of.length; index++) {
      positions[index] = Arrays.binarySearch(operator.melting.cell, of[index]);
      if (positions[index] < 0) {
        throw new InvalidInputException(
            "block '" + block + "'", "does not melt; it has no liquid fraction");
      }
    }
    return positions;
  }

  static double[] volumeShares(HeatNetwork network, int[] cells) {
    double total = 0;
    for (int cell : cells) {
      total += network.grid().volume(cell);
    }
    double[] shares = new double[cells.length];
    for (int index = 0; index < cells.length; index++) {
      shares[index] = network.grid().volume(cells[index]) / total;
    }
    return shares;
  }

  /** Looks up what a probe of the field needs; extremes and inner surfaces keep their cells. */
  private static int[] lookUp(HeatNetwork network, Probe probe) {
    if (probe instanceof Probe.Maximum maximum) {
      return TemperatureField.requireSolidCells(network, maximum.block());
    }
    if (probe instanceof Probe.Minimum minimum) {
      return TemperatureField.requireSolidCells(network, minimum.block());
    }
    if (probe instanceof Probe.InnerSurfaceMean inner) {
      return network.cells().cellsBefore("probe '" + inner.name() + "'", inner.surface());
    }
    if (probe instanceof Probe.SurfaceMean surface) {
      network.boundaryIndex(surface.boundary());
    } else if (probe instanceof Probe.At at) {
      TemperatureField.requireSolidCellsAt(network, at.point());
    }
    return new int[0];
  }

  int count() {
    return probes.size();
  }

  List<Probe> list() {
    return probes;
  }

  /** Tells whether an output is one of the continuous field. */
  boolean needField() {
    return needsField;
  }

  /**
   * Reads all outputs from temperatures, padded, and enthalpies of the melting cells; the operator
   * must hold the coefficients of the conditions.
   */
  void read(double[] padded, double[] enthalpy, Conditions conditions, double[] values) {
    read(
        needsField ? new TemperatureField(operator, padded, conditions) : null,
        padded,
        enthalpy,
        conditions,
        values);
  }

  /** The same with the field of those temperatures at hand, where one is needed. */
  void read(
      @Nullable TemperatureField field,
      double[] padded,
      double[] enthalpy,
      Conditions conditions,
      double[] values) {
    operator.heatFlows(padded, conditions, flows);
    for (int index = 0; index < values.length; index++) {
      Probe probe = probes.get(index);
      if (probe instanceof Probe.Mean) {
        double sum = 0;
        for (int c = 0; c < cells[index].length; c++) {
          sum += weights[index][c] * padded[cells[index][c] + operator.system.pad];
        }
        values[index] = sum;
      } else if (probe instanceof Probe.LiquidFraction) {
        values[index] = liquidFraction(cells[index], enthalpy);
      } else if (probe instanceof Probe.HeatFlow) {
        values[index] = flows[boundary[index]];
      } else if (field != null) {
        values[index] = fromField(field, probe, cells[index]);
      }
    }
  }

  private double liquidFraction(int[] positions, double[] enthalpy) {
    MeltingCells melting = operator.melting;
    double taken = 0;
    double latent = 0;
    for (int m : positions) {
      taken += melting.liquidFraction(m, enthalpy[m]) * melting.latent(m);
      latent += melting.latent(m);
    }
    return taken / latent;
  }

  private static double fromField(TemperatureField field, Probe probe, int[] cells) {
    if (probe instanceof Probe.Maximum) {
      return field.maximum(cells);
    }
    if (probe instanceof Probe.Minimum) {
      return field.minimum(cells);
    }
    if (probe instanceof Probe.InnerSurfaceMean inner) {
      return field.surfaceMean(cells, inner.surface().side());
    }
    if (probe instanceof Probe.SurfaceMean surface) {
      return field.surfaceMean(surface.boundary());
    }
    return field.at(((Probe.At) probe).point());
  }
}
