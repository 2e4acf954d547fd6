package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Workers;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.ConductanceGroup;
import stenotherm.conduction.Port;
import stenotherm.conduction.ReducibleNetwork;

/**
 * A network projected on a basis V, for any surface coefficients and any factors on the
 * conductivities of the blocks that vary. V'GV is the sum of g V'KV over the groups of
 * conductances, where films and factors give one number g for each group. So a configuration costs
 * a sum of small matrices and needs no cells. Immutable.
 *
 * <p>The sides of a source on a surface keep their shares of the network as given.
 */
final class ReducedNetwork {
  final int size;
  final int inputs;
  private final List<Port> ports;
  private final int boundaries;
  private final List<Term> terms;

  /** What 1 W of each source gives each basis vector. */
  private final double[][] ofSource;

  /**
   * A group of conductances projected on the basis.
   *
   * @param port boundary that it leads to; negative if it lies between cells
   * @param first position of the first block among those that vary, or negative
   * @param second the same of the second block
   * @param ofFirst its share in the resistance [-]; to a boundary the resistance of its half cells
   *     [m2 K/W]
   * @param ofSecond the same of the second block; to a boundary the thin resistance [m2 K/W]
   * @param area area to the boundary [m2]
   * @param areas area times temperature of each vector; null between cells
   * @param matrix V'KV [W/K], to a boundary for a conductance of 1 W/(m2 K); the lower triangle,
   *     row after row
   */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Term(
      int port,
      int first,
      int second,
      double ofFirst,
      double ofSecond,
      double area,
      double @Nullable [] areas,
      double[] matrix) {
    /** Conductance between cells as a multiple of that in the network as given. */
    double ratio(double[] factors) {
      double shareOfFirst = first < 0 ? 0 : ofFirst;
      double shareOfSecond = second < 0 ? 0 : ofSecond;
      double resistance = 1 - shareOfFirst - shareOfSecond;
      resistance += first < 0 ? 0 : shareOfFirst / factors[first];
      resistance += second < 0 ? 0 : shareOfSecond / factors[second];
      return 1 / resistance;
    }

    /** Resistance from the centres of the cells to their surface [m2 K/W]. */
    double half(double[] factors) {
      return first < 0 ? ofFirst : ofFirst / factors[first];
    }

    /** Resistance from the centres of the cells to what the boundary meets [m2 K/W]. */
    double inner(double[] factors) {
      return half(factors) + ofSecond;
    }
  }

  /** Projects a network on a basis. */
  ReducedNetwork(
      ReducibleNetwork operator, List<String> varying, KrylovBasis basis, Workers workers) {
    this.ports = operator.inputs();
    this.size = basis.size();
    this.inputs = ports.size();
    this.boundaries = operator.network().boundaryPorts().size();
    this.terms = new ArrayList<>();
    for (ConductanceGroup group : operator.groups(varying)) {
      terms.add(projected(group, basis, workers));
    }
    this.ofSource = new double[inputs - boundaries][];
    for (int source = 0; source < ofSource.length; source++) {
      LoadVector heat = new LoadVector(operator.heatOf(boundaries + source));
      ofSource[source] = basis.vectors().stream().mapToDouble(heat::product).toArray();
    }
  }

  /** Makes a network that was stored. */
  ReducedNetwork(List<Port> ports, int size, List<Term> terms, double[][] ofSource) {
    this.ports = ports;
    this.size = size;
    this.inputs = ports.size();
    this.boundaries = inputs - ofSource.length;
    this.terms = terms;
    this.ofSource = ofSource;
  }

  private static Term projected(ConductanceGroup group, KrylovBasis basis, Workers workers) {
    List<double[]> gathered = basis.vectors().stream().map(group::gather).toList();
    double[][] products =
        Panels.symmetricProducts(
            workers,
            gathered,
            0,
            (worker, v, from, count, result) -> group.multiply(v, from, count, result));
    double[] matrix = new double[gathered.size() * (gathered.size() + 1) / 2];
    for (int i = 0, at = 0; i < gathered.size(); i++) {
      for (int j = 0; j <= i; j++) {
        matrix[at++] = products[j][i];
      }
    }
    boolean outer = group.port() >= 0;
    return new Term(
        group.port(),
        group.firstBlock(),
        group.secondBlock(),
        group.first(),
        group.second(),
        outer ? group.area() : 0,
        outer ? gathered.stream().mapToDouble(group::areaTimes).toArray() : null,
        matrix);
  }

