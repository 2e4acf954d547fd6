package stenotherm.modal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Workers;
import stenotherm.conduction.BoundaryKind;
import stenotherm.conduction.HeatNetwork;
import stenotherm.conduction.Port;
import stenotherm.conduction.Probe;
import stenotherm.conduction.ReducibleNetwork;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;

/** Sums over groups of conductances against the projection of a network that was made anew. */
class ReducedNetworkTest {
  private static final Workers ALONE = new Workers(1);
  private static final Box OUTER = box(0, 0.1);
  private static final List<String> VARYING = List.of("core", "wall", "pad");

  private static Box box(double from, double to) {
    return new Box(new Point(from, from, from), new Point(to, to, to));
  }

  /**
   * Blocks whose cells are alike where they meet: a wall, a core behind a thin resistance, a pad on
   * it, a plate that does not vary, a room in the body, a held face, a flux, a patch, a closed
   * face.
   */
  private static HeatNetwork network() {
    Box pad = new Box(new Point(0.02, 0.02, 0.06), new Point(0.08, 0.08, 0.08));
    Box plate = new Box(new Point(0.08, 0, 0), new Point(0.1, 0.1, 0.1));
    Box room = new Box(new Point(0, 0.02, 0.02), new Point(0.02, 0.04, 0.04));
    Range part = new Range(0, 0.4);
    Range whole = new Range(0, 1);
    return HeatNetwork.builder(
            new Layout(
                List.of(
                    new Block.Solid("wall", OUTER, Material.of("foam", 0.04, 20, 1450)),
                    new Block.Solid("core", box(0.04, 0.06), Material.of("core", 0.5, 800, 3500)),
                    new Block.Solid("pad", pad, Material.of("pad", 0.2, 900, 1000)),
                    new Block.Solid("plate", plate, Material.of("plate", 2, 2000, 800)),
                    new Block.Environment("room", room))),
            MeshControl.uniform(0.01))
        .thinResistance(ThinResistance.around(Set.of("core"), 0.01))
        .thinResistance(ThinResistance.around(Set.of("plate"), 0.03))
        .thinResistance(ThinResistance.between("wall", "room", 0.02))
        .boundary(Face.X_MIN, BoundaryKind.CONVECTION)
        .boundary(Face.X_MAX, BoundaryKind.TEMPERATURE)
        .boundary(Face.Y_MAX, BoundaryKind.FLUX)
        .boundary(Face.Z_MAX, BoundaryKind.CONVECTION)
        .boundary("room", BoundaryKind.CONVECTION)
        .patch(FacePatch.part("part", Face.Z_MAX, OUTER, part, whole), BoundaryKind.CONVECTION)
        .patch(FacePatch.part("aside", Face.X_MIN, OUTER, whole, part), BoundaryKind.FLUX)
        .source("core")
        .source("condensation", Set.of("pad", "wall"))
        .build();
  }

  private static KrylovBasis basis(ReducibleNetwork operator, Random random, int size) {
    List<double[]> vectors = new ArrayList<>();
    double[] solid = operator.indicator(Optional.empty());
    for (int n = 0; n < size; n++) {
      double[] x = operator.vector();
      for (int i = 0; i < x.length; i++) {
        x[i] = solid[i] * random.nextGaussian();
      }
      vectors.add(x);
    }
    KrylovBasis basis = new KrylovBasis(operator);
    assertEquals(size, basis.add(vectors, -1, ALONE));
    return basis;
  }

