package stenotherm.conduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import stenotherm.base.InvalidInputException;

/** Reads a list of outputs from a state; looks everything up once. */
final class Probes {
  private final HeatOperator operator;
  private final List<Probe> probes;
  private final List<Reading> readings;
  private final double[] flows;
  private boolean needsField;

  /** Reads one output from temperatures and enthalpies, or from the field. */
  private interface Reading {
    double of(@Nullable TemperatureField field, double[] padded, double[] enthalpy);
  }

  /**
   * Looks up every name and point.
   *
   * @throws InvalidInputException if a name occurs twice, or a block, boundary or point does not
   *     exist
   */
  Probes(HeatOperator operator, List<Probe> probes) {
    this.operator = operator;
    this.probes = List.copyOf(probes);
    this.flows = new double[operator.network().patches().list().size()];
    this.readings = new ArrayList<>();
    Set<String> names = new HashSet<>();
    Binding binding = new Binding();
    for (Probe probe : probes) {
      if (!names.add(probe.name())) {
        throw new InvalidInputException("probe", "the name '" + probe.name() + "' occurs twice");
      }
      readings.add(probe.accept(binding));
    }
  }

  /** Looks up what an output needs. */
  private final class Binding implements ProbeVisitor<Reading> {
    private final HeatNetwork network = operator.network();

    private Reading ofField(ToDoubleFunction<TemperatureField> value) {
      needsField = true;
      return (field, padded, enthalpy) -> value.applyAsDouble(Objects.requireNonNull(field));
    }

    @Override
    public Reading mean(Probe.Mean probe) {
      int[] cells = TemperatureField.requireSolidCells(network, probe.block());
      double[] weights = volumeShares(network, cells);
      return (field, padded, enthalpy) -> {
        double sum = 0;
        for (int c = 0; c < cells.length; c++) {
          sum += weights[c] * padded[cells[c] + operator.system.pad];
        }
        return sum;
      };
    }

    @Override
    public Reading maximum(Probe.Maximum probe) {
      int[] cells = TemperatureField.requireSolidCells(network, probe.block());
      return ofField(field -> field.maximum(cells));
    }

    @Override
    public Reading minimum(Probe.Minimum probe) {
      int[] cells = TemperatureField.requireSolidCells(network, probe.block());
      return ofField(field -> field.minimum(cells));
    }

    @Override
    public Reading at(Probe.At probe) {
      TemperatureField.requireSolidCellsAt(network, probe.point());
      return ofField(field -> field.at(probe.point()));
    }

    @Override
    public Reading surfaceMean(Probe.SurfaceMean probe) {
      network.boundaryIndex(probe.boundary());
      return ofField(field -> field.surfaceMean(probe.boundary()));
    }

    @Override
    public Reading liquidFraction(Probe.LiquidFraction probe) {
      int[] melting = meltingCells(operator, probe.block());
      return (field, padded, enthalpy) -> Probes.this.liquidFraction(melting, enthalpy);
    }

    @Override
    public Reading heatFlow(Probe.HeatFlow probe) {
      if (network.patches().isAdiabatic(probe.boundary())) {
        return (field, padded, enthalpy) -> 0;
      }
      int boundary = network.boundaryIndex(probe.boundary());
      return (field, padded, enthalpy) -> flows[boundary];
    }
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

  int count() {
    return probes.size();
  }

  List<Probe> list() {
    return probes;
  }

  /** Tells whether an output needs the continuous field. */
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

  /** The same with the field of those temperatures, if an output needs it. */
  void read(
      @Nullable TemperatureField field,
      double[] padded,
      double[] enthalpy,
      Conditions conditions,
      double[] values) {
    operator.heatFlows(padded, conditions, flows);
    for (int index = 0; index < values.length; index++) {
      values[index] = readings.get(index).of(field, padded, enthalpy);
    }
  }

  /** Reads the means of blocks alone. */
  void readMeans(double[] padded, double[] enthalpy, double[] values) {
    for (int index = 0; index < values.length; index++) {
      if (probes.get(index) instanceof Probe.Mean) {
        values[index] = readings.get(index).of(null, padded, enthalpy);
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
}