  List<Port> ports() {
    return ports;
  }

  List<Term> terms() {
    return terms;
  }

  double[][] ofSource() {
    return ofSource;
  }

  private BoundaryKind kind(int port) {
    return ((Port.BoundaryPort) ports.get(port)).kind();
  }

  /** Conductance from the centres of the cells to a boundary, for unit area [W/(m2 K)]. */
  private double conductance(Term term, double[] films, double[] factors) {
    return switch (kind(term.port)) {
      case CONVECTION ->
          films[term.port] == 0 ? 0 : 1 / (term.inner(factors) + 1 / films[term.port]);
      case TEMPERATURE -> 1 / term.inner(factors);
      case FLUX, ADIABATIC -> 0;
    };
  }

  /** The network under films [W/(m2 K)] and factors [-]. */
  Projection at(double[] films, double[] factors) {
    double[] lower = new double[size * (size + 1) / 2];
    double[] drive = new double[size * inputs];
    Projection.Rows flows =
        new Projection.Rows(
            boundaries, new double[size][boundaries], new double[inputs][boundaries]);
    Projection.Rows surfaces =
        new Projection.Rows(
            boundaries, new double[size][boundaries], new double[inputs][boundaries]);
    for (Term term : terms) {
      double[] areas = term.areas;
      if (areas == null) {
        add(term.ratio(factors), term.matrix, lower);
        continue;
      }
      int port = term.port;
      boolean flux = kind(port) == BoundaryKind.FLUX;
      double conductance = conductance(term, films, factors);
      double half = term.half(factors);
      add(conductance, term.matrix, lower);
      double perUnit = flux ? 1 : conductance;
      double wholeArea = ((Port.BoundaryPort) ports.get(port)).area();
      for (int j = 0; j < size; j++) {
        drive[j * inputs + port] += perUnit * areas[j];
        flows.ofVector()[j][port] -= conductance * areas[j];
        surfaces.ofVector()[j][port] += (1 - conductance * half) * areas[j] / wholeArea;
      }
      flows.ofInput()[port][port] += perUnit * term.area;
      surfaces.ofInput()[port][port] += perUnit * half * term.area / wholeArea;
    }
    for (int source = 0; source < ofSource.length; source++) {
      for (int j = 0; j < size; j++) {
        drive[j * inputs + boundaries + source] = ofSource[source][j];
      }
    }
    return new Projection(size, inputs, whole(lower), drive, flows, surfaces);
  }

  private static void add(double factor, double[] matrix, double[] sum) {
    for (int i = 0; i < sum.length; i++) {
      sum[i] += factor * matrix[i];
    }
  }

  private double[] whole(double[] lower) {
    double[] whole = new double[size * size];
    for (int i = 0, at = 0; i < size; i++) {
      for (int j = 0; j <= i; j++, at++) {
        whole[i * size + j] = lower[at];
        whole[j * size + i] = lower[at];
      }
    }
    return whole;
  }

  /** Refuses a wrong number of values, and factors out of their range. */
  void check(double[] films, double[] factors, int varying) {
    if (films.length != boundaries) {
      throw new InvalidInputException(
          "coefficients", films.length + " values given, " + boundaries + " needed");
    }
    if (factors.length != varying) {
      throw new InvalidInputException(
          "factors", factors.length + " values given, " + varying + " needed");
    }
    if (!Arrays.stream(factors).allMatch(factor -> factor > 0 && factor < Double.MAX_VALUE)) {
      throw new InvalidInputException(
          "factors", Arrays.toString(factors) + " must all be finite and above 0");
    }
  }
}