  private static HeatNetwork withFactors(HeatNetwork network, List<String> blocks, double[] of) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int block = 0; block < of.length; block++) {
      named.put(blocks.get(block), of[block]);
    }
    return network.withFactors(named);
  }

  /** The projection of a network that was made under films, from its cells. */
  private static Projection projected(HeatNetwork network, double[] films, KrylovBasis basis) {
    ReducibleNetwork operator = new ReducibleNetwork(network, films);
    List<Probe> means = new ArrayList<>();
    network
        .boundaryPorts()
        .forEach(port -> means.add(new Probe.SurfaceMean(port.name(), port.name())));
    List<Probe> heats = new ArrayList<>();
    network
        .boundaryPorts()
        .forEach(port -> heats.add(new Probe.HeatFlow(port.name(), port.name())));
    ReducibleNetwork.Reader reader = operator.new Reader(means);
    ReducibleNetwork.Reader heatReader = operator.new Reader(heats);
    int size = basis.size();
    int inputs = operator.inputs().size();
    int boundaries = means.size();
    double[] conductance = new double[size * size];
    double[] drive = new double[size * inputs];
    Projection.Rows flows =
        new Projection.Rows(boundaries, new double[size][], new double[inputs][]);
    Projection.Rows surfaces =
        new Projection.Rows(boundaries, new double[size][], new double[inputs][]);
    double[] none = new double[inputs];
    double[] heat = operator.vector();
    for (int j = 0; j < size; j++) {
      operator.conduct(basis.vector(j), heat);
      for (int i = 0; i < size; i++) {
        conductance[i * size + j] = product(basis.vector(i), heat);
      }
      flows.ofVector()[j] = heatReader.read(basis.vector(j), none);
      surfaces.ofVector()[j] = reader.read(basis.vector(j), none);
    }
    for (int input = 0; input < inputs; input++) {
      double[] of = operator.heatOf(input);
      for (int j = 0; j < size; j++) {
        drive[j * inputs + input] = product(basis.vector(j), of);
      }
      double[] unit = new double[inputs];
      unit[input] = 1;
      flows.ofInput()[input] = heatReader.read(operator.vector(), unit);
      surfaces.ofInput()[input] = reader.read(operator.vector(), unit);
    }
    return new Projection(size, inputs, conductance, drive, flows, surfaces);
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double largest(double[] values) {
    return Arrays.stream(values).map(Math::abs).max().orElse(0);
  }

  private static void assertClose(Projection expected, Projection found, double part) {
    assertArrayEquals(
        expected.conductance(), found.conductance(), part * largest(expected.conductance()));
    assertArrayEquals(expected.drive(), found.drive(), part * largest(expected.drive()));
    assertClose(expected.flows(), found.flows(), part);
    assertClose(expected.surfaces(), found.surfaces(), part);
  }

  private static void assertClose(Projection.Rows expected, Projection.Rows found, double part) {
    double scale =
        Arrays.stream(expected.ofVector()).mapToDouble(ReducedNetworkTest::largest).max().orElse(0);
    for (int j = 0; j < expected.ofVector().length; j++) {
      assertArrayEquals(expected.ofVector()[j], found.ofVector()[j], part * scale);
    }
    for (int u = 0; u < expected.ofInput().length; u++) {
      double[] column = expected.ofInput()[u];
      assertArrayEquals(column, found.ofInput()[u], part * largest(column));
    }
  }

  /** One film in four is none at all, as behind a perfect cover. */
  private static double[] films(HeatNetwork network, Random random) {
    return network.boundaryPorts().stream()
        .mapToDouble(port -> random.nextInt(4) == 0 ? 0 : 0.5 + 40 * random.nextDouble())
        .toArray();
  }

  private static double[] factors(int count, Random random, double most) {
    return random.doubles(count).map(each -> Math.exp((2 * each - 1) * Math.log(most))).toArray();
  }

  /** With such cells nothing but round-off is lost, however much conductivities change. */
  @Property(seed = "4401", tries = 25)
  void sumsOverGroupsAreTheProjection(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    HeatNetwork network = network();
    Random random = new Random(seed);
    ReducibleNetwork given = new ReducibleNetwork(network, films(network, random));
    KrylovBasis basis = basis(given, random, 7);
    ReducedNetwork reduced = new ReducedNetwork(given, VARYING, basis, ALONE);
    double[] films = films(network, random);
    double[] factors = factors(VARYING.size(), random, 5);
    Projection expected = projected(withFactors(network, VARYING, factors), films, basis);
    Projection found = reduced.at(films, factors);
    // what a surface shares out is that of the network as it was given
    int condensation = found.inputs() - 1;
    for (int j = 0; j < found.size(); j++) {
      expected.drive()[j * found.inputs() + condensation] =
          found.drive()[j * found.inputs() + condensation];
    }
    assertClose(expected, found, 1e-9);
  }

  @Example
  void allKindsOfPortsAreThere() {
    List<Port.BoundaryPort> ports = network().boundaryPorts();
    for (BoundaryKind kind :
        List.of(BoundaryKind.CONVECTION, BoundaryKind.TEMPERATURE, BoundaryKind.FLUX)) {
      assertTrue(ports.stream().anyMatch(port -> port.kind() == kind));
    }
    assertEquals(7, ports.size());
  }

  /** With the conductivities as given everything is, that of sources on surfaces included. */
  @Example
  void theNetworkAsGivenIsItself() {
    HeatNetwork network = network();
    Random random = new Random(1);
    double[] films = films(network, random);
    ReducibleNetwork given = new ReducibleNetwork(network, films);
    KrylovBasis basis = basis(given, random, 5);
    Projection found =
        new ReducedNetwork(given, VARYING, basis, ALONE).at(films, new double[] {1, 1, 1});
    assertClose(projected(network, films, basis), found, 1e-12);
  }

  /** The films under which the operator was made are not seen, to the last bit. */
  @Example
  void doesNotDependOnTheFilmsOfItsOperator() {
    HeatNetwork network = network();
    Random random = new Random(2);
    ReducibleNetwork one = new ReducibleNetwork(network, films(network, random));
    ReducibleNetwork other = new ReducibleNetwork(network, films(network, random));
    KrylovBasis basis = basis(one, random, 5);
    double[] films = films(network, random);
    double[] factors = {2, 0.5, 1};
    Projection first = new ReducedNetwork(one, VARYING, basis, ALONE).at(films, factors);
    Projection second =
        new ReducedNetwork(other, VARYING, basis, new Workers(3)).at(films, factors);
    assertArrayEquals(first.conductance(), second.conductance());
    assertArrayEquals(first.drive(), second.drive());
    assertClose(first.flows(), second.flows(), 0);
    assertClose(first.surfaces(), second.surfaces(), 0);
  }

  /**
   * With graded cells the shares of resistances are those of their group, to a hundredth: an error
   * of second order in that and in the change.
   */
  @Property(seed = "4402", tries = 10)
  void gradedCellsLoseLittle(@ForAll @LongRange(min = 0, max = 1000) long seed) {
    RandomBody body = new RandomBody(seed, 5);
    Random random = new Random(seed);
    ReducibleNetwork given = new ReducibleNetwork(body.network, body.films());
    KrylovBasis basis = basis(given, random, 7);
    List<String> varying = List.of("foam", "fill", "animal");
    double[] films = films(body.network, random);
    double[] factors = factors(varying.size(), random, 2);
    Projection found = new ReducedNetwork(given, varying, basis, ALONE).at(films, factors);
    assertClose(projected(withFactors(body.network, varying, factors), films, basis), found, 2e-5);
  }
}
